package buildup.cli.report;

import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.backing.Backing;
import buildup.engine.compose.Body;
import buildup.engine.compose.Contact;
import buildup.engine.compose.Hollow;
import buildup.engine.compose.Member;
import buildup.engine.compose.Overlap;
import buildup.engine.compose.Reveal;
import buildup.engine.compose.Section;
import buildup.engine.compose.Standing;
import buildup.engine.compose.Step;
import buildup.engine.compose.Totals;
import buildup.engine.light.Lighting;
import buildup.engine.light.Lights;
import buildup.engine.light.Sunlight;
import buildup.engine.placing.Placed;
import buildup.engine.sight.Approach;
import buildup.engine.sight.Sighting;
import buildup.engine.stack.Eye;
import buildup.engine.stack.Light;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Text;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Everything known of one stack, for other programs: inches, square inches, degrees, pounds per foot, points as
 * {@code [x, y]}. {@code report.schema.json} says what each key means.
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
        Json json = new Json().put("title", answer.title());
        answer.known().ifPresent(known -> new JsonReport(known).figures(json));
        return json.put("notices", notices(answer.notices(), Optional.of(answer.file()), answer.unit()));
    }

    /** @param file what is named where a notice has no place of its own */
    static List<Json> notices(List<Notice> notices, Optional<String> file, LengthUnit unit) {
        NoticeWords words = NoticeWords.in(unit);
        return notices.stream().map(notice -> notice(notice, file, words)).toList();
    }

    private static Json notice(Notice notice, Optional<String> file, NoticeWords words) {
        Json json = new Json()
                .put("level", notice.level().name().toLowerCase(Locale.ROOT))
                .put("code", notice.code())
                .put("file", notice.mark().map(Mark::file).or(() -> file));
        notice.mark().ifPresent(mark -> json.put("line", mark.line()));
        json.put("piece", notice.piece());
        notice.amount().ifPresent(amount -> json.put("amount", amount.amount()));
        return json.put("values", values(notice))
                .put("message", words.message(notice))
                .put("cure", Optional.of(words.cure(notice)).filter(cure -> !cure.isEmpty()));
    }

    private static List<Json> values(Notice notice) {
        return notice.figures().stream()
                .map(named -> {
                    Json json = new Json().put("name", named.name());
                    return named.value() instanceof Figure figure
                            ? json.put("kind", figure.quantity().kind()).put("value", figure.amount())
                            : json.put("kind", "text").put("value", ((Text) named.value()).words());
                })
                .toList();
    }

    private void figures(Json json) {
        json.put("totals", totals(section.totals()))
                .put("pieces", pieces())
                .put("steps", section.steps().stream().map(this::step).toList())
                .put(
                        "space",
                        new Json()
                                .put("ceilingLeft", section.ceilingLeft())
                                .put("projectionLeft", section.projectionLeft()))
                .put("members", section.members().stream().map(this::member).toList())
                .put("reveals", section.reveals().stream().map(this::reveal).toList())
                .put("contacts", section.contacts().stream().map(this::contact).toList())
                .put("overlaps", section.overlaps().stream().map(this::overlap).toList())
                .put("voids", section.voids().stream().map(JsonReport::hollow).toList())
                .put(
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

    private static Json totals(Totals totals) {
        return new Json()
                .put("height", totals.height())
                .put("projection", totals.projection())
                .put("bottom", totals.bottom())
                .put("top", totals.top())
                .put("trimHeight", totals.trimHeight())
                .put("trimProjection", totals.trimProjection())
                .put("area", totals.area())
                .put("weightPerFoot", totals.weightPerFoot());
    }

    private List<Json> pieces() {
        List<Json> pieces = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            int number = i;
            section.body(i).placed().ifPresent(placed -> pieces.add(piece(number, section.body(number), placed)));
        }
        return pieces;
    }

    private Json piece(int number, Body body, Placed placed) {
        Box box = body.outline().box();
        Stream<Standing> standing = section.standing().stream().filter(one -> one.body() == number);
        Optional<Standing> held = standing.findFirst();
        return new Json()
                .put("name", body.name())
                .put("letter", Section.letter(number))
                .put("profile", placed.piece().stock().name())
                .put("kind", placed.piece().kind().word())
                .put("wood", placed.piece().wood().name())
                .put("bottom", box.bottom())
                .put("top", box.top())
                .put("back", box.back())
                .put("face", box.face())
                .put("area", body.outline().area())
                .put(
                        "blank",
                        new Json()
                                .put("width", placed.blankWidth())
                                .put("thickness", placed.blankThickness())
                                .put("stock", Blank.stock(placed, known)))
                .put("grounded", held.map(Standing::grounded).orElse(false))
                .put(
                        "bearing",
                        held.map(Standing::bearing).orElse(List.of()).stream()
                                .map(bearing -> new Json()
                                        .put("on", section.name(bearing.on()))
                                        .put("from", bearing.from())
                                        .put("to", bearing.to()))
                                .toList())
                .put(
                        "backing",
                        known.backings().stream()
                                .filter(backing -> backing.body() == number)
                                .flatMap(backing -> backing.stretches().stream())
                                .map(this::backing)
                                .toList());
    }

    private Json backing(Backing.Stretch stretch) {
        return new Json()
                .put("by", section.name(stretch.by()))
                .put("from", stretch.from())
                .put("to", stretch.to());
    }

    private Json step(Step step) {
        return new Json()
                .put("piece", section.name(step.body()))
                .put("height", step.height())
                .put("projection", step.projection())
                .put("top", step.top());
    }

    private Json member(Member member) {
        Box box = member.box();
        return new Json()
                .put("piece", section.name(member.body()))
                .put("member", member.member())
                .put("from", member.from())
                .put("to", member.to())
                .put("length", member.length())
                .put("bottom", box.bottom())
                .put("top", box.top())
                .put("projection", member.projection())
                .put("step", member.step());
    }

    private Json reveal(Reveal reveal) {
        return new Json()
                .put("piece", section.name(reveal.piece()))
                .put("over", section.name(reveal.over()))
                .put("amount", reveal.amount())
                .put("along", reveal.along().word())
                .put("at", reveal.at())
                .put("step", reveal.step());
    }

    private Json contact(Contact contact) {
        boolean lies = contact.stretch().isPresent();
        return new Json()
                .put("a", section.name(contact.a()))
                .put("b", section.name(contact.b()))
                .put("facing", contact.facing().map(Contact.Facing::word))
                .put("slope", lies ? OptionalDouble.of(contact.slope()) : OptionalDouble.empty())
                .put("length", contact.length())
                .put("from", contact.from())
                .put("to", contact.to());
    }

    private Json overlap(Overlap overlap) {
        return new Json()
                .put("a", section.name(overlap.a()))
                .put("b", section.name(overlap.b()))
                .put("area", overlap.area())
                .put("depth", overlap.depth())
                .put("at", overlap.at());
    }

    private static Json hollow(Hollow hollow) {
        return new Json().put("area", hollow.area()).put("at", hollow.at()).texts("closedBy", hollow.closedBy());
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
