package buildup.engine.hold.support;

import buildup.engine.hold.fixing.Places;
import buildup.engine.hold.fixing.RowEdits;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.nail.Spacings;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rows of fastenings as ways out: in words, and as what a person adds to the document. */
public final class RowCures {
    /** So many places of a piece are told of, in case the first brings something else. */
    private static final int MOST = 3;

    private static final String BLOCK = "fastenings";

    private final Section section;
    private final List<Fixed> given;

    /** @param given the rows of the document, where they have a place */
    RowCures(Section section, List<Fixed> given) {
        this.section = section;
        this.given = given;
    }

    /**
     * Rows that pin a piece to what is held or stands, the best places first; places are looked for only when asked. What is
     * offered for one piece leaves room for what was offered for those asked before: a person drives both.
     */
    public static Function<Integer, Stream<Cure>> pins(
            Section section, List<Fixed> given, Supplier<Optional<Places>> places) {
        RowCures cures = new RowCures(section, given);
        List<Fixed> taken = new ArrayList<>(given);
        return piece -> {
            List<List<Fixed>> chains = places.get()
                    .map(search -> chains(section, taken, search, piece, List.of()))
                    .orElse(List.of());
            chains.forEach(taken::addAll);
            return chains.stream()
                    .map(chain -> chain.size() == 1
                            ? cures.one(row(chain.get(0)))
                            : cures.all(chain.stream().map(RowCures::row).toList()));
        };
    }

    private static LeastRow row(Fixed nail) {
        return new LeastRow(nail, nail.fastening().spacing(), 0, Optional.empty(), 0, List.of());
    }

    /**
     * Rows that pin a piece, the best first. Where it meets only trim that is not held itself, a row for that too: as a cove is
     * pinned to a valance that is nailed to its case. Of those the first is driven into what is held, each of the others into the
     * piece of the one before it.
     *
     * @param asked the pieces that are to be pinned by it, from the last on
     */
    private static List<List<Fixed>> chains(
            Section section, List<Fixed> taken, Places places, int piece, List<Integer> asked) {
        List<List<Fixed>> pinned = pinning(section, taken, places, places.of(piece))
                .sorted(Comparator.comparing((Fixed nail) -> nail.fastening().first() > 0)
                        // a short pin out of sight is no match for a nail as long as it should be
                        .thenComparing(nail -> !nail.check(Check.Rule.THRICE_THE_PIECE)
                                .filter(Check::met)
                                .isPresent()))
                .limit(MOST)
                .map(List::of)
                .toList();
        if (!pinned.isEmpty() || asked.size() + 1 == MOST) {
            return pinned;
        }
        List<Integer> pieces = new ArrayList<>(asked);
        pieces.add(piece);
        return carriers(section, places, piece)
                .filter(carrier -> !pieces.contains(carrier))
                .flatMap(carrier -> chains(section, taken, places, carrier, pieces).stream()
                        .flatMap(rows -> onto(rows, carrier, taken, places, piece).stream()))
                .limit(MOST)
                .toList();
    }

    /** The pieces of the stack that some place of a piece would pin it to, the best places first. */
    private static Stream<Integer> carriers(Section section, Places places, int piece) {
        return places.of(piece).stream()
                .flatMap(nail -> nail.joints().stream())
                .filter(joint -> joint.pull() > 0 && joint.near() == piece)
                .map(Joint::far)
                .filter(far -> section.body(far).inStack())
                .distinct();
    }

    /** Some rows, and one through a piece into what they hold. */
    private static Optional<List<Fixed>> onto(
            List<Fixed> rows, int carrier, List<Fixed> taken, Places places, int piece) {
        List<Fixed> beside = new ArrayList<>(taken);
        beside.addAll(rows);
        return places.of(piece).stream()
                .filter(nail -> nail.joints().stream().anyMatch(joint -> joint.pull() > 0 && joint.far() == carrier))
                .map(nail -> places.between(nail, places.spacings(nail).get(0), beside))
                .flatMap(Optional::stream)
                .findFirst()
                .map(nail -> Stream.concat(rows.stream(), Stream.of(nail)).toList());
    }

    /** Those of some nails that pin, each as one of a row begun where it meets no other. */
    private static Stream<Fixed> pinning(Section section, List<Fixed> taken, Places places, List<Fixed> nails) {
        return nails.stream()
                .filter(nail -> pins(section, nail))
                .map(nail -> places.between(nail, places.spacings(nail).get(0), taken))
                .flatMap(Optional::stream);
    }

    /** The bodies that alone keep tools from such places; none when there is no such place. */
    public static List<Integer> blocked(Section section, List<Fixed> given, Places places, int piece) {
        return pinning(section, given, places, places.outOfReach(piece).toList())
                .map(nail -> nail.reach().inTheWay().orElseThrow())
                .distinct()
                .sorted()
                .toList();
    }

    private static boolean pins(Section section, Fixed nail) {
        return nail.joints().stream()
                .anyMatch(joint -> joint.pull() > 0
                        && (section.body(joint.far()).standing()
                                || section.fastened().pinned().contains(joint.far())
                                || section.standing(joint.far()).grounded()));
    }

