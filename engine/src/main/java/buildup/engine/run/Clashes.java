package buildup.engine.run;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what finds no room along one run. */
final class Clashes {
    /** Shop practice, no source: a nail this near to both ends of a stick splits it, in. */
    static final double SHORTEST_NAILED = 3;

    private final Run run;
    private final Notices notices;

    Clashes(Run run, Notices notices) {
        this.run = run;
        this.notices = notices;
    }

    /** Whether a stick has any length at its back and at its face; else it is said. */
    boolean hasRoom(Fit fit, Stretch stretch) {
        double least = Math.min(fit.backLength(), fit.faceLength());
        if (least > Tolerance.TOUCHING) {
            return true;
        }
        double needed = fit.wall() - least;
        notices.add(Notice.problem(
                        "return-longer-than-its-wall",
                        "'" + fit.course().name() + "' needs " + Wording.atLeast(needed) + " on '" + fit.stretch()
                                + "' to come round its ends, the wall ends at " + Wording.atMost(fit.wall()) + ".")
                .at(stretch.mark())
                .of(fit.course().name())
                .amount(Length.inches(-least))
                .cure("Shorten the projection, or end the run before this wall."));
        return false;
    }

    /** Sticks of one course that are not neighbours and yet meet in plan. */
    void crossing(Course course, List<Fit> fits, boolean closed) {
        double x = course.face();
        for (int i = 0; i < fits.size(); i++) {
            for (int j = i + 2; j < fits.size(); j++) {
                boolean round = closed && i == 0 && j == fits.size() - 1;
                Fit a = fits.get(i);
                Fit b = fits.get(j);
                if (!round && crosses(a.left(x), a.right(x), b.left(x), b.right(x))) {
                    notices.add(Notice.problem(
                                    "returns-collide",
                                    "'" + course.name() + "' on '" + a.stretch() + "' runs into itself on '"
                                            + b.stretch() + "'.")
                            .at(run.mark())
                            .of(course.name())
                            .amount(Length.inches(x))
                            .cure("Shorten the projection of " + Wording.near(x) + ", or end the run between them."));
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
        ends().filter(end -> end.kind() == Ending.Kind.RETURN)
                .forEach(end -> trim.forEach(course -> longerThanWall(course, end)));
        allEnds().forEach(end -> end.casing().ifPresent(casing -> trim.forEach(course -> proud(course, casing, end))));
        for (Stretch stretch : run.stretches()) {
            for (Opening opening : stretch.openings()) {
                if (opening.ends().kind() == Ending.Kind.RETURN) {
                    trim.forEach(course -> collide(course, opening));
                }
            }
        }
        if (allEnds().anyMatch(end -> end.kind() == Ending.Kind.RETURN)) {
            trim.stream().filter(Fitting::planted).forEach(this::plant);
            glue(trim.stream()
                    .filter(course -> !Fitting.planted(course) && course.face() < SHORTEST_NAILED)
                    .map(course -> "'" + course.name() + "'")
                    .collect(Collectors.joining(", ")));
        }
    }

    private Stream<Ending> ends() {
        return Stream.of(run.left(), run.right()).flatMap(Optional::stream);
    }

    private Stream<Ending> allEnds() {
        return Stream.concat(
                ends(),
                run.stretches().stream()
                        .flatMap(stretch -> stretch.openings().stream())
                        .map(Opening::ends));
    }

    private void longerThanWall(Course course, Ending end) {
        end.room().ifPresent(room -> {
            double over = course.face() - room;
            if (over > Tolerance.COINCIDENT) {
                add(
                        "return-longer-than-its-wall",
                        "'" + course.name() + "': return needs " + Wording.atLeast(course.face()) + ", wall ends at "
                                + Wording.atMost(room) + ".",
                        "Shorten the projection by " + Wording.atLeast(over) + " or die into the wall.",
                        course,
                        over,
                        end.mark());
            }
        });
    }

    private void collide(Course course, Opening opening) {
        double width = opening.to() - opening.from();
        double over = 2 * course.face() - width;
        if (over > Tolerance.COINCIDENT) {
            add(
                    "returns-collide",
                    "'" + course.name() + "': its returns on both sides of '" + opening.name() + "' need "
                            + Wording.atLeast(2 * course.face()) + ", and there is " + Wording.atMost(width) + ".",
                    "Shorten the projection by " + Wording.atLeast(over / 2) + ", or carry the course across.",
                    course,
                    over,
                    opening.mark());
        }
    }

    private void proud(Course course, double casing, Ending end) {
        double over = course.face() - casing;
        if (over > Tolerance.TOUCHING) {
            notices.add(Notice.note(
                            "end-shows",
                            "'" + course.name() + "' stands " + Wording.near(over)
                                    + " proud of the casing that it butts: its end grain shows.")
                    .at(end.mark())
                    .of(course.name())
                    .amount(Length.inches(over))
                    .cure("Return it, or thicken the casing with a backband."));
        }
    }

    private void plant(Course course) {
        add(
                "self-return-shorter-than-its-thickness",
                "'" + course.name() + "': return " + Wording.near(course.face()) + " long and "
                        + Wording.near(course.thickness()) + " thick: cannot be mitred.",
                "Plant it: cut the course square and glue the return across its end.",
                course,
                course.thickness() - course.face(),
                run.mark());
    }

    private void glue(String names) {
        if (!names.isEmpty()) {
            notices.add(Notice.note(
                            "return-too-short-to-nail",
                            "The returns of " + names + " are shorter than " + Wording.near(SHORTEST_NAILED)
                                    + ": a nail would split them, and end grain holds none.")
                    .at(run.mark())
                    .amount(Length.inches(SHORTEST_NAILED))
                    .cure("Glue them, and pin at most."));
        }
    }

    private void add(String code, String message, String cure, Course course, double amount, Mark mark) {
        notices.add(Notice.problem(code, message)
                .at(mark)
                .of(course.name())
                .amount(Length.inches(amount))
                .cure(cure));
    }
}
