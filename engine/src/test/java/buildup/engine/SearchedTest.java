package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.judge.along.Turning;
import buildup.engine.judge.search.Answered;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchPlan;
import buildup.engine.judge.search.SearchResult;
import buildup.engine.judge.search.SizeChange;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Backward questions asked of the cornice of the worked examples, sections A and B. */
class SearchedTest {
    static Document document(String yaml) {
        return DocumentReader.read("cornice.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                .orElseThrow();
    }

    static Searched search(String yaml, SearchLimits limits, Optional<String> why) {
        return Searched.of(document(yaml), Catalog.builtIn(), new Claims(), new Notices(), limits, why);
    }

    private static Searched search(String yaml) {
        return search(yaml, SearchLimits.of(2000), Optional.empty());
    }

    /** The worked cornice up to its cap, these lines in the place of its sizes. */
    static String cornice(String lip, String width, String more) {
        return """
                title: Cornice
                units: in
                wood: yellow-poplar
                sizes:
                  lip: %s
                  width: %s
                space: { floor: -84, ceiling: 12, wall: { solid: no } }
                eyes: [{ name: standing, distance: 72, height: floor + 60 }]
                lights: [{ name: raking, altitude: 35.264389682754654, azimuth: 45 }]
                pieces:
                  - { name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 6-1/4 }
                  - { name: bead, profile: board 1 x 3/4, back: wall, bottom: datum }
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: bead.top }
                  - { name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: frieze.face, top: frieze.top }
                  - { name: soffit, kind: nailer, profile: board 3/4 x width, lay: flat, back: wall, bottom: frieze.top }
                  - { name: fascia, profile: board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - lip }
                  - { name: crown, profile: plain-crown 3-1/4, back: fascia.face, bottom: fascia.top - 1/2 }
                  - { name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: wall, face: crown.face + 3/8, bottom: crown.top }
                """.formatted(lip, width) + more;
    }

    private static SearchResult found(String yaml) {
        return search(yaml).result().orElseThrow();
    }

    private static String changes(Answered answered) {
        return String.join(
                ", ",
                answered.changes().stream()
                        .map((SizeChange change) -> change.key() + " " + change.to())
                        .toList());
    }

    private static List<String> said(Searched searched) {
        return searched.notices().stream()
                .filter(notice -> !notice.code().equals("must-not-met"))
                .map((Notice notice) -> notice.code() + ": " + NoticeWords.INCHES.message(notice))
                .toList();
    }

    private static final String HALF = "must: [share of frieze.face in raking <= 50 %]\n";

    /** Worked example B: half of the frieze's 4.125 is lit when the shadow's edge lies at 2.8125: soffit 3-3/16 wide. */
    @Test
    void half_the_frieze_is_lit_with_the_soffit_at_3_3_16_exactly() {
        SearchResult found = found(cornice("1/4", "between 2-1/2 and 4 by 1/8, now 3-1/2", HALF));
        Turning turning = found.turning().get(0);
        assertThat(turning.key()).isEqualTo("sizes.width");
        assertThat(turning.value()).isCloseTo(3.1875, within(1e-9));
        assertThat(turning.shop()).hasValue(3.1875);
        assertThat(turning.metBelow()).isTrue();
        assertThat(turning.metAbove()).isFalse();
        assertThat(changes(found.smallest().orElseThrow())).isEqualTo("sizes.width 3-1/8");
        assertThat(found.proved()).isTrue();
    }

    /**
     * Worked example B again: the light falls at 45 degrees in the section, so that the edge of the shadow drops an inch
     * for each inch of soffit: 2 % of the frieze's 4-1/8 either way.
     */
    @Test
    void half_the_frieze_within_some_is_met_by_a_stretch_of_sizes_round_the_exact_one() {
        String within = HALF.replace("<= 50 %", "= 50 % within 2 %");
        Turning turning = found(cornice("1/4", "between 2-1/2 and 4 by 1/8, now 3-1/2", within))
                .turning()
                .get(0);

        double aside = 0.02 * 4.125;
        assertThat(turning.value()).isCloseTo(3.1875, within(1e-4));
        assertThat(turning.metFrom().orElseThrow()).isCloseTo(turning.value() - aside, within(1e-3));
        assertThat(turning.metTo().orElseThrow()).isCloseTo(turning.value() + aside, within(1e-3));
    }

    /** To the eye nothing of the soffit shows up to some width, whatever the last digits of that width are. */
    @Test
    void a_rule_that_is_met_to_the_end_of_a_size_is_told_as_met_on_that_side() {
        for (String range : List.of("between 2-1/2 and 5 by 1/8, now 3-1/2", "between 2 and 5 by 1/4, now 3-1/2")) {
            List<Turning> turning = found(cornice("1/4", range, "must: [seen of soffit from standing = 0]\n"))
                    .turning();
            assertThat(turning).isNotEmpty().allSatisfy(turn -> {
                assertThat(turn.metFrom()).isEmpty();
                assertThat(turn.metAbove()).isNotEqualTo(turn.metBelow());
            });
        }
    }

    @Test
    void where_no_choice_meets_a_line_fewer_are_tried_and_the_plan_says_so() {
        List<SearchPlan> plans = new ArrayList<>();
        String yaml = """
                title: Hopeless
                sizes: { low: between 1 and 3 by 1/16, high: between 3 and 8 by 1/16 }
                pieces:
                  - { name: one, section: [out 1, up low], back: wall, bottom: datum }
                  - { name: two, section: [out 1, up high], back: wall, bottom: one.top }
                  - { name: three, section: ['out 1', up 1], back: wall, bottom: two.top, leave-out: 'one of [no, yes]' }
                must: [height >= 20]
                """;
        SearchLimits limits = new SearchLimits(5200, 5, 1, plans::add, () -> false, judged -> {});
        SearchResult found = search(yaml, limits, Optional.empty()).result().orElseThrow();
        // 33 x 81 x 2 stacks
        assertThat(found.space()).isEqualTo(BigInteger.valueOf(5346));
        assertThat(plans).extracting(SearchPlan::tries).containsExactly(5000L);
        assertThat(found.judged()).isLessThanOrEqualTo(5000);
    }

    @Test
    void a_rule_that_turns_on_one_of_the_choices_is_met_on_one_side_of_it() {
        // 5-1/2 and the soffit's 3/4
        for (String high : List.of("between 5 and 6 by 1/4, now 5-1/4", "between 5 and 5-1/2 by 1/2, now 5")) {
            SearchResult found = found(frieze(high, "[height <= 6-1/4]"));
            Turning turn = found.turning().get(0);
            assertThat(turn.value()).isCloseTo(5.5, within(1e-9));
            assertThat(turn.metBelow()).as(high).isTrue();
            assertThat(turn.metAbove()).as(high).isFalse();
            Turning other = found(frieze(high, "[height >= 6-1/4]")).turning().get(0);
            assertThat(other.metBelow()).as(high).isFalse();
            assertThat(other.metAbove()).as(high).isTrue();
        }
    }

    /** A frieze under a soffit of 3/4, in a room of 96 in, with a lamp and an eye. */
    private static String frieze(String high, String must) {
        return """
                title: Frieze
                sizes: { high: '%s', lamp: 40, eye: 60 }
                space: { floor: -60, ceiling: 36 }
                lights: [{ name: lamp, at: { distance: 30, height: floor + lamp } }, { name: sun, altitude: 40, azimuth: 0 }]
                eyes: [{ name: me, distance: 60, height: floor + eye }, { name: other, distance: 60, height: floor + 60 }]
                pieces:
                  - { name: frieze, profile: board 3/4 x high, back: wall, bottom: datum }
                  - { name: soffit, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top }
                must: %s
                """.formatted(high, must);
    }

    @Test
    void of_a_light_that_cannot_shine_and_an_eye_that_cannot_see_no_line_is_met() {
        String lamp = frieze("5", "[share of frieze.face in lamp <= 100 %]")
                .replace("lamp: 40", "lamp: 'between 88 and 96 by 4, now 88'");
        String eye = frieze("5", "[seen of soffit from me <= 9]")
                .replace("eye: 60", "eye: 'between 88 and 96 by 4, now 88'");
        for (String yaml : List.of(lamp, eye)) {
            SearchResult found = found(yaml);
            // at 96 it is the ceiling in which they stand
            assertThat(found.meeting()).as(yaml).isEqualTo(2);
            String raised = yaml.replace("now 88", "now 96");
            Answers today =
                    Answer.of(document(raised), Catalog.builtIn()).known().orElseThrow();
            assertThat(today.must()).as(raised).allSatisfy(must -> {
                assertThat(must.met()).isFalse();
                assertThat(must.figure()).isEmpty();
            });
        }
    }

    @Test
    void the_profile_of_a_piece_that_is_left_out_makes_no_other_answer() {
        SearchResult found = found("""
                title: Bed or none
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
                  - { name: bed, profile: 'any ovolo-bed', back: frieze.face, top: frieze.top, leave-out: 'one of [no, yes]' }
                wish: [least weight]
                """);
        List<String> left = found.best().stream()
                .filter(one -> one.candidate().texts().contains("yes"))
                .map(SearchedTest::changes)
                .toList();
        assertThat(left).containsExactly("pieces.bed.leave-out yes");
        assertThat(found.best()).hasSizeGreaterThan(1);
    }

    @Test
    void a_size_whose_name_is_a_letter_of_other_words_hangs_on_nothing_else() {
        Searched searched = search("""
                        title: Letters
                        sizes: { a: between 1 and 3 by 1/8, b: between 3 and 8 by 1/8, c: between 1 and 5 by 1/8 }
                        pieces:
                          - { name: one, profile: board 3/4 x 3-1/2, back: wall, bottom: datum, top: datum + a }
                          - { name: two, profile: board 3/4 x 9-1/4, back: wall, bottom: one.top, top: one.top + b }
                          - { name: three, profile: board 3/4 x 7-1/4, lay: flat, back: wall, face: two.face + c, bottom: two.top }
                        must: [height >= 12]
                        """, SearchLimits.of(300), Optional.empty());
        SearchResult found = searched.result().orElseThrow();
        // 3 + 8 + 3/4 at most
        assertThat(said(searched))
                .contains(
                        "out-of-reach: 'height >= 12' is out of reach: whatever the free sizes are, it comes to 11-3/4"
                                + " at best.");
        assertThat(found.nothingLeft()).isTrue();
        assertThat(found.meeting()).isZero();
    }

    /** Worked example B: by the lip alone the fascia's bottom would have to lie at 6.3125, above the soffit. */
    @Test
    void the_lip_alone_never_lights_half_the_frieze_and_the_answer_says_what_to_give_up() {
        Searched searched = search(cornice("between 1/16 and 1/2 by 1/16, now 1/4", "3-1/2", HALF));
        SearchResult found = searched.result().orElseThrow();
        assertThat(found.best()).isEmpty();
        assertThat(found.smallest()).isEmpty();
        assertThat(changes(found.nearest().orElseThrow())).isEqualTo("sizes.lip 1/16");
        assertThat(found.turning()).isEmpty();
        assertThat(said(searched))
                .contains("nothing-meets: No choice of the free sizes meets every line under 'must:'.");
    }

    @Test
    void the_stack_itself_is_what_its_free_sizes_are_now() {
        Answer free = Answer.of(
                document(cornice("between 1/8 and 1/2 by 1/8, now 1/4", "one of [3, 3-1/2], now 3-1/2", "")),
                Catalog.builtIn());
        Answer plain = Answer.of(document(cornice("1/4", "3-1/2", "")), Catalog.builtIn());
        assertThat(Sheets.of(free.known().orElseThrow()))
                .isEqualTo(Sheets.of(plain.known().orElseThrow()));
    }

    @Test
    void a_piece_that_may_be_left_out_is_left_out_with_what_fastens_it() {
        String yaml =
                cornice("1/4", "3-1/2", """
                        fastenings:
                          - { name: bed brads, piece: bed, use: 18 ga x 1-3/4, at: { up: 5-1/4 } }
                          - { name: frieze nails, piece: frieze, use: 15 ga x 2-1/2, at: { up: 4 } }
                        wish: [least weight]
                        """).replace("name: bed, ", "name: bed, leave-out: \"one of [no, yes]\", ");
        SearchResult found = found(yaml);
        assertThat(changes(found.best().get(0))).isEqualTo("pieces.bed.leave-out yes");
    }

    @Test
    void any_shape_of_the_catalog_is_tried_in_its_usual_sizes() {
        String yaml = cornice("1/4", "3-1/2", "wish: [most area]\n").replace("cove-bed 1-1/4 x 1-3/8", "any cove-bed");
        SearchResult found = found(yaml);
        assertThat(found.space())
                .isEqualTo(BigInteger.valueOf(Catalog.builtIn()
                        .usualCalls("cove-bed", buildup.shared.length.LengthUnit.INCH)
                        .size()));
        assertThat(found.proved()).isTrue();
    }

    @Tag("long")
    @Test
    void a_space_beyond_all_bounds_is_said_before_and_searched_as_far_as_the_tries_go() {
        StringBuilder sizes = new StringBuilder("between 1/8 and 1/2 by 1/8, now 1/4\n");
        for (int i = 0; i < 12; i++) {
            sizes.append("  spare%d: between 1 and 9 by 1/32, now 2\n".formatted(i));
        }
        Searched searched = search(
                cornice(sizes.toString(), "3-1/2", "must: [seen of soffit from standing = 0]\n"),
                SearchLimits.of(40),
                Optional.empty());
        assertThat(said(searched)).anyMatch(line -> line.startsWith("large-space: The free sizes make "));
        SearchResult found = searched.result().orElseThrow();
        assertThat(found.judged()).isLessThanOrEqualTo(40);
        assertThat(found.proved()).isFalse();
    }

    @Test
    void what_cannot_be_searched_is_refused_before_searching() {
        assertThat(said(search(cornice("1/4", "3-1/2", HALF))))
                .containsOnlyOnce("nothing-free: No size of the stack is free: there is nothing to search.");
        assertThat(said(search(cornice("between 1/2 and 1/4 by 1/8", "3-1/2", HALF))))
                .containsOnlyOnce("not-a-free-size: 'between 1/2 and 1/4 by 1/8' leaves nothing to choose.");
        assertThat(said(search(cornice("between 1/4 and 1/2 by 0", "3-1/2", HALF))))
                .containsOnlyOnce("not-a-free-size: The step of 'between 1/4 and 1/2 by 0' never comes to its end.");
        assertThat(said(search(cornice("between 1/4 and 1/2 by 1/8, now 3", "3-1/2", HALF))))
                .containsOnlyOnce("not-a-free-size: What 'sizes.lip' is now, 3, does not lie between its ends.");
        assertThat(said(search(cornice("between 1/4 and wide by 1/8", "3-1/2", HALF))))
                .containsOnlyOnce("not-a-free-size: 'wide' in 'between 1/4 and wide by 1/8' is not a size.");
        assertThat(said(search(cornice("between 1/4 and 1/2", "3-1/2", HALF))))
                .containsOnlyOnce("not-a-free-size: 'between 1/4 and 1/2' does not say how 'sizes.lip' is free.");
        assertThat(said(search(cornice("between 1/8 and 1/2 by 1/8", "3-1/2", "wish: [be beautiful]\n"))))
                .containsOnlyOnce("not-a-wish: 'be beautiful' is not a wish.");
        assertThat(said(search(cornice("between 1/8 and 1/2 by 1/8", "3-1/2", ""))))
                .containsOnlyOnce("nothing-wanted: The stack has to meet nothing: every choice would do.");
        assertThat(said(search(cornice("between 1/8 and 1/2 by 1/8", "3-1/2", "must: [height <= 8, height >= 9]\n"))))
                .containsOnlyOnce("rules-contradict: 'height <= 8' and 'height >= 9' cannot both be met.");
    }

    @Test
    void a_limit_that_moves_with_what_is_sought_is_refused() {
        assertThat(said(search(
                        cornice("between 1/8 and 1/2 by 1/8", "3-1/2", "must: [reveal of bead over frieze >= lip]\n"))))
                .containsOnlyOnce(
                        "limit-is-free: 'reveal of bead over frieze >= lip' speaks of 'lip', and that size is free.");
        assertThat(said(search(cornice(
                        "between 1/8 and 1/2 by 1/8",
                        "3-1/2",
                        "must: [height <= 11]\nwish: [top near width + lip]\n"))))
                .containsOnlyOnce("limit-is-free: 'top near width + lip' speaks of 'lip', and that size is free.");
        assertThat(said(search(cornice(
                        "between 1/8 and 1/2 by 1/8",
                        "3-1/2",
                        "must: [reveal of bead over frieze >= width - 3-1/4]\n"))))
                .noneMatch(line -> line.startsWith("limit-is-free"));
    }

    @Test
    void a_size_that_no_figure_hangs_on_is_named() {
        assertThat(said(search(cornice(
                        "between 1/8 and 1/2 by 1/8, now 1/4\n  spare: between 1 and 2 by 1/2, now 1", "3-1/2", HALF))))
                .containsOnlyOnce("idle-size: 'sizes.spare' changes no figure that is asked for, while the other sizes"
                        + " stay as they are today.")
                .noneMatch(line -> line.contains("'sizes.lip' changes no figure"));
    }

    /** The soffit is ripped to end where the rules say, whatever board it is cut from. */
    @Test
    void a_size_that_other_rules_fix_is_named() {
        String yaml = cornice("1/4", "between 4 and 5 by 1/4, now 4-1/2", "must: [projection <= 9]\n")
                .replace(
                        "lay: flat, back: wall, bottom: frieze.top",
                        "lay: flat, back: wall, face: 3-1/2, bottom: frieze.top");
        assertThat(said(search(yaml)))
                .containsOnlyOnce("idle-size: 'sizes.width' changes no figure that is asked for, while the other sizes"
                        + " stay as they are today.");
    }

    @Test
    void whoever_has_enough_is_told_that_nothing_is_proved() {
        String yaml = cornice(
                "between 1/8 and 1/2 by 0.001953125, now 1/4",
                "between 2-1/2 and 4 by 0.001953125, now 3-1/2",
                "must: [height <= 20, bottom of fascia <= 6]\n");
        AtomicLong judged = new AtomicLong();
        List<SearchPlan> plans = new ArrayList<>();
        SearchLimits some = new SearchLimits(1_000_000, 5, 1, plans::add, () -> judged.get() > 0, judged::addAndGet);
        Searched searched = search(yaml, some, Optional.empty());
        SearchResult found = searched.result().orElseThrow();
        assertThat(plans).hasSize(1);
        assertThat(plans.get(0).space()).isEqualTo(BigInteger.valueOf(193 * 769));
        assertThat(plans.get(0).all()).isTrue();
        assertThat(found.judged()).isLessThan(193 * 769);
        // no stack of the first that are tried has so long a lip, and today's needs no change
        assertThat(found.smallest().orElseThrow().changes()).isEmpty();
        assertThat(found.proved()).isFalse();
        assertThat(said(searched))
                .contains("search-interrupted: The search was interrupted: " + found.judged() + " of 148417 stacks were"
                        + " tried, and nothing is proved.");
    }

    @Test
    void whoever_has_enough_before_anything_was_tried_is_told_of_todays_stack() {
        String yaml = cornice(
                "between 1/8 and 1/2 by 0.001953125, now 1/4",
                "between 2-1/2 and 4 by 0.001953125, now 3-1/2",
                "must: [height <= 20]\nwish: [least weight]\n");
        for (long tries : List.of(1_000_000L, 1000L)) {
            SearchLimits none = new SearchLimits(tries, 5, 1, plan -> {}, () -> true, judged -> {});
            Searched searched = search(yaml, none, Optional.empty());
            SearchResult found = searched.result().orElseThrow();
            assertThat(found.judged()).isEqualTo(1);
            assertThat(found.best().get(0).changes()).isEmpty();
            assertThat(found.proved()).isFalse();
            assertThat(said(searched)).anyMatch(line -> line.startsWith("search-interrupted: "));
        }
    }

    @Test
    void where_not_all_were_tried_it_is_not_said_that_none_meets_the_lines() {
        StringBuilder sizes = new StringBuilder("between 1/16 and 1/2 by 1/16, now 1/4\n");
        for (int i = 0; i < 12; i++) {
            sizes.append("  spare%d: between 1 and 9 by 1/32, now 2\n".formatted(i));
        }
        String bounded = cornice(sizes.toString(), "3-1/2", HALF);
        // of a piece that slides until it touches no bounds are known
        String unbounded = bounded.replace("bottom: crown.top", "bottom: touch");
        assertThat(said(search(unbounded, SearchLimits.of(40), Optional.empty())))
                .anyMatch(line -> line.matches("none-found: None of the [0-9]+ stacks that were tried meets every line"
                        + " under 'must:'; others may."))
                .noneMatch(line -> line.startsWith("nothing-meets"));
        assertThat(said(search(bounded, SearchLimits.of(40), Optional.empty())))
                .anyMatch(line -> line.startsWith("nothing-meets"))
                .noneMatch(line -> line.startsWith("none-found"));
    }

    /** The parts of a cornice lie by an order when the wish for its shares is at its least. */
    @Test
    void shares_like_an_order_are_come_near_to() {
        String yaml = cornice("1/4", "3-1/2", """
                        parts: { frieze: [bead, frieze], cornice: [bed, soffit, fascia, crown, cap] }
                        wish: [shares like Ionic]
                        """)
                .replace("board 3/4 x 5-1/2", "board 3/4 x high")
                .replace("up 90-1/4", "up 40")
                .replace("top: 6-1/4", "top: high + 3/4")
                .replace("ceiling: 12", "ceiling: 24")
                .replace("  lip:", "  high: between 3 and 9 by 1, now 5\n  lip:");
        Searched searched = search(yaml);
        SearchResult found = searched.result().orElseThrow();
        List<Double> off = new ArrayList<>();
        for (String high : List.of("3", "4", "5", "6", "7", "8", "9")) {
            Answers answers = searched.stacks().apply(List.of(high)).known().orElseThrow();
            off.add(answers.proportion().orders().stream()
                    .filter(row -> row.order().name().equals("Ionic"))
                    .findFirst()
                    .orElseThrow()
                    .off());
        }
        int best = off.indexOf(Collections.min(off));
        assertThat(best).isBetween(1, 6);
        assertThat(found.best().get(0).candidate().texts()).containsExactly(String.valueOf(3 + best));
        assertThat(found.best().get(0).candidate().judged().wishes().get(0).orElseThrow())
                .isCloseTo(off.get(best), within(1e-9));
        assertThat(said(search(yaml.replaceAll("parts: .*\\n", ""))))
                .contains("not-a-wish: 'shares like Ionic' needs the parts of the trim, and the document does not name"
                        + " them.");
        assertThat(said(search(yaml.replace("like Ionic", "like Gothic"))))
                .anyMatch(line -> line.startsWith("unknown-figure: Nothing is called 'Gothic' behind 'in'."));
    }

    @Tag("long")
    @Test
    void the_same_is_found_every_time() {
        String yaml = cornice(
                "between 1/8 and 1/2 by 1/16, now 1/4",
                "between 2-1/2 and 4 by 1/16, now 3-1/2",
                HALF + "wish: [projection near 7 x 2, least change]\n");
        SearchResult one = found(yaml);
        SearchResult again = found(yaml);
        assertThat(one.best().stream().map(SearchedTest::changes).toList())
                .isEqualTo(again.best().stream().map(SearchedTest::changes).toList());
        assertThat(one.turning()).isEqualTo(again.turning());
        assertThat(one.judged()).isEqualTo(again.judged());
    }
}
