package buildup.engine.hold.season;

import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The seasons as sheets. */
public final class SeasonSheets {
    /** What moves less is not told to people; programs read all. */
    private static final double TOLD = Tolerance.SAW_CUT / 2;

    private final Section section;
    private final Year year;

    private SeasonSheets(Section section, Year year) {
        this.section = section;
        this.year = year;
    }

    /** Seasons, movements, and what these open and close. */
    public static List<Sheet> of(Section section, Year year) {
        SeasonSheets sheets = new SeasonSheets(section, year);
        return List.of(sheets.seasons(), sheets.movements(), sheets.effects());
    }

    private Sheet seasons() {
        return Sheet.of("season", "SEASONS: the sizes of the stack hold in the first", year.seasons())
                .name("name", "season", Season::name)
                .measure("moisture", "moisture of the wood", Quantity.MOISTURE, Season::moisture)
                .sayingIf("air", "air", season -> season.air().map(Air::words))
                .sheet()
                .askedIf(year.asked());
    }

    private Sheet movements() {
        return Sheet.of("movements", "MOVEMENT", year.movements())
                .name("season", "season", movement -> season(movement.season()))
                .name("piece", "piece", movement -> section.name(movement.body()))
                .name("axis", "axis", movement -> movement.up() ? "up" : "out")
                .measure("amount", "movement", Quantity.LENGTH, Rounding.FINE, Year.Movement::amount)
                .saying("held", "moves from", movement -> Phrase.plain(held(movement.body())))
                .table(
                        "MOVEMENT across the grain since " + first() + ": larger, or smaller where negative",
                        "piece",
                        "held",
                        "axis",
                        "amount")
                .across("season")
                .sheet()
                .askedIf(year.asked());
    }

    private Sheet effects() {
        String title = "WHAT OPENS AND CLOSES since " + first() + "; what is left then";
        return Sheet.of("openings", title, year.effects())
                .name("season", "season", effect -> season(effect.season()))
                .name("what", "what", Effect::name)
                .words("place", "place", effect -> effect.place().name().toLowerCase(Locale.ROOT))
                .measure("amount", "opens", Quantity.LENGTH, Rounding.FINE, Effect::amount)
                .wordsIf("result", "result", effect -> told(effect) ? Optional.of(effect.result()) : Optional.empty())
                .lengthIf("left", "left", Effect::left)
                .flag("seen", "in sight", Effect::seen)
                .place(
                        "at",
                        "",
                        effect -> effect.at().x(),
                        effect -> effect.at().y())
                .json()
                .tableWhere(List.of("result"), title, "season", "what", "amount", "result", "left", "seen")
                .sheet()
                .askedIf(year.asked());
    }

    /** What people are told; of a face that still lies on most of another nothing. */
    private static boolean told(Effect effect) {
        boolean lies = effect.place() == Effect.Place.LAP || effect.place() == Effect.Place.BEARING;
        double left = effect.left().orElse(0);
        return Math.abs(effect.amount()) >= TOLD && !(lies && left > (left - effect.amount()) / 2);
    }

    private String first() {
        return year.asked() ? year.seasons().get(0).name() : "";
    }

    private String season(int number) {
        return year.seasons().get(number).name();
    }

    private String held(int body) {
        Held held = year.held().stream()
                .filter(one -> one.body() == body)
                .findFirst()
                .orElseThrow();
        return switch (held.how()) {
            case NAILED -> "its nails";
            case SAID, COUNTED, RESTS -> section.name(held.up().get(0).body());
            case FLOATS -> "floats";
            case FREE -> "its middle";
        };
    }
}
