package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.LoadPath;
import buildup.profiles.outline.Point;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked example E of reference/worked-examples.md, on the cornice of A: this project's own arithmetic. */
class CorniceSupportTest {
    private static final Offset<Double> NEAR = within(0.001);
    private static final String TEXT = Bench.resource("/reference-cornice.yaml");
    private final Held cornice = Held.of(Bench.sound(TEXT));
    private static final List<String> ABOVE_THE_BED =
            List.of("soffit", "fascia", "block A", "block B", "wedge", "crown", "cap");

    private static Held cornice(String piece, String changed) {
        assertThat(TEXT).contains(piece);
        return Held.of(Bench.sound(TEXT.replace(piece, changed)));
    }

    @Test
    void all_above_the_bed_stands_on_the_frieze_alone_for_the_bed_only_hangs() {
        Balance balance = cornice.balanceOn("frieze");
        assertThat(cornice.names(balance.group())).containsExactlyElementsOf(ABOVE_THE_BED);
        assertThat(balance.weight() * 144 / 29.35).as("sq in").isCloseTo(15.753, NEAR);
        assertThat(balance.resultant()).isCloseTo(3.345, NEAR);
        assertThat(balance.weight()).isCloseTo(3.211, NEAR);
        assertThat(balance.bearingBack()).isCloseTo(0, NEAR);
        assertThat(balance.bearingFace()).isCloseTo(0.75, NEAR);
        assertThat(balance.overturning()).isCloseTo(8.332, NEAR);
    }

    @Test
    void held_back_on_an_arm_of_three_eighths_it_pulls_22_2_pounds() {
        Balance balance = cornice.balanceOn("frieze");
        assertThat(balance.holdAt().y() - 6.25).isCloseTo(0.375, NEAR);
        assertThat(balance.holdBack()).hasValueCloseTo(22.2, within(0.05));
    }

    @Test
    void a_bed_that_is_itself_carried_brings_the_bearing_out_to_2() {
        Held carried = cornice("name: bed,", "name: bed, fixed: frieze,");
        Balance balance = carried.balance("soffit");
        assertThat(carried.names(balance.group())).containsExactlyElementsOf(ABOVE_THE_BED);
        assertThat(balance.bearingFace()).isCloseTo(2.0, NEAR);
        assertThat(balance.overturning()).isCloseTo(4.318, within(0.002));
        assertThat(carried.names(balance.carriers())).containsExactly("frieze", "bed");
        assertThat(carried.balanceOn("frieze"))
                .as("asked over all that carries it together")
                .isEqualTo(balance);
        Notices notices = new Notices();
        carried.support(notices);
        assertThat(notices.sorted())
                .extracting(NoticeWords.INCHES::message)
                .anyMatch(message -> message.startsWith(
                        "soffit, fascia and 5 more lean out: 3.21 lb a foot falls 1-3/8- past frieze and bed."));
    }

    private static final String WIDE = "profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top";

    private static Held overTheCase() {
        return cornice(WIDE, "profile: board 3/4 x 7-1/2, lay: flat, back: -4, bottom: frieze.top");
    }

    @Test
    void a_soffit_run_back_over_the_case_is_held_down_with_1_565_pounds() {
        Held back = overTheCase();
        Balance balance = back.balance("soffit");
        assertThat(balance.weight() * 144 / 29.35).as("sq in").isCloseTo(18.753, NEAR);
        assertThat(balance.resultant()).isCloseTo(2.490, NEAR);
        assertThat(balance.weight()).isCloseTo(3.822, NEAR);
        assertThat(balance.bearingBack()).isCloseTo(-4, NEAR);
        assertThat(balance.bearingFace()).isCloseTo(0.75, NEAR);
        assertThat(balance.overturning()).isCloseTo(6.650, within(0.002));
        assertThat(balance.downAt().x()).isCloseTo(-3.5, NEAR);
        assertThat(balance.holdDown()).hasValueCloseTo(1.565, NEAR);
    }

