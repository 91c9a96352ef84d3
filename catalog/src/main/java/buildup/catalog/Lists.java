package buildup.catalog;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.family.FamilyReader;
import buildup.catalog.family.Shape;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.fastener.FastenerReader;
import buildup.catalog.fastener.Tool;
import buildup.catalog.mill.Cutter;
import buildup.catalog.mill.CutterReader;
import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.catalog.mill.RatesReader;
import buildup.catalog.wood.BoardList;
import buildup.catalog.wood.BoardReader;
import buildup.catalog.wood.Wood;
import buildup.catalog.wood.WoodReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** Entries of catalog files, by name in the order of the file; each is read from its text when it is asked for. */
record Lists(
        Map<String, Supplier<Shape>> shapes,
        Map<String, Supplier<BoardList>> boards,
        Map<String, Supplier<Wood>> woods,
        Map<String, Supplier<Fastener>> fasteners,
        Map<String, Supplier<Tool>> tools,
        Map<String, Supplier<Cutter>> cutters,
        Map<String, Supplier<Head>> heads,
        Map<String, Supplier<Mill>> mills,
        Map<String, Supplier<Rates>> rates) {

    /** Fasteners are called by gauge and penny, so their names may begin with a digit. */
    private static final String FASTENERS = "fasteners";

    /** The word that asks for a plain board; no profile may take it. */
    static final String BOARD = "board";

    /** The lists of a file that is known to hold no fault; nothing but names is looked at. */
    static Lists builtIn(Chapters file) {
        Notices none = new Notices();
        FamilyReader families = new FamilyReader(LengthUnit.INCH, true, none);
        return new Lists(
                unread(file, "profiles", families::read),
                unread(file, "boards", new BoardReader(none)::read),
                unread(file, "woods", new WoodReader(none)::read),
                unread(file, "fasteners", new FastenerReader(none)::fastener),
                unread(file, "tools", new FastenerReader(none)::tool),
                unread(file, "cutters", new CutterReader(none)::cutter),
                unread(file, "heads", new CutterReader(none)::head),
                unread(file, "mills", new RatesReader(none)::mill),
                unread(file, "rates", new RatesReader(none)::rates));
    }

    private static <T> Map<String, Supplier<T>> unread(
            Chapters file, String key, BiFunction<Fields, String, Optional<T>> reader) {
        Map<String, Supplier<T>> all = new LinkedHashMap<>();
        file.under(key)
                .forEach((name, entry) -> all.put(
                        name, () -> reader.apply(fields(entry.get()), name).orElseThrow()));
        return all;
    }

    private static Fields fields(Document document) {
        return Fields.of(document, new Claims(), new Notices(), new LengthReader(LengthUnit.INCH, Map.of()));
    }

    /** The lists of a user's file, read at once so that all its faults are said. */
    static Lists read(Document document, Claims claims, Notices notices) {
        Fields plain = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
        LengthUnit unit = unit(plain, notices);
        Fields fields = plain.withReader(new LengthReader(unit, Map.of()));
        return new Lists(
                named(fields, "profiles", new FamilyReader(unit, false, notices)::read, notices),
                named(fields, "boards", new BoardReader(notices)::read, notices),
                named(fields, "woods", new WoodReader(notices)::read, notices),
                named(fields, FASTENERS, new FastenerReader(notices)::fastener, notices),
                named(fields, "tools", new FastenerReader(notices)::tool, notices),
                named(fields, "cutters", new CutterReader(notices)::cutter, notices),
                named(fields, "heads", new CutterReader(notices)::head, notices),
                named(fields, "mills", new RatesReader(notices)::mill, notices),
                named(fields, "rates", new RatesReader(notices)::rates, notices));
    }

    /** These lists with more, which replace entries of the same name. */
    Lists with(Lists more) {
        return new Lists(
                merged(shapes, more.shapes),
                merged(boards, more.boards),
                merged(woods, more.woods),
                merged(fasteners, more.fasteners),
                merged(tools, more.tools),
                merged(cutters, more.cutters),
                merged(heads, more.heads),
                merged(mills, more.mills),
                merged(rates, more.rates));
    }

    private static <T> Map<String, T> merged(Map<String, T> first, Map<String, T> second) {
        Map<String, T> all = new LinkedHashMap<>(first);
        all.putAll(second);
        return all;
    }

    Optional<Shape> shape(String name) {
        return Optional.ofNullable(shapes.get(name)).map(Supplier::get);
    }

    Optional<BoardList> boardList(String name) {
        return Optional.ofNullable(boards.get(name)).map(Supplier::get);
    }

    Optional<Wood> wood(String name) {
        return Optional.ofNullable(woods.get(name)).map(Supplier::get);
    }

    Optional<Fastener> fastener(String name) {
        return Optional.ofNullable(fasteners.get(name)).map(Supplier::get);
    }

    Optional<Tool> tool(String name) {
        return Optional.ofNullable(tools.get(name)).map(Supplier::get);
    }

    Optional<Mill> mill(String name) {
        return Optional.ofNullable(mills.get(name)).map(Supplier::get);
    }

    Optional<Rates> rates(String name) {
        return Optional.ofNullable(rates.get(name)).map(Supplier::get);
    }

    static <T> List<T> all(Map<String, Supplier<T>> entries) {
        return entries.values().stream().map(Supplier::get).toList();
    }

    /** Every name that a call for a profile may begin with. */
    Set<String> names() {
        Set<String> all = new LinkedHashSet<>(shapes.keySet());
        all.add(BOARD);
        return all;
    }

    private static LengthUnit unit(Fields fields, Notices notices) {
        Optional<String> asked = fields.text("units");
        Optional<LengthUnit> unit = asked.flatMap(LengthUnit::named);
        if (asked.isPresent() && unit.isEmpty()) {
            notices.add(CatalogNotices.UNKNOWN_UNIT.with("name", asked.get()).at(fields.mark("units")));
        }
        return unit.orElse(LengthUnit.INCH);
    }

    private static <T> Map<String, Supplier<T>> named(
            Fields file, String key, BiFunction<Fields, String, Optional<T>> reader, Notices notices) {
        Map<String, Supplier<T>> all = new LinkedHashMap<>();
        for (Fields fields : file.list(key)) {
            String name = fields.text("name").map(String::strip).orElse("");
            Optional<Notice> fault = fault(name, all.containsKey(name), key.equals(FASTENERS));
            fault.ifPresent(notice -> notices.add(notice.at(fields.mark("name"))));
            // an entry under a bad name is still read, so that all its faults are said in one run
            Optional<T> entry = reader.apply(fields, name.isEmpty() ? key : name);
            if (fault.isEmpty()) {
                entry.ifPresent(value -> all.put(name, () -> value));
            }
        }
        return all;
    }

    private static Optional<Notice> fault(String name, boolean taken, boolean digits) {
        if (name.isEmpty()) {
            return Optional.of(CatalogNotices.NO_NAME.notice());
        }
        if (taken) {
            return Optional.of(CatalogNotices.TWICE.notice().of(name));
        }
        boolean usable = (digits || !Character.isDigit(name.charAt(0))) && !name.equals(BOARD) && !name.contains(" x ");
        return usable
                ? Optional.empty()
                : Optional.of(CatalogNotices.NAME_LIKE_A_SIZE.notice().of(name));
    }
}
