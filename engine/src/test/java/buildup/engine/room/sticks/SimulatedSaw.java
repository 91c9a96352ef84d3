package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;

/**
 * Cuts a strip piece by piece as a saw does, and sees that every piece comes out as long as it is to be. Each end is a
 * straight cut from the back edge of the stick to its face edge; the blade takes its kerf beyond the end, wider along the
 * stick the more the cut is aslant. In inches, by the edges of the stick, and by nothing of the plan but where pieces lie.
 */
final class SimulatedSaw {
    /** Half of the finest mark of a tape. */
    private static final double TRUE_WITHIN = 1.0 / 128;

    private SimulatedSaw() {}

    /** Where a cut meets the back edge and the face edge of the stick. */
    private record Edge(double back, double face, double kerf) {}

    static void cuts(Shop shop, Stick stick, Stick.Strip strip) {
        double kerf = LengthSteps.inches(shop.kerf());
        double from = LengthSteps.inches(shop.trim());
        Edge last = new Edge(from, from, 0);
        boolean first = true;
        for (Stick.LaidPiece lie : strip.pieces()) {
            Edge left = edge(lie, true, kerf);
            Edge right = edge(lie, false, kerf);
            double taken = first ? 0 : Math.max(last.kerf(), left.kerf());
            assertThat(left.back() - last.back())
                    .as("back edge before %s", lie)
                    .isGreaterThanOrEqualTo(taken - TRUE_WITHIN);
            assertThat(left.face() - last.face())
                    .as("face edge before %s", lie)
                    .isGreaterThanOrEqualTo(taken - TRUE_WITHIN);
            double whole = Math.max(right.back(), right.face()) - Math.min(left.back(), left.face());
            assertThat(whole)
                    .isGreaterThanOrEqualTo(LengthSteps.inches(lie.piece().length()) - TRUE_WITHIN);
            last = right;
            first = false;
        }
        assertThat(Math.max(last.back(), last.face()))
                .isLessThanOrEqualTo(LengthSteps.inches(stick.length() - shop.trim()) + 1e-9);
    }

    private static Edge edge(Stick.LaidPiece lie, boolean left, double kerf) {
        End end = left ? lie.piece().leftOnStick() : lie.piece().rightOnStick();
        double slant = lie.turned() ? -end.slant() : end.slant();
        double point = LengthSteps.inches(left ? lie.from() : lie.to());
        double shorter = point + (left ? 1 : -1) * Math.abs(slant);
        double wide =
                kerf / Math.max(0.1, Math.cos(Math.toRadians(end.miter())) * Math.cos(Math.toRadians(end.bevel())));
        return slant >= 0 ? new Edge(shorter, point, wide) : new Edge(point, shorter, wide);
    }
}
