package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.section.free.FreeSizes;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Light;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.figure.Text;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What is known of one stack.
 *
 * @param file its document, as messages call it
 * @param title of the document, or its file while the title could not be read
 * @param unit in which the document counts
 * @param known every answer; absent when anything was refused
 * @param read what was said in reading it
 */
public record Answer(String file, String title, LengthUnit unit, Optional<Answers> known, List<Notice> read) {
    /** Copies the list. */
    public Answer {
        read = List.copyOf(read);
    }

    /** The answer about a document, by these lists. */
    public static Answer of(Document document, Catalog catalog) {
        return of(document, catalog, new Claims(), new Notices(), Optional.empty());
    }

    /**
     * The answer about a document.
     *
     * @param claims of what has been read of the document before
     * @param notices of the run so far
     * @param lights to shine in place of those of the stack
     */
    public static Answer of(
            Document document, Catalog catalog, Claims claims, Notices notices, Optional<List<Light>> lights) {
        return of(document, catalog, claims, notices, lights, Asking.SOME);
    }

    /** The same where every question will be asked: those that take longest are asked meanwhile. */
    public static Answer whole(
            Document document, Catalog catalog, Claims claims, Notices notices, Optional<List<Light>> lights) {
        return of(document, catalog, claims, notices, lights, Asking.EVERYTHING);
    }

    /** What is going to be asked of an answer. */
    private enum Asking {
        EVERYTHING,
        SOME,
        /** Whether a cure cures; cures are told as they are found. */
        TRIAL
    }

    /** The same, cures told as they are found. */
    static Answer untried(
            Document document, Catalog catalog, Claims claims, Notices notices, Optional<List<Light>> lights) {
        return of(document, catalog, claims, notices, lights, Asking.TRIAL);
    }

    private static Answer of(
            Document written,
            Catalog catalog,
            Claims claims,
            Notices notices,
            Optional<List<Light>> lights,
            Asking asking) {
        boolean trying = asking != Asking.TRIAL;
        FreeSizes free = FreeSizes.read(written, catalog::usualCalls, notices);
        Document document = free.now();
        claims.carry(written, document);
        Stack stack = StackReader.read(document, catalog, claims, notices);
        List<Placed> placed = placed(stack, notices);
        Fields root = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
        // whoever has opened the document has read the lists that it names, and said what is wrong with their names
        Fields.of(document, claims, new Notices(), stack.lengths()).scalars("catalog");
        Notices found = new Notices();
        Blocks blocks = Blocks.read(stack, catalog, root.withReader(stack.lengths()), found);
        Set<String> lost = lost(document, stack);
        found.sorted().stream().filter(notice -> !asksFor(notice, lost)).forEach(notices::add);
        notices.addAll(claims.unclaimed(document));
        Optional<CureTrial> trial = trying
                ? Optional.of(new CureTrial(
                        document, catalog, stack.unit(), lights, stack.pieces().size()))
                : Optional.empty();
        Optional<Answers> known = notices.refused()
                ? Optional.empty()
                : Optional.of(new Answers(
                        blocks,
                        placed,
                        lights,
                        notices.sorted(),
                        trial,
                        own -> Searched.curves(own, written, free, catalog)));
        if (asking == Asking.EVERYTHING) {
            known.ifPresent(Answers::askAhead);
        }
        if (trying
                && known.isPresent()
                && !blocks.must().isEmpty()
                && !known.get().rulesAreOfLooks()) {
            known = understood(known.get(), notices);
        }
        return new Answer(document.file(), stack.title(), stack.unit(), known, notices.sorted());
    }

    /** Nothing is answered while a line under {@code must:} asks for what is not known. */
    private static Optional<Answers> understood(Answers known, Notices notices) {
        known.notices(EnumSet.of(Question.MUST)).stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .forEach(notices::add);
        return notices.refused() ? Optional.empty() : Optional.of(known);
    }

    /** The answer about a document that could not be read. */
    public static Answer unread(String file, Collection<Notice> why) {
        return new Answer(file, file, LengthUnit.INCH, Optional.empty(), List.copyOf(why));
    }

    /**
     * Places what was read, also when something was refused: what is wrong with a place is then said in the same run,
     * unless it may only follow from what was refused.
     */
    private static List<Placed> placed(Stack stack, Notices notices) {
        Set<String> suspect = notices.sorted().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .flatMap(notice -> notice.piece().stream())
                .collect(Collectors.toSet());
        boolean refused = notices.refused();
        Notices found = new Notices();
        List<Placed> placed = StackPlacing.place(stack, found);
        found.sorted().stream()
                .filter(notice -> !refused || !follows(notice, suspect))
                .forEach(notices::add);
        boolean framing = placed.stream().allMatch(one -> one.piece().kind() == PieceKind.FRAMING);
        if (!notices.refused() && !placed.isEmpty() && framing) {
            notices.add(FrontNotices.FRAMING_ALONE.notice());
        }
        return placed;
    }

    /** Names of pieces that the document holds and that could not be read, also where their key is mistyped. */
    private static Set<String> lost(Document document, Stack stack) {
        Set<String> names = new TreeSet<>();
        if (StackReader.meant(document.root(), "pieces").orElse(document.root()) instanceof Sequence pieces) {
            for (Node item : pieces.items()) {
                if (item instanceof Mapping piece
                        && StackReader.meant(piece, "name").orElse(item) instanceof Scalar name) {
                    names.add(name.text());
                }
            }
        }
        stack.pieces().forEach(piece -> names.remove(piece.name()));
        return names;
    }

    /** Whether it only says that a piece is not there that could not be read: why not has been said. */
    private static boolean asksFor(Notice notice, Set<String> lost) {
        return notice.code().equals("unknown-name")
                && lost.stream()
                        .anyMatch(name -> notice.kind().sentence().contains("'" + name + "'")
                                || notice.values().stream()
                                        .anyMatch(named -> named.value().equals(new Text(name))));
    }

    private static boolean follows(Notice notice, Set<String> suspect) {
        return notice.code().equals("unknown-name")
                || notice.piece().filter(suspect::contains).isPresent();
    }

    /** All that there is to say, worst first; asks every question. */
    public List<Notice> notices() {
        return sorted(known.map(Answers::notices).orElse(List.of()));
    }

    /** What there is to say of these questions alone, and of the document as it was read; worst first. */
    public List<Notice> notices(Set<Question> questions) {
        return sorted(known.map(answers -> answers.notices(questions)).orElse(List.of()));
    }

    private List<Notice> sorted(List<Notice> more) {
        Notices all = new Notices();
        all.addAll(known.map(Answers::read).orElse(read));
        all.addAll(more);
        return all.sorted();
    }

    /** The same without figures, since they could not be delivered. */
    public Answer refused(List<Notice> why) {
        return new Answer(file, title, unit, Optional.empty(), why);
    }
}
