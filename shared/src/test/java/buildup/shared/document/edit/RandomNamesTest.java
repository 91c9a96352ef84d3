package buildup.shared.document.edit;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.edit.Edit;
import buildup.shared.edit.Naming;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Stacks are written twice from one pattern, with one name and with another: renaming has to turn the first text into the
 * second. In the patterns {@code <p>} and {@code <q>} are pieces, {@code <s>} and {@code <t>} sizes; names outside of
 * them are words that only look alike.
 */
@Tag("sampled")
class RandomNamesTest {

    private static final int STACKS = Integer.getInteger("buildup.random.documents", 40);

    private static final List<String> NAMES = List.of(
            "frieze",
            "frieze back",
            "back",
            "top",
            "block A",
            "lip",
            "lip 2",
            "½ round",
            "case-2",
            "crown xl",
            "of",
            "w",
            "s");

    private static final List<String> FRESH = List.of("band", "new name", "frieze band", "lip lip", "Ω", "a-1");

    private static final List<String> PIECE_LINES = List.of(
            "  - { name: one, back: <p>.face, bottom: <q>.top - <s> }",
            "  - { name: two, fixed: <p>, face: '<p>.face + <s>', top: <q>.bottom  -  <t> }",
            "  - { name: three, at: { shoulder: <p>.top, top: \"<q>.top + -<s>\" } }",
            "  - name: four # <p>.face and p.face\n    back: <q>.band + 1/3 of <s>\n    # about <s>\n    fixed: \"<q>\"",
            "  - { name: five, profile: board <s> x <t>, kind: lip, wood: frieze }",
            "  - { name: six, section: [out <s>, \"up <t>, in <s>\", cove <s> x 1/2 as lip, back: [down <t>]] }",
            "  - { name: seven, rip: { top: <s> + <t> }, bottom: 1/2, lay: flat, flip: back }",
            "  - { name: eight, bottom: touch, back: lap.face2, top: nope.top + <s> }");

    private static final List<String> OTHER_LINES = List.of(
            "title: frieze and lip, frieze.top, of frieze",
            "fastenings:\n  - { name: frieze, piece: <p>, after: <q>, at: { up: <p>.top - <t>, out: <s> }, spacing: <s> }",
            "loads: [{ name: lip, on: <q>, out: <s>, load: 20 lb/ft }]",
            "plan:\n  - name: frieze\n    grain: [<p>, '<q>', other]\n    stretches: [{ name: lip, length: <s> + 90 }]",
            "plan: [{ name: frieze, grain: <p>, left: { end: die, plumb: { out: <s>, over: 96 } } }]",
            "eyes: [{ name: frieze, distance: 70 + <s>, height: floor + <t> }]",
            "space: { floor: -84, ceiling: 12 - <s>, wall: { covering: <t> } }",
            "must:\n  - height of '<p>' >= 3 # <p>\n  - reveal of '<q>' over '<p>' = 1 + <s> within <t>",
            "stock: { kerf: <s>, sticks: [{ of: board <t> x 3, on-hand: [3 x <s>, <t>], price: 1.20 }] }",
            "bench: { top: [<p>, <q>] }");

    @Test
    void one_name_changes_into_another_wherever_it_is_meant() {
        for (int seed = 0; seed < STACKS; seed++) {
            Random dice = new Random(seed);
            String pattern = pattern(dice);
            List<String> pieces = two(dice);
            List<String> sizes = two(dice);
            String before = filled(pattern, pieces, sizes);
            boolean piece = dice.nextBoolean();
            List<String> names = piece ? pieces : sizes;
            int which = dice.nextInt(2);
            String from = names.get(which);
            String to = FRESH.get(dice.nextInt(FRESH.size()));
            names.set(which, to);
            Naming kind = piece ? Naming.PIECE : Naming.SIZE;

            String after = filled(pattern, pieces, sizes);
            Edited.of(before, new Edit.Rename(kind, from, to)).gives(after);
            Edited.of(after, new Edit.Rename(kind, to, from)).gives(before);
        }
        assertThat(STACKS).isPositive();
    }

    private static List<String> two(Random dice) {
        List<String> names = new ArrayList<>(NAMES);
        java.util.Collections.shuffle(names, dice);
        return new ArrayList<>(names.subList(0, 2));
    }

    private static String pattern(Random dice) {
        List<String> others = new ArrayList<>(OTHER_LINES);
        java.util.Collections.shuffle(others, dice);
        StringBuilder text = new StringBuilder();
        List<String> keys = new ArrayList<>();
        for (String line : others.subList(0, 4)) {
            String key = line.substring(0, line.indexOf(':'));
            if (!keys.contains(key)) {
                keys.add(key);
                text.append(line).append(dice.nextInt(4) == 0 ? "  # said of <p>\n" : "\n");
            }
        }
        text.append("sizes: { <s>: 1/4, other: <s> + 1, <t>: 1/3 of <s> }\n");
        text.append("pieces:\n  - { name: <p>, kind: nailer }\n  - { name: '<q>', back: <p>.face }\n");
        for (int i = 0; i < 4; i++) {
            text.append(PIECE_LINES.get(dice.nextInt(PIECE_LINES.size()))).append('\n');
        }
        return text.toString();
    }

    /** Comments keep what they say: there the marks stay as they are. */
    private static String filled(String pattern, List<String> pieces, List<String> sizes) {
        StringBuilder text = new StringBuilder();
        for (String line : pattern.split("(?<=\n)")) {
            int comment = line.indexOf("# ");
            String said = comment < 0 ? line : line.substring(0, comment);
            text.append(said.replace("<p>", pieces.get(0))
                            .replace("<q>", pieces.get(1))
                            .replace("<s>", sizes.get(0))
                            .replace("<t>", sizes.get(1)))
                    .append(line.substring(said.length()));
        }
        return text.toString();
    }
}
