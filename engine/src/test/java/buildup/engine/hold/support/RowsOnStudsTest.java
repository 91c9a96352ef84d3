package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Behind the board of a wall only studs hold a screw, so that a row is set out by them and not by half or two thirds of their
 * spacing, where one in two or in three meets one: common practice, no source.
 */
class RowsOnStudsTest {
    private static final String LEDGER = """
            units: UNIT
            wood: yellow-poplar
            space: { floor: '-48"', ceiling: '48"', wall: { covering: '1/2"' } }
            pieces:
              - { name: ledger, kind: nailer, profile: board 1-1/2" x 3-1/2", back: wall, top: 0 }
              - { name: shelf, profile: board 3/4" x 9-1/4", lay: flat, back: wall, bottom: 0 }
            loads: [{ name: books, on: shelf, out: '4"', load: 8 lb/ft }]
            fastenings:
              - { name: shelf screws, piece: shelf, use: screw 8 x 2", at: { out: '1-1/8"', up: shelf.top }, spacing: '6"', bored: yes }
              - { name: ledger nails, piece: ledger, use: 15 ga x 2-1/2", at: { up: '-1"' }, spacing: '24"' }
            plan:
              - { name: w, left: butt, right: butt, PLANstretches: [{ name: long, length: '144"' }] }
            """;

    private static String ledger(String unit, String plan) {
        return LEDGER.replace("UNIT", unit).replace("PLAN", plan);
    }

    @ParameterizedTest
    @CsvSource({"in, 24, 24", "in, 16, 16", "in, 19.2, 19-3/16", "mm, 600, 600 mm", "mm, 400, 400 mm"})
    void a_row_into_the_wall_is_offered_at_the_spacing_of_the_studs(String unit, String studs, String told) {
        String yaml = ledger(unit, "studs: { every: " + studs + ", first: " + (unit.equals("in") ? 12 : 300) + " }, ");
        assertThat(Answered.cure(yaml, Topic.STANDS))
                .contains("through ledger")
                .contains("every " + told)
                .endsWith("[tried]");
    }

    @Test
    void a_wall_that_takes_a_screw_anywhere_has_it_as_near_as_it_is_wanted() {
        assertThat(Answered.cure(ledger("in", ""), Topic.STANDS)).contains("every 12");
    }
}
