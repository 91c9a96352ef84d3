package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.stack.Light;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.figure.Named;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Tries the cures of problems before they are told. Each is put into the document as a person would type it, every
 * question is asked again, and it stands as told only if its problem is gone, no other has come and none has clearly grown;
 * else the next way out is tried; else it is said that none of those tried cures it, or what the first brings that would.
 *
 * <p>Nothing is asked where nothing is wrong; where much is, only the worst is tried. Whether the pieces can still be put
 * up in their order is asked last, of what passes all else: that search costs more than all other questions together.
 */
final class CureTrial {
    /** What is asked again of each cure. */
    static final Set<Question> ASKED = EnumSet.complementOf(EnumSet.of(Question.ORDER, Question.TOLERANCE));

    /** What is asked again of a cure that passes those: the questions that take longest. */
    static final Set<Question> ASKED_LAST = EnumSet.of(Question.ORDER, Question.TOLERANCE);

    /** So many cures are tried of one stack, and fewer where it has many pieces: a run is to end while one looks on. */
    private static final int MOST_TRIALS = 40;

    private static final int MOST_PIECES = 480;

    /** Where two pieces lap, how they meet is not known: that they do not balance once they are apart is no new fault. */
    private static final Set<String> HIDDEN_BY_OVERLAP = Set.of("needs-holding", "tips", "load-too-much");

    /** Where along the run a row stands. */
    private static final Pattern SETTING_OUT = Pattern.compile("fastenings\\..*\\.(first|spacing)");

    private final Document document;
    private final Catalog catalog;
    private final LengthUnit unit;
    private final Optional<List<Light>> lights;
    private final Map<Notice, Notice> told = new HashMap<>();
    private final List<Accepted> accepted = new ArrayList<>();
    private int left;

    /** @param lights to shine in place of those of the stack */
    CureTrial(Document document, Catalog catalog, LengthUnit unit, Optional<List<Light>> lights, int pieces) {
        this.document = document;
        this.catalog = catalog;
        this.unit = unit;
        this.lights = lights;
        this.left = Math.max(1, Math.min(MOST_TRIALS, MOST_PIECES / Math.max(1, pieces)));
    }

    /**
     * The same notices, with cures that were tried as far as there are any that change the document.
     *
     * @param some of the document
     * @param all of the document, for these questions; asked only if there is something to try
     */
    List<Notice> tried(List<Notice> some, Function<Set<Question>, List<Notice>> all) {
        Notices sorted = new Notices();
        sorted.addAll(some);
        for (Notice notice : sorted.sorted()) {
            boolean open = notice.level() == Level.PROBLEM && !notice.changes().isEmpty() && !told.containsKey(notice);
            if (open && left > 0) {
                told.put(notice, tried(notice, questions -> Faults.of(all.apply(questions))));
            }
        }
        return some.stream()
                .map(notice -> told.getOrDefault(notice, notice))
                .map(this::withAnother)
                .toList();
    }

    /** A cure that was tried and cures: of what, and what is wrong once it is done. */
    private record Accepted(Notice of, Cure cure, Faults still) {}

    /**
     * Where nothing of its own helps, what cures another problem may cure it too: one row may not deny what another tells.
     * Where what is there already only has to be changed, no row is added for the same.
     */
    private Notice withAnother(Notice notice) {
        boolean noWayOut = notice.cure().filter(CureTrial::noWayOut).isPresent();
        if (notice.level() != Level.PROBLEM || (!noWayOut && !addsRow(notice.changes()))) {
            return notice;
        }
        return accepted.stream()
                .filter(other -> noWayOut || !addsRow(other.cure().changes()))
                .filter(other -> !other.still().hold(notice))
                .findFirst()
                .map(other -> notice.cure(new Cure(
                        FrontNotices.COMES_RIGHT
                                .with("what", what(other.of()))
                                .with(
                                        "cure",
                                        other.of().cure(other.cure()).cure().orElseThrow()),
                        other.cure().changes())))
                .orElse(notice);
    }

    private static boolean addsRow(List<Change> changes) {
        return changes.stream()
                .anyMatch(change ->
                        change.position().isPresent() && change.place().equals("fastenings"));
    }

    private static boolean noWayOut(Phrase cure) {
        return Cure.none(cure)
                || cure.template().equals(FrontNotices.CURE_BRINGS.template())
                || cure.template().equals(FrontNotices.CURE_WORSENS.template());
    }

    /** The row of nails that a problem is about, else its piece, else what it says. */
    private static Value what(Notice notice) {
        return notice.values().stream()
                .filter(named -> named.name().equals("nail"))
                .map(Named::value)
                .findFirst()
                .or(() -> notice.piece().map(name -> new Text("'" + name + "'")))
                .orElseGet(notice::sentence);
    }

