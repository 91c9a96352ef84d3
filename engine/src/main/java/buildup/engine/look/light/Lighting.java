package buildup.engine.look.light;

import buildup.engine.section.stack.Light;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One light on one section.
 *
 * @param sectionAngle of a distant light over the level, degrees; absent for a lamp
 * @param bands the whole room-side walk, cut where the light changes
 * @param shadows the dark stretches, in walking order
 * @param darkness how much of each member is dark, in walking order
 */
public record Lighting(
        Light light, OptionalDouble sectionAngle, List<Band> bands, List<Shadow> shadows, List<Darkness> darkness) {
    public Lighting {
        bands = List.copyOf(bands);
        shadows = List.copyOf(shadows);
        darkness = List.copyOf(darkness);
    }

    /** How much of the member is dark on which a shadow lies: it may not be the only one there. */
    public Darkness of(Shadow shadow) {
        return darkness.stream()
                .filter(one -> one.member() == shadow.member())
                .findFirst()
                .orElseThrow();
    }
}
