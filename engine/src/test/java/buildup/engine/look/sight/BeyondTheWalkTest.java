package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.joint.Joints;
import buildup.shared.notice.Notices;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The walk along the room side ends at the wall-side end of the highest level. An eye may look past it: over a lip, or up
 * into a pelmet. All by similar triangles.
 */
class BeyondTheWalkTest {
    private static final String SHELF =
            "name: shelf, kind: nailer, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 0";
    private static final String LIP = "name: lip, profile: board 3/4 x 1-1/2, back: shelf.face, bottom: shelf.bottom";

    private static String stack(String space, String eye, String... pieces) {
        return Bench.head("space: " + space) + "eyes: [ { name: e, " + eye + " } ]\n" + Bench.list(pieces);
    }

    private static Sights overTheLip(String... pieces) {
        return Sights.of(stack("{ floor: -36, ceiling: 60 }", "distance: 48, height: 27", pieces));
    }

    @Test
    void raw_wood_behind_a_lip_is_seen_by_whoever_looks_over_it() {
        // the sight line comes over the lip at (5-1/2, 1-1/2) and down to the shelf's top at 3/4
        double farthest = 5.5 - 0.75 * (48 - 5.5) / (27 - 1.5);
        Coverage shelf = overTheLip(SHELF, LIP).coverage("e", "shelf");
        assertThat(shelf.seen()).isCloseTo(farthest, within(1e-9));
        // its underside, which this eye does not see, and what of the top is seen
        assertThat(shelf.exposed()).isCloseTo(5.5 + farthest, within(1e-9));
        assertThat(overTheLip(SHELF, LIP).notices())
                .anyMatch(notice ->
                        notice.code().equals("nailer-shows") && notice.piece().equals(Optional.of("shelf")));
    }

    @Test
    void a_lip_that_is_high_enough_hides_it_and_only_the_walk_lies_open() {
        // from the wall at (0, 3/4) to the eye the line passes the lip's back at 3/4 + 26-1/4 x 5-1/2 / 48
        double enough = 0.75 + 26.25 * 5.5 / 48;
        Coverage hidden = overTheLip(SHELF, LIP.replace("1-1/2", String.valueOf(enough + 0.01)))
                .coverage("e", "shelf");
        assertThat(hidden.seen()).isZero();
        assertThat(hidden.exposed()).isCloseTo(5.5, within(1e-9));
        Coverage shown = overTheLip(SHELF, LIP.replace("1-1/2", String.valueOf(enough - 0.1)))
                .coverage("e", "shelf");
        assertThat(shown.seen()).isPositive();
    }

    /** Where the wall begins only behind it, the walk round a pelmet goes from the foot of its face round the outside. */
    @Test
    void a_raw_cleat_in_a_pelmet_is_seen_from_below() {
        Sights pelmet = Sights.of(stack(
                "{ floor: -80, ceiling: 16, wall: { from: 0 } }",
                "distance: 5, height: -50",
                "name: cleat, kind: nailer, profile: board 1-1/2 x 2-1/2, back: wall, bottom: 1",
                "name: top, profile: board 3/4 x 7-1/4, lay: flat, back: wall, bottom: cleat.top",
                "name: face, profile: board 3/4 x 9-1/4, back: top.face, top: top.top"));
        // all of its underside and of its face: nothing is between
        assertThat(pelmet.coverage("e", "cleat").seen()).isCloseTo(1.5 + 2.5, within(1e-9));
    }

    @Test
    void trim_of_which_only_the_inner_side_is_seen_is_not_told_to_be_left_out() {
        Sights tray = overTheLip(
                "name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 0",
                LIP,
                "name: under, profile: board 3/4 x 6-1/4, lay: flat, back: wall, top: 0");
        assertThat(tray.from("e").members())
                .filteredOn(member ->
                        tray.bench().section().members().get(member.member()).body() == 0)
                .isEmpty();
        assertThat(tray.from("e").beyond()).contains(0);
        assertThat(Joints.of(tray.bench().section(), tray.sightings()).unseen()).doesNotContain(0);
    }

    @Test
    void somebody_who_walks_up_sees_it_too() {
        String room = Bench.head("space: { floor: -36, ceiling: 60 }") + Bench.list(SHELF, LIP);
        String way =
                "approach: [ { name: up, from: { distance: 120, height: 27 }, to: { distance: 24, height: 27 } } ]\n";
        Approach up = Sights.approaches(room, way, new Notices()).get(0);
        // most of it from the nearest place
        assertThat(up.showing()).singleElement().satisfies(shelf -> {
            assertThat(shelf.first()).hasValueCloseTo(120.0, within(1e-9));
            assertThat(shelf.most()).isCloseTo(5.5 - 0.75 * (24 - 5.5) / (27 - 1.5), within(1e-9));
        });
    }
}
