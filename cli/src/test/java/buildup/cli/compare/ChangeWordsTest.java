package buildup.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeWordsTest {
    /**
     * The chair's eye is 6 below the soffit and 5 out from the fascia's inner arris, so a lip of L hides the soffit as
     * far as 5 L / (6 - L) in from the fascia (similar triangles): 1 with a lip of 1, 1-1/4 with one of 1.2.
     */
    private static final String SHELF = """
            title: Shelf over the reading-room window
            wood: yellow-poplar
            space: { wall: { solid: no } }
            sizes: { lip: 1, out: 1 }
            eyes: [ { name: chair, distance: 9, height: 0 } ]
            pieces:
              - { name: case, kind: framing, section: [out 4, up 12], face: wall, top: 8 }
              - { name: soffit, kind: nailer, profile: board 3/4 x 4, lay: flat, back: wall, bottom: 6 }
              - { name: fascia, profile: board 3/4 x 3, back: soffit.face, bottom: soffit.bottom - lip, top: 8 }
              - { name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: wall, face: fascia.face + out, bottom: 8 }
            """;

    @Test
    void nothing_is_said_of_a_stack_that_stays_as_it_was() {
        assertThat(inches(SHELF, SHELF)).isEmpty();
    }

    @Test
    void the_projection_is_told_first_as_it_was_and_as_it_is() {
        assertThat(inches(SHELF.replace("out: 1 ", "out: 1-7/8 "), SHELF.replace("out: 1 ", "out: 1-9/16 ")))
                .startsWith("projection 6-5/8 -> 6-5/16");
    }

    @Test
    void raw_wood_that_is_hidden_or_laid_bare_is_told_with_the_eye() {
        String deeper = SHELF.replace("lip: 1,", "lip: 1.2,");
        assertThat(inches(SHELF, deeper)).contains("1/4 of raw soffit now hidden from the chair eye");
        assertThat(inches(deeper, SHELF)).contains("1/4 more of raw soffit now shows to the chair eye");
    }

    /**
     * An eye at 6.4 out, 3 below the soffit, loses 2.4 L / (3 - L) of it to the lip: less than the chair with a lip of 1/8,
     * more with one of 1. The wood shows before and after, and only the eye that sees most of it is another.
     */
    @Test
    void what_is_only_told_of_another_eye_is_not_new() {
        String two = SHELF.replace("height: 0 } ]", "height: 0 }, { name: near, distance: 6.4, height: 3 } ]");
        List<String> said = inches(two.replace("lip: 1,", "lip: 1/8,"), two);
        assertThat(said)
                .anyMatch(line -> line.startsWith("still a problem: From 'chair' you see")
                        && line.contains("(before: From 'near' you see"));
        assertThat(said).noneMatch(line -> line.contains("new problem") || line.contains("no longer a problem"));
    }

    @Test
    void pieces_that_move_together_are_one_phrase_and_a_ripped_one_tells_its_edges() {
        String higher = SHELF.replace("top: 8 }\n  - { name: soffit", "top: 8-1/4 }\n  - { name: soffit")
                .replace("bottom: 6 }", "bottom: 6-1/4 }")
                .replace("bottom: 8 }", "bottom: 8-1/4 }");
        assertThat(inches(SHELF, higher))
                .contains("case, soffit, cap: up 1/4", "fascia: bottom 5 -> 5-1/4")
                .doesNotContain("height 3-3/4 -> 3-3/4");
    }

    @Test
    void a_piece_that_comes_goes_or_is_of_something_else_is_told() {
        String more = SHELF + "  - { name: lath, profile: board 1/4 x 1, back: fascia.face, top: fascia.top }\n";
        assertThat(inches(SHELF, more)).contains("new piece: lath");
        assertThat(inches(more, SHELF)).contains("piece gone: lath");
        assertThat(inches(SHELF, SHELF.replace("name: fascia,", "name: fascia, wood: white-oak,")))
                .contains("fascia: yellow-poplar -> white-oak");
    }

    @Test
    void a_nail_that_is_moved_or_another_is_told() {
        String nailed = SHELF + "fastenings:\n  - { piece: cap, use: 15 ga x 2-1/2, at: { out: fascia.face - 3/8 } }\n";
        assertThat(inches(nailed, nailed.replace("x 2-1/2", "x 2")))
                .contains("nail 1 in cap: 15 ga x 2-1/2 -> 15 ga x 2", "nail 1 in cap: bite 1-3/4 -> 1-1/4");
        assertThat(inches(nailed, nailed.replace("face - 3/8", "face - 1/2")))
                .contains("nail 1 in cap: out 4-3/8 -> 4-1/4");
        assertThat(inches(SHELF, nailed)).contains("new: nail 1 in cap");
    }

    @Test
    void a_new_problem_is_told_and_one_that_is_gone_too() {
        String sunk = SHELF.replace("bottom: 8 }", "bottom: 7-3/4 }");
        assertThat(inches(SHELF, sunk)).contains("new problem: 'cap' cuts 1/4 into 'fascia' (0.19 sq in)");
        assertThat(inches(sunk, SHELF)).contains("no longer a problem: 'cap' cuts 1/4 into 'fascia' (0.19 sq in)");
    }

    /** The cap projects 5-3/4, and is 3/4 thick under a ceiling that it must keep clear of. */
    @Test
    void each_rule_that_is_not_met_is_set_beside_itself() {
        String asked = SHELF + "must: [projection <= 6, height <= 3]\n";
        List<String> told = inches(asked, asked.replace("out: 1 ", "out: 2 "));
        assertThat(told)
                .anySatisfy(line -> assertThat(line).startsWith("new problem: 'projection <= 6' is not met"))
                .noneSatisfy(line -> assertThat(line).startsWith("new problem: 'height <= 3'"))
                .noneSatisfy(line -> assertThat(line).startsWith("still a problem"));
    }

    @Test
    void sizes_that_would_be_printed_alike_are_told_in_decimals() {
        assertThat(inches(SHELF.replace("out: 1 ", "out: 1.005 "), SHELF.replace("out: 1 ", "out: 1.025 ")))
                .startsWith("projection 5.755 -> 5.775");
    }

    @Test
    void what_no_saw_can_cut_is_no_change() {
        assertThat(inches(SHELF, SHELF.replace("out: 1 ", "out: 1.0001 "))).isEmpty();
        assertThat(inches(SHELF, SHELF.replace("out: 1 ", "out: 1.015 ")))
                .as("areas and weights alone")
                .singleElement()
                .asString()
                .matches("\\d+ figures, of which \\d differ\\.");
        assertThat(inches(SHELF, SHELF.replace("out: 1 ", "out: 1-1/64 "))).contains("projection 5-3/4 -> 5-3/4+");
    }

    @Test
    void millimeters_say_the_same_phrases() {
        Comparison comparison = compared(SHELF, SHELF.replace("lip: 1, out: 1 ", "lip: 1.2, out: 1-1/4 "));
        List<String> metric = ChangeWords.of(comparison, new FigurePrinter(LengthUnit.MILLIMETER));
        assertThat(metric)
                .hasSameSizeAs(ChangeWords.of(comparison, FigurePrinter.INCHES))
                .contains("projection 146.1- -> 152.4 mm", "fascia: bottom 127 -> 121.9+ mm");
    }

    @Test
    void of_very_much_the_first_is_told_and_how_much_more_there_is() {
        StringBuilder laths = new StringBuilder(SHELF);
        for (int i = 0; i < 20; i++) {
            laths.append("  - { name: lath ").append(i).append(", profile: board 1/4 x 1, back: 20, bottom: ");
            laths.append(2 * i).append(" }\n");
        }
        List<String> words = inches(SHELF, laths.toString());
        assertThat(words.stream().filter(said -> said.startsWith("new piece")))
                .hasSize(5)
                .startsWith("new piece: lath 0");
        assertThat(words).contains("and 15 more of the pieces");
    }

    @Test
    void what_no_phrase_is_for_is_at_least_counted() {
        String other = SHELF.replace("height: 0 }", "height: 1/16 }");
        assertThat(inches(SHELF, other)).isNotEmpty();
    }

    private static List<String> inches(String a, String b) {
        return ChangeWords.of(compared(a, b), FigurePrinter.INCHES);
    }

    private static Comparison compared(String a, String b) {
        return Comparison.of(Typed.of(a), Typed.of(b)).orElseThrow();
    }
}
