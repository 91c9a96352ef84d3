package buildup.engine.stack;

import buildup.shared.document.Fields;
import buildup.shared.length.Length;
import buildup.shared.notice.Notice;
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
            notices.add(Notice.refusal("ceiling-under-floor", "The ceiling is not above the floor.")
                    .at(space.mark("ceiling"))
                    .cure("Heights are measured up from the datum; a floor below it is negative."));
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
            notices.add(Notice.refusal("not-a-size", "A covering cannot be thinner than nothing.")
                    .at(wall.get().mark("covering"))
                    .cure("Write its thickness, as 1/2."));
        }
        Space.Wall read = new Space.Wall(
                from.isPresent() ? from : floor,
                to.isPresent() ? to : ceiling,
                wall.get().yesNo("solid").orElse(true),
                covering);
        if (read.from().isPresent()
                && read.to().isPresent()
                && read.to().getAsDouble() <= read.from().getAsDouble()) {
            notices.add(Notice.refusal("wall-upside-down", "The wall ends where it begins, or below.")
                    .at(wall.get().mark())
                    .cure("Let 'to' be above 'from'."));
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
                notices.add(Notice.refusal("impossible-light-or-eye", "Eye '" + name + "' has no place.")
                        .at(eye.mark())
                        .cure("Give distance (from the wall plane) and height, as 'floor + 60'."));
            }
        }
        return eyes;
    }

    static OptionalDouble inches(Optional<Length> length) {
        return length.map(found -> OptionalDouble.of(found.toInches())).orElse(OptionalDouble.empty());
    }
}
