package buildup.engine.look.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.look.view.Visibility.Surface;
import buildup.profiles.outline.Outline;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The sweep against each stretch asked by itself, on random scenes; every scene is named by its seed. */
class ViewAgainstNaiveTest {
    private static final int SCENES = Integer.getInteger("buildup.view.scenes", 250);

    @Tag("sampled")
    @Test
    void the_sweep_sees_what_every_stretch_against_every_other_sees() {
        for (long seed = 0; seed < SCENES; seed++) {
            RandomScene scene = new RandomScene(seed);
            List<Outline> bodies = scene.bodies();
            agree(seed, bodies, scene.parallel());
            agree(seed, bodies, scene.near(bodies));
        }
    }

    private static void agree(long seed, List<Outline> bodies, Viewpoint viewpoint) {
        List<Surface> surfaces = Drawn.surfaces(bodies);
        Visibility view = Visibility.of(viewpoint, surfaces);
        NaiveView naive = new NaiveView(viewpoint, surfaces);
        for (int i = 0; i < surfaces.size(); i++) {
            Surface surface = surfaces.get(i);
            List<Stretch> seen = view.seen(surface.segment());
            List<Stretch> facing = view.facing(surface.segment());
            String where = "seed " + seed + ", " + viewpoint + ", segment " + i + " " + surface;
            assertThat(length(seen) * surface.segment().length())
                    .as(where)
                    .isCloseTo(naive.seen(surface.segment()), within(1e-6));
            assertThat(seen)
                    .as(where)
                    .allMatch(part -> facing.stream()
                            .anyMatch(
                                    whole -> whole.start() <= part.start() + 1e-9 && part.end() <= whole.end() + 1e-9));
        }
    }

    private static double length(List<Stretch> stretches) {
        return stretches.stream().mapToDouble(part -> part.end() - part.start()).sum();
    }
}
