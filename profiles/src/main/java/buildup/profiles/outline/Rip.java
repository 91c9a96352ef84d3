package buildup.profiles.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Takes a strip off one side of an outline with a straight cut, as a table saw does. */
public final class Rip {
    /** The four sides of a piece as it is drawn. */
    public enum Side {
        BACK(Motion.turn(-90)),
        FACE(Motion.turn(90)),
        BOTTOM(Motion.turn(180)),
        TOP(Motion.NONE);

        /** Brings this side to the top. */
        private final Motion up;

        Side(Motion up) {
            this.up = up;
        }
    }

    private Rip() {}

    /**
     * What is left when {@code amount} inches come off {@code side}; more than one outline when the cut leaves
     * separate parts, none when nothing is left. What is left and thinner than touching is dust, and no part. The new
     * straight edge carries the name of the side.
     */
    public static List<Outline> off(Outline outline, Side side, double amount) {
        Outline upright = outline.moved(side.up);
        double level = upright.box().top() - amount;
        if (amount <= 0) {
            return List.of(outline);
        }
        if (level <= upright.box().bottom() + Tolerance.TOUCHING) {
            return List.of();
        }
        Motion back = inverse(side.up);
        return below(upright, level, side.name().toLowerCase(Locale.ROOT)).stream()
                .map(part -> part.moved(back))
                .toList();
    }

    private static Motion inverse(Motion turn) {
        return new Motion(turn.a(), turn.c(), turn.b(), turn.d(), 0, 0);
    }

    /** A run of strokes below the cut, from where the walk comes down through it to where it goes up again. */
    private record Chain(List<Stroke> strokes) {
        double start() {
            return strokes.get(0).segment().from().x();
        }

        double end() {
            return strokes.get(strokes.size() - 1).segment().to().x();
        }
    }

    private static List<Outline> below(Outline outline, double level, String cut) {
        List<Stroke> pieces = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            split(stroke, level, pieces);
        }
        int start = 0;
        while (start < pieces.size() && !(isBelow(pieces.get(start), level) && parts(pieces, start - 1, level))) {
            start++;
        }
        if (start == pieces.size()) {
            return List.of(outline);
        }
        List<Chain> chains = new ArrayList<>();
        List<Stroke> running = new ArrayList<>();
        for (int k = 0; k < pieces.size(); k++) {
            Stroke piece = pieces.get((start + k) % pieces.size());
            if (isBelow(piece, level)) {
                running.add(piece);
                if (parts(pieces, start + k, level)) {
                    chains.add(new Chain(List.copyOf(running)));
                    running.clear();
                }
            }
        }
        return rings(chains, cut);
    }

    private static void split(Stroke stroke, double level, List<Stroke> out) {
        Segment segment = stroke.segment();
        Box box = segment.box();
        Line cut = new Line(new Point(box.back() - 1, level), new Point(box.face() + 1, level));
        List<Double> places = new ArrayList<>(List.of(0.0));
        Crossings.of(segment, cut, Tolerance.COINCIDENT).stream()
                .map(segment::nearest)
                .sorted()
                .forEach(places::add);
        places.add(1.0);
        for (int i = 0; i + 1 < places.size(); i++) {
            Segment part = segment.part(places.get(i), places.get(i + 1));
            if (part.length() > Tolerance.COINCIDENT) {
                out.add(new Stroke(part, stroke.member()));
            }
        }
    }

    private static boolean isBelow(Stroke stroke, double level) {
        return stroke.segment().at(0.5).y() < level - Tolerance.COINCIDENT;
    }

    /**
     * Whether what is left parts after this piece: where the walk passes the cut, and where a hollow just reaches up to
     * it, but not on the tip of a point that just reaches it.
     */
    private static boolean parts(List<Stroke> pieces, int index, double level) {
        Stroke before = pieces.get(Math.floorMod(index, pieces.size()));
        Stroke after = pieces.get(Math.floorMod(index + 1, pieces.size()));
        Point tip = before.segment().to();
        if (Math.abs(tip.y() - level) > 2 * Tolerance.COINCIDENT) {
            return false;
        }
        Point up = tip.minus(before.segment().at(0.5));
        Point down = after.segment().at(0.5).minus(tip);
        return !isBelow(before, level) || !isBelow(after, level) || up.cross(down) < 0;
    }

    /** Closes chains along the cut: from where one ends, inward to the next start on its left. */
    private static List<Outline> rings(List<Chain> chains, String cut) {
        List<Chain> open = new ArrayList<>(chains);
        List<Outline> outlines = new ArrayList<>();
        while (!open.isEmpty()) {
            List<Stroke> ring = new ArrayList<>();
            Chain first = open.remove(0);
            ring.addAll(first.strokes());
            double at = first.end();
            double home = first.start();
            while (true) {
                double from = at;
                Chain next = open.stream()
                        .filter(chain -> chain.start() < from - Tolerance.COINCIDENT
                                && (home > from + Tolerance.COINCIDENT || chain.start() > home))
                        .max(Comparator.comparingDouble(Chain::start))
                        .orElse(null);
                Point end = ring.get(ring.size() - 1).segment().to();
                Point to =
                        (next == null ? ring : next.strokes()).get(0).segment().from();
                if (!end.near(to, Tolerance.COINCIDENT)) {
                    ring.add(new Stroke(new Line(end, to), cut));
                }
                if (next == null) {
                    break;
                }
                open.remove(next);
                ring.addAll(next.strokes());
                at = next.end();
            }
            if (!isDust(ring)) {
                outlines.add(Outline.closed(ring));
            }
        }
        return outlines;
    }

    private static boolean isDust(List<Stroke> ring) {
        Box box = Box.around(ring.stream().map(stroke -> stroke.segment().box()).toList());
        double twice = ring.stream()
                .mapToDouble(stroke -> stroke.segment().twiceArea())
                .sum();
        // no thicker than touching, one part with another
        return Math.abs(twice) / 2 < Tolerance.TOUCHING * Math.max(box.width(), box.height());
    }
}
