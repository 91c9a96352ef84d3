package buildup.profiles.trace;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.trace.fit.Noise;
import java.util.List;

/**
 * A tracing as an outline, back at x = 0 and lowest point at y = 0.
 *
 * @param outline its strokes in the order of {@code members}
 * @param points the tracing in the outline's frame, inches; as restored where that was asked
 * @param members how well each stroke fits
 * @param farthest the point that lies farthest from the outline
 * @param largest how far that is, in
 * @param rms root mean square of the distances of all points, in
 * @param noise of the points, as the fit went by it
 */
public record Traced(
        Outline outline,
        List<Point> points,
        List<Fit> members,
        Point farthest,
        double largest,
        double rms,
        Noise noise) {
    /**
     * One stroke and its points.
     *
     * @param points how many points lie nearest to it
     * @param largest greatest distance of one of them, in; 0 without any
     * @param rms root mean square of their distances, in; 0 without any
     * @param unseen the longest stretch of it that has no point, in
     * @param unseenAt the middle of that stretch
     */
    public record Fit(String member, int points, double largest, double rms, double unseen, Point unseenAt) {}

    public Traced {
        points = List.copyOf(points);
        members = List.copyOf(members);
    }
}
