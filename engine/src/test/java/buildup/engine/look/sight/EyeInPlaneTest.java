package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Lights;
import buildup.engine.look.light.Shadow;
import buildup.engine.look.view.Drawn;
import buildup.engine.look.view.RandomScene;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Light;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Eyes and lamps in the very plane of a face, over a corner, or on the line of an arc's end. */
class EyeInPlaneTest {
    private static final Mark MARK = new Mark("drawn", 1, 1);
    private static final long SEED = 77;
    private static final int SCENES = 12;

    /** How far an eye moves for a look from beside the plane, in. */
    private static final double BESIDE = 1e-6;

    /** A place on a sight line moves so many times as far as the eye, at most, in these scenes. */
    private static final double LEVERAGE = 2000;

    private static Section with(Section section, Point eye) {
        Stack old = section.stack();
        Stack stack = new Stack(
                old.title(),
                old.unit(),
                old.boardList(),
                old.space(),
                List.of(new Eye("eye", eye.x(), eye.y(), MARK)),
                List.of(),
                old.pieces(),
                old.lengths());
        return new Section(
                stack,
                section.bodies(),
                section.skin(),
                section.totals(),
                section.steps(),
                section.members(),
                section.beyond(),
                section.reveals(),
                section.contacts(),
                section.overlaps(),
                section.voids(),
                section.standing(),
                section.fastened(),
                section.parts());
    }

    private static List<Sighting> asked(Section section, Point eye) {
        return Eyes.of(with(section, eye), new Notices());
    }

    /** Places far out on the line of every straight stroke, and upright and level from every corner. */
    private static List<Point> planes(List<Outline> bodies) {
        List<Point> places = new ArrayList<>();
        for (Outline body : bodies) {
            for (Stroke stroke : body.strokes()) {
                Segment segment = stroke.segment();
                List<Point> ways = new ArrayList<>(List.of(new Point(0, 1), new Point(0, -1), new Point(1, 0)));
                if (segment instanceof Line line) {
                    ways.add(line.direction(0));
                    ways.add(line.direction(0).times(-1));
                } else if (segment instanceof Arc arc) {
                    ways.add(arc.direction(1));
                }
                for (Point way : ways) {
                    places.add(segment.to().plus(way.times(15)));
                }
            }
        }
        return places.stream().filter(place -> place.x() > 0).toList();
    }

    @Test
    void what_is_seen_from_the_plane_of_a_face_is_what_is_seen_from_beside_it() {
        int looks = 0;
        for (int scene = 0; scene < SCENES; scene++) {
            List<Outline> bodies = new RandomScene(SEED + scene).bodies();
            Section section = Drawn.section(false, bodies.toArray(Outline[]::new));
            for (Point eye : planes(bodies)) {
                List<Sighting> here = asked(section, eye);
                if (here.isEmpty()) {
                    continue;
                }
                List<Sighting> one = asked(section, eye.plus(new Point(BESIDE, BESIDE / 3)));
                List<Sighting> other = asked(section, eye.minus(new Point(BESIDE, BESIDE / 3)));
                for (int i = 0; i < here.get(0).members().size(); i++) {
                    SeenMember seen = here.get(0).members().get(i);
                    double a = one.get(0).members().get(i).length();
                    double b = other.get(0).members().get(i).length();
                    looks++;
                    String which = "seed " + SEED + ", scene " + scene + ", eye " + eye + ", "
                            + section.members().get(i);
                    assertThat(seen.length())
                            .as(which)
                            .isBetween(Math.min(a, b) - LEVERAGE * BESIDE, Math.max(a, b) + LEVERAGE * BESIDE);
                    seen.seenHeight()
                            .ifPresent(height -> assertThat(height).as(which).isBetween(0.0, 1e5));
                }
            }
        }
        assertThat(looks).isGreaterThan(5_000);
    }

    @Test
    void a_lamp_in_the_plane_of_a_face_casts_finite_shadows() {
        for (int scene = 0; scene < SCENES; scene++) {
            List<Outline> bodies = new RandomScene(SEED + scene).bodies();
            Section section = Drawn.section(false, bodies.toArray(Outline[]::new));
            Box box = Box.around(bodies.stream().map(Outline::box).toList()).grown(1000);
            for (Point place : planes(bodies)) {
                for (double width : new double[] {0, 2}) {
                    Light lamp = new Light.Lamp("lamp", place, width, Optional.empty());
                    for (Lighting lighting : Lights.of(section, List.of(lamp), new Notices())) {
                        for (Shadow shadow : lighting.shadows()) {
                            assertThat(shadow.share()).isBetween(0.0, 1 + 1e-9);
                            shadow.edge()
                                    .ifPresent(edge ->
                                            assertThat(box.holds(edge, 0)).isTrue());
                            shadow.soft()
                                    .ifPresent(soft -> assertThat(soft)
                                            .isBetween(
                                                    0.0,
                                                    section.members()
                                                                    .get(shadow.member())
                                                                    .length()
                                                            + 1e-9));
                        }
                    }
                }
            }
        }
    }

    @Test
    void a_face_in_the_plane_of_the_eye_or_behind_it_has_no_height_on_the_picture() {
        Sights sights = Sights.of(Bench.resource("/eye-in-plane.yaml"));
        assertThat(sights.seen("seated", "bead", "face").length()).isZero();
        assertThat(sights.from("seated").members())
                .filteredOn(seen -> seen.seenHeight().isEmpty())
                .isNotEmpty()
                .allSatisfy(seen -> assertThat(seen.visible())
                        .anySatisfy(part -> assertThat(part.box().face()).isGreaterThan(1 - 1.0 / 256)));
        assertThat(sights.from("standing").members())
                .allSatisfy(seen -> assertThat(seen.seenHeight()).isPresent());
    }

    @Test
    void an_eye_or_a_lamp_that_touches_wood_is_said() {
        Bench shelf = Bench.in(
                "{ floor: -84, wall: { solid: no } }",
                "name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: datum");
        for (double off : new double[] {0, 1.0 / 300}) {
            Notices notices = new Notices();
            assertThat(Eyes.of(with(shelf.section(), new Point(5.5 + off, 0.3)), notices))
                    .isEmpty();
            Light lamp = new Light.Lamp("lamp", new Point(7, -off), 3.5, Optional.empty());
            assertThat(Lights.of(shelf.section(), List.of(lamp), notices)).isEmpty();
            assertThat(notices.sorted()).hasSize(2).allMatch(one -> one.code().equals("impossible-light-or-eye"));
        }
        assertThat(asked(shelf.section(), new Point(5.5 + 1.0 / 128, 0.3))).hasSize(1);
    }
}
