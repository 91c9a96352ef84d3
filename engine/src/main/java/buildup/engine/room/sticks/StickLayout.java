package buildup.engine.room.sticks;

import buildup.engine.room.sticks.Share.Rip;
import buildup.engine.room.stock.EndJoint;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.Stick.Origin;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.StickPiece;
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
    private final Map<Kind, List<Stick.Strip>> strips = new LinkedHashMap<>();
    private final List<LotPlan> plans = new ArrayList<>();

    /**
     * Sticks or boards that are alike.
     *
     * @param length of the whole stick, {@link LengthSteps}
     */
    record Kind(Supply supply, int length, Origin origin) {}

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
        this.only = Map.copyOf(only);
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
        List<Offer> offers = new ArrayList<>(offers(lot, aim));
        Optional<StickPlan> found = plan(lot, offers);
        if (found.isEmpty() || found.get().price() >= MISSING) {
            offers.add(new Offer(longest(lot), StickProblem.NO_END, MISSING));
            found = plan(lot, offers);
        }
        StickPlan plan = found.orElseThrow();
        Map<Kind, Integer> used = new LinkedHashMap<>();
        for (StickPlan.CutUp cutUp : plan.sticks()) {
            List<Bundle> bundles =
                    cutUp.pieces().stream().map(lot.bundles()::get).toList();
            Kind kind = shortest(lot, offers.get(cutUp.kind()).kind(), bundles, aim);
            used.merge(kind, 1, Integer::sum);
            strips.computeIfAbsent(kind, key -> new ArrayList<>()).add(strip(lot, kind, bundles));
        }
        used.forEach((kind, count) ->
                taken.merge(kind, divided(count, rip(lot, kind.supply()).each()), Integer::sum));
        plans.add(plan(lot, aim, plan, used.containsKey(longest(lot))));
    }

    /** The plan of what just fits, if it comes out of the saw; else that of what surely fits. */
    private Optional<StickPlan> plan(Lot lot, List<Offer> offers) {
        Nesting nesting = new Nesting(lot, shop);
        return desk.plan(problem(lot, offers, true))
                .filter(plan -> plan.sticks().stream().allMatch(cutUp -> {
                    List<Bundle> bundles =
                            cutUp.pieces().stream().map(lot.bundles()::get).toList();
                    int usable = shop.usable(offers.get(cutUp.kind()).kind().length());
                    return nesting.taken(nesting.order(bundles, usable)) <= usable;
                }))
                .or(() -> desk.plan(problem(lot, offers, false)));
    }

    private StickProblem problem(Lot lot, List<Offer> offers, boolean exact) {
        return new Nesting(lot, shop)
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

    /** When sticks alone count, a longer one than needed serves nobody. */
    private Kind shortest(Lot lot, Kind kind, List<Bundle> bundles, Aim aim) {
        if (aim == Aim.CHEAPEST || kind.origin() != Origin.BOUGHT) {
            return kind;
        }
        Nesting nesting = new Nesting(lot, shop);
        int needed = nesting.taken(nesting.order(bundles, shop.usable(kind.length())));
        return kind.supply().buy().stream()
                .filter(length -> shop.usable(length) >= needed)
                .findFirst()
                .map(length -> new Kind(kind.supply(), length, Origin.BOUGHT))
                .orElse(kind);
    }

    private Stick.Strip strip(Lot lot, Kind kind, List<Bundle> bundles) {
        List<Stick.LaidPiece> lies = new ArrayList<>();
        Nesting nesting = new Nesting(lot, shop);
        Optional<Bundle> before = Optional.empty();
        boolean turned = false;
        int at = shop.trim();
        for (Bundle bundle : nesting.order(bundles, shop.usable(kind.length()))) {
            if (before.isPresent()) {
                at += nesting.gap(before.get(), bundle);
                turned = nesting.turns(before.get(), turned, bundle);
            }
            before = Optional.of(bundle);
            for (int i = 0; i < bundle.pieces().size(); i++) {
                at += i == 0 ? 0 : bundle.gaps().get(i - 1);
                lies.add(new Stick.LaidPiece(bundle.pieces().get(i), at, turned));
                at += bundle.pieces().get(i).length();
            }
        }
        int end = kind.length() - shop.trim();
        lies.forEach(lie -> clamped(lie, end - lie.to()));
        // the last cut takes its kerf from what is left
        at += before.map(last -> shop.grid().needed(last.right().kerf(shop))).orElse(0);
        int width = shop.grid().offered(kind.supply().width());
        int own = Math.min(width, lot.source().strip());
        boolean ripped = kind.supply().board() && own < width - LengthSteps.SIXTY_FOURTH;
        return new Stick.Strip(ripped ? own : width, ripped, lies, Math.max(0, kind.length() - shop.trim() - at));
    }

    /** Something must be long enough to clamp while a cut is made: the piece, or what is left of its stick. */
    private void clamped(Stick.LaidPiece lie, int left) {
        StickPiece piece = lie.piece();
        boolean isReturn =
                piece.left().joint() == EndJoint.RETURN || piece.right().joint() == EndJoint.RETURN;
        int hold = isReturn ? shop.holdForReturn() : shop.hold();
        // a piece that is the rest of its stick is not cut off
        if (piece.length() < hold && left < hold && left > 0) {
            notices.add(StickNotices.TOO_LITTLE_TO_CLAMP
                    .with("label", piece.id())
                    .with("length", LengthSteps.figure(piece.length()))
                    .with("left", LengthSteps.figure(left))
                    .with("hold", LengthSteps.figure(hold))
                    .of(piece.course())
                    .amount(LengthSteps.figure(hold - left)));
        }
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
        List<Stick> sticks = new ArrayList<>();
        strips.forEach((kind, own) -> {
            List<List<Stick.Strip>> boards = boards(kind, own);
            long price = kind.origin() == Origin.BOUGHT ? kind.supply().price(kind.length()) : 0;
            boards.forEach(side -> sticks.add(new Stick(kind.supply(), kind.length(), kind.origin(), price, side)));
            if (kind.origin() == Origin.MISSING) {
                missing(kind, boards.size());
            }
        });
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

    private List<List<Stick.Strip>> boards(Kind kind, List<Stick.Strip> own) {
        int width = shop.grid().offered(kind.supply().width());
        List<Integer> widths = own.stream().map(Stick.Strip::width).toList();
        StickProblem.Stick board = new StickProblem.Stick(width, 1, StickProblem.NO_END);
        return desk.plan(new StickProblem(widths, List.of(board), shop.ripKerf())).orElseThrow().sticks().stream()
                .map(side -> side.pieces().stream().map(own::get).toList())
                .toList();
    }
}
