package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Drive;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Rows of nails through a piece into a wedge behind it that does not stand there yet. What is found is put into the stack
 * with the wedge and tried there.
 */
final class WedgeNails {
    /** So many rows are told of, in case the first brings something else. */
    private static final int MOST = 2;

    /** More air than this before the wedge holds nothing, in: common practice, no source. */
    private static final double MOST_AIR = 3.0 / 8;

    /** A head this far above the middle of the back is in its upper half, also where the nail is tilted, in. */
    private static final double APART = 1.0 / 4;

    /** So far behind the wedge wood is looked for, in. */
    private static final double BEYOND = 2;

    private final Nailing nailing;

    WedgeNails(Nailing nailing) {
        this.nailing = nailing;
    }

    /** A row in words and as what a person adds to the document. */
    record Row(Phrase words, List<Change> changes) {}

    private record Shot(Spot spot, double angle, Fastener.Cut cut, double spare) {}

    /**
     * Rows into a wedge, the plainest first.
     *
     * @param wedge its corners, in either sense of walk, convex
     * @param back of the piece, from its foot up: what goes through its upper half holds its upper edge
     */
    Stream<Row> into(List<Point> wedge, int piece, Line back) {
        List<Shot> shots = new ArrayList<>();
        for (Proposals.Seat seat : Proposals.Seat.of(nailing, piece)) {
            if (seat.spot().at().minus(back.at(0.5)).dot(back.direction(0)) > APART) {
                seat.angles().stream()
                        .flatMap(List::stream)
                        .forEach(angle -> shot(seat.spot(), angle, wedge).ifPresent(shots::add));
            }
        }
        return shots.stream()
                .sorted(Comparator.comparingDouble((Shot shot) -> Math.abs(shot.angle()))
                        .thenComparing(shot -> -Math.rint(shot.spare() / Tolerance.TOUCHING)))
                .limit(MOST)
                .map(this::row);
    }

    /** The first nail of the list that bites enough in the wedge, or through it in what backs that, and ends inside. */
    private Optional<Shot> shot(Spot spot, double angle, List<Point> wedge) {
        Point way = spot.way(angle);
        double[] inside = inside(spot.at(), way, wedge);
        if (inside[0] >= inside[1]) {
            return Optional.empty();
        }
        Drive drive = nailing.shots().follow(spot.at(), way, inside[1] + BEYOND, spot.body());
        double ends = drive.crossings().stream()
                .filter(crossing -> crossing.holds() && Math.abs(crossing.from() - inside[1]) <= Tolerance.TOUCHING)
                .mapToDouble(Crossing::to)
                .findFirst()
                .orElse(inside[1]);
        double thickness = drive.in(spot.body());
        double air = drive.crossings().stream()
                .filter(crossing -> crossing.stuff() == Crossing.Stuff.AIR && crossing.from() < inside[0])
                .mapToDouble(crossing -> Math.min(inside[0], crossing.to()) - crossing.from())
                .sum();
        if (thickness + air < inside[0] - Tolerance.TOUCHING || air > MOST_AIR) {
            return Optional.empty();
        }
        return nailing.fasteners().stream()
                .filter(fastener -> fastener.kind() == Fastener.Kind.NAIL && !fastener.headless())
                .filter(fastener -> !Proposals.splits(fastener, thickness))
                .flatMap(fastener -> fastener.cuts().stream())
                .filter(cut -> {
                    double length = cut.length().toInches();
                    return length - inside[0] >= Nailing.needed(cut.fastener())
                            && length <= ends - Proposals.BEFORE_POINT
                            && nailing.reaching()
                                    .of(spot, way, cut, spot.body())
                                    .free();
                })
                .findFirst()
                .map(cut -> new Shot(spot, angle, cut, inside[1] - inside[0]));
    }

    /** From where to where along a way it is inside a convex ring, in; the first no less than the last where it never is. */
    private static double[] inside(Point from, Point way, List<Point> ring) {
        double in = 0;
        double out = Double.MAX_VALUE;
        Point middle = ring.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / ring.size());
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point side = ring.get((i + 1) % ring.size()).minus(a);
            if (side.length() <= Tolerance.SNAP) {
                continue;
            }
            Point inward = side.cross(middle.minus(a)) > 0 ? side.left() : side.right();
            double toward = way.dot(inward);
            double missing = a.minus(from).dot(inward);
            if (Math.abs(toward) <= Tolerance.SAME_DIRECTION * side.length()) {
                out = missing > 0 ? 0 : out;
            } else if (toward > 0) {
                in = Math.max(in, missing / toward);
            } else {
                out = Math.min(out, missing / toward);
            }
        }
        return new double[] {in, out};
    }

    private Row row(Shot shot) {
        String piece = nailing.timber().body(shot.spot().body()).name();
        String name = "into the block behind " + piece;
        String place = "fastenings." + name + ".";
        Figure out = Figure.length(shot.spot().at().x());
        Figure up = Figure.length(shot.spot().at().y());
        boolean tilts = Math.abs(shot.angle()) > 0;
        Phrase words = Phrase.of("{use} at {out} out, {up} up{tilt}")
                .with("use", shot.cut().phrase())
                .with("out", out)
                .with("up", up)
                .with("tilt", tilts ? RowEdits.angled(shot.angle()) : Phrase.of(""));
        List<Change> changes = new ArrayList<>(List.of(
                Change.last("fastenings", name),
                new Change(place + "piece", Phrase.of("{piece}").with("piece", piece)),
                new Change(place + "use", shot.cut().phrase()),
                new Change(place + "at.out", Phrase.of("{out}").with("out", out)),
                new Change(place + "at.up", Phrase.of("{up}").with("up", up))));
        if (tilts) {
            changes.add(new Change(place + "angle", Phrase.of("" + Math.round(shot.angle()))));
        }
        return new Row(words, changes);
    }
}
