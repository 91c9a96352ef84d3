package buildup.catalog.mill;

import buildup.catalog.entry.Sizes;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.length.LengthWriter;
import java.util.List;
import java.util.Optional;

/**
 * A bit or a blade in the sizes in which it is sold.
 *
 * @param about one line for a list
 * @param sizes as sold, in rising order; what they measure goes by the kind
 * @param depth how far it cuts along its shaft; of a saw, how far the blade reaches
 * @param pilot diameter of the pilot at its tip
 * @param angle of a chamfer, between the cut and the shaft
 */
public record Cutter(
        String name, String about, Kind kind, List<Length> sizes, Length depth, Optional<Length> pilot, Angle angle) {
    /** What shape it leaves in the wood, and with it what its sizes measure. */
    public enum Kind {
        /** A round quarter; its radius. */
        ROUND_OVER("round-over", "radius"),
        /** A round quarter between two fillets; its radius. */
        BEADING("beading", "radius"),
        /** A hollow quarter; its radius. */
        COVE("cove", "radius"),
        /** A hollow half round under straight sides; its diameter. */
        CORE_BOX("core-box", "diameter"),
        /** A hollow quarter and a round quarter; the radius of both. */
        OGEE("ogee", "radius"),
        /** A square groove; its width. */
        STRAIGHT("straight", "diameter"),
        /** A square step; its width past the pilot. */
        RABBET("rabbet", "width"),
        /** A slope; its height along the shaft. */
        CHAMFER("chamfer", "height"),
        /** A square groove, or a slope through and through; its kerf. */
        SAW("saw", "kerf");

        private final String word;
        private final String measured;

        Kind(String word, String measured) {
            this.word = word;
            this.measured = measured;
        }

        /** As it is written in a list. */
        public String word() {
            return word;
        }

        /** What a size of it measures. */
        public String measured() {
            return measured;
        }
    }

    /** A cutter of one size. */
    public record Sized(Cutter cutter, Length size) {
        /** As the shop calls it: {@code core box, diameter 1/2}. */
        public String call() {
            return cutter.name() + ", " + cutter.kind().measured() + " " + LengthWriter.inches(size);
        }

        /** The same for a sentence, which tells its size in the unit of the document. */
        public Phrase phrase() {
            return Phrase.of("{cutter}, {measured} {size}")
                    .with("cutter", cutter.name())
                    .with("measured", cutter.kind().measured())
                    .with("size", Sizes.listed(size));
        }
    }

    public Cutter {
        sizes = List.copyOf(sizes);
    }

    /** Every size in which it is sold. */
    public List<Sized> sized() {
        return sizes.stream().map(size -> new Sized(this, size)).toList();
    }
}
