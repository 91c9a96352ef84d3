package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The true scale of an SVG drawing, from the size of its sheet and its view box (SVG 1.1, section 7).
 *
 * @param map from user units, y down, to the unit, y up
 */
record SvgSheet(Affine map, Optional<LengthUnit> unit) {
    /** A sheet that states no true size is taken in user units. */
    static SvgSheet of(Map<String, String> root) {
        Optional<SvgLength> width = Optional.ofNullable(root.get("width")).flatMap(SvgLength::read);
        Optional<SvgLength> height = Optional.ofNullable(root.get("height")).flatMap(SvgLength::read);
        Optional<LengthUnit> unit = width.flatMap(SvgLength::unit).or(() -> height.flatMap(SvgLength::unit));
        List<Double> box = new Cursor(root.getOrDefault("viewBox", "")).numbers(4);
        boolean boxed = box.size() == 4 && box.get(2) > 0 && box.get(3) > 0;
        double left = boxed ? box.get(0) : 0;
        double bottom = boxed
                ? box.get(1) + box.get(3)
                : height.map(SvgLength::userUnits).orElse(0.0);
        Affine up = Affine.shift(-left, -bottom).then(Affine.scale(1, -1));
        if (unit.isEmpty()) {
            return new SvgSheet(up, Optional.empty());
        }
        double perUserUnit =
                1 / (SvgLength.USER_UNITS_PER_INCH * unit.get().of(1).toInches());
        if (!boxed) {
            return new SvgSheet(up.then(Affine.scale(perUserUnit, perUserUnit)), unit);
        }
        Optional<Double> across =
                width.map(w -> inUnit(w, unit.get(), perUserUnit) / box.get(2)).filter(s -> s > 0);
        Optional<Double> along =
                height.map(h -> inUnit(h, unit.get(), perUserUnit) / box.get(3)).filter(s -> s > 0);
        double x = across.or(() -> along).orElse(1.0);
        double y = along.or(() -> across).orElse(1.0);
        String fit = root.getOrDefault("preserveAspectRatio", "").strip();
        if (!fit.startsWith("none")) {
            x = fit.endsWith("slice") ? Math.max(x, y) : Math.min(x, y);
            y = x;
        }
        return new SvgSheet(up.then(Affine.scale(x, y)), unit);
    }

    /** Moves what an element draws to its x and y. */
    static Affine shift(Map<String, String> attributes) {
        return Affine.shift(
                userUnits(attributes, "x").orElse(0.0),
                userUnits(attributes, "y").orElse(0.0));
    }

    /**
     * From the view box of a nested drawing or a symbol to where it is shown (SVG 1.1, section 7.8): as large as it goes
     * in, in the middle, if nothing else is said.
     *
     * @param shown the element whose x, y, width and height say where: the drawing itself, or what uses the symbol
     */
    static Affine port(Map<String, String> drawing, Map<String, String> shown) {
        List<Double> box = new Cursor(drawing.getOrDefault("viewBox", "")).numbers(4);
        Optional<Double> width = userUnits(shown, "width");
        Optional<Double> height = userUnits(shown, "height");
        if (box.size() < 4 || !(box.get(2) > 0) || !(box.get(3) > 0) || (width.isEmpty() && height.isEmpty())) {
            return shift(shown);
        }
        double x = width.map(w -> w / box.get(2)).orElseGet(() -> height.orElseThrow() / box.get(3));
        double y = height.map(h -> h / box.get(3)).orElse(x);
        String fit = drawing.getOrDefault("preserveAspectRatio", "").strip();
        if (!fit.startsWith("none")) {
            x = fit.endsWith("slice") ? Math.max(x, y) : Math.min(x, y);
            y = x;
        }
        double left = share(fit, "xMin", "xMax") * (width.orElse(x * box.get(2)) - x * box.get(2));
        double up = share(fit, "YMin", "YMax") * (height.orElse(y * box.get(3)) - y * box.get(3));
        return Affine.shift(-box.get(0), -box.get(1))
                .then(Affine.scale(x, y))
                .then(Affine.shift(left, up))
                .then(shift(shown));
    }

    private static double share(String fit, String none, String all) {
        return fit.contains(none) ? 0 : fit.contains(all) ? 1 : 0.5;
    }

    private static Optional<Double> userUnits(Map<String, String> attributes, String name) {
        return Optional.ofNullable(attributes.get(name))
                .flatMap(SvgLength::read)
                .map(SvgLength::userUnits);
    }

    /** A stated size in the unit of the sheet, to the last digit where it is stated in just that. */
    private static double inUnit(SvgLength length, LengthUnit unit, double perUserUnit) {
        return length.unit().equals(Optional.of(unit)) ? length.amount() : length.userUnits() * perUserUnit;
    }
}
