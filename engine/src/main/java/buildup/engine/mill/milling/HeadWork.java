package buildup.engine.mill.milling;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one head has to cut: with a ground knife as wide as its side of the stick, or, where all its work is a square
 * groove or rabbet, with a cutter from the shop's list. Sides that are straight are planed and take neither.
 *
 * @param side where the head stands
 * @param members that it makes
 * @param knife ground for it; absent when a listed cutter does its work, when no head is listed, or when the shaft stands
 *     in the way of so deep a knife
 * @param cutter from the shop's list that makes all of it in one pass
 */
public record HeadWork(Side side, List<String> members, Optional<Knife> knife, Optional<Pass> cutter) {
    /** Copies the list. */
    public HeadWork {
        members = List.copyOf(members);
    }

    /** Whether the head can do it. */
    boolean fits() {
        return cutter.isPresent() || knife.filter(Knife::fits).isPresent();
    }

    /** Width of steel that it takes, in. */
    private double steel() {
        return knife.map(Knife::width).orElse(0.0);
    }

    /** How much deeper its knife would cut than the head takes, in; 0 where that takes it. */
    private double tooDeep() {
        return knife.filter(one -> !one.isShallowEnough())
                .map(one -> one.woodDepth() - one.head().deepest().toInches())
                .orElse(0.0);
    }

    /** The stretches that some head has to make, and the heads that can. */
    record Task(List<Reached> stretches, List<Side> sides) {
        /** Planed sides, and what no head reaches, are nobody's task. */
        static Task of(MillStick stick, List<Reached> reached, List<Side> sides) {
            return new Task(
                    reached.stream()
                            .filter(part -> !stick.isPlaned(part.segment())
                                    && part.segment().length() > Tolerance.TOUCHING
                                    && !part.sides().isEmpty())
                            .toList(),
                    sides);
        }

        /** What a head has to make when the heads before it have done their part. */
        private List<Reached> share(List<Side> chosen, int at) {
            return stretches.stream()
                    .filter(part -> part.sides().contains(chosen.get(at)))
                    .filter(part -> chosen.subList(0, at).stream().noneMatch(part.sides()::contains))
                    .toList();
        }

        private boolean isDoneBy(List<Side> chosen) {
            return stretches.stream().allMatch(part -> chosen.stream().anyMatch(part.sides()::contains));
        }
    }

    /** How a head does a share of the task. */
    interface Shop {
        /** What it sets up at a side for its share of the work. */
        HeadWork does(Side side, List<Reached> share);
    }

    /**
     * The fewest heads that do a task, and of as many those that take least steel; heads whose knives fit before others, and
     * of those that do not the one that asks least too much.
     * A handful of heads is tried in every choice.
     */
    static List<HeadWork> fewest(Task task, Shop shop) {
        List<Side> sides = task.sides();
        List<List<HeadWork>> ways = new ArrayList<>();
        for (int choice = 0; choice < 1 << sides.size(); choice++) {
            List<Side> chosen = new ArrayList<>();
            for (int i = 0; i < sides.size(); i++) {
                if ((choice >> i & 1) == 1) {
                    chosen.add(sides.get(i));
                }
            }
            if (task.isDoneBy(chosen)) {
                works(task, chosen, shop).ifPresent(ways::add);
            }
        }
        return ways.stream()
                .min(Comparator.comparing((List<HeadWork> way) -> !way.stream().allMatch(HeadWork::fits))
                        .thenComparing(List::size)
                        .thenComparingDouble(way -> way.stream()
                                .mapToDouble(HeadWork::tooDeep)
                                .max()
                                .orElse(0))
                        .thenComparingDouble(
                                way -> way.stream().mapToDouble(HeadWork::steel).sum()))
                .orElse(List.of());
    }

    /** Nothing where a head would be idle: the choice without it is tried too. */
    private static Optional<List<HeadWork>> works(Task task, List<Side> chosen, Shop shop) {
        List<HeadWork> works = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            List<Reached> share = task.share(chosen, i);
            if (share.isEmpty()) {
                return Optional.empty();
            }
            works.add(shop.does(chosen.get(i), share));
        }
        return Optional.of(works);
    }
}
