package buildup.cli.page;

import buildup.cli.table.Html;
import buildup.engine.Answers;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Sunlight;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The buttons and fields that move the light: three lights for every stack, then the stack's own. */
record Lamplight(Answers known, String key) {
    /** A button: what it says and where its light is. */
    private record Choice(String id, String words, Light light) {}

    /** The drafting light: 45 degrees in plan and 45 in section. */
    private static final Light.Distant DRAFTING = distant(35.264, 45);

    /** Along the wall rather than at it, 59 degrees in section: long shadows that show every step. A choice of ours. */
    private static final Light.Distant RAKING = distant(40, 60);

    /** Where a lamp hangs when the stack has none: five feet from the wall and 80 in over the floor. */
    private static final double LAMP_OUT = 60;

    private static final double LAMP_OVER_FLOOR = 80;

    /** And over the top of a stack without a floor. */
    private static final double LAMP_OVER_TOP = 24;

    private static final int DECIMALS = 6;

    private static Light.Distant distant(double altitude, double azimuth) {
        return new Light.Distant("", altitude, azimuth, Optional.empty());
    }

    String html() {
        List<Choice> choices = choices();
        String first = known.lights().stream()
                .findFirst()
                .map(Lighting::light)
                .map(Lamplight::place)
                .orElse(place(DRAFTING));
        StringBuilder html = new StringBuilder("<div class=\"lights scripted\" role=\"group\" aria-labelledby=\"" + key
                + "-lights\">\n<h3 id=\"" + key + "-lights\">Light</h3>\n<div class=\"choices\">\n");
        for (Choice choice : choices) {
            String place = place(choice.light());
            html.append("<button type=\"button\" class=\"light\" id=\"" + key + "-light-" + choice.id() + "\" " + place
                    + " aria-pressed=\"" + place.equals(first) + "\">" + choice.words() + "</button>\n");
        }
        return html + "</div>\n<div class=\"fields\">\n"
                + field("altitude", "Altitude, degrees up", 0, "35.264")
                + field("azimuth", "Azimuth, degrees; + from the left", -90, "45")
                + "</div>\n<p class=\"lightsays\"></p>\n</div>\n";
    }

    private List<Choice> choices() {
        List<Light> own = known.lights().stream().map(Lighting::light).toList();
        Light lamp = own.stream()
                .filter(light -> light instanceof Light.Lamp)
                .findFirst()
                .orElseGet(this::lamp);
        List<Choice> choices = new ArrayList<>(List.of(
                new Choice("45", "45°", DRAFTING),
                new Choice("raking", "Raking", RAKING),
                new Choice("lamp", "Lamp", lamp)));
        for (Light light : own) {
            if (choices.stream().noneMatch(choice -> place(choice.light()).equals(place(light)))) {
                choices.add(new Choice("own-" + choices.size(), Html.name(light.name()), light));
            }
        }
        return choices;
    }

    private Light lamp() {
        Section section = known.section();
        double up = section.stack().space().floor().isPresent()
                ? section.stack().space().floor().getAsDouble() + LAMP_OVER_FLOOR
                : section.totals().top() + LAMP_OVER_TOP;
        double out = Math.max(LAMP_OUT, section.totals().projection() + LAMP_OVER_TOP);
        return new Light.Lamp("", new Point(out, up), 0, Optional.empty());
    }

    /** Where a light is, as attributes. */
    private static String place(Light light) {
        if (light instanceof Light.Lamp lamp) {
            return attribute("x", lamp.at().x()) + " "
                    + attribute("y", lamp.at().y());
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        return attribute("altitude", distant.altitude()) + " " + attribute("azimuth", distant.azimuth());
    }

    private static String attribute(String name, double value) {
        return "data-" + name + "=\""
                + FigurePrinter.INCHES.bare(new Figure(Quantity.ANGLE, value, Rounding.decimals(DECIMALS))) + "\"";
    }

    private String field(String name, String label, int least, String value) {
        String id = key + "-" + name;
        return "<p><label for=\"" + id + "\">" + label + "</label> <input type=\"number\" inputmode=\"decimal\" id=\""
                + id + "\" min=\"" + least + "\" max=\"90\" step=\"any\" value=\"" + value + "\"></p>\n";
    }
}
