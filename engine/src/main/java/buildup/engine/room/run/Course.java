package buildup.engine.room.run;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A piece of the stack as it runs along the wall.
 *
 * @param body number of the piece in the section
 * @param trim whether it is seen; else a nailer
 * @param box least and greatest projection and height
 * @param spring degrees from upright of the face that lies on the saw's table: 0 for what stands, 90 for a board that
 *     lies, positive when the stick leans out as it goes up
 * @param plain whether its section is a plain rectangle: nothing to cope
 * @param stock what it is cut from, in words: a profile, or a board by thickness x width
 * @param profile as the document calls it
 * @param turned whether it runs round an opening, in the plane of the wall: out and up have then changed places
 */
public record Course(
        String name,
        int body,
        boolean trim,
        Box box,
        double spring,
        boolean plain,
        Phrase stock,
        String profile,
        double thickness,
        double width,
        boolean turned) {
    /** A molded stick that is more than so many times as wide as it is high, as a shelf, is laid on the saw: shop practice. */
    private static final double SHELF = 4;

    private static final Phrase BOARD = Phrase.of("board {thickness} x {width}");
    private static final Phrase ONE_OFF = Phrase.of("section of {name}");

    /** Trim and nailers of a section in the order of putting up; what stands already is not cut. */
    static List<Course> of(Section section) {
        return IntStream.range(0, section.bodies().size())
                .filter(number -> section.body(number).inStack())
                .boxed()
                .flatMap(number -> section.body(number).placed().stream().map(placed -> of(number, section, placed)))
                .toList();
    }

    private static Course of(int number, Section section, Placed placed) {
        Body body = section.body(number);
        Outline outline = placed.outline();
        boolean board = placed.piece().stock().board();
        boolean plain = placed.piece().shape().isRectangle() || board;
        double one = placed.blankThickness();
        double other = placed.blankWidth();
        // blocking and one-offs are drawn as they sit: their thickness is the lesser of the two
        double thickness = board ? one : Math.min(one, other);
        double width = board ? other : Math.max(one, other);
        String profile = placed.piece().stock().name();
        Phrase stock = plain
                ? BOARD.with("thickness", Figure.length(thickness)).with("width", Figure.length(width))
                : profile.equals("section") ? ONE_OFF.with("name", body.name()) : Phrase.plain(profile);
        return new Course(
                body.name(),
                number,
                body.trim(),
                outline.box(),
                spring(placed),
                plain,
                stock,
                profile,
                thickness,
                width,
                false);
    }

    /** The same as it runs round an opening: its height counts from the opening's edge, and the wall is its base. */
    Course roundAnOpening() {
        Box across = across(box);
        return new Course(
                name,
                body,
                trim,
                across,
                spring < 0 ? -90 - spring : 90 - spring,
                plain,
                stock,
                profile,
                thickness,
                width,
                true);
    }

    /** Its box as it stands in the section. */
    Box asDrawn() {
        return turned ? across(box) : box;
    }

    /** The box with out and up in each other's place. */
    private static Box across(Box box) {
        double out = box.back();
        double up = box.bottom();
        double farthest = box.face();
        double highest = box.top();
        return new Box(up, out, highest, farthest);
    }

    /** The lean of the stick's flat: its back when it is sprung, the wider side of a board or a shelf, upright for the rest. */
    private static double spring(Placed placed) {
        Outline outline = placed.outline();
        List<String> members = outline.members();
        if (members.contains("wall-flat") && members.contains("ceiling-flat")) {
            return outline.straights("back").stream()
                    .findFirst()
                    .map(Course::lean)
                    .orElse(0.0);
        }
        boolean board = placed.piece().stock().board();
        if (board && !outline.isRectangle()) {
            return longest(outline).map(Course::lean).orElse(0.0);
        }
        Box box = outline.box();
        boolean wide = box.width() > (outline.isRectangle() ? 1 : SHELF) * box.height();
        boolean lies = board ? placed.piece().stock().lying() : wide;
        return lies ? 90 : 0;
    }

    private static Optional<Line> longest(Outline outline) {
        return outline.segments().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .max(Comparator.comparingDouble(Segment::length));
    }

    /** Degrees of a line from upright, -90 to 90, positive when it goes out as it goes up. */
    private static double lean(Line line) {
        Point up = line.to().minus(line.from());
        Point rising = up.y() < 0 ? up.times(-1) : up;
        return Math.toDegrees(Math.atan2(rising.x(), rising.y()));
    }

    /** Whether it leans between wall and ceiling, neither upright nor flat. */
    public boolean sprung() {
        return Math.abs(spring) > Tolerance.SAME_DIRECTION && Math.abs(spring) < 90 - Tolerance.SAME_DIRECTION;
    }

    /** Whether it lies flat. */
    public boolean lies() {
        return Math.abs(spring) >= 90 - Tolerance.SAME_DIRECTION;
    }

    /** Least projection. */
    public double back() {
        return box.back();
    }

    /** Greatest projection. */
    public double face() {
        return box.face();
    }

    /** Height of its middle over the datum. */
    double middle() {
        return box.middle().y();
    }
}
