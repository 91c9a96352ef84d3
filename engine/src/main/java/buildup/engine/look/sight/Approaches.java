package buildup.engine.look.sight;

import buildup.engine.look.sight.Approach.Showing;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Follows eyes that come nearer, along the floor or up a stair, and finds where each raw nailer first shows. Reads its
 * own block of the document, {@code approach:}.
 */
public final class Approaches {
    /** Steps looked at on the way before the first showing is narrowed down. */
    private static final int STEPS = 240;

    /** How far the place of the first showing is narrowed, as a share of the way: under 1/64 in on 30 ft. */
    private static final double NARROWED = 1.0 / (1 << 15);

    private Approaches() {}

    /** A straight way of an eye, as the document gives it. */
    public record Route(String name, Eye from, Eye to) {}

    /**
     * The ways under {@code approach:}.
     *
     * @param root the document, read with the stack's lengths
     */
    public static List<Route> read(Stack stack, Fields root, Notices notices) {
        List<Route> ways = new ArrayList<>();
        int number = 0;
        for (Fields entry : root.list("approach")) {
            number++;
            String name = entry.text("name").orElse("approach " + number);
            Optional<Eye> from = entry.fields("from").flatMap(fields -> eye(name, fields, stack, notices));
            Optional<Eye> to = entry.fields("to").flatMap(fields -> eye(name, fields, stack, notices));
            if (from.isPresent() && to.isPresent()) {
                ways.add(new Route(name, from.get(), to.get()));
            } else if (!entry.has("from") || !entry.has("to")) {
                notices.add(noWay(name, entry));
            }
        }
        return List.copyOf(ways);
    }

    private static Optional<Eye> eye(String name, Fields fields, Stack stack, Notices notices) {
        Optional<Length> distance = fields.length("distance");
        OptionalDouble height = stack.level(fields, "height", notices);
        // what is given and cannot be read has been refused already
        if (!fields.has("distance") || !fields.has("height")) {
            notices.add(noWay(name, fields));
        }
        return distance.isPresent() && height.isPresent()
                ? Optional.of(new Eye(name, distance.get().toInches(), height.getAsDouble(), fields.mark()))
                : Optional.empty();
    }

    /**
     * One answer for each way that begins and ends in the room; the others are said, and so is raw wood that lies open and
     * that no eye sees which stands still.
     *
     * @param standing what those see
     */
    public static List<Approach> of(Section section, List<Route> ways, List<Sighting> standing, Notices notices) {
        List<Approach> answers = new ArrayList<>();
        for (Route way : ways) {
            Optional<Notice> fault = Eyes.fault(way.from(), section).or(() -> Eyes.fault(way.to(), section));
            fault.ifPresent(notices::add);
            if (fault.isEmpty()) {
                answers.add(follow(section, way.name(), way.from(), way.to()));
            }
        }
        if (!ways.isEmpty()) {
            say(section, answers, standing, notices);
        }
        return List.copyOf(answers);
    }

    private static void say(Section section, List<Approach> answers, List<Sighting> standing, Notices notices) {
        List<OnTheWay> more = showing(answers, standing);
        more.forEach(one -> notices.add(shows(section, one.way(), one.showing())));
        for (int body = 0; body < section.bodies().size(); body++) {
            int nailer = body;
            if (seen(standing, nailer) <= Tolerance.TOUCHING
                    && more.stream().noneMatch(one -> one.showing().body() == nailer)) {
                RawWood.unseen(section, nailer).ifPresent(notices::add);
            }
        }
    }

    /** A nailer on the way that shows most of it. */
    public record OnTheWay(Approach way, Showing showing) {}

    /**
     * The nailers of which somebody who walks up sees more than anybody who stands, each on the way that shows most.
     *
     * @param standing what the eyes see that stand still
     */
    public static List<OnTheWay> showing(List<Approach> answers, List<Sighting> standing) {
        Map<Integer, OnTheWay> most = new TreeMap<>();
        for (Approach way : answers) {
            way.showing().stream()
                    .filter(showing -> showing.first().isPresent()
                            && showing.most() > seen(standing, showing.body()) + Tolerance.SAW_CUT)
                    .forEach(showing -> most.merge(
                            showing.body(),
                            new OnTheWay(way, showing),
                            (one, other) ->
                                    other.showing().most() > one.showing().most() ? other : one));
        }
        return List.copyOf(most.values());
    }

    /** The most that any of these eyes sees of a nailer, in. */
    private static double seen(List<Sighting> standing, int nailer) {
        return standing.stream()
                .flatMap(sighting -> sighting.coverage().stream())
                .filter(coverage -> coverage.body() == nailer)
                .mapToDouble(Coverage::seen)
                .max()
                .orElse(0);
    }

    private static Notice shows(Section section, Approach way, Approach.Showing showing) {
        Notice notice = SightNotices.SHOWS_ON_THE_WAY
                .with("approach", way.name())
                .with("first", Figure.length(showing.first().orElseThrow()))
                .amount(Figure.length(showing.most()));
        return RawWood.placed(section.body(showing.body()), notice);
    }

    private static Notice noWay(String name, Fields fields) {
        return SightNotices.NO_WAY.with("approach", name).at(fields.mark());
    }

    private static Approach follow(Section section, String name, Eye from, Eye to) {
        Eyes eyes = Eyes.asked(section);
        List<List<Coverage>> way = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            way.add(eyes.coverage(between(from, to, (double) i / STEPS)));
        }
        List<Showing> showing = new ArrayList<>();
        for (int row = 0; row < way.get(0).size(); row++) {
            if (exposed(way, row) > Tolerance.TOUCHING) {
                showing.add(showing(eyes, from, to, way, row));
            }
        }
        return new Approach(name, from, to, showing);
    }

    private static Showing showing(Eyes eyes, Eye from, Eye to, List<List<Coverage>> way, int row) {
        OptionalDouble first = OptionalDouble.empty();
        double most = 0;
        for (int i = 0; i < way.size(); i++) {
            double seen = way.get(i).get(row).seen();
            most = Math.max(most, seen);
            if (first.isEmpty() && seen > Tolerance.TOUCHING) {
                double share = i == 0 ? 0 : narrowed(eyes, from, to, row, i);
                first = OptionalDouble.of(between(from, to, share).distance());
            }
        }
        Coverage coverage = way.get(0).get(row);
        return new Showing(coverage.body(), exposed(way, row), first, most);
    }

    /** The most that lies open of a nailer anywhere on a way, in. */
    private static double exposed(List<List<Coverage>> way, int row) {
        double most = 0;
        for (List<Coverage> place : way) {
            most = Math.max(most, place.get(row).exposed());
        }
        return most;
    }

    /** Halves the step in which the nailer comes into sight. */
    private static double narrowed(Eyes eyes, Eye from, Eye to, int row, int step) {
        double hidden = (step - 1.0) / STEPS;
        double shown = (double) step / STEPS;
        while (shown - hidden > NARROWED) {
            double middle = (hidden + shown) / 2;
            boolean shows = eyes.coverage(between(from, to, middle)).get(row).seen() > Tolerance.TOUCHING;
            hidden = shows ? hidden : middle;
            shown = shows ? middle : shown;
        }
        return shown;
    }

    private static Eye between(Eye from, Eye to, double share) {
        return new Eye(
                from.name(),
                from.distance() + (to.distance() - from.distance()) * share,
                from.height() + (to.height() - from.height()) * share,
                from.mark());
    }
}
