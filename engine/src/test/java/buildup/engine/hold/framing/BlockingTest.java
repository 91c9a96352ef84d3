package buildup.engine.hold.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.plan.Plan;
import buildup.engine.room.run.Runs;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks behind sprung moldings. */
class BlockingTest {
    private static final String CORNICE = Bench.resource("/reference-cornice.yaml");

    private static List<BackingBlock> blocks(String stack, String plan) {
        Bench bench = Bench.sound(stack);
        Notices notices = new Notices();
        Fields root = Fields.of(
                DocumentReader.read("stack.yaml", (stack + plan).getBytes(StandardCharsets.UTF_8), notices)
                        .orElseThrow(),
                new Claims(),
                notices,
                bench.stack().lengths());
        Plan read = Plan.read(bench.stack(), root, notices);
        assertThat(notices.sorted()).isEmpty();
        return Blocking.of(bench.section(), Optional.of(Runs.of(bench.section(), read, new Notices())));
    }

    private static String wall(String keys) {
        return "plan:\n  - { name: run, left: square, right: square, " + keys
                + "stretches: [{ name: a, length: 100 }] }\n";
    }

    /** Worked example A: the wedge, 1/8 clear of the crown's back, has legs of 1.4443 down and 1.1284 out. */
    @Test
    void without_its_wedge_the_reference_crown_wants_one_of_those_legs() {
        String without = CORNICE.lines()
                .filter(line -> !line.contains("name: wedge"))
                .map(line -> line + "\n")
                .reduce("", String::concat);
        List<BackingBlock> found = blocks(without, wall(""));
        assertThat(found).hasSize(1);
        BackingBlock block = found.get(0);
        assertThat(block.height()).isCloseTo(1.4443, within(5e-5));
        assertThat(block.width()).isCloseTo(1.1284, within(5e-5));
        assertThat(block.bevel()).isCloseTo(38, within(1e-6));
        // the run is 100 long: blocks of 3 from end to end of it, 16 apart, and one at the far end
        assertThat(block.spacing()).isEqualTo(16);
        assertThat(block.count()).isEqualTo(7 + 0);
        assertThat(blocks(CORNICE, wall(""))).isEmpty();
    }

    @Test
    void they_stand_where_the_framing_stands() {
        String crown = Bench.head("space: { floor: -90, ceiling: 6, wall: { solid: yes } }")
                + Bench.list("name: crown, profile: check-crown-edged 9/16 x 3-5/8, back: wall, top: ceiling");
        BackingBlock block =
                blocks(crown, wall("studs: { every: 24, first: 12 }, ")).get(0);
        assertThat(block.spacing()).isEqualTo(24);
        // the back's legs are to each other as the sine to the cosine of the spring, and so are those of the block
        assertThat(block.width() / block.height()).isCloseTo(Math.tan(Math.toRadians(38)), within(1e-9));
        assertThat(block.slope()).isCloseTo(block.height() / Math.cos(Math.toRadians(38)), within(1e-9));
    }

    /**
     * By hand: a ceiling that rises r for each inch out lies on the crown's room edge, and a wedge that fills the corner
     * under it ends where the back, set off 1/8, meets that slope.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 6})
    void under_a_ceiling_that_rises_the_block_is_lower_and_keeps_clear_of_ceiling_and_back(int rise) {
        double r = rise / 12.0;
        String crown = Bench.head("space: { floor: -90, ceiling: { height: 0, slope: " + rise
                        + " in 12 }, wall: { solid: yes } }")
                + Bench.list("name: crown, profile: plain-crown 4-5/8, back: wall, top: touch");
        Bench bench = Bench.sound(crown);
        Outline outline = bench.section().bodies().stream()
                .filter(body -> body.name().equals("crown"))
                .findFirst()
                .orElseThrow()
                .outline();
        Line back = outline.straights("back").stream()
                .max(Comparator.comparingDouble(Line::length))
                .orElseThrow();
        BackingBlock block = blocks(crown, wall("")).get(0).cut();
        double foot = Math.min(back.from().y(), back.to().y());
        // the corner of wall and ceiling is the datum: the leg up ends over the foot of the back, the other one under
        // the slope
        Point low = new Point(0, -block.height());
        Point out = new Point(block.width(), r * block.width());
        assertThat(low.y()).isGreaterThan(foot);
        assertThat(distance(low, back)).isBetween(Blocking.CLEAR - 1e-9, Blocking.CLEAR + 1.0 / 16);
        assertThat(distance(out, back)).isEqualTo(distance(low, back), within(1e-9));
        assertThat(block.topBevel()).isCloseTo(Math.toDegrees(Math.atan(r)), within(1e-9));
        assertThat(Math.min(block.height(), block.width()) * 16 % 1).isCloseTo(0, within(1e-9));
        assertThat(block.slope()).isCloseTo(low.minus(out).length(), within(1e-9));
    }

    private static double distance(Point at, Line line) {
        return Math.abs(line.direction(0).cross(at.minus(line.from())));
    }
}
