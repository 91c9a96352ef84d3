package buildup.cli.report;

import buildup.catalog.BoardList;
import buildup.catalog.Catalog;
import buildup.catalog.Cutter;
import buildup.catalog.Family;
import buildup.catalog.Head;
import buildup.catalog.Wood;
import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.cli.tell.Json;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the catalog holds: profile families by kind, board lists, woods. */
public final class CatalogReport {
    /** Between the numbers of one size, which stay in one line. */
    private static final String BY = "\u00A0x\u00A0";

    /** Between a nominal size and the dressed one. */
    private static final String IS = "\u00A0is\u00A0";

    private CatalogReport() {}

    /** As text of at most 80 columns. */
    public static String text(Catalog catalog) {
        return Stream.of(families(catalog), boards(catalog), woods(catalog), cutters(catalog), heads(catalog))
                .filter(table -> !table.rows().isEmpty())
                .map(table -> TextTable.write(table, TextReport.WIDTH))
                .collect(Collectors.joining("\n"));
    }

    /** As an object of lists; lengths in inches, density in lb/ft³. */
    public static String json(Catalog catalog, List<Notice> notices) {
        return new Json()
                        .put(
                                "profiles",
                                byKind(catalog).stream()
                                        .map(CatalogReport::family)
                                        .toList())
                        .put(
                                "boards",
                                catalog.boardLists().stream()
                                        .map(CatalogReport::boards)
                                        .toList())
                        .put(
                                "woods",
                                catalog.woods().stream()
                                        .map(CatalogReport::wood)
                                        .toList())
                        .put(
                                "cutters",
                                catalog.cutters().stream()
                                        .map(CatalogReport::cutter)
                                        .toList())
                        .put(
                                "heads",
                                catalog.heads().stream()
                                        .map(CatalogReport::head)
                                        .toList())
                        .put("notices", JsonReport.notices(notices, Optional.empty(), LengthUnit.INCH))
                        .written()
                + "\n";
    }

    /** Kinds in the order in which the catalog first names them. */
    private static List<Family> byKind(Catalog catalog) {
        Map<String, List<Family>> kinds = catalog.families().stream()
                .collect(Collectors.groupingBy(Family::kind, LinkedHashMap::new, Collectors.toList()));
        return kinds.values().stream().flatMap(List::stream).toList();
    }

    private static Table families(Catalog catalog) {
        return new Table(
                "PROFILES; ask for one by its name and sizes",
                Table.columns("kind", "name", "about", "usual sizes"),
                byKind(catalog).stream()
                        .map(family -> List.of(
                                Cell.of(family.kind()),
                                Cell.of(family.name()),
                                Cell.of(family.about()),
                                Cell.of(usual(family))))
                        .toList());
    }

    private static String usual(Family family) {
        String names = String.join(" x ", family.sizes());
        return family.usual().isEmpty()
                ? names
                : names + ": "
                        + family.usual().stream().map(CatalogReport::sizes).collect(Collectors.joining(", "));
    }

    private static String sizes(List<Length> sizes) {
        return sizes.stream().map(size -> LengthPrinter.fraction(size, 64)).collect(Collectors.joining(BY));
    }

    private static Table boards(Catalog catalog) {
        return new Table(
                "BOARDS: nominal and dressed",
                Table.columns("list", "about", "thickness", "width"),
                catalog.boardLists().stream()
                        .map(list -> List.of(
                                Cell.of(list.name()),
                                Cell.of(list.about()),
                                Cell.of(dressed(list.thicknesses())),
                                Cell.of(list.widths().isEmpty() ? "random" : dressed(list.widths()))))
                        .toList());
    }

    private static String dressed(List<BoardList.Dressed> sizes) {
        return sizes.stream()
                .map(size -> size.label() + IS + LengthPrinter.fraction(size.dressed(), 64))
                .collect(Collectors.joining(", "));
    }

