package buildup.catalog.format;

import buildup.catalog.format.DxfTags.Tag;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One entity of a DXF file with its numbers.
 *
 * @param name what stands under group code 2
 * @param layer what stands under group code 8; where nothing does, layer 0
 * @param pairs in the order of the file
 * @param fault what is wrong with its numbers, in a sentence
 */
record DxfEntity(String type, int line, String name, String layer, List<Pair> pairs, Optional<Phrase> fault) {
    /** The layer that every drawing has. */
    private static final String UNSAID_LAYER = "0";

    /** A number under its group code; a class, for a record's numbers would be open to everyone. */
    static final class Pair {
        private final int code;
        private final double number;

        private Pair(int code, double number) {
            this.code = code;
            this.number = number;
        }

        int code() {
            return code;
        }

        double number() {
            return number;
        }
    }

    static final Set<String> DRAWN = Set.of(
            "LINE",
            "ARC",
            "CIRCLE",
            "ELLIPSE",
            "LWPOLYLINE",
            "POLYLINE",
            "VERTEX",
            "SPLINE",
            "INSERT",
            "BLOCK",
            "LAYER");

    private static final Set<Integer> WANTED = Set.of(
            10, 20, 11, 21, 12, 22, 13, 23, 40, 41, 42, 44, 45, 50, 51, 60, 62, 67, 70, 71, 72, 73, 74, 210, 220, 230);
    private static final int MOST_PAIRS = 8 * Limits.MOST_POINTS;

    DxfEntity {
        pairs = List.copyOf(pairs);
    }

    /** Reads on to the next entity; of a kind that is not drawn, nothing is kept. */
    static DxfEntity read(Tag head, DxfTags tags, Source source) throws FileRefused {
        boolean kept = DRAWN.contains(head.value());
        List<Pair> pairs = new ArrayList<>();
        Optional<Phrase> fault = Optional.empty();
        String name = "";
        String layer = UNSAID_LAYER;
        for (Optional<Tag> tag = tags.peek(); tag.isPresent() && tag.get().code() != 0; tag = tags.peek()) {
            Tag one = tags.take().orElseThrow();
            if (kept && one.code() == 2) {
                name = one.value();
            } else if (kept && one.code() == 8) {
                layer = one.value();
            }
            if (!kept || !WANTED.contains(one.code())) {
                continue;
            }
            OptionalDouble number = Numerals.number(one.value());
            if (number.isEmpty() && fault.isEmpty()) {
                fault = Optional.of(FormatNotices.IN_LINE
                        .with("line", Figure.count(one.line()))
                        .with("fault", Numerals.fault(one.value())));
            }
            pairs.add(new Pair(one.code(), number.orElse(0)));
            if (pairs.size() > MOST_PAIRS) {
                throw Plot.tooMany(source);
            }
        }
        return new DxfEntity(head.value(), head.line(), name, layer, pairs, fault);
    }

    boolean has(int code) {
        return pairs.stream().anyMatch(pair -> pair.code() == code);
    }

    double number(int code, double otherwise) {
        return pairs.stream()
                .filter(pair -> pair.code() == code)
                .mapToDouble(Pair::number)
                .findFirst()
                .orElse(otherwise);
    }

    int whole(int code, int otherwise) {
        return (int) number(code, otherwise);
    }

    boolean flag(int code, int bit) {
        return (whole(code, 0) & bit) != 0;
    }

    List<Double> numbers(int code) {
        return pairs.stream()
                .filter(pair -> pair.code() == code)
                .map(Pair::number)
                .toList();
    }

    Point point(int code) {
        return new Point(number(code, 0), number(code + 10, 0));
    }

    /** All points under a code; those of x without y are left out. */
    List<Point> points(int code) {
        List<Double> x = numbers(code);
        List<Double> y = numbers(code + 10);
        return IntStream.range(0, Math.min(x.size(), y.size()))
                .mapToObj(i -> new Point(x.get(i), y.get(i)))
                .toList();
    }

    /** Whether it belongs to a sheet round the drawing, or is switched off. */
    boolean unseen() {
        return whole(67, 0) == 1 || whole(60, 0) == 1;
    }

    /** Whether it is drawn on a plane seen from behind, where x runs the other way. */
    boolean mirrored() {
        return number(230, 1) < 0;
    }

    /** Whether its plane is tilted out of the drawing. */
    boolean tilted() {
        double out = Math.abs(number(230, 1));
        return Math.hypot(number(210, 0), number(220, 0)) > Tolerance.SAME_SHARE * out || !(out > 0);
    }
}
