package buildup.cli.drawing.look;

import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Sunlight;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;

/** Says in a line where a light comes from. */
final class Lamps {
    private Lamps() {}

    static String words(Lighting lighting, FigurePrinter printer) {
        Light light = lighting.light();
        if (light instanceof Light.Lamp lamp) {
            return "Light: " + lamp.name() + ", a lamp "
                    + printer.print(Figure.length(lamp.at().x())) + " out and "
                    + printer.print(Figure.length(lamp.at().y())) + " up.";
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        double azimuth = distant.azimuth();
        String side = azimuth > 0 ? " off square from the left" : " off square from the right";
        return "Light: " + distant.name() + ", " + printer.print(Figure.angle(distant.altitude())) + " up, "
                + printer.print(Figure.angle(Math.abs(azimuth)))
                + (Math.abs(azimuth) < Tolerance.COINCIDENT ? " off square" : side) + "; "
                + printer.print(Figure.angle(lighting.sectionAngle().orElse(0))) + " in section.";
    }
}
