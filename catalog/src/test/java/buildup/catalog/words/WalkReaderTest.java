package buildup.catalog.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WalkReaderTest {

    private final Notices notices = new Notices();

    private Optional<Outline> maybe(String words) {
        String yaml = "section: " + words;
        Document document = DocumentReader.read("s.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow(() -> new AssertionError(notices.sorted()));
        LengthReader lengths =
                new LengthReader(LengthUnit.INCH, Map.of("height", Length.inches(3), "lip", Length.inches(0.25)));
        return WalkReader.read(document.root().get("section").orElseThrow(), lengths, "Lintel", notices);
    }

    private Outline drawn(String words) {
        Outline outline = maybe(words).orElseThrow(() -> new AssertionError(notices.sorted()));
        assertThat(said()).isEmpty();
        return outline;
    }

    private List<String> said() {
        return notices.sorted().stream()
                .map(notice -> notice.level() + " " + notice.code() + " "
                        + notice.mark().map(Mark::toString).orElse("-") + " " + NoticeWords.INCHES.message(notice)
                        + " | "
                        + NoticeWords.INCHES.cure(notice))
                .toList();
    }

    private static List<Segment> member(Outline outline, String name) {
        return outline.strokes().stream()
                .filter(stroke -> stroke.member().equals(name))
                .map(Stroke::segment)
                .toList();
    }

    private static Arc arc(Outline outline, String name) {
        assertThat(member(outline, name)).hasSize(1);
        return (Arc) member(outline, name).get(0);
    }

    @Test
    void straight_words_go_on_from_the_last_point_and_it_closes_level_and_down() {
        assertThat(drawn("[out 3/4, up 1, in 1/4, down 1/4]").strokes())
                .containsExactly(
                        line(0, 0, 0.75, 0, "out"),
                        line(0.75, 0, 0.75, 1, "up"),
                        line(0.75, 1, 0.5, 1, "in"),
                        line(0.5, 1, 0.5, 0.75, "down"),
                        line(0.5, 0.75, 0, 0.75, "top"),
                        line(0, 0.75, 0, 0, "back"));
    }

    @Test
    void one_text_with_commas_is_a_list_of_words() {
        assertThat(drawn("out 3/4, up 1, in 1/4, down 1/4")).isEqualTo(drawn("[out 3/4, up 1, in 1/4, down 1/4]"));
        assertThat(maybe("out 19,5 mm, up 1").orElseThrow().box().face()).isEqualTo(19.5 / 25.4, within(1e-15));
    }

    @Test
    void sizes_may_be_named_shares_and_sums_and_places_to_go_to() {
        Outline outline = drawn("[out 1/3 of height, up to height - lip, in to lip, down lip + 1/8]");
        assertThat(outline.strokes())
                .startsWith(
                        line(0, 0, 1, 0, "out"),
                        line(1, 0, 1, 2.75, "up"),
                        line(1, 2.75, 0.25, 2.75, "in"),
                        line(0.25, 2.75, 0.25, 2.375, "down"));
    }

    @Test
    void members_are_named_by_their_word_numbered_when_repeated_or_named_by_the_user() {
        assertThat(drawn("[out 1/4, cove 1/4, fillet 1/8, cove 1/4, fillet 1/8 as Upper band, cyma recta 1/2 x 1/4]")
                        .members())
                .containsExactly("out", "cove", "fillet", "cove-2", "Upper band", "cyma-recta", "top", "back");
    }

    @Test
    void the_outline_lies_with_its_back_on_the_wall_and_its_lowest_point_at_nothing() {
        Outline band = drawn("[out 3/4 as shoulder, down 3/8, out 1/2, up 1]");
        assertThat(band.box().bottom()).isZero();
        assertThat(band.straights("shoulder"))
                .containsExactly((Line) line(0, 0.375, 0.75, 0.375, "").segment());
    }

    @Test
    void hollow_words_have_their_center_on_the_air_side() {
        assertThat(arc(drawn("[out 1/4, cove 1]"), "cove"))
                .isEqualTo(new Arc(new Point(0.25, 0), new Point(1.25, 1), new Point(1.25, 0), false));
        assertThat(arc(drawn("[out 1, up 1/4, cavetto in 1/2]"), "cavetto").center())
                .isEqualTo(new Point(1, 0.75));
    }

    @Test
    void round_words_have_their_center_on_the_wood_side() {
        assertThat(arc(drawn("[out 3/4, ovolo in 3/4]"), "ovolo"))
                .isEqualTo(new Arc(new Point(0.75, 0), new Point(0, 0.75), Point.ORIGIN, true));
        assertThat(arc(drawn("[out 1/4, quarter-round 1/2, up 1/4]"), "quarter-round")
                        .center())
                .isEqualTo(new Point(0.25, 0.5));
    }

    @Test
    void height_and_width_unequal_are_one_arc_tangent_to_the_longer_at_its_end() {
        // r = (h^2 + w^2) / (2 min), h = 1, w = 1/2: 1.25
        Arc tall = arc(drawn("[out 1/4, cove 1 x 1/2, up 1/8]"), "cove");
        assertThat(tall.radius()).isEqualTo(1.25, within(1e-12));
        assertThat(tall.direction(0).x()).isEqualTo(0, within(1e-12));
        Arc wide = arc(drawn("[out 2, up 1/4, cove in 1/2 x 1]"), "cove");
        assertThat(wide.radius()).isEqualTo(1.25, within(1e-12));
        assertThat(wide.direction(0).y()).isEqualTo(0, within(1e-12));
    }

    @Test
    void a_word_goes_down_and_in_when_it_says_so() {
        Arc cove = arc(drawn("[out 1, up 2, in 1/4, cove in down 1/2 x 1/2]"), "cove");
        assertThat(cove.to()).isEqualTo(new Point(0.25, 1.5));
        Arc ovolo = arc(drawn("[out 1, up 2, ovolo down in 1/4]"), "ovolo");
        assertThat(ovolo.to()).isEqualTo(new Point(0.75, 1.75));
    }

    @Test
    void a_cyma_is_two_like_arcs_tangent_halfway() {
        for (String word : List.of("cyma recta", "cyma reversa", "ogee", "cyma recta in", "ogee in")) {
            boolean in = word.endsWith("in");
            Outline outline = drawn("[" + (in ? "out 1" : "out 1/4") + ", up 1/8, " + word + " 1 x 1/2, up 1/8]");
            List<Segment> arcs = member(outline, word.replace(" in", "").replace(' ', '-'));
            assertThat(arcs).hasSize(2);
            Arc first = (Arc) arcs.get(0);
            Arc second = (Arc) arcs.get(1);
            assertThat(first.radius()).isEqualTo(second.radius(), within(1e-12));
            assertThat(first.direction(1).dot(second.direction(0))).isEqualTo(1, within(1e-12));
            assertThat(first.counterclockwise()).isNotEqualTo(second.counterclockwise());
            // recta: round nearest the wall; reversa: round outermost
            boolean roundFirst = word.startsWith("cyma recta") != in;
            assertThat(first.counterclockwise()).isEqualTo(roundFirst);
        }
    }

    @Test
    void beads_stand_on_the_line_of_the_walk_or_on_the_one_they_name() {
        Arc bead = arc(drawn("[out 1/2, up 1/4, bead 1/2, up 1/4]"), "bead");
        assertThat(bead).isEqualTo(new Arc(new Point(0.5, 0.25), new Point(0.5, 0.75), new Point(0.5, 0.5), true));
        Arc torus = arc(drawn("[out 1/2, torus up 1/2]"), "torus");
        assertThat(torus.box().face()).isEqualTo(0.75);
        Arc hanging = arc(drawn("[out 1/2, bead 1/2, up 1]"), "bead");
        assertThat(hanging.box().top() - hanging.box().bottom()).isEqualTo(0.25, within(1e-12));
    }

    @Test
    void an_astragal_is_a_half_round_between_fillets() {
        Outline plain = drawn("[out 1/2, up 1/4, astragal 1/2, up 1/4]");
        assertThat(plain.box().face()).isEqualTo(0.5 + 0.125 + 0.25);
        assertThat(plain.box().top()).isEqualTo(0.25 + 0.75 + 0.25);
        assertThat(drawn("[out 1/2, up 1/4, astragal 1/2 x 1/16, up 1/4]").box().face())
                .isEqualTo(0.5 + 0.0625 + 0.25);
    }

    @Test
    void a_scotia_is_a_hollow_of_two_arcs_tangent_at_its_deepest() {
        List<Segment> given = member(drawn("[out 1, up 1/8, scotia 3/4 x 1/4, up 1/8]"), "scotia");
        assertThat(given).extracting(arc -> ((Arc) arc).radius()).containsExactly(0.25, 0.5);
        List<Segment> usual = member(drawn("[out 1, up 1/8, scotia 3/4, up 1/8]"), "scotia");
        assertThat(usual).extracting(arc -> ((Arc) arc).radius()).containsExactly(0.25, 0.5);
        List<Segment> flute = member(drawn("[out 1, up 1/8, scotia 1/2 x 0, up 1/8]"), "scotia");
        assertThat(flute).extracting(arc -> ((Arc) arc).radius()).containsExactly(0.25, 0.25);
    }

    @Test
    void grooves_go_into_the_wood_along_the_line_of_the_walk() {
        Outline outline = drawn("[out 1, drip 1/8 x 1/4, out 1/2, up 1/4, quirk 1/16, up 1/4]");
        assertThat(outline.box().face()).isEqualTo(1.625);
        assertThat(outline.area()).isEqualTo(1.625 * 0.5625 - 0.125 * 0.25 - 0.0625 * 0.0625, within(1e-12));
    }

    @Test
    void chamfers_and_rabbets_take_height_and_width() {
        Outline outline = drawn("[out 1, rabbet 1/4 x 1/2, up 1/4, chamfer in 1/4]");
        assertThat(member(outline, "rabbet"))
                .containsExactly(
                        new Line(new Point(1, 0), new Point(1, 0.25)),
                        new Line(new Point(1, 0.25), new Point(1.5, 0.25)));
        assertThat(member(outline, "chamfer")).containsExactly(new Line(new Point(1.5, 0.5), new Point(1.25, 0.75)));
    }

    @Test
    void words_behind_back_shape_the_back() {
        for (String words : List.of(
                "[out 1, up 3, back: [down 1/2, relief 2 x 1/16]]",
                "[out 1, up 3, back:, down 1/2, relief 2 x 1/16]",
                "\"out 1, up 3, back:, down 1/2, relief 2 x 1/16\"",
                "\n - out 1\n - up 3\n - back:\n - down 1/2\n - relief 2 x 1/16\n")) {
            Outline outline = drawn(words);
            assertThat(outline.area()).as(words).isEqualTo(3 - 2.0 / 16, within(1e-12));
            assertThat(outline.members()).containsExactly("out", "up", "top", "down", "relief", "back");
            assertThat(outline.straights("back")).containsExactly(new Line(new Point(0, 0.5), new Point(0, 0)));
        }
    }

    @Test
    void every_fault_of_the_words_is_said_at_its_place() {
        assertThat(maybe(
                        "[out 1, coove 1/2, up 3/43, out x, cove 1/2 x 1/4 x 1/8, out 0, fillet -1, up, out 1 as a.b]"))
                .isEmpty();
        assertThat(said())
                .containsExactly(
                        "REFUSAL unknown-word s.yaml:1:18 No profile word is called 'coove'. | Did you mean cove?",
                        "REFUSAL fraction-mistyped s.yaml:1:29 3/43 is not a shop fraction (halves, quarters, 8ths,"
                                + " 16ths, 32nds, 64ths). | Meant 3/4?",
                        "REFUSAL unknown-name s.yaml:1:38 No length is called 'x'. | Known here: height, lip.",
                        "REFUSAL not-a-size s.yaml:1:45 'cove' takes height x width, not 3 sizes. | Take '1/8' out.",
                        "REFUSAL not-a-length s.yaml:1:85 No length is given. | Write it as 3/4, 1-3/8, 5'-6 1/2\", 38"
                                + " mm or 0.75.",
                        "REFUSAL unusable-name s.yaml:1:89 'a.b' cannot name a member: a name holds no dot and no ' + '"
                                + " or ' - '. | Take letters, digits and hyphens.");
        assertThat(notices.sorted())
                .allSatisfy(notice -> assertThat(notice.piece()).contains("Lintel"));
    }

    @Test
    void a_size_of_nothing_or_less_is_refused() {
        assertThat(maybe("[out 1, up 0, fillet -1/8, cove 1/4 x 0, scotia 1/2 x 3/4]"))
                .isEmpty();
        assertThat(said())
                .containsExactly(
                        "REFUSAL not-a-size s.yaml:1:18 Word 2 (up) comes out at 0. | Give it a size of more than"
                                + " 0.",
                        "REFUSAL not-a-size s.yaml:1:24 Word 3 (fillet) comes out at -1/8. | Give it a size of more than"
                                + " 0.",
                        "REFUSAL not-a-size s.yaml:1:37 Word 4 (cove) comes out at 0. | Give it a size of more than"
                                + " 0.",
                        "REFUSAL not-a-size s.yaml:1:51 Word 5 (scotia) is 3/4 wide and only 1/2 high. | Make it higher"
                                + " than wide, or say cove.");
    }

    @Test
    void a_place_behind_the_walk_is_refused() {
        assertThat(maybe("[out 1, up 1/2, up to 1/4]")).isEmpty();
        assertThat(said())
                .containsExactly("REFUSAL not-a-size s.yaml:1:26 Word 3 (up) goes to 1/4, which lies 1/4 behind it."
                        + " | Go the other way, or shorten the words before it.");
    }

    @Test
    void an_outline_that_crosses_itself_is_refused_with_place_and_words() {
        assertThat(maybe("[out 1, up 1/2, out 1/4, down 1/4, in 1/2, up 1/2]")).isEmpty();
        assertThat(said())
                .containsExactly("REFUSAL outline-crosses-itself s.yaml:1:45 Outline crosses itself near (1.00, 0.25),"
                        + " between words 2 and 5. | Shorten one of the two.");
    }

    @Test
    void an_outline_that_its_closing_line_crosses_is_refused() {
        assertThat(maybe("[out 1, up 1, in 1/2, up 1/2, out 1/4, down 1]")).isEmpty();
        assertThat(said()).hasSize(1);
        assertThat(said().get(0)).startsWith("REFUSAL outline-crosses-itself");
        maybe("[out 1, down 1/2, out 1/2, up 1/4]");
        assertThat(said().get(1)).contains("and the line that closes it");
    }

    @Test
    void words_that_close_no_area_are_refused() {
        assertThat(maybe("[out 1]")).isEmpty();
        assertThat(maybe("[]")).isEmpty();
        assertThat(said())
                .containsExactly(
                        "REFUSAL no-area s.yaml:1:10 The outline closes no area. | Go out and up before it closes.",
                        "REFUSAL no-area s.yaml:1:10 No words are given, so nothing is drawn. | Begin with 'out'.");
    }

    @Test
    void a_clockwise_outline_is_turned_round_with_a_note() {
        Outline outline = maybe("[up 1, out 1/2, down 1]").orElseThrow();
        assertThat(outline.area()).isEqualTo(0.5);
        assertThat(said())
                .containsExactly("NOTE outline-clockwise s.yaml:1:10 The outline runs clockwise; turned round."
                        + " | Begin at the lower end of the back and go out along the bottom.");
    }

    @Test
    void doubled_points_are_dropped_with_a_note() {
        Outline outline = maybe("[out 1, out to 1, up 1, up to 1]").orElseThrow();
        assertThat(outline.isRectangle()).isTrue();
        assertThat(said()).containsExactly("NOTE doubled-points s.yaml:1:10 Doubled points dropped: 2. | ");
    }

    @Test
    void an_outline_behind_the_wall_is_refused() {
        assertThat(maybe("[in 1, up 1]")).isEmpty();
        assertThat(said())
                .containsExactly("REFUSAL outline-mirrored s.yaml:1:10 The back of this profile is on the room side."
                        + " | Say out for in.");
    }

    @Test
    void what_is_no_word_at_all_is_refused() {
        assertThat(maybe("[out 1, {up: 1}, [down 1], {back: {a: b}}]")).isEmpty();
        assertThat(said())
                .containsExactly(
                        "REFUSAL wrong-shape s.yaml:1:19 'up:' is not a profile word. | Write words without a colon; only"
                                + " 'back:' has one.",
                        "REFUSAL wrong-shape s.yaml:1:27 A word is one text. | Write it as 'cove 1/2'.",
                        "REFUSAL wrong-shape s.yaml:1:44 'back:' holds a list of words."
                                + " | Write it as 'back: [down 1/2]'.");
    }

    @Test
    void a_flood_of_words_is_refused_and_does_not_take_long() {
        assertThat(maybe("[" + "out 1, up 1, ".repeat(5000) + "in 1]")).isEmpty();
        assertThat(said())
                .containsExactly(
                        "REFUSAL too-many-words s.yaml:1:10 10001 words in one outline." + " | Say it in 1000.");
    }

    private static Stroke line(double x0, double y0, double x1, double y1, String member) {
        return new Stroke(new Line(new Point(x0, y0), new Point(x1, y1)), member);
    }
}