    @Test
    void a_soffit_that_bridges_case_and_frieze_is_told_of_by_itself() {
        Notices notices = new Notices();
        overTheCase().support(notices);
        assertThat(notices.sorted())
                .extracting(NoticeWords.INCHES::message)
                .anyMatch(message -> message.startsWith(
                        "soffit, fascia and 5 more lean out: 3.82 lb a foot falls 1-3/4- past case and frieze."));
    }

    /** The parts above the bed made one, so that they tip together. */
    private static Held glued(Held held) {
        return gluedAround(held.weld("bed", "frieze", new Point(0.75, 5)));
    }

    private static Held gluedAround(Held held) {
        return held.weld("bead", "case", new Point(0, 0.2))
                .weld("frieze", "case", new Point(0, 3))
                .weld("fascia", "soffit", new Point(3.5, 6.5))
                .weld("block A", "soffit", new Point(3, 7))
                .weld("block B", "block A", new Point(3, 8))
                .weld("wedge", "block B", new Point(4.25, 9))
                .weld("crown", "fascia", new Point(4.25, 7.75))
                .weld("cap", "block B", new Point(3.5, 10.061));
    }

    @Test
    void nailed_up_the_bed_carries_as_far_as_2_and_the_whole_stack_needs_less() {
        // unlike the single-piece answer, the whole stack knows the brads of the bed: they are given here as glue
        Held glued = glued(overTheCase());
        double pull = 3.822 * (2.490 - 2.0) / (2.0 + 3.5);
        assertThat(downWith(glued, pull + 0.002).limit()).isPresent();
        assertThat(downWith(glued, pull - 0.002).limit()).isEmpty();
        Held noBrads = new Held(
                glued.section(),
                List.of(),
                glued.joints().stream()
                        .filter(joint -> joint.outer() != glued.number("bed"))
                        .toList());
        assertThat(downWith(noBrads, 100).limit()).as("the bed falls").isEmpty();
    }

    @Test
    void without_its_bed_the_whole_stack_needs_the_1_565_pounds_of_the_single_piece() {
        String bed = TEXT.lines()
                .filter(line -> line.contains("name: bed,"))
                .findFirst()
                .orElseThrow();
        Held bare = Held.of(Bench.sound(TEXT.replace(bed + "\n", "")
                .replace(WIDE, "profile: board 3/4 x 7-1/2, lay: flat, back: -4, bottom: frieze.top")));
        assertThat(downWith(gluedAround(bare), 1.567).limit()).isPresent();
        assertThat(downWith(gluedAround(bare), 1.563).limit()).isEmpty();
    }

    private static Held downWith(Held held, double pull) {
        return held.nail("nail", "soffit", "case", new Point(-3.5, 6.25), -90, pull, 0);
    }

    @Test
    void the_way_of_the_weight_is_the_frieze_and_the_bead_and_the_case() {
        LoadPath path = cornice.path();
        assertThat(cornice.names(path.restsOn(cornice.number("cap")))).containsExactly("block B");
        assertThat(cornice.names(path.restsOn(cornice.number("block B")))).containsExactly("block A");
        assertThat(cornice.names(path.restsOn(cornice.number("soffit")))).containsExactly("frieze");
        assertThat(cornice.names(path.restsOn(cornice.number("bed")))).containsExactly("frieze");
        assertThat(cornice.names(path.restsOn(cornice.number("fascia")))).containsExactly("soffit", "block A");
        assertThat(cornice.names(path.restsOn(cornice.number("frieze")))).containsExactly("bead");
        assertThat(cornice.names(path.restsOn(cornice.number("bead")))).containsExactly("case");
        assertThat(path.restsOn(cornice.number("case"))).isEmpty();
        assertThat(cornice.names(path.through(cornice.number("soffit")))).containsExactlyElementsOf(ABOVE_THE_BED);
        assertThat(cornice.names(path.through(cornice.number("case")))).hasSize(10);
        assertThat(cornice.names(path.through(cornice.number("crown")))).containsExactly("crown");
        for (int i = 0; i < cornice.section().pieces().size(); i++) {
            assertThat(path.reachesGround(i)).as(cornice.section().name(i)).isTrue();
        }
    }
}
