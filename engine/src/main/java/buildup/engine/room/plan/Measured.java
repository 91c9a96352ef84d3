package buildup.engine.room.plan;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What was measured along a stretch: straight between the places, level before the first and behind the last.
 *
 * @param stations at least one, from left to right, no two at one place
 */
public record Measured(List<Station> stations) {
    public Measured {
        stations = List.copyOf(stations);
    }

    /** The amount at a place, in. */
    public double at(double along) {
        Station before = stations.get(0);
        if (along <= before.along()) {
            return before.amount();
        }
        for (Station next : stations) {
            if (along <= next.along()) {
                double way = next.along() - before.along();
                double share = way > 0 ? (along - before.along()) / way : 1;
                return before.amount() + share * (next.amount() - before.amount());
            }
            before = next;
        }
        return before.amount();
    }

    /** The part between two places, with a station at each of them. */
    public Measured between(double from, double to) {
        List<Station> part = new ArrayList<>(List.of(new Station(from, at(from))));
        stations.stream()
                .filter(one -> one.along() > from + Tolerance.COINCIDENT && one.along() < to - Tolerance.COINCIDENT)
                .forEach(part::add);
        part.add(new Station(to, at(to)));
        return new Measured(part);
    }

    /** Each amount times {@code sign}, less {@code level}. */
    public Measured from(double level, double sign) {
        return new Measured(stations.stream()
                .map(one -> new Station(one.along(), sign * (one.amount() - level)))
                .toList());
    }

    /** The lowest, the first of several. */
    public Station least() {
        return stations.stream()
                .min(Comparator.comparingDouble(Station::amount))
                .orElseThrow();
    }

    /** The highest, the first of several. */
    public Station most() {
        // the first of equals, as least() takes it
        return stations.stream()
                .reduce((best, one) -> one.amount() > best.amount() ? one : best)
                .orElseThrow();
    }

    /** How far the highest is from the lowest, in. */
    public double variation() {
        return most().amount() - least().amount();
    }

    /** Where the line goes through 0 between its stations, and the stations themselves, from left to right. */
    public List<Station> corners() {
        List<Station> corners = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            Station here = stations.get(i);
            if (i > 0 && stations.get(i - 1).amount() * here.amount() < 0) {
                Station before = stations.get(i - 1);
                double share = before.amount() / (before.amount() - here.amount());
                corners.add(new Station(before.along() + share * (here.along() - before.along()), 0));
            }
            corners.add(here);
        }
        return List.copyOf(corners);
    }

    /** The area between the line and 0 where it is above (1) or below (-1), sq in: trapezoids between its corners. */
    public double area(int side) {
        List<Station> corners = corners();
        return IntStream.range(1, corners.size())
                .mapToDouble(i -> (corners.get(i).along() - corners.get(i - 1).along())
                        * (Math.max(0, side * corners.get(i).amount())
                                + Math.max(0, side * corners.get(i - 1).amount()))
                        / 2)
                .sum();
    }

    /** How much of the length lies below 0, in. */
    public double lengthBelow() {
        List<Station> corners = corners();
        return IntStream.range(1, corners.size())
                .filter(i -> corners.get(i).amount() + corners.get(i - 1).amount() < 0)
                .mapToDouble(i -> corners.get(i).along() - corners.get(i - 1).along())
                .sum();
    }

    /**
     * The straight line that follows it best: the steepness, in an inch, with which highest and lowest of what is left
     * are nearest. A line of the least spread lies on an edge of the upper or the lower hull, so it is enough to try
     * the slopes between all pairs of stations; on equal spread the least steep is taken.
     */
    public double steepness() {
        double best = 0;
        double spread = variation();
        for (int i = 0; i < stations.size(); i++) {
            for (int j = i + 1; j < stations.size(); j++) {
                double slope = (stations.get(j).amount() - stations.get(i).amount())
                        / (stations.get(j).along() - stations.get(i).along());
                double left = less(slope).variation();
                boolean better = left < spread - Tolerance.COINCIDENT;
                boolean flatter = left <= spread + Tolerance.COINCIDENT && Math.abs(slope) < Math.abs(best);
                if (better || flatter) {
                    best = slope;
                    spread = left;
                }
            }
        }
        return best;
    }

    /** The same seen from a line of that steepness through its left end. */
    public Measured less(double slope) {
        double left = stations.get(0).along();
        return new Measured(stations.stream()
                .map(one -> new Station(one.along(), one.amount() - slope * (one.along() - left)))
                .toList());
    }
}
