package buildup.catalog.inbox;

import buildup.profiles.curve.Affine;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.Optional;
import java.util.OptionalInt;

/** The unit that a DXF file states by a number ({@code $INSUNITS}); the numbers are those of the DXF reference. */
enum DxfUnits {
    INCH(1, LengthUnit.INCH, 1),
    FOOT(2, LengthUnit.FOOT, 1),
    MILLIMETRE(4, LengthUnit.MILLIMETRE, 1),
    CENTIMETRE(5, LengthUnit.CENTIMETRE, 1),
    METRE(6, LengthUnit.MILLIMETRE, 1000),
    MICROINCH(8, LengthUnit.INCH, 1e-6),
    MIL(9, LengthUnit.INCH, 1e-3),
    YARD(10, LengthUnit.FOOT, 3),
    MICROMETRE(13, LengthUnit.MILLIMETRE, 1e-3),
    DECIMETRE(14, LengthUnit.CENTIMETRE, 10);

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
    static Scale of(OptionalInt stated, OptionalInt metric, Source source) {
        for (DxfUnits one : values()) {
            if (stated.isPresent() && stated.getAsInt() == one.number) {
                return one.scale(source);
            }
        }
        if (stated.orElse(0) != 0) {
            return new Scale(
                    Affine.NONE,
                    Optional.empty(),
                    Optional.of(source.problem(
                                    "drawing-unit",
                                    "The drawing is in a unit that no shop works in ($INSUNITS " + stated.getAsInt()
                                            + "); it is taken as unstated.",
                                    1)
                            .cure("Save it in inches or millimetres, or say the unit.")));
        }
        if (metric.isEmpty() || metric.getAsInt() > 1 || metric.getAsInt() < 0) {
            return new Scale(Affine.NONE, Optional.empty(), Optional.empty());
        }
        LengthUnit guess = metric.getAsInt() == 1 ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        return new Scale(
                Affine.NONE,
                Optional.of(guess),
                Optional.of(source.note(
                                "drawing-unit",
                                "The drawing states no unit; as it is "
                                        + (metric.getAsInt() == 1 ? "metric" : "not metric")
                                        + " ($MEASUREMENT), it is taken in " + guess.symbol() + ".",
                                1)
                        .cure("Say the unit if that is wrong.")));
    }

    private Scale scale(Source source) {
        if (Math.abs(factor - 1) > 0) {
            return new Scale(
                    Affine.scale(factor, factor),
                    Optional.of(unit),
                    Optional.of(source.note(
                            "drawing-unit",
                            "The drawing is in " + words() + "; turned into " + unit.symbol() + ".",
                            1)));
        }
        return new Scale(Affine.NONE, Optional.of(unit), Optional.empty());
    }

    private String words() {
        return switch (this) {
            case METRE -> "metres";
            case MICROINCH -> "millionths of an inch";
            case MIL -> "thousandths of an inch";
            case YARD -> "yards";
            case MICROMETRE -> "thousandths of a millimetre";
            case DECIMETRE -> "tenths of a metre";
            default -> unit.symbol();
        };
    }
}
