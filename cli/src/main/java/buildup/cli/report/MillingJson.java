package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.engine.mill.milling.Corner;
import buildup.engine.mill.milling.Groove;
import buildup.engine.mill.milling.Hollow;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Pass;
import buildup.engine.mill.milling.Passes;
import buildup.engine.mill.milling.Reached;
import buildup.engine.mill.milling.Side;
import buildup.engine.mill.milling.Undercut;
import buildup.profiles.outline.Point;
import java.util.List;

/** What the mill knows of a profile, as an object; places are on the stick as it is run. */
final class MillingJson {
    private MillingJson() {}

    static Json of(Milled milled) {
        Json json = new Json()
                .put("width", milled.stick().box().width())
                .put("height", milled.stick().box().height())
                .put(
                        "reach",
                        milled.reached().stream().map(MillingJson::reached).toList())
                .put(
                        "undercuts",
                        milled.undercuts().stream().map(MillingJson::undercut).toList())
                .put(
                        "corners",
                        milled.corners().stream().map(MillingJson::corner).toList())
                .put(
                        "hollows",
                        milled.hollows().stream().map(MillingJson::hollow).toList())
                .put(
                        "grooves",
                        milled.grooves().stream().map(MillingJson::groove).toList());
        milled.passes().ifPresent(passes -> passes(json, passes, milled));
        milled.knife().ifPresent(knife -> json.put("knife", knife(knife)));
        return json;
    }

    private static Json reached(Reached part) {
        return new Json()
                .put("member", part.member())
                .put("from", part.segment().from())
                .put("to", part.segment().to())
                .texts("sides", part.sides().stream().map(Side::word).toList());
    }

    private static Json undercut(Undercut undercut) {
        Json json = new Json()
                .put("from", undercut.from())
                .put("to", undercut.to())
                .put("area", undercut.area())
                .texts("passes", undercut.passes().stream().map(Side::word).toList());
        undercut.tilt().ifPresent(tilt -> json.put("tilt", tilt.degrees()));
        return json;
    }

    private static Json corner(Corner corner) {
        return new Json()
                .put("at", corner.at())
                .put("angle", corner.degrees())
                .put("radius", corner.radius())
                .put("left", corner.left());
    }

    private static Json hollow(Hollow hollow) {
        return new Json()
                .put("member", hollow.member())
                .put("radius", hollow.radius())
                .put("largestCutter", hollow.largest());
    }

    private static Json groove(Groove groove) {
        return new Json()
                .put("member", groove.member())
                .put("width", groove.width())
                .put("depth", groove.depth())
                .put("behind", groove.behind())
                .put("beside", groove.beside());
    }

    private static void passes(Json json, Passes passes, Milled milled) {
        json.put(
                        "passes",
                        passes.inOrder().stream()
                                .map(pass -> pass(pass, milled))
                                .toList())
                .put("runs", passes.runs())
                .put("fewest", passes.proven())
                .put(
                        "unmade",
                        passes.unmade().stream()
                                .map(unmade -> new Json()
                                        .put("member", unmade.member())
                                        .put("from", unmade.segment().from())
                                        .put("to", unmade.segment().to()))
                                .toList())
                .put("left", passes.leftArea());
    }

    private static Json pass(Pass pass, Milled milled) {
        return new Json()
                .put("cutter", pass.cutter())
                .put("side", pass.side().word())
                .put("runs", pass.times())
                .put("depth", pass.depth())
                .put("fence", pass.fence())
                .put("fenceOn", pass.fencedByBack() ? "back" : "bottom")
                .put("through", pass.through())
                .texts(
                        "makes",
                        pass.makes().stream()
                                .map(stretch -> milled.stick()
                                        .outline()
                                        .strokes()
                                        .get(stretch.stroke())
                                        .member())
                                .distinct()
                                .toList());
    }

    private static Json knife(Knife knife) {
        Json json = new Json().put("head", knife.head().name()).put("width", knife.width());
        knife.stock().ifPresent(stock -> json.put("stock", stock.toInches()));
        List<Json> edge = knife.edge().stream().map(MillingJson::place).toList();
        return json.put("woodDepth", knife.woodDepth())
                .put("depth", knife.depth())
                .put("marks", knife.marks())
                .put("scallop", knife.scallop())
                .put("edge", edge);
    }

    private static Json place(Point p) {
        return new Json().put("across", p.x()).put("back", -p.y());
    }
}
