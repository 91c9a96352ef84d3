package buildup.engine.run;

import buildup.engine.stack.Piece;
import buildup.engine.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code plan:}. */
final class PlanReader {
    /** More is not the trim of a house. */
    private static final int MOST_RUNS = 50;

    private static final int MOST_STRETCHES = 200;

    private final Stack stack;
    private final Notices notices;
    private final EndReader ends;

    PlanReader(Stack stack, Notices notices) {
        this.stack = stack;
        this.notices = notices;
        this.ends = new EndReader(notices);
    }

    List<Run> read(Fields root) {
        List<Fields> entries = root.list("plan");
        if (entries.size() > MOST_RUNS) {
            refuse(
                    "plan-too-long",
                    "The plan holds " + entries.size() + " runs; at most " + MOST_RUNS + " are fitted.",
                    "Make several jobs of it.",
                    root.mark("plan"));
            return List.of();
        }
        List<Run> runs = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Fields entry : entries) {
            String name = entry.text("name").orElse("run " + (runs.size() + 1));
            once(name, names, entry);
            run(name, entry).ifPresent(runs::add);
        }
        return List.copyOf(runs);
    }

    private Optional<Run> run(String name, Fields fields) {
        List<Fields> entries = fields.list("stretches");
        Optional<Ending> left = ends.end(fields, "left");
        Optional<Ending> right = ends.end(fields, "right");
        boolean coped = coped(fields);
        List<String> grain = grain(fields);
        if (entries.isEmpty()) {
            refuse(
                    "stretch-missing",
                    "Run '" + name + "' has no stretch of wall.",
                    "Add 'stretches: [{ name: front, length: 96 }]'.",
                    fields.mark("stretches"));
            return Optional.empty();
        }
        if (entries.size() > MOST_STRETCHES) {
            refuse(
                    "plan-too-long",
                    "Run '" + name + "' holds " + entries.size() + " stretches; at most " + MOST_STRETCHES
                            + " are fitted.",
                    "Make several runs of it.",
                    fields.mark("stretches"));
            // read all the same, so that none of their keys is taken for a stranger
            stretches(name, entries);
            return Optional.empty();
        }
        List<Stretch> stretches = stretches(name, entries);
        if (stretches.size() < entries.size() || !endsAgree(name, fields, entries, stretches)) {
            return Optional.empty();
        }
        if (fields.has("left") != left.isPresent() || fields.has("right") != right.isPresent()) {
            return Optional.empty();
        }
        return Optional.of(new Run(name, stretches, left, right, coped, grain, fields.mark()));
    }

    private List<Stretch> stretches(String run, List<Fields> entries) {
        List<Stretch> stretches = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Fields entry : entries) {
            String name = entry.text("name").orElse("stretch " + (stretches.size() + 1));
            once(name, names, entry);
            stretch(run, name, entry).ifPresent(stretches::add);
        }
        return stretches;
    }

    private Optional<Stretch> stretch(String run, String name, Fields fields) {
        Optional<Double> length = fields.length("length").map(Length::toInches);
        if (!fields.has("length")) {
            refuse(
                    "stretch-missing",
                    "Stretch '" + name + "' of '" + run + "' has no length.",
                    "Add 'length:', measured on the wall from corner to corner.",
                    fields.mark());
        }
        boolean sound = length.isPresent();
        if (length.filter(inches -> inches <= 0).isPresent()) {
            refuse(
                    "not-a-size",
                    "Stretch '" + name + "' of '" + run + "' is " + Wording.near(length.get()) + " long.",
                    "Give it more than nothing, or leave it out.",
                    fields.mark("length"));
            sound = false;
        }
        Optional<Corner> corner = ends.corner(fields);
        Optional<Double> lean = ends.lean(fields);
        Optional<List<Opening>> openings = openings(name, length.orElse(0.0), fields.list("openings"), sound);
        sound &= corner.isPresent() == fields.has("corner") && lean.isPresent() && openings.isPresent();
        return sound
                ? Optional.of(new Stretch(
                        name, length.orElseThrow(), corner, openings.orElseThrow(), lean.orElseThrow(), fields.mark()))
                : Optional.empty();
    }

    private Optional<List<Opening>> openings(String stretch, double length, List<Fields> entries, boolean measured) {
        List<Opening> openings = new ArrayList<>();
        double taken = 0;
        for (Fields entry : entries) {
            String name = entry.text("name").orElse("opening " + (openings.size() + 1));
            Optional<Double> from = entry.length("from").map(Length::toInches);
            Optional<Double> to = entry.length("to").map(Length::toInches);
            Optional<Ending> own = ends.ofOpening(entry);
            if (!entry.has("from") || !entry.has("to")) {
                refuse(
                        "missing-key",
                        "Opening '" + name + "' of '" + stretch + "' does not say where it begins and ends.",
                        "Add 'from:' and 'to:', measured from the left end of its stretch.",
                        entry.mark());
            }
            if (from.isEmpty() || to.isEmpty() || own.isEmpty()) {
                continue;
            }
            if (measured && (from.get() < taken || to.get() <= from.get() || to.get() > length)) {
                refuse(
                        "opening-misplaced",
                        "Opening '" + name + "' from " + Wording.near(from.get()) + " to " + Wording.near(to.get())
                                + " does not lie between " + Wording.near(taken) + " and " + Wording.near(length)
                                + " of '" + stretch + "'.",
                        "Measure from the left end of the stretch, and list openings from left to right.",
                        entry.mark());
                continue;
            }
            if (measured && from.get() <= Tolerance.TOUCHING && to.get() >= length - Tolerance.TOUCHING) {
                notices.add(Notice.note(
                                "opening-takes-all",
                                "Opening '" + name + "' takes all of '" + stretch + "': no wall is left for trim.")
                        .at(entry.mark())
                        .cure("Leave the stretch out, or measure the opening again."));
            }
            taken = to.get();
            openings.add(new Opening(name, from.get(), to.get(), own.get(), entry.mark()));
        }
        return openings.size() == entries.size() ? Optional.of(openings) : Optional.empty();
    }

    /** Corners stand between stretches; behind the last one there is a corner or an end, not both and not neither. */
    private boolean endsAgree(String name, Fields fields, List<Fields> entries, List<Stretch> stretches) {
        boolean agree = true;
        for (int i = 0; i + 1 < stretches.size(); i++) {
            if (stretches.get(i).corner().isEmpty()) {
                refuse(
                        "corner-missing",
                        "Between '" + stretches.get(i).name() + "' and '"
                                + stretches.get(i + 1).name() + "' of '" + name + "' no corner is given.",
                        "Add 'corner: outside 90' or 'corner: inside 90' to the first.",
                        entries.get(i).mark());
                agree = false;
            }
        }
        boolean closed = stretches.get(stretches.size() - 1).corner().isPresent();
        boolean left = fields.has("left");
        boolean right = fields.has("right");
        Mark mark = fields.mark();
        if (closed && (left || right)) {
            refuse(
                    "ends-contradict",
                    "Run '" + name + "' closes: its last stretch meets the first at a corner. Yet it has "
                            + (left && right ? "two ends." : "an end."),
                    "Take the last 'corner:' out, or 'left:' and 'right:'.",
                    fields.mark(left ? "left" : "right"));
            agree = false;
        } else if (closed && stretches.size() < 3) {
            refuse(
                    "stretch-missing",
                    "Run '" + name + "' closes with " + stretches.size() + " of the three stretches that it takes at"
                            + " least.",
                    "Add the others, or give it two ends.",
                    mark);
            agree = false;
        } else if (!closed && !(left && right)) {
            refuse(
                    "end-missing",
                    "Run '" + name + "' has no " + (left ? "right" : right ? "left" : "left and no right") + " end.",
                    "Write return, die, butt or square, as 'left: return'.",
                    mark);
            agree = false;
        }
        return agree;
    }

    private boolean coped(Fields fields) {
        Optional<Scalar> word = fields.scalar("inside");
        if (word.filter(text -> !text.text().equals("cope") && !text.text().equals("miter"))
                .isPresent()) {
            refuse(
                    "unknown-name",
                    "Inside corners are not cut by '" + word.get().text() + "'.",
                    "Write miter or cope.",
                    word.get().mark());
        }
        return word.filter(text -> text.text().equals("cope")).isPresent();
    }

    private List<String> grain(Fields fields) {
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        List<String> names = new ArrayList<>();
        for (Scalar name : fields.scalars("grain")) {
            if (known.contains(name.text())) {
                names.add(name.text());
            } else {
                refuse(
                        "unknown-name",
                        "No piece called '" + name.text() + "' whose grain could run round.",
                        Suggestion.cure(name.text(), known),
                        name.mark());
            }
        }
        return names;
    }

    private void once(String name, Set<String> names, Fields entry) {
        if (!names.add(name)) {
            refuse(
                    "same-name-twice",
                    "'" + name + "' twice in the plan.",
                    "Call one '" + name + " 2'.",
                    entry.mark("name"));
        }
    }

    private void refuse(String code, String message, String cure, Mark mark) {
        notices.add(Notice.refusal(code, message).at(mark).cure(cure));
    }
}
