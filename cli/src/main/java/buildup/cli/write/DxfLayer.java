package buildup.cli.write;

import buildup.cli.scene.LineStyle;
import java.util.Optional;

/**
 * A layer of a DXF drawing, by what its lines mean, with one of the format's numbered colors, negative where the
 * layer is switched off. The paper under a leader has no layer, for a drawing of lines covers nothing.
 */
enum DxfLayer {
    TRIM(7),
    NAILER(30),
    FRAMING(8),
    HATCH(8),
    DIMENSIONS(3),
    BALLOONS(3),
    NOTES(7),
    SHEET(8),
    LIGHT(40),
    SIGHT(4),
    BEARING(1),
    WEIGHTS(2),
    NAILS(6),
    SEASONS(5),
    /** Switched off: it lies under the wood, and nothing here covers it. */
    GRID(-8);

    private final int color;

    DxfLayer(int color) {
        this.color = color;
    }

    int color() {
        return color;
    }

    /** The layer of the texts of a group, where hiding the group's lines has to hide its texts too. */
    static Optional<DxfLayer> ofWords(String group) {
        return switch (group) {
            case "dimensions" -> Optional.of(DIMENSIONS);
            case "letters" -> Optional.of(BALLOONS);
            default -> Optional.empty();
        };
    }

    static Optional<DxfLayer> of(LineStyle style) {
        return switch (style) {
            case OUTLINE, ARRIS, OTHER -> Optional.of(TRIM);
            case NAILER -> Optional.of(NAILER);
            case STANDING, BREAK, PLANE -> Optional.of(FRAMING);
            case DIMENSION, TICK, EXTENSION -> Optional.of(DIMENSIONS);
            case LEADER -> Optional.of(BALLOONS);
            case RULE, CHECK, CLOUD -> Optional.of(SHEET);
            case LIT, SHADE, CAST, RAY -> Optional.of(LIGHT);
            case SIGHT -> Optional.of(SIGHT);
            case BEARING -> Optional.of(BEARING);
            case FALL, PAST -> Optional.of(WEIGHTS);
            case NAIL, COULD, BITE -> Optional.of(NAILS);
            case DRY, DAMP -> Optional.of(SEASONS);
            case GRID, GRID_INCH -> Optional.of(GRID);
            case CASING -> Optional.empty();
        };
    }
}
