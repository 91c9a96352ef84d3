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

    /** Told how far it has come. */
    public interface Watch {
        /**
         * Called after each profile.
         *
         * @param done how many have been looked at
         * @param all how many there are
         */
        void looked(int done, int all);
    }

    /** A stick to compare with, its outline as it is run, and its plain places, the best first. */
    private record Stick(Profile profile, Search search, List<Search.Laid> starts) {
        double nearest() {
            return starts.get(0).apart();
        }
    }

    public Neighbors {
        list = List.copyOf(list);
    }

    /**
     * The nearest of {@code stock}, boards left out: any board is some rectangle. All are laid in their plain places first;
     * then the most promising are brought closer, and those that lie too far apart even for that are let be.
     *
     * @param most how many are wanted, at least 1
     * @param watch told of each profile
     */
    public static Neighbors of(Profile profile, List<Profile> stock, Freedom freedom, int most, Watch watch) {
        Outline outline = profile.asRun();
        Difference wanted = Difference.from(outline);
        List<Profile> moldings = stock.stream()
                .filter(one -> !(one.stick() instanceof Profile.Board))
                .toList();
        List<Stick> sticks = new ArrayList<>();
        for (Profile one : moldings) {
            Search search = new Search(outline, wanted, one.asRun(), freedom, springs(profile, one));
            double limit = limit(sticks.stream().map(Stick::nearest).toList(), most);
            sticks.add(new Stick(one, search, search.starts(limit)));
            watch.looked(sticks.size(), 2 * moldings.size());
        }
        sticks.sort(Comparator.comparingDouble(Stick::nearest));
        List<Search.Laid> places = new ArrayList<>();
        double limit = Double.POSITIVE_INFINITY;
        for (Stick stick : sticks) {
            places.add(stick.search().best(stick.starts(), limit));
            limit = limit(places.stream().map(Search.Laid::apart).toList(), most);
            watch.looked(moldings.size() + places.size(), 2 * moldings.size());
        }
        List<Neighbor> found = new ArrayList<>();
        for (int i = 0; i < sticks.size(); i++) {
            if (places.get(i).apart() <= limit) {
                found.add(neighbor(outline, sticks.get(i), places.get(i)));
            }
        }
        found.sort(Comparator.comparingDouble((Neighbor one) -> Math.rint(one.apart() * 1e6))
                .thenComparing(one -> one.profile().name()));
        return new Neighbors(outline, found.subList(0, Math.min(most, found.size())));
    }

    /** How far apart the last of those that are wanted lies at most, when so many lie this far; infinite while there are fewer. */
    private static double limit(List<Double> apart, int most) {
        return apart.stream().sorted().skip(most - 1L).findFirst().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Two sprung moldings lie flat, both. Where one alone is known to be sprung, the other may have been drawn as it stands
     * on the wall: turned by the spring, either way, it lies flat too.
     */
    private static List<Double> springs(Profile profile, Profile other) {
        boolean one = profile.stick() instanceof Profile.Spring;
        Profile.Stick sprung = one ? profile.stick() : other.stick();
        boolean both = one && other.stick() instanceof Profile.Spring;
        return !both && sprung instanceof Profile.Spring spring
                ? List.of(spring.sprung().spring(), -spring.sprung().spring())
                : List.of();
    }

    private static Neighbor neighbor(Outline wanted, Stick stick, Search.Laid place) {
        Outline laid = place.pose().apply(stick.search().stick());
        Gap gap = Gap.between(wanted, laid);
        return new Neighbor(
                stick.profile(),
                place.pose(),
                laid,
                place.apart(),
                gap.most(),
                gap.at(),
                new Advising(wanted, stick.search().stick(), place.pose(), gap).advice());
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
