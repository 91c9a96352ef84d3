package buildup.engine.hold.support;

import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import java.util.List;

/** A motion as a phrase: which pieces turn about which edge, how far until what stops them. */
public final class FallWords {
    /** More names than this are counted. */
    private static final int MOST_NAMES = 3;

    /** What turns about a place this near to it turns about its edge, in: as a shop rule is divided. */
    private static final double NEAR = 1.0 / 16;

    private FallWords() {}

    /** As {@code soffit and cap tip out over frieze until cap meets the floor after 30}. */
    public static Phrase of(Section section, Fall motion) {
        return of(section, motion.first());
    }

    /** As {@code frieze and cap turn until 1/16 has closed to the wall at 4-7/16 up}. */
    public static Phrase closing(Section section, Fall fall) {
        Fall.Part part = fall.first();
        String move = part.way().turns() ? "turn" : "move";
        return Phrase.of("{pieces} {moves}{until}")
                .with("pieces", names(section, part.pieces()))
                .with("moves", part.pieces().size() == 1 ? move + "s" : move)
                .with(
                        "until",
                        part.stop()
                                .<Value>map(stop -> Phrase.of(" until {travel} has closed to {by}, at {up} up")
                                        .with("travel", Figure.length(stop.travel()))
                                        .with("by", section.name(stop.by()))
                                        .with("up", Figure.length(stop.at().y())))
                                .orElse(Phrase.of("")));
    }

    private static Phrase of(Section section, Fall.Part part) {
        Phrase phrase = Phrase.of("{pieces} {moves}{over}{until}{foot}")
                .with("pieces", names(section, part.pieces()))
                .with(
                        "moves",
                        part.pieces().size() == 1
                                ? part.way().words()
                                : part.way().plural())
                .with("over", over(section, part));
        return phrase.with("until", until(section, part)).with("foot", foot(section, part));
    }

    private static Value over(Section section, Fall.Part part) {
        if (underCeiling(section, part)) {
            return Phrase.of(", off the ceiling");
        }
        if (part.way() == Fall.Way.FALLS) {
            // what it leaves is not what it falls on
            return Phrase.of("");
        }
        if (part.on().isPresent()) {
            return Phrase.of(part.way().turns() ? " over the edge of {on}" : " on {on}")
                    .with("on", section.name(part.on().getAsInt()));
        }
        // a place off the pieces that turn says nothing to whoever looks at them
        return part.about()
                .filter(about -> part.pieces().stream()
                        .anyMatch(piece -> section.body(piece).outline().box().holds(about, NEAR)))
                .map(about -> Phrase.of(" about {x} out, {y} up")
                        .with("x", Figure.length(about.x()))
                        .with("y", Figure.length(about.y())))
                .orElse(Phrase.of(""));
    }

    /** A crown rests with its foot on the wall or on what is before it: where it does not, that is why it moves. */
    private static Value foot(Section section, Fall.Part part) {
        List<Integer> crowns =
                part.pieces().stream().filter(section::footInTheAir).toList();
        return crowns.isEmpty()
                ? Phrase.of("")
                : Phrase.of("; the foot of {crowns} bears on nothing").with("crowns", names(section, crowns));
    }

    /** Whether what turns hangs under the ceiling: it comes off that on one side, and its other edge stays there. */
    private static boolean underCeiling(Section section, Fall.Part part) {
        return part.way().turns()
                && part.on().isPresent()
                && !section.body(part.on().getAsInt()).piece()
                && section.name(part.on().getAsInt()).equals("ceiling");
    }

    private static Value until(Section section, Fall.Part part) {
        return part.stop()
                .filter(stop ->
                        !underCeiling(section, part) || stop.by() != part.on().getAsInt())
                .map(stop -> Phrase.of(", {travel} to {by}")
                        .with("travel", Figure.length(stop.travel()))
                        .with("by", section.name(stop.by())))
                .orElse(Phrase.of(""));
    }

    /** The names of some pieces; of many, the first and how many more. */
    static Value names(Section section, List<Integer> pieces) {
        List<String> names = pieces.stream().map(section::name).toList();
        if (names.size() <= MOST_NAMES) {
            return Listing.names(names);
        }
        return Phrase.of("{first} and {more} more")
                .with(
                        "first",
                        Listing.commas(names.subList(0, MOST_NAMES - 1).stream()
                                .map(Text::new)
                                .toList()))
                .with("more", Figure.count(names.size() - MOST_NAMES + 1));
    }
}
