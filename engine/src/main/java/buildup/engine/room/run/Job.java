package buildup.engine.room.run;

import buildup.engine.room.plan.Plan;
import buildup.engine.section.compose.Section;
import java.util.List;

/**
 * A section run along a plan.
 *
 * @param courses what is put up, in order
 * @param frames for each run the frames of its stretches; each run has a plan of its own
 * @param fits run by run, course by course, from left to right; a course without room on a stretch has none there
 * @param leans for each course on a wall out of plumb
 * @param shifts for each reveal on a wall out of plumb
 */
public record Job(
        Section section,
        Plan plan,
        List<Course> courses,
        List<List<Frame>> frames,
        List<Fit> fits,
        List<Lean> leans,
        List<RevealShift> shifts) {
    public Job {
        courses = List.copyOf(courses);
        frames = frames.stream().map(List::copyOf).toList();
        fits = List.copyOf(fits);
        leans = List.copyOf(leans);
        shifts = List.copyOf(shifts);
    }

    /** The sticks to be cut, in the order of the fits. */
    public List<Cut> cuts() {
        return fits.stream().map(Fit::toCut).toList();
    }

    /** The name of the run that a fit lies on. */
    public String runName(Fit fit) {
        return plan.runs().get(fit.run()).name();
    }

    /** The stretch that a fit lies on, with its run before it when there are several. */
    public String stretchName(Fit fit) {
        return plan.runs().size() == 1 ? fit.stretch() : runName(fit) + ": " + fit.stretch();
    }

    /** Sum of the face lengths of a course on one run, returns of its ends included. */
    public double faceLength(int run, int body) {
        return fits.stream()
                .filter(fit -> fit.run() == run && fit.course().body() == body)
                .mapToDouble(Fit::faceLength)
                .sum();
    }
}
