package buildup.engine.hold.season;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.season.Year.Movement;
import buildup.engine.look.joint.OpenJoint;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes a stack through its seasons. Reads its own block of the document, {@code seasons:}. */
public final class Seasons {
    private Seasons() {}

    /**
     * The seasons in the order of the document; the first is the one in which the sizes of the stack hold.
     *
     * @param root the document
     */
    public static List<Season> read(Stack stack, Fields root, Notices notices) {
        return SeasonReader.read(stack, root, notices);
    }

    /**
     * What the seasons do to a section, with notices for what they spoil.
     *
     * @param fixed what the fastenings do in it
     * @param gaps slots between neighbors
     * @param job the section along its plan, whose corners are looked at
     */
    public static Year of(
            Section section,
            List<Season> seasons,
            List<Fixed> fixed,
            List<OpenJoint> gaps,
            Optional<Job> job,
            Notices notices) {
        if (seasons.size() < 2) {
            return Year.NONE;
        }
        List<Held> held = new Holders(section, fixed).all();
        List<List<Moved>> moved = new ArrayList<>();
        List<Movement> movements = new ArrayList<>();
        List<Effect> effects = new ArrayList<>();
        NailPairs nails = new NailPairs(section, fixed);
        for (int i = 0; i < seasons.size(); i++) {
            List<Moved> now = Moves.of(section, held, seasons.get(0), seasons.get(i));
            moved.add(now);
            if (i > 0) {
                movements.addAll(movements(section, held, i, now));
                effects.addAll(Effects.of(section, gaps, i, now));
                effects.addAll(nails.of(i, now));
                int season = i;
                job.ifPresent(found -> effects.addAll(new Miters(section, found).of(season, now)));
            }
        }
        Year year = new Year(seasons, held, moved, movements, effects, unknown(section, held));
        new SeasonFaults(section, year, fixed, notices).say();
        return year;
    }

    private static List<Movement> movements(Section section, List<Held> held, int season, List<Moved> moved) {
        List<Movement> movements = new ArrayList<>();
        for (Held one : held) {
            Box built = section.body(one.body()).outline().box();
            Box now = moved.get(one.body()).box(section.body(one.body()).outline());
            movements.add(new Movement(season, one.body(), true, tidy(now.height() - built.height())));
            movements.add(new Movement(season, one.body(), false, tidy(now.width() - built.width())));
        }
        return movements;
    }

    /** What is left of rounding is no movement. */
    private static double tidy(double amount) {
        return Math.abs(amount) < Tolerance.COINCIDENT ? 0 : amount;
    }

    private static List<Integer> unknown(Section section, List<Held> held) {
        return held.stream()
                .map(Held::body)
                .filter(body -> section.body(body)
                        .placed()
                        .filter(placed -> Growth.coefficient(
                                                placed.piece().wood(),
                                                placed.piece().sawn(),
                                                true)
                                        .isEmpty()
                                || Growth.coefficient(
                                                placed.piece().wood(),
                                                placed.piece().sawn(),
                                                false)
                                        .isEmpty())
                        .isPresent())
                .toList();
    }
}
