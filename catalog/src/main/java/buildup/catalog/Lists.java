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
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Entries of catalog files, by what they are and then by name in the order of the file; each is read from its text when
 * it is asked for.
 */
final class Lists {
    /** The word that asks for a plain board; no profile may take it. */
    static final String BOARD = "board";

    /** No lists at all. */
    static final Lists EMPTY = new Lists(Map.of(), Optional.empty());

    /** Fasteners are called by gauge and penny, so their names may begin with a digit. */
    private static final String FASTENERS = "fasteners";

    private final Map<Class<?>, Map<String, Supplier<?>>> entries;
    private final Optional<LengthUnit> unit;

    private Lists(Map<Class<?>, Map<String, Supplier<?>>> entries, Optional<LengthUnit> unit) {
        this.entries = entries;
        this.unit = unit;
    }

    /** The unit that a user's file names, the last of them in rank; absent when none does. */
    Optional<LengthUnit> unit() {
        return unit;
    }

    /** A key of a catalog file, what stands under it, and who reads an entry of it under its name. */
    private record Chapter<T>(Class<T> kind, String key, BiFunction<Fields, String, Optional<T>> reader) {}

    /** All chapters; a new kind of entry has its line here and nowhere else. */
    private static List<Chapter<?>> chapters(LengthUnit unit, boolean builtIn, Notices notices) {
        return List.of(
                new Chapter<>(Shape.class, "profiles", new FamilyReader(unit, builtIn, notices)::read),
                new Chapter<>(BoardList.class, "boards", new BoardReader(notices)::read),
                new Chapter<>(Wood.class, "woods", new WoodReader(notices)::read),
                new Chapter<>(Fastener.class, FASTENERS, new FastenerReader(notices)::fastener),
                new Chapter<>(Tool.class, "tools", new FastenerReader(notices)::tool),
                new Chapter<>(Cutter.class, "cutters", new CutterReader(notices)::cutter),
                new Chapter<>(Head.class, "heads", new CutterReader(notices)::head),
                new Chapter<>(Mill.class, "mills", new RatesReader(notices)::mill),
                new Chapter<>(Rates.class, "rates", new RatesReader(notices)::rates));
    }

    /** The lists of a file that is known to hold no fault; nothing but names is looked at. */
    static Lists builtIn(Chapters file) {
        return of(chapters(LengthUnit.INCH, true, new Notices()), chapter -> unread(file, chapter), Optional.empty());
    }

    private static Lists of(
            List<Chapter<?>> chapters,
            Function<Chapter<?>, Map<String, Supplier<?>>> reader,
            Optional<LengthUnit> unit) {
        Map<Class<?>, Map<String, Supplier<?>>> all = new LinkedHashMap<>();
        chapters.forEach(chapter -> all.put(chapter.kind(), reader.apply(chapter)));
        return new Lists(all, unit);
    }

    private static <T> Map<String, Supplier<?>> unread(Chapters file, Chapter<T> chapter) {
        Map<String, Supplier<?>> all = new LinkedHashMap<>();
        file.under(chapter.key())
                .forEach((name, entry) -> all.put(
                        name,
                        () -> chapter.reader().apply(fields(entry.get()), name).orElseThrow()));
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
        return of(chapters(unit, false, notices), chapter -> named(fields, chapter, notices), named);
    }

    /** These lists with more, which replace entries of the same name. */
    Lists with(Lists more) {
        Map<Class<?>, Map<String, Supplier<?>>> all = new LinkedHashMap<>(entries);
        more.entries.forEach((kind, own) -> {
            Map<String, Supplier<?>> merged = new LinkedHashMap<>(all.getOrDefault(kind, Map.of()));
            merged.putAll(own);
            all.put(kind, merged);
        });
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
        return entries.getOrDefault(kind, Map.of());
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
