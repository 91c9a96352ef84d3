package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Hiding.Grade;
import buildup.engine.hold.nail.Proposal;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every proposed nail, tried on 200 random stacks; the seed stands in each message. */
class ProposalsTest {
    private static final int STACKS = 200;

    /** A sample's length of the longest nail, and a touching at each of a few joints. */
    private static final double COUNTED = 0.03;

    @Test
    @Tag("long")
    void no_proposed_nail_comes_out_and_each_passes_the_checks_of_one_in_the_file() {
        int proposed = 0;
        for (long seed = 1; seed <= STACKS; seed++) {
            Driven stack = Driven.of(new BuiltUp(seed).text());
            Recount recount = new Recount(stack.section());
            for (Proposal proposal : stack.proposals()) {
                Fixed nail = proposal.fixed();
                String where = "seed " + seed + " " + proposal.reason() + " " + nail;
                assertThat(recount.endsInside(nail)).as(where).isTrue();
                assertThat(nail.drive().breakOut()).as(where).isEmpty();
                assertThat(recount.air(nail)).as(where).isCloseTo(nail.drive().air(), within(COUNTED));
                assertThat(recount.air(nail)).as(where).isLessThan(0.25 + COUNTED);
                assertThat(nail.sound()).as(where).isTrue();
                assertSame(again(stack, nail), nail, where);
                proposed++;
            }
        }
        assertThat(proposed).as("nails proposed on all stacks").isGreaterThan(STACKS);
    }

    private static void assertSame(Fixed again, Fixed nail, String where) {
        assertThat(again.sound()).as(where).isTrue();
        assertThat(again.bite()).as(where).isCloseTo(nail.bite(), within(1e-9));
        assertThat(again.allowable()).as(where).isCloseTo(nail.allowable(), within(1e-9));
        assertThat(again.edge().orElse(0)).as(where).isCloseTo(nail.edge().orElse(0), within(1e-9));
        assertThat(again.hiding()).as(where).isEqualTo(nail.hiding());
        assertThat(again.reach()).as(where).isEqualTo(nail.reach());
    }

    private static Fixed again(Driven stack, Fixed nail) {
        Notices notices = new Notices();
        List<Fixed> all = Fixing.of(
                stack.section(), List.of(nail.fastening()), stack.lights(), stack.sights(), Driven.CATALOG, notices);
        assertThat(notices.sorted())
                .filteredOn(notice -> !notice.code().equals("upper-edge-not-held"))
                .allMatch(notice -> notice.level() == Level.NOTE);
        return all.get(0);
    }

    @Test
    void inches_in_each_body_are_those_that_points_along_the_nail_count() {
        for (long seed = 1; seed <= 40; seed++) {
            Driven stack = Driven.of(new BuiltUp(seed).text());
            Recount recount = new Recount(stack.section());
            for (Proposal proposal : stack.proposals()) {
                Fixed nail = proposal.fixed();
                for (int body : nail.drive().held()) {
                    boolean wall = !stack.section().body(body).piece();
                    if (!wall && stack.section().overlaps().isEmpty()) {
                        assertThat(nail.drive().in(body))
                                .as("seed " + seed + " body " + body)
                                .isCloseTo(recount.inches(nail, body), within(COUNTED));
                    }
                }
            }
        }
    }

    /** The thinnest pin, 0.025 thick, wants 2.5 times that. */
    private static final double LEAST_BESIDE = 0.06;

    private static void assertBuried(Driven stack, String where) {
        Recount recount = new Recount(stack.section());
        for (Proposal proposal : stack.proposals()) {
            for (Crossing crossing : proposal.fixed().drive().crossings()) {
                if (crossing.holds()) {
                    assertThat(recount.hasWoodBeside(proposal.fixed(), crossing, LEAST_BESIDE))
                            .as(where + " " + proposal.fixed().drive())
                            .isTrue();
                }
            }
        }
    }

