package buildup.catalog;

import buildup.catalog.family.Family;
import buildup.catalog.mill.Cutter;
import buildup.catalog.mill.Head;
import buildup.catalog.wood.BoardList;
import buildup.catalog.wood.Wood;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the catalog holds, as sheets: profile families by kind, board lists, woods, cutters, heads. */
public final class CatalogSheets {
    private static final Phrase RANDOM = Phrase.of("random");
    private static final Phrase SIZES = Phrase.of("{sizes}");
    private static final Phrase DRESSED = Phrase.of("{label}\u00A0is\u00A0{dressed}");

    private CatalogSheets() {}

    /** All of them. */
    public static List<Sheet> of(Catalog catalog) {
        return List.of(
                profiles(catalog),
                boards(catalog.boardLists()),
                woods(catalog.woods()),
                cutters(catalog.cutters()),
                heads(catalog.heads()));
    }

    /** The families, kinds in the order in which the catalog first names them. */
    public static Sheet profiles(Catalog catalog) {
        Map<String, List<Family>> kinds = catalog.families().stream()
                .collect(Collectors.groupingBy(Family::kind, LinkedHashMap::new, Collectors.toList()));
        return Sheet.of(
                        "profiles",
                        "PROFILES; ask for one by its name and sizes",
                        kinds.values().stream().flatMap(List::stream).toList())
                .name("name", "name", Family::name)
                .words("kind", "kind", Family::kind)
                .words("about", "about", Family::about)
                .names("sizes", "what its sizes are called", Family::sizes)
                .json()
                .called("usual", "usual sizes", Rounding.LISTED, Family::sizes, CatalogSheets::usual)
                .one("spring", "spring", ", ", spring(), Family::spring)
                .json()
                .table("PROFILES; ask for one by its name and sizes", "kind", "name", "about", "usual")
                .sheet();
    }

    private static List<List<Double>> usual(Family family) {
        return family.usual().stream()
                .map(sizes -> sizes.stream().map(Length::toInches).toList())
                .toList();
    }

    private static Columns<Family.Spring> spring() {
        return Columns.<Family.Spring>inner()
                .measure(
                        "angle",
                        "back to wall",
                        Quantity.ANGLE,
                        spring -> spring.angle().toDegrees())
                .length(
                        "wallEdge",
                        "square edge at the wall",
                        spring -> spring.wallEdge().toInches())
                .length(
                        "ceilingEdge",
                        "square edge at the ceiling",
                        spring -> spring.ceilingEdge().toInches());
    }

    private static Sheet boards(List<BoardList> lists) {
        return Sheet.of("boards", "BOARDS: nominal and dressed", lists)
                .name("name", "list", BoardList::name)
                .words("about", "about", BoardList::about)
                .saying("thick", "thickness", list -> said(list, list.thicknesses()))
                .saying("wide", "width", list -> list.widths().isEmpty() ? RANDOM : said(list, list.widths()))
                .many("thicknesses", "thicknesses", dressed(), BoardList::thicknesses)
                .json()
                .many("widths", "widths", dressed(), BoardList::widths)
                .json()
                .sheet();
    }

    /** The sizes of a list that is kept in millimeters are said in millimeters: there is no document to ask for its unit. */
    private static Phrase said(BoardList list, List<BoardList.Dressed> sizes) {
        return SIZES.with(
                "sizes",
                Listing.commas(sizes.stream()
                        .map(size -> list.nominalUnit().isMetric() ? millimeters(size) : inches(size))
                        .toList()));
    }

    private static Phrase inches(BoardList.Dressed size) {
        return DRESSED.with("label", size.label()).with("dressed", listed(size.dressed()));
    }

    private static Phrase millimeters(BoardList.Dressed size) {
        return DRESSED.with("label", size.label())
                .with("dressed", LengthWriter.in(LengthUnit.MILLIMETER, size.dressed()));
    }

    private static Figure listed(Length length) {
        return Figure.length(length.toInches()).rounded(Rounding.LISTED);
    }

    private static Columns<BoardList.Dressed> dressed() {
        return Columns.<BoardList.Dressed>inner()
                .name("label", "nominal", BoardList.Dressed::label)
                .length("nominal", "nominal", size -> size.nominal().toInches())
                .length("dressed", "dressed", size -> size.dressed().toInches())
                .flag("seldom", "seldom in a yard", BoardList.Dressed::seldom);
    }

    private static Sheet woods(List<Wood> woods) {
        return Sheet.of("woods", "WOODS: density at 12 % moisture", woods)
                .name("name", "name", Wood::name)
                .words("about", "about", Wood::about)
                .measure("specificGravity", "specific gravity", Quantity.RATIO, Wood::specificGravity)
                .json()
                .measure("density", "", Quantity.DENSITY, Wood::densityPerCubicFoot)
                .measureIf(
                        "radialChange",
                        "change across a quartersawn face for each percent of moisture",
                        Quantity.RATIO,
                        Rounding.NEAREST,
                        Wood::radialChange)
                .json()
                .measureIf(
                        "tangentialChange",
                        "change across a flatsawn face for each percent of moisture",
                        Quantity.RATIO,
                        Rounding.NEAREST,
                        Wood::tangentialChange)
                .json()
                .table("WOODS: density at 12 % moisture", "name", "density", "about")
                .sheet();
    }

    private static Sheet cutters(List<Cutter> cutters) {
        return Sheet.of("cutters", "CUTTERS: bits and blades, in the sizes in which they are sold", cutters)
                .name("name", "name", Cutter::name)
                .words("about", "about", Cutter::about)
                .words("kind", "kind", cutter -> cutter.kind().word())
                .json()
                .words("measured", "size", cutter -> cutter.kind().measured())
                .lengths(
                        "sizes",
                        "sold",
                        Rounding.LISTED,
                        cutter -> cutter.sizes().stream().map(Length::toInches).toList())
                .length("depth", "depth of cut", cutter -> cutter.depth().toInches())
                .json()
                .sheet();
    }

    private static Sheet heads(List<Head> heads) {
        return Sheet.of("heads", "HEADS for ground knives; the maker's label says how fast one may turn", heads)
                .name("name", "name", Head::name)
                .words("about", "about", Head::about)
                .measure(
                        "circle",
                        "circle",
                        Quantity.LENGTH,
                        Rounding.LISTED,
                        head -> head.circle().toInches())
                .measure(
                        "hook",
                        "hook",
                        Quantity.ANGLE,
                        Rounding.decimals(0),
                        head -> head.hook().toDegrees())
                .count("knives", "knives cutting", Head::knives)
                .json()
                .measure(
                        "widest",
                        "widest knife",
                        Quantity.LENGTH,
                        Rounding.LISTED,
                        head -> head.widest().toInches())
                .measure(
                        "deepest",
                        "deepest cut",
                        Quantity.LENGTH,
                        Rounding.LISTED,
                        head -> head.deepest().toInches())
                .sheet();
    }
}
