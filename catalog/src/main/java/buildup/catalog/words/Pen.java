package buildup.catalog.words;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Walks words, checks their sizes first, and remembers which word drew which stroke. */
final class Pen {

    /** Width of a scotia that names none: its two radii are then as one to two. */
    private static final double SCOTIA_WIDTH = 1.0 / 3;

    /** Fillets of an astragal that names none. */
    private static final double ASTRAGAL_FILLET = 1.0 / 4;

    private final Walk walk;
    private final WordProblems speaker;
    private final Map<String, Integer> used = new HashMap<>();
    private final List<Integer> wordOfStroke = new ArrayList<>();

    Pen(Walk walk, WordProblems speaker) {
        this.walk = walk;
        this.speaker = speaker;
    }

    /** Walks the words; false when a size was refused, which all of them are asked for. */
    boolean drawAll(List<Word> words) {
        boolean good = true;
        for (Word word : words) {
            remember(WalkReader.CLOSING);
            // behind a word that was refused nobody knows where a coordinate lies
            boolean lost = !good && word.to();
            if (!lost && sizesHold(word)) {
                draw(word, name(word));
            } else {
                good = false;
            }
            remember(word.number());
        }
        return good;
    }

    /** The number of the word that drew a stroke, or {@link WalkReader#CLOSING}. */
    int wordOf(int stroke) {
        return stroke < wordOfStroke.size() ? wordOfStroke.get(stroke) : WalkReader.CLOSING;
    }

    private void remember(int word) {
        while (wordOfStroke.size() < walk.strokes().size()) {
            wordOfStroke.add(word);
        }
    }

    private String name(Word word) {
        if (word.name().isPresent()) {
            return word.name().get();
        }
        String plain = word.spelled().replace(' ', '-');
        int times = used.merge(plain, 1, Integer::sum);
        return times == 1 ? plain : plain + "-" + times;
    }

    private boolean sizesHold(Word word) {
        if (word.to()) {
            return goesOn(word);
        }
        for (int i = 0; i < word.sizes().size(); i++) {
            double size = word.size(i, 0);
            boolean evenHollow = word.verb() == Verb.SCOTIA && i == 1 && size == 0;
            // an arc of its own radius may end level with its beginning, or straight above it
            boolean levelArc = isArc(word) && i < 2 && size == 0;
            if (size <= Tolerance.COINCIDENT && !evenHollow && !levelArc) {
                return refused(WordNotices.of(WordNotices.NOTHING, word).with("size", Figure.length(size)), word);
            }
        }
        if (word.verb() == Verb.SCOTIA && word.size(1, 0) >= word.size(0, 0)) {
            return refused(
                    WordNotices.of(WordNotices.WIDE_SCOTIA, word)
                            .with("width", Figure.length(word.size(1, 0)))
                            .with("height", Figure.length(word.size(0, 0))),
                    word);
        }
        return !isArc(word) || arcHolds(word);
    }

    private static boolean isArc(Word word) {
        return word.verb() == Verb.HOLLOW || word.verb() == Verb.ROUND;
    }

    private boolean arcHolds(Word word) {
        double chord = Math.hypot(word.size(0, 0), word.size(1, word.size(0, 0)));
        if (chord <= Tolerance.COINCIDENT) {
            return refused(WordNotices.of(WordNotices.NO_SPAN, word), word);
        }
        // half the chord for a half round; rounding may leave a printed radius a hair short of it
        if (word.sizes().size() > 2 && word.size(2, 0) < chord / 2 - Tolerance.SNAP) {
            return refused(
                    WordNotices.of(WordNotices.SMALL_RADIUS, word)
                            .with("radius", Figure.length(word.size(2, 0)))
                            .with("span", Figure.length(chord)),
                    word);
        }
        return true;
    }

    /** A coordinate must lie ahead; one that is already reached doubles a point, which is said later. */
    private boolean goesOn(Word word) {
        Way way = word.ways().get(0);
        double ahead =
                word.size(0, 0) * (way.unit().x() + way.unit().y()) - walk.at().dot(way.unit());
        return ahead >= -Tolerance.COINCIDENT
                || refused(
                        WordNotices.of(WordNotices.GOES_BACK, word)
                                .with("size", Figure.length(word.size(0, 0)))
                                .with("behind", Figure.length(-ahead)),
                        word);
    }

    private boolean refused(Notice notice, Word word) {
        speaker.say(notice, word.mark());
        return false;
    }

    private void draw(Word word, String name) {
        Way vertical = word.way(Way.UP);
        Way level = word.way(Way.OUT);
        double first = word.size(0, 0);
        double second = word.size(1, first);
        switch (word.verb()) {
            case STRAIGHT -> straight(word, first, name);
            case FILLET -> walk.straight(word.onlyWay().orElse(Way.UP), first, name);
            case CHAMFER -> walk.chamfer(vertical, first, level, second, name);
            case COVE -> walk.cove(vertical, first, level, second, name);
            case OVOLO -> walk.ovolo(vertical, first, level, second, name);
            case GREEK_COVE -> walk.greekCove(vertical, first, level, second, name);
            case GREEK_OVOLO -> walk.greekOvolo(vertical, first, level, second, name);
            case HOLLOW -> walk.arc(vertical, first, level, second, radius(word), true, name);
            case ROUND -> walk.arc(vertical, first, level, second, radius(word), false, name);
            case CYMA_RECTA -> walk.cymaRecta(vertical, first, level, second, name);
            case CYMA_REVERSA -> walk.cymaReversa(vertical, first, level, second, name);
            case SCOTIA -> walk.scotia(vertical, first, level, word.size(1, first * SCOTIA_WIDTH), name);
            case RABBET -> walk.rabbet(vertical, first, level, second, name);
            case HALF_ROUND ->
                word.onlyWay()
                        .ifPresentOrElse(way -> walk.halfRound(way, first, name), () -> walk.halfRound(first, name));
            case ASTRAGAL -> walk.astragal(first, word.size(1, first * ASTRAGAL_FILLET), name);
            case GROOVE -> walk.groove(first, second, name);
        }
    }

    /** The radius of an arc; one that names none is a quarter of the longer side. */
    private static double radius(Word word) {
        double height = word.size(0, 0);
        double width = word.size(1, height);
        return Math.max(word.size(2, Math.max(height, width)), Math.hypot(height, width) / 2);
    }

    private void straight(Word word, double size, String name) {
        Way way = word.ways().get(0);
        if (word.to()) {
            walk.straightTo(way, size, name);
        } else {
            walk.straight(way, size, name);
        }
    }
}
