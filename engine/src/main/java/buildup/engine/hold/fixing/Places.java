package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Spacings;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Section;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Where fastenings could go in a section; a search, run only when it is asked. */
public final class Places {
    private final Nailing nailing;
    private final Function<Fixed, OptionalDouble> framed;
    /** What was found so far: several questions ask about the same pieces and rows. */
    private final Map<Integer, List<Fixed>> found = new ConcurrentHashMap<>();

    private final Map<Fixed, List<Fixed>> instead = Collections.synchronizedMap(new IdentityHashMap<>());

    /** @param lights, sights answers about the same section; without any, nothing counts as dark or unseen */
    public Places(Section section, List<Lighting> lights, List<Sighting> sights, Catalog catalog) {
        this(section, lights, sights, catalog, nail -> OptionalDouble.empty());
    }

    /** @param framed how far apart, in, what stands behind wall or ceiling lets such nails stand; absent where it is all one */
    public Places(
            Section section,
            List<Lighting> lights,
            List<Sighting> sights,
            Catalog catalog,
            Function<Fixed, OptionalDouble> framed) {
        this.nailing = new Nailing(section, lights, sights, catalog);
        this.framed = framed;
    }

    /** How far apart such nails may be set, in, widest first: by the studs or joists where they need those. */
    public List<Double> spacings(Fixed nail) {
        OptionalDouble every = framed.apply(nail);
        return every.isPresent()
                ? List.of(every.getAsDouble())
                : Spacings.steps(nail.fastening().use());
    }

    /** Places of one piece where a fastener of the catalog is sound, best first; then those where a screw is. */
    public List<Fixed> of(int piece) {
        return found.computeIfAbsent(piece, this::sought);
    }

    private List<Fixed> sought(int piece) {
        // the list is read only when somebody asks for a place: most stacks need no cure
        List<Fastener> all = nailing.fasteners();
        List<Fastener> screws = all.stream()
                .filter(fastener -> fastener.kind() == Fastener.Kind.SCREW)
                .toList();
        List<Proposals.Seat> seats = Proposals.Seat.of(nailing, piece);
        return Stream.concat(
                        new Proposals(nailing, all).all(seats).stream(),
                        new Proposals(nailing, screws).all(seats).stream())
                .distinct()
                .toList();
    }

    /** Places of what touches a piece and goes up after it where a fastener of the catalog is sound and bites in that piece. */
    public Stream<Fixed> through(int piece) {
        Section section = nailing.timber().section();
        return section.contacts().stream()
                .filter(contact -> contact.of(piece) && contact.length() > 0)
                .map(contact -> contact.other(piece))
                .distinct()
                .filter(other -> section.body(other).inStack())
                .flatMap(other -> of(other).stream())
                .filter(nail -> nail.joints().stream().anyMatch(joint -> joint.far() == piece));
    }

    /** Places of one piece where a fastener of the catalog would hold, if its tool got in. */
    public Stream<Fixed> outOfReach(int piece) {
        return new Proposals(nailing, nailing.fasteners()).outOfReach(piece);
    }

    /** Whether a nail would meet none of some other rows. */
    public boolean free(Fixed nail, List<Fixed> rows) {
        return Collisions.free(nail, rows);
    }

    /**
     * A nail as one of a row, begun along the run where it meets none of some other rows; nothing when it would wherever it
     * begins.
     *
     * @param spacing of the row, in
     */
    public Optional<Fixed> between(Fixed nail, double spacing, List<Fixed> rows) {
        return Collisions.between(nail.as(nail.fastening().spaced(spacing)), rows);
    }

    /** What could be driven in place of a row, at the same spot: fasteners of the catalog that are sound there. */
    public List<Fixed> instead(Fixed row) {
        return holding(row).stream().filter(Fixed::sound).toList();
    }

    /** The same where the tool of the row does not get in: those whose tool does not either. */
    public List<Fixed> insteadBlocked(Fixed row) {
        return row.reach().free()
                ? List.of()
                : holding(row).stream().filter(nail -> !nail.sound()).toList();
    }

    private List<Fixed> holding(Fixed row) {
        return instead.computeIfAbsent(row, this::soughtInstead);
    }

    private List<Fixed> soughtInstead(Fixed row) {
        Spot spot = Spot.nearest(row.piece(), nailing.timber().body(row.piece()).outline(), row.head());
        double thickness = row.drive().in(row.piece());
        return nailing.fasteners().stream()
                .filter(fastener -> !Proposals.splits(fastener, thickness))
                .flatMap(fastener -> fastener.cuts().stream())
                .filter(cut -> !cut.call().equals(row.fastening().use().call()))
                .map(cut -> nailing.fixed(spot, row.fastening().with(cut), row.after()))
                .filter(Fixed::holds)
                .toList();
    }
}
