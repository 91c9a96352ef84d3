package buildup.engine.section.stack;

import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the room: floor, ceiling, wall and eyes. */
final class SpaceReader {
    /** A steeper ceiling is a wall: 24 in 12. */
    private static final double STEEPEST = 2;

    private SpaceReader() {}

    static Space space(Optional<Fields> fields, Notices notices) {
        if (fields.isEmpty()) {
            return new Space(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    0,
                    OptionalDouble.empty(),
                    new Space.Wall(OptionalDouble.empty(), OptionalDouble.empty(), true, 0));
        }
        Fields space = fields.get();
        OptionalDouble floor = inches(space.length("floor"));
        Ceiling read = ceiling(space, notices);
        OptionalDouble ceiling = read.height();
        if (floor.isPresent() && ceiling.isPresent() && ceiling.getAsDouble() <= floor.getAsDouble()) {
            notices.add(StackNotices.LOW_CEILING.notice().at(space.mark("ceiling")));
        }
        OptionalDouble projection = inches(space.length("projection"));
        return new Space(floor, ceiling, read.slope(), projection, wall(space, floor, ceiling, notices));
    }

    private record Ceiling(OptionalDouble height, double slope) {}

    /** A height, or {@code { height: 12, slope: 2 in 12 }}: its height at the wall plane, and how it rises from there. */
    private static Ceiling ceiling(Fields space, Notices notices) {
        Optional<Node> node = space.node("ceiling");
        if (node.isEmpty() || !(node.get() instanceof Mapping mapping)) {
            return new Ceiling(inches(space.length("ceiling")), 0);
        }
        Fields ceiling = space.fields(mapping, "ceiling");
        ceiling.needs("height", StackNotices.CEILING_WITHOUT_HEIGHT.with("example", Figure.length(12)));
        double slope = ceiling.scalar("slope")
                .map(text -> slope(ceiling, text, notices))
                .orElse(0.0);
        return new Ceiling(inches(ceiling.length("height")), slope);
    }

    /** {@code 2 in 12}; with a minus before it, falling. */
    private static double slope(Fields ceiling, Scalar text, Notices notices) {
        String[] parts = text.text().strip().split("\\s+in\\s+", 2);
        if (parts.length == 2) {
            Optional<Double> rise = part(ceiling, parts[0], text);
            Optional<Double> run = part(ceiling, parts[1], text);
            if (rise.isEmpty() || run.isEmpty()) {
                return 0;
            }
            if (run.get() > 0 && Math.abs(rise.get()) <= STEEPEST * run.get()) {
                return rise.get() / run.get();
            }
        }
        notices.add(StackNotices.NO_SLOPE
                .with("slope", text.text())
                .with("up", Figure.length(2))
                .with("out", Figure.length(12))
                .at(text.mark()));
        return 0;
    }

    private static Optional<Double> part(Fields ceiling, String length, Scalar of) {
        return ceiling.readLength(new Scalar(length, of.mark())).map(Length::toInches);
    }

    private static Space.Wall wall(Fields space, OptionalDouble floor, OptionalDouble ceiling, Notices notices) {
        Optional<Fields> wall = space.fields("wall");
        if (wall.isEmpty()) {
            return new Space.Wall(floor, ceiling, true, 0);
        }
        RuleReader levels = new RuleReader(floor, ceiling, notices);
        OptionalDouble from = levels.level(wall.get(), "from", Axis.UP);
        OptionalDouble to = levels.level(wall.get(), "to", Axis.UP);
        double covering = wall.get().length("covering").map(Length::toInches).orElse(0.0);
        if (covering < 0) {
            notices.add(StackNotices.THIN_COVERING
                    .with("example", Figure.atLeast(0.5))
                    .at(wall.get().mark("covering")));
        }
        Space.Wall read = new Space.Wall(
                from.isPresent() ? from : floor,
                to.isPresent() ? to : ceiling,
                wall.get().yesNo("solid").orElse(true),
                covering);
        if (read.from().isPresent()
                && read.to().isPresent()
                && read.to().getAsDouble() <= read.from().getAsDouble()) {
            notices.add(StackNotices.WALL_ENDS_LOW.notice().at(wall.get().mark()));
        }
        return read;
    }

    static List<Eye> eyes(Fields root, RuleReader levels, Notices notices) {
        List<Eye> eyes = new ArrayList<>();
        int number = 0;
        for (Fields eye : root.list("eyes")) {
            number++;
            String name = eye.text("name").orElse("eye " + number);
            OptionalDouble distance = inches(eye.length("distance"));
            OptionalDouble height = levels.level(eye, "height", Axis.UP);
            if (distance.isPresent() && height.isPresent()) {
                eyes.add(new Eye(name, distance.getAsDouble(), height.getAsDouble(), eye.mark()));
            } else if (!eye.has("distance") || !eye.has("height")) {
                notices.add(StackNotices.EYE_WITHOUT_PLACE
                        .with("eye", name)
                        .with("example", Figure.atLeast(60))
                        .at(eye.mark()));
            }
        }
        return eyes;
    }

    static OptionalDouble inches(Optional<Length> length) {
        return length.map(found -> OptionalDouble.of(found.toInches())).orElse(OptionalDouble.empty());
    }
}
