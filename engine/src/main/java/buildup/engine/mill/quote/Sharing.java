package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Rips the items of an order from the same boards where wood, quarter and widths agree: the widest strips come first, and
 * what is left beside them is ripped into the widest strips of other items that it holds, as long as those are wanted.
 * Each item pays for the width that its own strips take.
 */
final class Sharing {
    private static final double INCHES_PER_FOOT = 12;

    private final Mill mill;
    private final List<Cut> cuts;

    private Sharing(Mill mill, List<Cut> cuts) {
        this.mill = mill;
        this.cuts = cuts;
    }

    /** An item that is cut: what it needs, and what it has of the others so far. */
    private static final class Cut {
        private final OrderItem item;
        private final Blank blank;
        private final double needs;
        private double strips;
        private double taken;
        private double given;
        private double used;
        private final Set<String> from = new LinkedHashSet<>();
        private final Set<String> to = new LinkedHashSet<>();

        Cut(OrderItem item, Blank blank, double run) {
            this.item = item;
            this.blank = blank;
            this.needs = run * blank.pieces();
        }

        boolean likeWood(Cut other) {
            return item.wood().name().equals(other.item.wood().name())
                    && blank.quarter().equals(other.blank.quarter())
                    && item.widths().equals(other.item.widths());
        }

        /** Feet of strip that are still wanted. */
        double left() {
            return needs - strips;
        }

        /** Board feet to an inch of width in a foot. */
        double boardFeet() {
            return Math.max(1, blank.quarter().rough().toInches()) / INCHES_PER_FOOT;
        }

        Shared shared() {
            return new Shared(strips, taken, given, used, List.copyOf(from), List.copyOf(to));
        }
    }

    /**
     * Boards of one width with something left beside their strips.
     *
     * @param feet of board, sound
     * @param room in
     */
    private record Rest(double feet, double room) {}

    /** What each item shares with the others, in their order; {@code items} are those that are cut. */
    static List<Shared> of(Order order, List<OrderItem> items) {
        List<Cut> cuts = items.stream()
                .map(item -> new Cut(
                        item,
                        item.blank(order.mill()),
                        Price.run(
                                        item,
                                        order.mill(),
                                        Sticks.of(item.lengths(), item.feet()).feet())
                                .doubleValue()))
                .toList();
        Sharing sharing = new Sharing(order.mill(), cuts);
        IntStream.range(0, cuts.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -cuts.get(i).blank.strip()))
                .forEach(i -> sharing.rip(cuts.get(i)));
        return cuts.stream().map(Cut::shared).toList();
    }

    private void rip(Cut cut) {
        List<Cut> others = cuts.stream()
                .filter(other -> other != cut && other.likeWood(cut) && other.blank.strip() <= cut.blank.strip())
                .sorted(Comparator.comparingDouble(other -> -other.blank.strip()))
                .toList();
        if (others.isEmpty() || cut.left() <= Tolerance.COINCIDENT) {
            return;
        }
        double sound = mill.sound().doubleValue();
        double bought = cut.blank.boardFeet(cut.left() / cut.blank.pieces(), sound);
        for (Blank.Ripping board : cut.blank.ripped()) {
            double feet = bought * sound * board.share() / cut.boardFeet() / board.board();
            List<Rest> rests = List.of(new Rest(feet, board.drop()));
            for (Cut other : others) {
                rests = filled(cut, other, rests);
            }
            double kept = rests.stream()
                    .filter(rest -> keeps(rest.room()))
                    .mapToDouble(rest -> rest.feet() * rest.room())
                    .sum();
            cut.used += cut.boardFeet() * ((board.kept() ? feet * board.drop() : 0) - kept);
        }
    }

    /** Strips of another item in what is left, as many feet as it still wants. */
    private List<Rest> filled(Cut cut, Cut other, List<Rest> rests) {
        double kerf = mill.kerf().toInches();
        double strip = other.blank.strip();
        List<Rest> next = new ArrayList<>();
        for (Rest rest : rests) {
            int count = (int) Math.floor((rest.room() + kerf) / (strip + kerf) + Tolerance.COINCIDENT);
            double feet = count > 0 ? Math.min(rest.feet(), Math.max(0, other.left()) / count) : 0;
            if (feet <= Tolerance.COINCIDENT) {
                next.add(rest);
                continue;
            }
            double width = Math.min(rest.room(), count * (strip + kerf));
            double boards = feet * width * cut.boardFeet() / mill.sound().doubleValue();
            other.strips += feet * count;
            other.taken += boards;
            other.from.add(cut.item.name());
            cut.given += boards;
            cut.to.add(other.item.name());
            next.add(new Rest(feet, rest.room() - width));
            next.add(new Rest(rest.feet() - feet, rest.room()));
        }
        return next;
    }

    private boolean keeps(double room) {
        return mill.drops()
                .filter(drops -> room >= drops.least().toInches() - Tolerance.COINCIDENT)
                .isPresent();
    }
}
