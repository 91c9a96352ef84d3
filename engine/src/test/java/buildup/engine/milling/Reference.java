package buildup.engine.milling;

import buildup.engine.Bench;
import buildup.profiles.Profile;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The tables of {@code reference/milling.md}, where their sources stand. */
final class Reference {
    private static final String TEXT = Bench.resource("/reference/milling.md");

    private Reference() {}

    static Stream<List<String>> rows(String heading) {
        String part = TEXT.substring(TEXT.indexOf("## " + heading));
        return part.substring(part.indexOf("|---"))
                .lines()
                .skip(1)
                .takeWhile(line -> line.startsWith("|"))
                .map(line -> Arrays.stream(
                                line.substring(1, line.lastIndexOf('|')).split("\\|", -1))
                        .map(String::strip)
                        .toList());
    }

    /** A profile of its points, as the table of undercuts writes them. */
    static Profile shape(String name, String points) {
        List<String> words = List.of(points.split(" "));
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            Point to = point(words.get((i + 1) % words.size()).split("@")[0]);
            strokes.add(new Stroke(segment(words.get(i), to), "side-" + (i + 1)));
        }
        return new Profile(name, "shape", Outline.closed(strokes), new Profile.Milled());
    }

    private static Segment segment(String word, Point to) {
        String[] parts = word.split("@");
        Point from = point(parts[0]);
        return parts.length == 1
                ? new Line(from, to)
                : new Arc(from, to, point(parts[1].substring(1)), parts[1].charAt(0) == '+');
    }

    private static Point point(String word) {
        String[] xy = word.split(",");
        return new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
    }
}
