package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.run.Coving;
import buildup.engine.run.EndCut;
import buildup.engine.run.Fit;
import buildup.engine.run.Job;
import buildup.engine.run.RevealShift;
import buildup.engine.run.Saw;
import buildup.engine.run.Saw.Hand;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Lengths round the corners and the settings of the saw; some tables without rows. */
public final class CutTables {
    private final Job job;
    private final List<Coving> covings;
    private final Printed printed;

    public CutTables(Job job, List<Coving> covings, Printed printed) {
        this.job = job;
        this.covings = List.copyOf(covings);
        this.printed = printed;
    }

    public List<Table> all() {
        return List.of(
                lengths(),
                sums(),
                saw(),
                fence(),
                scribes(),
                square(),
                plumb(),
                plumbLengths(),
                reveals(),
                coves(covings));
    }

    /** What to take care of, a sentence each. */
    public List<String> cautions() {
        List<String> cautions = new ArrayList<>(List.of(Saw.CAUTION));
        if (!covings.isEmpty()) {
            cautions.add(printed.words(Coving.CAUTION));
        }
        return cautions;
    }

    private Table lengths() {
        return new Table(
                "LENGTHS along the stick: long points, short points, at the back; heel: from the long point back",
                Table.columns(
                        "course",
                        "stretch",
                        ">long to long",
                        ">short to short",
                        ">at the back",
                        ">heel left",
                        ">heel right"),
                job.fits().stream()
                        .map(fit -> List.of(
                                Cell.of(fit.course().name()),
                                Cell.of(stretch(fit)),
                                printed.cell(fit.longPoint()),
                                printed.cell(fit.shortPoint()),
                                printed.cell(fit.backLength()),
                                printed.cell(fit.heel(Hand.LEFT)),
                                printed.cell(fit.heel(Hand.RIGHT))))
                        .toList());
    }

    /** With the run before it when there are several. */
    private String stretch(Fit fit) {
        return job.plan().runs().size() == 1
                ? fit.stretch()
                : job.plan().runs().get(fit.run()).name() + ": " + fit.stretch();
    }

