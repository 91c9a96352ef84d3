package buildup.engine.room.sticks;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.Shop;
import buildup.engine.solve.StickProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much of a stick lies between the long points of two pieces. Facing slanted ends of a molding cost the wider of the
 * two kerfs along the stick; the wedge between them is waste. A plain board may be turned face for back: then the two cuts
 * run in one direction, and the ends nest by the shorter of their slants. Lengths in {@link LengthSteps}, on the grid of
 * the shop, kerfs rounded up and slants down.
 */
final class Nesting {
    private final Lot lot;
    private final Shop shop;
    private final int least;
    private final int nested;

    /** @param lot its pieces may nest when all of them are plain and end aslant, and none is tied to another by its grain */
    Nesting(Lot lot, Shop shop) {
        this.lot = lot;
        this.shop = shop;
        this.least = lot.bundles().stream().mapToInt(this::kerf).min().orElse(shop.kerf());
        this.nested = lot.bundles().stream().mapToInt(this::slant).min().orElse(0);
    }

    /** The wider kerf of its two ends. */
    private int kerf(Bundle bundle) {
        return Stream.of(bundle.left(), bundle.right())
                .mapToInt(end -> shop.grid().needed(end.kerf(shop)))
                .max()
                .orElseThrow();
    }

    /** The shorter slant of its two ends; none for what may not be turned. */
    private int slant(Bundle bundle) {
        return mayTurn(bundle) ? Math.min(slant(bundle.left()), slant(bundle.right())) : 0;
    }

    /** A molding has one face, and grain that runs round keeps its side. */
    private static boolean mayTurn(Bundle bundle) {
        return bundle.pieces().size() == 1
                && bundle.pieces().get(0).plain()
                && bundle.pieces().get(0).group().isEmpty();
    }

    private int slant(End end) {
        return shop.grid().offered(Math.abs(end.slant()));
    }

    /**
     * The lot as a problem of plain lengths. Laid from the narrowest kerf to the widest, the pieces of a stick take the sum
     * of their lengths and kerfs, less their nesting, and give back what the first has not before it: so each length is
     * counted with its own kerf, and the stick is longer by the least of them. What fits by this count fits when it is cut;
     * where ends differ, a stick may hold a hair more than it says.
     *
     * @param exact whether a length that just fits a stick by itself is counted as that stick: then what is laid behind it
     *     on a longer one has to be looked at
     */
    StickProblem problem(List<StickProblem.Stick> sticks, boolean exact) {
        int saved = nested > 0 ? nested - least : 0;
        List<Integer> lengths = new ArrayList<>();
        for (Bundle bundle : lot.bundles()) {
            int length = bundle.length();
            int more = kerf(bundle) - least;
            int counted = sticks.stream()
                    .mapToInt(StickProblem.Stick::length)
                    .filter(stick -> exact && length <= stick && stick < length + more)
                    .min()
                    .orElse(length + more);
            lengths.add(Math.max(1, counted - saved));
        }
        return nested == 0
                ? new StickProblem(lengths, sticks, least)
                : new StickProblem(
                        lengths,
                        sticks.stream()
                                .map(stick ->
                                        new StickProblem.Stick(stick.length() - saved, stick.price(), stick.most()))
                                .toList(),
                        0);
    }

    /**
     * The bundles in the order in which they are cut: short pieces first, while the stick is long enough to clamp. Where
     * they do not fit so, from the narrowest kerf to the widest.
     */
    List<Bundle> order(List<Bundle> bundles, int usable) {
        List<Bundle> shortFirst =
                bundles.stream().sorted(Comparator.comparingInt(Bundle::length)).toList();
        return taken(shortFirst) <= usable
                ? shortFirst
                : bundles.stream().sorted(Comparator.comparingInt(this::kerf)).toList();
    }

    /** What bundles take of a stick in their order. */
    int taken(List<Bundle> bundles) {
        int taken = bundles.get(0).length();
        for (int i = 1; i < bundles.size(); i++) {
            taken += gap(bundles.get(i - 1), bundles.get(i)) + bundles.get(i).length();
        }
        return taken;
    }

    /** From the long point of the one to that of the next; negative when they nest. */
    int gap(Bundle before, Bundle after) {
        int kerf = shop.grid()
                .needed(Math.max(before.right().kerf(shop), after.left().kerf(shop)));
        return kerf - nest(before, after);
    }

    private int nest(Bundle before, Bundle after) {
        return mayTurn(before) && mayTurn(after) ? Math.min(slant(before.right()), slant(after.left())) : 0;
    }

    /**
     * Whether a bundle lies face for back behind another, so that their cuts run in one direction.
     *
     * @param turned whether the one before does
     */
    boolean turns(Bundle before, boolean turned, Bundle after) {
        return nest(before, after) > 0
                && turned == (before.right().slant() * after.left().slant() < 0);
    }
}
