package buildup.cli.page;

import buildup.cli.table.Html;
import buildup.engine.judge.along.FigureCurve;
import buildup.engine.judge.along.FigureCurve.Break;
import buildup.engine.judge.along.FigureCurve.How;
import buildup.engine.judge.along.FigureCurve.Place;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** One curve as a picture, in the page's own letters: the style says how its lines look. */
record CurvePicture(FigureCurve curve) {
    private static final int WIDTH = 400;
    private static final int HEIGHT = 190;
    private static final int LEFT = 100;
    private static final int RIGHT = 12;
    private static final int ABOVE = 12;
    private static final int BELOW = 34;

    /** A point of the curve; where the figure is absent the line is interrupted. */
    private record Spot(double at, OptionalDouble figure) {}

    String svg() {
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " "
                + HEIGHT + "\" role=\"img\" aria-label=\""
                + Html.text(curve.rule().text() + " against " + curve.place()) + "\">\n");
        svg.append("<path class=\"axes\" d=\"M" + LEFT + " " + ABOVE + "V" + (HEIGHT - BELOW) + "H" + (WIDTH - RIGHT)
                + "\"/>\n");
        if (isLimited()) {
            String y = y(curve.rule().value());
            svg.append("<path class=\"limit\" d=\"M" + LEFT + " " + y + "H" + (WIDTH - RIGHT) + "\"/>\n");
        }
        Stream.concat(
                        curve.turns().stream().map(turn -> turn.value()),
                        curve.breaks().stream().map(Break::at))
                .forEach(at -> svg.append(
                        "<path class=\"change\" d=\"M" + x(at) + " " + ABOVE + "V" + (HEIGHT - BELOW) + "\"/>\n"));
        svg.append("<path class=\"line\" d=\"" + line() + "\"/>\n");
        Quantity quantity = curve.rule().figure().quantity();
        if (figures().length > 0) {
            svg.append(words(LEFT - 4, toY(most()) + 4, "end", quantity, most()));
            if (most() > least()) {
                svg.append(words(LEFT - 4, toY(least()) + 4, "end", quantity, least()));
            }
        }
        svg.append(words(LEFT, HEIGHT - BELOW + 16, "start", curve.scale(), from()));
        svg.append(words(WIDTH - RIGHT, HEIGHT - BELOW + 16, "end", curve.scale(), to()));
        Place now = curve.places().get(curve.now());
        svg.append("<circle class=\"spot\" cx=\"" + x(now.at()) + "\" cy=\""
                + y(now.figure().orElse(least())) + "\" r=\"5\""
                + (now.figure().isPresent() ? "" : " visibility=\"hidden\"") + "/>\n");
        return svg + "</svg>";
    }

    private static String words(int x, double y, String anchor, Quantity quantity, double value) {
        String inches = Curves.print(FigurePrinter.INCHES, quantity, value);
        String metric = Curves.print(FigurePrinter.MILLIMETERS, quantity, value);
        return text(x, y, anchor, "in", inches) + text(x, y, anchor, "mm", metric);
    }

    private static String text(int x, double y, String anchor, String unit, String words) {
        return "<text class=\"" + unit + "\" x=\"" + x + "\" y=\"" + number(y) + "\" text-anchor=\"" + anchor + "\">"
                + Html.text(words) + "</text>\n";
    }

    /** Places and both sides of each break, from left to right. */
    private String line() {
        List<Spot> spots = new ArrayList<>();
        curve.places().forEach(place -> spots.add(new Spot(place.at(), place.figure())));
        for (Break there : curve.breaks()) {
            spots.add(new Spot(there.at(), there.before()));
            if (there.how() != How.BENDS) {
                spots.add(new Spot(there.at(), there.after()));
            }
        }
        spots.sort(Comparator.comparingDouble(Spot::at));
        StringBuilder line = new StringBuilder();
        boolean drawn = false;
        for (Spot spot : spots) {
            if (spot.figure().isPresent()) {
                line.append(drawn ? "L" : "M")
                        .append(x(spot.at()))
                        .append(' ')
                        .append(y(spot.figure().getAsDouble()));
            }
            drawn = spot.figure().isPresent();
        }
        return line.toString();
    }

    private boolean isLimited() {
        return curve.held();
    }

    private double[] figures() {
        return curve.places().stream()
                .flatMapToDouble(place -> place.figure().stream())
                .toArray();
    }

    private DoubleStream shown() {
        return DoubleStream.concat(
                DoubleStream.of(figures()),
                isLimited() ? DoubleStream.of(curve.rule().value()) : DoubleStream.empty());
    }

    private double least() {
        return shown().min().orElse(0);
    }

    private double most() {
        return shown().max().orElse(0);
    }

    private double from() {
        return curve.places().get(0).at();
    }

    private double to() {
        return curve.places().get(curve.places().size() - 1).at();
    }

    /** Where a size stands, from the left. */
    String x(double at) {
        return number(LEFT + (at - from()) / (to() - from()) * (WIDTH - LEFT - RIGHT));
    }

    /** Where a figure stands, from above. */
    String y(double figure) {
        return number(toY(figure));
    }

    private double toY(double figure) {
        double range = most() - least();
        double share = range > 0 ? (figure - least()) / range : 0.5;
        return HEIGHT - BELOW - 6 - share * (HEIGHT - BELOW - ABOVE - 12);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
