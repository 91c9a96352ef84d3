package buildup.catalog.supply;

import buildup.shared.length.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that is bought by the can, the bottle or the tube.
 *
 * @param about one line for a list
 * @param coverage of what is spread; absent for what is laid in a bead or fills holes
 * @param bead diameter of the bead of an adhesive
 * @param coats as many as usual
 * @param packs in which it is sold
 * @param metricPacks in which it is sold to a metric job
 */
public record Good(
        String name,
        String about,
        Kind kind,
        Optional<WetFilm> coverage,
        Optional<Length> bead,
        int coats,
        List<Volume> packs,
        List<Volume> metricPacks) {
    /** What it is for. */
    public enum Kind {
        /** Between the faces of miters, returns, scarfs and plies. */
        GLUE,
        /** In a bead behind a piece. */
        ADHESIVE,
        /** In the holes of nails and the seams of returns. */
        FILLER,
        /** Under the paint, on what shows. */
        PRIMER,
        /** On what shows. */
        PAINT;

        /** As documents call it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Whether it is spread over faces, so that it needs a coverage. */
        public boolean spread() {
            return this == GLUE || this == PRIMER || this == PAINT;
        }
    }

    public Good {
        packs = List.copyOf(packs);
        metricPacks = List.copyOf(metricPacks);
    }
}
