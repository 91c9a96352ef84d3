package buildup.engine.look.light;

import buildup.engine.look.light.Band.Lit;
import buildup.engine.look.view.Arrises;
import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Asks how each light falls on a section. */
public final class Lights {
    private final Section section;
    private final List<Surface> surfaces;

    private Lights(Section section, List<Surface> surfaces) {
        this.section = section;
        this.surfaces = surfaces;
    }

    /** To be asked for the shadows of some members alone, with what is remembered of outlines beside each other. */
    public static Lights asked(Section section, Composer.Known known) {
        return new Lights(section, Surfaces.withoutFloorAndCeiling(section, known));
    }

    /**
     * The shadows that a light leaves on some members; none when it cannot shine.
     *
     * @param casters whether it is asked what casts them
     */
    public List<Shadow> shadows(Light light, Predicate<Member> wanted, boolean casters) {
        return fault(light, section).isPresent()
                ? List.of()
                : lighting(light, wanted, casters).shadows();
    }

    /** How much of some members a light leaves dark; none when it cannot shine. */
    public List<Darkness> darkness(Light light, Predicate<Member> wanted) {
        return fault(light, section).isPresent()
                ? List.of()
                : lighting(light, wanted, false).darkness();
    }

    /** One answer for each light of the stack that can shine on it; the others are said. */
    public static List<Lighting> of(Section section, Notices notices) {
        return of(section, section.stack().lights(), notices);
    }

    /** One answer for each of {@code lights} that can shine on the section; the others are said. */
    public static List<Lighting> of(Section section, List<Light> lights, Notices notices) {
        Lights asked = new Lights(section, Surfaces.withoutFloorAndCeiling(section));
        List<Lighting> answers = new ArrayList<>();
        for (Light light : lights) {
            Optional<Notice> fault = fault(light, section);
            fault.map(found -> light.mark().map(found::at).orElse(found)).ifPresent(notices::add);
            if (fault.isEmpty()) {
                answers.add(asked.lighting(light, any -> true, true));
            }
        }
        return List.copyOf(answers);
    }

    /** tan a = tan h / cos z; degrees. Meaningful for azimuths within 90 degrees of square. */
    public static double sectionAngle(double altitude, double azimuth) {
        return Math.toDegrees(Math.atan2(
                Math.sin(Math.toRadians(altitude)),
                Math.cos(Math.toRadians(altitude)) * Math.cos(Math.toRadians(azimuth))));
    }

    /** What keeps a light from shining on the section. */
    public static Optional<Notice> fault(Light light, Section section) {
        if (light instanceof Light.Lamp lamp) {
            return section.bodies().stream()
                    .filter(body ->
                            Stream.of(lamp.left(), lamp.at(), lamp.right()).anyMatch(body.outline()::takes))
                    .map(body -> LightNotices.LAMP_IN_WOOD
                            .with("light", lamp.name())
                            .with("body", body.name())
                            .with("distance", Figure.atLeast(60))
                            .with("height", Figure.atLeast(80)))
                    .findFirst();
        }
        return fault(light);
    }

    /** What keeps a light that is no lamp from shining on any section. */
    private static Optional<Notice> fault(Light light) {
        return light instanceof Light.Sun sun ? Sunlight.fault(sun) : DistantLights.fault((Light.Distant) light);
    }

    /** Whether a light that is no lamp shines on the room side of a wall. */
    public static boolean fromAfar(Light light) {
        return !(light instanceof Light.Lamp) && fault(light).isEmpty();
    }

    private Lighting lighting(Light light, Predicate<Member> wanted, boolean casters) {
        if (light instanceof Light.Lamp lamp) {
            Viewpoint viewpoint = new Viewpoint.Near(lamp.at());
            Optional<SoftEdges> soft = lamp.width() > 0 ? Optional.of(SoftEdges.of(lamp, surfaces)) : Optional.empty();
            return lighting(light, OptionalDouble.empty(), viewpoint, soft, wanted, casters);
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        double angle = sectionAngle(distant.altitude(), distant.azimuth());
        Viewpoint viewpoint = Viewpoint.FarAway.at(Math.toRadians(angle));
        return lighting(light, OptionalDouble.of(angle), viewpoint, Optional.empty(), wanted, casters);
    }

    private Lighting lighting(
            Light light,
            OptionalDouble angle,
            Viewpoint viewpoint,
            Optional<SoftEdges> soft,
            Predicate<Member> wanted,
            boolean casters) {
        Visibility view = Visibility.of(viewpoint, surfaces);
        Arrises arrises = casters ? Arrises.of(viewpoint, section) : Arrises.none(viewpoint);
        List<Band> bands = new ArrayList<>();
        List<Shadow> shadows = new ArrayList<>();
        List<Darkness> darkness = new ArrayList<>();
        for (int i = 0; i < section.members().size(); i++) {
            if (!wanted.test(section.members().get(i))) {
                continue;
            }
            List<Band> own = bands(i, view);
            bands.addAll(own);
            darkness.add(new Darkness(i, section.members().get(i).length(), dark(own)));
            new Shadows(section.members().get(i), own, arrises, viewpoint, soft).addTo(shadows);
        }
        return new Lighting(light, angle, bands, shadows, darkness);
    }

    private static double dark(List<Band> bands) {
        return bands.stream()
                .filter(band -> band.lit() != Lit.LIT)
                .mapToDouble(band -> band.segment().length())
                .sum();
    }

    private List<Band> bands(int number, Visibility view) {
        Member member = section.members().get(number);
        List<Band> bands = new ArrayList<>();
        for (Segment segment : member.segments()) {
            double at = 0;
            for (Stretch facing : view.facing(segment)) {
                add(number, Lit.SHADE, segment, at, facing.start(), bands);
                at = facing.start();
                for (Stretch seen : view.seen(segment)) {
                    if (seen.start() >= facing.start() - Tolerance.COINCIDENT
                            && seen.end() <= facing.end() + Tolerance.COINCIDENT) {
                        add(number, Lit.CAST, segment, at, seen.start(), bands);
                        add(number, Lit.LIT, segment, seen.start(), seen.end(), bands);
                        at = seen.end();
                    }
                }
                add(number, Lit.CAST, segment, at, facing.end(), bands);
                at = facing.end();
            }
            add(number, Lit.SHADE, segment, at, 1, bands);
        }
        return bands;
    }

    private static void add(int member, Lit lit, Segment segment, double start, double end, List<Band> out) {
        if ((end - start) * segment.length() > Tolerance.SNAP) {
            out.add(new Band(member, lit, segment, start, end));
        }
    }

    /** The first point of a band, moved inside by a hair: on the band whatever rounding does to its end. */
    static Point inside(Segment segment, boolean atStart) {
        double hair = Math.min(0.25, Tolerance.BESIDE / segment.length());
        return segment.at(atStart ? hair : 1 - hair);
    }
}
