package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.engine.run.Coving;
import buildup.engine.run.EndCut;
import buildup.engine.run.Fit;
import buildup.engine.run.Job;
import buildup.engine.run.Saw;
import buildup.engine.run.Saw.Hand;
import java.util.List;
import java.util.Optional;

/** Lengths round the corners and settings of the saw as JSON rows: decimal inches and degrees. */
public final class CutJson {
    private CutJson() {}

    /** Puts the lists {@code lengths}, {@code leans}, {@code revealShifts} and {@code coves}. */
    public static Json put(Json json, Job job, List<Coving> covings) {
        return json.put(
                        "lengths",
                        job.fits().stream().map(fit -> length(job, fit)).toList())
                .put(
                        "leans",
                        job.leans().stream()
                                .map(lean -> new Json()
                                        .put("run", lean.run())
                                        .put("stretch", lean.stretch())
                                        .put("course", job.section().name(lean.body()))
                                        .put("atBottom", lean.atBottom())
                                        .put("atTop", lean.atTop()))
                                .toList())
                .put(
                        "revealShifts",
                        job.shifts().stream()
                                .map(shift -> new Json()
                                        .put("run", shift.run())
                                        .put("stretch", shift.stretch())
                                        .put("piece", job.section().name(shift.piece()))
                                        .put("over", job.section().name(shift.over()))
                                        .put("amount", shift.amount())
                                        .put("change", shift.change()))
                                .toList())
                .put("coves", coves(covings));
    }

    private static Json length(Job job, Fit fit) {
        Printed printed = new Printed(job.section().stack().lengths().bareUnit());
        return new Json()
                .put("run", job.plan().runs().get(fit.run()).name())
                .put("course", fit.course().name())
                .put("stretch", fit.stretch())
                .put("stock", printed.words(fit.course().stock()))
                .put("wall", fit.wall())
                .put("longPoint", fit.longPoint())
                .put("shortPoint", fit.shortPoint())
                .put("face", fit.faceLength())
                .put("back", fit.backLength())
                .put("fromSquare", fit.fromSquare())
                .put("fromPlumb", fit.fromPlumb())
                .put("selfReturn", fit.selfReturn())
                .put("grainGroup", fit.grainGroup())
                .put("left", end(fit, Hand.LEFT, printed))
                .put("right", end(fit, Hand.RIGHT, printed));
    }

    private static Json end(Fit fit, Hand hand, Printed printed) {
        EndCut cut = fit.cut(hand);
        Optional<Saw.Setting> nested = fit.nested(hand);
        Json json = new Json()
                .put("cut", CutTables.kind(cut))
                .put("corner", cut.corner())
                .put("heel", fit.heel(hand))
                .put("miter", cut.miter())
                .put("bevel", cut.bevel())
                .put("opensIfSquare", fit.gape(hand))
                .put("how", printed.words(cut.words()));
        return nested.isEmpty()
                ? json
                : json.put("fenceMiter", nested.get().miter())
                        .put("fence", printed.words(nested.get().words()));
    }

    static List<Json> coves(List<Coving> covings) {
        return covings.stream()
                .map(coving -> new Json()
                        .put("name", coving.name())
                        .put("width", coving.width())
                        .put("depth", coving.depth())
                        .put("blade", coving.diameter())
                        .put("kerf", coving.kerf())
                        .put("fenceAngle", coving.angle())
                        .put("fenceAngleThin", coving.thin().angle())
                        .put("passes", coving.passes())
                        .put("bottomRadius", coving.bottomRadius())
                        .put("circularRadius", coving.circularRadius())
                        .put("area", coving.area()))
                .toList();
    }
}
