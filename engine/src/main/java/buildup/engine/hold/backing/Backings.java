package buildup.engine.hold.backing;

import buildup.engine.hold.backing.Backing.Stretch;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Piece;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds what stands behind each piece of trim along nails square to its straight room-side faces (a lying board: to its
 * broad faces; a face that is all curve: to its chord, or level where that meets nothing, as a shoe is nailed into the
 * base and not into the floor: common practice, no source). Trim in between does not matter, air does up to {@link #REACH}.
 */
public final class Backings {
    /** How far behind, above or below the piece a nailer may begin, in. */
    public static final double REACH = 3;

    /** A strip that lies and is no wider than this is nailed through its edge too, in: common practice, no source. */
    static final double NARROW = 2;

    /** A stretch shorter than this takes no nail, in: common practice, no source. */
    static final double LEAST_STRETCH = 1.0 / 8;

    /** So much room a nailer takes before a face, in: common practice, no source. */
    private static final double TOOL = 12;

    private final Section section;
    private final List<Integer> targets = new ArrayList<>();

    private Backings(Section section) {
        this.section = section;
        for (int i = 0; i < section.bodies().size(); i++) {
            Body body = section.body(i);
            if (body.nailer() || body.framing() || (body.name().equals("wall") && !body.piece())) {
                targets.add(i);
            }
        }
    }

    /**
     * One row for each piece of trim, in order. A piece with no backing is a problem, unless it has fastenings of its own:
     * a bead pinned to a cap that is held is held.
     *
     * @param held numbers of the pieces that have fastenings of their own, which are judged by themselves
     * @param pins ways to pin a piece, by its number, to trim that is held
     * @param blocked what alone keeps a tool from pinning it there
     */
    public static List<Backing> of(
            Section section,
            Set<Integer> held,
            Function<Integer, Stream<Cure>> pins,
            Function<Integer, List<Integer>> blocked,
            Notices notices) {
        Backings backings = new Backings(section);
        List<Backing> all = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).trim()) {
                Backing backing = backings.behind(i);
                all.add(backing);
                if (backing.stretches().isEmpty() && !held.contains(i)) {
                    notices.add(backings.nothingBehind(i)
                            .cure(Cure.firstOf(Stream.concat(pins.apply(i), Packing.behind(section, i)))
                                    .orElse(backings.noWay(blocked.apply(i)))));
                }
            }
        }
        return List.copyOf(all);
    }

    private Cure noWay(List<Integer> blocked) {
        List<String> names = blocked.stream().map(this::called).toList();
        return Cure.of(
                blocked.isEmpty()
                        ? BackingNotices.NOTHING_NEAR
                        : BackingNotices.NO_ROOM_FOR_THE_TOOL
                                .with("bodies", Listing.names(names))
                                .with("leave", names.size() == 1 ? "leaves" : "leave"));
    }

    private Notice nothingBehind(int number) {
        Placed placed = section.body(number).placed().orElseThrow();
        Notice notice = against(number).isPresent()
                ? BackingNotices.NOT_SQUARE.with(
                        "target", called(against(number).getAsInt()))
                : BackingNotices.NOTHING_BEHIND.with("reach", Figure.thumb(REACH));
        return notice.at(placed.piece().mark()).of(placed.name());
    }

    /** What takes a nail and a piece lies against, by the longest contact. */
    private OptionalInt against(int number) {
        return section.contacts().stream()
                .filter(contact -> contact.of(number)
                        && contact.length() >= LEAST_STRETCH
                        && targets.contains(contact.other(number)))
                .max(Comparator.comparingDouble(Contact::length))
                .map(contact -> OptionalInt.of(contact.other(number)))
                .orElse(OptionalInt.empty());
    }

    private String called(int body) {
        return section.body(body).piece() ? "'" + section.name(body) + "'" : "the " + section.name(body);
    }

    /** What is behind its shown faces; else, where it lies flat against what takes a nail, behind the face away from that. */
    private Backing behind(int number) {
        Backing shown = behindShown(number);
        return shown.stretches().isEmpty()
                ? new Backing(number, behind(freeAcross(number), section.body(number)))
                : shown;
    }

    /** Its straight faces across from what takes a nail and it lies flat against, with room for a tool before them. */
    private List<Line> freeAcross(int number) {
        Outline own = section.body(number).outline();
        List<Line> free = new ArrayList<>();
        for (Contact contact : section.contacts()) {
            boolean flat = contact.of(number)
                    && contact.length() >= LEAST_STRETCH
                    && targets.contains(contact.other(number))
                    && contact.stretch().filter(Line.class::isInstance).isPresent();
            if (flat) {
                Point along = contact.to().minus(contact.from()).unit();
                own.segments().stream()
                        .filter(Line.class::isInstance)
                        .map(Line.class::cast)
                        .filter(face -> Math.abs(face.direction(0).cross(along)) < Tolerance.SAME_DIRECTION)
                        .filter(face -> !own.holds(
                                face.at(0.5).plus(face.direction(0).right().times(Tolerance.SAW_CUT))))
                        .filter(face -> Math.abs(contact.at()
                                        .minus(face.from())
                                        .dot(face.direction(0).right()))
                                <= NARROW + Tolerance.TOUCHING)
                        .filter(face -> roomBefore(face, number))
                        .forEach(free::add);
            }
        }
        return free;
    }

    /** Whether a tool gets square before the middle of a face when its piece is put up: what comes later is not in its way. */
    private boolean roomBefore(Line face, int number) {
        Point out = face.direction(0).right();
        List<Outline> up = IntStream.range(0, section.bodies().size())
                .filter(i -> i <= number || section.body(i).standing())
                .mapToObj(i -> section.body(i).outline())
                .toList();
        return IntStream.rangeClosed(1, (int) (TOOL / LEAST_STRETCH))
                .mapToObj(i -> face.at(0.5).plus(out.times(i * LEAST_STRETCH)))
                .noneMatch(place -> up.stream().anyMatch(outline -> outline.holds(place)));
    }

    private Backing behindShown(int number) {
        Body body = section.body(number);
        List<Line> straight = straight(number, body);
        if (!straight.isEmpty()) {
            List<Stretch> open = behind(straight, body);
            return new Backing(number, open.isEmpty() ? behind(coveredLater(number), body) : open);
        }
        List<Line> chords = chords(number);
        List<Stretch> square = behind(chords, body);
        return new Backing(number, square.isEmpty() ? behind(upright(chords), body) : square);
    }

    private List<Stretch> behind(List<Line> faces, Body body) {
        List<Stretch> stretches = new ArrayList<>();
        for (Line face : faces) {
            for (int target : targets) {
                behind(face, body.outline(), target, stretches);
            }
        }
        return stretches;
    }

    private List<Line> straight(int number, Body body) {
        Piece piece = body.placed().orElseThrow().piece();
        if (piece.stock().board() && piece.stock().lying()) {
            Set<String> nailed =
                    body.outline().box().width() <= NARROW ? Set.of("top", "bottom", "face") : Set.of("top", "bottom");
            return body.outline().strokes().stream()
                    .filter(stroke -> nailed.contains(stroke.member()))
                    .map(Stroke::segment)
                    .filter(Line.class::isInstance)
                    .map(Line.class::cast)
                    .toList();
        }
        return shown(number)
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .toList();
    }

    /** What of its straight faces a later piece lies on: a nail goes in there before that is put up. */
    private List<Line> coveredLater(int number) {
        List<Line> covered = new ArrayList<>();
        for (Contact contact : section.contacts()) {
            int other = contact.a() == number ? contact.b() : contact.a();
            boolean later =
                    contact.of(number) && other > number && section.body(other).inStack();
            if (later && contact.stretch().filter(Line.class::isInstance).isPresent()) {
                Line line = new Line(contact.from(), contact.to());
                covered.add(contact.a() == number ? line : new Line(line.to(), line.from()));
            }
        }
        return covered;
    }

    private List<Line> chords(int number) {
        return shown(number)
                .filter(Arc.class::isInstance)
                .map(arc -> new Line(arc.from(), arc.to()))
                .toList();
    }

    /** What the piece shows on the room side. */
    private Stream<Segment> shown(int number) {
        return section.members().stream()
                .filter(member -> member.body() == number)
                .map(Member::segments)
                .flatMap(List::stream);
    }

    /** The chords as seen from straight in front, so that nails square to them are level; a level chord shows none. */
    private static List<Line> upright(List<Line> chords) {
        return chords.stream()
                .map(chord -> new Line(
                        chord.from(), new Point(chord.from().x(), chord.to().y())))
                .filter(line -> line.length() >= LEAST_STRETCH)
                .toList();
    }

    /** Turns the plane so that the face lies along x and nails run up; then everything is a question of heights. */
    private void behind(Line face, Outline own, int target, List<Stretch> out) {
        Point way = face.direction(0);
        Motion turned = new Motion(way.x(), way.y(), -way.y(), way.x(), 0, 0);
        Point start = turned.apply(face.from());
        Motion level = turned.then(Motion.shift(-start.x(), -start.y()));
        Shafts piece = Shafts.of(own.moved(level));
        Shafts behind = Shafts.of(withoutCovering(target).moved(level));
        double length = face.length();
        List<Double> breaks = Shafts.breaks(piece, behind, length);
        double from = Double.NaN;
        double until = Double.NaN;
        for (int i = 0; i + 1 < breaks.size(); i++) {
            double[] span = within(piece, behind, breaks.get(i), breaks.get(i + 1));
            if (span.length == 2) {
                if (!Double.isNaN(from) && span[0] - until > Tolerance.SNAP) {
                    add(face, target, from, until, out);
                    from = Double.NaN;
                }
                from = Double.isNaN(from) ? span[0] : from;
                until = span[1];
            }
        }
        if (!Double.isNaN(from)) {
            add(face, target, from, until, out);
        }
    }

    private static void add(Line face, int target, double from, double until, List<Stretch> out) {
        if (until - from >= LEAST_STRETCH) {
            double length = face.length();
            out.add(new Stretch(target, face.at(from / length), face.at(until / length)));
        }
    }

    /** Plaster or wallboard in front of the framing gives a nail nothing. */
    private Outline withoutCovering(int target) {
        Outline outline = section.body(target).outline();
        boolean wall = !section.body(target).piece();
        return wall ? outline.moved(Motion.shift(-section.stack().space().wall().covering(), 0)) : outline;
    }

    /** The part of an interval, on which both heights run straight, where the gap behind the piece is within reach. */
    private static double[] within(Shafts piece, Shafts behind, double from, double to) {
        double first = from + (to - from) / 4;
        double last = from + 3 * (to - from) / 4;
        double gapFirst = behind.entryAbove(first, piece.exit(first)) - piece.exit(first);
        double gapLast = behind.entryAbove(last, piece.exit(last)) - piece.exit(last);
        if (Double.isNaN(gapFirst) || Double.isNaN(gapLast)) {
            return new double[0];
        }
        double slope = (gapLast - gapFirst) / (last - first);
        double start = from;
        double end = to;
        if (Math.abs(slope) < Tolerance.COINCIDENT) {
            return gapFirst <= REACH + Tolerance.TOUCHING ? new double[] {from, to} : new double[0];
        }
        double atReach = first + (REACH - gapFirst) / slope;
        if (slope > 0) {
            end = Math.min(end, atReach);
        } else {
            start = Math.max(start, atReach);
        }
        return end > start ? new double[] {start, end} : new double[0];
    }
}
