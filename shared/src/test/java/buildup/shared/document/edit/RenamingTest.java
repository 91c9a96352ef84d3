package buildup.shared.document.edit;

import buildup.shared.edit.Edit;
import buildup.shared.edit.Naming;
import org.junit.jupiter.api.Test;

class RenamingTest {

    private static final String STACK = """
            title: frieze with lip # the frieze
            sizes: { lip: 1/4, lip 2: lip + 1, lap: 1/3 of lip }
            eyes: [{ name: seated, distance: 72 + lip, height: floor + 46 }]
            lights: [{ name: lamp, at: { distance: lip, height: 1 } }]
            loads: [{ name: frieze, on: frieze, out: lip }]
            fastenings:
              - { name: n, piece: frieze, after: "frieze", at: { up: frieze.top - lip, out: frieze back.face } }
            plan: [{ name: frieze, grain: [cap, frieze] }]
            must:
              - reveal of frieze over frieze back in lamp from seated >= lip 2
              - 'gap over "frieze" = 0 within lip'
              - height of frieze.frieze <= 3 + lip
            pieces:
              - { name: frieze, profile: board lip x 5, kind: trim, back: wall, bottom: 0 }
              - { name: frieze back, back: frieze.face+x, bottom: frieze.top  -  lip, fixed: frieze }
              - { name: cap, section: [out lip as lip, "up lip, out -lip"], at: { nose: frieze.top + lip, lip: lip 2 } }
              - { name: top, back: friezes.face, bottom: lip.top, top: frieze.top + frieze, fixed: wall }
            """;

    private static Edited rename(Naming kind, String from, String to) {
        return Edited.of(STACK, new Edit.Rename(kind, from, to));
    }

    @Test
    void a_piece_is_renamed_wherever_it_is_mentioned_and_nowhere_else() {
        String renamed = STACK.replace("on: frieze", "on: band")
                .replace(
                        "piece: frieze, after: \"frieze\", at: { up: frieze.top",
                        "piece: band, after: \"band\", at: { up: band.top")
                .replace("grain: [cap, frieze]", "grain: [cap, band]")
                .replace("reveal of frieze over", "reveal of band over")
                .replace("over \"frieze\"", "over \"band\"")
                .replace("of frieze.frieze", "of band.frieze")
                .replace("{ name: frieze, profile", "{ name: band, profile")
                .replace(
                        "back: frieze.face+x, bottom: frieze.top  -  lip, fixed: frieze",
                        "back: band.face+x, bottom: band.top  -  lip, fixed: band")
                .replace("nose: frieze.top", "nose: band.top")
                .replace("top: frieze.top + frieze", "top: band.top + frieze");
        rename(Naming.PIECE, "frieze", "band").gives(renamed);
        Edited.set(STACK, "pieces.frieze.name", "band").gives(renamed);
        Edited.of(renamed, new Edit.Rename(Naming.PIECE, "band", "frieze")).gives(STACK);
    }

    @Test
    void a_name_with_blanks_is_one_name() {
        rename(Naming.PIECE, "frieze back", "wedge").gives(STACK.replace("frieze back", "wedge"));
        Edited.of("pieces: [{ name: a b }, { name: c, back: a  b.face }]\n", new Edit.Rename(Naming.PIECE, "a b", "d"))
                .gives("pieces: [{ name: d }, { name: c, back: d.face }]\n");
    }

    @Test
    void a_size_is_renamed_wherever_a_length_stands() {
        rename(Naming.SIZE, "lip", "drop")
                .gives(STACK.replace(
                                "{ lip: 1/4, lip 2: lip + 1, lap: 1/3 of lip }",
                                "{ drop: 1/4, lip 2: drop + 1, lap: 1/3 of drop }")
                        .replace("72 + lip", "72 + drop")
                        .replace("distance: lip", "distance: drop")
                        .replace("out: lip", "out: drop")
                        .replace("frieze.top - lip", "frieze.top - drop")
                        .replace("within lip", "within drop")
                        .replace("3 + lip", "3 + drop")
                        .replace("board lip x 5", "board drop x 5")
                        .replace("frieze.top  -  lip", "frieze.top  -  drop")
                        .replace("out lip as lip, \"up lip, out -lip\"", "out drop as lip, \"up drop, out -drop\"")
                        .replace("nose: frieze.top + lip", "nose: frieze.top + drop"));
        rename(Naming.SIZE, "lip 2", "drop").gives(STACK.replace("lip 2", "drop"));
    }

    @Test
    void eyes_and_lights_are_renamed_in_what_has_to_be_met() {
        rename(Naming.EYE, "seated", "on a chair").gives(STACK.replace("seated", "on a chair"));
        rename(Naming.LIGHT, "lamp", "window").gives(STACK.replace("lamp", "window"));
    }

    @Test
    void a_name_that_needs_quotes_gets_them_wherever_it_stands() {
        Edited.of(
                        "pieces:\n  - { name: a, back: wall }\n  - name: b\n    back: a.face + 1 # c\n    fixed: a\n",
                        new Edit.Rename(Naming.PIECE, "a", "x, y"))
                .gives(
                        "pieces:\n  - { name: \"x, y\", back: wall }\n  - name: b\n    back: x, y.face + 1 # c\n    fixed: x, y\n");
        Edited.of("sizes: { a: 1, b: a + 1 }\n", new Edit.Rename(Naming.SIZE, "a", "x: y"))
                .gives("sizes: { \"x: y\": 1, b: \"x: y + 1\" }\n");
        Edited.of("sizes:\n  a: 1\n  b: -a\n", new Edit.Rename(Naming.SIZE, "a", "# 1"))
                .gives("sizes:\n  \"# 1\": 1\n  b: -# 1\n");
    }

    @Test
    void what_is_repeated_is_renamed_where_it_is_written() {
        String stack =
                "pieces:\n  - { name: &n a }\n  - { name: b, fixed: *n, back: &f a.face }\n  - { name: c, back: *f }\n";
        Edited.of(stack, new Edit.Rename(Naming.PIECE, "a", "d"))
                .gives(stack.replace("&n a", "&n d").replace("a.face", "d.face"));
    }

    @Test
    void a_name_given_again_changes_nothing() {
        rename(Naming.PIECE, "frieze", "frieze").gives(STACK);
    }
}
