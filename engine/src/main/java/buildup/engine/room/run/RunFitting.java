package buildup.engine.room.run;

import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Opening;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fits courses to one run. */
final class RunFitting {
    private final int number;
    private final WallRun run;
    private final List<Frame> frames;
    private final OtherWall otherWall;
    private final ReturnCorners corners;
    private final Clashes clashes;

    RunFitting(
            int number, WallRun run, List<Frame> frames, OtherWall otherWall, ReturnCorners corners, Clashes clashes) {
        this.number = number;
        this.run = run;
        this.frames = frames;
        this.otherWall = otherWall;
        this.corners = corners;
        this.clashes = clashes;
    }

    /** A part of a stretch between its ends and its openings. */
    private record Part(String name, double from, double to, Optional<Opening> before, Optional<Opening> behind) {}

    /** The sticks of one course from left to right, the returns of its ends among them. */
    List<Fit> along(Course course) {
        List<Fit> fits = new ArrayList<>();
        Grain grain = new Grain(run, course);
        for (int i = 0; i < run.stretches().size(); i++) {
            Stretch stretch = run.stretches().get(i);
            for (Part part : stretch.carries(course.name()) ? parts(stretch, course) : List.<Part>of()) {
                fits.addAll(fits(course, i, part, grain.next(part.before().isPresent())));
            }
        }
        return fits;
    }

    private List<Fit> fits(Course course, int stretch, Part part, Optional<String> group) {
        Optional<Ending> left = endLeft(course, stretch, part);
        Optional<Ending> right = endRight(course, stretch, part);
        Fit fit = new Fit(
                number,
                part.name(),
                course,
                frames.get(stretch),
                part.from(),
                part.to() - part.from(),
                left.map(end -> end(course, end, stretch, turn(course, stretch, part, Hand.LEFT)))
                        .orElseGet(() -> corner(course, stretch, Hand.LEFT)),
                right.map(end -> end(course, end, stretch, turn(course, stretch, part, Hand.RIGHT)))
                        .orElseGet(() -> corner(course, stretch, Hand.RIGHT)),
                group,
                false);
        List<Fit> fits = new ArrayList<>();
        left.flatMap(end -> selfReturn(fit, end, turn(course, stretch, part, Hand.LEFT), Hand.LEFT))
                .ifPresent(fits::add);
        if (clashes.hasRoom(fit, run.stretches().get(stretch))) {
            fits.add(fit);
        }
        right.flatMap(end -> selfReturn(fit, end, turn(course, stretch, part, Hand.RIGHT), Hand.RIGHT))
                .ifPresent(fits::add);
        return fits;
    }

    /** Groups of sticks whose grain runs on: a new one behind every opening. */
    private static final class Grain {
        private final WallRun run;
        private final Course course;
        private int group = 1;

        Grain(WallRun run, Course course) {
            this.run = run;
            this.course = course;
        }

        Optional<String> next(boolean breaks) {
            group += breaks ? 1 : 0;
            return run.grain().contains(course.name())
                    ? Optional.of(run.name() + " " + course.name() + (group == 1 ? "" : " " + group))
                    : Optional.empty();
        }
    }

    private static List<Part> parts(Stretch stretch, Course course) {
        List<Part> parts = new ArrayList<>();
        double from = 0;
        Optional<Opening> before = Optional.empty();
        for (Opening opening : stretch.openings()) {
            if (!opening.interrupts(course.name(), course.asDrawn())) {
                continue;
            }
            String name = stretch.name() + ", left of " + opening.name();
            parts.add(new Part(name, from, opening.from(), before, Optional.of(opening)));
            from = opening.to();
            before = Optional.of(opening);
        }
        String name = before.map(opening -> stretch.name() + ", right of " + opening.name())
                .orElse(stretch.name());
        parts.add(new Part(name, from, stretch.length(), before, Optional.empty()));
        // an opening right at a corner leaves no wall beside it
        return parts.stream()
                .filter(part -> part.to() - part.from() > Tolerance.TOUCHING)
                .toList();
    }

    private Optional<Ending> endLeft(Course course, int stretch, Part part) {
        return part.before().map(Opening::ends).or(() -> stretch == 0 ? run.left(course.name()) : Optional.empty());
    }

    private Optional<Ending> endRight(Course course, int stretch, Part part) {
        boolean last = stretch == run.stretches().size() - 1;
        return part.behind().map(Opening::ends).or(() -> last ? run.right(course.name()) : Optional.empty());
    }

    /** Where a course turns back to the wall if it returns at that end of a part. */
    private ReturnCorners.ReturnCorner turn(Course course, int stretch, Part part, Hand hand) {
        return (hand == Hand.LEFT ? part.before() : part.behind())
                .map(opening -> corners.atOpening(course, run.stretches().get(stretch), opening))
                .orElseGet(() -> corners.atEnd(course, hand));
    }

