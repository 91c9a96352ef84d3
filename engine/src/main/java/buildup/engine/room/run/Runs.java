package buildup.engine.room.run;

import buildup.engine.room.plan.Plan;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;

/** Asks what becomes of a section along a plan. */
public final class Runs {
    /** A plan is measured with a tape: ends nearer than this meet, in. */
    private static final double CLOSES_WITHIN = 0.125;

    /** Angles of a plan that closes sum up to a full turn within this, degrees. */
    private static final double TURNS_WITHIN = 0.5;

    private Runs() {}

    /** The job, with notices for whatever finds no room, cannot be mitred or does not close. */
    public static Job of(Section section, Plan plan, Notices notices) {
        List<Course> courses = Course.of(section);
        List<List<Frame>> frames = new ArrayList<>();
        List<Fit> fits = new ArrayList<>();
        List<Lean> leans = new ArrayList<>();
        List<RevealShift> shifts = new ArrayList<>();
        for (int i = 0; i < plan.runs().size(); i++) {
            WallRun run = plan.runs().get(i);
            List<Frame> walls = frames(run, notices);
            frames.add(walls);
            List<Fit> ofRun = new ArrayList<>();
            List<Course> own =
                    run.opening() ? courses.stream().map(Course::roundAnOpening).toList() : courses;
            ReturnCorners corners = new ReturnCorners(run, own);
            Clashes clashes = new Clashes(run, corners, notices);
            RunFitting fitting = new RunFitting(i, run, walls, new OtherWall(section, own), corners, clashes);
            for (Course course : own) {
                List<Fit> along = fitting.along(course);
                clashes.crossing(
                        course, along.stream().filter(fit -> !fit.selfReturn()).toList(), run.closed());
                ofRun.addAll(along);
            }
            clashes.tooShortToHold(ofRun);
            fits.addAll(ofRun);
            clashes.ofReturns(own);
            clashes.ofSquareEnds(own);
            for (Stretch stretch : run.stretches()) {
                if (Math.abs(stretch.lean()) > 0) {
                    courses.forEach(course -> leans.add(lean(run, stretch, course)));
                    shifts.addAll(shifts(run, stretch, courses, section));
                }
            }
        }
        return new Job(section, plan, courses, frames, fits, leans, shifts);
    }

    private static List<Frame> frames(WallRun run, Notices notices) {
        List<Frame> frames = new ArrayList<>();
        Frame frame = new Frame(Point.ORIGIN, new Point(1, 0));
        double turned = 0;
        for (Stretch stretch : run.stretches()) {
            frames.add(frame);
            double turn = stretch.corner().map(WallCorner::turn).orElse(0.0);
            frame = frame.next(stretch.length(), turn);
            turned += turn;
        }
        if (run.closed()) {
            double gap = frame.start().distance(Point.ORIGIN);
            double off = Math.abs(Math.abs(turned) - 360);
            if (gap > CLOSES_WITHIN || off > TURNS_WITHIN) {
                notices.add(RunNotices.DOES_NOT_CLOSE
                        .with("run", run.name())
                        .with("turned", Figure.angle(Math.abs(turned)))
                        .with("round", Figure.angle(360))
                        .at(run.mark())
                        .amount(Figure.length(gap)));
            }
        }
        return frames;
    }

    private static Lean lean(WallRun run, Stretch stretch, Course course) {
        return new Lean(
                run.name(),
                stretch.name(),
                course.body(),
                stretch.lean() * course.box().bottom(),
                stretch.lean() * course.box().top());
    }

    private static List<RevealShift> shifts(WallRun run, Stretch stretch, List<Course> courses, Section section) {
        List<RevealShift> shifts = new ArrayList<>();
        for (Reveal reveal : section.reveals()) {
            double rise = middle(courses, reveal.piece()) - middle(courses, reveal.over());
            boolean level = reveal.along() == Reveal.Along.LEVEL && reveal.amount() > Tolerance.TOUCHING;
            shifts.add(new RevealShift(
                    run.name(),
                    stretch.name(),
                    reveal.piece(),
                    reveal.over(),
                    reveal.amount(),
                    level ? stretch.lean() * rise : 0));
        }
        return shifts;
    }

    private static double middle(List<Course> courses, int body) {
        return courses.stream()
                .filter(course -> course.body() == body)
                .mapToDouble(Course::middle)
                .findFirst()
                .orElse(0);
    }
}
