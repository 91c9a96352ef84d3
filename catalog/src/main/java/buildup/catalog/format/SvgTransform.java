package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import java.util.List;
import java.util.Optional;

/** Reads the {@code transform} of SVG 1.1, section 7.6. */
final class SvgTransform {
    private static final double GREATEST = 1e9;

    private SvgTransform() {}

    /** The whole list as one map, the last of it first; empty when it cannot be read or is beyond measure. */
    static Optional<Affine> read(String text) {
        Cursor cursor = new Cursor(text);
        Affine whole = Affine.NONE;
        while (!cursor.atEnd()) {
            Optional<String> name = cursor.upTo('(');
            Optional<String> inside = cursor.upTo(')');
            Optional<Affine> one =
                    name.isPresent() && inside.isPresent() ? one(name.get().strip(), inside.get()) : Optional.empty();
            if (one.isEmpty()) {
                return Optional.empty();
            }
            whole = one.get().then(whole);
        }
        return Optional.of(whole).filter(map -> map.within(GREATEST));
    }

    private static Optional<Affine> one(String name, String inside) {
        Cursor cursor = new Cursor(inside);
        List<Double> n = cursor.numbers(7);
        if (!cursor.atEnd()) {
            return Optional.empty();
        }
        int count = n.size();
        return Optional.ofNullable(
                switch (name) {
                    case "matrix" ->
                        count == 6 ? new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5)) : null;
                    case "translate" ->
                        count == 1 || count == 2 ? Affine.shift(n.get(0), count == 2 ? n.get(1) : 0) : null;
                    case "scale" -> count == 1 || count == 2 ? Affine.scale(n.get(0), n.get(count - 1)) : null;
                    case "rotate" ->
                        count == 1
                                ? Affine.turn(n.get(0))
                                : count == 3
                                        ? Affine.shift(-n.get(1), -n.get(2))
                                                .then(Affine.turn(n.get(0)))
                                                .then(Affine.shift(n.get(1), n.get(2)))
                                        : null;
                    case "skewX" -> count == 1 ? new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0) : null;
                    case "skewY" -> count == 1 ? new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0) : null;
                    default -> null;
                });
    }
}
