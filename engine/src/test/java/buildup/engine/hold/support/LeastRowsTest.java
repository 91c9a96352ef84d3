package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answer;
import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.Bench;
import buildup.engine.hold.fixing.Places;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.shared.document.edit.Editor;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Rows of nails that are proposed for what falls, by the moments of a lever (Meriam and Kraige, Engineering Mechanics:
 * Statics, chapter 3; from memory) and by putting them into the document.
 */
class LeastRowsTest {
    private static final List<Double> SPACINGS = List.of(16.0, 12.0, 8.0, 6.0, 4.0);

    /** 10 wide and 3/4 thick, from 4 behind the edge of its ledge to 6 before it: its middle stands 1 out. */
    private static final double SHELF = 7.5 * Held.WOOD;

    private static final Comparator<LeastRow> FEWEST_PLAINEST_THINNEST = Comparator.comparingDouble(
                    (LeastRow row) -> -row.spacing())
            .thenComparing(row -> Math.abs(row.nail().fastening().angle()))
            .thenComparing(row -> row.nail().fastening().use().fastener().diameter());

    private static String shelf(int number, double up) {
        return "name: ledge%d, kind: framing, section: [out 6, up 6], face: 0, top: %s".formatted(number, up)
                + " }\n  - { "
                + "name: shelf%d, profile: board 3/4 x 10, lay: flat, back: -4, bottom: %s".formatted(number, up);
    }

    private static String stack(String more, String... pieces) {
        return Bench.head("space: { wall: { solid: no } }\n" + more) + Bench.list(pieces);
    }

    private static String loaded(double pounds, String more) {
        return stack(
                "loads: [ { name: books, on: shelf1, out: 5, load: %s lb/ft } ]\n".formatted(pounds) + more,
                shelf(1, 0));
    }

    private static Support support(String text) {
        return Answered.sound(text).support();
    }

    /**
     * The moment that one nail takes about the edge of its ledge. Nothing rubs, so that it pulls straight down: a tilted one is
     * drawn and pushed across at once, and the two shares add up to 1 (NDS 2018, 12.4.2, from memory).
     */
    private static double eachTakes(LeastRow row) {
        Joint joint = row.nail().joints().get(0);
        Point way = row.nail().way();
        Point entry = row.nail().head().plus(way.times(-row.nail().head().y() / way.y()));
        double drawn = Math.abs(way.y()) / Math.min(joint.withdrawal(), joint.head());
        return -entry.x() / (drawn + Math.abs(way.x()) / joint.lateral());
    }

    private static double widest(double perFoot) {
        return SPACINGS.stream()
                .filter(spacing -> 12 / spacing >= perFoot)
                .findFirst()
                .orElseThrow();
    }

    private static List<LeastRow> all(LeastRow row) {
        List<LeastRow> all = new ArrayList<>(List.of(row));
        all.addAll(row.others());
        return all;
    }

