package buildup.engine.section.stack;

import buildup.engine.section.sun.SunHour;
import buildup.profiles.outline.Point;
import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the lights: a distant one by its altitude, a lamp by its place, the sun by place, day and hour. */
final class LightReader {
    /**
     * The drafting light: over the left shoulder along the diagonal of a cube, so that its ray stands at 45 degrees
     * in plan, elevation and section; true altitude atan(1/sqrt 2). Radford's Cyclopedia of Construction, vol. 1,
     * "Shades and Shadows".
     */
    static final Light DRAFTING =
            new Light.Distant("drafting", Math.toDegrees(Math.atan(Math.sqrt(0.5))), 45, Optional.empty());

    private final RuleReader levels;
    private final Notices notices;

    LightReader(RuleReader levels, Notices notices) {
        this.levels = levels;
        this.notices = notices;
    }

    List<Light> read(Fields root) {
        if (!root.has("lights")) {
            return List.of(DRAFTING);
        }
        List<Light> lights = new ArrayList<>();
        int number = 0;
        for (Fields light : root.list("lights")) {
            number++;
            String name = light.text("name").orElse("light " + number);
            Optional<Fields> at = light.fields("at");
            Optional<Light> read;
            if (at.isPresent()) {
                read = lamp(name, light, at.get());
            } else {
                read = light.has("day") || light.has("latitude") ? sun(name, light) : distant(name, light);
            }
            read.ifPresent(lights::add);
        }
        return lights;
    }

    private Optional<Light> lamp(String name, Fields light, Fields at) {
        OptionalDouble distance = SpaceReader.inches(at.length("distance"));
        OptionalDouble height = levels.level(at, "height", Axis.UP);
        double width = light.length("width").map(Length::toInches).orElse(0.0);
        if (distance.isEmpty() || height.isEmpty()) {
            if (!at.has("distance") || !at.has("height")) {
                say(
                        StackNotices.LAMP_WITHOUT_PLACE
                                .with("light", name)
                                .with("distance", Figure.atLeast(60))
                                .with("height", Figure.atLeast(80)),
                        at);
            }
            return Optional.empty();
        }
        Point place = new Point(distance.getAsDouble(), height.getAsDouble());
        return Optional.of(new Light.Lamp(name, place, Math.max(0, width), Optional.of(light.mark())));
    }

    private Optional<Light> distant(String name, Fields light) {
        Optional<Angle> altitude = light.angle("altitude");
        double azimuth = light.angle("azimuth").map(Angle::toDegrees).orElse(0.0);
        if (altitude.isEmpty() && !light.has("altitude")) {
            say(StackNotices.LIGHT_WITHOUT_ALTITUDE.with("light", name), light);
        }
        return altitude.map(angle -> new Light.Distant(name, angle.toDegrees(), azimuth, Optional.of(light.mark())));
    }

    private Optional<Light> sun(String name, Fields light) {
        Optional<Angle> latitude = light.angle("latitude").filter(angle -> Math.abs(angle.toDegrees()) <= 90);
        Optional<LocalDate> day = light.text("day").flatMap(SunTime::day);
        OptionalDouble hour = light.text("hour").map(SunTime::hour).orElse(OptionalDouble.empty());
        Optional<Angle> faces = light.angle("faces");
        OptionalDouble offset = light.text("utc-offset").map(SunTime::offset).orElse(OptionalDouble.empty());
        OptionalDouble longitude = degrees(light.angle("longitude"));
        OptionalDouble window = degrees(light.angle("window"));
        Optional<Phrase> missing = Optional.empty();
        if (latitude.isEmpty()) {
            missing = Optional.of(StackNotices.LATITUDE);
        } else if (day.isEmpty()) {
            missing = Optional.of(StackNotices.DAY);
        } else if (hour.isEmpty()) {
            missing = Optional.of(StackNotices.HOUR);
        } else if (faces.isEmpty()) {
            missing = Optional.of(StackNotices.FACES);
        } else if (light.has("utc-offset") && (offset.isEmpty() || longitude.isEmpty())) {
            missing = Optional.of(StackNotices.UTC_OFFSET);
        }
        if (missing.isPresent()) {
            say(StackNotices.SUN_WITHOUT_PLACE.with("light", name).with("missing", missing.get()), light);
            return Optional.empty();
        }
        SunHour when = new SunHour(latitude.get().toDegrees(), longitude, day.get(), hour.getAsDouble(), offset);
        return Optional.of(new Light.Sun(name, when, faces.get().toDegrees(), window, Optional.of(light.mark())));
    }

    private static OptionalDouble degrees(Optional<Angle> angle) {
        return angle.map(found -> OptionalDouble.of(found.toDegrees())).orElse(OptionalDouble.empty());
    }

    private void say(Notice notice, Fields at) {
        notices.add(notice.at(at.mark()));
    }
}
