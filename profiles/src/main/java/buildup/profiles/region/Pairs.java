package buildup.profiles.region;

import buildup.profiles.outline.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds which of many boxes lie near each other, without asking each about every other. */
public final class Pairs {
    /** Two boxes by their numbers as given, the lesser first. */
    public record Pair(int first, int second) {
        // spelled out: what a record does of itself as a key is slow to start
        @Override
        public boolean equals(Object other) {
            return other instanceof Pair pair && pair.first == first && pair.second == second;
        }

        @Override
        public int hashCode() {
            return 31 * first + second;
        }
    }

    /** Of no more boxes than this each is asked about every other sooner than an index is made. */
    private static final int FEW = 64;

    private Pairs() {}

    /**
     * The pairs that come within a distance of each other, by their first number, then by their second.
     *
     * @param within inches; below 0, the boxes must overlap by so much both ways
     */
    public static List<Pair> near(List<Box> boxes, double within) {
        return boxes.size() <= FEW ? each(boxes, within) : indexed(boxes, within);
    }

    private static List<Pair> each(List<Box> boxes, double within) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                if (boxes.get(i).near(boxes.get(j), within)) {
                    pairs.add(new Pair(i, j));
                }
            }
        }
        return pairs;
    }

    private static List<Pair> indexed(List<Box> boxes, double within) {
        STRtree index = new STRtree();
        for (int i = 0; i < boxes.size(); i++) {
            index.insert(envelope(boxes.get(i)), i);
        }
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            int first = i;
            Box box = boxes.get(i);
            Envelope reach = envelope(box);
            reach.expandBy(Math.max(0, within));
            index.query(reach, found -> {
                int second = (Integer) found;
                if (second > first && box.near(boxes.get(second), within)) {
                    pairs.add(new Pair(first, second));
                }
            });
        }
        pairs.sort(Comparator.comparingInt(Pair::first).thenComparingInt(Pair::second));
        return pairs;
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.back(), box.face(), box.bottom(), box.top());
    }
}
