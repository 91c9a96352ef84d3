package buildup.catalog.fastener;

import buildup.catalog.entry.Sizes;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.length.LengthWriter;
import java.util.List;
import java.util.Optional;

/**
 * A nail or a screw in the lengths in which it is sold.
 *
 * @param about one line for a list
 * @param diameter of the shank; of a screw over the threads
 * @param root of a screw, at the foot of the threads; absent for a nail
 * @param head diameter of the head; the shank's own when there is none
 * @param lengths as sold, in rising order
 * @param tool name of what drives it
 * @param metric whether its list is kept in millimeters or centimeters, as of a shop that buys by them
 * @param boxes how many lie in each size of box; empty when no list says
 */
public record Fastener(
        String name,
        String about,
        Kind kind,
        Length diameter,
        Optional<Length> root,
        Length head,
        List<Length> lengths,
        String tool,
        boolean metric,
        List<Integer> boxes) {
    /** Nails hold by friction, screws by their threads. */
    public enum Kind {
        NAIL,
        SCREW
    }

    /** A fastener of one length, as a stack asks for it. */
    public record Cut(Fastener fastener, Length length) {
        /** As the trade calls it: {@code 15 ga x 2-1/2}, {@code 8d finish}. */
        public String call() {
            return fastener.lengths().size() == 1 && fastener.lengths().get(0).near(length, Sizes.SAME)
                    ? fastener.name()
                    : fastener.name() + " x " + LengthWriter.inches(length);
        }

        /** The same for a sentence, which tells its length in the unit of the document. */
        public Phrase phrase() {
            boolean only =
                    fastener.lengths().size() == 1 && fastener.lengths().get(0).near(length, Sizes.SAME);
            Phrase call = only ? Phrase.of("{fastener}") : Phrase.of("{fastener} x {length}");
            Phrase named = call.with("fastener", fastener.name());
            return only ? named : named.with("length", Sizes.listed(length));
        }
    }

    public Fastener {
        lengths = List.copyOf(lengths);
        boxes = List.copyOf(boxes);
    }

    /** Every length in which it is sold. */
    public List<Cut> cuts() {
        return lengths.stream().map(length -> new Cut(this, length)).toList();
    }

    /** Whether nothing but friction keeps the near piece on it. */
    public boolean headless() {
        return head.compareTo(diameter.times(1.2)) < 0;
    }
}
