package buildup.engine.room.plan;

import buildup.engine.section.stack.LikelySizes;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads {@code plan:}. */
final class PlanReader {
    /** More is not the trim of a house. */
    private static final int MOST_RUNS = 50;

    private static final int MOST_STRETCHES = 200;

    /** A longer wall, in inches, was more likely measured in millimeters. */
    private static final double LONGEST_WALL = 2400;

    /** Keys of a run and of its stretches that tell of walls and of the corners between them. */
    private static final List<String> OF_WALLS =
            List.of("studs", "joists", "ceiling", "floor", "wall", "inside", "cope", "entry");

    private final Stack stack;
    private final Notices notices;
    private final PieceNames pieces;
    private final EndReader ends;
    private final CopeReader copes;
    private final SurfaceReader surfaces;
    private final FramingReader framings;

    PlanReader(Stack stack, Notices notices) {
        this.stack = stack;
        this.notices = notices;
        this.pieces = new PieceNames(stack, notices);
        this.ends = new EndReader(pieces, notices);
        this.copes = new CopeReader(notices);
        this.surfaces = new SurfaceReader(notices);
        this.framings = new FramingReader(notices);
    }

    List<WallRun> read(Fields root) {
        List<Fields> entries = root.list("plan");
        if (entries.size() > MOST_RUNS) {
            say(
                    PlanNotices.MANY_RUNS
                            .with("runs", Figure.count(entries.size()))
                            .with("most", Figure.count(MOST_RUNS)),
                    root.mark("plan"));
            return List.of();
        }
        List<WallRun> runs = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            Fields entry = entries.get(i);
            String name = entry.text("name").orElse("run " + (i + 1));
            once(name, names, entry);
            run(name, entry).ifPresent(runs::add);
        }
        return List.copyOf(runs);
    }

    private Optional<WallRun> run(String name, Fields fields) {
        List<Fields> entries = fields.list("stretches");
        List<Ending> left = ends.ends(fields, "left");
        List<Ending> right = ends.ends(fields, "right");
        boolean coped = copes.inside(fields);
        List<String> grain = pieces.of(fields, "grain", PlanNotices.UNKNOWN_GRAIN);
        boolean opening = aroundOpening(fields);
        if (opening) {
            ofWalls(name, fields, entries);
        }
        Framing framing = framings.read(fields);
        if (entries.isEmpty()) {
            say(PlanNotices.NO_STRETCH.with("run", name).with("example", Figure.atLeast(96)), fields.mark("stretches"));
            return Optional.empty();
        }
        if (entries.size() > MOST_STRETCHES) {
            say(
                    PlanNotices.MANY_STRETCHES
                            .with("run", name)
                            .with("stretches", Figure.count(entries.size()))
                            .with("most", Figure.count(MOST_STRETCHES)),
                    fields.mark("stretches"));
            // read all the same, so that none of their keys is taken for a stranger
            stretches(name, entries, framing);
            return Optional.empty();
        }
        List<Stretch> stretches = stretches(name, entries, framing);
        Optional<WallRun.Entry> entry = copes.entry(fields, stretches);
        if (stretches.size() < entries.size() || !endsAgree(name, fields, entries, stretches)) {
            return Optional.empty();
        }
        if (fields.has("left") == left.isEmpty() || fields.has("right") == right.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new WallRun(
                name,
                stretches,
                last(left),
                last(right),
                new WallRun.Others(butLast(left), butLast(right)),
                opening,
                coped,
                entry,
                grain,
                fields.mark()));
    }

    private static Optional<Ending> last(List<Ending> ends) {
        return ends.isEmpty() ? Optional.empty() : Optional.of(ends.get(ends.size() - 1));
    }

    private static List<Ending> butLast(List<Ending> ends) {
        return ends.subList(0, Math.max(0, ends.size() - 1));
    }

    /** {@code around: opening}; {@code room} when nothing is said. */
    private boolean aroundOpening(Fields fields) {
        Optional<Scalar> word = fields.scalar("around");
        word.filter(text -> !List.of("room", "opening").contains(text.text()))
                .ifPresent(text -> say(PlanNotices.UNKNOWN_AROUND.with("word", text.text()), text.mark()));
        return word.filter(text -> text.text().equals("opening")).isPresent();
    }

    /** Round an opening no wall is met: what is said of walls has no use there. */
    private void ofWalls(String run, Fields fields, List<Fields> stretches) {
        List<Phrase> unused = OF_WALLS.stream()
                .filter(key -> fields.has(key) || stretches.stream().anyMatch(stretch -> stretch.has(key)))
                .map(key -> PlanNotices.KEY.with("key", key))
                .toList();
        if (!unused.isEmpty()) {
            say(PlanNotices.OF_WALLS.with("run", run).with("keys", Listing.commas(unused)), fields.mark());
        }
    }

    private List<Stretch> stretches(String run, List<Fields> entries, Framing framing) {
        List<Stretch> stretches = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            Fields entry = entries.get(i);
            String name = entry.text("name").orElse("stretch " + (i + 1));
            once(name, names, entry);
            stretch(run, name, entry, framing).ifPresent(stretches::add);
        }
        return stretches;
    }

    private Optional<Stretch> stretch(String run, String name, Fields fields, Framing framing) {
        Optional<Double> length = fields.length("length").map(Length::toInches);
        if (!fields.has("length")) {
            say(PlanNotices.NO_LENGTH.with("stretch", name).with("run", run), fields.mark());
        }
        boolean sound = length.isPresent();
        if (length.filter(inches -> inches <= 0).isPresent()) {
            say(
                    PlanNotices.NOTHING_LONG
                            .with("stretch", name)
                            .with("run", run)
                            .with("length", Figure.length(length.get())),
                    fields.mark("length"));
            sound = false;
        }
        if (length.filter(inches ->
                        inches > LONGEST_WALL && !stack.lengths().bareUnit().isMetric())
                .filter(inches -> fields.scalar("length")
                        .filter(written -> stack.lengths().unitWritten(written.text()))
                        .isEmpty())
                .isPresent()) {
            say(
                    PlanNotices.LONG_STRETCH
                            .with("stretch", name)
                            .with("run", run)
                            .with("length", Figure.length(length.get()).rounded(Rounding.decimals(0)))
                            .with("number", LikelySizes.number(length.get()))
                            .with(
                                    "feet",
                                    Figure.of(Quantity.RUN, length.get() / 12).rounded(Rounding.decimals(0))),
                    fields.mark("length"));
        }
        Optional<WallCorner> corner = ends.corner(fields);
        Optional<Double> lean = ends.lean(fields);
        Optional<List<Opening>> openings = openings(name, length.orElse(0.0), fields.list("openings"), sound);
        Framing own = framings.read(fields);
        Optional<MeasuredRoom> surfaces = this.surfaces.read(name, length.orElse(LONGEST_WALL), fields);
        sound &= corner.isPresent() == fields.has("corner") && lean.isPresent() && openings.isPresent();
        sound &= surfaces.isPresent();
        return sound
                ? Optional.of(new Stretch(
                        name,
                        length.orElseThrow(),
                        corner,
                        copes.cope(name, fields, corner),
                        ends.size(fields, "block"),
                        pieces.of(fields, "pieces"),
                        openings.orElseThrow(),
                        surfaces.orElseThrow(),
                        own.or(framing),
                        lean.orElseThrow(),
                        fields.mark()))
                : Optional.empty();
    }

    private Optional<List<Opening>> openings(String stretch, double length, List<Fields> entries, boolean measured) {
        List<Opening> openings = new ArrayList<>();
        double taken = 0;
        for (int i = 0; i < entries.size(); i++) {
            Fields entry = entries.get(i);
            String name = entry.text("name").orElse("opening " + (i + 1));
            Optional<Double> from = entry.length("from").map(Length::toInches);
            Optional<Double> to = entry.length("to").map(Length::toInches);
            Optional<Ending> own = ends.ofOpening(entry);
            OptionalDouble bottom = stack.level(entry, "bottom", notices);
            OptionalDouble top = stack.level(entry, "top", notices);
            List<String> reached = pieces.of(entry, "pieces");
            if (!entry.has("from") || !entry.has("to")) {
                say(PlanNotices.OPENING_WITHOUT_PLACE.with("opening", name).with("stretch", stretch), entry.mark());
            }
            if (from.isEmpty() || to.isEmpty() || own.isEmpty()) {
                continue;
            }
            if (measured && (from.get() < taken || to.get() <= from.get() || to.get() > length)) {
                say(
                        PlanNotices.MISPLACED
                                .with("opening", name)
                                .with("from", Figure.length(from.get()))
                                .with("to", Figure.length(to.get()))
                                .with("taken", Figure.length(taken))
                                .with("length", Figure.length(length))
                                .with("stretch", stretch),
                        entry.mark());
                continue;
            }
            if (measured && from.get() <= Tolerance.TOUCHING && to.get() >= length - Tolerance.TOUCHING) {
                say(PlanNotices.NO_WALL_LEFT.with("opening", name).with("stretch", stretch), entry.mark());
            }
            taken = to.get();
            if (bottom.isPresent() && top.isPresent() && bottom.getAsDouble() >= top.getAsDouble()) {
                say(PlanNotices.OPENING_UPSIDE_DOWN.with("opening", name), entry.mark());
            }
            openings.add(new Opening(name, from.get(), to.get(), bottom, top, reached, own.get(), entry.mark()));
        }
        return openings.size() == entries.size() ? Optional.of(openings) : Optional.empty();
    }

    /** Corners stand between stretches; behind the last one there is a corner or an end, not both and not neither. */
    private boolean endsAgree(String name, Fields fields, List<Fields> entries, List<Stretch> stretches) {
        boolean agree = true;
        for (int i = 0; i + 1 < stretches.size(); i++) {
            if (stretches.get(i).corner().isEmpty()) {
                say(
                        PlanNotices.NO_CORNER
                                .with("stretch", stretches.get(i).name())
                                .with("next", stretches.get(i + 1).name())
                                .with("run", name),
                        entries.get(i).mark());
                agree = false;
            }
        }
        boolean closed = stretches.get(stretches.size() - 1).corner().isPresent();
        boolean left = fields.has("left");
        boolean right = fields.has("right");
        Mark mark = fields.mark();
        if (closed && (left || right)) {
            say(
                    (left && right ? PlanNotices.CLOSES_WITH_TWO_ENDS : PlanNotices.CLOSES_WITH_AN_END)
                            .with("run", name),
                    fields.mark(left ? "left" : "right"));
            agree = false;
        } else if (closed && stretches.size() < 3) {
            say(PlanNotices.TOO_FEW_TO_CLOSE.with("run", name).with("stretches", Figure.count(stretches.size())), mark);
            agree = false;
        } else if (!closed && !(left && right)) {
            say(
                    (left ? PlanNotices.NO_RIGHT_END : right ? PlanNotices.NO_LEFT_END : PlanNotices.NO_ENDS)
                            .with("run", name),
                    mark);
            agree = false;
        }
        return agree;
    }

    private void once(String name, Set<String> names, Fields entry) {
        if (!names.add(name)) {
            say(PlanNotices.TWICE.with("name", name), entry.mark("name"));
        }
    }

    private void say(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