    @Test
    void no_proposed_nail_runs_in_a_face_of_what_it_bites() {
        for (long seed = 1; seed <= 40; seed++) {
            Driven stack = Driven.of(new BuiltUp(seed).text());
            // where two overlap a crossing is not all of what lies in either
            if (stack.section().overlaps().isEmpty()) {
                assertBuried(stack, "seed " + seed);
            }
        }
        Driven sill = Driven.in(
                "{ floor: 0, ceiling: 96, wall: { to: 30, covering: 1/2 } }",
                List.of(
                        "name: sill, kind: framing, section: [out 4, up 1-1/2], back: -4, bottom: 28-1/2",
                        "name: apron, profile: board 3/4 x 3-1/2, back: wall, top: 30",
                        "name: stool, profile: board 1 x 5-1/2, lay: flat, back: -2-1/2, bottom: 30",
                        "name: casing, section: [out 3/4, up 3-1/2], back: wall, bottom: stool.top"));
        assertThat(sill.proposals()).isNotEmpty();
        assertBuried(sill, "the joint of sill and apron");
        Driven soffit = Driven.in(
                "{ wall: { covering: 1/2 } }",
                List.of(
                        "name: ground, kind: nailer, profile: board 1-1/2 x 3-1/2, back: wall, bottom: 11",
                        "name: soffit, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 14-1/2",
                        "name: corona, profile: board 3/4 x 2-1/2, back: soffit.face, bottom: 14-1/8"));
        assertThat(soffit.proposals()).isNotEmpty();
        assertBuried(soffit, "the lower face of the soffit");
    }

    @Test
    void the_same_stack_gives_the_same_proposals() {
        for (long seed = 1; seed <= 20; seed++) {
            String text = new BuiltUp(seed).text();
            assertThat(Driven.of(text).proposals()).isEqualTo(Driven.of(text).proposals());
        }
    }

    private static final String CORNICE = Driven.text(
            "space: " + WorkedNailsTest.ROOM + "\n" + "eyes: [{ name: standing, distance: 72, height: floor + 60 }]\n",
            WorkedNailsTest.cornice(true));

    @Test
    void the_frieze_is_nailed_where_the_bed_will_cover_it() {
        Driven stack = Driven.of(CORNICE);
        Proposal best = first(stack, "frieze");
        assertThat(best.fixed().hiding().grade()).isEqualTo(Grade.COVERED);
        assertThat(best.fixed().hiding().coveredBy()).hasValue(stack.body("bed"));
        assertThat(FigurePrinter.INCHES.print(best.reason()))
                .isEqualTo("bites 1-1/2 into 'case'; covered later by 'bed'");
        assertThat(best.fixed().fastening().use().call()).isEqualTo("16 ga x 2-1/4");
    }

    @Test
    void the_crown_is_nailed_into_the_wedge() {
        Driven stack = Driven.of(CORNICE);
        assertThat(FigurePrinter.INCHES.print(first(stack, "crown").reason())).contains("'wedge'");
    }

    @Test
    void nothing_is_proposed_where_no_tool_gets_in() {
        Driven stack = Driven.of(CORNICE);
        assertThat(stack.proposals())
                .as("the cap lies under the ceiling, and from below only its lip is free")
                .noneMatch(proposal -> proposal.fixed().piece() == stack.body("cap"));
    }

    @Test
    void hidden_nails_come_first_and_heads_lie_apart() {
        Driven stack = Driven.of(CORNICE);
        List<Proposal> all = stack.proposals();
        for (int i = 0; i + 1 < all.size(); i++) {
            Fixed one = all.get(i).fixed();
            Fixed next = all.get(i + 1).fixed();
            assertThat(one.piece()).isLessThanOrEqualTo(next.piece());
            if (one.piece() == next.piece()) {
                assertThat(one.hiding().grade())
                        .isLessThanOrEqualTo(next.hiding().grade());
                assertThat(one.head().distance(next.head())).isGreaterThanOrEqualTo(0.5);
            }
        }
    }

