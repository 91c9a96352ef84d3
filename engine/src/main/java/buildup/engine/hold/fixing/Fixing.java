package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Asks what nails and screws do in a section. Reads its own block of the document, {@code fastenings:}. */
public final class Fixing {
    /**
     * What is driven.
     *
     * @param bench the names of pieces that are joined before they go up, a list for each unit: what joins two of one is
     *     driven there, where neither wall nor ceiling is in the way, if it cannot be driven in place
     */
    public record Rows(List<Fastening> fastenings, List<List<String>> bench) {
        public Rows {
            fastenings = List.copyOf(fastenings);
            bench = List.copyOf(bench);
        }
    }

    private Fixing() {}

    /**
     * The rows under {@code fastenings:}; what is wrong with one is refused.
     *
     * @param root the document, read with the stack's lengths
     */
    public static List<Fastening> read(Stack stack, Fields root, Catalog catalog, Notices notices) {
        return new FasteningReader(stack, catalog, notices).read(root);
    }

    /**
     * One answer for each fastening whose spot is on its piece, in order; the others are said, and so is what does not
     * hold, comes out or cannot be driven.
     *
     * @param lights, sights answers about the same section; without any, nothing counts as dark or unseen
     */
    public static List<Fixed> of(
            Section section,
            List<Fastening> fastenings,
            List<Lighting> lights,
            List<Sighting> sights,
            Catalog catalog,
            Notices notices) {
        return of(section, new Rows(fastenings, List.of()), lights, sights, catalog, true, notices);
    }

    /**
     * The same.
     *
     * @param curing whether the cures are told: else the long way to one is not gone
     */
    public static List<Fixed> of(
            Section section,
            Rows rows,
            List<Lighting> lights,
            List<Sighting> sights,
            Catalog catalog,
            boolean curing,
            Notices notices) {
        Nailing nailing = new Nailing(section, lights, sights, catalog);
        Spots spots = new Spots(section, notices);
        FixingFaults faults = new FixingFaults(nailing, curing, notices);
        List<OnTheBench> benches = rows.bench().stream()
                .map(names -> new OnTheBench(section, names, lights, sights, catalog))
                .toList();
        List<Fixed> all = new ArrayList<>();
        for (Fastening fastening : rows.fastenings()) {
            Optional<Spot> spot = spots.of(fastening);
            if (spot.isPresent()) {
                int after = fastening
                        .after()
                        .flatMap(spots::piece)
                        .orElse(spot.get().body());
                Fixed fixed = nailing.fixed(spot.get(), fastening, after);
                Optional<Fixed> joined = fixed.sound()
                        ? Optional.empty()
                        : benches.stream()
                                .flatMap(unit -> unit.joined(spot.get(), fastening, after).stream())
                                .findFirst();
                if (joined.isEmpty()) {
                    faults.say(spot.get(), fixed);
                }
                all.add(joined.orElse(fixed));
            }
        }
        Collisions.say(nailing, all, curing, notices);
        UpperEdges.say(nailing, all, notices);
        return List.copyOf(all);
    }

    /**
     * A row of which only a share of the nails meets framing behind the wall: those hold as they do there, the others by
     * the pieces before it alone.
     *
     * @param share of its nails, 0 to 1
     */
    public static Fixed landed(Section section, Fixed row, double share) {
        Timber timber = new Timber(section);
        Drive between = row.drive();
        for (int body : row.drive().held()) {
            between = timber.wall(body) || section.overCeiling(body) ? between.looseIn(body) : between;
        }
        Holding loose = new Holding(timber, row.fastening(), between);
        Stream<Joint> landing = row.joints().stream().map(joint -> joint.of(share));
        Stream<Joint> missing = loose.joints(loose.grips()).stream().map(joint -> joint.of(1 - share));
        return row.with(Stream.concat(landing, missing)
                .filter(joint -> joint.perFoot() > 0)
                .toList());
    }

    /**
     * Up to three places for each piece of trim and each nailer, best first, pieces in the order of putting up: where a
     * fastener of the catalog bites enough, stays inside, can be driven as the piece goes up, and is hidden as well as may
     * be. A nailer is screwed where a screw goes in, else nailed, as stout as does not split it, and never pinned: others
     * hang on it (common practice, no source). Each passes every check of {@link #of}; the same section and catalog give the same proposals.
     */
    public static List<Proposal> propose(
            Section section, List<Lighting> lights, List<Sighting> sights, Catalog catalog) {
        Nailing nailing = new Nailing(section, lights, sights, catalog);
        List<Fastener> fasteners = nailing.fasteners();
        Proposals proposals = new Proposals(nailing, fasteners);
        List<Proposal> all = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).trim()) {
                all.addAll(proposals.of(i));
            } else if (section.body(i).nailer()) {
                all.addAll(Proposals.ofBacking(nailing, fasteners, i));
            }
        }
        return List.copyOf(all);
    }

    /** Pieces that are joined before they go up, with nothing else beside them. */
    private static final class OnTheBench {
        /** Their numbers, in the order of the document, in which they are joined. */
        private final TreeSet<Integer> unit = new TreeSet<>();

        private final Nailing nailing;

        /** @param names of the pieces */
        OnTheBench(Section section, List<String> names, List<Lighting> lights, List<Sighting> sights, Catalog catalog) {
            names.forEach(name -> section.number(name).ifPresent(unit::add));
            this.nailing = new Nailing(new Timber(section, unit), lights, sights, catalog);
        }

        /** A row as it is driven there, as soon as what it bites in is joined; absent where it is not sound there. */
        Optional<Fixed> joined(Spot spot, Fastening row, int after) {
            return unit.contains(spot.body())
                    ? unit.tailSet(after).stream()
                            .map(step -> nailing.fixed(spot, row, step))
                            .filter(Fixed::sound)
                            .findFirst()
                    : Optional.empty();
        }
    }
}
