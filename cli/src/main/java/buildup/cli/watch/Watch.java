package buildup.cli.watch;

import buildup.cli.compare.Comparison;
import buildup.cli.compare.ComparisonHtml;
import buildup.cli.page.Page;
import buildup.cli.page.PageParts;
import buildup.cli.report.NoticeText;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Html;
import buildup.engine.Answer;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One stack, or two beside each other, as they are followed, and the picture of them. */
public final class Watch {
    private static final List<String> KEYS = List.of("a", "b");

    private final TextMeasure measure;
    private final LatestPicture latest;
    private List<FollowedStack> stacks;
    private List<PageParts> parts;

    /**
     * Begins with what is read first.
     *
     * @param answers one, or two to be set beside each other
     * @param measure of the letters in the drawings
     */
    public Watch(List<Answer> answers, TextMeasure measure) {
        this.measure = measure;
        Drawn first = guarded(answers, this::first);
        this.stacks = first.stacks();
        this.parts = first.picture().parts();
        this.latest = new LatestPicture(first.picture());
    }

    /** What is followed, and the picture of it. */
    private record Drawn(List<FollowedStack> stacks, Picture picture) {}

    private Drawn first(List<Answer> answers) {
        List<FollowedStack> first = answers.stream().map(FollowedStack::first).toList();
        return new Drawn(first, new Picture(parts(first, List.of(), List.of()), above(first)));
    }

    /** Where the newest picture hangs. */
    public LatestPicture latest() {
        return latest;
    }

    /**
     * Takes what is read after a save; as many answers as there were at first. Whatever they hold, there is a picture
     * afterwards: of the last good save where this one cannot be drawn.
     */
    public void take(List<Answer> answers) {
        Drawn drawn = guarded(answers, this::next);
        stacks = drawn.stacks();
        parts = drawn.picture().parts();
        latest.put(drawn.picture());
    }

    /** A fault in drawing or comparing is told as a refusal is, of the answers that are its cause. */
    private Drawn guarded(List<Answer> answers, Function<List<Answer>, Drawn> drawing) {
        try {
            return drawing.apply(answers);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            Notice notice = WatchNotices.fault(fault);
            List<Answer> undrawable =
                    answers.stream().filter(one -> !drawable(one)).toList();
            return drawing.apply(answers.stream()
                    .map(one -> undrawable.isEmpty() || undrawable.contains(one) ? one.refused(List.of(notice)) : one)
                    .toList());
        }
    }

    private boolean drawable(Answer answer) {
        try {
            PageParts.of(answer, KEYS.get(0), measure);
            return true;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            return false;
        }
    }

    private Drawn next(List<Answer> answers) {
        List<FollowedStack> before = stacks;
        List<FollowedStack> next = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            boolean untouched = answers.size() > 1 && before.get(i).says(answers.get(i));
            // of two, only one was saved; the last change of the other stays
            next.add(untouched ? before.get(i) : before.get(i).next(answers.get(i)));
        }
        return new Drawn(List.copyOf(next), new Picture(parts(next, before, parts), above(next)));
    }

    /** What is drawn already is not drawn again. */
    private List<PageParts> parts(List<FollowedStack> now, List<FollowedStack> before, List<PageParts> drawn) {
        List<PageParts> fresh = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            boolean same =
                    i < before.size() && before.get(i).shown().equals(now.get(i).shown());
            fresh.add(same ? drawn.get(i) : PageParts.of(now.get(i).shown(), KEYS.get(i), measure));
        }
        return List.copyOf(fresh);
    }

    private static Page.Above above(List<FollowedStack> stacks) {
        StringBuilder changed = new StringBuilder();
        List<String> stale = new ArrayList<>();
        for (FollowedStack stack : stacks) {
            stack.change().ifPresent(change -> {
                if (stacks.size() > 1) {
                    changed.append("<h3>" + Html.name(stack.now().file()) + "</h3>\n");
                }
                changed.append(ComparisonHtml.words(change));
            });
            if (stack.stale()) {
                stale.addAll(wrong(stack));
            }
        }
        if (stacks.size() > 1) {
            beside(stacks.get(0), stacks.get(1)).ifPresent(changed::append);
        }
        return new Page.Above(changed.toString(), stale);
    }

    private static Optional<String> beside(FollowedStack a, FollowedStack b) {
        return Comparison.of(a.shown(), b.shown())
                .map(comparison -> "<h3>The two beside each other</h3>\n" + ComparisonHtml.beside(comparison));
    }

    private static List<String> wrong(FollowedStack stack) {
        List<String> lines = new ArrayList<>();
        lines.add("Out of date: " + stack.now().file()
                + " is wrong as it stands, and what you see is of the last good save.");
        NoticeText.write(stack.now().notices(), stack.now().file(), stack.now().unit())
                .lines()
                .filter(line -> line.startsWith("refusal  "))
                .forEach(lines::add);
        return lines;
    }
}