    /**
     * A block 1-1/2 thick on a wall covered by 1/2 of wallboard: a screw 3-1/2 long is left 1-1/2 for the stud. Backing is
     * screwed, or nailed where no screw goes in, and not pinned: common practice, no source.
     */
    @Test
    void a_nailer_has_a_place_as_the_trim_has_and_is_screwed_square_into_the_wall() {
        Driven stack = Driven.in(
                "{ wall: { solid: yes, covering: 1/2 } }",
                List.of(
                        "name: block, kind: nailer, profile: board 1-1/2 x 3-1/2, back: wall, bottom: 0",
                        "name: frieze, profile: board 3/4 x 5-1/2, back: block.face, bottom: -1"));
        Fixed best = first(stack, "block").fixed();
        assertThat(best.fastening().use().call()).isEqualTo("screw 10 x 3-1/2");
        assertThat(best.fastening().angle()).isZero();
        assertThat(best.bite()).isCloseTo(3.5 - 1.5 - 0.5, within(1e-9));
        assertThat(stack.proposals())
                .filteredOn(proposal -> proposal.fixed().piece() == stack.body("block"))
                .allMatch(proposal ->
                        proposal.fixed().fastening().use().fastener().diameter().toInches() > 0.047);
    }

    /** The list tells bite in a column and in the reason: of a screw both count its thread. */
    @Test
    void the_reason_tells_the_bite_of_its_row() {
        Driven stack = Driven.in(
                "{ wall: { solid: yes } }",
                List.of(
                        "name: block, kind: nailer, profile: board 3/4 x 3, back: wall, bottom: 0",
                        "name: frieze, profile: board 3/4 x 5-1/2, back: block.face, bottom: -1"));
        assertThat(first(stack, "block").fixed().fastening().use().call()).startsWith("screw ");
        for (Proposal proposal : stack.proposals()) {
            assertThat(FigurePrinter.INCHES.print(proposal.reason()))
                    .startsWith("bites "
                            + FigurePrinter.INCHES.print(
                                    Figure.length(proposal.fixed().bite())) + " into");
        }
    }

    /** No screw that is listed goes through 6 in of wood into a wall: the block is told without a place. */
    @Test
    void a_nailer_without_a_place_is_told_too() {
        Driven thick = Driven.in(
                "{ wall: { solid: yes } }",
                List.of(
                        "name: block, kind: nailer, profile: board 6 x 6, back: wall, bottom: 0",
                        "name: slat, profile: board 1/4 x 1, back: block.face, bottom: 1"));
        Sheet told = FixingSheets.of(thick.section(), List.of(), thick.proposals()).stream()
                .filter(sheet -> sheet.key().equals("proposals.first"))
                .findFirst()
                .orElseThrow();
        assertThat(told.rows())
                .extracting(row -> told.names(row))
                .containsExactlyInAnyOrder(List.of("slat"), List.of("block"));
    }

    @Test
    void a_pin_comes_with_the_word_to_glue_it() {
        Driven stack = Driven.in(
                "{ wall: { solid: yes } }",
                List.of(
                        "name: back, kind: nailer, profile: board 3/8 x 3, back: wall, bottom: 0",
                        "name: slat, profile: board 1/4 x 1, back: 1/2, bottom: 0",
                        "name: strip, profile: board 3/16 x 1, back: slat.face, bottom: 0"));
        assertThat(stack.proposals())
                .filteredOn(proposal ->
                        proposal.fixed().fastening().use().fastener().headless())
                .isNotEmpty()
                .allMatch(proposal ->
                        FigurePrinter.INCHES.print(proposal.reason()).contains("glue it too"));
    }

    private static Proposal first(Driven stack, String piece) {
        return stack.proposals().stream()
                .filter(proposal -> proposal.fixed().piece() == stack.body(piece))
                .findFirst()
                .orElseThrow();
    }
}
