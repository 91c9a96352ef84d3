package buildup.engine.room.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Studs or joists that stand in a row.
 *
 * @param places where they were found, to their middles, in; empty: they stand at even spaces
 * @param every from middle to middle, in
 * @param first the middle of the first, in
 * @param width of each, in
 */
public record FramingRow(List<Double> places, double every, double first, double width) {
    public FramingRow {
        places = List.copyOf(places);
    }

    /** Their middles from 0 up to a length, in. */
    public List<Double> upTo(double length) {
        if (!places.isEmpty()) {
            return places;
        }
        List<Double> all = new ArrayList<>();
        for (int i = 0; first + i * every <= length; i++) {
            all.add(first + i * every);
        }
        return List.copyOf(all);
    }

    /** The middle that is nearest to a place, of those up to a length; a row has at least one. */
    public double nearest(double place, double length) {
        if (places.isEmpty()) {
            double last = Math.max(0, Math.floor((length - first) / every));
            return first + every * Math.min(last, Math.max(0, Math.ceil((place - first) / every - 0.5)));
        }
        return places.stream()
                .min(Comparator.comparingDouble(middle -> Math.abs(middle - place)))
                .orElse(first);
    }
}
