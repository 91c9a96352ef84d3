package buildup.shared.document.edit;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingTest {

    private static final String STACK = """
            # a comment that stays
            title: Cornice   # of the case
            sizes: { lip: 1/4,lap : 1/2 } # two
            space:
              ceiling: 12 # in
              wall: { solid: no }
            eyes:
              - { name: standing, distance: 72 }
              - name: left eye
                distance: 60

            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall }   # ripped
              - { name: block A, section: [out 1, up 2], back: 'frieze.face' }
              - name: cap
                section:
                  - out 2
                  # the nose
                  - bead 1 as nose
                bottom: frieze.top
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u00A6',
            value = {
                "title | Door head | title: Cornice | title: Door head",
                "sizes.lip | 3/8 | lip: 1/4 | lip: 3/8",
                "sizes.lap | 3/8 | lap : 1/2 | lap : 3/8",
                "space.ceiling | 10 | ceiling: 12 # in | ceiling: 10 # in",
                "space.wall.solid | yes | solid: no | solid: yes",
                "eyes.standing.distance | 70 | distance: 72 | distance: 70",
                "eyes.2.distance | 61 | distance: 60 | distance: 61",
                "frieze.profile | board 3/4 x 3-1/2 | board 3/4 x 5-1/2 | board 3/4 x 3-1/2",
                "pieces.frieze.back | 1/8 | back: wall | back: 1/8",
                "block A.back | wall | 'frieze.face' | 'wall'",
                "block A.section.2 | up 3 | up 2 | up 3",
                "block A.section | [out 1, up 3] | [out 1, up 2] | [out 1, up 3]",
                "cap.section.1 | out 3 | out 2 | out 3",
                "cap.bottom | frieze.top + 1/4 | bottom: frieze.top | bottom: frieze.top + 1/4",
            })
    void one_value_changes_and_nothing_else(String place, String value, String before, String after) {
        Edited.set(STACK, place, value).gives(STACK.replace(before, after));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u00A6',
            value = {
                "3,5 | \"3,5\"",
                "[draft | \"[draft\"",
                "a: b | \"a: b\"",
                "frieze #1 | \"frieze #1\"",
                "# 1 | \"# 1\"",
                "- 1 | \"- 1\"",
                "*x | \"*x\"",
                "&x | \"&x\"",
                "!x | \"!x\"",
                "@x | \"@x\"",
                "%x | \"%x\"",
                "5'-6 1/2\" | 5'-6 1/2\"",
                "'tis | \"'tis\"",
                "\"quoted\" and more | '\"quoted\" and more'",
                "back\\slash, | 'back\\slash,'",
                "½ | ½",
                "-1/2 | -1/2",
                "http://x | http://x",
                "a#b | a#b",
                "? | \"?\"",
                "~ | ~",
            })
    void a_value_in_braces_is_quoted_where_it_must_be(String value, String written) {
        Edited.set("a: { b: 1, c: 2 }\n", "a.b", value).gives("a: { b: " + written + ", c: 2 }\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u00A6',
            value = {"3,5 | 3,5", "a: b | \"a: b\"", "a # b | \"a # b\"", "[x] y | \"[x] y\"", "x] | x]"})
    void a_value_on_a_line_of_its_own_needs_fewer_quotes(String value, String written) {
        Edited.set("a: 1 # c\n", "a", value).gives("a: " + written + " # c\n");
    }

    @Test
    void what_no_line_can_hold_is_escaped() {
        Edited.of("a: 1\n", new Edit.Set("a", new Content.Text("one\n\ttwo "))).gives("a: \"one\\n\\ttwo \"\n");
        Edited.of("a: '1'\n", new Edit.Set("a", new Content.Text("it's"))).gives("a: 'it''s'\n");
        Edited.of("a: 1\n", new Edit.Set("a", new Content.Text(""))).gives("a: \"\"\n");
        Edited.of("a: 1\n", new Edit.Set("a", new Content.Text(" x "))).gives("a: \" x \"\n");
    }

    @Test
    void a_key_that_is_absent_is_put_last() {
        Edited.set(STACK, "frieze.flip", "over").gives(STACK.replace("back: wall }", "back: wall, flip: over }"));
        Edited.set(STACK, "cap.flip", "over").gives(STACK + "    flip: over\n");
        Edited.set(STACK, "sizes.gap", "1").gives(STACK.replace("1/2 } #", "1/2, gap: 1 } #"));
        Edited.set(STACK, "space.floor", "0")
                .gives(STACK.replace("  wall: { solid: no }\n", "  wall: { solid: no }\n  floor: 0\n"));
        Edited.set(STACK, "units", "in").gives(STACK + "units: in\n");
        Edited.set(STACK, "left eye.distance", "1")
                .refuses("REFUSAL unknown-place - Nothing in the document is called 'left eye'. "
                        + "Known here: block A, cap, eyes, frieze, pieces, sizes, space, title.");
    }

    @Test
    void keys_on_the_way_to_an_absent_one_are_made() {
        Edited.set(STACK, "frieze.at.shoulder", "wall")
                .gives(STACK.replace("back: wall }", "back: wall, at: { shoulder: wall } }"));
        Edited.set(STACK, "cap.rip.top", "1/4").gives(STACK + "    rip: { top: 1/4 }\n");
        Edited.set("title: x\nsizes:\n", "sizes.lip", "1").gives("title: x\nsizes: { lip: 1 }\n");
        Edited.set("sizes: # none\n", "sizes.lip", "1,5").gives("sizes: { lip: \"1,5\" } # none\n");
    }

    @Test
    void a_value_that_was_left_out_is_put_in() {
        Edited.set("a:\nb: 1\n", "a", "x").gives("a: x\nb: 1\n");
        Edited.set("a:   # why\n", "a", "x").gives("a: x   # why\n");
        Edited.set("{ a, b: }", "a", "x").gives("{ a: x, b: }");
        Edited.set("{ a, b: }", "b", "x").gives("{ a, b: x }");
        Edited.set("a:\n  - x\n  -\n", "a.2", "y").gives("a:\n  - x\n  - y\n");
    }

    @Test
    void a_list_in_lines_gives_way_to_a_value() {
        Edited.set(STACK, "cap.section", "[out 1]")
                .gives(STACK.replace(
                        "    section:\n      - out 2\n      # the nose\n      - bead 1 as nose\n",
                        "    section: [out 1]\n"));
        Edited.set("a: # why\n  - 1\n  - 2 # two\nb: 3\n", "a", "x").gives("a: x # why\nb: 3\n");
        Edited.set("- x: 1\n".replace("- ", "a:\n  - "), "a.1", "y").gives("a:\n  - y\n");
        Edited.set("a:\n  -\n    x: 1\n    y: 2\n", "a.1", "[]").gives("a:\n  - []\n");
    }

    @Test
    void values_over_several_lines_give_way_to_one() {
        Edited.set("a: >-\n  one\n  two\n\nb: 1\n", "a", "x").gives("a: x\n\nb: 1\n");
        Edited.set("a: one\n  two # c\nb: 1\n", "a", "x").gives("a: x # c\nb: 1\n");
        Edited.set("a: |+\n  one\n\nb: 1\n", "a", "x").gives("a: x\nb: 1\n");
        Edited.set("a: { b: 1,\n  c: 2 }\n", "a.c", "x").gives("a: { b: 1,\n  c: x }\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void line_ends_byte_order_mark_and_a_missing_last_line_end_stay(String lineEnd) {
        String before = "\uFEFFtitle: Cap # x\npieces:\n  - name: bed\n    back: wall".replace("\n", lineEnd);
        Edited.set(before, "bed.back", "3/4").gives(before.replace("wall", "3/4"));
        Edited.set(before, "bed.top", "1").gives(before + lineEnd + "    top: 1");
        Edited.set(before, "units", "mm").gives(before + lineEnd + "units: mm");
    }

    @Test
    void signs_of_two_units_count_as_one_character() {
        Edited.set("title: \uD83E\uDE9A saw # \uD83E\uDE9A\na: { b: 1 }\n", "a.b", "\uD83E\uDE9A")
                .gives("title: \uD83E\uDE9A saw # \uD83E\uDE9A\na: { b: \uD83E\uDE9A }\n");
    }

    @Test
    void the_longer_of_two_names_is_meant() {
        String stack = "pieces:\n  - { name: a, b.c: 1 }\nsizes: { a: { x: 1 }, a.x: 2 }\n";
        Edited.set(stack, "sizes.a.x", "3").gives(stack.replace("a.x: 2", "a.x: 3"));
        Edited.set(stack, "a.b.c", "3").gives(stack.replace("b.c: 1", "b.c: 3"));
    }

    @Test
    void a_key_of_the_document_goes_before_a_piece_of_the_same_name() {
        String stack =
                "title: x\nspace: { floor: 0 }\npieces:\n  - { name: title, top: 1 }\n  - { name: space, top: 2 }\n";
        Edited.set(stack, "title", "y").gives(stack.replace("title: x", "title: y"));
        Edited.set(stack, "title.top", "3").gives(stack.replace("top: 1", "top: 3"));
        Edited.set(stack, "space.top", "3").gives(stack.replace("top: 2", "top: 3"));
        Edited.set(stack, "space.floor", "3").gives(stack.replace("floor: 0", "floor: 3"));
        Edited.set(stack, "space.x", "3")
                .refuses(
                        "REFUSAL ambiguous-place - 'space.x' may be the piece 'space' or the key 'space'. Write pieces.space.x for"
                                + " the piece; to reach the key, give the piece another name first.");
    }

    @Test
    void what_a_person_types_is_a_list_or_keys_or_a_text() {
        assertThat(Editor.typed("[out 1, up 2]")).isEqualTo(new Content.Yaml("[out 1, up 2]"));
        assertThat(Editor.typed(" { solid: no } ")).isEqualTo(new Content.Yaml("{ solid: no }"));
        assertThat(Editor.typed("\"3,5\"")).isEqualTo(new Content.Yaml("\"3,5\""));
        assertThat(Editor.typed("3,5")).isEqualTo(new Content.Text("3,5"));
        assertThat(Editor.typed("[draft] Cornice")).isEqualTo(new Content.Text("[draft] Cornice"));
        assertThat(Editor.typed("a, b")).isEqualTo(new Content.Text("a, b"));
        assertThat(Editor.typed("5'-6 1/2\"")).isEqualTo(new Content.Text("5'-6 1/2\""));
        assertThat(Editor.typed("[*a]")).isEqualTo(new Content.Text("[*a]"));
        assertThat(Editor.typed("[".repeat(5000) + "]".repeat(5000))).isInstanceOf(Content.Text.class);
    }
}
