package buildup.profiles.trace.ring;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds where a ring of points crosses itself. Pieces of about one length are laid into squares of that length, and
 * only those in one square are asked against each other.
 */
public final class Overlaps {
    /** Longer steps than so many usual ones are divided, so that no piece lies in many squares. */
    private static final double LONGEST = 2;

    private Overlaps() {}

    /** The ring meets itself at a place, in the steps behind two of its points. */
    public record Crossing(Point at, Dot first, Dot second) {}

    /**
     * The first crossing that cuts off more than {@code least} square inches; noise makes smaller ones by the dozen,
     * which mean nothing.
     */
    public static Optional<Crossing> first(List<Dot> ring, double least) {
        double square = RingSizes.length(ring) / ring.size() * LONGEST;
        double[] twice = twiceAreas(ring);
        Map<Long, List<Piece>> squares = new HashMap<>();
        for (int i = 0; i < ring.size(); i++) {
            if (ring.get(i).open()) {
                continue;
            }
            Point from = ring.get(i).at();
            Point to = ring.get((i + 1) % ring.size()).at();
            int parts = (int) Math.ceil(from.distance(to) / square);
            for (int k = 0; k < parts; k++) {
                Piece piece = new Piece(
                        i, new Line(from.towards(to, (double) k / parts), from.towards(to, (k + 1.0) / parts)));
                for (long key : piece.squares(square)) {
                    List<Piece> there = squares.computeIfAbsent(key, any -> new ArrayList<>());
                    for (Piece other : there) {
                        Optional<Crossing> crossing = crossing(ring, twice, other, piece, least);
                        if (crossing.isPresent()) {
                            return crossing;
                        }
                    }
                    there.add(piece);
                }
            }
        }
        return Optional.empty();
    }

    private record Piece(int step, Line line) {
        List<Long> squares(double square) {
            List<Long> keys = new ArrayList<>();
            long left = (long) Math.floor(Math.min(line.from().x(), line.to().x()) / square);
            long right = (long) Math.floor(Math.max(line.from().x(), line.to().x()) / square);
            long low = (long) Math.floor(Math.min(line.from().y(), line.to().y()) / square);
            long high = (long) Math.floor(Math.max(line.from().y(), line.to().y()) / square);
            for (long x = left; x <= right; x++) {
                for (long y = low; y <= high; y++) {
                    keys.add(x * 0x100000000L + y);
                }
            }
            return keys;
        }
    }

    private static double[] twiceAreas(List<Dot> ring) {
        double[] twice = new double[ring.size()];
        Point home = ring.get(0).at();
        for (int i = 0; i + 1 < ring.size(); i++) {
            twice[i + 1] = twice[i]
                    + ring.get(i).at().minus(home).cross(ring.get(i + 1).at().minus(home));
        }
        return twice;
    }

    private static Optional<Crossing> crossing(List<Dot> ring, double[] twice, Piece a, Piece b, double least) {
        int n = ring.size();
        if (a.step() == b.step() || (a.step() + 1) % n == b.step() || (b.step() + 1) % n == a.step()) {
            return Optional.empty();
        }
        if (!a.line().box().near(b.line().box(), 0)) {
            return Optional.empty();
        }
        return Crossings.of(a.line(), b.line(), Tolerance.COINCIDENT).stream()
                .filter(at -> cutOff(ring, twice, a.step(), b.step(), at) > least)
                .map(at -> new Crossing(at, ring.get(a.step()), ring.get(b.step())))
                .findFirst();
    }

    /** Area of the smaller of the two loops that a crossing makes of the ring. */
    private static double cutOff(List<Dot> ring, double[] twice, int a, int b, Point at) {
        Point home = ring.get(0).at();
        Point start = ring.get(a + 1).at().minus(home);
        Point end = ring.get(b).at().minus(home);
        Point p = at.minus(home);
        double loop = (twice[b] - twice[a + 1] + p.cross(start) + end.cross(p)) / 2;
        double whole = twice[ring.size() - 1] / 2;
        return Math.min(Math.abs(loop), Math.abs(whole - loop));
    }
}
