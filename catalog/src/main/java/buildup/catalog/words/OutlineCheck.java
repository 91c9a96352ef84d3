package buildup.catalog.words;

import buildup.catalog.words.WordParser.Words;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Soundness.Clockwise;
import buildup.profiles.outline.Soundness.Crossing;
import buildup.profiles.outline.Soundness.Doubled;
import buildup.profiles.outline.Soundness.Fault;
import buildup.profiles.outline.Soundness.NoArea;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says what is wrong with a closed walk, in the words that drew it. */
final class OutlineCheck {

    private OutlineCheck() {}

    /**
     * Whether the walk can be taken as an outline; says why not.
     *
     * @param wordOf the word that drew each stroke, or {@link WalkReader#CLOSING}
     */
    static boolean passes(List<Stroke> walk, List<Integer> wordOf, Words words, Mark whole, WordProblems speaker) {
        double face = walk.stream()
                .mapToDouble(stroke -> stroke.segment().box().face())
                .max()
                .orElse(0);
        boolean sound = true;
        Box box = Box.around(walk.stream().map(stroke -> stroke.segment().box()).toList());
        double across = Math.min(box.width(), box.height());
        List<Fault> faults = Soundness.faults(walk);
        if (face <= Tolerance.COINCIDENT && !faults.contains(new NoArea())) {
            speaker.say(WordNotices.MIRRORED.notice(), whole);
            sound = false;
        }
        if (across < Tolerance.TOUCHING && !faults.contains(new NoArea())) {
            speaker.say(WordNotices.TOO_THIN.with("size", Figure.length(across).rounded(Rounding.decimals(6))), whole);
            sound = false;
        }
        for (Fault fault : faults) {
            if (fault instanceof NoArea) {
                speaker.say(WordNotices.NO_AREA.notice(), whole);
                sound = false;
            } else if (fault instanceof Crossing crossing) {
                if (!kerfThrough(crossing, walk, wordOf, words, speaker)) {
                    crossing(crossing, wordOf, words, whole, speaker);
                }
                sound = false;
            } else if (fault instanceof Clockwise && sound) {
                speaker.say(WordNotices.TURNED_ROUND.notice(), whole);
            } else if (fault instanceof Doubled doubled) {
                speaker.say(WordNotices.DOUBLED.with("doubled", Figure.count(doubled.count())), whole);
            }
        }
        return sound;
    }

    /** Whether the outline meets itself because a groove goes as deep as the board is thick; says so. */
    private static boolean kerfThrough(
            Crossing crossing, List<Stroke> walk, List<Integer> wordOf, Words words, WordProblems speaker) {
        Box box = Box.around(walk.stream().map(stroke -> stroke.segment().box()).toList());
        for (int stroke : List.of(crossing.firstStroke() - 1, crossing.secondStroke() - 1)) {
            int number = wordOf.get(stroke);
            Optional<Word> groove = all(words)
                    .filter(word -> word.number() == number && word.verb() == Verb.GROOVE)
                    .findFirst();
            if (groove.isPresent()) {
                Point inward = walk.get(wordOf.indexOf(number)).segment().direction(0);
                double depth = groove.get().size(1, 0);
                double board = Math.abs(inward.x()) > Math.abs(inward.y()) ? box.width() : box.height();
                if (depth >= board - Tolerance.TOUCHING) {
                    speaker.say(
                            WordNotices.THROUGH
                                    .with("depth", Figure.length(depth))
                                    .with("board", Figure.length(board)),
                            groove.get().mark());
                    return true;
                }
            }
        }
        return false;
    }

    private static Stream<Word> all(Words words) {
        return Stream.concat(words.front().stream(), words.back().stream().flatMap(List::stream));
    }

    private static void crossing(
            Crossing crossing, List<Integer> wordOf, Words words, Mark whole, WordProblems speaker) {
        int first = wordOf.get(crossing.firstStroke() - 1);
        int second = wordOf.get(crossing.secondStroke() - 1);
        Mark mark = all(words)
                .filter(word -> word.number() == Math.max(first, second))
                .map(Word::mark)
                .findFirst()
                .orElse(whole);
        speaker.say(
                WordNotices.CROSSES_ITSELF
                        .with("place", OutlineCodes.place(crossing.near()))
                        .with("where", between(first, second)),
                mark);
    }

    private static Phrase between(int first, int second) {
        if (first == second) {
            return first == WalkReader.CLOSING
                    ? WordNotices.WHERE_IT_CLOSES
                    : WordNotices.WITHIN_A_WORD.with("first", Figure.count(first));
        }
        return first == WalkReader.CLOSING || second == WalkReader.CLOSING
                ? WordNotices.AT_THE_CLOSING_LINE.with("first", Figure.count(Math.max(first, second)))
                : WordNotices.BETWEEN_WORDS.with("first", Figure.count(first)).with("second", Figure.count(second));
    }
}
