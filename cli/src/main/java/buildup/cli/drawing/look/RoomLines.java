package buildup.cli.drawing.look;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.label.LineNames;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.Looked;
import buildup.cli.drawing.sheet.NumberedList;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A section whose room side is drawn by what comes to it out of the room, along lines that are each named where they end. */
final class RoomLines {
    /** How far the picture reaches out into the room, so that lines are seen to come from somewhere. */
    private static final double ROOM = 3;

    private final Section section;
    private final TextMeasure measure;
    private final PictureView view;
    private final Box frame;
    private final double size;
    private final int smaller;
    private final Looked looked;

    /**
     * @param smaller so many times smaller the picture will be made; its letters are as much larger
     */
    RoomLines(Section section, int smaller, Looked looked, TextMeasure measure) {
        this.section = section;
        this.smaller = smaller;
        this.looked = looked;
        this.measure = measure;
        this.view = PictureView.of(section);
        Box window = view.window();
        double room = Math.max(1, Math.min(ROOM, section.totals().height() / 3));
        this.frame = new Box(window.back(), window.bottom(), window.face() + room, window.top());
        this.size = looked == Looked.SCREEN ? view.letters() : smaller * Drafting.TEXT;
    }

    /**
     * A line out of the room.
     *
     * @param name what it shows, in words
     * @param line from the section outward
     */
    record Named(String name, Line line) {}

    /** The part of a line that the picture reaches, if any. */
    Optional<Line> within(Point from, Point to) {
        return Boxes.within(new Line(from, to), frame);
    }

    /** A lamp or an eye where the picture holds it: a ring with a dot in it, and its name. */
    List<SceneItem> source(Point at, String name) {
        if (!frame.holds(at, 0)) {
            return List.of();
        }
        double ring = size / 2;
        return List.of(
                new Path(Caption.circle(at, ring), true, LineStyle.DIMENSION),
                new Path(Caption.circle(at, ring / 6), true, LineStyle.TICK),
                Label.of(
                        measure,
                        name,
                        new Point(at.x() + 1.5 * ring, at.y() - size * Label.CAPITALS / 2),
                        size,
                        Label.Anchor.START));
    }

    /** A member by its piece and its own name. */
    String name(Member member) {
        return section.name(member.body()) + " " + member.member();
    }

    /** A size in the unit of the stack. */
    String size(double inches) {
        return Drafting.size(section.stack(), inches);
    }

    /** A legend with the title and how large the picture is. */
    Legend legend(String what) {
        return new Legend(measure, size)
                .title(section.stack().title())
                .text(what + ", " + Drafting.scale(smaller) + ". Sizes in " + Drafting.units(section.stack()) + ".");
    }

    /**
     * The picture.
     *
     * @param title what it shows, after the stack's title
     * @param walk the room side, drawn by what meets it
     * @param source where the lines come from, if that is in the picture
     * @param id of the lines
     * @param word for one of them
     */
    Scene scene(
            String title,
            String description,
            Group walk,
            List<SceneItem> source,
            String id,
            String word,
            List<Named> lines,
            LineStyle style,
            Legend legend) {
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("pieces", wood.lightly(smaller)));
        items.add(new Group("edges", thin(wood.edges())));
        if (!walk.items().isEmpty()) {
            items.add(walk);
        }
        if (!source.isEmpty()) {
            items.add(new Group("source", source));
        }
        LineNames names = new LineNames(measure, frame, size);
        source.forEach(item -> names.keepClear(item.box()));
        wood.breaks().forEach(line -> names.keepClear(line.box()));
        List<Named> apart = apart(lines, style.width());
        List<String> told = looked == Looked.PARTS ? names(apart) : List.of();
        apart.forEach(line -> names.add(
                told.isEmpty() ? line.name() : numbered(word, told, line.name()),
                Subject.of(style),
                List.of(line.line())));
        if (!apart.isEmpty()) {
            items.add(new Group(
                    id,
                    apart.stream()
                            .map(line -> (SceneItem) new Path(List.of(line.line()), false, style))
                            .toList()));
        }
        items.addAll(names.items());
        items.add(PictureSheet.below(items, legend.kinds(wood.looks(), smaller).group(), size));
        for (Group list : list(style, word, told)) {
            items.add(PictureSheet.below(items, list, size));
        }
        return PictureSheet.around(section.stack().title() + ", " + title, description, items, 2 * size);
    }

    /** The names of the lines, each once, from the end of the highest line down. */
    private static List<String> names(List<Named> lines) {
        return lines.stream()
                .sorted(Comparator.comparingDouble(
                        (Named line) -> -line.line().to().y()))
                .map(Named::name)
                .distinct()
                .toList();
    }

    private static String numbered(String word, List<String> told, String name) {
        return word + " " + (told.indexOf(name) + 1);
    }

    private List<Group> list(LineStyle style, String word, List<String> told) {
        NumberedList list = new NumberedList(measure, size, measure.width(word + " " + told.size(), size));
        for (String name : told) {
            list.add(
                    Subject.of(style),
                    name,
                    at -> List.of(Label.of(
                            measure,
                            numbered(word, told, name),
                            new Point(at.x(), at.y() - size * Label.CAPITALS / 2),
                            size,
                            Label.Anchor.START)));
        }
        return list.groups();
    }

    /** What does not face the room is only hinted at here. */
    private static List<SceneItem> thin(List<SceneItem> edges) {
        return edges.stream().map(RoomLines::thin).toList();
    }

    private static SceneItem thin(SceneItem item) {
        if (item instanceof PiecePart part) {
            return new PiecePart(part.name(), part.subject(), part.home(), part.origin(), thin(part.items()));
        }
        if (item instanceof About about) {
            return new About(about.subject(), thin(about.items()));
        }
        return item instanceof Path path && path.style() != LineStyle.BREAK
                ? new Path(path.segments(), path.closed(), LineStyle.EXTENSION)
                : item;
    }

    /** Without the lines that lie on a longer one: dashes on dashes look like another kind of line. */
    private static List<Named> apart(List<Named> lines, double wide) {
        List<Named> longestFirst = lines.stream()
                .sorted(Comparator.comparingDouble((Named line) -> line.line().length())
                        .reversed())
                .toList();
        List<Named> apart = new ArrayList<>();
        for (Named line : longestFirst) {
            if (apart.stream().noneMatch(longer -> liesOn(line.line(), longer.line(), wide))) {
                apart.add(line);
            }
        }
        return apart;
    }

    private static boolean liesOn(Line line, Line longer, double wide) {
        return longer.distance(line.from()) < wide && longer.distance(line.to()) < wide;
    }
}
