package buildup.cli.compare;

import buildup.cli.tell.Beside.Pair;
import buildup.cli.tell.FigureChange;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What changes from one answer to another, in words, the most telling first: {@code projection 6-5/8 -> 6-5/16}. A block
 * in which very much changes is cut short and says how much more there is.
 */
public final class ChangeWords {
    /** Lines that a block may fill. */
    private static final int MOST = 6;

    private final Comparison comparison;
    private final FigureChange change;
    private final List<String> words = new ArrayList<>();

    private ChangeWords(Comparison comparison, FigureChange change) {
        this.comparison = comparison;
        this.change = change;
    }

    /**
     * The changes from a to b, a phrase each; nothing when every figure is alike.
     *
     * @param printer in which unit; the phrases are the same ones in every unit
     */
    public static List<String> of(Comparison comparison, FigurePrinter printer) {
        ChangeWords change = new ChangeWords(comparison, new FigureChange(printer));
        change.totals();
        change.rawWood();
        change.notices("problem");
        change.stock();
        change.add(MovedWords.of(comparison, change.change), "pieces");
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
        for (Pair pair : comparison.pairs("totals")) {
            for (int i = 0; i < pair.columns().size(); i++) {
                if (pair.both() && !pair.alike(i) && worthTelling(pair, i)) {
                    words.add(pair.columns().get(i).heading() + " " + change(pair, i));
                }
            }
        }
        for (Pair pair : comparison.pairs("support.whole")) {
            if (pair.both() && !pair.alike(pair.at("answer"))) {
                words.add("as fastened it " + change(pair, pair.at("answer")));
            }
            if (pair.both() && !pair.alike(pair.at("factor"))) {
                words.add("loads may grow " + change(pair, pair.at("factor")));
            }
        }
    }

    /** What is left over follows from the rest, and so does the trim where all of the stack changes as it does. */
    private static boolean worthTelling(Pair pair, int column) {
        return switch (pair.columns().get(column).key()) {
            case "height", "projection", "bottom", "top", "weightPerFoot" -> true;
            case "trimHeight" -> !changesAs("height", pair, column);
            case "trimProjection" -> !changesAs("projection", pair, column);
            default -> false;
        };
    }

    private static boolean changesAs(String key, Pair pair, int column) {
        return Math.abs(pair.more(pair.at(key)).orElseThrow()
                        - pair.more(column).orElseThrow())
                < Tolerance.SAW_CUT;
    }

    private void rawWood() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.pairs("coverage")) {
            int seen = pair.at("seen");
            OptionalDouble more = pair.more(seen);
            if (!pair.alike(seen) && more.isPresent()) {
                String amount = change.length(more.getAsDouble());
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
        add(new NoticeChanges(comparison, change.printer()).of(level), level + "s");
    }

    /** What b says. */
    private String told(Pair pair, int column) {
        return change.told(pair.columns().get(column), pair.cellOfB(column));
    }

    private void stock() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.pairs("pieces")) {
            String name = pair.names().get(0);
            if (!pair.both()) {
                lines.add((pair.a().isEmpty() ? "new piece: " : "piece gone: ") + name);
                continue;
            }
            for (String key : List.of("kind", "profile", "wood")) {
                if (!pair.alike(pair.at(key))) {
                    lines.add(name + ": " + change(pair, pair.at(key)));
                }
            }
        }
        add(lines, "pieces");
    }

    private void reveals() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.pairs("reveals")) {
            String what =
                    "reveal of " + pair.names().get(0) + " over " + pair.names().get(1);
            changed(lines, pair, "amount", what, "new " + what + " ", what + " gone");
        }
        add(lines, "reveals");
    }

    private void holds() {
        List<String> lines = new ArrayList<>();
        List<Pair> pieces = comparison.pairs("pieces");
        for (Pair pair : pieces) {
            if (pair.both() && !pair.alike(pair.at("held"))) {
                lines.add(pair.names().get(0) + ": " + change(pair, pair.at("held")));
            }
        }
        Set<String> both = pieces.stream()
                .filter(Pair::both)
                .map(pair -> pair.names().get(0))
                .collect(Collectors.toSet());
        holds(lines, both, "pieces.bearing", "bearing of ", " on ", "width");
        holds(lines, both, "pieces.backing", "backing of ", " by ", "length");
        add(lines, "holds");
    }

    private void holds(List<String> lines, Set<String> pieces, String sheet, String word, String by, String key) {
        for (Pair pair : comparison.pairs(sheet)) {
            if (pieces.contains(pair.names().get(0))) {
                String what = word + pair.names().get(0) + by + pair.names().get(1);
                changed(lines, pair, key, what, "new " + what + " ", what + " gone");
            }
        }
    }

    private void nails() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.pairs("nails")) {
            String what = pair.names().get(0) + " in " + pair.names().get(1);
            if (!pair.both()) {
                lines.add(pair.a().isEmpty() ? "new: " + what : what + " gone");
                continue;
            }
            if (!pair.alike(pair.at("use"))) {
                lines.add(what + ": " + change(pair, pair.at("use")));
            }
            for (String key : List.of("out", "up", "bite")) {
                if (!pair.alike(pair.at(key))) {
                    lines.add(what + ": " + key + " " + change(pair, pair.at(key)));
                }
            }
        }
        add(lines, "nails");
    }

    private void voids() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.pairs("voids")) {
            String what = "void between " + pair.names().get(0);
            changed(lines, pair, "area", what, "new " + what + ", ", what + " gone");
        }
        add(lines, "voids");
    }

    private void shadows() {
        List<String> lines = new ArrayList<>();
        for (Pair pair : comparison.pairs("shadows")) {
            if (pair.names().get(3).equals("cast")) {
                String on = "shadow on " + pair.names().get(1) + " "
                        + pair.names().get(2) + ", " + pair.names().get(0);
                changed(lines, pair, "dark", on, "new " + on + " ", on + ", gone");
            }
        }
        add(lines, "shadows");
    }

    /** What became of one figure of a thing; nothing where it stayed. */
    private void changed(List<String> lines, Pair pair, String key, String what, String came, String gone) {
        int at = pair.at(key);
        if (pair.a().isEmpty()) {
            lines.add(came + told(pair, at));
        } else if (pair.b().isEmpty()) {
            lines.add(gone);
        } else if (!pair.alike(at)) {
            lines.add(what + " " + change(pair, at));
        }
    }

    private String change(Pair pair, int at) {
        Column column = pair.columns().get(at);
        return change.change(column, pair.cellOfA(at), pair.cellOfB(at));
    }
}
