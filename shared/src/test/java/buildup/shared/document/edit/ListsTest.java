package buildup.shared.document.edit;

import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Entries that come, go and move. */
class ListsTest {

    private static final String DENSE = """
            pieces: # as put up
              - { name: a } # first
              # about b
              - { name: b }
              - name: c
                back: wall # c's
            eyes: []
            """;

    private static final String APART = """
            pieces:
              # about a
              - { name: a }

              # about b
              - { name: b }

              - { name: c }
            """;

    private static final String GROUPS = """
            pieces:
              - a
              - b

              # the crown
              - c
              - d
            """;

    @Test
    void an_entry_is_put_in_a_line_of_its_own() {
        Edited.add(DENSE, "pieces", 1, "{ name: x }")
                .gives(DENSE.replace("  - { name: a }", "  - { name: x }\n  - { name: a }"));
        Edited.add(DENSE, "pieces", 2, "{ name: x }").gives(DENSE.replace("# first\n", "# first\n  - { name: x }\n"));
        Edited.add(DENSE, "pieces", 4, "{ name: x }").gives(DENSE.replace("# c's\n", "# c's\n  - { name: x }\n"));
        Edited.add(DENSE, "pieces", 99, "x").gives(DENSE.replace("# c's\n", "# c's\n  - x\n"));
    }

