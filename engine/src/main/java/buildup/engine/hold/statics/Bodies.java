package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.solve.LinearProgram;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/** What all models of one section have in common, worked out once. */
final class Bodies {
    private final Section section;
    /** The pieces of the stack, which may move. */
    private final List<Integer> free;
    /** The same in an array, for what runs over them often. */
    private final int[] moving;

    private final Point[] centroids;
    private final List<Weight> weights;
    /** What programs are written on, one after the other: most of what a small program takes is room for it. */
    private final LinearProgram program = new LinearProgram();

    private List<Gaps.Gap> gaps = List.of();
    private boolean measured;

    Bodies(Section section) {
        this.section = section;
        this.centroids = new Point[section.bodies().size()];
        List<Integer> pieces = new ArrayList<>();
        List<Weight> own = new ArrayList<>();
        for (int body = 0; body < centroids.length; body++) {
            centroids[body] = section.body(body).outline().centroid();
            if (section.body(body).inStack()) {
                pieces.add(body);
                own.add(new Weight(body, centroids[body].x(), Composer.weightPerFoot(section.body(body))));
            }
        }
        this.free = List.copyOf(pieces);
        this.moving = pieces.stream().mapToInt(Integer::intValue).toArray();
        this.weights = List.copyOf(own);
    }

    LinearProgram program() {
        program.clear();
        return program;
    }

    Section section() {
        return section;
    }

    List<Integer> free() {
        return free;
    }

    /** How many pieces may move. */
    int count() {
        return moving.length;
    }

    /** One of those that may move, by its place among them. */
    int moving(int place) {
        return moving[place];
    }

    /** Where the weight of a body acts. */
    Point centroid(int body) {
        return centroids[body];
    }

    /** What the pieces weigh, where it acts. */
    List<Weight> weights() {
        return weights;
    }

    /** The small gaps between them, measured when they are first asked for. */
    List<Gaps.Gap> gaps() {
        if (!measured) {
            gaps = Gaps.of(section);
            measured = true;
        }
        return gaps;
    }
}
