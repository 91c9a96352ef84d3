package buildup.cli.drawing.look;

import buildup.cli.drawing.draft.Drafting;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Sunlight;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Says in a line where a light comes from. */
final class Lamps {
    private Lamps() {}

    static String words(Lighting lighting) {
        Light light = lighting.light();
        if (light instanceof Light.Lamp lamp) {
            return "Light: " + lamp.name() + ", a lamp "
                    + Drafting.shop(lamp.at().x()) + " out and "
                    + Drafting.shop(lamp.at().y()) + " up.";
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        double azimuth = distant.azimuth();
        String side = azimuth > 0 ? " off square from the left" : " off square from the right";
        return "Light: " + distant.name() + ", " + degrees(distant.altitude()) + " up, "
                + degrees(Math.abs(azimuth)) + (Math.abs(azimuth) < Tolerance.COINCIDENT ? " off square" : side) + "; "
                + degrees(lighting.sectionAngle().orElse(0)) + " in section.";
    }

    private static String degrees(double value) {
        return LengthPrinter.decimals(Length.inches(value), 1) + "\u00b0";
    }
}
