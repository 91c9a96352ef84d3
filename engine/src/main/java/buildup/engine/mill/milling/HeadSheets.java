package buildup.engine.mill.milling;

import buildup.profiles.outline.Point;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The heads that a profile takes, and the knives to be ground for them, as sheets. */
final class HeadSheets {
    private HeadSheets() {}

    /** @param milled absent for the columns alone */
    static List<Sheet> of(Optional<Milled> milled) {
        return List.of(heads(milled), knives(milled));
    }

    private static Sheet heads(Optional<Milled> milled) {
        return Sheet.of("milling.heads", "HEADS that it takes, the fewest", MillingSheets.all(milled, Milled::heads))
                .words("head", "head", work -> work.side().word())
                .names("makes", "makes", HeadWork::members)
                .sayingIf("cutter", "listed cutter", work -> work.cutter().map(Pass::cutter))
                .both()
                .lengthIf(
                        "knife",
                        "ground knife, width",
                        work -> work.knife()
                                .map(knife -> OptionalDouble.of(knife.width()))
                                .orElse(OptionalDouble.empty()))
                .text()
                .sheet();
    }

    private static Sheet knives(Optional<Milled> milled) {
        return Sheet.of("milling.knives", "GROUND KNIVES", MillingSheets.all(milled, Milled::knives))
                .words("head", "head", knife -> knife.side().word())
                .words("holder", "held by", knife -> knife.head().name())
                .json()
                .length("width", "width", Knife::width)
                .lengthIf("steel", "steel", Knife::steel)
                .json()
                .wordsIf(
                        "noSteel",
                        "",
                        knife -> knife.stock().isPresent() ? Optional.empty() : Optional.of("none listed"))
                .text()
                .fine("woodDepth", "depth in the wood", Knife::woodDepth)
                .measureIf(
                        "depth",
                        "depth on the knife",
                        Quantity.LENGTH,
                        Rounding.FINE,
                        knife -> OptionalDouble.of(knife.depth()))
                .measure(
                        "circle",
                        "cutting circle",
                        Quantity.LENGTH,
                        knife -> knife.head().circle().toInches())
                .measure(
                        "hook",
                        "hook",
                        Quantity.ANGLE,
                        knife -> knife.head().hook().toDegrees())
                .count("knives", "knives cutting", knife -> knife.head().knives())
                .measure("speed", "speed", Quantity.RPM, knife -> knife.head().speed())
                .measure("rim", "rim speed", Quantity.FEED, Knife::rim)
                .measure("feed", "feed", Quantity.FEED, Knife::feed)
                .measure("marks", "", Quantity.MARKS, Knife::marks)
                .measure("scallop", "knife-mark depth", Quantity.LENGTH, Rounding.decimals(5), Knife::scallop)
                .many(
                        "edge",
                        "edge of the knife at full size",
                        Columns.<Point>inner()
                                .length("across", "across", Point::x)
                                .length("back", "back from its longest point", point -> -point.y()),
                        Knife::edge)
                .json()
                .table("GROUND KNIVES", "head", "width", "steel", "noSteel", "woodDepth", "depth", "circle", "hook")
                .table("SPEED AND FEED", "head", "knives", "speed", "rim", "feed", "marks", "scallop")
                .sheet();
    }
}
