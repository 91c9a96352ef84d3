package buildup.catalog;

import buildup.catalog.book.BookOrder;
import buildup.catalog.book.BookRule;
import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.family.Family;
import buildup.catalog.family.Shape;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.fastener.Tool;
import buildup.catalog.fire.FireRule;
import buildup.catalog.mill.Cutter;
import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.catalog.supply.Good;
import buildup.catalog.supply.KindOfWork;
import buildup.catalog.wood.BoardList;
import buildup.catalog.wood.StockSpread;
import buildup.catalog.wood.Wood;
import buildup.catalog.words.SizeText;
import buildup.catalog.words.WordProblems;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Text;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The lists of the shop: profile families, boards, woods, fasteners and their tools, cutters and heads, mills and
 * their rates. Immutable.
 */
public final class Catalog {

    /** The board list that a stack takes when it names none. */
    public static final String USUAL_BOARDS = "softwood";

    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /** What of a call is taken for the name when no profile is called so: all up to the first number. */
    private static final Pattern UNKNOWN_NAME = Pattern.compile("(.+?)(?: [-+.]?[\\d\\u00BC-\\u00BE].*)?");

    /** A call that begins with a number asks for a board by its nominal size. */
    private static final Pattern NOMINAL = Pattern.compile("[-+.]?[\\d\\u00BC-\\u00BE\\u2150-\\u215E]");

    /** One for all that ask: it never changes, and whoever follows a file would read it anew after each save. */
    private static final Catalog BUILT_IN = new Catalog(Lists.builtIn(Catalog::resource));

    private final Lists lists;

    private Catalog(Lists lists) {
        this.lists = lists;
    }

    /** The lists that come with the program, read from its own resources, each when something in it is first asked for. */
    public static Catalog builtIn() {
        return BUILT_IN;
    }

