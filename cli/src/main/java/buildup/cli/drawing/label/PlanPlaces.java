package buildup.cli.drawing.label;

import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
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
     * @param words what it is, line by line
     * @param frame of the stretch that it is looked at along, begun at the place itself
     * @param corner absent at an end
     * @param endings what the pieces of the run do here, each once; none at a corner
     * @param left whether the run begins here
     */
    public record Place(
            int run,
            int number,
            List<String> words,
            Frame frame,
            Optional<WallCorner> corner,
            List<Ending> endings,
            boolean left) {
        public Place {
            words = List.copyOf(words);
            endings = List.copyOf(endings);
        }

        Place numbered(int own) {
            return new Place(run, own, words, frame, corner, endings, left);
        }
    }

    /** Every corner and end of a plan, with the number that stands beside it. */
    public static List<Place> of(Job job) {
        List<Place> places = new ArrayList<>();
        Map<List<String>, Integer> numbers = new LinkedHashMap<>();
        FigurePrinter printer =
                new FigurePrinter(job.section().stack().lengths().bareUnit());
        for (int r = 0; r < job.plan().runs().size(); r++) {
            int number = r;
            WallRun run = job.plan().runs().get(r);
            List<Frame> frames = job.frames().get(r);
            int last = frames.size() - 1;
            List<Place> own = new ArrayList<>();
            run.left().ifPresent(unused -> own.add(end(job, number, frames.get(0), true, printer)));
            for (int i = 0; i <= last; i++) {
                Stretch stretch = run.stretches().get(i);
                Frame end = new Frame(
                        frames.get(i).at(stretch.length(), 0), frames.get(i).along());
                Optional<WallCorner> corner = stretch.corner();
                if (corner.isPresent()) {
                    String words = run.opening()
                            ? ofOpening(stretch, printer)
                            : printer.print(corner.get().words()) + " corner" + (run.copesAt(i) ? ", coped" : "");
                    own.add(new Place(number, 0, List.of(words), end, corner, List.of(), false));
                } else {
                    own.add(end(job, number, end, false, printer));
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

    /** An end: in one line where all trim ends alike, else in one line for the pieces that do. */
    private static Place end(Job job, int number, Frame frame, boolean left, FigurePrinter printer) {
        WallRun run = job.plan().runs().get(number);
        Stretch stretch = run.stretches().get(left ? 0 : run.stretches().size() - 1);
        Map<String, List<String>> names = new LinkedHashMap<>();
        Map<String, Ending> endings = new LinkedHashMap<>();
        for (Course course : job.courses()) {
            if (course.trim() && stretch.carries(course.name())) {
                Ending ending = (left ? run.left(course.name()) : run.right(course.name())).orElseThrow();
                String does = printer.print(ending.words());
                endings.putIfAbsent(does, ending);
                names.computeIfAbsent(does, unseen -> new ArrayList<>()).add(course.name());
            }
        }
        if (endings.isEmpty()) {
            Ending own = (left ? run.left() : run.right()).orElseThrow();
            endings.put(printer.print(own.words()), own);
        }
        String side = (left ? "left" : "right") + " end";
        List<String> words = new ArrayList<>();
        if (endings.size() == 1) {
            words.add(side + ": " + endings.keySet().iterator().next());
        } else {
            words.add(side);
            names.forEach((does, pieces) -> words.add(String.join(", ", pieces) + ": " + does));
        }
        return new Place(number, 0, words, frame, Optional.empty(), List.copyOf(endings.values()), left);
    }
}
