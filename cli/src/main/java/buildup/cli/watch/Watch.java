package buildup.cli.watch;

import buildup.cli.compare.Comparison;
import buildup.cli.compare.ComparisonHtml;
import buildup.cli.page.Page;
import buildup.cli.page.PageParts;
import buildup.cli.report.NoticeText;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Html;
import buildup.engine.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One stack, or two beside each other, as they are followed, and the picture of them. */
public final class Watch {
    private static final List<String> KEYS = List.of("a", "b");

    private final TextMeasure measure;
    private final Board board;
    private List<Side> sides;
    private List<PageParts> parts;

    /**
     * Begins with what is read first.
     *
     * @param answers one, or two to be set beside each other
     * @param measure of the letters in the drawings
     */
    public Watch(List<Answer> answers, TextMeasure measure) {
        this.measure = measure;
        this.sides = answers.stream().map(Side::first).toList();
        this.parts = parts(sides, List.of(), List.of());
        this.board = new Board(new Picture(parts, above()));
    }

    /** Where the newest picture hangs. */
    public Board board() {
        return board;
    }

    /** Takes what is read after a save; as many answers as there were at first. */
    public void take(List<Answer> answers) {
        List<Side> before = sides;
        List<Side> next = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            boolean untouched = answers.size() > 1 && before.get(i).says(answers.get(i));
            // of two, only one was saved; the last change of the other stays
            next.add(untouched ? before.get(i) : before.get(i).next(answers.get(i)));
        }
        sides = List.copyOf(next);
        parts = parts(sides, before, parts);
        board.put(new Picture(parts, above()));
    }

    /** What is drawn already is not drawn again. */
    private List<PageParts> parts(List<Side> now, List<Side> before, List<PageParts> drawn) {
        List<PageParts> fresh = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            boolean same =
                    i < before.size() && before.get(i).shown() == now.get(i).shown();
            fresh.add(same ? drawn.get(i) : PageParts.of(now.get(i).shown(), KEYS.get(i), measure));
        }
        return List.copyOf(fresh);
    }

    private Page.Above above() {
        StringBuilder changed = new StringBuilder();
        List<String> stale = new ArrayList<>();
        for (Side side : sides) {
            side.change().ifPresent(change -> {
                if (sides.size() > 1) {
                    changed.append("<h3>" + Html.name(side.now().file()) + "</h3>\n");
                }
                changed.append(ComparisonHtml.words(change));
            });
            if (side.stale()) {
                stale.addAll(wrong(side));
            }
        }
        if (sides.size() > 1) {
            beside(sides.get(0), sides.get(1)).ifPresent(changed::append);
        }
        return new Page.Above(changed.toString(), stale);
    }

    private static Optional<String> beside(Side a, Side b) {
        return Comparison.of(a.shown(), b.shown())
                .map(comparison -> "<h3>The two beside each other</h3>\n" + ComparisonHtml.beside(comparison));
    }

    private static List<String> wrong(Side side) {
        List<String> lines = new ArrayList<>();
        lines.add("Out of date: " + side.now().file()
                + " is wrong as it stands, and what you see is of the last good save.");
        NoticeText.write(side.now().notices(), side.now().file(), side.now().unit())
                .lines()
                .filter(line -> line.startsWith("refusal  "))
                .forEach(lines::add);
        return lines;
    }
}