    private Table sums() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int run = 0; run < job.plan().runs().size(); run++) {
            int number = run;
            String name = job.plan().runs().get(run).name();
            job.courses()
                    .forEach(course -> rows.add(List.of(
                            Cell.of(name),
                            Cell.of(course.name()),
                            Cell.of(printed.words(course.stock())),
                            printed.cell(course.face()),
                            printed.cell(job.faceLength(number, course.body())))));
        }
        return new Table(
                "EACH COURSE round its run, along its face, returns included",
                Table.columns("run", "course", "cut from", ">projection", ">sum"),
                rows);
    }

    /** A cut at one end of a stick. */
    private record Made(Hand hand, EndCut cut) {}

    /** Where a cut is made: the courses and the stretches, in their order. */
    private record Where(Set<String> courses, Set<String> stretches) {}

    private Table saw() {
        Map<Made, Where> places = new LinkedHashMap<>();
        for (Fit fit : job.fits()) {
            for (Hand hand : Hand.values()) {
                Where where = places.computeIfAbsent(
                        new Made(hand, fit.cut(hand)),
                        unseen -> new Where(new LinkedHashSet<>(), new LinkedHashSet<>()));
                where.courses().add(fit.course().name());
                where.stretches().add(stretch(fit));
            }
        }
        return new Table(
                "SAW, blade tilted to the left; degrees of miter and bevel are for the stick flat on the table",
                Table.columns("courses", "end", "on", ">miter", ">bevel", "how"),
                places.entrySet().stream()
                        .map(entry -> row(entry.getKey(), entry.getValue()))
                        .toList());
    }

    private List<Cell> row(Made made, Where where) {
        return List.of(
                Cell.of(String.join(", ", where.courses())),
                Cell.of(end(made.hand())),
                Cell.of(String.join("; ", where.stretches())),
                Printed.figure(made.cut().miter(), 1),
                Printed.figure(made.cut().bevel(), 1),
                Cell.of(how(made.cut())));
    }

    private String how(EndCut cut) {
        String words = printed.words(cut.words());
        return cut.kind() == EndCut.Kind.SQUARE ? words : kind(cut) + ": " + words;
    }

    static String end(Hand hand) {
        return hand == Hand.LEFT ? "left" : "right";
    }

    static String kind(EndCut cut) {
        return switch (cut.kind()) {
            case SQUARE -> "square";
            case MITER -> "miter";
            case COPE -> "cope";
            case BUTT -> "butt";
            case RETURN -> "return";
        };
    }

    private Table fence() {
        record Nested(String course, String end, Saw.Setting setting) {}
        Map<Nested, Set<String>> places = new LinkedHashMap<>();
        for (Fit fit : job.fits()) {
            for (Hand hand : Hand.values()) {
                fit.nested(hand)
                        .ifPresent(setting -> places.computeIfAbsent(
                                        new Nested(fit.course().name(), end(hand), setting),
                                        unseen -> new LinkedHashSet<>())
                                .add(stretch(fit)));
            }
        }
        return new Table(
                "OR AGAINST THE FENCE, as they stand on the wall",
                Table.columns("course", "end", "on", ">miter", "how"),
                places.entrySet().stream()
                        .map(entry -> List.of(
                                Cell.of(entry.getKey().course()),
                                Cell.of(entry.getKey().end()),
                                Cell.of(String.join("; ", entry.getValue())),
                                Printed.figure(entry.getKey().setting().miter(), 1),
                                Cell.of(printed.words(entry.getKey().setting().words()))))
                        .toList());
    }

    private Table scribes() {
        TreeSet<Integer> scribed = new TreeSet<>();
        job.fits().stream()
                .filter(fit -> fit.course().trim() && (fit.meetsWall(Hand.LEFT) || fit.meetsWall(Hand.RIGHT)))
                .forEach(fit -> scribed.add(fit.course().body()));
        return new Table(
                "ENDS AT A WALL: leave them long and scribe; back-cut " + Printed.decimals(Saw.BACK_CUT, 0)
                        + "° (shop practice), so that the face alone meets the wall",
                Table.columns("course", ">the back is shorter by"),
                job.courses().stream()
                        .filter(course -> scribed.contains(course.body()))
                        .map(course -> List.of(Cell.of(course.name()), printed.cell(Saw.backCut(course.thickness()))))
                        .toList());
    }

    private Table square() {
        return new Table(
                "OUT OF SQUARE: what it adds to the length; how wide a miter opens if cut for square; reveals stay"
                        + fine(),
                Table.columns("course", "stretch", ">added", ">opens left", ">opens right"),
                job.fits().stream()
                        .filter(fit -> Math.abs(fit.fromSquare()) > Tolerance.COINCIDENT
                                || fit.gape(Hand.LEFT) + fit.gape(Hand.RIGHT) > Tolerance.COINCIDENT)
                        .map(fit -> List.of(
                                Cell.of(fit.course().name()),
                                Cell.of(stretch(fit)),
                                fine(fit.fromSquare()),
                                fine(fit.gape(Hand.LEFT)),
                                fine(fit.gape(Hand.RIGHT))))
                        .toList());
    }

    private Table plumb() {
        return new Table(
                "OUT OF PLUMB: how far the wall comes forward behind a course" + fine(),
                Table.columns("stretch", "course", ">at its bottom", ">at its top"),
                job.leans().stream()
                        .map(lean -> List.of(
                                Cell.of(lean.stretch()),
                                Cell.of(job.section().name(lean.body())),
                                fine(lean.atBottom()),
                                fine(lean.atTop())))
                        .toList());
    }

    private Table plumbLengths() {
        return new Table(
                "OUT OF PLUMB: what a wall adds to the length of a course" + fine(),
                Table.columns("course", "stretch", ">added"),
                job.fits().stream()
                        .filter(fit -> Math.abs(fit.fromPlumb()) > Tolerance.COINCIDENT)
                        .map(fit -> List.of(Cell.of(fit.course().name()), Cell.of(stretch(fit)), fine(fit.fromPlumb())))
                        .toList());
    }

    /** Less than a sixteenth counts here. */
    private Cell fine(double inches) {
        return printed.metric() ? printed.cell(inches) : Printed.figure(inches, 3);
    }

    private String fine() {
        return printed.metric() ? "" : ", decimal inches";
    }

    private Table reveals() {
        List<List<Cell>> rows = new ArrayList<>();
        for (RevealShift shift : job.shifts()) {
            if (Math.abs(shift.change()) > Tolerance.COINCIDENT) {
                rows.add(List.of(
                        Cell.of(shift.stretch()),
                        Cell.of(job.section().name(shift.piece())),
                        Cell.of(job.section().name(shift.over())),
                        printed.cell(shift.amount()),
                        printed.cell(shift.amount() + shift.change())));
            }
        }
        return new Table(
                "REVEALS on a wall out of plumb, when each course is set to the wall" + fine(),
                Table.columns("stretch", "piece", "over", ">drawn", ">becomes"),
                rows);
    }

    /** Coves over the table-saw blade; asked without a plan too. */
    public Table coves(List<Coving> asked) {
        return new Table(
                "COVES over the table-saw blade: degrees of the fence from the blade; passes of "
                        + printed.size(Coving.PASS),
                Table.columns(
                        "cove", ">width", ">depth", ">blade", ">kerf", ">fence", ">no kerf", ">passes", ">radius"),
                asked.stream()
                        .map(coving -> List.of(
                                Cell.of(coving.name()),
                                printed.cell(coving.width()),
                                printed.cell(coving.depth()),
                                printed.cell(coving.diameter()),
                                printed.cell(coving.kerf()),
                                Printed.figure(coving.angle(), 1),
                                Printed.figure(coving.thin().angle(), 1),
                                Cell.of(String.valueOf(coving.passes()), coving.passes()),
                                printed.cell(coving.circularRadius())))
                        .toList());
    }
}
