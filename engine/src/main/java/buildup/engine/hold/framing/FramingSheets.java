package buildup.engine.hold.framing;

import buildup.engine.section.compose.Section;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/** What there is to nail to, as sheets. */
public final class FramingSheets {
    private FramingSheets() {}

    /** All of them; those of which nothing is known are not written. */
    public static List<Sheet> of(Section section, Framed framed) {
        return List.of(
                landings(section, "landings", "ROWS ON STUDS AND JOISTS", false, framed.landings()),
                landings(section, "proposedLandings", "PROPOSED ROWS ON STUDS AND JOISTS", true, framed.proposed()),
                blocks(section::name, framed.blocks()));
    }

    private static Sheet landings(Section section, String key, String title, boolean proposed, List<Landing> landings) {
        Columns<Landing> columns = Sheet.of(key, title, landings)
                .name("run", "run", Landing::run)
                .name("stretch", "stretch", Landing::stretch)
                .name("name", "row", landing -> landing.fixed().fastening().name())
                .words("piece", "piece", landing -> section.name(landing.fixed().piece()))
                .words("into", "into", landing -> landing.into().word())
                .count("nails", "nails at", landing -> landing.places().size())
                .count("lands", "landing", Landing::landed)
                .lengths("misses", "misses at", Rounding.NEAREST, Landing::misses)
                .length("off", "misses by", Landing::off)
                .length("between", "widest gap", Landing::between)
                .lengthIf("bite", "bite in the joist", Landing::bite)
                .lengthIf("first", "first at", landing -> where(landing.best().first()))
                .length("spacing", "then every", landing -> landing.best().spacing())
                .count("missesThen", "then missing", landing -> landing.best().misses());
        return (proposed ? columns.offered() : columns)
                .table(
                        title + "; first, every: how to set the row out so that most of it lands",
                        told(proposed, landings))
                .sheet()
                .askedIf(!landings.isEmpty());
    }

    /** What people read: proposed rows by their pieces, as they have no names; bites and misses where there are any. */
    private static String[] told(boolean proposed, List<Landing> landings) {
        Set<String> none = new HashSet<>(List.of("bite", "off", "missesThen"));
        for (Landing landing : landings) {
            none.removeIf(key -> switch (key) {
                case "bite" -> landing.bite().isPresent();
                case "off" -> !landing.misses().isEmpty();
                default -> landing.best().misses() > 0;
            });
        }
        return Stream.of(
                        "stretch",
                        proposed ? "piece" : "name",
                        "into",
                        "nails",
                        "lands",
                        "off",
                        "between",
                        "bite",
                        "first",
                        "spacing",
                        "missesThen")
                .filter(key -> landings.isEmpty() || !none.contains(key))
                .toArray(String[]::new);
    }

    /** Where anywhere will do, nothing is said. */
    private static OptionalDouble where(double first) {
        return first > 0 ? OptionalDouble.of(first) : OptionalDouble.empty();
    }

    /**
     * The blocks alone, as what is cut.
     *
     * @param section absent when nothing is known; the columns are known all the same
     */
    public static Sheet cuts(Optional<Section> section, List<BackingBlock> blocks) {
        return blocks(body -> section.map(known -> known.name(body)).orElse(""), blocks);
    }

    private static Sheet blocks(IntFunction<String> name, List<BackingBlock> blocks) {
        return Sheet.of(
                        "blocks",
                        "BACKING BLOCKS behind sprung moldings: triangles, their long face along the back",
                        blocks)
                .name("run", "run", BackingBlock::run)
                .name("stretch", "stretch", BackingBlock::stretch)
                .name("piece", "behind", block -> name.apply(block.piece()))
                .count("count", "blocks", BackingBlock::count)
                .length("spacing", "block spacing", BackingBlock::spacing)
                .length("length", "each long", BackingBlock::length)
                .measure("height", "leg up", Quantity.LENGTH, Rounding.DOWN, BackingBlock::height)
                .measure("width", "leg out", Quantity.LENGTH, Rounding.DOWN, BackingBlock::width)
                .measure("slope", "long face", Quantity.LENGTH, Rounding.DOWN, BackingBlock::slope)
                .measure("bevel", "rip bevel", Quantity.ANGLE, BackingBlock::bevel)
                .measureIf("topBevel", "top bevel", Quantity.ANGLE, Rounding.decimals(1), FramingSheets::topBevel)
                .length("rip", "ripped from stock as thick as", BackingBlock::rip)
                .table(
                        "BACKING BLOCKS behind sprung moldings: triangles, ripped at the bevel, long face to the back",
                        "stretch",
                        "piece",
                        "count",
                        "spacing",
                        "length",
                        "height",
                        "width",
                        "slope",
                        "bevel",
                        "topBevel")
                .sheet()
                .askedIf(!blocks.isEmpty());
    }

    /** Under a level ceiling there is none to tell. */
    private static OptionalDouble topBevel(BackingBlock block) {
        return block.square() ? OptionalDouble.empty() : OptionalDouble.of(block.topBevel());
    }
}
