package buildup.engine.buy;

import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.stock.EndJoint;
import buildup.engine.room.stock.Shop;
import buildup.engine.section.compose.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Faces that are glued to each other: miters of trim, returns, ends that butt on blocks, scarfs, and the lines between strips and layers of pieces that
 * are glued up. A cut of miter M and bevel B lays open the section's area A over cos M cos B.
 *
 * @param joint what is glued
 * @param count of them, one for two faces that meet
 * @param area of one face of each, all together, sq in
 */
record GluedFaces(String joint, double count, double area) {
    private static final String PLIES = "glue line";

    private static final String ON_A_BLOCK = "block joint";

    /** All kinds of them that the job has. */
    static List<GluedFaces> of(Section section, Job job, List<LooseBlock> blocks, Optional<Shop> shop) {
        List<GluedFaces> all = new ArrayList<>();
        Sum miters = new Sum(EndJoint.MITER.word());
        Sum returns = new Sum(EndJoint.RETURN.word());
        for (Fit fit : job.fits()) {
            for (Hand hand : fit.course().trim() ? Hand.values() : new Hand[0]) {
                EndCut cut = fit.cut(hand);
                double area = section.body(fit.course().body()).outline().area();
                double face = area / (Math.cos(Math.toRadians(cut.miter())) * Math.cos(Math.toRadians(cut.bevel())));
                if (cut.kind() == EndCut.Kind.MITER) {
                    miters.add(0.5, face / 2);
                } else if (cut.kind() == EndCut.Kind.RETURN) {
                    returns.add(0.5, face / 2);
                } else if (!fit.selfReturn() && ShownFaces.returned(job, fit, hand)) {
                    returns.add(1, area); // glued on whole, across the square end
                }
            }
        }
        Sum scarfs = new Sum(EndJoint.SCARF.word());
        Sum plies = new Sum(PLIES);
        for (CutList.GlueLine line :
                shop.map(known -> CutList.glueLines(job, known)).orElse(List.of())) {
            (line.scarf() ? scarfs : plies).add(line.count(), line.area());
        }
        Sum butts = new Sum(ON_A_BLOCK);
        for (LooseBlock block : blocks) {
            if (block.joints() > 0) {
                butts.add(block.joints(), block.met());
            }
        }
        for (Sum sum : List.of(miters, returns, butts, scarfs, plies)) {
            sum.put(all);
        }
        return List.copyOf(all);
    }

    private static final class Sum {
        private final String joint;
        private double count;
        private double area;

        Sum(String joint) {
            this.joint = joint;
        }

        void add(double more, double wider) {
            count += more;
            area += wider;
        }

        void put(List<GluedFaces> all) {
            if (count > 0) {
                all.add(new GluedFaces(joint, count, area));
            }
        }
    }
}
