package buildup.engine.look.sight;

import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What eyes see of a section, as sheets: where they are, how high members look, which raw wood shows. */
public final class SightSheets {
    private static final Phrase HIDES = Phrase.of("{piece} at {height}");

    private static final Phrase FIRST = Phrase.of("{distance}");

    private static final Phrase NEVER = Phrase.of("never");

    /** What an eye sees of a member. */
    private record Look(Eye eye, Member member, SeenMember seen) {}

    /** How well a nailer is hidden from an eye. */
    private record Cover(Eye eye, Coverage coverage) {}

    /** Raw wood on the way of an eye. */
    private record Show(String way, Approach.Showing showing) {}

    private final Section section;
    private final List<Sighting> sights;

    private SightSheets(Section section, List<Sighting> sights) {
        this.section = section;
        this.sights = sights;
    }

    /**
     * Eyes, what each sees, raw wood from each, and raw wood on the way, in the order of a report.
     *
     * @param sights answers about eyes of the section's stack
     */
    public static List<Sheet> of(Section section, List<Sighting> sights, List<Approach> approaches) {
        SightSheets sheets = new SightSheets(section, sights);
        return List.of(sheets.eyes(), sheets.seen(), sheets.coverage(), sheets.approach(approaches));
    }

    private Sheet eyes() {
        return Sheet.of(
                        "eyes",
                        "EYES: out from the wall plane, up from the datum",
                        section.stack().eyes())
                .name("name", "eye", Eye::name)
                .length("distance", "out", Eye::distance)
                .length("height", "up", Eye::height)
                .lengthIf("heightOverFloor", "over the floor", this::overFloor)
                .sheet();
    }

    private OptionalDouble overFloor(Eye eye) {
        OptionalDouble floor = section.stack().space().floor();
        return floor.isPresent() ? OptionalDouble.of(eye.height() - floor.getAsDouble()) : floor;
    }

    private Sheet seen() {
        List<Look> looks = sights.stream()
                .flatMap(sighting -> sighting.members().stream()
                        .map(seen -> new Look(sighting.eye(), section.members().get(seen.member()), seen)))
                .filter(look -> look.seen().length() > Tolerance.TOUCHING)
                .toList();
        return Sheet.of("seen", "HEIGHTS AS SEEN", looks)
                .name("piece", "piece", look -> section.name(look.member().body()))
                .name("member", "member", look -> look.member().member())
                .name("eye", "eye", look -> look.eye().name())
                .length("whole", "length", look -> look.member().length())
                .text()
                .length("length", "seen of it", look -> look.seen().length())
                .length("trueHeight", "true height", look -> look.seen().trueHeight())
                .lengthIf("seenHeight", "seen height", look -> look.seen().seenHeight())
                .tableFor(
                        "eye",
                        "HEIGHTS AS SEEN; seen height: as it stands in perspective on the wall plane",
                        "piece",
                        "member",
                        "whole",
                        "length",
                        "trueHeight",
                        "seenHeight")
                .sheet();
    }

    /** The eyes that stand in the room: of any other it is not known what it would see. */
    private List<String> seeing() {
        return sights.stream().map(sighting -> sighting.eye().name()).toList();
    }

    private Sheet coverage() {
        List<Cover> covers = sights.stream()
                .flatMap(sighting -> sighting.coverage().stream().map(coverage -> new Cover(sighting.eye(), coverage)))
                .toList();
        return Sheet.of("coverage", "UNFINISHED WOOD SEEN on the room side, from each eye", covers)
                .name("piece", "nailer", cover -> section.name(cover.coverage().body()))
                .name("eye", "eye", cover -> cover.eye().name())
                .length("exposed", "exposed", cover -> cover.coverage().exposed())
                .noneWithoutRow("eye", seeing())
                .length("seen", "seen", cover -> cover.coverage().seen())
                .noneWithoutRow("eye", seeing())
                .measure(
                        "hiddenShare",
                        "hidden",
                        Quantity.SHARE,
                        Rounding.decimals(1),
                        cover -> cover.coverage().hiddenShare())
                .sayingIf("cure", "hidden by", this::cure)
                .tableWhere(
                        List.of("exposed"),
                        "UNFINISHED WOOD SEEN on the room side, from each eye",
                        "piece",
                        "eye",
                        "exposed",
                        "seen",
                        "hiddenShare",
                        "cure")
                .sheet();
    }

    private Optional<Phrase> cure(Cover cover) {
        return cover.coverage().cures().stream()
                .findFirst()
                .map(cure -> HIDES.with("piece", section.name(cure.body())).with("height", Figure.length(cure.to())));
    }

    private static List<String> ways(List<Approach> approaches) {
        return approaches.stream().map(Approach::name).toList();
    }

    private Sheet approach(List<Approach> approaches) {
        List<Show> shows = approaches.stream()
                .flatMap(approach -> approach.showing().stream().map(showing -> new Show(approach.name(), showing)))
                .toList();
        return Sheet.of(
                        "approach",
                        "WALKING UP: how far from the wall plane raw wood first shows, and the most of it seen",
                        shows)
                .name("name", "approach", Show::way)
                .name("piece", "nailer", show -> section.name(show.showing().body()))
                .length("exposed", "exposed", show -> show.showing().exposed())
                .json()
                .noneWithoutRow("name", ways(approaches))
                .saying("first", "first shows at", SightSheets::first)
                // what never shows shows at no distance
                .lengthIf("firstShows", "first shows at", show -> show.showing().first())
                .json()
                .emptyIsNone()
                .noneWithoutRow("name", ways(approaches))
                .length("mostSeen", "most seen", show -> show.showing().most())
                .noneWithoutRow("name", ways(approaches))
                .sheet()
                .askedIf(!approaches.isEmpty());
    }

    private static Phrase first(Show show) {
        OptionalDouble first = show.showing().first();
        return first.isPresent() ? FIRST.with("distance", Figure.length(first.getAsDouble())) : NEVER;
    }
}
