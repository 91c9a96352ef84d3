package buildup.engine.look.light;

import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the lights do to a section, as sheets: where they stand, the dark they leave, the day of each sun. */
public final class LightSheets {
    private static final Rounding TENTHS = Rounding.decimals(1);

    private static final Phrase DARK_ALL = Phrase.of("{caster} darkens all {length} of {on}{soft}");

    private static final Phrase DARK_PART = Phrase.of("{caster} darkens the {where} {dark} of {length} of {on}{soft}");

    /** An edge that is softer by no more than a line of a tape is told as a figure, not in words, in. */
    private static final double LEAST_SOFT = 1.0 / 16;

    private static final Phrase SOFT = Phrase.of(", its edge soft over {width}");

    private static final Phrase LAMP = Phrase.of("a lamp {out} out, {up} up");

    private static final Phrase FAR = Phrase.of("{altitude} up, {azimuth} off square{side}");

    /** A dark stretch under its light. */
    private record Dark(Lighting lighting, Shadow shadow, Member member) {}

    /** How much of a member is dark under a light. */
    private record Whole(Lighting lighting, Darkness darkness, Member member) {}

    /** A member at one hour of a sun's day. */
    private record Hour(Light.Sun sun, Sunlight.Hour hour, Member member, double dark) {}

    private final Section section;
    private final List<Lighting> lights;

    private LightSheets(Section section, List<Lighting> lights) {
        this.section = section;
        this.lights = lights;
    }

    /**
     * Lights, shadows and the days of suns, in the order of a report.
     *
     * @param lights answers about lights of the section's stack
     */
    public static List<Sheet> of(Section section, List<Lighting> lights) {
        LightSheets sheets = new LightSheets(section, lights);
        return List.of(sheets.lights(), sheets.shadows(), sheets.darkness(), sheets.days());
    }

    private Sheet lights() {
        return Sheet.of(
                        "lights",
                        "LIGHTS; the angle is that of the ray in section, over the level",
                        section.stack().lights())
                .name("name", "light", Light::name)
                .saying("from", "comes from", LightSheets::from)
                .measureIf("altitude", "altitude", Quantity.ANGLE, TENTHS, LightSheets::altitude)
                .json()
                .measureIf("azimuth", "azimuth", Quantity.ANGLE, TENTHS, LightSheets::azimuth)
                .json()
                .measureIf("sectionAngle", "angle", Quantity.ANGLE, Rounding.decimals(2), LightSheets::sectionAngle)
                .placeIf(
                        "at",
                        "lamp at",
                        light -> lamp(light)
                                .map(lamp ->
                                        new Cell.Place(lamp.at().x(), lamp.at().y())))
                .json()
                .lengthIf(
                        "width",
                        "width of the lamp",
                        light -> lamp(light)
                                .map(lamp -> OptionalDouble.of(lamp.width()))
                                .orElse(OptionalDouble.empty()))
                .json()
                .sheet();
    }

    private static Optional<Light.Lamp> lamp(Light light) {
        return light instanceof Light.Lamp lamp ? Optional.of(lamp) : Optional.empty();
    }

    /** A sun is the distant light that it is at its hour. */
    private static Optional<Light.Distant> distant(Light light) {
        if (light instanceof Light.Sun sun) {
            return Optional.of(Sunlight.distant(sun));
        }
        return light instanceof Light.Distant distant ? Optional.of(distant) : Optional.empty();
    }

    private static OptionalDouble altitude(Light light) {
        return number(distant(light).map(Light.Distant::altitude));
    }

    private static OptionalDouble azimuth(Light light) {
        return number(distant(light).map(Light.Distant::azimuth));
    }

    private static OptionalDouble sectionAngle(Light light) {
        return number(distant(light)
                .filter(far -> Math.abs(far.azimuth()) < 90)
                .map(far -> Lights.sectionAngle(far.altitude(), far.azimuth())));
    }

