package buildup.cli.drawing.look;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.sheet.Looked;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.look.sight.SeenMember;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The section as one eye sees it: what it sees of the room side, what it does not, and a line to every place where a
 * member goes out of sight behind another.
 */
public final class SightDrawing {
    private final Section section;
    private final Sighting sighting;
    private final RoomLines room;

    private SightDrawing(Section section, Sighting sighting, int smaller, Looked looked, TextMeasure measure) {
        this.section = section;
        this.sighting = sighting;
        this.room = new RoomLines(section, smaller, looked, measure);
    }

    /** The section with the sight lines of one eye, full size. */
    public static Scene of(Section section, Sighting sighting, TextMeasure measure) {
        return new SightDrawing(section, sighting, 1, Looked.SCREEN, measure).scene();
    }

    /** The same with letters that are read when it is made so many times smaller. */
    public static Scene forScale(Section section, Sighting sighting, int smaller, TextMeasure measure) {
        return new SightDrawing(section, sighting, smaller, Looked.PAGE, measure).scene();
    }

    /** The same at full size on several pages, the words of its lines told before them. */
    public static Scene inParts(Section section, Sighting sighting, TextMeasure measure) {
        return new SightDrawing(section, sighting, 1, Looked.PARTS, measure).scene();
    }

    private Scene scene() {
        String where = where();
        return room.scene(
                "seen by " + sighting.eye().name(),
                "Section with the sight lines of one eye. " + where,
                new Group("seen", walk()),
                room.source(
                        new Point(sighting.eye().distance(), sighting.eye().height()),
                        sighting.eye().name()),
                "sight",
                "line",
                lines(),
                LineStyle.SIGHT,
                room.legend("Seen by " + sighting.eye().name())
                        .text(where)
                        .line("seen", LineStyle.SEEN)
                        .line("out of sight", LineStyle.HIDDEN)
                        .line("sight line past what hides; how much of the member is seen", LineStyle.SIGHT));
    }

    private String where() {
        Eye eye = sighting.eye();
        FigurePrinter printer = Drafting.printer(section.stack());
        OptionalDouble floor = section.stack().space().floor();
        return "Eye: " + printer.print(Figure.length(eye.distance())) + " out from the wall plane and "
                + (floor.isPresent()
                        ? printer.print(Figure.length(eye.height() - floor.getAsDouble())) + " over the floor."
                        : printer.print(Figure.length(eye.height())) + " up from the datum.");
    }

    /** The whole room side as if out of sight, and over it what is seen. */
    private List<SceneItem> walk() {
        List<SceneItem> walk = new ArrayList<>();
        for (SeenMember seen : sighting.members()) {
            walk.add(new Path(member(seen).segments(), false, LineStyle.HIDDEN));
        }
        for (SeenMember seen : sighting.members()) {
            seen.visible().forEach(part -> walk.add(new Path(List.of(part), false, LineStyle.SEEN)));
        }
        return walk;
    }

    private Member member(SeenMember seen) {
        return section.members().get(seen.member());
    }

    private List<RoomLines.Named> lines() {
        Point eye = new Point(sighting.eye().distance(), sighting.eye().height());
        List<RoomLines.Named> lines = new ArrayList<>();
        for (SeenMember seen : sighting.members()) {
            Member member = member(seen);
            String name =
                    room.name(member) + ": " + room.size(seen.length()) + " of " + room.size(member.length()) + " seen";
            for (Point target : grazed(seen)) {
                room.within(target, eye).ifPresent(line -> lines.add(new RoomLines.Named(name, line)));
            }
        }
        return lines;
    }

    /** Where a member goes out of sight between its ends. */
    private List<Point> grazed(SeenMember seen) {
        Point from = member(seen).from();
        Point to = member(seen).to();
        List<Point> points = new ArrayList<>();
        for (Segment part : seen.visible()) {
            for (Point end : List.of(part.from(), part.to())) {
                boolean inner = !end.near(from, Tolerance.TOUCHING) && !end.near(to, Tolerance.TOUCHING);
                boolean joint = seen.visible().stream()
                        .filter(other -> other != part)
                        .anyMatch(other -> other.from().near(end, Tolerance.SNAP)
                                || other.to().near(end, Tolerance.SNAP));
                if (inner && !joint) {
                    points.add(end);
                }
            }
        }
        return points;
    }
}
