package buildup.cli.compare;

import buildup.cli.compare.Comparison.Block;
import buildup.cli.compare.Comparison.Pair;
import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Quantity;
import buildup.cli.compare.Sheet.Row;
import buildup.cli.report.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What changes from one answer to another, in words, the most telling first: {@code projection 6-5/8 -> 6-5/16}. A block
 * in which very much changes is cut short and says how much more there is.
 */
public final class ChangeWords {
    /** Lines that a block may fill. */
    private static final int MOST = 6;

    private final Comparison comparison;
    private final Told told;
    private final List<String> words = new ArrayList<>();

    private ChangeWords(Comparison comparison, Printed printed) {
        this.comparison = comparison;
        this.told = new Told(printed);
    }

    /**
     * The changes from a to b, a phrase each; nothing when every figure is alike.
     *
     * @param printed in which unit; the phrases are the same ones in every unit
     */
    public static List<String> of(Comparison comparison, Printed printed) {
        ChangeWords change = new ChangeWords(comparison, printed);
        change.totals();
        change.rawWood();
        change.notices("problem");
        change.stock();
        change.add(MovedWords.of(comparison, change.told), "pieces");
        change.reveals();
        change.holds();
        change.nails();
        change.voids();
        change.shadows();
        change.notices("note");
        if (change.words.isEmpty() && comparison.differing() > 0) {
            change.words.add(ComparisonText.differing(comparison));
        }
        return List.copyOf(change.words);
    }

    private void add(List<String> lines, String what) {
        words.addAll(lines.size() > MOST ? lines.subList(0, MOST - 1) : lines);
        if (lines.size() > MOST) {
            words.add("and " + (lines.size() - MOST + 1) + " more of the " + what);
        }
    }

    private void totals() {
        Block block = comparison.block(SectionSheets.TOTALS);
        Pair pair = block.pairs().get(0);
        for (int i = 0; i < block.heads().quantities().size(); i++) {
            Quantity quantity = block.heads().quantities().get(i);
            if (!pair.alike(i) && worthTelling(quantity.head().key(), block, pair, i)) {
                boolean weight = quantity.kind() == Kind.WEIGHT;
                words.add((weight ? "weight" : quantity.head().heading()) + " " + change(pair, i, quantity.kind())
                        + (weight ? " lb a foot" : ""));
            }
        }
    }

    /** What is left over follows from the rest, and so does the trim where all of the stack changes as it does. */
    private static boolean worthTelling(String key, Block block, Pair pair, int quantity) {
        return switch (key) {
            case "height", "projection", "bottom", "top", "weightPerFoot", "stands", "factor" -> true;
            case "trimHeight" -> !changesAs("height", block, pair, quantity);
            case "trimProjection" -> !changesAs("projection", block, pair, quantity);
            default -> false;
        };
    }

    private static boolean changesAs(String key, Block block, Pair pair, int quantity) {
        return Math.abs(pair.more(at(block, key)).orElseThrow()
                        - pair.more(quantity).orElseThrow())
                <= Comparison.ALIKE;
    }

    private void rawWood() {
        Block block = comparison.block(RoomSheets.COVERAGE);
        int seen = at(block, "seen");
        List<String> lines = new ArrayList<>();
        for (Pair pair : block.pairs()) {
            OptionalDouble more = pair.more(seen);
            if (!pair.alike(seen) && more.isPresent()) {
                String amount = told.length(Math.abs(more.getAsDouble()));
                String eye = "the " + pair.names().get(1) + " eye";
                lines.add(
                        more.getAsDouble() < 0
                                ? amount + " of raw " + pair.names().get(0) + " now hidden from " + eye
                                : amount + " more of raw " + pair.names().get(0) + " now shows to " + eye);
            }
        }
        add(lines, "raw wood");
    }

