package buildup.cli.drawing.label;

import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The corners and ends of a job's plan; those alike have one number. */
public final class PlanPlaces {
    private PlanPlaces() {}

    /**
     * A corner or an end.
     *
     * @param run number of the run
     * @param number of this and all places like it, from 1
     * @param words what it is
     * @param frame of the stretch that it is looked at along, begun at the place itself
     * @param corner absent at an end
     * @param ending what the run does here; absent at a corner
     * @param left whether the run begins here
     */
    public record Place(
            int run,
            int number,
            String words,
            Frame frame,
            Optional<WallCorner> corner,
            Optional<Ending> ending,
            boolean left) {
        Place numbered(int own) {
            return new Place(run, own, words, frame, corner, ending, left);
        }
    }

    /** Every corner and end of a plan, with the number that stands beside it. */
    public static List<Place> of(Job job) {
        List<Place> places = new ArrayList<>();
        Map<String, Integer> numbers = new LinkedHashMap<>();
        FigurePrinter printer =
                new FigurePrinter(job.section().stack().lengths().bareUnit());
        for (int r = 0; r < job.plan().runs().size(); r++) {
            int number = r;
            WallRun run = job.plan().runs().get(r);
            List<Frame> frames = job.frames().get(r);
            int last = frames.size() - 1;
            List<Place> own = new ArrayList<>();
            run.left().ifPresent(ending -> own.add(end(frames.get(0), ending, number, true, printer)));
            for (int i = 0; i <= last; i++) {
                Stretch stretch = run.stretches().get(i);
                Frame end = new Frame(
                        frames.get(i).at(stretch.length(), 0), frames.get(i).along());
                Optional<WallCorner> corner = stretch.corner();
                if (corner.isPresent()) {
                    String words = run.opening()
                            ? ofOpening(stretch, printer)
                            : printer.print(corner.get().words()) + " corner" + (run.copesAt(i) ? ", coped" : "");
                    own.add(new Place(number, 0, words, end, corner, Optional.empty(), false));
                } else {
                    own.add(end(end, run.right().orElseThrow(), number, false, printer));
                }
            }
            for (Place place : own) {
                places.add(place.numbered(numbers.computeIfAbsent(place.words(), unseen -> numbers.size() + 1)));
            }
        }
        return places;
    }

    /** Round an opening no wall turns: the pieces meet flat, or on a rosette. */
    private static String ofOpening(Stretch stretch, FigurePrinter printer) {
        String corner = "corner of the opening, "
                + printer.print(stretch.corner().orElseThrow().words());
        return corner + (stretch.block().isPresent() ? ", on a rosette" : ", mitered flat");
    }

    private static Place end(Frame frame, Ending ending, int run, boolean left, FigurePrinter printer) {
        String words = (left ? "left" : "right") + " end: " + printer.print(ending.words());
        return new Place(run, 0, words, frame, Optional.empty(), Optional.of(ending), left);
    }
}