    private static Table woods(Catalog catalog) {
        return new Table(
                "WOODS: density at 12 % moisture",
                Table.columns("name", ">lb/cu ft", "about"),
                catalog.woods().stream()
                        .map(wood -> List.of(
                                Cell.of(wood.name()),
                                Printed.figure(wood.densityPerCubicFoot(), 1),
                                Cell.of(wood.about())))
                        .toList());
    }

    private static Table cutters(Catalog catalog) {
        return new Table(
                "CUTTERS: bits and blades, in the sizes in which they are sold",
                Table.columns("name", "about", "size", "sold"),
                catalog.cutters().stream()
                        .map(cutter -> List.of(
                                Cell.of(cutter.name()),
                                Cell.of(cutter.about()),
                                Cell.of(cutter.kind().measured()),
                                Cell.of(cutter.sizes().stream()
                                        .map(size -> LengthPrinter.fraction(size, 64))
                                        .collect(Collectors.joining(", ")))))
                        .toList());
    }

    private static Table heads(Catalog catalog) {
        return new Table(
                "HEADS for ground knives; the maker's label says how fast one may turn",
                Table.columns("name", "about", ">circle", ">hook", ">widest knife", ">deepest cut"),
                catalog.heads().stream()
                        .map(head -> List.of(
                                Cell.of(head.name()),
                                Cell.of(head.about()),
                                inches(head.circle()),
                                Printed.figure(head.hook().toDegrees(), 0),
                                inches(head.widest()),
                                inches(head.deepest())))
                        .toList());
    }

    private static Cell inches(Length length) {
        return Cell.of(LengthPrinter.fraction(length, 64), length.toInches());
    }

    private static Json cutter(Cutter cutter) {
        return new Json()
                .put("name", cutter.name())
                .put("about", cutter.about())
                .put("kind", cutter.kind().word())
                .put("measured", cutter.kind().measured())
                .texts(
                        "sizes",
                        cutter.sizes().stream()
                                .map(size -> LengthPrinter.fraction(size, 64))
                                .toList())
                .put("depth", cutter.depth().toInches());
    }

    private static Json head(Head head) {
        return new Json()
                .put("name", head.name())
                .put("about", head.about())
                .put("circle", head.circle().toInches())
                .put("hook", head.hook().toDegrees())
                .put("knives", head.knives())
                .put("widest", head.widest().toInches())
                .put("deepest", head.deepest().toInches());
    }

    private static Json family(Family family) {
        Json json = new Json()
                .put("name", family.name())
                .put("kind", family.kind())
                .put("about", family.about())
                .texts("sizes", family.sizes())
                .put(
                        "usual",
                        family.usual().stream()
                                .map(sizes -> usual(family.sizes(), sizes))
                                .toList());
        family.spring()
                .ifPresent(spring -> json.put(
                        "spring",
                        new Json()
                                .put("angle", spring.angle().toDegrees())
                                .put("wallEdge", spring.wallEdge().toInches())
                                .put("ceilingEdge", spring.ceilingEdge().toInches())));
        return json;
    }

    private static Json usual(List<String> names, List<Length> sizes) {
        Json json = new Json();
        for (int i = 0; i < names.size(); i++) {
            json.put(names.get(i), sizes.get(i).toInches());
        }
        return json;
    }

    private static Json boards(BoardList list) {
        return new Json()
                .put("name", list.name())
                .put("about", list.about())
                .put(
                        "thicknesses",
                        list.thicknesses().stream().map(CatalogReport::dressed).toList())
                .put(
                        "widths",
                        list.widths().stream().map(CatalogReport::dressed).toList());
    }

    private static Json dressed(BoardList.Dressed size) {
        return new Json()
                .put("label", size.label())
                .put("nominal", size.nominal().toInches())
                .put("dressed", size.dressed().toInches())
                .put("seldom", size.seldom());
    }

    private static Json wood(Wood wood) {
        return new Json()
                .put("name", wood.name())
                .put("about", wood.about())
                .put("specificGravity", wood.specificGravity())
                .put("density", wood.densityPerCubicFoot())
                .put("radialChange", wood.radialChange())
                .put("tangentialChange", wood.tangentialChange());
    }
}