    /** All of some rows together; each that has others beside it, as it is. */
    Cure all(List<LeastRow> rows) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            changes.addAll(changes(rows.get(i), i));
        }
        List<Value> words = rows.stream().<Value>map(this::words).toList();
        return new Cure(Phrase.of("Drive {rows}.").with("rows", Listing.and(words)), changes);
    }

    /** One row, and those that would do as well. */
    Cure one(LeastRow row) {
        return all(List.of(row))
                .or(row.others().stream().map(other -> all(List.of(other))).toList());
    }

    private Phrase words(LeastRow row) {
        Fixed nail = row.nail();
        return Phrase.of(
                        "{use} through {piece} at {out} out, {up} up{tilt}, every {spacing}{first}{instead} (holds {holds}, {across} across{blocked})")
                .with("use", nail.fastening().use().phrase())
                .with("piece", section.name(nail.piece()))
                .with("out", Figure.length(nail.head().x()))
                .with("up", Figure.length(nail.head().y()))
                .with("tilt", tilt(nail.fastening().angle()))
                .with("spacing", Figure.atMost(row.spacing()))
                .with(
                        "first",
                        first(row)
                                .map(at -> Phrase.of(", 'first: {at}'").with("at", at.rounded(Rounding.DOWN)))
                                .orElse(Phrase.of("")))
                .with("blocked", blocked(nail))
                .with(
                        "instead",
                        row.instead()
                                .map(name -> Phrase.of(", in place of '{name}'").with("name", name))
                                .orElse(Phrase.of("")))
                .with("holds", held(row.pull()))
                .with("across", held(row.across()));
    }

    /** Where along the run its first stands, if that is not where it would stand otherwise. */
    private Optional<Figure> first(LeastRow row) {
        double first = row.nail().fastening().first();
        double otherwise =
                row.instead().flatMap(this::given).map(Fastening::first).orElse(0.0);
        return Optional.of(Figure.length(first)).filter(at -> Math.abs(first - otherwise) > Tolerance.SNAP);
    }

    private Optional<Fastening> given(String name) {
        return given.stream()
                .map(Fixed::fastening)
                .filter(row -> row.name().equals(name))
                .findFirst();
    }

    /** Said of what comes in place of a row whose tool does not get in either. */
    private Phrase blocked(Fixed nail) {
        return nail.reach().inTheWay().stream()
                .mapToObj(section::name)
                .findFirst()
                .map(body -> Phrase.of("; the {tool} does not get past {body}, as now")
                        .with(
                                "tool",
                                nail.reach().tool().map(tool -> tool.name()).orElse("tool"))
                        .with("body", body))
                .orElse(Phrase.of(""));
    }

    private static Figure held(double pounds) {
        return Figure.lineForce(pounds).rounded(Rounding.decimals(1).to(Rounding.Side.DOWN));
    }

    /** The angle as it is typed, in whole degrees; nothing for what is driven square to its face. */
    private static Phrase tilt(double degrees) {
        long whole = Math.round(degrees);
        return whole == 0 ? Phrase.of("") : RowEdits.angled((double) whole);
    }

    /** @param number of the row among those that are put in together */
    private List<Change> changes(LeastRow row, int number) {
        Phrase use = row.nail().fastening().use().phrase();
        Phrase every = Phrase.of("{every}").with("every", Figure.length(row.spacing()));
        if (row.instead().isPresent()) {
            String place = BLOCK + "." + row.instead().get() + ".";
            List<Change> changes =
                    new ArrayList<>(List.of(new Change(place + "use", use), new Change(place + "spacing", every)));
            given(row.instead().get())
                    .filter(now -> now.per() != 1)
                    .ifPresent(now -> changes.add(new Change(place + "per", Phrase.of("1"))));
            first(row).ifPresent(at -> changes.add(first(place, at)));
            return changes;
        }
        String name = name(section.name(row.nail().piece()), number);
        String place = BLOCK + "." + name + ".";
        List<Change> changes = new ArrayList<>(List.of(
                Change.last(BLOCK, name),
                new Change(
                        place + "piece",
                        Phrase.of("{piece}")
                                .with("piece", section.name(row.nail().piece()))),
                new Change(place + "use", use)));
        // what a row has that names none is not written: 16 in are no round number of millimeters
        if (Math.abs(row.spacing() - Spacings.usual(row.nail().fastening().use())) > Tolerance.SNAP) {
            changes.add(new Change(place + "spacing", every));
        }
        changes.addAll(at(row.nail(), place + "at."));
        first(row).ifPresent(at -> changes.add(first(place, at)));
        long degrees = Math.round(row.nail().fastening().angle());
        if (degrees != 0) {
            changes.add(new Change(place + "angle", Phrase.of("" + degrees)));
        }
        return changes;
    }

    private static Change first(String place, Figure at) {
        return new Change(place + "first", Phrase.of("{at}").with("at", at));
    }

    /** A name that no row has yet. */
    private String name(String piece, int number) {
        List<String> taken = given.stream().map(row -> row.fastening().name()).toList();
        return IntStream.iterate(number + 1, i -> i + 1)
                .mapToObj(i -> "added to " + piece + (i == 1 ? "" : " " + i))
                .filter(name -> !taken.contains(name))
                .findFirst()
                .orElseThrow();
    }

    /** Where the head sits: its size as printed, or the side of the piece by its name where no tape shows that size. */
    private List<Change> at(Fixed nail, String place) {
        Box box = section.body(nail.piece()).outline().box();
        String piece = section.name(nail.piece());
        return List.of(
                new Change(place + "out", side(nail.head().x(), Map.of("back", box.back(), "face", box.face()), piece)),
                new Change(
                        place + "up", side(nail.head().y(), Map.of("bottom", box.bottom(), "top", box.top()), piece)));
    }

    private Phrase side(double at, Map<String, Double> sides, String piece) {
        return sides.entrySet().stream()
                .filter(side -> Math.abs(side.getValue() - at) <= Tolerance.SNAP)
                .findFirst()
                .map(side -> Phrase.of("{piece}." + side.getKey()).with("piece", piece))
                .orElseGet(() -> Phrase.of("{at}").with("at", Figure.length(at)));
    }
}
