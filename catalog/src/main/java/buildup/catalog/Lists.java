package buildup.catalog;

import buildup.catalog.book.BookOrder;
import buildup.catalog.book.BookReader;
import buildup.catalog.book.BookRule;
import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.family.FamilyReader;
import buildup.catalog.family.Shape;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.fastener.FastenerReader;
import buildup.catalog.fastener.Tool;
import buildup.catalog.fire.FireRule;
import buildup.catalog.fire.FireRuleReader;
import buildup.catalog.mill.Cutter;
import buildup.catalog.mill.CutterReader;
import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.catalog.mill.RatesReader;
import buildup.catalog.supply.Good;
import buildup.catalog.supply.GoodsReader;
import buildup.catalog.supply.KindOfWork;
import buildup.catalog.wood.BoardList;
import buildup.catalog.wood.BoardReader;
import buildup.catalog.wood.StockSpread;
import buildup.catalog.wood.StockSpreadReader;
import buildup.catalog.wood.Wood;
import buildup.catalog.wood.WoodReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * Entries of catalog files, by what they are and then by name in the order of the file; each is read from its text when
 * it is first asked for.
 */
final class Lists {
    /** The word that asks for a plain board; no profile may take it. */
    static final String BOARD = "board";

    /** Fasteners are called by gauge and penny, so their names may begin with a digit. */
    private static final String FASTENERS = "fasteners";

    private final Map<Class<?>, Supplier<Map<String, Supplier<?>>>> entries;
    private final Optional<LengthUnit> unit;

    private Lists(Map<Class<?>, Supplier<Map<String, Supplier<?>>>> entries, Optional<LengthUnit> unit) {
        this.entries = entries;
        this.unit = unit;
    }

    /** The unit that a user's file names, the last of them in rank; absent when none does. */
    Optional<LengthUnit> unit() {
        return unit;
    }

    /**
     * A key of a catalog file, what stands under it, and who reads an entry of it under its name.
     *
     * @param file that holds it among the lists that come with the program
     */
    private record Chapter<T>(Class<T> kind, String key, String file, BiFunction<Fields, String, Optional<T>> reader) {}

    /** All chapters; a new kind of entry has its line here and nowhere else. */
    private static List<Chapter<?>> chapters(LengthUnit unit, boolean builtIn, Notices notices) {
        return List.of(
                new Chapter<>(Shape.class, "profiles", "profiles.yaml", new FamilyReader(unit, builtIn, notices)::read),
                new Chapter<>(BoardList.class, "boards", "boards.yaml", new BoardReader(notices)::read),
                new Chapter<>(Wood.class, "woods", "woods.yaml", new WoodReader(notices)::read),
                new Chapter<>(StockSpread.class, "spreads", "spreads.yaml", new StockSpreadReader(notices)::read),
                new Chapter<>(Fastener.class, FASTENERS, "fasteners.yaml", new FastenerReader(notices)::fastener),
                new Chapter<>(Tool.class, "tools", "fasteners.yaml", new FastenerReader(notices)::tool),
                new Chapter<>(Cutter.class, "cutters", "cutters.yaml", new CutterReader(notices)::cutter),
                new Chapter<>(Head.class, "heads", "cutters.yaml", new CutterReader(notices)::head),
                new Chapter<>(Mill.class, "mills", "rates.yaml", new RatesReader(notices)::mill),
                new Chapter<>(Rates.class, "rates", "rates.yaml", new RatesReader(notices)::rates),
                new Chapter<>(Good.class, "supplies", "supplies.yaml", new GoodsReader(notices)::good),
                new Chapter<>(KindOfWork.class, "works", "supplies.yaml", new GoodsReader(notices)::work),
                new Chapter<>(FireRule.class, "clearances", "clearances.yaml", new FireRuleReader(notices)::read),
                new Chapter<>(BookOrder.class, "orders", "proportions.yaml", new BookReader(notices)::order),
                new Chapter<>(BookRule.class, "proportions", "proportions.yaml", new BookReader(notices)::rule));
    }

    /**
     * The lists that come with the program, which are known to hold no fault. A file is opened when something in it is
     * asked for, and of its entries only those are read that are asked for.
     *
     * @param text of a file, by its name
     */
    static Lists builtIn(UnaryOperator<String> text) {
        Map<String, Supplier<Chapters>> files = new HashMap<>();
        return of(
                chapters(LengthUnit.INCH, true, new Notices()),
                chapter -> {
                    Supplier<Chapters> file = files.computeIfAbsent(
                            chapter.file(), name -> Once.of(() -> Chapters.of(name, text.apply(name))));
                    return Once.of(() -> unread(file.get(), chapter));
                },
                Optional.empty());
    }

