package buildup.engine.room.sticks;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.StickPiece;
import buildup.engine.solve.StickProblem;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;

/**
 * How much of a stick lies between the long points of two pieces. Facing slanted ends of a molding cost the wider of the
 * two kerfs along the stick; the wedge between them is waste. A plain board may be turned face for back: then the two cuts
 * run in one direction, and the ends nest by the shorter of their slants, if both go through the thickness or both through
 * the width: else their long points meet at an arris and cannot lie over each other. Lengths in {@link LengthSteps}, on the grid of
 * the shop, kerfs rounded up and slants down.
 */
final class Nesting {
    /**
     * What the ends of a bundle take of a stick.
     *
     * @param length of the bundle itself
     * @param mayTurn whether it may lie face for back: a molding has one face, and grain that runs round keeps its side
     */
    private record Ends(
            int length,
            int leftKerf,
            int rightKerf,
            int leftSlant,
            int rightSlant,
            Plane left,
            Plane right,
            boolean mayTurn) {
        static Ends of(Bundle bundle, Shop shop) {
            StickPiece first = bundle.pieces().get(0);
            return new Ends(
                    bundle.length(),
                    shop.grid().needed(bundle.left().kerf(shop)),
                    shop.grid().needed(bundle.right().kerf(shop)),
                    shop.grid().offered(Math.abs(bundle.left().slant())),
                    shop.grid().offered(Math.abs(bundle.right().slant())),
                    Plane.of(bundle.left()),
                    Plane.of(bundle.right()),
                    bundle.pieces().size() == 1
                            && first.plain()
                            && first.group().isEmpty());
        }

        int kerf() {
            return Math.max(leftKerf, rightKerf);
        }

        int slant() {
            return mayTurn && left.nests(right) ? Math.min(leftSlant, rightSlant) : 0;
        }
    }

    /** What a slanted cut goes through, as the stick lies flat. */
    private enum Plane {
        THICKNESS,
        WIDTH,
        BOTH;

        static Plane of(End end) {
            if (Math.abs(end.miter()) < Tolerance.SAME_DIRECTION) {
                return THICKNESS;
            }
            return Math.abs(end.bevel()) < Tolerance.SAME_DIRECTION ? WIDTH : BOTH;
        }

        boolean nests(Plane other) {
            return this == other && this != BOTH;
        }
    }

    private final Lot lot;
    private final IdentityHashMap<Bundle, Ends> ends = new IdentityHashMap<>();
    private final int least;
    private final int nested;

    /** @param lot its pieces may nest when all of them are plain and end aslant, and none is tied to another by its grain */
    Nesting(Lot lot, Shop shop) {
        this.lot = lot;
        lot.bundles().forEach(bundle -> ends.put(bundle, Ends.of(bundle, shop)));
        this.least = lot.bundles().stream().mapToInt(this::kerf).min().orElse(shop.kerf());
        boolean alike = lot.bundles().stream()
                        .map(bundle -> of(bundle).left())
                        .distinct()
                        .count()
                == 1;
        this.nested = alike
                ? lot.bundles().stream()
                        .mapToInt(bundle -> of(bundle).slant())
                        .min()
                        .orElse(0)
                : 0;
    }

    private Ends of(Bundle bundle) {
        return Objects.requireNonNull(ends.get(bundle), "a bundle of another lot");
    }

    /** The wider kerf of its two ends. */
    private int kerf(Bundle bundle) {
        return of(bundle).kerf();
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
            int length = of(bundle).length;
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
        List<Bundle> shortFirst = bundles.stream()
                .sorted(Comparator.comparingInt(bundle -> of(bundle).length))
                .toList();
        return taken(shortFirst) <= usable
                ? shortFirst
                : bundles.stream().sorted(Comparator.comparingInt(this::kerf)).toList();
    }

    /** What bundles take of a stick in their order. */
    int taken(List<Bundle> bundles) {
        int taken = of(bundles.get(0)).length;
        for (int i = 1; i < bundles.size(); i++) {
            taken += gap(bundles.get(i - 1), bundles.get(i)) + of(bundles.get(i)).length;
        }
        return taken;
    }

    /** From the long point of the one to that of the next; negative when they nest. */
    int gap(Bundle before, Bundle after) {
        return Math.max(of(before).rightKerf, of(after).leftKerf) - nest(before, after);
    }

    /** What the last cut behind a bundle takes of the stick. */
    int lastKerf(Bundle bundle) {
        return of(bundle).rightKerf;
    }

    private int nest(Bundle before, Bundle after) {
        Ends one = of(before);
        Ends next = of(after);
        boolean nests = one.mayTurn && next.mayTurn && one.right.nests(next.left);
        return nests ? Math.min(one.rightSlant, next.leftSlant) : 0;
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
