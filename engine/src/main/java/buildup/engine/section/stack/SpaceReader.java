package buildup.engine.section.stack;

import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the room: floor, ceiling, wall and eyes. */
final class SpaceReader {
    private SpaceReader() {}

    static Space space(Optional<Fields> fields, Notices notices) {
        if (fields.isEmpty()) {
            return new Space(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    new Space.Wall(OptionalDouble.empty(), OptionalDouble.empty(), true, 0));
        }
        Fields space = fields.get();
        OptionalDouble floor = inches(space.length("floor"));
        OptionalDouble ceiling = inches(space.length("ceiling"));
        if (floor.isPresent() && ceiling.isPresent() && ceiling.getAsDouble() <= floor.getAsDouble()) {
            notices.add(StackNotices.LOW_CEILING.notice().at(space.mark("ceiling")));
        }
        OptionalDouble projection = inches(space.length("projection"));
        return new Space(floor, ceiling, projection, wall(space, floor, ceiling, notices));
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
        for (Fields eye : root.list("eyes")) {
            String name = eye.text("name").orElse("eye " + (eyes.size() + 1));
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
