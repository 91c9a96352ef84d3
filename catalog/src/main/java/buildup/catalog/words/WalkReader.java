package buildup.catalog.words;

import buildup.catalog.words.WordParser.Words;
import buildup.profiles.member.Walk;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Node;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns profile words into outlines. Words are a list of texts, or one text with commas between them; the item
 * {@code back:} ends the front. Lengths may be named, sums and shares, as {@link LengthReader} reads them.
 */
public final class WalkReader {

    /** The word of strokes that close an outline. */
    static final int CLOSING = 0;

    private WalkReader() {}

    /**
     * The outline that the words draw, moved so that its back is at x = 0 and its lowest point at y = 0. Faults are
     * added to {@code notices}, all of them and each with its place; nothing is returned when one is a refusal.
     *
     * @param owner the piece or profile that the words belong to, as messages call it
     */
    public static Optional<Outline> read(Node words, LengthReader lengths, String owner, Notices notices) {
        WordProblems speaker = new WordProblems(owner, notices);
        return WordParser.read(words, lengths, speaker).flatMap(read -> closed(read, words, speaker));
    }

    /**
     * The face of a sprung molding, walked on the flat stick and not closed: {@code up} goes along the face from the
     * wall edge, {@code out} and {@code in} square to it.
     */
    public static Optional<List<Stroke>> face(Node words, LengthReader lengths, String owner, Notices notices) {
        WordProblems speaker = new WordProblems(owner, notices);
        Optional<Words> read = WordParser.read(words, lengths, speaker);
        if (read.flatMap(Words::back).isPresent()) {
            speaker.say(WordNotices.FACE_WITH_BACK.notice(), words.mark());
            return Optional.empty();
        }
        Walk walk = new Walk();
        Pen pen = new Pen(walk, speaker);
        return read.filter(all -> pen.drawAll(all.front())).map(all -> walk.strokes());
    }

    private static Optional<Outline> closed(Words words, Node node, WordProblems speaker) {
        Walk walk = new Walk();
        Pen pen = new Pen(walk, speaker);
        boolean drawn = pen.drawAll(words.front());
        walk.levelToBack();
        if (words.back().isPresent()) {
            drawn &= pen.drawAll(words.back().get());
        }
        if (!drawn) {
            return Optional.empty();
        }
        List<Stroke> strokes = new ArrayList<>();
        List<Integer> wordOf = new ArrayList<>();
        List<Stroke> all = walk.close();
        for (int i = 0; i < all.size(); i++) {
            int word = pen.wordOf(i);
            // rounding may leave a closing line of no length; that is no doubled point of the user's
            if (word != CLOSING || all.get(i).segment().length() > Tolerance.COINCIDENT) {
                strokes.add(all.get(i));
                wordOf.add(word);
            }
        }
        return OutlineCheck.passes(strokes, wordOf, words, node.mark(), speaker)
                ? Optional.of(home(Outline.closed(strokes)))
                : Optional.empty();
    }

    private static Outline home(Outline outline) {
        double back = outline.box().back();
        double bottom = outline.box().bottom();
        return back == 0 && bottom == 0 ? outline : outline.moved(Motion.shift(-back, -bottom));
    }
}
