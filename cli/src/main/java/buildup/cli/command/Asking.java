package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.cli.report.Answer;
import buildup.engine.backing.Backings;
import buildup.engine.compose.Composer;
import buildup.engine.compose.Section;
import buildup.engine.fixing.Fastening;
import buildup.engine.fixing.Fixed;
import buildup.engine.fixing.Fixing;
import buildup.engine.light.Lighting;
import buildup.engine.light.Lights;
import buildup.engine.placing.Placed;
import buildup.engine.run.Coving;
import buildup.engine.run.Plan;
import buildup.engine.run.Runs;
import buildup.engine.sight.Approaches;
import buildup.engine.sight.Eyes;
import buildup.engine.sight.Sighting;
import buildup.engine.stack.Light;
import buildup.engine.stack.Stack;
import buildup.engine.sticks.Shop;
import buildup.engine.support.Loads;
import buildup.engine.support.Pulls;
import buildup.engine.support.Support;
import buildup.engine.support.Supports;
import buildup.engine.support.Ties;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/**
 * The questions of one run, in their order; each has read its own block of the document before any is answered, so that
 * all that is wrong with the document is said at once.
 */
final class Asking {
    private final Stack stack;
    private final Catalog catalog;
    private final Notices notices;
    private final List<Approaches.Way> ways;
    private final List<Fastening> fastenings;
    private final boolean nailing;
    private final List<Loads.Wanted> loads;
    private final Plan plan;
    private final List<Coving> covings;
    private final Optional<Shop> shop;

    /** @param root the document, read with the stack's lengths */
    Asking(Stack stack, Catalog catalog, Fields root, Notices notices) {
        this.stack = stack;
        this.catalog = catalog;
        this.notices = notices;
        this.ways = Approaches.read(stack, root, notices);
        this.nailing = root.has("fastenings");
        this.fastenings = Fixing.read(stack, root, catalog, notices);
        this.loads = Loads.read(stack, root, notices);
        this.plan = Plan.read(stack, root, notices);
        this.covings = Coving.read(stack, root, notices);
        this.shop = Shop.read(stack, root, catalog, notices);
    }

    /** @param lights to shine in place of those of the stack */
    Answer.Known about(List<Placed> placed, Optional<List<Light>> lights) {
        boolean fastened = !fastenings.isEmpty();
        Section shape =
                fastened ? Composer.composeFastened(stack, placed, notices) : Composer.compose(stack, placed, notices);
        List<Lighting> lit = Lights.of(shape, lights.orElse(stack.lights()), notices);
        List<Sighting> seen = Eyes.of(shape, notices);
        List<Fixed> fixed = Fixing.of(shape, fastenings, lit, seen, catalog, notices);
        Section section = fastened ? shape.heldBy(Ties.heldToStanding(shape, fixed), notices) : shape;
        Support support = Supports.of(section, loads, Ties.of(fixed), notices);
        return new Answer.Known(
                section,
                Backings.of(section, notices),
                lit,
                seen,
                Approaches.of(section, ways, notices),
                fixed,
                // a search: run for whoever has come to the nails, also with an empty list of them
                nailing ? Fixing.propose(section, lit, seen, catalog) : List.of(),
                support,
                Pulls.of(section, support, fixed, notices),
                plan.isEmpty() ? Optional.empty() : Optional.of(Runs.of(section, plan, notices)),
                covings,
                shop,
                catalog);
    }
}
