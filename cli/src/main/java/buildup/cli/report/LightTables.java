package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.Answers;
import buildup.engine.look.light.Band;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.engine.look.light.Sunlight;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** What the lights do to one stack: where they stand, their shadows in figures and in words, the sun's day. */
final class LightTables {
    /** Hours side by side that leave room for the names on a page of 80 columns. */
    private static final int HOURS_ABREAST = 7;

    private final Section section;
    private final List<Lighting> lights;
    private final Printed printed;

    LightTables(Answers known, Printed printed) {
        this.section = known.section();
        this.lights = known.lights();
        this.printed = printed;
    }

    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        tables.add(places());
        for (Lighting lighting : lights) {
            tables.add(inWords(lighting));
            tables.add(shadows(lighting));
            if (lighting.light() instanceof Light.Sun sun) {
                tables.addAll(day(sun));
            }
        }
        return tables;
    }

    private Table places() {
        return new Table(
                "LIGHTS; the angle is that of the ray in section, over the level",
                Table.columns("light", "comes from", ">angle"),
                lights.stream()
                        .map(lighting -> List.of(
                                Cell.of(lighting.light().name()),
                                Cell.of(from(lighting.light())),
                                lighting.sectionAngle().isPresent()
                                        ? Printed.figure(lighting.sectionAngle().getAsDouble(), 2)
                                        : Cell.EMPTY))
                        .toList());
    }

    private String from(Light light) {
        if (light instanceof Light.Lamp lamp) {
            return "a lamp " + printed.size(lamp.at().x()) + " out, "
                    + printed.size(lamp.at().y()) + " up";
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        return Printed.decimals(distant.altitude(), 1) + " degrees up, "
                + Printed.decimals(Math.abs(distant.azimuth()), 1) + " degrees off square"
                + (Math.abs(distant.azimuth()) < Tolerance.COINCIDENT
                        ? ""
                        : distant.azimuth() > 0 ? " from the left" : " from the right");
    }

    private Table inWords(Lighting lighting) {
        return new Table(
                "SHADOW LINES, " + lighting.light().name(),
                Table.columns("in words"),
                lighting.shadows().stream()
                        .filter(shadow -> shadow.kind() == Band.Lit.CAST
                                && shadow.caster().isPresent())
                        .map(shadow -> List.of(Cell.of(words(shadow))))
                        .toList());
    }

    private String words(Shadow shadow) {
        Member member = section.members().get(shadow.member());
        String on = section.name(member.body()) + " " + member.member();
        String caster = section.name(shadow.caster().orElseThrow());
        boolean whole = member.length() - shadow.dark() <= Tolerance.TOUCHING;
        return caster + " darkens "
                + (whole
                        ? "all " + printed.size(member.length())
                        : "the " + where(shadow.box(), member.box()) + printed.size(shadow.dark()) + " of "
                                + printed.size(member.length()))
                + " of " + on
                + (shadow.soft().isPresent()
                        ? ", its edge soft over " + printed.size(shadow.soft().getAsDouble())
                        : "");
    }

    /** Which part of a member a stretch of it is. */
    private static String where(Box part, Box member) {
        if (member.height() > Tolerance.TOUCHING) {
            boolean upper = member.top() - part.top() <= Tolerance.TOUCHING;
            boolean lower = part.bottom() - member.bottom() <= Tolerance.TOUCHING;
            return upper == lower ? "middle " : upper ? "upper " : "lower ";
        }
        boolean outer = member.face() - part.face() <= Tolerance.TOUCHING;
        boolean inner = part.back() - member.back() <= Tolerance.TOUCHING;
        return outer == inner ? "middle " : outer ? "outer " : "inner ";
    }

    private Table shadows(Lighting lighting) {
        return new Table(
                "DARK STRETCHES, " + lighting.light().name()
                        + "; depth: from the casting arris down to the shadow's edge",
                Table.columns("on", "member", "how", ">dark", ">share", "by", ">overhang", ">depth"),
                lighting.shadows().stream().map(this::row).toList());
    }

    private List<Cell> row(Shadow shadow) {
        Member member = section.members().get(shadow.member());
        return List.of(
                Cell.of(section.name(member.body())),
                Cell.of(member.member()),
                Cell.of(shadow.kind().word()),
                printed.cell(shadow.dark()),
                Cell.of(Printed.decimals(100 * shadow.share(), 0) + " %", shadow.share()),
                Cell.of(shadow.caster().map(section::name).orElse("")),
                printed.cell(shadow.overhang()),
                printed.cell(shadow.depth()));
    }

    private List<Table> day(Light.Sun sun) {
        List<Sunlight.Hour> hours = Sunlight.day(section, sun);
        List<Table> tables = new ArrayList<>();
        for (int start = 0; start < hours.size(); start += HOURS_ABREAST) {
            tables.add(day(sun, hours.subList(start, Math.min(hours.size(), start + HOURS_ABREAST))));
        }
        return tables;
    }

    private Table day(Light.Sun sun, List<Sunlight.Hour> hours) {
        List<String> heads = new ArrayList<>(List.of("dark on"));
        hours.forEach(hour -> heads.add(">" + Printed.decimals(hour.hour(), 0) + " h"));
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < section.members().size(); i++) {
            Member member = section.members().get(i);
            int number = i;
            boolean neverLit =
                    hours.stream().allMatch(hour -> hour.dark().get(number) > member.length() - Tolerance.TOUCHING);
            if (!neverLit) {
                List<Cell> row = new ArrayList<>(List.of(Cell.of(section.name(member.body()) + " " + member.member())));
                hours.forEach(hour -> row.add(printed.cell(hour.dark().get(number))));
                rows.add(row);
            }
        }
        return new Table(
                "THE SUN'S DAY, " + sun.name() + ", " + sun.hour().day()
                        + ": how much is dark of each member that is ever lit",
                Table.columns(heads.toArray(new String[0])),
                rows);
    }
}
