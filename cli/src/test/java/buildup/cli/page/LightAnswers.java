package buildup.cli.page;

import buildup.cli.tell.Json;
import buildup.engine.Answers;
import buildup.engine.look.light.Band;
import buildup.engine.look.light.FrontView;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Lights;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the engine says of some lights, for the page's own answers to be held against. */
final class LightAnswers {
    /** Section angles of 30, 45, 60 and 59.21 degrees, and from both sides, level, steep and along the wall. */
    private static final List<Light> LIGHTS = List.of(
            distant(30, 0),
            distant(45, 0),
            distant(60, 0),
            distant(40, 60),
            distant(35.264, -45),
            distant(0, 0),
            distant(12.5, 20),
            distant(89, 10));

    private static final Pattern LAMP = Pattern.compile("data-x=\"([-.0-9]+)\" data-y=\"([-.0-9]+)\"");

    private LightAnswers() {}

    private static Light distant(double altitude, double azimuth) {
        return new Light.Distant("", altitude, azimuth, Optional.empty());
    }

    /** @param page on which lamps are offered */
    static String of(Answers known, String page) {
        List<Light> lights = new ArrayList<>(LIGHTS);
        LAMP.matcher(page)
                .results()
                .map(found -> new Point(Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))))
                .forEach(at -> lights.add(new Light.Lamp("", at, 0, Optional.empty())));
        return of(known.section(), lights).written();
    }

    /** The answers to lights of one's own. */
    static Json of(Section section, List<Light> lights) {
        return new Json()
                .put(
                        "answers",
                        Lights.of(section, lights, new Notices()).stream()
                                .map(lighting -> answer(section, lighting))
                                .toList());
    }

    private static Json answer(Section section, Lighting lighting) {
        return new Json()
                .put("light", light(lighting.light()))
                .put("bands", lighting.bands().stream().map(LightAnswers::band).toList())
                .put(
                        "front",
                        FrontView.of(section, lighting).stream()
                                .map(LightAnswers::strip)
                                .toList())
                .put(
                        "casters",
                        lighting.shadows().stream()
                                .filter(shadow -> shadow.kind() == Band.Lit.CAST)
                                .map(shadow -> new Json()
                                        .put("member", shadow.member())
                                        .put("by", shadow.caster().map(section::name))
                                        .put("edged", shadow.edge().isPresent()))
                                .toList());
    }

    private static Json light(Light light) {
        if (light instanceof Light.Lamp lamp) {
            return new Json()
                    .put("x", figure(lamp.at().x()))
                    .put("y", figure(lamp.at().y()));
        }
        Light.Distant distant = (Light.Distant) light;
        return new Json().put("altitude", figure(distant.altitude())).put("azimuth", figure(distant.azimuth()));
    }

    private static Json strip(FrontView.Strip strip) {
        return new Json()
                .put("member", strip.member())
                .put("kind", strip.lit().word())
                .put("low", place(strip.low()))
                .put("high", place(strip.high()))
                .put("tone", figure(strip.tone()));
    }

    private static Json band(Band band) {
        return new Json()
                .put("member", band.member())
                .put("kind", band.lit().word())
                .put("from", place(band.segment().from()))
                .put("to", place(band.segment().to()));
    }

    private static String place(Point p) {
        return figure(p.x()) + " " + figure(p.y());
    }

    /** As the page's own attributes have them. */
    private static String figure(double number) {
        return String.format(Locale.ROOT, "%.6f", number);
    }
}