    private static String resource(String file) {
        try (InputStream in = Catalog.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("resource " + file + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * This catalog with a user's own lists, entries of the same name replaced. Everything wrong with the file, keys
     * that mean nothing included, is added to {@code notices}; entries without fault are taken.
     */
    public Catalog with(Document own, Claims claims, Notices notices) {
        Lists more = Lists.read(own, claims, notices);
        notices.addAll(claims.unclaimed(own));
        Lists all = lists.with(more);
        for (Fastener fastener : more.all(Fastener.class)) {
            if (all.find(Tool.class, fastener.tool()).isEmpty()) {
                notices.add(CatalogNotices.UNKNOWN_TOOL
                        .with("tool", fastener.tool())
                        .at(own.root().mark())
                        .of(fastener.name())
                        .cure(Suggestion.phrase(fastener.tool(), all.names(Tool.class))));
            }
        }
        return new Catalog(all);
    }

    /**
     * The profile that a piece asks for: {@code board 3/4 x 5-1/2}, a nominal size ({@code 1x4}), or a family by its
     * sizes ({@code cove-bed 1-1/4 x 1-3/8}). One size of two is the width, the thickness then being the usual one; no
     * size at all takes the only usual one. Empty with at least one refusal when there is no such profile.
     *
     * @param boardList the list from which nominal sizes are taken
     * @param lengths reads the sizes, named ones included
     */
    public Optional<Profile> profile(Scalar call, String boardList, LengthReader lengths, Notices notices) {
        String text = BLANKS.matcher(call.text()).replaceAll(" ").strip();
        String low = text.toLowerCase(Locale.ROOT);
        WordProblems speaker = new WordProblems(text, notices);
        if (NOMINAL.matcher(text).lookingAt()) {
            return new BoardLookup(lists).nominal(text, call.mark(), boardList, speaker);
        }
        Optional<String> name = lists.calls().stream()
                .filter(known -> low.equals(known.toLowerCase(Locale.ROOT))
                        || low.startsWith(known.toLowerCase(Locale.ROOT) + " "))
                .max((a, b) -> a.length() - b.length());
        if (name.isEmpty()) {
            unknown(text, call, speaker);
            return Optional.empty();
        }
        String behind = text.substring(name.get().length()).strip();
        List<String> asked = behind.isEmpty() ? List.of() : SizeText.split(behind);
        List<Length> sizes = new ArrayList<>();
        asked.forEach(size -> speaker.length(size, lengths, call.mark()).ifPresent(sizes::add));
        if (sizes.size() < asked.size()) {
            return Optional.empty();
        }
        ProfileRequest order = new ProfileRequest(text, sizes, lengths.bareUnit(), call.mark(), speaker);
        Optional<Shape> shape = lists.find(Shape.class, name.get());
        return shape.isEmpty()
                ? order.board()
                : order.complete(shape.get().family()).flatMap(full -> full.draw(shape.get()));
    }

    private void unknown(String text, Scalar call, WordProblems speaker) {
        Matcher name = UNKNOWN_NAME.matcher(text);
        String asked = name.matches() ? name.group(1) : text;
        Map<String, String> kinds = new TreeMap<>(Map.of(Lists.BOARD, Lists.BOARD));
        families().forEach(family -> kinds.put(family.name(), family.kind()));
        Notice said = asked.isEmpty()
                ? CatalogNotices.NO_PROFILE.notice()
                : CatalogNotices.UNKNOWN_PROFILE.with("name", asked);
        speaker.say(said.cure(NearNames.cure(asked, kinds)), call.mark());
    }

    /** A wood by its name, capitals and blanks for hyphens allowed; empty with a refusal when it is not listed. */
    public Optional<Wood> wood(Scalar name, Notices notices) {
        String asked = BLANKS.matcher(name.text().strip()).replaceAll("-").toLowerCase(Locale.ROOT);
        Optional<Wood> wood = lists.find(Wood.class, name.text().strip()).or(() -> lists.find(Wood.class, asked));
        if (wood.isEmpty()) {
            Map<String, String> known = new TreeMap<>();
            lists.names(Wood.class).forEach(one -> known.put(one, ""));
            new WordProblems(name.text(), notices)
                    .say(
                            CatalogNotices.UNKNOWN_WOOD
                                    .with("name", name.text())
                                    .with("near", NearNames.cure(asked, known)),
                            name.mark());
        }
        return wood;
    }

    /**
     * The nail or screw that a fastening asks for: {@code 15 ga x 2-1/2}, {@code 8d finish}, {@code screw 8 x 2}. Empty
     * with a refusal when it is not listed; a length in which it is not sold is a problem.
     *
     * @param lengths reads the length, named ones included
     */
    public Optional<Fastener.Cut> fastener(Scalar call, LengthReader lengths, Notices notices) {
        return new FastenerLookup(lists, notices).cut(call, lengths);
    }

    /** The tool that drives a fastener; absent when no list holds it. */
    public Optional<Tool> tool(Fastener fastener) {
        return lists.find(Tool.class, fastener.tool());
    }

    /**
     * The narrowest listed board from which a piece can be ripped: of its thickness within 1/64, at least as wide, and
     * commonly sold. Empty when there is none, or no such list.
     */
    public Optional<BoardList.Board> stockFor(Length thickness, Length width, String boardList) {
        return new BoardLookup(lists).stockFor(thickness, width, boardList);
    }

    /** All families, built-in ones first. */
    public List<Family> families() {
        return lists.all(Shape.class).stream().map(Shape::family).toList();
    }

    /** How a piece asks for each usual size of a family, in a document that counts in that unit; none for no family. */
    public List<String> usualCalls(String family, LengthUnit unit) {
        return families().stream()
                .filter(known -> known.name().equalsIgnoreCase(family))
                .flatMap(known -> known.usual().stream()
                        .map(sizes -> known.name() + " "
                                + sizes.stream()
                                        .map(size -> LengthWriter.in(unit, size))
                                        .collect(Collectors.joining(" x "))))
                .toList();
    }

    /** The lists of nominal boards, in the order of the catalog. */
    public List<BoardList> boardLists() {
        return lists.all(BoardList.class);
    }

    /** The unit of the lists that were added last and name one; inches where none does. */
    public LengthUnit unit() {
        return lists.unit().orElse(LengthUnit.INCH);
    }

    /** The woods, in the order of the catalog. */
    public List<Wood> woods() {
        return lists.all(Wood.class);
    }

    /** How far the sizes of a kind of stock stray; absent when no list says. */
    public Optional<StockSpread> spread(String kind) {
        return lists.find(StockSpread.class, kind);
    }

    /** In the order in which shops reach for them, own ones last. */
    public List<Fastener> fasteners() {
        return lists.all(Fastener.class);
    }

    /**
     * What a shop reaches for, in that order, own ones last. A job in millimeters is offered what is listed by the
     * millimeter and nothing else, and one in inches none of it; where no list is kept in the unit of the job, all.
     *
     * @param unit of the job
     */
    public List<Fastener> fasteners(LengthUnit unit) {
        List<Fastener> all = fasteners();
        List<Fastener> own = all.stream()
                .filter(fastener -> fastener.metric() == unit.isMetric())
                .toList();
        return own.isEmpty() ? all : own;
    }

    /** The nailers and drivers, in the order of the catalog. */
    public List<Tool> tools() {
        return lists.all(Tool.class);
    }

    /** Glue, filler, paint and the like, in the order of the catalog, own ones last. */
    public List<Good> goods() {
        return lists.all(Good.class);
    }

    /** The kinds of work and their waste, in the order of the catalog. */
    public List<KindOfWork> works() {
        return lists.all(KindOfWork.class);
    }

    /** Clearances to the opening of a fireplace, in the order of the catalog. */
    public List<FireRule> fireRules() {
        return lists.all(FireRule.class);
    }

    /** The orders of the books, in the order of the catalog. */
    public List<BookOrder> orders() {
        return lists.all(BookOrder.class);
    }

    /** Rules of proportion of the books, in the order of the catalog. */
    public List<BookRule> proportions() {
        return lists.all(BookRule.class);
    }

    /** Bits and blades, in the order in which the shop reaches for them, own ones last. */
    public List<Cutter> cutters() {
        return lists.all(Cutter.class);
    }

    /** Heads for ground knives, own ones last. */
    public List<Head> heads() {
        return lists.all(Head.class);
    }

    /**
     * The head of that name, else the first of the lists; empty with a refusal when no list holds one of that name, or
     * when none is listed at all.
     *
     * @param name as it was asked for
     */
    public Optional<Head> head(Optional<Scalar> name, Notices notices) {
        Optional<Head> head = heads().stream()
                .filter(one -> name.filter(asked -> !asked.text().strip().equals(one.name()))
                        .isEmpty())
                .findFirst();
        if (head.isEmpty()) {
            Notice unknown = CatalogNotices.UNKNOWN_HEAD
                    .with("word", name.map(Scalar::text).orElse(""))
                    .with(
                            "heads",
                            Listing.commas(heads().stream()
                                    .map(one -> new Text(one.name()))
                                    .toList()));
            notices.add(name.map(asked -> unknown.at(asked.mark())).orElse(unknown));
        }
        return head;
    }

    /** How a mill cuts its blanks; empty with a refusal when no list holds one of that name. */
    public Optional<Mill> mill(Scalar name, Notices notices) {
        return known(
                        name,
                        CatalogNotices.UNKNOWN_MILL,
                        lists.find(Mill.class, name.text().strip()),
                        lists.names(Mill.class),
                        notices)
                .flatMap(mill -> dressed(mill, name, notices));
    }

    /** The mill with the thicknesses that its board list gives. */
    private Optional<Mill> dressed(Mill mill, Scalar name, Notices notices) {
        if (mill.boards().isEmpty()) {
            return Optional.of(mill);
        }
        Scalar asked = new Scalar(mill.boards().get(), name.mark());
        return known(
                        asked,
                        CatalogNotices.UNKNOWN_BOARDS,
                        lists.find(BoardList.class, asked.text()),
                        lists.names(BoardList.class),
                        notices)
                .flatMap(list -> {
                    Optional<Mill> whole = mill.dressed(list);
                    if (whole.isEmpty()) {
                        notices.add(CatalogNotices.NO_SUCH_QUARTER
                                .with("boards", list.name())
                                .at(name.mark())
                                .of(mill.name()));
                    }
                    return whole;
                });
    }

    /** What a mill asks; empty with a refusal when no list holds rates of that name. */
    public Optional<Rates> rates(Scalar name, Notices notices) {
        return known(
                name,
                CatalogNotices.UNKNOWN_RATES,
                lists.find(Rates.class, name.text().strip()),
                lists.names(Rates.class),
                notices);
    }

    private static <T> Optional<T> known(
            Scalar name, Kind unknown, Optional<T> found, Set<String> all, Notices notices) {
        if (found.isEmpty()) {
            notices.add(unknown.with("name", name.text()).at(name.mark()).cure(Suggestion.phrase(name.text(), all)));
        }
        return found;
    }
}
