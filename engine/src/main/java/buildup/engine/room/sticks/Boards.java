package buildup.engine.room.sticks;

import buildup.engine.room.sticks.StickLayout.Kind;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.Stick.Origin;
import buildup.engine.room.stock.Supply;
import buildup.engine.solve.StickPlan;
import buildup.engine.solve.StickProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Strips side by side on boards. Those of one length that are bought share boards of all widths, at the least price or
 * with the fewest boards; what is on hand lies on the board it was meant for.
 */
final class Boards {
    /** A strip and the width that it needs, {@link LengthSteps}. */
    record Own(Stick.Strip strip, int width) {}

    private final Shop shop;
    private final LotSolver desk;
    private final BoardGroup group;
    private final Aim aim;

    Boards(Shop shop, LotSolver desk, BoardGroup group) {
        this.shop = shop;
        this.desk = desk;
        this.group = group;
        this.aim = group.aim(shop);
    }

    /** All strips on their boards. */
    List<Stick> sticks(Map<Kind, List<Own>> strips) {
        List<Stick> sticks = new ArrayList<>();
        Map<Integer, List<Own>> bought = new LinkedHashMap<>();
        strips.forEach((kind, own) -> {
            if (kind.supply().board() && kind.origin() == Origin.BOUGHT) {
                bought.computeIfAbsent(kind.length(), key -> new ArrayList<>()).addAll(own);
            } else {
                sticks.addAll(filled(List.of(kind), own));
            }
        });
        bought.forEach((length, own) -> sticks.addAll(filled(
                group.supplies().stream()
                        .filter(supply -> supply.buy().contains(length))
                        .map(supply -> new Kind(supply, length, Origin.BOUGHT))
                        .toList(),
                own)));
        return sticks;
    }

    private List<Stick> filled(List<Kind> kinds, List<Own> strips) {
        StickPlan plan = desk.boards(new StickProblem(
                        strips.stream().map(Own::width).toList(),
                        kinds.stream()
                                .map(kind -> new StickProblem.Stick(
                                        width(kind.supply()),
                                        kinds.size() == 1 ? 1 : aim.price(kind.supply(), kind.length()),
                                        StickProblem.NO_END))
                                .toList(),
                        shop.ripKerf()))
                .orElseThrow();
        return plan.sticks().stream()
                .map(cutUp -> stick(
                        kinds,
                        kinds.get(cutUp.kind()),
                        cutUp.pieces().stream().map(strips::get).toList()))
                .toList();
    }

    private int width(Supply supply) {
        return shop.grid().offered(supply.width());
    }

    /** A board with its strips; where boards alone count, none wider than they need. */
    private Stick stick(List<Kind> kinds, Kind chosen, List<Own> strips) {
        int needed = strips.stream().mapToInt(Own::width).sum() + (strips.size() - 1) * shop.ripKerf();
        Kind kind = aim == Aim.CHEAPEST
                ? chosen
                : kinds.stream()
                        .filter(other -> width(other.supply()) >= needed)
                        .min(Comparator.comparingDouble(other -> other.supply().width()))
                        .orElse(chosen);
        long price = kind.origin() == Origin.BOUGHT ? kind.supply().price(kind.length()) : 0;
        return new Stick(
                kind.supply(),
                kind.length(),
                kind.origin(),
                price,
                strips.stream().map(own -> onBoard(own, kind.supply())).toList());
    }

    private Stick.Strip onBoard(Own own, Supply supply) {
        int width = width(supply);
        boolean ripped = supply.board() && own.width < width - LengthSteps.SIXTY_FOURTH;
        return new Stick.Strip(ripped ? own.width : width, ripped, own.strip.pieces(), own.strip.rest());
    }
}