    private static Notice problem(String text, String code) {
        return Answered.of(text).notices().stream()
                .filter(notice ->
                        notice.level() == Level.PROBLEM && notice.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static String cure(String text, String code) {
        return NoticeWords.INCHES.cure(problem(text, code));
    }

    private static String typed(String text, Notice notice) {
        Notices unable = new Notices();
        Optional<String> edited = Editor.edit("stack.yaml", text, NoticeWords.INCHES.edits(notice), unable);
        assertThat(unable.sorted()).as(text).isEmpty();
        return edited.orElseThrow();
    }

    /** Of each row alone: what turns the shelf over its edge, over what one nail takes at its distance behind it. */
    @Test
    void a_row_has_as_many_nails_in_a_foot_as_the_moment_over_the_edge_asks() {
        Support support = support(stack("", shelf(1, 0)));
        assertThat(support.cured()).isTrue();
        LeastRow best = support.proposed().get(0);
        assertThat(support.proposed()).hasSize(1);
        assertThat(best.others()).isNotEmpty();
        for (LeastRow row : all(best)) {
            Joint joint = row.nail().joints().get(0);
            assertThat(-row.nail().head().x()).isBetween(0.0, 4.0);
            assertThat(row.needed()).isCloseTo(SHELF / eachTakes(row), within(1e-6));
            assertThat(row.spacing()).isEqualTo(widest(row.needed()));
            assertThat(row.fall()).isZero();
            assertThat(row.instead()).isEmpty();
            assertThat(row.perFoot()).isEqualTo(12 / row.spacing());
            assertThat(row.pull()).isCloseTo(joint.pull() * 12 / row.spacing(), within(1e-9));
            assertThat(row.across()).isCloseTo(joint.lateral() * 12 / row.spacing(), within(1e-9));
        }
        assertThat(all(best)).isSortedAccordingTo(FEWEST_PLAINEST_THINNEST);
    }

    /**
     * A board under two joists, its load midway: a row in one joist turns about that joist's edge and takes ten times the
     * load, which no row holds; a row in each takes half.
     */
    @Test
    void what_only_two_rows_hold_is_offered_both() {
        String text = stack(
                "loads: [ { name: books, on: board, out: 5-1/2, load: 60 lb/ft } ]\n"
                        + "fastenings: [ { name: brads, piece: board, use: 18 ga x 1-1/4, at: { out: 1/2, up: board.bottom } } ]\n",
                "name: near, kind: framing, section: [out 1, up 6], back: 0, bottom: 0",
                "name: far, kind: framing, section: [out 1, up 6], back: 10, bottom: 0",
                "name: board, profile: board 3/4 x 11, lay: flat, back: 0, top: 0");
        Support support = support(text);
        assertThat(support.whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(support.proposed()).hasSize(2);
        assertThat(support.cured()).isTrue();
        assertThat(support.proposed())
                .extracting(row -> row.nail().head().x())
                .anyMatch(out -> out < 1)
                .anyMatch(out -> out > 10);
        Notice falls = problem(text, "tips");
        assertThat(NoticeWords.INCHES.cure(falls))
                .startsWith("Drive ")
                .contains("through board at")
                .contains(" and ");
        assertThat(support(typed(text, falls)).whole().answer()).isEqualTo(Support.Answer.STANDS);
    }

    /** Fasteners of a list in inches stand 16 in apart, which is 406.4 mm; nobody sets out a tenth of a millimeter. */
    @Test
    void a_job_in_millimeters_is_told_whole_ones_and_writes_down_no_spacing_that_goes_without_saying() {
        String text = stack(
                "units: mm\n",
                "name: ledge, kind: framing, section: [out 150, up 150], face: 0, top: 0",
                "name: shelf, profile: board 19 x 250, lay: flat, back: -100, bottom: 0");
        Notice falls = problem(text, "needs-holding");
        assertThat(NoticeWords.in(LengthUnit.MILLIMETER).cure(falls))
                .contains(", every 406 mm")
                .doesNotContain("406.4");
        String nailed = Editor.edit(
                        "stack.yaml",
                        text,
                        NoticeWords.in(LengthUnit.MILLIMETER).edits(falls),
                        new Notices())
                .orElseThrow();
        assertThat(nailed).contains("use: ").doesNotContain("spacing");
        assertThat(support(nailed).whole().stands()).isTrue();
    }

    /** The load stands 5 out of the edge. In the document the row holds, and with one spacing wider it does not. */
    @Test
    void the_heavier_the_load_the_closer_the_nails_until_none_of_the_list_hold_it() {
        List<Double> spacings = new ArrayList<>();
        for (double pounds : new double[] {1, 5, 20, 40, 60, 70, 80}) {
            String text = loaded(pounds, "");
            Support support = support(text);
            assertThat(support.cured()).as("%s pounds", pounds).isTrue();
            LeastRow row = support.proposed().get(0);
            double moment = SHELF + 5 * pounds;
            assertThat(row.needed()).isCloseTo(moment / eachTakes(row), within(1e-6));
            assertThat(row.spacing()).isEqualTo(widest(row.needed()));
            assertThat(all(row)).isSortedAccordingTo(FEWEST_PLAINEST_THINNEST);
            spacings.add(row.spacing());
            String nailed = typed(text, problem(text, "needs-holding"));
            assertThat(support(nailed).whole().stands()).as(nailed).isTrue();
            if (row.spacing() < 16) {
                double wider = SPACINGS.get(SPACINGS.indexOf(row.spacing()) - 1);
                String printed = "spacing: %.0f".formatted(row.spacing());
                assertThat(nailed).contains(printed);
                assertThat(support(nailed.replace(printed, "spacing: %.0f".formatted(wider)))
                                .whole()
                                .stands())
                        .as(nailed)
                        .isFalse();
            }
        }
        assertThat(spacings).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(spacings.get(0)).isEqualTo(16);
        assertThat(spacings.get(spacings.size() - 1)).isLessThan(16);
        Support hopeless = support(loaded(3000, ""));
        assertThat(hopeless.proposed()).isEmpty();
        assertThat(hopeless.cured()).isFalse();
        assertThat(cure(loaded(3000, ""), "needs-holding")).doesNotContain("Drive");
    }

    @Test
    void two_that_fall_want_a_row_each_and_are_held_by_both_together() {
        String text = stack("", shelf(1, 0), shelf(2, 20).replace("x 10", "x 12"));
        Support support = support(text);
        assertThat(support.whole().falls()).hasSize(2);
        assertThat(support.proposed()).extracting(LeastRow::fall).containsExactly(0, 1);
        Section section = Answered.sound(text).section();
        assertThat(support.proposed())
                .extracting(row -> section.name(row.nail().piece()))
                .containsExactly("shelf2", "shelf1");
        assertThat(support.cured()).isTrue();
        Notice first = problem(text, "needs-holding");
        assertThat(NoticeWords.INCHES.cure(first)).contains(" through shelf2 at ", " through shelf1 at ", " and ");
        String nailed = typed(text, first);
        assertThat(nailed).contains("name: added to shelf2,", "name: added to shelf1 2,");
        assertThat(support(nailed).whole().stands()).isTrue();
        List<String> cures = Answered.of(text).notices().stream()
                .filter(notice -> notice.code().equals("needs-holding"))
                .map(NoticeWords.INCHES::cure)
                .toList();
        assertThat(cures.get(1)).as("each by itself").doesNotContain("shelf2").contains(" through shelf1 at ");
    }

    /** One of two shelves can be nailed, the other has too much on it. */
    @Test
    void a_row_is_told_for_what_it_holds_also_where_something_else_falls_all_the_same() {
        String text =
                stack("loads: [ { name: books, on: shelf1, out: 5, load: 3000 lb/ft } ]", shelf(1, 0), shelf(2, 20));
        Support support = support(text);
        assertThat(support.proposed()).hasSize(1);
        assertThat(support.cured()).isFalse();
        assertThat(support.whole()
                        .falls()
                        .get(support.proposed().get(0).fall())
                        .first()
                        .pieces())
                .isEqualTo(List.of(support.proposed().get(0).nail().piece()));
    }

    @Test
    void where_nine_things_fall_no_rows_are_looked_for_and_where_eight_do_each_has_one() {
        String eight = stack(
                "", IntStream.range(0, 8).mapToObj(i -> shelf(i, 20.0 * i)).toArray(String[]::new));
        assertThat(support(eight).proposed()).hasSize(8);
        String nine = stack(
                "", IntStream.range(0, 9).mapToObj(i -> shelf(i, 20.0 * i)).toArray(String[]::new));
        Support support = support(nine);
        assertThat(support.whole().falls()).hasSize(9);
        assertThat(support.proposed()).isEmpty();
        assertThat(support.cured()).isFalse();
    }

    /** Moment 180 of the books and 1 of the shelf about the edge; the new screw stands where the brad did, 3 behind it. */
    @Test
    void a_row_too_weak_for_its_loads_gives_its_place_to_a_stronger_one() {
        String text = loaded(36, """
                fastenings:
                  - { name: brads, piece: shelf1, use: 18 ga x 1-1/4, at: { out: -3, up: 3/4 }, spacing: 6, per: 2 }
                """);
        LeastRow row = support(text).proposed().get(0);
        assertThat(row.instead()).contains("brads");
        assertThat(row.nail().head().x()).isEqualTo(-3, within(1e-9));
        assertThat(row.needed())
                .isCloseTo((SHELF + 5 * 36) / (3 * row.nail().joints().get(0).pull()), within(1e-6));
        assertThat(all(row)).isSortedAccordingTo(FEWEST_PLAINEST_THINNEST);
        Notice notice = problem(text, "load-too-much");
        assertThat(NoticeWords.INCHES.cure(notice)).contains(", in place of 'brads' (holds ");
        String nailed = typed(text, notice);
        assertThat(nailed).contains("per: 1").doesNotContain("18 ga");
        assertThat(support(nailed).whole().stands()).isTrue();
        assertThat(cure(text.replace("load: 36", "load: 3000"), "load-too-much"))
                .doesNotContain("Drive");
    }

    /** The brads of another row sit where the best place was. */
    @Test
    void no_row_is_added_where_another_sits() {
        String free = loaded(10, "");
        Point best = support(free).proposed().get(0).nail().head();
        String text = loaded(10, """
                fastenings:
                  - { name: brads, piece: shelf1, use: 18 ga x 1-1/4, at: { out: %s, up: 3/4 }, spacing: 16 }
                """.formatted(best.x()));
        assertThat(all(support(text).proposed().get(0)))
                .filteredOn(row -> row.instead().isEmpty())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.nail().head().distance(best)).isGreaterThan(0.1))
                .allSatisfy(row -> assertThat(row.nail().fastening().first())
                        .as("beside it, and not between")
                        .isZero());
    }

    @Test
    void a_row_that_is_added_has_a_name_that_none_has_yet() {
        String text = stack("""
                fastenings:
                  - { name: added to shelf1, piece: shelf2, use: 16 ga x 2, at: { out: -3, up: 20-3/4 }, spacing: 16 }
                """, shelf(1, 0), shelf(2, 20));
        assertThat(typed(text, problem(text, "needs-holding"))).contains("name: added to shelf1 2, piece: shelf1");
    }

    /** A soffit that is fixed to the back of a frieze has nothing under it that an upright nail could reach. */
    private static final String SOFFIT = """
            wood: check-wood
            space: { wall: { solid: yes } }
            %s
            pieces:
              - { name: ledge, kind: framing, section: [out 1, up 6], back: 0, top: 0 }
              - { name: frieze, profile: board 3/4 x 5-1/2, back: 1/16, bottom: 0 }
              - { name: soffit, fixed: frieze, profile: board 3/4 x 6, lay: flat, back: 1/16, bottom: frieze.top }
            """;

    @Test
    void a_nail_that_has_to_be_tilted_is_told_and_typed_with_its_angle() {
        Notice notice = problem(SOFFIT.formatted("fastenings: []"), "no-backing");
        String cure = NoticeWords.INCHES.cure(notice);
        assertThat(cure).contains(", angle ");
        String degrees = cure.replaceAll(".*angle (\\d+)°.*", "$1");
        String after = typed(SOFFIT.formatted("fastenings: []"), notice);
        assertThat(after).contains("angle: " + degrees);
        assertThat(Answered.of(after).notices()).extracting(Notice::code).doesNotContain("no-backing");
        String frieze =
                typed(SOFFIT.formatted("fastenings: []"), problem(SOFFIT.formatted("fastenings: []"), "needs-holding"));
        assertThat(frieze).as("square to its face").contains("out: frieze.face").doesNotContain("angle");
        assertThat(cure(SOFFIT.formatted("fastenings: []"), "needs-holding")).doesNotContain("angle");
    }

    @Test
    void a_piece_is_pinned_to_what_stands_or_is_held_and_by_long_nails_first() {
        Answers answers = Answered.sound(SOFFIT.formatted("fastenings: []"));
        Section section = answers.section();
        Places places = new Places(section, List.of(), List.of(), answers.catalog());
        int frieze = 1;
        int soffit = 2;
        List<Cure> pins = RowCures.pins(section, List.of(), () -> Optional.of(places))
                .apply(frieze)
                .toList();
        assertThat(pins).hasSize(3);
        List<Fixed> long_first = places.of(frieze).stream()
                .filter(nail -> nail.joints().stream()
                        .anyMatch(joint ->
                                joint.pull() > 0 && section.body(joint.far()).standing()))
                .sorted(Comparator.comparing(nail -> !nail.check(Check.Rule.THRICE_THE_PIECE)
                        .filter(Check::met)
                        .isPresent()))
                .toList();
        assertThat(NoticeWords.INCHES.edits(notice(pins.get(0))).toString())
                .contains(long_first.get(0).fastening().use().call());
        assertThat(RowCures.pins(section, List.of(), () -> Optional.of(places))
                        .apply(soffit)
                        .map(pin -> NoticeWords.INCHES.edits(notice(pin)).toString()))
                .isNotEmpty()
                .allMatch(edits -> edits.contains("16"));
        List<Fixed> rows = List.of(long_first.get(0));
        assertThat(RowCures.pins(section, rows, () -> Optional.of(places))
                        .apply(frieze)
                        .findFirst()
                        .map(LeastRowsTest::notice)
                        .map(NoticeWords.INCHES::edits))
                .as("where a nail is, no other goes")
                .isNotEqualTo(Optional.of(NoticeWords.INCHES.edits(notice(pins.get(0)))));
    }

    private static Notice notice(Cure cure) {
        return SupportNotices.GAP_CLOSES.notice().cure(cure);
    }

    /** The third place of the frieze takes only a brad that is shorter than thrice the wood it goes through. */
    @Test
    void pins_that_are_as_long_as_they_should_be_and_stand_free_of_other_rows_are_told_first() {
        Answers answers = Answered.sound(SOFFIT.formatted("fastenings: []"));
        Section section = answers.section();
        Places places = new Places(section, List.of(), List.of(), answers.catalog());
        List<Fixed> nails = places.of(1);
        Fixed shorter = nails.get(2);
        assertThat(shorter.check(Check.Rule.THRICE_THE_PIECE).orElseThrow().met())
                .isFalse();
        assertThat(pins(section, List.of(), places))
                .hasSize(3)
                .noneMatch(edits -> edits.contains(shorter.fastening().use().call()));
        assertThat(pins(section, nails.subList(0, 1), places))
                .as("where one row stands, three others stand free")
                .hasSize(3)
                .noneMatch(edits -> edits.contains(".first"));
        assertThat(pins(section, nails, places))
                .as("where one stands at each place, halfway between its nails")
                .hasSize(3)
                .allMatch(edits -> edits.contains(".first, value=Text[text=8]"));
    }

    private static List<String> pins(Section section, List<Fixed> rows, Places places) {
        return RowCures.pins(section, rows, () -> Optional.of(places))
                .apply(1)
                .map(pin -> NoticeWords.INCHES.edits(notice(pin)).toString())
                .toList();
    }

    @Test
    void a_piece_that_only_what_hangs_is_near_is_pinned_to_nothing() {
        String text = Bench.head("space: { wall: { solid: no } }")
                + Bench.list(
                        "name: post, kind: framing, section: [out 2, up 4], back: 0, top: 0",
                        "name: held, profile: board 3/4 x 3, back: 12, bottom: 0",
                        "name: plank, profile: board 3/4 x 3, lay: flat, back: 11, bottom: 3");
        Answer answer = Answered.of(text);
        Answers known = answer.known().orElseThrow();
        Places places = new Places(known.section(), List.of(), List.of(), known.catalog());
        assertThat(places.of(2)).as("it could be nailed to the other").isNotEmpty();
        assertThat(RowCures.pins(known.section(), List.of(), () -> Optional.of(places))
                        .apply(2))
                .isEmpty();
    }
}
