package buildup.engine.section.compose;

import buildup.engine.section.compose.Tried.Lapped;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Direction;
import buildup.profiles.travel.Travel;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Ways out of what is wrong with a section: a piece moved, ripped or cut back. Each is tried on the stack before it is
 * told. The first that works and leaves nothing else worse is taken, else the first that works and at least lays nothing
 * into anything; where none works, a person has to look.
 */
final class SectionCures {
    /** Trials for one section. A stack so full of faults is not finished, and its first cures are enough to go on. */
    private static final int MOST_TRIALS = 200;

    /** So many other ways out are kept, in case the first brings what the section alone does not show. */
    private static final int MOST_OTHERS = 2;

    /** What floats farther than this from all others was meant to be somewhere else, in: a rule of our own. */
    private static final double FARTHEST = 12;

    /** What has to remain of a board that is ripped so that a stack fits, in: less is no board; shop practice. */
    private static final double LEAST_BOARD = 1;

    private final Section section;
    private final Space space;
    private final Mending asDrawn;
    private final Tried now;
    private final Set<Lapped> lapped;
    private final Set<Integer> loose;
    private int trials;

    SectionCures(Section section) {
        this.section = section;
        this.space = section.stack().space();
        this.asDrawn = Mending.of(section.stack());
        this.now = Tried.of(section);
        this.lapped = now.laps();
        this.loose = now.loose(section.contacts());
    }

    /** A way that may be gone, and how it is told. */
    private record Way(Phrase words, Mending mending, List<Way> others) {
        Way(Phrase words, Mending mending) {
            this(words, mending, List.of());
        }

        Cure cure() {
            return new Cure(words, mending.changes())
                    .or(others.stream().map(Way::cure).toList());
        }
    }

    /** A move along an axis, inches, positive out or up. */
    private record Move(Axis axis, double by) {
        double far() {
            return Math.abs(by);
        }

        Figure toContact() {
            return Figure.contact(far());
        }

        String way() {
            return axis == Axis.UP ? by > 0 ? "up" : "down" : by > 0 ? "out" : "back";
        }

        /** The edge that goes ahead when a piece leaves another behind it. */
        String trailing() {
            return by > 0 ? axis.low() : axis.high();
        }
    }

    /** The first that works and leaves nothing worse, the next few behind it; else the first that works. */
    private Optional<Way> first(Stream<Way> ways, Predicate<Tried> works) {
        List<Way> good = new ArrayList<>();
        List<Way> fair = new ArrayList<>();
        for (Way way : ways.toList()) {
            Optional<Tried> tried = tried(way.mending())
                    .filter(after -> lapped.containsAll(after.laps()))
                    .filter(works);
            if (tried.isPresent()) {
                (tried.filter(this::isNoWorse).isPresent() ? good : fair).add(way);
            }
            if (good.size() > MOST_OTHERS) {
                break;
            }
        }
        List<Way> all = Stream.concat(good.stream(), fair.stream())
                .limit(1 + MOST_OTHERS)
                .toList();
        return all.stream().findFirst().map(way -> new Way(way.words(), way.mending(), all.subList(1, all.size())));
    }

    private Optional<Tried> tried(Mending mending) {
        return trials++ < MOST_TRIALS ? Tried.of(mending) : Optional.empty();
    }

    private boolean isNoWorse(Tried after) {
        return after.keepsWithin(now, space) && loose.containsAll(after.loose());
    }

