package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.engine.mill.milling.MillingNotices;
import buildup.profiles.Profile;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Judges each molding of an order and prices those that can be made; a molding in two pieces is priced piece by piece. */
final class Quoting {
    private final Order order;
    private final Catalog catalog;
    private final Notices notices;

    /** @param notices told what cannot be run as it is drawn */
    Quoting(Order order, Catalog catalog, Notices notices) {
        this.order = order;
        this.catalog = catalog;
        this.notices = notices;
    }

    /** What is run, and how it is made. */
    private record Run(OrderItem item, Milled milled, Optional<Halving> inTwo) {
        /** The molding that it is, or is a piece of. */
        String whole() {
            return item.half().map(Halving.Half::whole).orElse(item.name());
        }
    }

    List<Quoted> items() {
        List<Run> runs = order.items().stream()
                .flatMap(item -> item.runs().stream())
                .map(this::judged)
                .toList();
        // a piece is worth nothing without the other
        Set<String> hindered = runs.stream()
                .filter(run -> !run.milled().obstacles().isEmpty())
                .map(Run::whole)
                .collect(Collectors.toSet());
        List<Run> made =
                runs.stream().filter(run -> !hindered.contains(run.whole())).toList();
        List<Shared> shared = Sharing.of(order, made.stream().map(Run::item).toList());
        List<Quoted> items = new ArrayList<>();
        for (Run run : runs) {
            int at = made.indexOf(run);
            items.add(at < 0 ? unpriced(run) : priced(run, shared.get(at)));
        }
        return items;
    }

    private Run judged(OrderItem item) {
        Notices said = new Notices();
        Milled milled = milled(item.profile(), said);
        Optional<Halving> inTwo =
                milled.obstacles().isEmpty() || item.half().isPresent() ? Optional.empty() : best(item.profile());
        Quoted.obstacles(item, milled)
                .forEach(notice -> notices.add(orInTwo(notice, inTwo).of(item.name())));
        said.sorted().stream()
                .filter(notice -> notice.code().equals(MillingNotices.THIN_WEB.name()))
                .forEach(notice -> notices.add(notice.of(item.name())));
        return new Run(item, milled, inTwo);
    }

    private static Notice orInTwo(Notice notice, Optional<Halving> inTwo) {
        return inTwo.isPresent() ? notice.cure(Quoted.orInTwo(notice.cure().orElse(Phrase.of("")), inTwo)) : notice;
    }

    private Milled milled(Profile profile, Notices said) {
        return Milling.of(profile, catalog, Optional.of(order.head()), List.of(), said);
    }

    /** The cut that leaves two pieces that can be made with the least steel, and of these the narrowest joint. */
    private Optional<Halving> best(Profile profile) {
        if (order.rates().glue().isEmpty()) {
            return Optional.empty();
        }
        return best(profile, Halving.through(profile)).or(() -> best(profile, Halving.between(profile)));
    }

    private Optional<Halving> best(Profile profile, List<Halving> cuts) {
        record Way(Halving cut, double steel, double joint) {}
        return cuts.stream()
                .flatMap(cut -> {
                    List<Milled> pieces = Halving.of(profile, cut).stream()
                            .map(piece -> milled(piece, new Notices()))
                            .toList();
                    boolean made =
                            pieces.stream().allMatch(piece -> piece.obstacles().isEmpty());
                    double steel = pieces.stream()
                            .flatMap(piece -> piece.knives().stream())
                            .mapToDouble(Knife::width)
                            .sum();
                    return made ? Stream.of(new Way(cut, steel, Halving.joint(profile, cut))) : Stream.empty();
                })
                .min(Comparator.comparingDouble(Way::steel).thenComparingDouble(Way::joint))
                .map(Way::cut);
    }

    private Quoted unpriced(Run run) {
        OrderItem item = run.item();
        Blank blank = item.blank(order.mill());
        return new Quoted(
                item,
                blank,
                run.milled(),
                Optional.empty(),
                List.of(),
                new Assumptions(order).of(item, blank, Optional.empty(), run.milled()),
                List.of(),
                Optional.empty(),
                run.inTwo());
    }

    private Quoted priced(Run run, Shared shared) {
        OrderItem item = run.item();
        Blank blank = item.blank(order.mill());
        Price price = Price.of(order, item, run.milled(), blank, item.feet(), shared);
        List<Price> breaks = order.breaks().stream()
                .map(feet -> Price.of(order, item, run.milled(), blank, feet, Shared.NONE))
                .toList();
        return new Quoted(
                item,
                blank,
                run.milled(),
                Optional.of(price),
                breaks,
                new Assumptions(order).of(item, blank, Optional.of(price), run.milled()),
                new Reckoning(order, item, blank, run.milled(), price, shared).steps(),
                item.half().filter(Halving.Half::isLast).map(half -> whole(half.whole(), price, breaks)),
                Optional.empty());
    }

    /** What the customer has of two pieces: drawn and sized as one, delivered as the last of them is. */
    private Quoted whole(String name, Price price, List<Price> breaks) {
        OrderItem item = order.items().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        return new Quoted(
                item,
                item.blank(order.mill()),
                milled(item.profile(), new Notices()),
                Optional.of(price),
                breaks,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }
}
