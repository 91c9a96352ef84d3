package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.light.Band.Lit;
import buildup.engine.look.view.Drawn;
import buildup.engine.look.view.RandomScene;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How far a wide lamp blurs the edge of a shadow, held against fifty lamps without width side by side. */
class SoftEdgeTest {
    private static final int LAMPS = 50;
    private static final long SEED = 41;
    private static final int SCENES = Integer.getInteger("buildup.soft.scenes", 10);

    @Test
    void an_end_of_the_lamp_that_darkens_all_of_a_face_blurs_all_of_it() {
        // the left end is hidden from the whole face, the right end from none of it
        Shone lamp = Shone.lamp(Bench.sound(Bench.resource("/soft-edge.yaml")).section(), 12, 26, 4);
        assertThat(lamp.shadow("sof", "face").soft()).hasValueCloseTo(0.75, within(1e-9));
    }

    @Test
    void twice_a_small_width_blurs_twice_as_far() {
        // the blur of a shelf of depth p on the wall under a lamp at (x, y): w p y / (x - p)^2 as w goes to 0
        double p = 5.5;
        Section shelf = Drawn.section(
                false, Outline.rectangle(new Box(-1, -30, 0, 30)), Outline.rectangle(new Box(0, 0, p, 0.75)));
        for (double width = 1.0 / 8; width <= 1; width *= 2) {
            double once = soft(shelf, width);
            assertThat(once).isCloseTo(width * p * 30 / Math.pow(40 - p, 2), within(0.001 * once));
            assertThat(soft(shelf, 2 * width) / once).isCloseTo(2, within(0.005));
        }
    }

    private static double soft(Section shelf, double width) {
        return Shone.lamp(shelf, 40, 30, width).shadow("p0", "face").soft().orElseThrow();
    }

    @Tag("sampled")
    @Test
    void a_blur_is_where_some_of_fifty_lamps_shine_and_some_do_not() {
        Random random = new Random(SEED);
        int edges = 0;
        int between = 0;
        for (int scene = 0; scene < SCENES; scene++) {
            List<Outline> bodies = new RandomScene(SEED + scene).bodies();
            Section section = Drawn.section(false, bodies.toArray(Outline[]::new));
            double face = Box.around(bodies.stream().map(Outline::box).toList()).face();
            double width = 0.1 + 6 * random.nextDouble();
            Point at = new Point(face + 0.1 + width / 2 + 10 * random.nextDouble(), -10 + 20 * random.nextDouble());
            Light.Lamp lamp = new Light.Lamp("lamp", at, width, Optional.empty());
            Lighting wide = only(section, lamp);
            List<Lighting> each = new ArrayList<>();
            for (int i = 0; i < LAMPS; i++) {
                Point place = lamp.left().towards(lamp.right(), i / (LAMPS - 1.0));
                each.add(only(section, new Light.Lamp("point", place, 0, Optional.empty())));
            }
            for (Shadow shadow : wide.shadows()) {
                if (shadow.soft().isPresent()) {
                    Counted counted = new Counted(section.members().get(shadow.member()), shadow, wide, each);
                    String which = "seed " + SEED + ", scene " + scene + ", " + lamp + ", "
                            + section.members().get(shadow.member()).member();
                    double soft = shadow.soft().getAsDouble();
                    edges++;
                    if (Math.abs(soft - counted.blurred()) > 3 * counted.step()) {
                        // a gap so narrow that light comes through it from between two places that are asked
                        between++;
                        assertThat(counted.blurred() - soft).as(which).isBetween(0.0, 0.05);
                    }
                }
            }
        }
        assertThat(edges).isGreaterThan(2 * SCENES);
        assertThat(between).as("of %d edges", edges).isLessThanOrEqualTo(edges / 100);
    }

    private static Lighting only(Section section, Light light) {
        List<Lighting> answers = Lights.of(section, List.of(light), new Notices());
        assertThat(answers).hasSize(1);
        return answers.get(0);
    }

    /** Steps along a member from an edge both ways, as long as some lamps shine there and some do not. */
    private record Counted(Member member, Shadow shadow, Lighting wide, List<Lighting> each) {
        private static final int STEPS = 2000;

        double step() {
            return member.length() / STEPS;
        }

        double blurred() {
            double edge = along(shadow.edge().orElseThrow());
            boolean lightAfter = shadow.to().near(shadow.edge().orElseThrow(), 1e-9);
            return walked(edge, lightAfter ? 1 : -1, LAMPS) + walked(edge, lightAfter ? -1 : 1, 0);
        }

        /** How far it is to where so many lamps shine; no farther than the middle's light or dark goes on. */
        private double walked(double edge, int way, int shining) {
            double at = edge + way * step() / 2;
            boolean first = isLit(wide, at);
            while (at > 0 && at < member.length() && isLit(wide, at) == first) {
                double place = at;
                if (each.stream().filter(lamp -> isLit(lamp, place)).count() == shining) {
                    break;
                }
                at += way * step();
            }
            return Math.abs(at - edge);
        }

        private double along(Point p) {
            double walked = 0;
            for (var segment : member.segments()) {
                if (segment.distance(p) < 1e-9) {
                    return walked + segment.nearest(p) * segment.length();
                }
                walked += segment.length();
            }
            throw new AssertionError(p + " is not on the member");
        }

        private boolean isLit(Lighting lighting, double place) {
            double walked = 0;
            for (Band band : lighting.bands()) {
                if (band.member() == shadow.member()) {
                    walked += band.segment().length();
                    if (place <= walked) {
                        return band.lit() == Lit.LIT;
                    }
                }
            }
            return false;
        }
    }
}
