package buildup.engine.room.run;

import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Opening;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says what finds no room along one run. */
final class Clashes {
    /** Shop practice, no source: a nail this near to both ends of a stick splits it, in. */
    static final double SHORTEST_NAILED = 3;

    /** A hand stays so far from either side of the blade of a miter saw, in: the manuals of three makers of saws. */
    private static final double HAND_FROM_BLADE = 4;

    private final WallRun run;
    private final ReturnCorners corners;
    private final Notices notices;

    Clashes(WallRun run, ReturnCorners corners, Notices notices) {
        this.run = run;
        this.corners = corners;
        this.notices = notices;
    }

    /** Whether a stick has any length at its back and at its face; else it is said. */
    boolean hasRoom(Fit fit, Stretch stretch) {
        double least = Math.min(fit.backLength(), fit.faceLength());
        if (least > Tolerance.TOUCHING) {
            return true;
        }
        double needed = fit.wall() - least;
        add(
                RunNotices.NO_ROOM_ON_ITS_WALL
                        .with("needs", Figure.atLeast(needed))
                        .with("stretch", fit.stretch())
                        .with("wall", Figure.atMost(fit.wall()))
                        .amount(Figure.length(-least)),
                fit.course(),
                stretch.mark());
        return false;
    }

    /** Sticks of one course that are not neighbors and yet meet in plan. */
    void crossing(Course course, List<Fit> fits, boolean closed) {
        double x = course.face();
        for (int i = 0; i < fits.size(); i++) {
            for (int j = i + 2; j < fits.size(); j++) {
                boolean round = closed && i == 0 && j == fits.size() - 1;
                Fit a = fits.get(i);
                Fit b = fits.get(j);
                if (!round && crosses(a.left(x), a.right(x), b.left(x), b.right(x))) {
                    add(
                            RunNotices.RUNS_INTO_ITSELF
                                    .with("stretch", a.stretch())
                                    .with("other", b.stretch())
                                    .amount(Figure.length(x)),
                            course,
                            run.mark());
                }
            }
        }
    }

    private static boolean crosses(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point p) {
        return Math.signum(b.minus(a).cross(p.minus(a)));
    }

    /** What is wrong with the returns of the run's ends and of its openings, and with ends that show. */
    void ofReturns(List<Course> courses) {
        List<Course> trim = courses.stream().filter(Course::trim).toList();
        for (Course course : trim) {
            for (Hand hand : Hand.values()) {
                end(course, hand)
                        .filter(end -> end.kind() == Ending.Kind.RETURN && carries(course, hand))
                        .ifPresent(end -> {
                            longerThanWall(course, hand, end, courses);
                            besideACasing(course, hand, end);
                        });
            }
        }
        for (Course course : trim) {
            allEnds(course).forEach(end -> end.casing().ifPresent(casing -> proud(course, casing, end)));
        }
        for (Stretch stretch : run.stretches()) {
            for (Opening opening : stretch.openings()) {
                if (opening.ends().kind() == Ending.Kind.RETURN) {
                    trim.stream()
                            .filter(course -> opening.interrupts(course.name(), course.asDrawn()))
                            .forEach(course -> collide(course, stretch, opening));
                }
            }
        }
        List<Course> returned = trim.stream()
                .filter(course -> allEnds(course).anyMatch(end -> end.kind() == Ending.Kind.RETURN))
                .toList();
        if (!returned.isEmpty()) {
            returned.stream()
                    .filter(course -> shortest(course) < course.thickness() - Tolerance.TOUCHING)
                    .forEach(this::plant);
            glue(returned.stream()
                    .filter(course -> shortest(course) >= course.thickness() - Tolerance.TOUCHING
                            && shortest(course) < SHORTEST_NAILED)
                    .map(course -> RunNotices.QUOTED.with("piece", course.name()))
                    .toList());
        }
    }

    /** What a run that is cut square in the open shows of its nailers; round an opening such an end stands on the floor. */
    void ofSquareEnds(List<Course> courses) {
        List<Course> square = courses.stream()
                .filter(course -> Stream.of(Hand.values())
                        .anyMatch(hand -> carries(course, hand)
                                && end(course, hand)
                                        .filter(end -> end.kind() == Ending.Kind.SQUARE)
                                        .isPresent()))
                .toList();
        List<Phrase> raw = square.stream()
                .filter(course -> !course.trim())
                .map(course -> RunNotices.QUOTED.with("piece", course.name()))
                .toList();
        // nailers alone are no trim yet
        if (!run.opening() && !raw.isEmpty() && square.stream().anyMatch(Course::trim)) {
            notices.add(RunNotices.RAW_END_SHOWS
                    .with("run", run.name())
                    .with("names", Listing.and(List.copyOf(raw)))
                    .at(run.mark()));
        }
    }

    /** The length of a course's shortest return at its face; those that nothing is left of have a notice of their own. */
    private double shortest(Course course) {
        return Stream.of(Hand.values())
                .filter(hand -> carries(course, hand) && returns(course, hand))
                .map(hand -> corners.atEnd(course, hand))
                .filter(corner -> !corner.covers(course))
                .mapToDouble(corner -> Math.min(course.face(), corner.length(course)))
                .min()
                .orElse(course.face());
    }

    private boolean returns(Course course, Hand hand) {
        return end(course, hand).filter(end -> end.kind() == Ending.Kind.RETURN).isPresent();
    }