    private void notices(String level) {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.block(Comparison.NOTICES).pairs()) {
            boolean both = pair.a().isPresent() && pair.b().isPresent();
            // of a note that stays, how much is no news
            if (pair.names().get(0).equals(level) && !pair.alike() && !(both && level.equals("note"))) {
                String piece = pair.names().get(2);
                String what = pair.names().get(1).replace('-', ' ') + (piece.isEmpty() ? "" : ", " + piece);
                lines.add(
                        pair.a().isEmpty()
                                ? "new " + level + ": " + what + amount(pair.b())
                                : pair.b().isEmpty()
                                        ? level + " gone: " + what
                                        : level + " " + what + ": " + change(pair, 0, Kind.LENGTH));
            }
        }
        add(lines, level + "s");
    }

    private String amount(Optional<Row> row) {
        return row.map(found -> found.figures().get(0))
                .map(Figure::number)
                .filter(OptionalDouble::isPresent)
                .map(number -> " " + told.length(Math.abs(number.getAsDouble())))
                .orElse("");
    }

    private void stock() {
        Block block = comparison.block(SectionSheets.STOCK);
        List<String> lines = new ArrayList<>();
        for (Pair pair : block.pairs()) {
            String name = pair.names().get(0);
            if (pair.a().isEmpty() || pair.b().isEmpty()) {
                lines.add((pair.a().isEmpty() ? "new piece: " : "piece gone: ") + name);
                continue;
            }
            for (String key : List.of("kind", "profile", "wood")) {
                if (!pair.alike(at(block, key))) {
                    lines.add(name + ": " + change(pair, at(block, key), Kind.WORDS));
                }
            }
        }
        add(lines, "pieces");
    }

    private void reveals() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.block(SectionSheets.REVEALS).pairs()) {
            String what =
                    "reveal of " + pair.names().get(0) + " over " + pair.names().get(1);
            if (pair.a().isEmpty()) {
                lines.add("new " + what + amount(pair.b()));
            } else if (pair.b().isEmpty()) {
                lines.add(what + " gone");
            } else if (!pair.alike(0)) {
                lines.add(what + " " + change(pair, 0, Kind.LENGTH));
            }
        }
        add(lines, "reveals");
    }

    private void holds() {
        Block block = comparison.block(SectionSheets.HOLDS);
        List<String> lines = new ArrayList<>();
        for (Pair pair : block.pairs()) {
            if (pair.a().isPresent() && pair.b().isPresent()) {
                String name = pair.names().get(0);
                if (!pair.alike(at(block, "held"))) {
                    lines.add(name + ": " + change(pair, at(block, "held"), Kind.WORDS));
                }
                if (!pair.alike(at(block, "bearing"))) {
                    lines.add("bearing of " + name + " " + change(pair, at(block, "bearing"), Kind.LENGTH));
                }
                if (!pair.alike(at(block, "backing"))) {
                    lines.add("backing of " + name + " " + change(pair, at(block, "backing"), Kind.LENGTH));
                }
            }
        }
        add(lines, "holds");
    }

    private void nails() {
        Block block = comparison.block(SupportSheets.NAILS);
        List<String> lines = new ArrayList<>();
        for (Pair pair : block.pairs()) {
            String what = pair.names().get(0) + " in " + pair.names().get(1);
            if (pair.a().isEmpty() || pair.b().isEmpty()) {
                lines.add(pair.a().isEmpty() ? "new: " + what : what + " gone");
                continue;
            }
            if (!pair.alike(at(block, "use"))) {
                lines.add(what + ": " + change(pair, at(block, "use"), Kind.WORDS));
            }
            for (String key : List.of("out", "up", "bite")) {
                if (!pair.alike(at(block, key))) {
                    lines.add(what + ": " + key + " " + change(pair, at(block, key), Kind.LENGTH));
                }
            }
        }
        add(lines, "nails");
    }

    private void voids() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.block(JointSheets.VOIDS).pairs()) {
            String what = "void between " + pair.names().get(0);
            if (pair.a().isEmpty() || pair.b().isEmpty()) {
                lines.add(pair.a().isEmpty() ? "new " + what : what + " gone");
            } else if (!pair.alike(0)) {
                lines.add(what + " " + change(pair, 0, Kind.AREA) + " sq in");
            }
        }
        add(lines, "voids");
    }

    private void shadows() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.block(RoomSheets.SHADOWS).pairs()) {
            if (pair.names().get(3).equals("cast") && !(pair.a().isPresent() && pair.alike(0))) {
                String on = "shadow on " + pair.names().get(1) + " "
                        + pair.names().get(2) + ", " + pair.names().get(0);
                lines.add(
                        pair.a().isEmpty()
                                ? "new " + on + amount(pair.b())
                                : pair.b().isEmpty() ? on + ", gone" : on + " " + change(pair, 0, Kind.LENGTH));
            }
        }
        add(lines, "shadows");
    }

    private String change(Pair pair, int quantity, Kind kind) {
        return told.change(
                pair.a().orElseThrow().figures().get(quantity),
                pair.b().orElseThrow().figures().get(quantity),
                kind);
    }

    private static int at(Block block, String key) {
        return block.heads().at(key);
    }
}
