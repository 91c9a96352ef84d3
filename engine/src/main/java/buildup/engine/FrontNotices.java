package buildup.engine;

import buildup.engine.room.stock.StickNotices;
import buildup.engine.section.stack.StackNotices;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the front door itself has to say. */
public final class FrontNotices {
    static final Kind FRAMING_ALONE = StackNotices.EMPTY_STACK.refusal(
            "The stack holds framing alone: there is nothing to measure.", "Add pieces of kind trim or nailer.");

    /** Said where a plan is needed. */
    public static final Code NO_PLAN = Code.of("no-plan", "What was asked for needs a plan of the walls.");

    static final Kind NOTHING_TO_CUT = NO_PLAN.refusal(
            "The stack holds no plan: there is nothing to cut to length.",
            "Add one, as 'plan: [{{ left: return, right: return, stretches: [{{ length: 96 }] }]'.");

    static final Kind STICKS_UNKNOWN = StickNotices.NO_STOCK.problem(
            "No stock is given: lengths are known, sticks are not.",
            "Add it, as 'stock: {{ sticks: [{{ of: 1x6, buy: [8', 12'] }] }'.");

    /** In place of a cure that brings something else. {@code cure}: it; {@code worse}: what it brings. */
    static final Phrase CURE_BRINGS = Phrase.of("{cure} That alone{as} brings another problem: {worse}");

    /** The same, where that was wrong before, and less so. */
    static final Phrase CURE_WORSENS = Phrase.of("{cure} That alone{as} makes another problem worse: {worse}");

    static final Phrase AS_ROW = Phrase.of(", called '{name}',");

    /** Two ways out that only together are one. */
    static final Phrase BOTH = Phrase.of("{cure} {then}");

    /** Of what comes right with another problem. {@code what}: that is about; {@code cure}: its cure. */
    static final Phrase COMES_RIGHT = Phrase.of("It comes right with {what}. {cure}");

    private FrontNotices() {}
}