    private static OptionalDouble number(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Phrase from(Light light) {
        if (light instanceof Light.Lamp lamp) {
            return LAMP.with("out", Figure.length(lamp.at().x()))
                    .with("up", Figure.length(lamp.at().y()));
        }
        Light.Distant far = distant(light).orElseThrow();
        boolean square = Math.abs(far.azimuth()) < Tolerance.COINCIDENT;
        return FAR.with("altitude", Figure.angle(far.altitude()))
                .with("azimuth", Figure.angle(Math.abs(far.azimuth())))
                .with("side", square ? "" : far.azimuth() > 0 ? " from the left" : " from the right");
    }

    private Sheet shadows() {
        return Sheet.of("shadows", "SHADOWED FACES", dark())
                .name("light", "light", dark -> dark.lighting().light().name())
                .wordsIf("caster", "by", dark -> dark.shadow().caster().map(section::name))
                .name("on", "on", dark -> section.name(dark.member().body()))
                .name("member", "member", dark -> dark.member().member())
                .length("top", "top", dark -> dark.shadow().box().top())
                .json()
                .length("bottom", "bottom", dark -> dark.shadow().box().bottom())
                .json()
                .place(
                        "from",
                        "from",
                        dark -> dark.shadow().from().x(),
                        dark -> dark.shadow().from().y())
                .json()
                .place(
                        "to",
                        "to",
                        dark -> dark.shadow().to().x(),
                        dark -> dark.shadow().to().y())
                .json()
                .length("dark", "dark", dark -> dark.shadow().dark())
                .noneWithoutRow("light", shining())
                .measure("share", "share", Quantity.SHARE, dark -> dark.shadow().share())
                .json()
                .noneWithoutRow("light", shining())
                .measure(
                        "memberShare",
                        "in all",
                        Quantity.SHARE,
                        dark -> dark.lighting().of(dark.shadow()).share())
                .text()
                .noneWithoutRow("light", shining())
                .lengthIf("overhang", "overhang", dark -> dark.shadow().overhang())
                .noneWithoutRow("light", shining())
                .lengthIf("depth", "depth", dark -> dark.shadow().depth())
                .standsFor(dark -> dark.shadow().reach())
                .noneWithoutRow("light", shining())
                .name("kind", "how", dark -> dark.shadow().kind().word())
                .lengthIf("soft", "soft edge", dark -> dark.shadow().soft())
                .json()
                .noneWithoutRow("light", shining())
                .sayingIf("words", "in words", this::words)
                .alone()
                .tableFor("light", "SHADOW LINES", "words")
                .tableFor(
                        "light",
                        "SHADOWED FACES; in all: the share of the member that is dark, cast and shade together;"
                                + " depth: from the edge casting it down to the shadow's edge",
                        "on",
                        "member",
                        "kind",
                        "dark",
                        "memberShare",
                        "caster",
                        "overhang",
                        "depth")
                .sheet();
    }

    /** The lights that can shine on the stack: of any other it is not known what it would leave dark. */
    private List<String> shining() {
        return lights.stream().map(lighting -> lighting.light().name()).toList();
    }

    /** A member that lies in light from end to end has its row too: none of it is dark. */
    private Sheet darkness() {
        return Sheet.of("darkness", "DARK OF EACH MEMBER", wholes())
                .name("light", "light", whole -> whole.lighting().light().name())
                .name("on", "on", whole -> section.name(whole.member().body()))
                .name("member", "member", whole -> whole.member().member())
                .length("dark", "dark", whole -> whole.darkness().dark())
                .noneWithoutRow("light", shining())
                .measure(
                        "share",
                        "share",
                        Quantity.SHARE,
                        whole -> whole.darkness().share())
                .noneWithoutRow("light", shining())
                .silent()
                .sheet();
    }

    private List<Whole> wholes() {
        return lights.stream()
                .flatMap(lighting -> lighting.darkness().stream()
                        .map(darkness ->
                                new Whole(lighting, darkness, section.members().get(darkness.member()))))
                .toList();
    }

    private List<Dark> dark() {
        return lights.stream()
                .flatMap(lighting -> lighting.shadows().stream()
                        .map(shadow ->
                                new Dark(lighting, shadow, section.members().get(shadow.member()))))
                .toList();
    }

    private Optional<Phrase> words(Dark dark) {
        return dark.shadow()
                .caster()
                .filter(caster -> dark.shadow().kind() == Band.Lit.CAST)
                .map(caster -> words(dark, section.name(caster)));
    }

    private Phrase words(Dark dark, String caster) {
        Shadow shadow = dark.shadow();
        Member member = dark.member();
        boolean whole = member.length() - shadow.dark() <= Tolerance.TOUCHING;
        Phrase soft = shadow.soft().orElse(0) >= LEAST_SOFT
                ? SOFT.with("width", Figure.length(shadow.soft().getAsDouble()))
                : Phrase.of("");
        return (whole ? DARK_ALL : DARK_PART)
                .with("caster", caster)
                .with("where", where(shadow.box(), member.box()))
                .with("dark", Figure.length(shadow.dark()))
                .with("length", Figure.length(member.length()))
                .with("on", section.name(member.body()) + " " + member.member())
                .with("soft", soft);
    }

    /** Which part of a member a stretch of it is. */
    private static String where(Box part, Box member) {
        if (member.height() > Tolerance.TOUCHING) {
            boolean upper = member.top() - part.top() <= Tolerance.TOUCHING;
            boolean lower = part.bottom() - member.bottom() <= Tolerance.TOUCHING;
            return upper == lower ? "middle" : upper ? "upper" : "lower";
        }
        boolean outer = member.face() - part.face() <= Tolerance.TOUCHING;
        boolean inner = part.back() - member.back() <= Tolerance.TOUCHING;
        return outer == inner ? "middle" : outer ? "outer" : "inner";
    }

    private Sheet days() {
        List<Hour> hours = hours();
        return Sheet.of("sun", "THE SUN'S DAY", hours)
                .name("light", "light", hour -> hour.sun().name())
                .words("day", "day", hour -> hour.sun().hour().day().toString())
                .name(
                        "hour",
                        "hour",
                        hour -> String.format(
                                Locale.ROOT, "%02.0f:00", hour.hour().hour()))
                .measure(
                        "altitude",
                        "altitude",
                        Quantity.ANGLE,
                        TENTHS,
                        hour -> hour.hour().altitude())
                .measure(
                        "azimuth",
                        "azimuth",
                        Quantity.ANGLE,
                        TENTHS,
                        hour -> hour.hour().azimuth())
                .name("piece", "piece", hour -> section.name(hour.member().body()))
                .name("member", "member", hour -> hour.member().member())
                .length("dark", "dark", Hour::dark)
                .words(
                        "sun",
                        "sun",
                        hour -> hour.sun().name() + ", " + hour.sun().hour().day())
                .text()
                .words(
                        "face",
                        "dark on",
                        hour -> section.name(hour.member().body()) + " "
                                + hour.member().member())
                .text()
                .tableFor("sun", "THE SUN'S DAY: how much is dark of each member that is ever lit", "face", "dark")
                .across("hour")
                .sheet()
                .askedIf(!hours.isEmpty());
    }

    private List<Hour> hours() {
        List<Hour> hours = new ArrayList<>();
        for (Lighting lighting : lights) {
            if (lighting.light() instanceof Light.Sun sun) {
                List<Sunlight.Hour> day = Sunlight.day(section, sun);
                for (int i = 0; i < section.members().size(); i++) {
                    Member member = section.members().get(i);
                    int number = i;
                    if (day.stream()
                            .anyMatch(hour -> hour.dark().get(number) <= member.length() - Tolerance.TOUCHING)) {
                        day.forEach(hour -> hours.add(
                                new Hour(sun, hour, member, hour.dark().get(number))));
                    }
                }
            }
        }
        return hours;
    }
}
