package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.buy.SupplyWishReader;
import buildup.engine.buy.SupplyWishes;
import buildup.engine.buy.WasteWish;
import buildup.engine.hold.fixing.Fixing;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.order.BenchUnits;
import buildup.engine.hold.season.Season;
import buildup.engine.hold.season.Seasons;
import buildup.engine.hold.support.Friction;
import buildup.engine.hold.support.Loads;
import buildup.engine.hold.tolerance.ErrorSettings;
import buildup.engine.hold.tolerance.Tolerances;
import buildup.engine.judge.clearance.KeepingClear;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.proportion.ProportionWish;
import buildup.engine.judge.proportion.Proportions;
import buildup.engine.look.sight.Approaches;
import buildup.engine.mill.template.Templates;
import buildup.engine.room.plan.Plan;
import buildup.engine.room.run.Coving;
import buildup.engine.room.stock.Shop;
import buildup.engine.section.heading.JobSheet;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The blocks of a document that questions have read for themselves. All are read before any question is answered, so
 * that all that is wrong with the document is said at once.
 *
 * @param keys that the document holds at its root
 * @param waste share of the lengths of sticks that is bought over them
 * @param nailing whether the document speaks of fastenings, also of none
 */
record Blocks(
        Stack stack,
        Catalog catalog,
        List<Approaches.Route> ways,
        boolean nailing,
        List<Fastening> fastenings,
        List<Loads.Wanted> loads,
        OptionalDouble friction,
        List<BenchUnits.Joined> bench,
        Plan plan,
        List<Coving> covings,
        Optional<Shop> shop,
        SupplyWishes supplies,
        Optional<Double> waste,
        List<Season> seasons,
        ErrorSettings errors,
        KeepingClear.Wanted clear,
        ProportionWish proportion,
        List<Scalar> must,
        List<Scalar> wish,
        JobSheet heading,
        Templates templates,
        Set<String> keys) {
    Blocks {
        ways = List.copyOf(ways);
        fastenings = List.copyOf(fastenings);
        loads = List.copyOf(loads);
        bench = List.copyOf(bench);
        covings = List.copyOf(covings);
        seasons = List.copyOf(seasons);
        must = List.copyOf(must);
        wish = List.copyOf(wish);
        keys = Set.copyOf(keys);
    }

    Fixing.Rows rows() {
        return new Fixing.Rows(
                fastenings, bench.stream().map(BenchUnits.Joined::pieces).toList());
    }

    private static Set<String> keys(Fields root) {
        return root.mapping().entries().stream()
                .map(entry -> entry.key().text())
                .collect(Collectors.toSet());
    }

    /** @param root the document, read with the lengths of the stack */
    static Blocks read(Stack stack, Catalog catalog, Fields root, Notices notices) {
        Plan plan = Plan.read(stack, root, notices);
        List<String> pieces = stack.pieces().stream().map(Piece::name).toList();
        return new Blocks(
                stack.onMasonry(plan.onMasonry(pieces)),
                catalog,
                Approaches.read(stack, root, notices),
                root.has("fastenings"),
                Fixing.read(stack, root, catalog, notices),
                Loads.read(stack, root, notices),
                Friction.read(root, notices),
                BenchUnits.read(stack, root, notices),
                plan,
                Coving.read(stack, root, notices),
                Shop.read(stack, root, catalog, notices),
                SupplyWishReader.read(stack, root, catalog, notices),
                WasteWish.read(root, catalog, notices),
                Seasons.read(stack, root, notices),
                Tolerances.read(stack, root, notices),
                KeepingClear.read(stack, root, catalog, notices),
                Proportions.read(stack, root, catalog, notices),
                Musts.lines(root),
                Musts.wishLines(root),
                JobSheet.read(root),
                Templates.read(root, catalog, stack.lengths(), stack.boardList(), notices),
                keys(root));
    }
}
