package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two rows of nails that want the same place: their shanks cross in the section, and somewhere along the run both stand at
 * the same place. Rows are taken to start together where none says where its first stands.
 */
final class Collisions {
    /** Nails of two rows farther apart than this along the run pass each other, in: common practice, no source. */
    private static final double PASS = 1.0 / 4;

    /** Of its spacing, where a row begins instead: halfway between the others first. */
    private static final List<Double> SHARES = List.of(0.5, 0.25, 0.75, 0.125, 0.375);

    /** Places on its face that are tried each way, and how far apart, in. */
    private static final int STEPS = 12;

    private static final double APART = 1.0 / 4;

    /** So far along the run is looked, in. */
    private static final double RUN = 240;

    private Collisions() {}

    /** @param curing whether the cures are told: else the long way to one is not gone */
    static void say(Nailing nailing, List<Fixed> all, boolean curing, Notices notices) {
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Fixed one = all.get(i);
                Fixed other = all.get(j);
                OptionalDouble along = along(one.fastening(), other.fastening());
                if (along.isPresent() && near(one, other) < apart(one, other)) {
                    Notice notice = notice(one, other, along.getAsDouble());
                    notices.add(notice.cure(Cure.firstOf(curing ? cures(nailing, one, other, all) : started(other, all))
                            .orElse(Cure.of(Cure.NONE))));
                }
            }
        }
    }

    /** Whether a nail would meet none of some rows, wherever along the run they stand. */
    static boolean free(Fixed nail, List<Fixed> rows) {
        return rows.stream().noneMatch(row -> near(nail, row) < apart(nail, row));
    }

    /** A row begun where it meets none of some others: as it is, or elsewhere along the run; nothing when it always does. */
    static Optional<Fixed> between(Fixed row, List<Fixed> others) {
        double spacing = row.fastening().spacing();
        List<Fixed> crossed = others.stream()
                .filter(other -> near(row, other) < apart(row, other))
                .toList();
        return DoubleStream.concat(
                        DoubleStream.of(row.fastening().first()),
                        SHARES.stream().mapToDouble(share -> spacing * share))
                .filter(first -> first <= spacing)
                .mapToObj(first -> row.as(row.fastening().startedAt(first)))
                .filter(moved -> crossed.stream()
                        .allMatch(other ->
                                along(moved.fastening(), other.fastening()).isEmpty()))
                .findFirst();
    }

    /** Two rows into the wall both want the studs: there they are set apart in height, elsewhere along the run. */
    private static Stream<Cure> cures(Nailing nailing, Fixed one, Fixed other, List<Fixed> all) {
        return inWall(nailing, one) && inWall(nailing, other)
                ? Stream.concat(moved(nailing, other, all), started(other, all))
                : Stream.concat(started(other, all), moved(nailing, other, all));
    }

    private static boolean inWall(Nailing nailing, Fixed row) {
        return row.beyond().stream().anyMatch(grip -> nailing.timber().wall(grip.body()));
    }

    private static Stream<Cure> started(Fixed row, List<Fixed> all) {
        OptionalDouble first = elsewhere(row, all);
        return first.isPresent()
                ? Stream.of(new RowEdits(row.fastening()).started(first.getAsDouble()))
                : Stream.empty();
    }

    /** The nearest place on its own flat face where the same fastener is sound and meets none of the others. */
    private static Stream<Cure> moved(Nailing nailing, Fixed row, List<Fixed> all) {
        Outline outline = nailing.timber().body(row.piece()).outline();
        Spot spot = Spot.nearest(row.piece(), outline, row.head());
        boolean level = Math.abs(spot.inward().y()) > Math.abs(spot.inward().x());
        boolean square =
                Math.min(Math.abs(spot.inward().y()), Math.abs(spot.inward().x())) < Tolerance.SAME_DIRECTION;
        Optional<Stroke> face = outline.strokes().stream()
                .filter(stroke -> stroke.segment() instanceof Line
                        && stroke.segment().distance(row.head()) <= Tolerance.TOUCHING
                        && stroke.member().equals(spot.member()))
                .findFirst();
        List<Fixed> others = others(row, all);
        return face.filter(stroke -> square).stream().flatMap(stroke -> {
            double length = stroke.segment().length();
            double now = stroke.segment().nearest(row.head());
            return IntStream.rangeClosed(1, STEPS)
                    .boxed()
                    .flatMap(step -> Stream.of(now + step * APART / length, now - step * APART / length))
                    .filter(t -> t > 0 && t < 1)
                    .map(t -> nailing.timber().onTheTape(row.piece(), stroke, t))
                    .map(to -> nailing.fixed(to, row.fastening().at(to.at()), row.after()))
                    .filter(nail -> nail.sound() && free(nail, others))
                    .limit(1)
                    .map(nail -> new Cure(
                            FixingNotices.MOVE_ROW
                                    .with("row", row.fastening().name())
                                    .with(
                                            "to",
                                            Figure.length(
                                                    level
                                                            ? nail.head().x()
                                                            : nail.head().y()))
                                    .with("way", level ? "out" : "up"),
                            new RowEdits(row.fastening())
                                    .movedTo(
                                            level
                                                    ? nail.head().x()
                                                    : nail.head().y(),
                                            !level)));
        });
    }

    private static List<Fixed> others(Fixed row, List<Fixed> all) {
        return all.stream()
                .filter(other ->
                        !other.fastening().mark().equals(row.fastening().mark()))
                .toList();
    }

    private static Notice notice(Fixed one, Fixed other, double along) {
        boolean heads = one.head().distance(other.head()) < headRadius(one) + headRadius(other);
        Point at = heads ? one.head() : meeting(one, other);
        return (heads ? FixingNotices.ONE_HEAD : FixingNotices.NAILS_CROSS)
                .with("nail", NailWords.label(one.fastening()))
                .with("other", NailWords.within(other.fastening()))
                .with("out", Figure.length(at.x()))
                .with("up", Figure.length(at.y()))
                .with("along", Figure.length(along))
                .at(other.fastening().mark())
                .of(other.fastening().piece());
    }

    /** Where else along the run a row could start, so that it meets none of the others; tried. */
    private static OptionalDouble elsewhere(Fixed row, List<Fixed> all) {
        double spacing = row.fastening().spacing();
        List<Fixed> others = others(row, all);
        for (double share : SHARES) {
            Fastening moved = row.fastening().startedAt(spacing * share);
            boolean free = others.stream()
                    .filter(other -> near(row, other) < apart(row, other))
                    .allMatch(other -> along(moved, other.fastening()).isEmpty());
            if (free) {
                return OptionalDouble.of(spacing * share);
            }
        }
        return OptionalDouble.empty();
    }

    /** Where along the run two rows first stand at the same place. */
    private static OptionalDouble along(Fastening one, Fastening other) {
        for (double a = one.first(); a <= RUN; a += one.spacing()) {
            double steps = Math.rint((a - other.first()) / other.spacing());
            if (steps >= 0 && Math.abs(other.first() + steps * other.spacing() - a) < PASS) {
                return OptionalDouble.of(a);
            }
        }
        return OptionalDouble.empty();
    }

    private static double apart(Fixed one, Fixed other) {
        return (diameter(one) + diameter(other)) / 2;
    }

    private static double diameter(Fixed fixed) {
        return fixed.fastening().use().fastener().diameter().toInches();
    }

    private static double headRadius(Fixed fixed) {
        return fixed.fastening().use().fastener().head().toInches() / 2;
    }

    /** How near the shanks come in the section. */
    private static double near(Fixed one, Fixed other) {
        Line a = new Line(one.head(), one.point());
        Line b = new Line(other.head(), other.point());
        if (crosses(a, b)) {
            return 0;
        }
        return Math.min(
                Math.min(a.distance(b.from()), a.distance(b.to())), Math.min(b.distance(a.from()), b.distance(a.to())));
    }

    private static boolean crosses(Line a, Line b) {
        Point along = a.to().minus(a.from());
        Point across = b.to().minus(b.from());
        boolean parted = along.cross(b.from().minus(a.from())) * along.cross(b.to().minus(a.from())) < 0;
        return parted && across.cross(a.from().minus(b.from())) * across.cross(a.to().minus(b.from())) < 0;
    }

    private static Point meeting(Fixed one, Fixed other) {
        Line a = new Line(one.head(), one.point());
        Line b = new Line(other.head(), other.point());
        Point along = a.to().minus(a.from());
        Point across = b.to().minus(b.from());
        double turn = along.cross(across);
        if (Math.abs(turn) <= Tolerance.COINCIDENT) {
            return other.head();
        }
        double share = b.from().minus(a.from()).cross(across) / turn;
        return a.from().plus(along.times(Math.max(0, Math.min(1, share))));
    }
}
