package buildup.cli.compare;

import static buildup.cli.compare.Sheet.length;
import static buildup.cli.compare.Sheet.names;
import static buildup.cli.compare.Sheet.words;

import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Head;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Row;
import buildup.engine.Answers;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.engine.look.sight.Coverage;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Light;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The sheets of what the room does to the section: its lights and its eyes. */
record RoomSheets(Answers known, Section section) {
    static final String SHADOWS = "shadows";
    static final String COVERAGE = "coverage";

    List<Sheet> all() {
        return List.of(lights(), shadows(), eyes(), seen(), coverage(), approaches());
    }

    private Sheet lights() {
        return new Sheet(
                "lights",
                "LIGHTS; the angle is that of the ray in section, over the level",
                names("light"),
                List.of(
                        Sheet.of("sectionAngle", "angle", Kind.DEGREES),
                        length("out", "lamp out"),
                        length("up", "lamp up"),
                        length("width", "lamp width")),
                known.lights().stream().map(this::light).toList());
    }

    private Row light(Lighting lighting) {
        List<Figure> figures = new ArrayList<>(List.of(Figure.of(lighting.sectionAngle())));
        if (lighting.light() instanceof Light.Lamp lamp) {
            figures.add(Figure.of(lamp.at().x()));
            figures.add(Figure.of(lamp.at().y()));
            figures.add(Figure.of(lamp.width()));
        } else {
            for (int i = 0; i < 3; i++) {
                figures.add(Figure.of(OptionalDouble.empty()));
            }
        }
        return new Row(List.of(lighting.light().name()), figures);
    }

    private Sheet shadows() {
        List<Row> rows = new ArrayList<>();
        for (Lighting lighting : known.lights()) {
            lighting.shadows().forEach(shadow -> rows.add(shadow(lighting, shadow)));
        }
        return new Sheet(
                SHADOWS,
                "DARK STRETCHES; depth: from the casting arris down to the shadow's edge",
                List.of(
                        new Head("light", "light"),
                        new Head("on", "on"),
                        new Head("member", "member"),
                        new Head("kind", "how")),
                List.of(
                        length("dark"),
                        Sheet.of("share", "share", Kind.SHARE),
                        words("caster", "by"),
                        length("overhang"),
                        length("depth"),
                        length("soft")),
                rows);
    }

    private Row shadow(Lighting lighting, Shadow shadow) {
        Member member = section.members().get(shadow.member());
        return new Row(
                List.of(
                        lighting.light().name(),
                        section.name(member.body()),
                        member.member(),
                        shadow.kind().word()),
                List.of(
                        Figure.of(shadow.dark()),
                        Figure.of(shadow.share()),
                        Figure.of(shadow.caster().map(section::name).orElse("")),
                        Figure.of(shadow.overhang()),
                        Figure.of(shadow.depth()),
                        Figure.of(shadow.soft())));
    }

    private Sheet eyes() {
        OptionalDouble floor = section.stack().space().floor();
        return new Sheet(
                "eyes",
                "EYES: out from the wall plane, up from the datum",
                names("eye"),
                List.of(length("distance", "out"), length("height", "up"), length("heightOverFloor", "over the floor")),
                known.sights().stream()
                        .map(Sighting::eye)
                        .map(eye -> new Row(
                                List.of(eye.name()),
                                List.of(
                                        Figure.of(eye.distance()),
                                        Figure.of(eye.height()),
                                        Figure.of(over(floor, eye)))))
                        .toList());
    }

    private static OptionalDouble over(OptionalDouble floor, Eye eye) {
        return floor.isPresent() ? OptionalDouble.of(eye.height() - floor.getAsDouble()) : floor;
    }

    private Sheet seen() {
        List<Row> rows = new ArrayList<>();
        for (Sighting sighting : known.sights()) {
            sighting.members().forEach(seen -> {
                Member member = section.members().get(seen.member());
                rows.add(new Row(
                        List.of(sighting.eye().name(), section.name(member.body()), member.member()),
                        List.of(Figure.of(seen.length()), Figure.of(seen.trueHeight()), Figure.of(seen.seenHeight()))));
            });
        }
        return new Sheet(
                "seen",
                "SEEN; seen height: as it stands in perspective on the wall plane",
                names("eye", "piece", "member"),
                List.of(
                        length("seen", "seen of it"),
                        length("trueHeight", "true height"),
                        length("seenHeight", "seen height")),
                rows);
    }

    private Sheet coverage() {
        List<Row> rows = new ArrayList<>();
        for (Sighting sighting : known.sights()) {
            sighting.coverage().forEach(coverage -> rows.add(coverage(sighting.eye(), coverage)));
        }
        return new Sheet(
                COVERAGE,
                "RAW WOOD on the room side, from each eye",
                names("piece", "eye"),
                List.of(length("exposed"), length("seen"), Sheet.of("hiddenShare", "hidden", Kind.SHARE)),
                rows);
    }

    private Row coverage(Eye eye, Coverage coverage) {
        return new Row(
                List.of(section.name(coverage.body()), eye.name()),
                List.of(Figure.of(coverage.exposed()), Figure.of(coverage.seen()), Figure.of(coverage.hiddenShare())));
    }

    private Sheet approaches() {
        List<Row> rows = new ArrayList<>();
        known.approaches()
                .forEach(approach -> approach.showing()
                        .forEach(showing -> rows.add(new Row(
                                List.of(approach.name(), section.name(showing.body())),
                                List.of(
                                        Figure.of(showing.exposed()),
                                        Figure.of(showing.first()),
                                        Figure.of(showing.most()))))));
        return new Sheet(
                "approach",
                "COMING NEARER: how far from the wall plane raw wood first shows, and the most of it seen",
                List.of(new Head("name", "approach"), new Head("piece", "piece")),
                List.of(length("exposed"), length("firstShows", "first shows at"), length("mostSeen", "most seen")),
                rows);
    }
}
