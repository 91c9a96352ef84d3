package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.region.Abutment;
import buildup.profiles.region.Abutting;
import buildup.profiles.region.Bound;
import buildup.profiles.region.Part;
import buildup.profiles.region.Ring;
import buildup.profiles.region.WeldedOutlines;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What outlines that only lie against each other make together, against the union by the overlay library. */
class AbuttingTest {
    private static final int STACKS = Integer.getInteger("buildup.abutting.stacks", 70);

    private static Optional<List<Part>> abutting(List<Outline> outlines) {
        return Abutting.union(outlines, (i, j) -> Abutment.of(outlines.get(i), outlines.get(j)));
    }

    /** The rings of parts as text, each from its least bound on, so that where a walk begins does not matter. */
    private static List<String> rings(List<Part> parts) {
        List<String> rings = new ArrayList<>();
        for (Part part : parts) {
            List<String> holes = new ArrayList<>(
                    part.holes().stream().map(AbuttingTest::ring).toList());
            Collections.sort(holes);
            rings.add(ring(part.outer()) + " holes " + holes);
        }
        Collections.sort(rings);
        return rings;
    }

    private static String ring(Ring ring) {
        List<String> bounds = new ArrayList<>();
        for (Bound bound : ring.bounds()) {
            bounds.add(bound.outline() + "/" + bound.stroke()
                    + place(bound.segment().from()) + place(bound.segment().to()));
        }
        Collections.rotate(bounds, -bounds.indexOf(Collections.min(bounds)));
        return bounds.toString();
    }

    private static String place(Point p) {
        return String.format(Locale.ROOT, " (%.6f, %.6f)", p.x() + 0.0, p.y() + 0.0)
                .replace("-0.000000", "0.000000");
    }

    /** Sums of fractions are laid out; most stacks lie against each other, and where they do both say the same. */
    @Tag("sampled")
    @Test
    void what_is_left_of_the_walks_is_what_an_overlay_makes() {
        int told = 0;
        for (int seed = 1; seed <= STACKS; seed++) {
            Bench bench = Bench.of(new RandomStack(seed).text(0, 0));
            if (!bench.refusals().isEmpty()) {
                continue;
            }
            List<Outline> outlines = bench.section().bodies().stream()
                    .filter(Body::piece)
                    .map(Body::outline)
                    .toList();
            Optional<List<Part>> parts = abutting(outlines);
            if (parts.isPresent()) {
                told++;
                assertThat(rings(parts.get()))
                        .as("stack %d", seed)
                        .isEqualTo(rings(WeldedOutlines.of(outlines).union().parts()));
            }
        }
        assertThat(told).isGreaterThan(STACKS / 20);
    }
}
