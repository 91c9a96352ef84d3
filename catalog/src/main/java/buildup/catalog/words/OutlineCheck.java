package buildup.catalog.words;

import buildup.catalog.words.WordParser.Words;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Soundness.Clockwise;
import buildup.profiles.outline.Soundness.Crossing;
import buildup.profiles.outline.Soundness.Doubled;
import buildup.profiles.outline.Soundness.Fault;
import buildup.profiles.outline.Soundness.NoArea;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Locale;
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
    static boolean passes(List<Stroke> walk, List<Integer> wordOf, Words words, Mark whole, Speaker speaker) {
        double face = walk.stream()
                .mapToDouble(stroke -> stroke.segment().box().face())
                .max()
                .orElse(0);
        boolean sound = true;
        List<Fault> faults = Soundness.faults(walk);
        if (face <= Tolerance.COINCIDENT && !faults.contains(new NoArea())) {
            speaker.refuse(
                    "outline-mirrored", "The back of this profile is on the room side.", whole, "Say out for in.");
            sound = false;
        }
        for (Fault fault : faults) {
            if (fault instanceof NoArea) {
                speaker.refuse("no-area", "The outline closes no area.", whole, "Go out and up before it closes.");
                sound = false;
            } else if (fault instanceof Crossing crossing) {
                if (!kerfThrough(crossing, walk, wordOf, words, speaker)) {
                    crossing(crossing, wordOf, words, whole, speaker);
                }
                sound = false;
            } else if (fault instanceof Clockwise && sound) {
                speaker.note(
                        "outline-clockwise",
                        "The outline runs clockwise; turned round.",
                        whole,
                        "Begin at the lower end of the back and go out along the bottom.");
            } else if (fault instanceof Doubled doubled) {
                speaker.note("doubled-points", "Doubled points dropped: " + doubled.count() + ".", whole, "");
            }
        }
        return sound;
    }

    /** Whether the outline meets itself because a groove goes as deep as the board is thick; says so. */
    private static boolean kerfThrough(
            Crossing crossing, List<Stroke> walk, List<Integer> wordOf, Words words, Speaker speaker) {
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
                    speaker.refuse(
                            "kerf-through",
                            "Kerf is " + size(depth) + " deep in a " + size(board) + " board.",
                            groove.get().mark(),
                            "Cut it less deep.");
                    return true;
                }
            }
        }
        return false;
    }

    private static String size(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    private static Stream<Word> all(Words words) {
        return Stream.concat(words.front().stream(), words.back().stream().flatMap(List::stream));
    }

    private static void crossing(Crossing crossing, List<Integer> wordOf, Words words, Mark whole, Speaker speaker) {
        int first = wordOf.get(crossing.firstStroke() - 1);
        int second = wordOf.get(crossing.secondStroke() - 1);
        Mark mark = all(words)
                .filter(word -> word.number() == Math.max(first, second))
                .map(Word::mark)
                .findFirst()
                .orElse(whole);
        speaker.refuse(
                "outline-crosses-itself",
                String.format(
                        Locale.ROOT,
                        "Outline crosses itself near (%.2f, %.2f), %s.",
                        crossing.near().x(),
                        crossing.near().y(),
                        between(first, second)),
                mark,
                "Shorten one of the two.");
    }

    private static String between(int first, int second) {
        if (first == second) {
            return first == WalkReader.CLOSING ? "where it closes" : "within word " + first;
        }
        return first == WalkReader.CLOSING || second == WalkReader.CLOSING
                ? "between word " + Math.max(first, second) + " and the line that closes it"
                : "between words " + first + " and " + second;
    }
}
