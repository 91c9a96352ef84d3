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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    private final Share share;
    private final Map<Lot, Kind> only;
    private final Notices notices = new Notices();
    private final Map<Kind, Integer> taken = new HashMap<>();
    private final Map<Kind, List<Boards.Own>> strips = new LinkedHashMap<>();
    private final List<LotPlan> plans = new ArrayList<>();

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
     * @param share what of a board's price a strip is charged
     * @param only for some lots the one kind of stick that may be bought
     */
    StickLayout(Shop shop, LotSolver desk, BoardGroup group, Share share, Map<Lot, Kind> only) {
        this.shop = shop;
        this.desk = desk;
        this.group = group;
        this.share = share;
        this.only = only;
    }

    /**
     * What a group takes.
     *
     * @param sticks boards filled with strips side by side
     */
    record Laid(List<LotPlan> plans, List<Stick> sticks, List<Notice> notices) {
        Laid {
            plans = List.copyOf(plans);
            sticks = List.copyOf(sticks);
            notices = List.copyOf(notices);
        }

        long missing() {
            return sticks.stream()
                    .filter(stick -> stick.origin() == Origin.MISSING)
                    .count();
        }

        boolean ripped() {
            return plans.stream().anyMatch(LotPlan::ripped);
        }
    }

    Laid lay() {
        group.lots().forEach(this::lay);
        return new Laid(plans, sticks(), notices.sorted());
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
        used.forEach((kind, count) ->
                taken.merge(kind, divided(count, rip(lot, kind.supply()).each()), Integer::sum));
        plans.add(plan(lot, aim, plan, used.containsKey(longest(lot))));
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
        for (Supply supply : lot.source().supplies()) {
            Rip rip = rip(lot, supply);
            supply.lying().forEach((length, count) -> {
                Kind kind = new Kind(supply, length, Origin.ON_HAND);
                offers.add(new Offer(kind, rip.each() * (count - taken.getOrDefault(kind, 0)), 0));
            });
            for (int length : supply.buy()) {
                Kind kind = new Kind(supply, length, Origin.BOUGHT);
                if (only.getOrDefault(lot, kind).equals(kind)) {
                    long price = aim == Aim.CHEAPEST ? supply.price(length) : ONE_STICK;
                    offers.add(new Offer(kind, StickProblem.NO_END, share.charge(rip, price)));
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
        long over = Math.min(plan.price() - plan.leastPrice(), Math.max(1, plan.price() % MISSING));
        return new LotPlan(
                lot.source().name(),
                lot.wood(),
                lot.source().strip(),
                lot.source().supplies().stream()
                        .anyMatch(supply -> shop.grid().offered(supply.width())
                                > lot.source().strip() + LengthSteps.SIXTY_FOURTH),
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
