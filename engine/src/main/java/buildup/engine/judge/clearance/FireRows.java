package buildup.engine.judge.clearance;

import buildup.catalog.fire.FireBand;
import buildup.catalog.fire.FireRule;
import buildup.engine.judge.clearance.FireEnvelope.Need;
import buildup.engine.judge.clearance.FireEnvelope.Tightest;
import buildup.engine.judge.clearance.FireRow.Where;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Holds every combustible piece against every rule. */
final class FireRows {
    private FireRows() {}

    /** Rule by rule; in each the pieces from below, then the trim beside the opening. */
    static List<FireRow> of(Section section, Firebox firebox) {
        List<FireRow> rows = new ArrayList<>();
        for (FireRule rule : firebox.rules()) {
            for (Body body : section.pieces()) {
                if (burns(body, firebox)) {
                    rows.add(row(rule, rule.above(), Where.ABOVE, body.name(), true, body.outline(), firebox.top()));
                }
            }
            for (Firebox.Beside beside : firebox.beside()) {
                // as if the opening lay below it: out from the wall, and away from the opening's side
                Outline turned = Outline.rectangle(
                        new Box(0, beside.away(), beside.out(), beside.away() + beside.to() - beside.from()));
                Where where = beside.onLeft() ? Where.LEFT : Where.RIGHT;
                rows.add(row(rule, rule.sides(), where, beside.name(), false, turned, 0));
            }
        }
        return List.copyOf(rows);
    }

    /** Whether a piece stands on the face of the wall and may burn. */
    static boolean burns(Body body, Firebox firebox) {
        return body.outline().box().face() > Tolerance.TOUCHING
                && !firebox.noncombustible().contains(body.name());
    }

    private static FireRow row(
            FireRule rule,
            List<FireBand> bands,
            Where where,
            String piece,
            boolean ofStack,
            Outline outline,
            double opening) {
        FireEnvelope envelope = FireEnvelope.of(bands);
        Optional<Tightest> tightest = envelope.tightest(outline, opening);
        Need need = envelope.needed(outline, opening);
        double distance = outline.box().bottom() - opening;
        return new FireRow(
                rule,
                where,
                piece,
                ofStack,
                distance,
                Double.isFinite(need.more()) ? OptionalDouble.of(distance + need.more()) : OptionalDouble.empty(),
                need.past(),
                tightest.map(found -> OptionalDouble.of(found.allowed())).orElse(OptionalDouble.empty()),
                tightest.map(Tightest::has).orElse(outline.box().face()),
                tightest.filter(found -> found.margin() < -Tolerance.SAME_SIZE).isEmpty());
    }
}
