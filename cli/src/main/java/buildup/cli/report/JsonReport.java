package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.cli.tell.SheetJson;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Sheets;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Lights;
import buildup.engine.look.light.Sunlight;
import buildup.engine.look.sight.Approach;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeSheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything known of one stack, for other programs: inches, square inches, degrees, pounds per foot, points as
 * {@code [x, y]}. {@link ReportSchema} says what each key means.
 */
public final class JsonReport {
    private final Section section;
    private final Answers known;

    private JsonReport(Answers known) {
        this.section = known.section();
        this.known = known;
    }

    /** The report; title and notices alone when no figures are known. */
    public static String write(Answer answer) {
        return object(answer).written() + "\n";
    }

    /** The same as an object, to be put into another. */
    public static Json object(Answer answer) {
        Json json = new Json()
                .put("title", answer.title())
                .put("units", answer.unit().symbol());
        answer.known().ifPresent(known -> new JsonReport(known).figures(json, new FigurePrinter(answer.unit())));
        return json.put("notices", notices(answer.notices(), Optional.of(answer.file()), answer.unit()));
    }

    /** @param file what is named where a notice has no place of its own */
    public static List<Json> notices(List<Notice> notices, Optional<String> file, LengthUnit unit) {
        return new SheetJson(new FigurePrinter(unit)).rows(NoticeSheet.of(notices, file));
    }

    private void figures(Json json, FigurePrinter printer) {
        new SheetJson(printer).put(json, Sheets.of(known));
        json.put(
                        "lights",
                        section.stack().lights().stream().map(JsonReport::light).toList())
                .put("shadows", known.lights().stream().flatMap(this::shadows).toList())
                .put("eyes", section.stack().eyes().stream().map(this::eye).toList())
                .put("coverage", known.sights().stream().flatMap(this::coverage).toList());
        json.put("support", new SupportJson(known).support())
                .put("nails", new SupportJson(known).nails())
                .put("proposals", new SupportJson(known).proposals());
        json.put("seen", known.sights().stream().flatMap(this::seen).toList());
        if (!known.approaches().isEmpty()) {
            json.put(
                    "approach",
                    known.approaches().stream().flatMap(this::approach).toList());
        }
    }

    private Stream<Json> shadows(Lighting lighting) {
        return lighting.shadows().stream().map(shadow -> {
            Member member = section.members().get(shadow.member());
            return new Json()
                    .put("light", lighting.light().name())
                    .put("caster", shadow.caster().map(section::name))
                    .put("on", section.name(member.body()))
                    .put("member", member.member())
                    .put("top", shadow.box().top())
                    .put("bottom", shadow.box().bottom())
                    .put("from", shadow.from())
                    .put("to", shadow.to())
                    .put("dark", shadow.dark())
                    .put("share", shadow.share())
                    .put("overhang", shadow.overhang())
                    .put("depth", shadow.depth())
                    .put("kind", shadow.kind().word())
                    .put("soft", shadow.soft());
        });
    }

    private Stream<Json> coverage(Sighting sighting) {
        return sighting.coverage().stream()
                .map(coverage -> new Json()
                        .put("piece", section.name(coverage.body()))
                        .put("eye", sighting.eye().name())
                        .put("exposed", coverage.exposed())
                        .put("seen", coverage.seen())
                        .put("hiddenShare", coverage.hiddenShare()));
    }

    private Stream<Json> seen(Sighting sighting) {
        return sighting.members().stream()
                .filter(seen -> seen.length() > Tolerance.TOUCHING)
                .map(seen -> new Json()
                        .put(
                                "piece",
                                section.name(
                                        section.members().get(seen.member()).body()))
                        .put("member", section.members().get(seen.member()).member())
                        .put("eye", sighting.eye().name())
                        .put("length", seen.length())
                        .put("trueHeight", seen.trueHeight())
                        .put("seenHeight", seen.seenHeight()));
    }

    private Stream<Json> approach(Approach approach) {
        return approach.showing().stream()
                .map(showing -> new Json()
                        .put("name", approach.name())
                        .put("piece", section.name(showing.body()))
                        .put("exposed", showing.exposed())
                        .put("firstShows", showing.first())
                        .put("mostSeen", showing.most()));
    }

    private static Json light(Light light) {
        Json json = new Json().put("name", light.name());
        if (light instanceof Light.Lamp lamp) {
            return json.put("at", lamp.at()).put("width", lamp.width());
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        json.put("altitude", distant.altitude()).put("azimuth", distant.azimuth());
        return Math.abs(distant.azimuth()) < 90
                ? json.put("sectionAngle", Lights.sectionAngle(distant.altitude(), distant.azimuth()))
                : json;
    }

    private Json eye(Eye eye) {
        Json json = new Json()
                .put("name", eye.name())
                .put("distance", eye.distance())
                .put("height", eye.height());
        section.stack().space().floor().ifPresent(floor -> json.put("heightOverFloor", eye.height() - floor));
        return json;
    }
}