    /** Out of an overlap, to contact, by the least way. */
    Cure ofOverlap(int later, int other) {
        Stream<Way> ways = Stream.of(later, other)
                .filter(body -> section.body(body).inStack())
                .flatMap(body -> clearing(body, body == later ? other : later)
                        .map(move -> clearing(section.body(body), move, words(body == later, section.body(other)))))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Clearing::far))
                .map(Clearing::way);
        return first(ways, after -> !after.laps().contains(Lapped.of(later, other)))
                .map(Way::cure)
                .orElse(Cure.of(
                        section.body(other).piece() && section.body(later).piece()
                                ? ComposeNotices.MOVE_ONE
                                : ComposeNotices.MAKE_SMALLER));
    }

    private record Clearing(double far, Way way) {}

    /** How a way out of an overlap is told. */
    private record Clears(Phrase moved, Phrase ripped) {}

    /** One piece may be rabbeted for another; for wall, floor and ceiling it has to make room itself. */
    private static Clears words(boolean itself, Body other) {
        if (!other.piece()) {
            return new Clears(ComposeNotices.OUT_OF_THE_ROOM, ComposeNotices.RIP_FOR_THE_ROOM);
        }
        return itself
                ? new Clears(ComposeNotices.MOVE_IT, ComposeNotices.RIP_IT)
                : new Clears(ComposeNotices.MOVE_THE_OTHER, ComposeNotices.RIP_THE_OTHER);
    }

    /** The moves after which a body only just touches another; out of wall, floor and ceiling no way but the least, back. */
    private Stream<Move> clearing(int body, int obstacle) {
        Outline own = section.body(body).outline();
        Outline in = section.body(obstacle).outline();
        Stream<Move> moves = Stream.of(
                        move(Axis.UP, Travel.meeting(own, List.of(in), Direction.DOWN), 1),
                        move(Axis.UP, Travel.meeting(own, List.of(in), Direction.UP), 1),
                        move(Axis.OUT, Travel.meeting(own, List.of(in), Direction.BACK), 1),
                        move(Axis.OUT, Travel.meeting(in, List.of(own), Direction.BACK), -1))
                .flatMap(Optional::stream);
        return section.body(obstacle).piece() ? moves : moves.min(Comparator.comparingDouble(Move::far)).stream();
    }

    private static Optional<Move> move(Axis axis, OptionalDouble by, int sign) {
        return by.isPresent() && Math.abs(by.getAsDouble()) > Tolerance.TOUCHING
                ? Optional.of(new Move(axis, sign * by.getAsDouble()))
                : Optional.empty();
    }

    /** A piece between two rules is ripped, any other is moved. */
    private Optional<Clearing> clearing(Body body, Move move, Clears words) {
        boolean ripped = Mending.isBetween(piece(body), move.axis());
        Optional<Mending> mending = ripped
                ? asDrawn.ripped(body.name(), move.axis(), move.by() < 0, move.far(), move.toContact())
                : asDrawn.moved(body.name(), move.axis(), move.by(), move.toContact());
        return mending.map(mended -> new Clearing(
                move.far(),
                new Way(
                        (ripped ? words.ripped() : words.moved())
                                .with("mover", body.name())
                                .with("way", move.way())
                                .with("edge", move.trailing())
                                .with("by", move.toContact()),
                        mended)));
    }

    private static Piece piece(Body body) {
        return body.placed().map(Placed::piece).orElseThrow();
    }

    /** Down to what is below a piece that floats, else back or up to what is there; nothing where nothing is near. */
    Optional<Cure> ofFloating(int number) {
        Body body = section.body(number);
        List<Outline> others = section.bodies().stream()
                .filter(other -> !other.equals(body))
                .map(Body::outline)
                .toList();
        Stream<Way> ways = Stream.of(
                        nearest(Axis.UP, body.outline(), others, Direction.DOWN),
                        nearest(Axis.OUT, body.outline(), others, Direction.BACK),
                        nearest(Axis.UP, body.outline(), others, Direction.UP))
                .flatMap(Optional::stream)
                .filter(move -> Math.abs(move.by()) <= FARTHEST)
                .flatMap(move -> asDrawn.moved(body.name(), move.axis(), move.by(), move.toContact()).stream()
                        .map(mending -> new Way(
                                ComposeNotices.MOVE_TO_CONTACT
                                        .with("way", move.way())
                                        .with("by", move.toContact()),
                                mending)));
        return first(ways, after -> !after.loose().contains(number)).map(Way::cure);
    }

    /** The shortest move that way until something is met. */
    static Optional<Double> fall(Outline own, List<Outline> others, Direction way) {
        boolean positive = way == Direction.UP;
        Stream<Double> met = others.stream()
                .flatMap(other ->
                        Travel.meeting(own, List.of(other), way).stream().boxed())
                .filter(by -> positive ? by > 0 : by < 0);
        return positive ? met.min(Comparator.naturalOrder()) : met.max(Comparator.naturalOrder());
    }

    private static Optional<Move> nearest(Axis axis, Outline own, List<Outline> others, Direction way) {
        return fall(own, others, way).map(by -> new Move(axis, by));
    }

    /** A stack that is too tall: its tallest board ripped, else all of it lower. */
    Cure ofHeight(double over) {
        double ceiling = space.ceiling().orElseThrow();
        Stream<Way> boards = section.bodies().stream()
                .filter(Body::trim)
                .filter(body ->
                        piece(body).stock().board() && !piece(body).stock().lying())
                .filter(body -> body.outline().box().height() > over + LEAST_BOARD)
                .sorted(Comparator.comparingDouble(
                        (Body body) -> -body.outline().box().height()))
                .flatMap(body -> lower(body, over).stream());
        Stream<Way> whole = asDrawn
                .wholeMoved(Axis.UP, -over, Figure.atLeast(over))
                .map(mending -> new Way(ComposeNotices.LOWER.with("by", Figure.atLeast(over)), mending))
                .stream();
        return first(Stream.concat(boards, whole), after -> after.reach(space) <= ceiling + Tolerance.TOUCHING)
                .map(Way::cure)
                .orElse(Cure.of(ComposeNotices.MAKE_LOWER.with("by", Figure.atLeast(over))));
    }

    private Optional<Way> lower(Body body, double over) {
        if (Mending.isBetween(piece(body), Axis.UP)) {
            Figure by = Figure.atLeast(over);
            return asDrawn.ripped(body.name(), Axis.UP, true, over, by)
                    .map(mending -> new Way(
                            ComposeNotices.RIP_TOP.with("board", body.name()).with("by", by), mending));
        }
        double height = body.outline().box().height() - over;
        Figure size = Figure.atMost(height);
        return asDrawn.wide(body.name(), height, size)
                .map(mending -> new Way(
                        ComposeNotices.COULD_BE.with("board", body.name()).with("size", size), mending));
    }

    /** A stack that projects too far: what stands out ripped or brought back, piece by piece, else all of it back. */
    Cure ofProjection(double over) {
        double allowed = space.projection().orElseThrow();
        Stream<Way> pieces = broughtBack(allowed).stream();
        Stream<Way> whole = asDrawn
                .wholeMoved(Axis.OUT, -over, Figure.atLeast(over))
                .map(mending -> new Way(ComposeNotices.STACK_BACK.with("by", Figure.atLeast(over)), mending))
                .stream();
        return first(Stream.concat(pieces, whole), after -> after.face() <= allowed + Tolerance.TOUCHING)
                .map(Way::cure)
                .orElse(Cure.of(ComposeNotices.MAKE_SHALLOWER.with("by", Figure.atLeast(over))));
    }

    private Optional<Way> broughtBack(double allowed) {
        Optional<Way> all = Optional.empty();
        Tried after = now;
        for (int step = 0; step < section.bodies().size(); step++) {
            Optional<Body> foremost = after.foremost(allowed + Tolerance.TOUCHING);
            if (foremost.isEmpty()) {
                return all;
            }
            String name = foremost.get().name();
            Mending before = all.map(Way::mending).orElse(asDrawn);
            Optional<Way> way = first(
                    Stream.concat(
                            shallower(before, foremost.get(), allowed), narrowed(before, foremost.get(), allowed)),
                    then -> then.faceOf(name) <= allowed + Tolerance.TOUCHING);
            if (way.isEmpty()) {
                return Optional.empty();
            }
            all = Optional.of(all.map(found -> together(found, way.get())).orElse(way.get()));
            after = Tried.of(way.get().mending()).orElseThrow();
        }
        return all;
    }

    private static Way together(Way one, Way then) {
        return new Way(ComposeNotices.TOGETHER.with("one", one.words()).with("then", then.words()), then.mending());
    }

    /** Boards that lie behind what stands out too far, and may hold it there: each narrower by what is too much. */
    private Stream<Way> narrowed(Mending before, Body foremost, double allowed) {
        double over = foremost.outline().box().face() - allowed;
        return section.bodies().stream()
                .filter(body -> body.trim() && !body.name().equals(foremost.name()))
                .filter(body ->
                        piece(body).stock().board() && piece(body).stock().lying())
                .filter(body -> body.outline().box().width() > over + LEAST_BOARD)
                .flatMap(body -> {
                    double width = body.outline().box().width() - over;
                    Figure size = Figure.atMost(width);
                    return before
                            .wide(body.name(), width, size)
                            .map(mending -> new Way(
                                    ComposeNotices.COULD_BE_WIDE
                                            .with("board", body.name())
                                            .with("size", size),
                                    mending))
                            .stream();
                });
    }

    private static Stream<Way> shallower(Mending before, Body body, double allowed) {
        Box box = body.outline().box();
        double over = box.face() - allowed;
        Figure by = Figure.atLeast(over);
        Figure size = Figure.atMost(box.width() - over);
        List<Way> ways = new ArrayList<>();
        before.ripped(body.name(), Axis.OUT, true, over, by)
                .ifPresent(mending -> ways.add(new Way(
                        ComposeNotices.RIP_FACE.with("board", body.name()).with("by", by), mending)));
        if (piece(body).stock().lying() && box.width() > over + LEAST_BOARD) {
            before.wide(body.name(), box.width() - over, size)
                    .ifPresent(mending -> ways.add(new Way(
                            ComposeNotices.COULD_BE_WIDE
                                    .with("board", body.name())
                                    .with("size", size),
                            mending)));
        }
        before.moved(body.name(), Axis.OUT, -over, by)
                .ifPresent(mending -> ways.add(new Way(
                        ComposeNotices.BRING_BACK.with("board", body.name()).with("by", by), mending)));
        return ways.stream();
    }
}
