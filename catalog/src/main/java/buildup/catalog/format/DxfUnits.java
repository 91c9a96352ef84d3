package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.Optional;
import java.util.OptionalInt;

/** The unit that a DXF file states by a number ({@code $INSUNITS}); the numbers are those of the DXF reference. */
enum DxfUnits {
    INCH(1, LengthUnit.INCH, 1),
    FOOT(2, LengthUnit.FOOT, 1),
    MILLIMETER(4, LengthUnit.MILLIMETER, 1),
    CENTIMETER(5, LengthUnit.CENTIMETER, 1),
    METER(6, LengthUnit.MILLIMETER, 1000),
    MICROINCH(8, LengthUnit.INCH, 1e-6),
    MIL(9, LengthUnit.INCH, 1e-3),
    YARD(10, LengthUnit.FOOT, 3),
    MICROMETER(13, LengthUnit.MILLIMETER, 1e-3),
    DECIMETER(14, LengthUnit.CENTIMETER, 10);

    private final int number;
    private final LengthUnit unit;
    private final double factor;

    DxfUnits(int number, LengthUnit unit, double factor) {
        this.number = number;
        this.unit = unit;
        this.factor = factor;
    }

    /**
     * What to do with the numbers of a drawing, and the unit they are then in.
     *
     * @param said what there is to say of it
     */
    record Scale(Affine map, Optional<LengthUnit> unit, Optional<Notice> said) {}

    /**
     * The scale of a file.
     *
     * @param stated {@code $INSUNITS}
     * @param metric {@code $MEASUREMENT}: 0 inches, 1 metric
     */
    static Scale of(OptionalInt stated, OptionalInt metric) {
        for (DxfUnits one : values()) {
            if (stated.isPresent() && stated.getAsInt() == one.number) {
                return one.scale();
            }
        }
        if (stated.orElse(0) != 0) {
            return new Scale(
                    Affine.NONE,
                    Optional.empty(),
                    Optional.of(FormatNotices.NO_SHOP_UNIT.with("number", Figure.count(stated.getAsInt()))));
        }
        if (metric.isEmpty() || metric.getAsInt() > 1 || metric.getAsInt() < 0) {
            return new Scale(Affine.NONE, Optional.empty(), Optional.empty());
        }
        LengthUnit guess = metric.getAsInt() == 1 ? LengthUnit.MILLIMETER : LengthUnit.INCH;
        return new Scale(
                Affine.NONE,
                Optional.of(guess),
                Optional.of((guess.isMetric() ? FormatNotices.GUESSED_METRIC : FormatNotices.GUESSED_INCHES)
                        .with("unit", guess.symbol())));
    }

    private Scale scale() {
        if (Math.abs(factor - 1) > 0) {
            return new Scale(
                    Affine.scale(factor, factor),
                    Optional.of(unit),
                    Optional.of(FormatNotices.UNIT_TURNED.with("drawn", words()).with("unit", unit.symbol())));
        }
        return new Scale(Affine.NONE, Optional.of(unit), Optional.empty());
    }

    private String words() {
        return switch (this) {
            case METER -> "meters";
            case MICROINCH -> "millionths of an inch";
            case MIL -> "thousandths of an inch";
            case YARD -> "yards";
            case MICROMETER -> "thousandths of a millimeter";
            case DECIMETER -> "tenths of a meter";
            default -> unit.symbol();
        };
    }
}
