package buildup.cli.drawing.look;

import buildup.engine.look.light.Darkness;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.profiles.outline.Tolerance;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** What a picture says beside a shadow: how much of its member is dark, and who casts it. */
final class DarkWords {
    private DarkWords() {}

    /**
     * The dark of the whole member, and of it what this shadow takes where it is not the only one there.
     *
     * @param on the member, as the picture calls it
     * @param caster who casts it, as the picture calls it
     * @param size how the picture writes a length
     */
    static String of(
            Lighting lighting, Shadow shadow, String on, Optional<String> caster, DoubleFunction<String> size) {
        Darkness dark = lighting.of(shadow);
        boolean alone = dark.dark() - shadow.dark() <= Tolerance.TOUCHING;
        return on + ": " + size.apply(dark.dark()) + " of " + size.apply(dark.length()) + " dark"
                + caster.map(name -> ", " + (alone ? "" : size.apply(shadow.dark()) + " of it ") + "by " + name)
                        .orElse("");
    }
}
