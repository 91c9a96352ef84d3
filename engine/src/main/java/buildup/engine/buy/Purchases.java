package buildup.engine.buy;

import buildup.engine.hold.framing.Framed;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.room.run.Job;
import buildup.engine.room.stock.Shop;
import buildup.engine.section.compose.Section;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/**
 * All that is bought for a job besides its sticks.
 *
 * @param asked whether the document asks for it and a plan says how much
 * @param section, job of which it is
 * @param rows of fastenings, each counted
 * @param faces that show
 * @param glued faces
 * @param bought in the order of a list
 * @param priced whether every pack has a price
 */
public record Purchases(
        boolean asked,
        Section section,
        Optional<Job> job,
        List<RowCount> rows,
        List<FaceArea> faces,
        List<GluedFaces> glued,
        List<Bought> bought,
        boolean priced) {
    /** Copies the lists. */
    public Purchases {
        rows = List.copyOf(rows);
        faces = List.copyOf(faces);
        glued = List.copyOf(glued);
        bought = List.copyOf(bought);
    }

    /**
     * Counts what a document asks for, with notices for what cannot be counted.
     *
     * @param fixed its rows of fastenings
     * @param framing how they land on what stands behind
     * @param shop from which pieces are spliced and glued up; absent when it is not known
     */
    public static Purchases of(
            Section section,
            SupplyWishes wishes,
            List<Fixed> fixed,
            Framed framing,
            Optional<Job> job,
            Optional<Shop> shop,
            Notices notices) {
        if (wishes.asked() && job.isEmpty()) {
            notices.add(BuyNotices.NO_RUN.notice().at(wishes.mark()));
        }
        if (!wishes.asked() || job.isEmpty()) {
            return new Purchases(false, section, job, List.of(), List.of(), List.of(), List.of(), true);
        }
        return new Counter(section, wishes, job.get(), notices).purchases(fixed, framing, shop);
    }

    /** Price of all packs that have one, hundredths. */
    public long price() {
        return bought.stream().mapToLong(one -> one.basket().price()).sum();
    }
}
