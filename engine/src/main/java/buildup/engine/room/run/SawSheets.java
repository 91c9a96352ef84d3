package buildup.engine.room.run;

import buildup.engine.room.run.Saw.Hand;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Sheet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The settings of the saw, those that are alike said once, as sheets. */
final class SawSheets {
    private static final Phrase KIND = Phrase.of("{kind}: {how}");

    /** A cut at one end of a stick. */
    private record Made(Hand hand, EndCut cut) {
        Phrase how() {
            return cut.kind() == EndCut.Kind.SQUARE
                    ? cut.words()
                    : KIND.with("kind", cut.kind().word()).with("how", cut.words());
        }
    }

    /** A cut of one piece against the fence. */
    private record Nested(String course, Hand hand, Saw.Setting setting) {}

    /** Where a cut is made: the pieces and the stretches, in their order. */
    private record Where(Set<String> courses, Set<String> stretches) {
        static Where nowhere() {
            return new Where(new LinkedHashSet<>(), new LinkedHashSet<>());
        }

        void add(Job job, Fit fit) {
            courses.add(fit.course().name());
            stretches.add(job.stretchName(fit));
        }
    }

    private SawSheets() {}

    /** @param job absent when there is none; the columns are known all the same */
    static List<Sheet> of(Optional<Job> job) {
        return List.of(saw(job), fence(job));
    }

    private static Sheet saw(Optional<Job> job) {
        Map<Made, Where> places = new LinkedHashMap<>();
        job.ifPresent(one -> one.fits().forEach(fit -> {
            for (Hand hand : Hand.values()) {
                places.computeIfAbsent(new Made(hand, fit.cut(hand)), unseen -> Where.nowhere())
                        .add(one, fit);
            }
        }));
        String title = "SAW, blade tilted to the left; degrees of miter and bevel are for the stick flat on the table";
        return Sheet.of("saw", title, List.copyOf(places.entrySet()))
                .names(
                        "courses",
                        "pieces",
                        entry -> List.copyOf(entry.getValue().courses()))
                .words("end", "end", entry -> entry.getKey().hand().word())
                .words("on", "on", entry -> String.join("; ", entry.getValue().stretches()))
                .measure(
                        "miter",
                        "miter",
                        Quantity.ANGLE,
                        entry -> entry.getKey().cut().miter())
                .measure(
                        "bevel",
                        "bevel",
                        Quantity.ANGLE,
                        entry -> entry.getKey().cut().bevel())
                .saying("how", "how", entry -> entry.getKey().how())
                .people()
                .sheet();
    }

    private static Sheet fence(Optional<Job> job) {
        Map<Nested, Where> places = new LinkedHashMap<>();
        job.ifPresent(one -> one.fits().forEach(fit -> {
            for (Hand hand : Hand.values()) {
                fit.nested(hand)
                        .map(setting -> new Nested(fit.course().name(), hand, setting))
                        .ifPresent(nested -> places.computeIfAbsent(nested, unseen -> Where.nowhere())
                                .add(one, fit));
            }
        }));
        return Sheet.of("fence", "SAW, against the fence, as they stand on the wall", List.copyOf(places.entrySet()))
                .words("course", "piece", entry -> entry.getKey().course())
                .words("end", "end", entry -> entry.getKey().hand().word())
                .words("on", "on", entry -> String.join("; ", entry.getValue().stretches()))
                .measure(
                        "miter",
                        "miter",
                        Quantity.ANGLE,
                        entry -> entry.getKey().setting().miter())
                .saying("how", "how", entry -> entry.getKey().setting().words())
                .people()
                .sheet();
    }
}
