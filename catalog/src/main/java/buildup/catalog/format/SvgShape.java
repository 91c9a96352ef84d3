package buildup.catalog.format;

import buildup.profiles.curve.DrawnCurve;
import buildup.profiles.curve.Oval;
import buildup.profiles.curve.Straight;
import buildup.profiles.curve.Strand;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the basic shapes of SVG 1.1, chapter 9, and the path. */
final class SvgShape {
    static final Set<String> NAMES = Set.of("path", "line", "polyline", "polygon", "rect", "circle", "ellipse");

    /** What an element draws, and what is wrong with it, in a sentence. */
    record Read(List<Strand> strands, Optional<Phrase> fault) {
        private static Read of(DrawnCurve... curves) {
            return new Read(List.of(new Strand(List.of(curves), true)), Optional.empty());
        }

        private static Read faulty(Phrase fault) {
            return new Read(List.of(), Optional.of(fault));
        }
    }

    private final String element;
    private final Map<String, String> attributes;
    private Optional<Phrase> fault = Optional.empty();

    private SvgShape(String element, Map<String, String> attributes) {
        this.element = element;
        this.attributes = attributes;
    }

    static Read read(String element, Map<String, String> attributes) {
        return new SvgShape(element, attributes).read();
    }

    private Read read() {
        Read read = switch (element) {
            case "path" -> path();
            case "polyline", "polygon" -> poly();
            case "line" -> line();
            case "rect" -> rect();
            case "circle" -> oval(length("r", 0), length("r", 0));
            default -> oval(length("rx", 0), length("ry", 0));
        };
        return fault.isPresent() ? new Read(List.of(), fault) : read;
    }

    private double length(String name, double otherwise) {
        String text = attributes.get(name);
        if (text == null || text.isBlank() || text.strip().equals("auto")) {
            return otherwise;
        }
        Optional<SvgLength> read = SvgLength.read(text);
        if (read.isEmpty()) {
            fault = Optional.of(FormatNotices.NOT_A_SHAPE_LENGTH
                    .with("element", element)
                    .with("attribute", name)
                    .with("text", Numerals.shown(text)));
        }
        return read.map(SvgLength::userUnits).orElse(otherwise);
    }

    private Read path() {
        SvgPath.Read path = SvgPath.read(attributes.getOrDefault("d", ""));
        return new Read(
                path.strands(), path.faultAt().map(at -> FormatNotices.PATH_BEYOND.with("letter", Figure.count(at))));
    }

    private Read poly() {
        Cursor cursor = new Cursor(attributes.getOrDefault("points", ""));
        List<Double> numbers = cursor.numbers(2 * Limits.MOST_POINTS + 4);
        List<DrawnCurve> curves = new ArrayList<>();
        for (int i = 2; i + 1 < numbers.size(); i += 2) {
            curves.add(new Straight(
                    new Point(numbers.get(i - 2), numbers.get(i - 1)), new Point(numbers.get(i), numbers.get(i + 1))));
        }
        boolean whole = (cursor.atEnd() && numbers.size() % 2 == 0) || curves.size() > Limits.MOST_POINTS;
        return new Read(
                curves.isEmpty() ? List.of() : List.of(new Strand(curves, element.equals("polygon"))),
                whole
                        ? Optional.empty()
                        : Optional.of(FormatNotices.POINTS_BEYOND
                                .with("element", element)
                                .with("letter", Figure.count(cursor.place()))));
    }

    private Read line() {
        Straight line =
                new Straight(new Point(length("x1", 0), length("y1", 0)), new Point(length("x2", 0), length("y2", 0)));
        return new Read(List.of(new Strand(List.of(line), false)), Optional.empty());
    }

    private Read oval(double rx, double ry) {
        if (rx < 0 || ry < 0) {
            return Read.faulty(FormatNotices.RADIUS_BELOW.with("element", element));
        }
        if (rx <= 0 || ry <= 0) {
            return new Read(List.of(), Optional.empty());
        }
        Point center = new Point(length("cx", 0), length("cy", 0));
        Point start = center.plus(new Point(rx, 0));
        return Read.of(new Oval(start, start, center, new Point(rx, 0), new Point(0, ry), 0, 2 * Math.PI));
    }

    private Read rect() {
        double w = length("width", 0);
        double h = length("height", 0);
        if (w < 0 || h < 0) {
            return Read.faulty(FormatNotices.SIDE_BELOW);
        }
        if (w <= 0 || h <= 0) {
            return new Read(List.of(), Optional.empty());
        }
        double x = length("x", 0);
        double y = length("y", 0);
        double rx = Math.min(w / 2, length("rx", length("ry", 0)));
        double ry = Math.min(h / 2, length("ry", length("rx", 0)));
        if (!(rx > 0 && ry > 0)) {
            return Read.of(
                    new Straight(new Point(x, y), new Point(x + w, y)),
                    new Straight(new Point(x + w, y), new Point(x + w, y + h)),
                    new Straight(new Point(x + w, y + h), new Point(x, y + h)),
                    new Straight(new Point(x, y + h), new Point(x, y)));
        }
        // from the first corner's end, clockwise as seen; each side, then its corner
        List<Point> stops = List.of(
                new Point(x + rx, y),
                new Point(x + w - rx, y),
                new Point(x + w, y + ry),
                new Point(x + w, y + h - ry),
                new Point(x + w - rx, y + h),
                new Point(x + rx, y + h),
                new Point(x, y + h - ry),
                new Point(x, y + ry));
        List<DrawnCurve> curves = new ArrayList<>();
        for (int i = 0; i < stops.size(); i += 2) {
            Point corner = stops.get(i + 1);
            curves.add(new Straight(stops.get(i), corner));
            curves.add(Oval.between(corner, stops.get((i + 2) % stops.size()), rx, ry, 0, false, true));
        }
        return new Read(List.of(new Strand(curves, true)), Optional.empty());
    }
}