    private Notice tried(Notice notice, Function<Set<Question>, Faults> before) {
        Optional<Notice> against = Optional.empty();
        boolean tried = false;
        for (Cure cure : notice.cures()) {
            if (left-- <= 0) {
                break;
            }
            Optional<Answer> after = after(cure);
            if (after.isEmpty()) {
                continue;
            }
            tried = true;
            List<Notice> said = after.get().notices(first(notice));
            if (Faults.of(said).hold(notice)) {
                continue;
            }
            Optional<Notice> worse = worse(notice, after.get(), before);
            if (worse.isEmpty()) {
                Faults still = Faults.of(said).and(Faults.of(after.get().notices(ASKED_LAST)));
                Faults known = before.apply(first(notice)).and(before.apply(ASKED_LAST));
                // what only comes to light once two pieces no longer overlap is no cure of anything else
                if (known.holdAll(still)) {
                    accepted.add(new Accepted(notice, cure, still));
                }
                return notice.cure(cure);
            }
            Optional<Cure> both = worse.flatMap(one -> withSettingOut(notice, cure, one, before));
            if (both.isPresent()) {
                return notice.cure(both.get());
            }
            // nobody moves what stands, and what leaves no stack to ask about is no part of a way out either
            against = against.or(
                    () -> worse.filter(one -> !Composer.cutsIntoTheRoom(one) && one.level() != Level.REFUSAL));
        }
        if (!tried) {
            return notice;
        }
        Optional<Cure> byHand = notice.byHand();
        if (byHand.isPresent()) {
            return notice.cure(byHand.get());
        }
        return notice.cure(against.map(worse -> brings(before, notice, worse)
                        .with("cure", notice.cure().orElseThrow())
                        .with("as", named(notice, worse))
                        .with("worse", worse.sentence()))
                .orElse(Cure.NONE));
    }

    private static Phrase brings(Function<Set<Question>, Faults> before, Notice notice, Notice worse) {
        boolean known =
                before.apply(first(notice)).and(before.apply(ASKED_LAST)).hold(worse);
        return known ? FrontNotices.CURE_WORSENS : FrontNotices.CURE_BRINGS;
    }

    /** What a row that would be added is called, where what it brings speaks of it: the document does not have it yet. */
    private Phrase named(Notice notice, Notice worse) {
        return notice.changes().stream()
                .filter(change -> change.position().isPresent())
                .map(change -> change.typed(unit))
                .filter(name -> worse.values().stream()
                        .anyMatch(named ->
                                named.name().equals("row") && named.value().equals(new Text(name))))
                .findFirst()
                .map(name -> FrontNotices.AS_ROW.with("name", name))
                .orElse(Phrase.of(""));
    }

    /** A row that is added where no stud is, and set out on the studs: no reader knows that row yet, so both are one way out. */
    private Optional<Cure> withSettingOut(
            Notice notice, Cure cure, Notice misses, Function<Set<Question>, Faults> before) {
        if (misses.changes().isEmpty()
                || !misses.changes().stream().map(Change::place).allMatch(SETTING_OUT.asMatchPredicate())
                || left-- <= 0) {
            return Optional.empty();
        }
        Set<String> places = misses.changes().stream().map(Change::place).collect(Collectors.toSet());
        List<Change> changes = new ArrayList<>(cure.changes());
        changes.removeIf(change -> places.contains(change.place()));
        if (changes.isEmpty()) {
            // off the nails of another row and on the studs it cannot be both
            return Optional.empty();
        }
        changes.addAll(misses.changes());
        Phrase words = FrontNotices.BOTH
                .with("cure", cure.words())
                .with("then", misses.cure().orElseThrow());
        Cure both = new Cure(words, changes);
        return after(both)
                .filter(after -> !Faults.of(after.notices(first(notice))).hold(notice)
                        && worse(notice, after, before).isEmpty())
                .map(after -> both);
    }

    /** The first problem that was not there before, or not so grave; the way in is asked last, since that takes longest. */
    private static Optional<Notice> worse(Notice notice, Answer after, Function<Set<Question>, Faults> before) {
        return worse(notice, after.notices(first(notice)), before.apply(first(notice)))
                .or(() -> worse(notice, after.notices(ASKED_LAST), before.apply(ASKED_LAST)));
    }

    private static Optional<Notice> worse(Notice notice, List<Notice> after, Faults before) {
        return after.stream()
                .filter(Faults::wrong)
                .filter(one -> !before.holdAsGrave(one))
                .filter(one -> !notice.code().equals("overlap") || !HIDDEN_BY_OVERLAP.contains(one.code()))
                .findFirst();
    }

    /** The answer once the cure stands in the document; nothing when it cannot be put there. */
    private Optional<Answer> after(Cure cure) {
        Optional<Document> changed = Optional.of(document);
        for (Change change : cure.changes()) {
            changed = changed.flatMap(one -> made(one, change));
        }
        return changed.map(one -> Answer.untried(one, catalog, new Claims(), new Notices(), lights));
    }

    private Optional<Document> made(Document before, Change change) {
        String typed = change.typed(unit);
        return change.position().isPresent()
                ? before.withEntry(change.place(), change.position().getAsInt(), typed)
                : before.with(change.place(), typed);
    }

    /** What is asked first of a cure: all that may still say what it is to cure. */
    private static Set<Question> first(Notice notice) {
        return Topic.of(notice.code()) == Topic.TOLERANCE ? EnumSet.complementOf(EnumSet.of(Question.ORDER)) : ASKED;
    }
}