    private Stream<Ending> ends(Course course) {
        return Stream.of(Hand.values()).flatMap(hand -> end(course, hand).stream());
    }

    private Optional<Ending> end(Course course, Hand hand) {
        return hand == Hand.LEFT ? run.left(course.name()) : run.right(course.name());
    }

    private boolean carries(Course course, Hand hand) {
        int last = run.stretches().size() - 1;
        return run.stretches().get(hand == Hand.LEFT ? 0 : last).carries(course.name());
    }

    private Stream<Ending> allEnds(Course course) {
        return Stream.concat(
                ends(course),
                run.stretches().stream()
                        .filter(stretch -> stretch.carries(course.name()))
                        .flatMap(stretch -> stretch.openings().stream())
                        .filter(opening -> opening.interrupts(course.name(), course.asDrawn()))
                        .map(Opening::ends));
    }

    private void longerThanWall(Course course, Hand hand, Ending end, List<Course> courses) {
        double past = course.face() - corners.atEnd(course, hand).inset();
        end.room().ifPresent(room -> {
            double over = past - room;
            if (over > Tolerance.COINCIDENT) {
                add(
                        RunNotices.RETURN_TOO_LONG
                                .with("needs", Figure.atLeast(past))
                                .with("wall", Figure.atMost(room))
                                .with("by", Figure.atLeast(over))
                                .amount(Figure.length(over)),
                        course,
                        end.mark());
            }
        });
        // another piece that dies there tells of a wall
        courses.stream()
                .filter(other -> carries(other, hand))
                .filter(other -> end(other, hand)
                        .filter(one -> one.kind() == Ending.Kind.DIE)
                        .isPresent())
                .findFirst()
                .ifPresent(other -> add(
                        RunNotices.RETURNS_INTO_A_WALL
                                .with("hand", hand.word())
                                .with("other", other.name())
                                .amount(Figure.length(past)),
                        course,
                        end.mark()));
    }

    /** A return stops on the casing that another piece butts there. */
    private void besideACasing(Course course, Hand hand, Ending end) {
        corners.butting(course, hand)
                .filter(other -> end(other, hand).orElseThrow().casing().isEmpty())
                .findFirst()
                .ifPresent(other -> add(
                        RunNotices.RETURNS_ON_A_CASING
                                .with("hand", hand.word())
                                .with("other", other.name())
                                .amount(Figure.length(course.face())),
                        course,
                        end.mark()));
        ReturnCorners.ReturnCorner corner = corners.atEnd(course, hand);
        if (corner.covers(course)) {
            add(
                    RunNotices.CASING_COVERS
                            .with("hand", hand.word())
                            .with("casing", Figure.length(corner.stop()))
                            .amount(Figure.length(Math.max(0, -corner.length(course)))),
                    course,
                    end.mark());
        }
    }

    private void collide(Course course, Stretch stretch, Opening opening) {
        double width = opening.to() - opening.from();
        double both =
                2 * (course.face() - corners.atOpening(course, stretch, opening).inset());
        double over = both - width;
        if (over > Tolerance.COINCIDENT) {
            add(
                    RunNotices.RETURNS_MEET
                            .with("opening", opening.name())
                            .with("needs", Figure.atLeast(both))
                            .with("has", Figure.atMost(width))
                            .with("by", Figure.atLeast(over / 2))
                            .amount(Figure.length(over)),
                    course,
                    opening.mark());
        }
    }

    private void proud(Course course, double casing, Ending end) {
        double over = course.face() - casing;
        if (over > Tolerance.TOUCHING) {
            // what is shorter than it is thick cannot be returned by a miter
            Notice shows = RunNotices.END_GRAIN_SHOWS.notice().amount(Figure.length(over));
            add(
                    over < course.thickness() - Tolerance.TOUCHING ? shows.cure(RunNotices.THICKEN) : shows,
                    course,
                    end.mark());
        }
    }

    private void plant(Course course) {
        add(
                RunNotices.CANNOT_BE_MITERED
                        .with("length", Figure.length(shortest(course)))
                        .with("thickness", Figure.length(course.thickness()))
                        .amount(Figure.length(course.thickness() - shortest(course))),
                course,
                run.mark());
    }

    private void glue(List<Phrase> names) {
        if (!names.isEmpty()) {
            notices.add(RunNotices.GLUED
                    .with("names", Listing.commas(names))
                    .at(run.mark())
                    .amount(Figure.thumb(SHORTEST_NAILED)));
        }
    }

    /** Pieces so short that whoever holds them has a hand too near the blade. */
    void tooShortToHold(List<Fit> fits) {
        List<Phrase> pieces = fits.stream()
                .filter(fit -> fit.longPoint() < HAND_FROM_BLADE - Tolerance.TOUCHING)
                .map(fit -> RunNotices.SHORT_PIECE
                        .with("piece", fit.course().name())
                        .with("stretch", fit.stretch())
                        .with("length", Figure.length(fit.longPoint())))
                .toList();
        if (!pieces.isEmpty()) {
            notices.add(RunNotices.TOO_SHORT_TO_HOLD
                    .with("pieces", Listing.commas(pieces))
                    .with("hand", Figure.atLeast(HAND_FROM_BLADE))
                    .at(run.mark()));
        }
    }

    private void add(Notice notice, Course course, Mark mark) {
        notices.add(notice.at(mark).of(course.name()));
    }
}
