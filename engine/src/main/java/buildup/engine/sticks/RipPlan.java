package buildup.engine.sticks;

import buildup.engine.sticks.Shop.Aim;
import buildup.engine.sticks.Stick.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Boards of one thickness that are ripped: how far the two stages together can be from the best. The strips of each lot
 * are laid out by themselves, then boards are filled with strips; another way to mix them may take less. No way takes
 * less wood than the pieces hold.
 *
 * @param over how much more this may take than any other way: hundredths when the aim is the price, else boards bought
 */
public record RipPlan(double thickness, String wood, Aim aim, long over) {
    /** One for each thickness and wood of which something is ripped and nothing is missing. */
    static List<RipPlan> of(List<Lot> lots, List<LotPlan> plans, List<Stick> sticks) {
        List<RipPlan> rips = new ArrayList<>();
        List<Integer> ripped = IntStream.range(0, lots.size())
                .filter(i -> plans.get(i).ripped())
                .boxed()
                .toList();
        TreeSet<String> seen = new TreeSet<>();
        for (int i : ripped) {
            Supply board = lots.get(i).source().supplies().get(0);
            if (seen.add(board.thickness() + " " + board.wood())) {
                List<Integer> alike = IntStream.range(0, lots.size())
                        .filter(j ->
                                alike(board, lots.get(j).source().supplies().get(0)))
                        .boxed()
                        .toList();
                if (alike.stream().noneMatch(j -> plans.get(j).missing())) {
                    rips.add(of(
                            board,
                            alike.stream().map(lots::get).toList(),
                            alike.stream().allMatch(j -> plans.get(j).aim() == Aim.CHEAPEST),
                            sticks.stream()
                                    .filter(stick -> alike(board, stick.supply()))
                                    .toList()));
                }
            }
        }
        return rips;
    }

    private static boolean alike(Supply a, Supply b) {
        return a.board()
                && b.board()
                && a.wood().equals(b.wood())
                && Fine.offered(a.thickness()) == Fine.offered(b.thickness());
    }

    private static RipPlan of(Supply board, List<Lot> lots, boolean cheapest, List<Stick> sticks) {
        List<Supply> supplies = lots.stream()
                .flatMap(lot -> lot.source().supplies().stream())
                .distinct()
                .toList();
        double lying = supplies.stream()
                .flatMap(supply ->
                        supply.onHand().stream().map(own -> supply.width() * Fine.inches(own.length()) * own.count()))
                .mapToDouble(area -> area)
                .sum();
        double wanted = lots.stream().mapToDouble(RipPlan::area).sum();
        double toBuy = Math.max(0, wanted - lying);
        long bought =
                sticks.stream().filter(stick -> stick.origin() == Origin.BOUGHT).count();
        long price = sticks.stream().mapToLong(Stick::price).sum();
        double share = supplies.stream()
                .flatMap(supply -> supply.buy().stream()
                        .map(length -> (cheapest ? supply.price(length) : 1) / (supply.width() * Fine.inches(length))))
                .mapToDouble(each -> each)
                .min()
                .orElse(0);
        // a whole number of hundredths or of boards; what the last digits of a sum may be off is let go
        long least = (long) Math.ceil(toBuy * share - 1e-6);
        return new RipPlan(
                board.thickness(),
                board.wood(),
                cheapest ? Aim.CHEAPEST : Aim.FEWEST,
                Math.max(0, (cheapest ? price : bought) - least));
    }

    private static double area(Lot lot) {
        return Fine.inches(lot.source().strip())
                * lot.bundles().stream()
                        .flatMap(bundle -> bundle.pieces().stream())
                        .mapToDouble(piece -> Fine.inches(piece.length()))
                        .sum();
    }
}