    /** What a course meets at a corner of the run. */
    private Meeting corner(Course course, int stretch, Hand hand) {
        WallCorner corner = (hand == Hand.LEFT
                        ? run.cornerBefore(stretch)
                        : run.stretches().get(stretch).corner())
                .orElseThrow();
        double own = run.stretches().get(stretch).lean() * course.middle();
        Stretch other = hand == Hand.LEFT ? run.before(stretch) : run.after(stretch);
        double shift = shift(corner, own, other.lean() * course.middle());
        OptionalDouble block = (hand == Hand.LEFT ? other : run.stretches().get(stretch)).block();
        if (block.isPresent()) {
            return Meeting.square(EndCut.Kind.BUTT, -block.getAsDouble(), Stop.BLOCK);
        }
        int before = hand == Hand.LEFT ? Math.floorMod(stretch - 1, frames.size()) : stretch;
        Optional<CopeSide> side = CopeSides.at(run, frames, before);
        boolean through = side.isPresent() && side.get().left() != (hand == Hand.RIGHT);
        OtherWall.Side there = new OtherWall.Side(other, hand == Hand.RIGHT);
        if (!other.carries(course.name())) {
            return corner.inside()
                    // nailers of a wall whose sticks are coped stay clear of the corner
                    ? otherWall
                            .before(course, there, !through)
                            .map(piece -> Meeting.wall(
                                    corner, piece.projection(), shift, Stop.piece(piece.name(), other.name())))
                            .orElseGet(() -> Meeting.wall(corner, 0, shift, Stop.WALL))
                    : Meeting.square(EndCut.Kind.SQUARE, 0, Stop.NOTHING);
        }
        if (side.isEmpty()) {
            return Meeting.miter(EndCut.Kind.MITER, corner, shift);
        }
        return through ? through(course, corner, shift, there) : coped(course, corner, shift, there);
    }

    /** The stick that runs on behind the coped one, square against what stands there already. */
    private Meeting through(Course course, WallCorner corner, double shift, OtherWall.Side there) {
        return otherWall
                .before(course, there, false)
                .map(piece -> Meeting.wall(
                        corner,
                        piece.projection(),
                        shift,
                        Stop.pieceBehindACope(piece.name(), there.stretch().name())))
                .orElseGet(() -> Meeting.wall(corner, 0, shift, Stop.WALL_BEHIND_A_COPE));
    }

    /** The stick that is coped over the other; a plain board butts its face, and blocking leaves room for it. */
    private Meeting coped(Course course, WallCorner corner, double shift, OtherWall.Side there) {
        if (!course.trim()) {
            return otherWall
                    .atLast(course, there)
                    .map(piece -> Meeting.wall(
                            corner,
                            piece.projection(),
                            shift,
                            Stop.clearOf(piece.name(), there.stretch().name())))
                    .orElseGet(() -> Meeting.wall(corner, 0, shift, Stop.WALL));
        }
        return course.plain()
                ? Meeting.wall(
                        corner, course.face(), shift, there.leftEnd() ? Stop.FACE_BEHIND_IT : Stop.FACE_BEFORE_IT)
                : Meeting.miter(EndCut.Kind.COPE, corner, shift);
    }

    /** How far the corner moves along a stretch when both walls stand off their planes: where the two then cross. */
    private static double shift(WallCorner corner, double own, double other) {
        double angle = Math.toRadians(corner.angle());
        double past = (other + own * Math.cos(angle)) / Math.sin(angle);
        return corner.inside() ? -past : past;
    }

    private Meeting end(Course course, Ending end, int stretch, ReturnCorners.ReturnCorner turn) {
        return switch (end.kind()) {
            case RETURN -> course.trim() ? returned(course, turn).inset(turn.inset()) : returned(course, turn);
            case DIE -> {
                double own = run.stretches().get(stretch).lean() * course.middle();
                WallCorner corner = new WallCorner(true, end.corner());
                yield Meeting.wall(corner, 0, shift(corner, own, end.lean() * course.middle()), Stop.WALL);
            }
            case BUTT -> Meeting.square(EndCut.Kind.BUTT, 0, Stop.CASING);
            case BLOCK -> Meeting.square(EndCut.Kind.BUTT, -end.block().orElse(0), Stop.BLOCK);
            case SQUARE -> Meeting.square(EndCut.Kind.SQUARE, 0, Stop.NOTHING);
        };
    }

    private static Meeting returned(Course course, ReturnCorners.ReturnCorner turn) {
        if (!course.trim()) {
            // hidden: its square end fills the corner behind the returns
            return Meeting.square(EndCut.Kind.SQUARE, course.face(), Stop.NOTHING);
        }
        return turn.planted(course)
                ? Meeting.square(EndCut.Kind.SQUARE, course.back(), Stop.NOTHING)
                : Meeting.miter(EndCut.Kind.RETURN, new WallCorner(false, 90), 0);
    }

    /** The piece that turns a course back to the wall, at the end of its stretch. */
    private Optional<Fit> selfReturn(Fit of, Ending end, ReturnCorners.ReturnCorner turn, Hand hand) {
        Course course = of.course();
        if (end.kind() != Ending.Kind.RETURN || !course.trim() || turn.covers(course)) {
            return Optional.empty();
        }
        boolean right = hand == Hand.RIGHT;
        Frame corner = new Frame(
                of.frame().at(right ? of.start() + of.wall() - turn.inset() : of.start() + turn.inset(), 0),
                of.frame().along());
        Meeting joint = turn.planted(course)
                ? Meeting.square(EndCut.Kind.BUTT, course.face(), Stop.PLANTED)
                : returned(course, turn);
        Meeting wall = Meeting.square(EndCut.Kind.BUTT, -turn.stop(), turn.on());
        return Optional.of(new Fit(
                number,
                of.stretch() + ", " + (right ? "right" : "left") + " return",
                course,
                right ? corner.next(0, 90) : corner.before(90),
                0,
                0,
                right ? joint : wall,
                right ? wall : joint,
                of.grainGroup(),
                true));
    }
}
