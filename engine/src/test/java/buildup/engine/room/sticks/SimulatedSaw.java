package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import java.util.Arrays;

/**
 * Cuts a strip piece by piece as a saw does, and sees that every piece comes out as long as it is to be. Each end is a
 * straight cut from the back edge of the stick to its face edge; the blade takes its kerf beyond the end, wider along the
 * stick the more the cut is aslant. In inches, by the edges of the stick, and by nothing of the plan but where pieces lie.
 */
final class SimulatedSaw {
    /** Half of the finest mark of a tape. */
    private static final double TRUE_WITHIN = 1.0 / 128;

    private SimulatedSaw() {}

    /**
     * Where a cut meets the four arrises of the stick: back and face of one edge, then back and face of the other. A bevel
     * goes through the thickness, a miter through the width; what is both counts as long as it is at each arris.
     */
    private record Edge(double[] arrises, double kerf) {
        double longest(boolean left) {
            return left
                    ? Arrays.stream(arrises).min().orElseThrow()
                    : Arrays.stream(arrises).max().orElseThrow();
        }
    }

    static void cuts(Shop shop, Stick stick, Stick.Strip strip) {
        double kerf = LengthSteps.inches(shop.kerf());
        double from = LengthSteps.inches(shop.trim());
        Edge last = new Edge(new double[] {from, from, from, from}, 0);
        boolean first = true;
        for (Stick.LaidPiece lie : strip.pieces()) {
            Edge left = edge(lie, true, kerf);
            Edge right = edge(lie, false, kerf);
            double taken = first ? 0 : Math.max(last.kerf(), left.kerf());
            for (int i = 0; i < left.arrises().length; i++) {
                assertThat(left.arrises()[i] - last.arrises()[i])
                        .as("arris %d before %s", i, lie)
                        .isGreaterThanOrEqualTo(taken - TRUE_WITHIN);
            }
            double whole = right.longest(false) - left.longest(true);
            assertThat(whole)
                    .isGreaterThanOrEqualTo(LengthSteps.inches(lie.piece().length()) - TRUE_WITHIN);
            last = right;
            first = false;
        }
        assertThat(last.longest(false)).isLessThanOrEqualTo(LengthSteps.inches(stick.length() - shop.trim()) + 1e-9);
    }

    private static Edge edge(Stick.LaidPiece lie, boolean left, double kerf) {
        End end = left ? lie.piece().leftOnStick() : lie.piece().rightOnStick();
        double slant = lie.turned() ? -end.slant() : end.slant();
        double point = LengthSteps.inches(left ? lie.from() : lie.to());
        double shorter = point + (left ? 1 : -1) * Math.abs(slant);
        double wide =
                kerf / Math.max(0.1, Math.cos(Math.toRadians(end.miter())) * Math.cos(Math.toRadians(end.bevel())));
        boolean aslant = Math.abs(slant) > 0;
        boolean mitered = aslant && Math.abs(end.miter()) > 1e-6;
        boolean beveled = aslant && Math.abs(end.bevel()) > 1e-6;
        double[] arrises = new double[4];
        for (int i = 0; i < arrises.length; i++) {
            // seen along the stick, the long side of a bevel is back or face, that of a miter one edge or the other
            boolean longer = mitered && beveled || (mitered ? i >= 2 : i % 2 == 1) == (slant >= 0);
            arrises[i] = aslant && !longer ? shorter : point;
        }
        return new Edge(arrises, wide);
    }
}
