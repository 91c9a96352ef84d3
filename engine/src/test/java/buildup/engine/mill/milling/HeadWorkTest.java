package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Head;
import buildup.profiles.Profile;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeadWorkTest {
    /** Worked example H: the nosing, its kerf below, its round and its hollow open upward. */
    private static final String NOSING =
            "out 1, drip 1/4 x 1/4, out to 4-1/2, up 3/8, ovolo in 1, in to 1/2, cove in down 1/2";

    private static Milled milled(Profile profile, String head) {
        Catalog catalog =
                Molded.with("heads: [{ name: own, speed: 6000, knives: 1, feed: 25 ft, widest: 9, corner: 1/16,"
                        + " stock: [2, 5], " + head + " }]");
        Optional<Head> own =
                catalog.heads().stream().filter(one -> one.name().equals("own")).findFirst();
        return Milling.of(profile, catalog, own, List.of(), new Notices());
    }

    private static List<String> heads(Milled milled) {
        return milled.heads().stream().map(work -> work.side().word()).toList();
    }

    /** reference/milling.md, "Knives of other heads". */
    @ParameterizedTest
    @CsvSource({"4, 0, 1.000", "5, 12, 1.038", "6, 20, 1.102"})
    void a_knife_is_as_deep_as_the_circle_and_the_hook_of_its_head_make_it(String circle, String hook, double depth) {
        Milled nosing = milled(Molded.words(NOSING), "deepest: 1-1/8, circle: " + circle + ", hook: " + hook);
        assertThat(nosing.knives()).hasSize(1);
        assertThat(nosing.knives().get(0).woodDepth()).isCloseTo(1, within(1e-9));
        assertThat(nosing.knives().get(0).depth()).isCloseTo(depth, within(5e-4));
        assertThat(nosing.obstacles()).isEmpty();
    }

    @Test
    void a_head_that_takes_half_an_inch_refuses_an_inch() {
        Milled nosing = milled(Molded.words(NOSING), "deepest: 1/2, circle: 6, hook: 20");
        assertThat(nosing.obstacles()).extracting(notice -> notice.code()).containsExactly("profile-too-deep");
    }

    @Test
    void the_fewest_heads_are_taken_and_a_groove_takes_a_listed_cutter() {
        Milled nosing = Molded.milled(Molded.words(NOSING));
        assertThat(heads(nosing)).containsExactly("top", "bottom");
        assertThat(nosing.knives().get(0).width()).isCloseTo(4.75, within(1e-9));
        assertThat(nosing.knives().get(0).stock().orElseThrow().toInches()).isEqualTo(5);
        assertThat(nosing.cutters())
                .extracting(pass -> FigurePrinter.INCHES.print(pass.cutter()))
                .containsExactly("straight bit, diameter 1/4");
    }

    @Test
    void straight_sides_take_no_head_and_a_board_none_at_all() {
        assertThat(heads(Molded.milled(Molded.profile("cove 3/4 x 3/4")))).containsExactly("outside");
        assertThat(Molded.milled(Molded.profile("board 3/4 x 3-1/2")).heads()).isEmpty();
    }

    /** A casing with its edge rounded, which the narrower head does, and its back hollowed 1/16 deep over 2 of its 3-1/2. */
    @Test
    void a_back_relief_takes_a_knife_of_its_own() {
        Milled casing =
                Molded.milled(Molded.words("out 3/4, up 3, ovolo in 1/2, back:, down 1/2, out 1/16, down 2, in 1/16"));
        assertThat(heads(casing)).containsExactly("top", "inside");
        Knife back = casing.knives().stream()
                .filter(knife -> knife.side().equals(Side.BACK))
                .findFirst()
                .orElseThrow();
        assertThat(back.woodDepth()).isCloseTo(0.0625, within(1e-9));
        assertThat(back.width()).isCloseTo(3.5 + 2 * Knife.MARGIN, within(1e-9));
    }

    /** What is taken reaches all that any head reaches, over the whole catalog. */
    @Test
    void the_heads_reach_everything_that_any_head_reaches() {
        for (Profile profile : Molded.all()) {
            Milled milled = Molded.milled(profile);
            List<Side> taken = milled.heads().stream().map(HeadWork::side).toList();
            assertThat(milled.reached())
                    .as(profile.name())
                    .allSatisfy(part -> assertThat(milled.stick().isPlaned(part.segment())
                                    || part.segment().length() < 1.0 / 256
                                    || part.sides().isEmpty()
                                    || part.sides().stream().anyMatch(taken::contains))
                            .isTrue());
        }
    }
}