    private static Lists of(
            List<Chapter<?>> chapters,
            Function<Chapter<?>, Supplier<Map<String, Supplier<?>>>> reader,
            Optional<LengthUnit> unit) {
        Map<Class<?>, Supplier<Map<String, Supplier<?>>>> all = new LinkedHashMap<>();
        chapters.forEach(chapter -> all.put(chapter.kind(), reader.apply(chapter)));
        return new Lists(all, unit);
    }

    private static <T> Map<String, Supplier<?>> unread(Chapters file, Chapter<T> chapter) {
        Map<String, Supplier<?>> all = new LinkedHashMap<>();
        file.under(chapter.key())
                .forEach((name, entry) -> all.put(
                        name,
                        Once.of(() -> chapter.reader()
                                .apply(fields(entry.get()), name)
                                .orElseThrow())));
        return all;
    }

    private static Fields fields(Document document) {
        return Fields.of(document, new Claims(), new Notices(), new LengthReader(LengthUnit.INCH, Map.of()));
    }

    /** The lists of a user's file, read at once so that all its faults are said. */
    static Lists read(Document document, Claims claims, Notices notices) {
        Fields plain = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
        Optional<LengthUnit> named = unit(plain, notices);
        LengthUnit unit = named.orElse(LengthUnit.INCH);
        Fields fields = plain.withReader(new LengthReader(unit, Map.of()));
        return of(
                chapters(unit, false, notices),
                chapter -> {
                    Map<String, Supplier<?>> entries = named(fields, chapter, notices);
                    return () -> entries;
                },
                named);
    }

    /** These lists with more, which replace entries of the same name. */
    Lists with(Lists more) {
        Map<Class<?>, Supplier<Map<String, Supplier<?>>>> all = new LinkedHashMap<>(entries);
        more.entries
                .keySet()
                .forEach(kind -> all.put(kind, Once.of(() -> {
                    Map<String, Supplier<?>> merged = new LinkedHashMap<>(of(kind));
                    merged.putAll(more.of(kind));
                    return merged;
                })));
        return new Lists(all, more.unit.or(() -> unit));
    }

    /** The entry of a kind that has this name. */
    <T> Optional<T> find(Class<T> kind, String name) {
        return Optional.ofNullable(of(kind).get(name)).map(entry -> kind.cast(entry.get()));
    }

    /** All entries of a kind. */
    <T> List<T> all(Class<T> kind) {
        return of(kind).values().stream().map(entry -> kind.cast(entry.get())).toList();
    }

    /** The names of all entries of a kind. */
    Set<String> names(Class<?> kind) {
        return Collections.unmodifiableSet(of(kind).keySet());
    }

    private Map<String, Supplier<?>> of(Class<?> kind) {
        return entries.getOrDefault(kind, Map::of).get();
    }

    /** Every name that a call for a profile may begin with. */
    Set<String> calls() {
        Set<String> all = new LinkedHashSet<>(names(Shape.class));
        all.add(BOARD);
        return all;
    }

    private static Optional<LengthUnit> unit(Fields fields, Notices notices) {
        Optional<String> asked = fields.text("units");
        Optional<LengthUnit> unit = asked.flatMap(LengthUnit::named);
        if (asked.isPresent() && unit.isEmpty()) {
            notices.add(CatalogNotices.UNKNOWN_UNIT.with("name", asked.get()).at(fields.mark("units")));
        }
        return unit;
    }

    private static <T> Map<String, Supplier<?>> named(Fields file, Chapter<T> chapter, Notices notices) {
        Map<String, Supplier<?>> all = new LinkedHashMap<>();
        String key = chapter.key();
        for (Fields fields : file.list(key)) {
            String name = fields.text("name").map(String::strip).orElse("");
            Optional<Notice> fault = fault(name, all.containsKey(name), key.equals(FASTENERS));
            fault.ifPresent(notice -> notices.add(notice.at(fields.mark("name"))));
            // an entry under a bad name is still read, so that all its faults are said in one run
            Optional<T> entry = chapter.reader().apply(fields, name.isEmpty() ? key : name);
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
