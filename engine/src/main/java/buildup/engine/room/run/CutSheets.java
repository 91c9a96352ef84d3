package buildup.engine.room.run;

import buildup.engine.room.run.Saw.Hand;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** Lengths round the corners, what is out of true, and coves over the table-saw blade, as sheets. */
public final class CutSheets {
    /** A piece on one stretch. */
    private record Row(Job job, Fit fit) {
        String run() {
            return job.runName(fit);
        }

        EndCut cut(Hand hand) {
            return fit.cut(hand);
        }
    }

    /** A piece round one run. */
    private record Round(String run, Course course, double sum) {}

    private CutSheets() {}

    /**
     * What is known of the cuts, in the order of a report.
     *
     * @param job absent when there is none; the columns are known all the same
     */
    public static List<Sheet> of(Optional<Job> job, List<Coving> covings) {
        return Stream.of(
                        Stream.of(lengths(job), rounds(job)),
                        SawSheets.of(job).stream(),
                        Stream.of(scribes(job), leans(job), shifts(job), coves(covings)))
                .flatMap(sheets -> sheets)
                .toList();
    }

    /** What to take care of. */
    public static List<Phrase> cautions(List<Coving> covings) {
        List<Phrase> cautions = new ArrayList<>(List.of(Phrase.of(Saw.CAUTION)));
        if (!covings.isEmpty()) {
            cautions.add(Coving.CAUTION);
        }
        return List.copyOf(cautions);
    }

    private static <T> List<T> all(Optional<Job> job, Function<Job, List<T>> rows) {
        return job.map(rows).orElse(List.of());
    }

    private static Sheet lengths(Optional<Job> job) {
        List<Row> rows = all(
                job, one -> one.fits().stream().map(fit -> new Row(one, fit)).toList());
        return Sheet.of("lengths", "LENGTHS", rows)
                .name("run", "run", Row::run)
                .name("course", "piece", row -> row.fit().course().name())
                .name("stretch", "stretch", row -> row.fit().stretch())
                .words("where", "stretch", row -> row.job().stretchName(row.fit()))
                .text()
                .saying("stock", "cut from", row -> row.fit().course().stock())
                .both()
                .length("wall", "wall", row -> row.fit().wall())
                .length("longPoint", "long to long", row -> row.fit().longPoint())
                .length("shortPoint", "short to short", row -> row.fit().shortPoint())
                .length("face", "along the face", row -> row.fit().faceLength())
                .length("back", "at the back", row -> row.fit().backLength())
                .fine("fromSquare", "added", row -> row.fit().fromSquare())
                .fine("fromPlumb", "added", row -> row.fit().fromPlumb())
                .flag("selfReturn", "return to its own wall", row -> row.fit().selfReturn())
                .wordsIf("grainGroup", "grain runs on in", row -> row.fit().grainGroup())
                .one("left", "left end", ", ", end(Hand.LEFT), Optional::of)
                .one("right", "right end", ", ", end(Hand.RIGHT), Optional::of)
                .table(
                        "LENGTHS along the stick: long points, short points, at the back; miter set-back: from the long"
                                + " point to the short point of one end",
                        "course",
                        "where",
                        "longPoint",
                        "shortPoint",
                        "back",
                        "left.heel",
                        "right.heel")
                .tableWhere(
                        List.of("fromSquare", "left.opensIfSquare", "right.opensIfSquare"),
                        "OUT OF SQUARE: what it adds to the length; how wide a miter opens if cut for square; reveals"
                                + " stay",
                        "course",
                        "where",
                        "fromSquare",
                        "left.opensIfSquare",
                        "right.opensIfSquare")
                .tableWhere(
                        List.of("fromPlumb"),
                        "OUT OF PLUMB: what a wall adds to the length of a piece",
                        "course",
                        "where",
                        "fromPlumb")
                .sheet();
    }

    private static Columns<Row> end(Hand hand) {
        return Columns.<Row>inner()
                .words("cut", "cut", row -> row.cut(hand).kind().word())
                .measure(
                        "corner", "corner", Quantity.ANGLE, row -> row.cut(hand).corner())
                .length(
                        "heel",
                        "miter set-back " + hand.word(),
                        row -> row.fit().heel(hand))
                .measure("miter", "miter", Quantity.ANGLE, row -> row.cut(hand).miter())
                .measure("bevel", "bevel", Quantity.ANGLE, row -> row.cut(hand).bevel())
                .fine("opensIfSquare", "opens " + hand.word(), row -> row.fit().gape(hand))
                .saying("how", "how", row -> row.cut(hand).words())
                .both()
                .measureIf(
                        "fenceMiter",
                        "miter against the fence",
                        Quantity.ANGLE,
                        Rounding.NEAREST,
                        row -> row.fit()
                                .nested(hand)
                                .map(setting -> OptionalDouble.of(setting.miter()))
                                .orElse(OptionalDouble.empty()))
                .sayingIf(
                        "fence",
                        "how against the fence",
                        row -> row.fit().nested(hand).map(Saw.Setting::words))
                .both();
    }

