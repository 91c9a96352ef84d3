package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.Answers;
import buildup.engine.hold.support.Balance;
import buildup.engine.hold.support.Support;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What carries what in one stack: bearings against weights, the way to the ground, the whole under load. */
final class SupportTables {
    private final Section section;
    private final Support support;
    private final Answers known;
    private final Printed printed;

    SupportTables(Answers known, Printed printed) {
        this.section = known.section();
        this.support = known.support();
        this.known = known;
        this.printed = printed;
    }

    List<Table> all() {
        return List.of(loads(), bearings(), path(), pulls(), whole());
    }

    private Table loads() {
        return new Table(
                "LOADS, straight down",
                Table.columns("load", "on", ">out", ">lb a foot"),
                support.loads().stream()
                        .map(load -> List.of(
                                Cell.of(load.name()),
                                Cell.of(section.name(load.body())),
                                printed.cell(load.out()),
                                Printed.figure(load.poundsPerFoot(), 2)))
                        .toList());
    }

    private Table bearings() {
        return new Table(
                "WHAT CARRIES WHAT: where the weight above falls on the level bearing below; loads counted",
                Table.columns("on", ">bearing", ">from", ">to", ">lb a foot", ">falls at", "so it"),
                support.balances().stream()
                        .filter(Balance::carrier)
                        .map(balance -> List.of(
                                Cell.of(section.name(balance.body())),
                                printed.cell(balance.bearing()),
                                printed.cell(balance.bearingBack()),
                                printed.cell(balance.bearingFace()),
                                Printed.figure(balance.weight() + balance.load(), 2),
                                printed.cell(balance.loaded()),
                                Cell.of(verdict(balance))))
                        .toList());
    }

    private String verdict(Balance balance) {
        if (balance.stands()) {
            return balance.middleThirdMargin() >= 0
                    ? "stands, well inside"
                    : "stands, " + printed.size(balance.margin()) + " from tipping";
        }
        String leans = "leans " + (balance.loaded() > balance.bearingFace() ? "out " : "back ")
                + printed.size(-balance.margin()) + ": ";
        String back = balance.holdBack().isPresent()
                ? "hold back " + Printed.decimals(balance.holdBack().getAsDouble(), 2) + " lb a foot at "
                        + printed.size(balance.holdAt().y()) + " up"
                : "";
        String down = balance.holdDown().isPresent()
                ? "hold down " + Printed.decimals(balance.holdDown().getAsDouble(), 2) + " at "
                        + printed.size(balance.downAt().x()) + " out"
                : "";
        return leans + back + (back.isEmpty() || down.isEmpty() ? "" : " or ") + down;
    }

    private Table path() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Standing standing : section.standing()) {
            if (section.body(standing.body()).inStack()) {
                rows.add(List.of(
                        Cell.of(section.name(standing.body())),
                        Cell.of(way(standing.body())),
                        Cell.of(support.path().reachesGround(standing.body()) ? "" : "breaks")));
            }
        }
        return new Table("THE WAY TO THE GROUND", Table.columns("piece", "rests on, and that on", ""), rows);
    }

    private String way(int body) {
        List<String> steps = new ArrayList<>();
        Set<Integer> seen = new LinkedHashSet<>(Set.of(body));
        List<Integer> on = support.path().restsOn(body);
        while (!on.isEmpty()) {
            steps.add(String.join(" and ", on.stream().map(section::name).toList()));
            List<Integer> next = new ArrayList<>();
            for (int below : on) {
                if (seen.add(below)) {
                    support.path().restsOn(below).stream()
                            .filter(one -> !next.contains(one))
                            .forEach(next::add);
                }
            }
            on = next;
        }
        return String.join(", ", steps);
    }

    private Table pulls() {
        return new Table(
                "NAILS AGAINST LEANING",
                Table.columns("on", "held by", ">needs lb/ft", ">may hold", ">bite", ">bite needed", ""),
                known.pulls().stream()
                        .map(pull -> List.of(
                                Cell.of(section.name(pull.balance().body())),
                                Cell.of(pull.fixed().fastening().name()),
                                Printed.figure(pull.needed(), 2),
                                Printed.figure(pull.allowable(), 2),
                                printed.cell(pull.bite()),
                                Printed.figure(pull.biteNeeded(), 3),
                                Cell.of(pull.holds() ? "holds" : "fails")))
                        .toList());
    }

    private Table whole() {
        return new Table(
                "THE WHOLE STACK, every piece rigid, contacts that only push, fastenings at their limits",
                Table.columns("verdict"),
                support.whole()
                        .map(verdict -> List.of(List.of(Cell.of(words(verdict))), List.of(Cell.of(Support.LEFT_OUT))))
                        .orElse(List.of()));
    }

    private String words(Support.Verdict verdict) {
        if (!verdict.stands()) {
            return "tips: there is no balance, even without loads";
        }
        if (Double.isInfinite(verdict.factor())) {
            return support.loads().isEmpty() ? "stands" : "stands, whatever the loads given";
        }
        return (verdict.factor() >= 1 ? "stands up to " : "fails at ") + Printed.decimals(verdict.factor(), 2)
                + " times the loads given; " + verdict.governs() + " governs";
    }
}
