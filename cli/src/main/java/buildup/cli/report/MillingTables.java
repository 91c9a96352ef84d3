package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.engine.mill.milling.Hollow;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Pass;
import buildup.engine.mill.milling.Passes;
import buildup.engine.mill.milling.Reached;
import buildup.engine.mill.milling.Side;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the mill knows of a profile, as text. */
final class MillingTables {
    private static final Printed PRINTED = new Printed(LengthUnit.INCH);

    /** No round cutter is smaller, radius, in. */
    private static final double LEAST_CUTTER = 1.0 / 64;

    private MillingTables() {}

    static String text(Milled milled) {
        if (milled.isPlain()) {
            return "MILLING\nPlaned on four sides; nothing else to cut.\n";
        }
        StringBuilder text = new StringBuilder(TextTable.write(facts(milled), TextReport.WIDTH));
        if (!milled.hollows().isEmpty()) {
            text.append('\n').append(TextTable.write(hollows(milled), TextReport.WIDTH));
        }
        milled.passes().ifPresent(passes -> {
            if (!passes.inOrder().isEmpty()) {
                text.append('\n').append(TextTable.write(passes(passes, milled), TextReport.WIDTH));
            }
            text.append('\n').append(wrapped(judged(passes)));
        });
        milled.knife().ifPresent(knife -> text.append('\n').append(TextTable.write(knife(knife), TextReport.WIDTH)));
        return text.append('\n').append(wrapped(Milled.CAUTION)).toString();
    }

    private static String wrapped(String sentence) {
        return String.join("\n", Display.wrap(sentence, TextReport.WIDTH)) + "\n";
    }

    private static Table facts(Milled milled) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Side side : Side.SQUARE) {
            row(rows, "reached from " + side.word(), members(milled, side));
        }
        row(rows, "reached from no side", unreached(milled));
        return new Table("MILLING, the stick square to the heads, its back to the left", Table.columns("", ""), rows);
    }

    private static void row(List<List<Cell>> rows, String what, String members) {
        if (!members.isEmpty()) {
            rows.add(List.of(Cell.of(what), Cell.of(members)));
        }
    }

    /** Members reached from a side, those in part marked; planed ones are no question. */
    private static String members(Milled milled, Side side) {
        Set<String> words = new LinkedHashSet<>();
        for (String member : milled.stick().outline().members()) {
            List<Reached> parts = of(milled, member);
            long seen =
                    parts.stream().filter(part -> part.sides().contains(side)).count();
            if (seen > 0) {
                words.add(seen == parts.size() ? member : member + " (part)");
            }
        }
        return String.join(", ", words);
    }

    private static String unreached(Milled milled) {
        return milled.reached().stream()
                .filter(part -> part.sides().isEmpty())
                .map(Reached::member)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static List<Reached> of(Milled milled, String member) {
        return milled.reached().stream()
                .filter(part -> part.member().equals(member) && !milled.stick().isPlaned(part.segment()))
                .toList();
    }

    private static Table hollows(Milled milled) {
        return new Table(
                "HOLLOWS, and the largest round cutter that follows each",
                Table.columns("member", ">radius", ">largest cutter, radius"),
                milled.hollows().stream()
                        .map(hollow ->
                                List.of(Cell.of(hollow.member()), PRINTED.cell(hollow.radius()), largest(hollow)))
                        .toList());
    }

    private static Cell largest(Hollow hollow) {
        return hollow.largest() > LEAST_CUTTER ? PRINTED.cell(hollow.largest()) : Cell.of("none");
    }

    private static Table passes(Passes passes, Milled milled) {
        List<List<Cell>> rows = new ArrayList<>();
        int number = 0;
        for (Pass pass : passes.inOrder()) {
            number++;
            rows.add(List.of(
                    Cell.of(Integer.toString(number)),
                    Cell.of(pass.cutter() + (pass.times() > 1 ? ", " + pass.times() + " runs" : "")),
                    Cell.of(pass.side().word()),
                    PRINTED.cell(pass.depth()),
                    PRINTED.cell(pass.fence()),
                    Cell.of(pass.fencedByBack() ? "back" : "bottom"),
                    Cell.of(made(pass, milled))));
        }
        return new Table(
                "PASSES in order; depth below the side that it cuts; from the fence to the middle of"
                        + " the cutter, minus when that lies outside the stick",
                Table.columns("", "cutter", "from", ">depth", ">fence", "fence on", "makes"),
                rows);
    }

    private static String made(Pass pass, Milled milled) {
        return pass.makes().stream()
                .map(stretch ->
                        milled.stick().outline().strokes().get(stretch.stroke()).member())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String judged(Passes passes) {
        if (!passes.unmade().isEmpty()) {
            return "Listed bits and blades do not make "
                    + passes.unmade().stream()
                            .map(Passes.Unmade::member)
                            .distinct()
                            .collect(Collectors.joining(", "))
                    + (passes.unmade().size() > 0 && !passes.inOrder().isEmpty()
                            ? "; " + left(passes) + " is left there"
                            : "")
                    + ". Take a ground knife.";
        }
        String runs = passes.runs() == 1 ? "One run makes it" : passes.runs() + " runs make it";
        return runs
                + (passes.proven() ? "; no fewer do." : ".")
                + (passes.leftArea() > 0 ? " " + left(passes) + " stands loose beside it: rip it off first." : "");
    }

    private static String left(Passes passes) {
        return Printed.decimals(passes.leftArea(), 3) + " sq in";
    }

    private static Table knife(Knife knife) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(fact("head", Cell.of(knife.head().name())));
        rows.add(fact("knife width", PRINTED.cell(knife.width())));
        rows.add(fact(
                "steel",
                knife.stock().map(stock -> PRINTED.cell(stock.toInches())).orElse(Cell.of("none listed so wide"))));
        rows.add(fact("depth in the wood", Printed.figure(knife.woodDepth(), 3)));
        rows.add(fact(
                "depth on the knife, hook "
                        + Printed.decimals(knife.head().hook().toDegrees(), 1) + " degrees",
                Printed.figure(knife.depth(), 3)));
        rows.add(fact("knife marks to the inch", Printed.figure(knife.marks(), 1)));
        rows.add(fact("height of a mark's wave", Printed.figure(knife.scallop(), 5)));
        return new Table("GROUND KNIFE for all that the front head reaches", Table.columns("", ""), rows);
    }

    private static List<Cell> fact(String what, Cell figure) {
        return List.of(Cell.of(what), figure);
    }
}