    private static Sheet rounds(Optional<Job> job) {
        return Sheet.of(
                        "rounds",
                        "EACH PIECE round its run, along its face, returns included",
                        all(job, CutSheets::roundsOf))
                .name("run", "run", Round::run)
                .name("course", "piece", round -> round.course().name())
                .saying("stock", "cut from", round -> round.course().stock())
                .both()
                .length("projection", "projection", round -> round.course().face())
                .length("sum", "total", Round::sum)
                .sheet();
    }

    private static List<Round> roundsOf(Job job) {
        List<Round> rounds = new ArrayList<>();
        for (int run = 0; run < job.plan().runs().size(); run++) {
            for (Course course : job.courses()) {
                rounds.add(new Round(job.plan().runs().get(run).name(), course, job.faceLength(run, course.body())));
            }
        }
        return rounds;
    }

    private static Sheet scribes(Optional<Job> job) {
        return Sheet.of(
                        "scribes",
                        Phrase.of(
                                        "ENDS AT A WALL: leave them long and scribe; back-cut {angle} (shop practice), so that"
                                                + " the face alone meets the wall")
                                .with("angle", Figure.angle(Saw.BACK_CUT).rounded(Rounding.decimals(0))),
                        all(job, CutSheets::scribed))
                .name("course", "piece", Course::name)
                .length("shorter", "the back is shorter by", course -> Saw.backCut(course.thickness()))
                .sheet();
    }

    private static List<Course> scribed(Job job) {
        TreeSet<Integer> bodies = new TreeSet<>();
        job.fits().stream()
                .filter(fit -> fit.course().trim() && (fit.meetsWall(Hand.LEFT) || fit.meetsWall(Hand.RIGHT)))
                .forEach(fit -> bodies.add(fit.course().body()));
        return job.courses().stream()
                .filter(course -> bodies.contains(course.body()))
                .toList();
    }

    private static Sheet leans(Optional<Job> job) {
        record LeanRow(Job job, Lean lean) {}
        List<LeanRow> rows = all(
                job,
                one -> one.leans().stream().map(lean -> new LeanRow(one, lean)).toList());
        return Sheet.of("leans", "OUT OF PLUMB: how far the wall comes forward behind a piece", rows)
                .name("run", "run", row -> row.lean().run())
                .name("stretch", "stretch", row -> row.lean().stretch())
                .name(
                        "course",
                        "piece",
                        row -> row.job().section().name(row.lean().body()))
                .fine("atBottom", "at its bottom", row -> row.lean().atBottom())
                .fine("atTop", "at its top", row -> row.lean().atTop())
                .table(
                        "OUT OF PLUMB: how far the wall comes forward behind a piece",
                        "stretch",
                        "course",
                        "atBottom",
                        "atTop")
                .sheet();
    }

    private static Sheet shifts(Optional<Job> job) {
        record ShiftRow(Job job, RevealShift shift) {}
        List<ShiftRow> rows = all(
                job,
                one -> one.shifts().stream()
                        .map(shift -> new ShiftRow(one, shift))
                        .toList());
        return Sheet.of("revealShifts", "REVEALS on a wall out of plumb", rows)
                .name("run", "run", row -> row.shift().run())
                .name("stretch", "stretch", row -> row.shift().stretch())
                .name(
                        "piece",
                        "piece",
                        row -> row.job().section().name(row.shift().piece()))
                .name(
                        "over",
                        "over",
                        row -> row.job().section().name(row.shift().over()))
                .fine("amount", "drawn", row -> row.shift().amount())
                .fine("change", "change", row -> row.shift().change())
                .fine(
                        "becomes",
                        "becomes",
                        row -> row.shift().amount() + row.shift().change())
                .text()
                .tableWhere(
                        List.of("change"),
                        "REVEALS on a wall out of plumb, when each piece is set to the wall",
                        "stretch",
                        "piece",
                        "over",
                        "amount",
                        "becomes")
                .sheet();
    }

    /** Coves over the table-saw blade; asked without a plan too. */
    public static Sheet coves(List<Coving> covings) {
        return Sheet.of("coves", "COVES over the table-saw blade", covings)
                .name("name", "cove", Coving::name)
                .length("width", "width", Coving::width)
                .length("depth", "depth", Coving::depth)
                .length("blade", "blade", Coving::diameter)
                .length("kerf", "kerf", Coving::kerf)
                .measure("fenceAngle", "fence", Quantity.ANGLE, Coving::angle)
                .measure(
                        "fenceAngleThin",
                        "no kerf",
                        Quantity.ANGLE,
                        coving -> coving.thin().angle())
                .count("passes", "passes", Coving::passes)
                .length("bottomRadius", "radius at the bottom", Coving::bottomRadius)
                .length("circularRadius", "radius", Coving::circularRadius)
                .measure("area", "area", Quantity.AREA, Coving::area)
                .table(
                        Phrase.of(
                                        "COVES over the table-saw blade: degrees of the fence from the blade; passes of {pass}")
                                .with("pass", Coving.aPass()),
                        "name",
                        "width",
                        "depth",
                        "blade",
                        "kerf",
                        "fenceAngle",
                        "fenceAngleThin",
                        "passes",
                        "circularRadius")
                .sheet();
    }
}
