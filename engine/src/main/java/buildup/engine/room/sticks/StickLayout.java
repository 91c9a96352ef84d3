package buildup.engine.room.sticks;

import buildup.engine.room.sticks.Share.Rip;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.Stick.Origin;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.Supply;
import buildup.engine.solve.StickPlan;
import buildup.engine.solve.StickProblem;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Lays the lots of a group out on sticks, one after another: what one has taken from the shop's own wood the next cannot
 * have.
 */
final class StickLayout {
    /** What a missing stick is taken to cost, so that none is missing where any other way is left: hundredths. */
    private static final long MISSING = 100_000_000;

    /** What a bought stick counts when the number of sticks is to be least; strips of a board share it. */
    private static final long ONE_STICK = 1000;

    private final Shop shop;
    private final LotSolver desk;
    private final BoardGroup group;
    private final Way way;
    private final Notices notices = new Notices();
    private final Map<Kind, Integer> taken = new HashMap<>();
    private final Map<Kind, List<Boards.Own>> strips = new LinkedHashMap<>();
    private final IdentityHashMap<Lot, LotPlan> plans = new IdentityHashMap<>();

    /**
     * Sticks or boards that are alike.
     *
     * @param length of the whole stick, {@link LengthSteps}
     */
    record Kind(Supply supply, int length, Origin origin) {
        /** Asked thousands of times: of a supply the name is enough to tell most kinds apart. */
        @Override
        public int hashCode() {
            return 31 * supply.name().hashCode() + length;
        }
    }

    /** A kind as a lot sees it: so many strips in all, at such a price each. */
    private record Offer(Kind kind, int most, long price) {}

    /**
     * A way to lay lots out.
     *
     * @param share what of a board's price a strip is charged
     * @param onHand part of its worth by length that a strip on hand is charged
     * @param avoided lengths that are not bought
     * @param spared for some lots the lengths that are not bought for them
     * @param order in which lots choose from what is on hand
     * @param gaps for some lots the strips that find room, free of charge, on boards that others take
     */
    record Way(
            Share share,
            double onHand,
            Set<Integer> avoided,
            IdentityHashMap<Lot, Set<Integer>> spared,
            List<Lot> order,
            IdentityHashMap<Lot, Map<Kind, Integer>> gaps) {
        Map<Kind, Integer> gaps(Lot lot) {
            return gaps.getOrDefault(lot, Map.of());
        }

        Way with(Share other) {
            return new Way(other, onHand, avoided, spared, order, gaps);
        }

        Way with(IdentityHashMap<Lot, Map<Kind, Integer>> other) {
            return new Way(share, onHand, avoided, spared, order, other);
        }

        /** One lot, by its place, before all others. */
        Way with(double charged, int first) {
            List<Lot> others = new ArrayList<>(order);
            others.add(0, others.remove(first));
            return new Way(share, charged, avoided, spared, others, gaps);
        }

        boolean buys(Lot lot, int length) {
            return !avoided.contains(length)
                    && !spared.getOrDefault(lot, Set.of()).contains(length);
        }

        /** A length that is bought for others alone. */
        Way without(Lot lot, int length) {
            IdentityHashMap<Lot, Set<Integer>> all = new IdentityHashMap<>(spared);
            Set<Integer> own = new TreeSet<>(all.getOrDefault(lot, Set.of()));
            own.add(length);
            all.put(lot, own);
            return new Way(share, onHand, avoided, all, order, gaps);
        }

        Way without(int length) {
            Set<Integer> all = new TreeSet<>(avoided);
            all.add(length);
            return new Way(share, onHand, all, spared, order, gaps);
        }
    }

    StickLayout(Shop shop, LotSolver desk, BoardGroup group, Way way) {
        this.shop = shop;
        this.desk = desk;
        this.group = group;
        this.way = way;
    }

    /**
     * What a group takes.
     *
     * @param way how it was laid out
     * @param sticks boards filled with strips side by side
     */
    record Laid(Way way, List<LotPlan> plans, List<Stick> sticks, List<Notice> notices) {
        Laid {
            plans = List.copyOf(plans);
            sticks = List.copyOf(sticks);
            notices = List.copyOf(notices);
        }

        /** How many are missing, and how many more of those on hand are taken than there are. */
        long missing() {
            Map<Kind, Integer> lying = new HashMap<>();
            long missing = 0;
            for (Stick stick : sticks) {
                Kind kind = new Kind(stick.supply(), stick.length(), stick.origin());
                boolean more = stick.origin() == Origin.ON_HAND
                        && lying.merge(kind, 1, Integer::sum)
                                > stick.supply().lying().getOrDefault(stick.length(), 0);
                missing += more || stick.origin() == Origin.MISSING ? 1 : 0;
            }
            return missing;
        }
    }

    Laid lay() {
        way.order().forEach(this::lay);
        return new Laid(way, group.lots().stream().map(plans::get).toList(), sticks(), notices.sorted());
    }

