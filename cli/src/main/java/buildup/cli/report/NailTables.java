package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.Answers;
import buildup.engine.hold.fixing.Check;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.fixing.Grip;
import buildup.engine.hold.fixing.Hiding;
import buildup.engine.hold.fixing.Joint;
import buildup.engine.hold.fixing.Proposal;
import buildup.engine.hold.fixing.Strength;
import buildup.engine.section.compose.Section;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The nails of one stack, and where nails could go, with the formulas behind their figures. */
final class NailTables {
    private final Section section;
    private final Answers known;
    private final Printed printed;

    NailTables(Answers known, Printed printed) {
        this.section = known.section();
        this.known = known;
        this.printed = printed;
    }

    List<Table> all() {
        List<Table> tables = new ArrayList<>(List.of(nails(), strength(), checks(), proposals()));
        if (!known.fixed().isEmpty()) {
            tables.add(formulas());
        }
        return tables;
    }

    private Table nails() {
        return new Table(
                "NAILS AND SCREWS: what each goes through; edge: least wood beside it",
                Table.columns("nail", "through", "use", ">at up", "bite in", ">edge", "head", "tool"),
                known.fixed().stream()
                        .map(fixed -> List.of(
                                Cell.of(fixed.fastening().name()),
                                Cell.of(section.name(fixed.piece())),
                                Cell.of(fixed.fastening().use().call()),
                                printed.cell(fixed.head().y()),
                                Cell.of(bites(fixed)),
                                printed.cell(fixed.edge()),
                                Cell.of(hidden(fixed.hiding())),
                                Cell.of(reach(fixed))))
                        .toList());
    }

    private String bites(Fixed fixed) {
        String bites = fixed.beyond().stream()
                .map(grip -> section.name(grip.body()) + " " + printed.size(grip.bite()))
                .collect(Collectors.joining(", "));
        return bites.isEmpty() ? "nothing" : bites;
    }

    private String hidden(Hiding hiding) {
        return switch (hiding.grade()) {
            case COVERED -> "under " + section.name(hiding.coveredBy().orElseThrow());
            case BEHIND -> "behind";
            case QUIRK -> "in a quirk";
            case UNSEEN -> "out of sight";
            case SHADOW -> "in shadow";
            case SHOWS -> "shows";
        };
    }

    private String reach(Fixed fixed) {
        return fixed.reach().inTheWay().isPresent()
                ? section.name(fixed.reach().inTheWay().getAsInt()) + " is in its way"
                : fixed.reach().tool().isPresent() ? "gets there" : "not looked at";
    }

    private Table strength() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Fixed fixed : known.fixed()) {
            for (Joint joint : fixed.joints()) {
                Grip grip = fixed.grips().stream()
                        .filter(one -> one.body() == joint.far())
                        .findFirst()
                        .orElseThrow();
                rows.add(List.of(
                        Cell.of(fixed.fastening().name()),
                        Cell.of(section.name(joint.near()) + " to " + section.name(joint.far())),
                        Printed.figure(grip.gravity(), 2),
                        Printed.figure(grip.allowable(), 2),
                        Printed.figure(joint.withdrawalPerFoot(), 2),
                        Printed.figure(grip.test(), 1),
                        Printed.figure(grip.otherTest(), 1),
                        Printed.figure(joint.lateral(), 1),
                        Printed.figure(joint.otherLateral(), 1)));
            }
        }
        return new Table(
                "WHAT NAILS MAY HOLD, lb; test: what came out in tests; other: what another publication gives",
                Table.columns("nail", "holds", ">G", ">pull", ">a foot", ">test", ">other", ">across", ">other"),
                rows);
    }

    /** All rules in one line a nail: a carpenter wants to know by how much it falls short of the most and the least. */
    private Table checks() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Fixed fixed : known.fixed()) {
            String wants = fixed.checks().stream()
                    .filter(check -> !check.met() && check.rule() != Check.Rule.FAR_FACE)
                    .map(check -> check.rule().words() + ": " + Printed.decimals(check.needs(), 3) + ", has "
                            + Printed.decimals(check.has(), 3))
                    .collect(Collectors.joining("; "));
            if (!wants.isEmpty()) {
                rows.add(List.of(Cell.of(fixed.fastening().name()), Cell.of(wants)));
            }
        }
        return new Table("RULES NOT MET", Table.columns("nail", "wants"), rows);
    }

    private Table proposals() {
        List<List<Cell>> rows = new ArrayList<>();
        if (known.proposals().isEmpty() && known.fixed().isEmpty()) {
            return new Table("", List.of(), rows);
        }
        firstOfEach().forEach(proposal -> rows.add(proposal(proposal)));
        for (int i = 0; i < section.bodies().size(); i++) {
            int piece = i;
            boolean none = known.proposals().stream()
                    .noneMatch(proposal -> proposal.fixed().piece() == piece);
            if (section.body(i).trim() && none) {
                rows.add(List.of(
                        Cell.of(section.name(i)),
                        Cell.EMPTY,
                        Cell.EMPTY,
                        Cell.EMPTY,
                        Cell.EMPTY,
                        Cell.EMPTY,
                        Cell.of("no spot found that bites enough and can be reached")));
            }
        }
        return new Table(
                "WHERE A NAIL COULD GO, 16 apart; each passes the checks of a nail that is given",
                Table.columns("piece", "use", ">out", ">up", ">tilt", ">bite", "why there"),
                rows);
    }

    /** The best for each piece. */
    private List<Proposal> firstOfEach() {
        Set<Integer> seen = new HashSet<>();
        return known.proposals().stream()
                .filter(proposal -> seen.add(proposal.fixed().piece()))
                .toList();
    }

    private List<Cell> proposal(Proposal proposal) {
        Fixed fixed = proposal.fixed();
        return List.of(
                Cell.of(section.name(fixed.piece())),
                Cell.of(fixed.fastening().use().call()),
                printed.cell(fixed.head().x()),
                printed.cell(fixed.head().y()),
                Printed.figure(fixed.fastening().angle(), 0),
                printed.cell(fixed.bite()),
                Cell.of(proposal.reason()));
    }

    private static Table formulas() {
        List<List<Cell>> rows = new ArrayList<>();
        Arrays.stream(Strength.values())
                .forEach(strength -> rows.add(
                        List.of(Cell.of(strength.formula()), Cell.of(strength.edition()), Cell.of(strength.safety()))));
        rows.add(List.of(Cell.of("not checked"), Cell.of(String.join("; ", Strength.NOT_CHECKED)), Cell.of("")));
        return new Table("FORMULAS behind the figures of nails", Table.columns("formula", "from", "safety"), rows);
    }
}
