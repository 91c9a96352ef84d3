package buildup.engine.judge.clearance;

import buildup.engine.judge.clearance.KeepClear.Kind;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads {@code keep-clear:}. */
final class KeepClearReader {
    private static final double FAR = Double.POSITIVE_INFINITY;
    private static final List<String> KEYS =
            List.of("kind", "back", "face", "bottom", "top", "clear", "width", "away", "roll", "out", "up");

    private final Stack stack;
    private final Notices notices;
    private final Set<String> names = new HashSet<>();

    KeepClearReader(Stack stack, Notices notices) {
        this.stack = stack;
        this.notices = notices;
    }

    /** The places, in the order of the document; what is wrong with one is refused, and it is left out. */
    List<KeepClear> read(Fields root) {
        List<KeepClear> places = new ArrayList<>();
        List<Fields> entries = root.list("keep-clear");
        for (int i = 0; i < entries.size(); i++) {
            Fields entry = entries.get(i);
            String name = entry.text("name").orElse("place " + (i + 1));
            if (!names.add(name)) {
                claim(entry);
                notices.add(ClearanceNotices.PLACE_TWICE.with("name", name).at(entry.mark("name")));
                continue;
            }
            kind(entry).flatMap(kind -> place(entry, name, kind)).ifPresent(places::add);
        }
        return List.copyOf(places);
    }

    /** Which keys it would have is not known: none of them is to be refused. */
    private static void claim(Fields entry) {
        KEYS.forEach(entry::has);
    }

    private Optional<Kind> kind(Fields entry) {
        Optional<Scalar> word = entry.scalar("kind");
        Optional<Kind> kind = word.isEmpty()
                ? Optional.of(Kind.BOX)
                : Arrays.stream(Kind.values())
                        .filter(one -> one.word().equals(word.get().text().strip()))
                        .findFirst();
        if (kind.isEmpty()) {
            claim(entry);
            notices.add(ClearanceNotices.NO_SUCH_KIND
                    .with("word", word.orElseThrow().text())
                    .at(entry.mark("kind")));
        }
        return kind;
    }

    private Optional<KeepClear> place(Fields entry, String name, Kind kind) {
        OptionalDouble clear = FireboxReader.inches(entry, "clear");
        if (clear.isPresent() && clear.getAsDouble() < 0) {
            claim(entry);
            notices.add(ClearanceNotices.NEGATIVE_AIR.with("name", name).at(entry.mark("clear")));
            return Optional.empty();
        }
        if (kind == Kind.SPRINKLER) {
            return sprinkler(entry, name, clear);
        }
        Optional<Box> region = switch (kind) {
            case DOOR -> door(entry, name);
            case SIDE_WALL -> sideWall(entry, name);
            case SHADE -> shade(entry, name);
            default -> box(entry, name);
        };
        return region.filter(box -> isPlace(box, name, entry))
                .map(box -> new KeepClear(name, kind, box, Optional.empty(), clear.orElse(0), entry.mark()));
    }

    private Optional<Box> box(Fields entry, String name) {
        if (!entry.has("back") && !entry.has("face") && !entry.has("bottom") && !entry.has("top")) {
            notices.add(ClearanceNotices.NO_PLACE.with("name", name).at(entry.mark()));
            return Optional.empty();
        }
        return Optional.of(new Box(
                FireboxReader.inches(entry, "back").orElse(0),
                stack.level(entry, "bottom", notices).orElse(-FAR),
                FireboxReader.inches(entry, "face").orElse(FAR),
                stack.level(entry, "top", notices).orElse(FAR)));
    }

    private Optional<Box> door(Fields entry, String name) {
        OptionalDouble width = needed(entry, "width", name);
        entry.needs("top", missing("top", name));
        OptionalDouble top = stack.level(entry, "top", notices);
        OptionalDouble bottom = stack.level(entry, "bottom", notices);
        return width.isEmpty() || top.isEmpty()
                ? Optional.empty()
                : Optional.of(new Box(
                        0, bottom.orElse(stack.space().floor().orElse(-FAR)), width.getAsDouble(), top.getAsDouble()));
    }

    private Optional<Box> sideWall(Fields entry, String name) {
        OptionalDouble away = needed(entry, "away", name);
        return away.isEmpty() ? Optional.empty() : Optional.of(new Box(away.getAsDouble(), -FAR, FAR, FAR));
    }

    private Optional<Box> shade(Fields entry, String name) {
        OptionalDouble roll = needed(entry, "roll", name);
        entry.needs("top", missing("top", name));
        OptionalDouble top = stack.level(entry, "top", notices);
        OptionalDouble bottom = stack.level(entry, "bottom", notices);
        double back = FireboxReader.inches(entry, "back").orElse(0);
        return roll.isEmpty() || top.isEmpty()
                ? Optional.empty()
                : Optional.of(new Box(back, bottom.orElse(-FAR), back + roll.getAsDouble(), top.getAsDouble()));
    }

    private Optional<KeepClear> sprinkler(Fields entry, String name, OptionalDouble clear) {
        OptionalDouble out = needed(entry, "out", name);
        entry.needs("up", missing("up", name));
        OptionalDouble up = stack.level(entry, "up", notices);
        entry.needs("clear", missing("clear", name));
        if (out.isEmpty() || up.isEmpty() || clear.isEmpty()) {
            return Optional.empty();
        }
        if (out.getAsDouble() <= 0) {
            notices.add(insideTheWall(name, out.getAsDouble(), entry));
            return Optional.empty();
        }
        Point center = new Point(out.getAsDouble(), up.getAsDouble());
        return Optional.of(new KeepClear(
                name, Kind.SPRINKLER, Box.of(center, center), Optional.of(center), clear.getAsDouble(), entry.mark()));
    }

    private boolean isPlace(Box box, String name, Fields entry) {
        if (box.face() <= box.back() || box.top() <= box.bottom()) {
            notices.add(ClearanceNotices.TURNED_BOX.with("name", name).at(entry.mark()));
            return false;
        }
        if (box.face() <= Tolerance.COINCIDENT && stack.space().wall().solid()) {
            notices.add(insideTheWall(name, box.face(), entry));
            return false;
        }
        return true;
    }

    private static Notice insideTheWall(String name, double face, Fields entry) {
        return ClearanceNotices.INSIDE_THE_WALL
                .with("name", name)
                .amount(Figure.length(-face))
                .at(entry.mark());
    }

    private static Notice missing(String key, String name) {
        return ClearanceNotices.MISSING_SIZE.with("key", key).with("name", name);
    }

    private OptionalDouble needed(Fields entry, String key, String name) {
        entry.needs(key, missing(key, name));
        return FireboxReader.inches(entry, key);
    }
}