    @Test
    void an_entry_is_set_off_as_its_neighbors_are() {
        Edited.add(APART, "pieces", 1, "x").gives(APART.replace("  # about a", "  - x\n\n  # about a"));
        Edited.add(APART, "pieces", 2, "x").gives(APART.replace("  # about b", "  - x\n\n  # about b"));
        Edited.add(APART, "pieces", 4, "x").gives(APART + "\n  - x\n");
        Edited.add(GROUPS, "pieces", 3, "x").gives(GROUPS.replace("  - b\n", "  - b\n  - x\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u00A6',
            value = {
                "[a, b] | 1 | [x, a, b]",
                "[a, b] | 2 | [a, x, b]",
                "[a, b] | 3 | [a, b, x]",
                "[a, b, ] | 3 | [a, b, x, ]",
                "[] | 1 | [x]",
                "[ ] | 1 | [ x ]",
                "[a,b] | 3 | [a,b, x]",
                "[\\n  a,\\n  b\\n] | 1 | [\\n  x,\\n  a,\\n  b\\n]",
                "[\\n  a,\\n  b\\n] | 3 | [\\n  a,\\n  b,\\n  x\\n]",
                "[\\n  a, # A\\n  b, # B\\n] | 2 | [\\n  a, # A\\n  x,\\n  b, # B\\n]",
                "[\\n  a, # A\\n  b, # B\\n] | 3 | [\\n  a, # A\\n  b, # B\\n  x,\\n]",
                "[\\n  a, # A\\n  b # B\\n] | 3 | [\\n  a, # A\\n  b, # B\\n  x\\n]",
                "[a,\\n  b] | 3 | [a,\\n  b,\\n  x]",
                "[a, b,\\n  c] | 4 | [a, b,\\n  c, x]",
                "[a\\n  , b] | 3 | [a\\n  , b, x]",
            })
    void an_entry_is_put_into_brackets_and_taken_out_again(String list, int position, String with) {
        String before = "l: " + list.replace("\\n", "\n") + "\nm: 1\n";
        String after = "l: " + with.replace("\\n", "\n") + "\nm: 1\n";
        Edited.add(before, "l", position, "x").gives(after);
        Edited.remove(after, "l." + position).gives(before);
    }

    @Test
    void a_list_is_made_where_none_is() {
        Edited.add("title: x\n", "loads", 1, "{ on: cap }").gives("title: x\nloads:\n  - { on: cap }\n");
        Edited.add("title: x", "loads", 1, "{ on: cap }").gives("title: x\nloads:\n  - { on: cap }");
        Edited.add("loads: # none yet\ntitle: x\n", "loads", 1, "{ on: cap }")
                .gives("loads: # none yet\n  - { on: cap }\ntitle: x\n");
        Edited.add("plan:\n  - { name: case }\n", "plan.case.grain", 1, "cap")
                .gives("plan:\n  - { name: case, grain: [cap] }\n");
        Edited.add("plan:\n  - name: case\n", "plan.case.grain", 1, "cap")
                .gives("plan:\n  - name: case\n    grain:\n      - cap\n");
        Edited.add("{ a: }", "a", 1, "cap").gives("{ a: [cap] }");
    }

    @Test
    void an_entry_goes_with_its_lines_and_leaves_the_comments_above_it() {
        Edited.remove(DENSE, "a").gives(DENSE.replace("  - { name: a } # first\n", ""));
        Edited.remove(DENSE, "b").gives(DENSE.replace("  - { name: b }\n", ""));
        Edited.remove(DENSE, "c").gives(DENSE.replace("  - name: c\n    back: wall # c's\n", ""));
        Edited.remove(APART, "c").gives(APART.replace("\n  - { name: c }\n", ""));
        Edited.remove(APART, "b").gives(APART.replace("  - { name: b }\n", ""));
        Edited.remove(GROUPS, "pieces.4").gives(GROUPS.replace("  - d\n", ""));
        Edited.remove("a:\n  - x\nb: 1\n", "a.1").gives("a:\nb: 1\n");
        Edited.remove("a:\n  - x", "a.1").gives("a:");
    }

    @Test
    void a_key_goes_with_what_it_holds() {
        Edited.remove(DENSE, "eyes").gives(DENSE.replace("eyes: []\n", ""));
        Edited.remove(DENSE, "pieces").gives("eyes: []\n");
        Edited.remove(DENSE, "c.back").gives(DENSE.replace("    back: wall # c's\n", ""));
        Edited.remove(DENSE, "c.name").gives(DENSE.replace("- name: c\n    back", "- back"));
        Edited.remove("# head\ntitle: x\nunits: in\n", "title").gives("# head\nunits: in\n");
        Edited.remove("a: { b: 1, c: 2 }\n", "a.b").gives("a: { c: 2 }\n");
        Edited.remove("a: { b: 1, c: 2 }\n", "a.c").gives("a: { b: 1 }\n");
        Edited.remove("a: { b: 1 }\n", "a.b").gives("a: { }\n");
        Edited.remove("a: { b: 1, # B\n  c: 2 }\n", "a.b").gives("a: { # B\n  c: 2 }\n");
        Edited.remove("a: { b: 1, # B\n  c: 2 }\n", "a.c").gives("a: { b: 1 # B\n   }\n");
        Edited.remove("a: { b: 1,\n  c: 2, d: 3 }\n", "a.c").gives("a: { b: 1,\n  d: 3 }\n");
        Edited.remove("a: {\n  # about b\n  b: 1, # B\n  c: 2\n}\n", "a.b").gives("a: {\n  # about b\n  c: 2\n}\n");
    }

    @Test
    void a_moved_entry_takes_its_comments_along() {
        Edited.move(DENSE, "b", 1)
                .gives(DENSE.replace("  # about b\n  - { name: b }\n", "")
                        .replace("  - { name: a }", "  # about b\n  - { name: b }\n  - { name: a }"));
        Edited.move(DENSE, "c", 1)
                .gives(DENSE.replace("  - name: c\n    back: wall # c's\n", "")
                        .replace("  - { name: a }", "  - name: c\n    back: wall # c's\n  - { name: a }"));
        Edited.move(APART, "c", 1)
                .gives("pieces:\n  - { name: c }\n\n  # about a\n  - { name: a }\n\n  # about b\n  - { name: b }\n");
        Edited.move(APART, "a", 2)
                .gives("pieces:\n  # about b\n  - { name: b }\n\n  # about a\n  - { name: a }\n\n  - { name: c }\n");
        Edited.move(GROUPS, "pieces.4", 2).gives("pieces:\n  - a\n  - d\n  - b\n\n  # the crown\n  - c\n");
        Edited.move(GROUPS, "pieces.1", 99).gives("pieces:\n  - b\n\n  # the crown\n  - c\n  - d\n  - a\n");
        Edited.move("a: [x, y,z] # c\n", "a.3", 1).gives("a: [z, x,y] # c\n");
        Edited.move("sizes: { a: 1, b: 2 }\n", "sizes.b", 1).gives("sizes: { b: 2, a: 1 }\n");
        Edited.move("a:\n  - - x\n    - y\n", "a.1.2", 1).gives("a:\n  - - y\n    - x\n");
        Edited.move("# head\na: 1\n\nb: 2", "b", 1).gives("# head\nb: 2\n\na: 1");
        Edited.move(DENSE, "b", 2).gives(DENSE);
    }

    @Test
    void an_entry_may_be_one_text_that_needs_quotes() {
        Edited.of("a: [x]\n", new Edit.Add("a", 2, new Content.Text("3,5"))).gives("a: [x, \"3,5\"]\n");
        Edited.of("a:\n  - x\n", new Edit.Add("a", 1, new Content.Text("b: c"))).gives("a:\n  - \"b: c\"\n  - x\n");
    }

    @Test
    void edits_are_done_one_after_the_other() {
        Edited.of(
                        DENSE,
                        new Edit.Add("pieces", 1, new Content.Yaml("{ name: x, back: a.face }")),
                        new Edit.Set("x.top", new Content.Text("1")),
                        new Edit.Move("x", 2),
                        new Edit.Remove("a"))
                .gives(DENSE.replace("  - { name: a } # first\n", "  - { name: x, back: a.face, top: 1 }\n"));
    }
}
