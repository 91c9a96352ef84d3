package buildup.engine.room.cope;

import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.CopeSide;
import buildup.engine.room.run.CopeSides;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Asks how the copes of a job are cut and how sharp they become; {@link CopeEdge} has the formula. */
public final class Copes {
    private Copes() {}

    /** One for each coped end, with a notice for each piece whose edge becomes too thin. */
    public static List<Cope> of(Section section, Optional<Job> job, Notices notices) {
        List<Cope> all = new ArrayList<>();
        job.ifPresent(known -> known.fits().forEach(fit -> {
            for (Hand hand : Hand.values()) {
                if (fit.cut(hand).kind() == EndCut.Kind.COPE) {
                    cope(section, known, fit, hand).ifPresent(all::add);
                }
            }
        }));
        say(all, notices);
        return List.copyOf(all);
    }

    private static Optional<Cope> cope(Section section, Job job, Fit fit, Hand hand) {
        WallRun run = job.plan().runs().get(fit.run());
        List<Frame> frames = job.frames().get(fit.run());
        int own = frames.indexOf(fit.frame());
        int corner = hand == Hand.RIGHT ? own : Math.floorMod(own - 1, frames.size());
        int other = hand == Hand.RIGHT ? (own + 1) % frames.size() : corner;
        Optional<CopeSide> side = CopeSides.at(run, frames, corner);
        CopeEdge edge = CopeEdge.of(section, fit.course().body(), fit.cut(hand).corner());
        return side.map(chosen -> new Cope(
                run.name(),
                fit.stretch(),
                run.stretches().get(other).name(),
                fit,
                hand == Hand.RIGHT,
                chosen,
                fit.cut(hand).corner(),
                edge.angle(),
                edge.at()));
    }

    /** Once for a piece and a corner, with every place where they meet. */
    private static void say(List<Cope> copes, Notices notices) {
        Map<String, List<Cope>> alike = new LinkedHashMap<>();
        copes.stream()
                .filter(Cope::thin)
                .forEach(cope -> alike.computeIfAbsent(
                                cope.fit().course().name() + " " + cope.corner(), unseen -> new ArrayList<>())
                        .add(cope));
        alike.values().forEach(ends -> {
            Cope first = ends.get(0);
            notices.add(CopeNotices.THIN
                    .with("corner", Figure.angle(first.corner()))
                    .with("stretches", names(ends, Cope::stretch))
                    .with("before", names(ends, Cope::before))
                    .with("at", first.at())
                    .with("least", Figure.angle(Cope.THIN))
                    .of(first.fit().course().name())
                    .amount(Figure.angle(first.edge())));
        });
    }

    private static Listing names(List<Cope> ends, Function<Cope, String> which) {
        return Listing.and(ends.stream()
                .map(which)
                .distinct()
                .map(name -> Phrase.of("'{name}'").with("name", name))
                .toList());
    }
}
