package buildup.engine.section.stack;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.notice.NoticeWords;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The room that a stack stands in. */
class SpaceTest {
    private static final String BOARD = "name: board, profile: board 3/4 x 4, back: wall, bottom: datum";

    private static Space space(String text) {
        return Bench.sound(Bench.head(text) + Bench.list(BOARD)).stack().space();
    }

    @Test
    void without_a_word_there_is_a_solid_wall_without_end_and_no_floor_or_ceiling() {
        Space space = space("");
        assertThat(space.floor()).isEmpty();
        assertThat(space.ceiling()).isEmpty();
        assertThat(space.projection()).isEmpty();
        assertThat(space.wall()).isEqualTo(new Space.Wall(OptionalDouble.empty(), OptionalDouble.empty(), true, 0));
    }

    @Test
    void the_wall_runs_from_floor_to_ceiling_unless_it_says_otherwise() {
        Space.Wall whole =
                space("space: { floor: -84, ceiling: 12, projection: 8 }").wall();
        assertThat(whole).isEqualTo(new Space.Wall(OptionalDouble.of(-84), OptionalDouble.of(12), true, 0));
        Space.Wall part = space("space: { floor: -84, ceiling: 12, wall: { from: floor + 30, covering: 1/2 } }")
                .wall();
        assertThat(part).isEqualTo(new Space.Wall(OptionalDouble.of(-54), OptionalDouble.of(12), true, 0.5));
        Space.Wall none =
                space("space: { floor: -84, wall: { to: 2, solid: no } }").wall();
        assertThat(none).isEqualTo(new Space.Wall(OptionalDouble.of(-84), OptionalDouble.of(2), false, 0));
    }

    @Test
    void an_eye_stands_at_a_distance_from_the_wall_and_at_a_height() {
        Bench bench = Bench.sound(Bench.head("space: { floor: -84 }\neyes:\n"
                        + "  - { name: seated, distance: 6', height: floor + 46 }\n"
                        + "  - { distance: 72, height: -24 }")
                + Bench.list(BOARD));
        assertThat(bench.stack().eyes()).extracting(Eye::name).containsExactly("seated", "eye 2");
        assertThat(bench.stack().eyes()).extracting(Eye::height).containsExactly(-38.0, -24.0);
        assertThat(bench.stack().eyes()).extracting(Eye::distance).containsExactly(72.0, 72.0);
    }

    @Test
    void without_lights_there_is_the_drafting_light() {
        // a ray at 45 degrees in plan and elevation: true altitude atan(1/sqrt 2) = 35.264
        assertThat(Bench.onWall(BOARD).stack().lights()).singleElement().satisfies(light -> {
            assertThat(light.name()).isEqualTo("drafting");
            assertThat(light).isInstanceOf(Light.Distant.class);
            assertThat(((Light.Distant) light).altitude())
                    .isCloseTo(35.264, org.assertj.core.api.Assertions.within(0.001));
        });
    }

    @Test
    void without_a_title_the_file_s_name_stands_for_it() {
        assertThat(Bench.onWall(BOARD).stack().title()).isEqualTo("stack.yaml");
        assertThat(Bench.sound("title: Reading room\n" + Bench.head("") + Bench.list(BOARD))
                        .stack()
                        .title())
                .isEqualTo("Reading room");
    }

    @Test
    void without_a_wood_weights_are_for_the_usual_one_and_a_note_says_so() {
        Bench bench = Bench.sound(Bench.list(BOARD));
        assertThat(bench.piece("board").piece().wood().name()).isEqualTo("yellow-poplar");
        assertThat(bench.notices("wood-not-named")).singleElement().satisfies(notice -> {
            assertThat(NoticeWords.INCHES.message(notice))
                    .isEqualTo("No wood is named: weights are for yellow-poplar.");
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Write 'wood: NAME'.");
        });
    }

    @Test
    void every_key_of_the_language_is_understood() {
        Bench bench = Bench.sound("""
                title: All of it
                units: in
                wood: check-wood
                boards: softwood
                sizes: { lip: 1/4 }
                space: { floor: -84, ceiling: 12, projection: 8, wall: { from: floor, to: ceiling, solid: yes, covering: 1/2 } }
                eyes:
                  - { name: standing, distance: 72, height: floor + 60 }
                lights:
                  - { name: drafting, altitude: 35.264, azimuth: 45 }
                  - { name: lamp, at: { distance: 60, height: floor + 80 }, width: 4 }
                pieces:
                  - { name: stud, kind: framing, section: [out 3, up 9], face: wall, bottom: datum, wood: heavy-wood }
                  - { name: frieze, kind: trim, profile: board 3/4 x 5-1/2, rip: { top: lip, face: 1/8, back: 1/16, bottom: 1/8 },
                      flip: over, back: wall, bottom: datum, fixed: stud }
                  - { name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, face: 3, bottom: frieze.top }
                  - { name: bed, profile: check-bed 1 x 1, turn: 0, at: { back: frieze.face, top: shelf.bottom } }
                  - { name: crown, profile: check-crown-edged 9/16 x 3-1/4, spring: 38, back: shelf.face, top: shelf.top }
                """);
        assertThat(bench.notices("unknown-key")).isEmpty();
    }
}
