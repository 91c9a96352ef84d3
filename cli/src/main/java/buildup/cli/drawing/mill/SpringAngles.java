package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The angles at which the flats of a sprung molding leave its back: its spring at the wall, the rest of the square at the
 * ceiling.
 *
 * @param outline as it is drawn, with the names that a sprung molding gives its flats
 */
record SpringAngles(Outline outline, TextMeasure measure, FigurePrinter printer) {
    private static final double RADIUS = 0.35;

    /** How far the line of the back is drawn on past the arc, in. */
    private static final double PAST = 0.1;

    /** What a text keeps clear of the two lines and of the arc, in. */
    private static final double CLEAR = 0.08;

    /** So much farther from the corner a text is tried that meets the wood, in. */
    private static final double STEP = 0.05;

    /** @param sizes what stands beside the outline already */
    List<SceneItem> items(List<SceneItem> sizes) {
        List<SceneItem> items = new ArrayList<>();
        named("back").ifPresent(back -> {
            named("wall-flat")
                    .ifPresent(flat ->
                            items.addAll(angle(back.to(), back.direction(1), flat.direction(0), "spring ", sizes)));
            named("ceiling-flat")
                    .ifPresent(flat -> items.addAll(angle(
                            back.from(),
                            back.direction(0).times(-1),
                            flat.direction(1).times(-1),
                            "",
                            sizes)));
        });
        return items;
    }

    private Optional<Segment> named(String member) {
        return outline.strokes().stream()
                .filter(stroke -> stroke.member().equals(member))
                .map(Stroke::segment)
                .findFirst();
    }

    /**
     * An angle at a corner.
     *
     * @param along the line of the back on past the corner, 1 in long
     * @param flat the flat from the corner, 1 in long
     */
    private List<SceneItem> angle(Point corner, Point along, Point flat, String word, List<SceneItem> sizes) {
        double angle = Math.acos(Math.max(-1, Math.min(1, along.x() * flat.x() + along.y() * flat.y())));
        String text = word + printer.print(Figure.angle(Math.toDegrees(angle)));
        Label within = within(text, angle, corner, along.plus(flat).unit());
        Label label = isFree(within, sizes)
                ? within
                : Optional.of(across(text, corner, along, flat))
                        .filter(other -> isFree(other, sizes) && !meetsWood(other))
                        .orElse(within);
        Line on = new Line(corner.plus(along.times(Drafting.EXTENSION_GAP)), corner.plus(along.times(RADIUS + PAST)));
        Arc arc = new Arc(
                corner.plus(along.times(RADIUS)), corner.plus(flat.times(RADIUS)), corner, along.cross(flat) > 0);
        return List.of(
                new Path(List.of(on), false, LineStyle.EXTENSION),
                new Path(List.of(arc), false, LineStyle.DIMENSION),
                label);
    }

    /** Between the two lines, past the arc. */
    private Label within(String text, double angle, Point corner, Point between) {
        double away = away(text, angle, between);
        Label label = label(text, corner.plus(between.times(away)));
        while (meetsWood(label)) {
            away += STEP;
            label = label(text, corner.plus(between.times(away)));
        }
        return label;
    }

    /** Across the line of the back, beside the end of the arc: for a stick so thin that its size stands below the angle. */
    private Label across(String text, Point corner, Point along, Point flat) {
        Point side = flat.minus(along.times(along.x() * flat.x() + along.y() * flat.y()))
                .unit()
                .times(-1);
        double half = Math.abs(side.x()) * measure.width(text, Drafting.FIGURES) / 2
                + Math.abs(side.y()) * Drafting.FIGURES * Label.CAPITALS / 2;
        return label(text, corner.plus(along.times(RADIUS)).plus(side.times(2 * CLEAR + half)));
    }

    private static boolean isFree(Label label, List<SceneItem> sizes) {
        return sizes.stream().noneMatch(size -> RadiusPlaces.covers(size, RadiusPlaces.wide(label.box())));
    }

    private boolean meetsWood(Label label) {
        return outline.strokes().stream()
                .anyMatch(stroke -> RadiusPlaces.meets(stroke.segment(), RadiusPlaces.wide(label.box())));
    }

    private Label label(String text, Point at) {
        return Label.centered(measure, text, at, Drafting.FIGURES, false);
    }

    /** How far from the corner the middle of a text lies that keeps clear of the arc. */
    private double away(String text, double angle, Point between) {
        double wide = measure.width(text, Drafting.FIGURES) / 2;
        double high = Drafting.FIGURES * Label.CAPITALS / 2;
        double half = Math.abs(between.x()) * wide + Math.abs(between.y()) * high;
        double past = RADIUS + CLEAR + half;
        // where the angle is sharp, far enough out for the text to lie between the lines
        double clear = (Math.hypot(wide * Math.abs(between.y()), high) + CLEAR) / Math.sin(angle / 2);
        return Math.max(past, clear);
    }
}
