package buildup.engine.mill.nearest;

import buildup.catalog.Catalog;
import buildup.catalog.entry.Sizes;
import buildup.catalog.family.Family;
import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.profiles.region.Difference;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The profiles that come nearest to one, the nearest first.
 *
 * @param wanted its outline as they are laid onto it, flat on its back where it is sprung
 */
public record Neighbors(Outline wanted, List<Neighbor> list) {
    private static final Mark NOWHERE = new Mark("", 1, 1);

    /** A stick to compare with, its outline as it is run. */
    private record Stick(Profile profile, Outline outline) {}

    public Neighbors {
        list = List.copyOf(list);
    }

    /**
     * The nearest of {@code stock}, boards left out: any board is some rectangle.
     *
     * @param most how many are wanted, at least 1
     */
    public static Neighbors of(Profile profile, List<Profile> stock, Freedom freedom, int most) {
        Outline outline = profile.asRun();
        Difference wanted = Difference.from(outline);
        List<Stick> sticks = stock.stream()
                .filter(one -> !(one.stick() instanceof Profile.Board))
                .map(one -> new Stick(one, one.asRun()))
                .sorted(Comparator.comparingDouble(stick -> unlike(wanted, stick.outline())))
                .toList();
        List<Neighbor> found = new ArrayList<>();
        double limit = Double.POSITIVE_INFINITY;
        List<Search.Laid> places = new ArrayList<>();
        List<Stick> laid = new ArrayList<>();
        for (Stick stick : sticks) {
            // two shapes differ by no less than their areas do, however they are laid; the rest differ by more
            if (!freedom.scale() && unlike(wanted, stick.outline()) > limit) {
                break;
            }
            places.add(new Search(outline, wanted, stick.outline(), freedom, limit).best());
            laid.add(stick);
            limit = places.stream()
                    .map(Search.Laid::apart)
                    .sorted()
                    .skip(most - 1L)
                    .findFirst()
                    .orElse(Double.POSITIVE_INFINITY);
        }
        for (int i = 0; i < laid.size(); i++) {
            if (places.get(i).apart() <= limit) {
                found.add(neighbor(outline, laid.get(i), places.get(i)));
            }
        }
        found.sort(Comparator.comparingDouble((Neighbor one) -> Math.rint(one.apart() * 1e6))
                .thenComparing(one -> one.profile().name()));
        return new Neighbors(outline, found.subList(0, Math.min(most, found.size())));
    }

    private static double unlike(Difference wanted, Outline stick) {
        return Math.abs(wanted.area() - stick.area());
    }

    private static Neighbor neighbor(Outline wanted, Stick stick, Search.Laid place) {
        Outline laid = place.pose().apply(stick.outline());
        Gap gap = Gap.between(wanted, laid);
        return new Neighbor(
                stick.profile(),
                place.pose(),
                laid,
                place.apart(),
                gap.most(),
                gap.at(),
                new Advising(wanted, stick.outline(), place.pose(), gap).advice());
    }

    /** The first that the wanted profile can be made of. */
    public Optional<Neighbor> use() {
        return list.stream().filter(one -> one.advice().serves()).findFirst();
    }

    /**
     * Every family of a catalog at its usual sizes, in the catalog's order.
     *
     * @param unit in which their names say their sizes
     */
    public static List<Profile> usual(Catalog catalog, LengthUnit unit) {
        Notices unsaid = new Notices();
        LengthReader lengths = new LengthReader(LengthUnit.INCH, Map.of());
        List<Profile> all = new ArrayList<>();
        for (Family family : catalog.families()) {
            for (List<Length> sizes : family.usual()) {
                String call = sizes.stream()
                        .map(size -> BigDecimal.valueOf(size.toInches()).toPlainString())
                        .collect(Collectors.joining(" x ", family.name() + " ", ""));
                catalog.profile(new Scalar(call, NOWHERE), Catalog.USUAL_BOARDS, lengths, unsaid)
                        .ifPresent(one -> all.add(named(one, family, sizes, unit)));
            }
        }
        return all;
    }

    /** Called as a shop calls it, whatever way its sizes were asked for. */
    private static Profile named(Profile profile, Family family, List<Length> sizes, LengthUnit unit) {
        String name = family.name() + " " + Sizes.call(sizes, unit);
        return new Profile(name, profile.kind(), profile.outline(), profile.stick());
    }
}
