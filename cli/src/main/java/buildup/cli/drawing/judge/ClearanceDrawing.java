package buildup.cli.drawing.judge;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.LineNames;
import buildup.cli.drawing.label.MarkNumbers;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.judge.clearance.Clearance;
import buildup.engine.judge.clearance.FireEnvelope;
import buildup.engine.judge.clearance.FireRow;
import buildup.engine.judge.clearance.Firebox;
import buildup.engine.judge.clearance.KeepClear;
import buildup.engine.judge.clearance.KeepClearRow;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The section, full size, with the envelope that each rule of fire allows over the opening, each piece's margin, and the
 * places that are kept clear; beside it the front with the opening, where its sides are given.
 */
public final class ClearanceDrawing {
    /** How far the picture reaches past the stack into the room, and down past the opening, in. */
    private static final double ROOM = 1;

    /** A stretch of the opening that is seen in the section, in. */
    private static final double BELOW = 0.6;

    /** A place that begins farther from the stack than this is not shown, in. */
    private static final double NEAR = 8;

    /** Where a number may stand on a piece, as shares of its box. */
    private static final List<Double> SHARES = List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);

    private final Section section;
    private final Clearance clearance;
    private final TextMeasure measure;
    private final PictureView view;
    private final Box frame;
    private final double size;
    private final int smaller;
    private final boolean alone;

    /** @param alone whether letters are of one size on paper; else they grow with a picture that is seen whole */
    private ClearanceDrawing(Section section, Clearance clearance, int smaller, boolean alone, TextMeasure measure) {
        this.smaller = smaller;
        this.alone = alone;
        this.section = section;
        this.clearance = clearance;
        this.measure = measure;
        this.view = PictureView.of(section);
        Box window = view.window();
        double low = clearance
                .firebox()
                .map(firebox -> Math.min(window.bottom(), firebox.top() - BELOW))
                .orElse(window.bottom());
        double high = clearance
                .firebox()
                .map(firebox -> Math.max(window.top(), firebox.top() + BELOW))
                .orElse(window.top());
        this.frame = reaching(new Box(window.back(), low, window.face() + ROOM, high));
        this.size = alone ? smaller * Drafting.TEXT : Math.max(view.letters(), 0.012 * frame.height());
    }

    /** As much more as it takes to show the near edge of what is kept clear, where that is not far. */
    private Box reaching(Box stack) {
        Box reach = stack;
        for (KeepClearRow row : clearance.kept()) {
            Box region = row.place().region().grown(row.place().clear());
            Box near = new Box(
                    stack.back(),
                    region.top() < stack.bottom() ? region.top() - BELOW : stack.bottom(),
                    region.back() > stack.face() ? region.back() + BELOW : stack.face(),
                    region.bottom() > stack.top() ? region.bottom() + BELOW : stack.top());
            reach = stack.near(near, 0) && near.height() < stack.height() + NEAR && near.width() < stack.width() + NEAR
                    ? reach.with(near)
                    : reach;
        }
        return reach;
    }

    /** The picture; nothing when the document asks nothing to be kept clear. */
    public static Optional<Scene> of(Section section, Clearance clearance, TextMeasure measure) {
        return isAsked(clearance)
                ? Optional.of(new ClearanceDrawing(section, clearance, 1, false, measure).scene())
                : Optional.empty();
    }

    /** Whether the document asks anything to be kept clear. */
    public static boolean isAsked(Clearance clearance) {
        return clearance.firebox().isPresent() || !clearance.kept().isEmpty();
    }

    /** The front with what fire rules allow there; nothing while the sides of the opening are not given. */
    public static Optional<Scene> front(Section section, Clearance clearance, TextMeasure measure) {
        ClearanceDrawing drawing = new ClearanceDrawing(section, clearance, 1, true, measure);
        return clearance
                .firebox()
                .flatMap(firebox -> FireFront.of(section, clearance, firebox, measure, Drafting.TEXT))
                .map(front -> PictureSheet.around(
                        section.stack().title() + ", fire from the front",
                        "Front with what fire rules allow. " + drawing.caution(),
                        About.of(Subject.CLEARANCE, List.of(front)),
                        2 * Drafting.TEXT));
    }

    private Optional<Group> front() {
        return clearance.firebox().flatMap(firebox -> FireFront.of(section, clearance, firebox, measure, size));
    }

    /** The section alone with letters that are read when it is made so many times smaller. */
    public static Scene forScale(Section section, Clearance clearance, int smaller, TextMeasure measure) {
        return new ClearanceDrawing(section, clearance, smaller, true, measure).scene();
    }

    private Scene scene() {
        List<SceneItem> items = new ArrayList<>(wood());
        LineNames names = new LineNames(measure, frame, size);
        breaks().forEach(line -> names.keepClear(line.box()));
        clearance.firebox().ifPresent(firebox -> {
            items.add(new Group("opening", About.of(Subject.CLEARANCE, opening(firebox, names))));
            items.addAll(envelopes(firebox, names));
        });
        items.addAll(places(names));
        List<Mark> marks = marks();
        MarkNumbers numbers = numbered(marks, items);
        items.addAll(numbers.items());
        items.addAll(names.items());
        if (!alone) {
            front().ifPresent(front -> items.addAll(About.of(Subject.CLEARANCE, List.of(beside(front, items)))));
        }
        items.add(PictureSheet.below(items, legend(marks, numbers), 2 * size));
        return PictureSheet.around(
                section.stack().title() + ", clearances",
                "Section with what has to stay clear, and margins. " + caution(),
                items,
                2 * size);
    }

    private Group beside(Group front, List<SceneItem> items) {
        double right =
                items.stream().mapToDouble(item -> item.box().face()).max().orElse(0);
        return front.moved(
                (1 + PictureSheet.WIDER) * right + 3 * size - front.box().back(),
                frame.top() - front.box().top());
    }

    /** The wood of the section; framing that the rules count is drawn to its ends where they lie in the picture. */
    private List<SceneItem> wood() {
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<SceneItem> areas = new ArrayList<>();
        List<SceneItem> edges = new ArrayList<>();
        for (WoodDrawing.Layer layer : wood.layers()) {
            if (isWhole(layer.number())) {
                WoodDrawing.Look look = WoodDrawing.Look.of(section.body(layer.number()));
                List<Segment> ring = section.body(layer.number()).outline().segments();
                areas.addAll(look.light(
                        Optional.empty(), Optional.of(section.name(layer.number())), ring, Point.ORIGIN, smaller));
                edges.addAll(layer.part(List.of(look.edge(ring, true))));
            } else {
                areas.addAll(layer.lightly(smaller));
                edges.addAll(layer.part(layer.edges()));
            }
        }
        wood.covering().stream().filter(About.class::isInstance).forEach(edges::add);
        List<Segment> broken = List.copyOf(breaks());
        if (!broken.isEmpty()) {
            edges.add(new Path(broken, false, LineStyle.BREAK));
        }
        return List.of(new Group("pieces", areas), new Group("edges", edges));
    }

    private boolean isWhole(int number) {
        Box box = section.body(number).outline().box();
        return section.body(number).framing()
                && clearance.fire().stream()
                        .anyMatch(row -> row.ofStack() && row.piece().equals(section.name(number)))
                && frame.holds(new Point(box.back(), box.bottom()), 0)
                && frame.holds(new Point(box.face(), box.top()), 0);
    }

    /** Where bodies go on beyond the picture, without those that are drawn to their ends. */
    private List<Line> breaks() {
        List<Box> whole = IntStream.range(0, section.bodies().size())
                .filter(this::isWhole)
                .mapToObj(number -> section.body(number).outline().box())
                .toList();
        return WoodDrawing.of(section, view).breaks().stream()
                .filter(line -> whole.stream()
                        .noneMatch(box ->
                                box.back() <= line.box().back() && line.box().face() <= box.face()))
                .toList();
    }

    /** A piece with its number in a ring, and what decides on it. */
    private record Mark(Point at, String words) {}

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        section.pieces().stream()
                .filter(body -> Boxes.overlap(body.outline().box(), frame))
                .forEach(body ->
                        said(body.name()).ifPresent(words -> marks.add(new Mark(place(body.outline(), marks), words))));
        marks.sort(Comparator.comparingDouble((Mark mark) -> -mark.at().y()));
        return marks;
    }

    /** A place on the wood as far in the middle as can be, and clear of the marks set before. */
    private Point place(Outline outline, List<Mark> marks) {
        Box box = outline.box();
        List<Point> places = new ArrayList<>();
        for (double across : SHARES) {
            for (double up : SHARES) {
                Point at = new Point(box.back() + across * box.width(), box.bottom() + up * box.height());
                if (frame.holds(at, 0) && outline.holds(at)) {
                    places.add(at);
                }
            }
        }
        Point middle = new Point(
                Math.max(frame.back(), Math.min(frame.face(), box.middle().x())),
                Math.max(frame.bottom(), Math.min(frame.top(), box.middle().y())));
        return places.stream()
                .filter(at -> marks.stream().allMatch(mark -> mark.at().distance(at) > 2 * size))
                .min(Comparator.comparingDouble(middle::distance))
                .orElse(middle);
    }

    private MarkNumbers numbered(List<Mark> marks, List<SceneItem> drawn) {
        MarkNumbers numbers = new MarkNumbers(view, measure, size);
        drawn.stream()
                .filter(Group.class::isInstance)
                .map(Group.class::cast)
                .filter(group -> !group.id().equals("pieces") && !group.id().equals("edges"))
                .flatMap(group -> Scene.leaves(group.items()).stream())
                .filter(Path.class::isInstance)
                .forEach(path -> numbers.keepClear((Path) path));
        marks.forEach(mark -> numbers.keepClear(mark.at()));
        for (int i = 0; i < marks.size(); i++) {
            numbers.set(i + 1, Subject.CLEARANCE, marks.get(i).at());
        }
        return numbers;
    }

    private String caution() {
        return clearance.firebox().isPresent() ? Clearance.CAUTION : "";
    }

    /** The upper edge of the opening, and the wall plane from there up to what is drawn of the wall. */
    private List<SceneItem> opening(Firebox firebox, LineNames names) {
        double top = firebox.top();
        List<SceneItem> items = new ArrayList<>();
        Line level = new Line(new Point(0, top), new Point(frame.face(), top));
        items.add(new Path(List.of(level), false, LineStyle.EXTENSION));
        names.add("top of the fire opening", Subject.CLEARANCE, List.of(level));
        items.add(new Path(
                List.of(
                        new Line(new Point(frame.back(), top), new Point(0, top)),
                        new Line(new Point(0, top), new Point(0, frame.bottom()))),
                false,
                LineStyle.OUTLINE));
        if (top < view.window().bottom()) {
            items.add(new Path(
                    List.of(new Line(
                            new Point(0, top), new Point(0, view.window().bottom()))),
                    false,
                    LineStyle.PLANE));
        }
        return items;
    }

    /** How the line of a rule is broken, and what that is called. */
    private enum Stroke {
        LONG(LineStyle.SHADE, "long dashes"),
        DOTS(LineStyle.CAST, "dots"),
        SHORT(LineStyle.COULD, "short dashes"),
        FINE(LineStyle.PAST, "fine dots");

        private final LineStyle style;
        private final String words;

        Stroke(LineStyle style, String words) {
            this.style = style;
            this.words = words;
        }
    }

    /** Rules that allow the same share one line. */
    private List<SceneItem> envelopes(Firebox firebox, LineNames names) {
        Map<List<Line>, List<String>> same = new LinkedHashMap<>();
        firebox.rules().forEach(rule -> {
            List<Point> edge = FireEnvelope.of(rule.above()).edge(frame.face(), frame.top() - firebox.top());
            List<Line> lines = new ArrayList<>();
            for (int i = 0; i + 1 < edge.size(); i++) {
                Line line = new Line(up(edge.get(i), firebox), up(edge.get(i + 1), firebox));
                if (line.length() > 0) {
                    Boxes.within(line, frame.grown(size / 100)).ifPresent(lines::add);
                }
            }
            same.computeIfAbsent(List.copyOf(lines), unseen -> new ArrayList<>())
                    .add(rule.name());
        });
        List<SceneItem> items = new ArrayList<>();
        int number = 0;
        for (Map.Entry<List<Line>, List<String>> entry : same.entrySet()) {
            if (entry.getKey().isEmpty()) {
                continue;
            }
            Stroke stroke = Stroke.values()[number % Stroke.values().length];
            number++;
            List<Segment> walk = List.copyOf(entry.getKey());
            items.add(new Group(
                    "envelope-" + number, About.of(Subject.CLEARANCE, List.of(new Path(walk, false, stroke.style)))));
            // where rules end on one line, their names stand at one point
            String rules = String.join(", ", entry.getValue());
            names.add(same.size() == 1 ? rules : rules + ": " + stroke.words, Subject.CLEARANCE, ends(entry.getKey()));
        }
        return items;
    }

    /** Where the edge leaves the picture, or its outermost end. */
    private List<Line> ends(List<Line> lines) {
        Line last = lines.get(lines.size() - 1);
        return List.of(new Line(last.from(), new Point(frame.face(), last.to().y())));
    }

    private static Point up(Point edge, Firebox firebox) {
        return new Point(edge.x(), firebox.top() + edge.y());
    }

    /** The places that are kept clear, cut to the picture. */
    private List<SceneItem> places(LineNames names) {
        List<SceneItem> items = new ArrayList<>();
        List<KeepClear> places =
                clearance.kept().stream().map(KeepClearRow::place).distinct().toList();
        for (KeepClear place : places) {
            Box region = place.region();
            double air = place.clear();
            List<Line> sides = new ArrayList<>();
            Box round = new Box(
                    Math.max(region.back() - air, frame.back() - ROOM),
                    Math.max(region.bottom() - air, frame.bottom() - ROOM),
                    Math.min(region.face() + air, frame.face() + ROOM),
                    Math.min(region.top() + air, frame.top() + ROOM));
            if (round.back() >= round.face() || round.bottom() >= round.top()) {
                continue;
            }
            Outline.rectangle(round).segments().stream()
                    .map(Line.class::cast)
                    .flatMap(line -> Boxes.within(line, frame).stream())
                    .forEach(sides::add);
            if (!sides.isEmpty()) {
                items.add(new Group(
                        "place-" + (items.size() + 1),
                        About.of(Subject.CLEARANCE, List.of(new Path(List.copyOf(sides), false, LineStyle.OTHER)))));
                Box drawn = Box.around(sides.stream().map(Line::box).toList());
                double y = round.top() < frame.top() ? drawn.top() : drawn.bottom();
                Line toName = new Line(new Point(drawn.face(), y), new Point(frame.face(), y));
                if (toName.length() > size) {
                    Path way = new Path(List.of(toName), false, LineStyle.EXTENSION);
                    items.addAll(About.of(Subject.CLEARANCE, List.of(way)));
                }
                names.add(
                        place.name(),
                        Subject.CLEARANCE,
                        List.of(new Line(new Point(drawn.back(), y), new Point(frame.face(), y))));
            }
        }
        return items;
    }

    /** What decides on a piece, in words. */
    private Optional<String> said(String piece) {
        Optional<String> fire = clearance.fire().stream()
                .filter(row -> row.ofStack() && row.piece().equals(piece))
                .min(Comparator.comparingDouble(row -> row.spare().orElse(Double.NEGATIVE_INFINITY)))
                .map(row -> words(section, row));
        List<KeepClearRow> rows = clearance.kept().stream()
                .filter(row -> section.name(row.body()).equals(piece))
                .sorted(Comparator.comparingDouble(KeepClearRow::margin))
                .toList();
        // all that is wrong, else what comes nearest to it
        long said = Math.max(
                1,
                rows.stream().filter(row -> row.margin() < -Tolerance.TOUCHING).count());
        String kept = rows.stream().limit(said).map(this::words).collect(Collectors.joining("; "));
        if (kept.isEmpty()) {
            return fire;
        }
        return Optional.of(fire.map(words -> words + "; " + kept).orElse(piece + ": " + kept));
    }

    /** As the verdict says it. */
    private String words(KeepClearRow row) {
        String place = row.place().name();
        if (row.margin() >= -Tolerance.TOUCHING) {
            return size(section, Figure.atMost(Math.max(0, row.margin()))) + " to spare beside " + place;
        }
        return row.has() < -Tolerance.TOUCHING
                ? "reaches " + size(section, Figure.atLeast(-row.has())) + " into " + place
                : "leaves " + size(section, Figure.atMost(Math.max(0, row.has()))) + " of air to " + place + ", "
                        + size(section, Figure.atLeast(-row.margin())) + " too little";
    }

    /** A row in a few words, sizes in the unit of the sheet. */
    static String words(Section section, FireRow row) {
        String said = row.spare().isEmpty()
                ? "too deep at any distance"
                : row.clear()
                        ? size(section, Figure.atMost(row.spare().getAsDouble())) + " to spare"
                        : size(section, Figure.atLeast(-row.spare().getAsDouble())) + " too near";
        return row.piece() + ": " + said + ", " + row.rule().name();
    }

    private static String size(Section section, Figure figure) {
        return Drafting.printer(section.stack()).bare(figure);
    }

    private Group legend(List<Mark> marks, MarkNumbers numbers) {
        Legend legend = new Legend(measure, size)
                .title(section.stack().title())
                .text("Clearances. Section " + Drafting.scale(smaller) + ". Sizes in " + Drafting.units(section.stack())
                        + ".");
        if (clearance.firebox().isPresent()) {
            legend.text(
                    "Nothing that burns may be in front of a line or under it, by the rules at its end. To spare: how much"
                            + " nearer to the opening a piece could be. " + caution());
        }
        if (clearance.firebox().filter(firebox -> firebox.left().isEmpty()).isPresent()) {
            legend.text("The front is drawn where left and right of the firebox are given.");
        }
        legend.kinds(WoodDrawing.of(section, view).looks(), smaller);
        for (int i = 0; i < marks.size(); i++) {
            int number = i + 1;
            legend.sample(marks.get(i).words(), at -> numbers.ringed(number, at.plus(new Point(size, size / 2))));
        }
        if (!clearance.kept().isEmpty()) {
            legend.line("kept clear, with its air", LineStyle.OTHER);
        }
        return legend.group();
    }
}
