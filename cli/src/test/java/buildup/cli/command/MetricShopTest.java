package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import org.junit.jupiter.api.Test;

/** A shop that buys by the millimeter finds its boards, nails and sticks, and reads no inch. */
class MetricShopTest {
    private static final String STACK = """
            title: Shelf edge
            units: mm
            boards: metric-softwood
            wood: yellow-poplar
            space: { floor: -2000, wall: { solid: yes } }
            pieces:
              - { name: frieze, profile: 25x150, back: wall, bottom: datum }
              - { name: cap, profile: 25x100, lay: flat, back: wall, bottom: frieze.top }
            fastenings:
              - { piece: frieze, use: lost-head 2.5 x 55 mm, at: { up: 50 } }
              - { piece: cap, use: screw 4 x 60 mm, at: { out: 10 }, angle: 0 }
            plan:
              - { name: wall, left: square, right: square, stretches: [{ name: north, length: 2300 }] }
            stock:
              sticks:
                - { of: 25x150, buy: [2400, 3000] }
                - { of: 25x100, buy: [2400, 3000] }
            """;

    @Test
    void boards_are_called_by_their_sawn_size_and_stand_in_the_report_planed() {
        Ran ran = Ran.report(STACK, "--catalog", "../catalog/lists/metric.yaml");
        assertThat(ran.err()).doesNotContain("refusal");
        assertThat(ran.out()).contains("25x150 (metric-softwood)", "21 x 145", "21 x 95");
        assertThat(ran.out()).doesNotContain("1-3/8", "3/4", "5-3/4");
    }

    @Test
    void nails_that_are_proposed_are_those_of_the_list_in_millimeters_at_a_spacing_of_its_studs() {
        String loose = STACK.substring(0, STACK.indexOf("fastenings:"));
        Ran ran = Ran.report(loose, "--catalog", "../catalog/lists/metric.yaml");
        assertThat(ran.err()).contains("Drive lost-head 3.1 x 70 mm through cap", "every 400 mm");
        assertThat(ran.out() + ran.err()).doesNotContain(" ga ", "d finish", "406.4");
        String inches = loose.replace("units: mm", "units: in")
                .replace("boards: metric-softwood", "boards: softwood")
                .replace("25x150", "1x6")
                .replace("25x100", "1x4")
                .replace("-2000", "-80");
        Ran other = Ran.report(inches, "--catalog", "../catalog/lists/metric.yaml");
        assertThat(other.err()).contains("Drive ", "every 16 ");
        assertThat(other.out() + other.err()).doesNotContain("finish nail 1.", "brad 1.2", "lost-head");
    }

    @Test
    void nails_that_come_with_a_block_behind_a_crown_are_those_of_the_list_too() {
        String crown =
                STACK.substring(0, STACK.indexOf("pieces:")).replace("floor: -2000", "floor: -2000, ceiling: 0") + """
                pieces:
                  - { name: backer, profile: board 19 x 200, back: wall, top: 0 }
                  - { name: crown, profile: plain-crown 4-5/8 in, back: backer.face, top: 0 }
                fastenings:
                  - { name: low, piece: crown, use: finish nail 1.8 x 50 mm, at: { up: crown.bottom + 12 } }
                """;
        Ran ran = Ran.report(crown, "--catalog", "../catalog/lists/metric.yaml");
        assertThat(ran.err()).contains("Add a block behind it", "Nail the molding into it: brad 1.2 x");
        assertThat(ran.out() + ran.err()).doesNotContain(" ga ");
    }

    @Test
    void nails_are_called_by_their_millimeters_and_cut_as_they_are_sold() {
        Ran known = Ran.report(STACK, "--catalog", "../catalog/lists/metric.yaml");
        assertThat(known.out()).contains("lost-head 2.5 x");
        assertThat(known.out() + known.err()).doesNotContain("is not sold");
        Ran odd = Ran.report(STACK.replace("x 55 mm", "x 57 mm"), "--catalog", "../catalog/lists/metric.yaml");
        assertThat(odd.err() + odd.out()).contains("50.0 mm, 55.0 mm, 60.0 mm");
    }

    @Test
    void sticks_are_bought_by_their_millimeters_and_lumber_is_counted_in_cubic_meters() {
        Ran ran = Ran.with(STACK.getBytes(UTF_8), "cuts", "-", "--catalog", "../catalog/lists/metric.yaml");
        assertThat(ran.code()).isLessThan(2);
        assertThat(ran.out()).contains("25x150 (metric-softwood)", "2400", "cubic meters");
    }
}