    private void lay(Lot lot) {
        Aim aim = aim(lot);
        StripLayout layout = group.layout(lot);
        List<Offer> offers = new ArrayList<>(offers(lot, aim));
        Optional<StickPlan> found = plan(lot, offers);
        if (found.isEmpty() || found.get().price() >= MISSING) {
            offers.add(new Offer(longest(lot), StickProblem.NO_END, MISSING));
            found = plan(lot, offers);
        }
        StickPlan plan = found.orElseThrow();
        Map<Kind, Integer> used = new LinkedHashMap<>();
        for (StickPlan.CutUp cutUp : plan.sticks()) {
            Kind kind = layout.shortest(offers.get(cutUp.kind()).kind(), cutUp.pieces(), aim);
            used.merge(kind, 1, Integer::sum);
            strips.computeIfAbsent(kind, key -> new ArrayList<>()).add(layout.own(kind, cutUp.pieces()));
        }
        used.forEach((kind, count) -> {
            int whole = Math.max(0, count - way.gaps(lot).getOrDefault(kind, 0));
            taken.merge(kind, divided(whole, rip(lot, kind.supply()).each()), Integer::sum);
        });
        plans.put(lot, plan(lot, aim, plan, used.containsKey(longest(lot))));
    }

    private Optional<StickPlan> plan(Lot lot, List<Offer> offers) {
        return desk.remembered(lot, List.copyOf(offers), () -> planned(lot, offers));
    }

    /** The plan of what just fits, if it comes out of the saw; else that of what surely fits. */
    private Optional<StickPlan> planned(Lot lot, List<Offer> offers) {
        StripLayout layout = group.layout(lot);
        return desk.plan(problem(lot, offers, true))
                .filter(plan -> plan.sticks().stream()
                        .allMatch(cutUp -> layout.fits(offers.get(cutUp.kind()).kind(), cutUp.pieces())))
                .or(() -> desk.plan(problem(lot, offers, false)));
    }

    private StickProblem problem(Lot lot, List<Offer> offers, boolean exact) {
        return group.layout(lot)
                .nesting()
                .problem(
                        offers.stream()
                                .map(offer -> new StickProblem.Stick(
                                        shop.usable(offer.kind().length()), offer.price(), offer.most()))
                                .toList(),
                        exact);
    }

    private static Kind longest(Lot lot) {
        Supply longest = lot.source().supplies().stream()
                .max(Comparator.comparingInt(Supply::longest))
                .orElseThrow();
        return new Kind(longest, longest.longest(), Origin.MISSING);
    }

    private Aim aim(Lot lot) {
        if (!lot.priced() && shop.aim().equals(Optional.of(Aim.CHEAPEST))) {
            notices.add(StickNotices.PRICE_MISSING.with("stock", lot.source().name()));
        }
        return lot.aim(shop);
    }

    private List<Offer> offers(Lot lot, Aim aim) {
        List<Offer> offers = new ArrayList<>();
        way.gaps(lot).forEach((kind, count) -> offers.add(new Offer(kind, count, 0)));
        for (Supply supply : lot.source().supplies()) {
            Rip rip = rip(lot, supply);
            supply.lying().forEach((length, count) -> {
                Kind kind = new Kind(supply, length, Origin.ON_HAND);
                offers.add(new Offer(kind, rip.each() * (count - taken.getOrDefault(kind, 0)), (long)
                        (way.onHand() * way.share().worth(length))));
            });
            for (int length : supply.buy()) {
                if (way.buys(lot, length)) {
                    long price = aim == Aim.CHEAPEST ? supply.price(length) : ONE_STICK;
                    offers.add(new Offer(
                            new Kind(supply, length, Origin.BOUGHT),
                            StickProblem.NO_END,
                            way.share().charge(rip, length, price)));
                }
            }
        }
        return offers;
    }

    private Rip rip(Lot lot, Supply supply) {
        return Rip.of(lot.source().strip(), shop.grid().offered(supply.width()), shop.ripKerf());
    }

    private static int divided(int count, int each) {
        return (count + each - 1) / each;
    }

    private LotPlan plan(Lot lot, Aim aim, StickPlan plan, boolean missing) {
        // what is missing is counted by itself: it has no price
        long whole = Math.min(plan.price() - plan.leastPrice(), Math.max(1, plan.price() % MISSING));
        // of a board that is ripped, what is given away is at most its strip's part
        long each = lot.source().supplies().stream()
                .mapToLong(supply -> rip(lot, supply).each())
                .max()
                .orElse(1);
        long over = way.share() instanceof Share.ByLength ? (whole + each - 1) / each : whole;
        return new LotPlan(
                lot.source().name(),
                lot.wood(),
                lot.source().strip(),
                BoardGroup.ripped(lot, shop),
                lot.pieces(),
                plan.sticks().size(),
                aim,
                aim == Aim.CHEAPEST ? over : (over + ONE_STICK - 1) / ONE_STICK,
                missing,
                plan.ended(),
                plan.steps());
    }

    private List<Stick> sticks() {
        List<Stick> sticks = new Boards(shop, desk, group).sticks(strips);
        strips.keySet().stream()
                .filter(kind -> kind.origin() == Origin.MISSING)
                .forEach(kind -> missing(kind, (int) sticks.stream()
                        .filter(stick -> stick.origin() == Origin.MISSING
                                && stick.supply().equals(kind.supply())
                                && stick.length() == kind.length())
                        .count()));
        return sticks;
    }

    private void missing(Kind kind, int count) {
        notices.add((count == 1 ? StickNotices.ONE_MISSING : StickNotices.SEVERAL_MISSING)
                .with("stock", kind.supply().name())
                .with("count", Figure.count(count))
                .with("length", LengthSteps.stick(kind.length()))
                .at(kind.supply().mark())
                .cure(kind.supply().buy().isEmpty() ? StickNotices.ADD_BUY : StickNotices.BUY_ONE));
    }
}
