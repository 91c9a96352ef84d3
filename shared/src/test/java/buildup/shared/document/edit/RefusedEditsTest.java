package buildup.shared.document.edit;

import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.edit.Naming;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits that cannot be done: the whole of what is said. */
class RefusedEditsTest {

    private static final String STACK = """
            title: Cap
            space: { floor: 0 }
            eyes: [{ name: seated, height: 46 }, { name: seated, height: 48 }]
            pieces:
              - { name: frieze, back: wall }
              - { name: cap, back: &b frieze.face, top: *b }
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "freize.back | Nothing in the document is called 'freize'. | Did you mean frieze?",
                "spcae.floor | Nothing in the document is called 'spcae'. | Did you mean space?",
                "pieces.crown.back | Nothing in 'pieces' is called 'crown'. | Known here: cap, frieze.",
                "pieces.3.back | 'pieces' holds 2 entries, so there is no number 3. | Count from 1.",
                "pieces.0 | 'pieces' holds 2 entries, so there is no number 0. | Count from 1.",
                "frieze.back.x | 'frieze.back' holds one value, so there is no 'x' in it. | Name 'frieze.back' itself.",
            })
    void a_place_that_is_not_there(String place, String message, String cure) {
        String said = "REFUSAL unknown-place - " + message + " " + cure;
        Edited.set(STACK, place, "1").refuses(said);
        Edited.remove(STACK, place).refuses(said);
        Edited.move(STACK, place, 1).refuses(said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", ".", "frieze.", ".back", "frieze..back"})
    void a_place_that_is_none(String place) {
        Edited.set(STACK, place, "1")
                .refuses("REFUSAL unknown-place - No place is named. Name one, as frieze.profile.");
    }

    @Test
    void what_is_not_there_cannot_be_taken_out_or_moved() {
        Edited.remove(STACK, "frieze.bakc")
                .refuses("REFUSAL unknown-place - Nothing in 'frieze' is called 'bakc'. Did you mean back?");
        Edited.move(STACK, "titel", 1)
                .refuses("REFUSAL unknown-place - Nothing in the document is called 'titel'. Did you mean title?");
    }

    @Test
    void two_of_a_name() {
        Edited.set(STACK, "eyes.seated.height", "47")
                .refuses("REFUSAL ambiguous-place - 2 entries of 'eyes' are called 'seated'."
                        + " Take the number of the one you mean, as eyes.2.");
        Edited.set("pieces: [{ name: a }, { name: a }]", "a.back", "wall")
                .refuses("REFUSAL ambiguous-place - 2 entries of 'pieces' are called 'a'."
                        + " Take the number of the one you mean, as pieces.2.");
        Edited.of(STACK, new Edit.Rename(Naming.EYE, "seated", "on a chair"))
                .refuses("REFUSAL ambiguous-place - Several entries of 'eyes' are called 'seated'."
                        + " Set the name of one of them by its number first.");
        Edited.set(STACK, "eyes.2.name", "on a chair")
                .gives(STACK.replace("seated, height: 48", "on a chair, height: 48"));
    }

    @Test
    void what_shows_in_two_places() {
        String said = "REFUSAL repeated-elsewhere - 'cap.back' is marked '&b' or lies in what is, and '*b' repeats it:"
                + " the change would show there too. Write it out where it is repeated, then change it.";
        Edited.set(STACK, "cap.back", "wall").refuses(said);
        Edited.remove(STACK, "cap.back").refuses(said);
        Edited.remove(STACK, "cap").refuses(said.replace("cap.back", "cap"));
        Edited.set(STACK, "cap.top", "1").gives(STACK.replace("*b", "1"));
        String whole = "a: &x { b: 1, l: [1] }\nc: *x\n";
        Edited.set(whole, "a.b", "2")
                .refuses(said.replace("cap.back", "a.b").replace("&b", "&x").replace("*b", "*x"));
        Edited.set(whole, "c.b", "2")
                .refuses(said.replace("cap.back", "c.b").replace("&b", "&x").replace("*b", "*x"));
        Edited.set(whole, "c.d", "2")
                .refuses(said.replace("cap.back", "c.d").replace("&b", "&x").replace("*b", "*x"));
        Edited.add(whole, "c.l", 1, "2")
                .refuses(said.replace("cap.back", "c.l").replace("&b", "&x").replace("*b", "*x"));
        Edited.move(whole, "a.b", 2)
                .refuses(said.replace("cap.back", "a.b").replace("&b", "&x").replace("*b", "*x"));
        Edited.add("a: &x [1]\nb: *x\n", "b", 1, "2")
                .refuses(said.replace("cap.back", "b").replace("&b", "&x").replace("*b", "*x"));
        Edited.set("a: &x 1\nb: 2\n", "a", "3").gives("a: &x 3\nb: 2\n");
    }

    @Test
    void an_entry_for_what_is_no_list() {
        Edited.add(STACK, "space", 1, "x")
                .refuses(
                        "REFUSAL not-a-list - 'space' is not a list, so no entry can be put into it. Name a list, as pieces.");
        Edited.add(STACK, "title", 1, "x")
                .refuses(
                        "REFUSAL not-a-list - 'title' is not a list, so no entry can be put into it. Name a list, as pieces.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a, b", "{ a: 1", "*b", "&x 1", "a # b", "", "a: 1", "[a]\nb: 1"})
    void a_value_that_is_none(String source) {
        Edited.of(STACK, new Edit.Set("title", new Content.Yaml(source)))
                .refuses("REFUSAL not-a-value - '" + source + "' is not one value in YAML."
                        + " Write one value, or a list in [ ] or keys in { } in one line.");
    }

    @Test
    void what_is_written_as_few_would() {
        String said = "REFUSAL edit-by-hand - What stands round 'a.b' is written with '?', under '|+' or without braces"
                + " of its own. Change it by hand.";
        Edited.remove("a:\n  ? b\n  : 1\n", "a.b").refuses(said);
        Edited.set("a: [b: 1]\n", "a.1.c", "2").refuses(said.replace("a.b", "a.1.c"));
        Edited.remove("a:\n  b: |+\n    x\n\n  c: 1\n", "a.c").refuses(said.replace("a.b", "a.c"));
        Edited.move("a:\n  b: 1\n  c: |\n    x", "a.b", 2).refuses(said);
        Edited.move("a:\n  b: |\n    x\n  c: 1", "a.b", 2).refuses(said);
        Edited.add("a:\n  - 1\n  - b:\n      - |\n       x", "a", 3, "2").refuses(said.replace("a.b", "a"));
        Edited.set("a:\n  b: 1\n  c: |+\n    x\n\nd: 1\n", "a.b", "2").gives("a:\n  b: 2\n  c: |+\n    x\n\nd: 1\n");
        Edited.set("a:\n  ? b\n  : 1\n", "a.b", "2").gives("a:\n  ? b\n  : 2\n");
        Edited.set("a: [b: 1]\n", "a.1.b", "2").gives("a: [b: 2]\n");
    }

    @Test
    void a_name_that_cannot_be_given() {
        Edited.of(STACK, new Edit.Rename(Naming.PIECE, "cap", "frieze"))
                .refuses(
                        "REFUSAL unusable-new-name - There is a piece called 'frieze' already. Take a name that is free.");
        Edited.set(STACK, "cap.name", "frieze")
                .refuses(
                        "REFUSAL unusable-new-name - There is a piece called 'frieze' already. Take a name that is free.");
        Edited.of(STACK, new Edit.Rename(Naming.PIECE, "cap", " "))
                .refuses("REFUSAL unusable-new-name - The new name of 'cap' is blank. Give it a name.");
        Edited.of(STACK, new Edit.Rename(Naming.PIECE, "crown", "x"))
                .refuses("REFUSAL unknown-place - Nothing in 'pieces' is called 'crown'. Known here: cap, frieze.");
        Edited.of(STACK, new Edit.Rename(Naming.SIZE, "lip", "x"))
                .refuses("REFUSAL unknown-place - Nothing in 'sizes' is called 'lip'. Look into the file.");
    }

    @Test
    void a_document_that_cannot_be_read_is_not_edited() {
        Edited.set("a: { b: 1\n", "a", "x")
                .refuses(
                        "REFUSAL yaml-error cornice.yaml:2:1 A bracket is opened in line 1 and not closed, or a comma is"
                                + " missing. Close the bracket or put the comma.");
        Edited.set("a: 1\na: 2\n", "a", "x")
                .refuses("REFUSAL key-twice cornice.yaml:2:1 'a' is given twice: in line 1 and again in line 2."
                        + " Keep one of them.");
    }

    @Test
    void nor_is_one_made_that_cannot_be() {
        Edited.remove("title: x\n", "title")
                .refuses("REFUSAL empty-file cornice.yaml:1:1 cornice.yaml is empty. Begin with 'title:'.");
        Edited.move("a: &x 1\nb: *x\n", "a", 2)
                .refuses("REFUSAL yaml-error cornice.yaml:1:4 '*x' repeats something not marked before it."
                        + " Mark it with '&x', or quote a text that begins with '*'.");
    }

    @Test
    void of_several_edits_all_are_done_or_none() {
        Edited.of(STACK, new Edit.Set("title", new Content.Text("y")), new Edit.Remove("crown"))
                .refuses("REFUSAL unknown-place - Nothing in the document is called 'crown'."
                        + " Known here: cap, eyes, frieze, pieces, space, title.");
    }
}
