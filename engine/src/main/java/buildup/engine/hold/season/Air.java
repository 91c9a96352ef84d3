package buildup.engine.hold.season;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;

/**
 * The air of a season.
 *
 * @param temperature in degrees of its scale
 * @param celsius whether that scale is Celsius; else Fahrenheit
 * @param humidity relative, 0 to 1
 */
public record Air(double temperature, boolean celsius, double humidity) {
    private static final Phrase WORDS = Phrase.of("{degrees}\u00B0 {scale}, {humidity}");

    /** The moisture that wood comes to in it, % of its dry weight. */
    public double moisture() {
        return celsius
                ? MoistureContent.celsius(temperature, humidity)
                : MoistureContent.fahrenheit(temperature, humidity);
    }

    /** Degrees Fahrenheit. */
    double fahrenheit() {
        return celsius ? 32 + temperature * 9 / 5 : temperature;
    }

    /** As {@code 68° F, 25 %}: in the scale in which it was given. */
    public Phrase words() {
        return WORDS.with("degrees", Figure.of(Quantity.COUNT, temperature))
                .with("scale", celsius ? "C" : "F")
                .with("humidity", Figure.share(humidity));
    }
}
