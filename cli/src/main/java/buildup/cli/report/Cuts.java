package buildup.cli.report;

import buildup.engine.run.Coving;
import buildup.engine.run.Job;
import buildup.engine.sticks.CutList;
import buildup.engine.sticks.Limit;
import buildup.engine.sticks.Shop;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/**
 * What is known of the cuts of a stack.
 *
 * @param answer of the stack, its notices those of the cuts too; without figures when something was refused
 * @param list the sticks; absent when the stack names no stock
 */
public record Cuts(Answer answer, Optional<Known> known) {
    /** The job and what it takes. */
    public record Known(Job job, List<Coving> covings, Optional<CutList> list) {
        public Known {
            covings = List.copyOf(covings);
        }
    }

    /**
     * Lays out the cuts of a stack along its plan.
     *
     * @param notices of the run so far; more are added
     */
    public static Cuts of(Answer answer, Limit limit, Notices notices) {
        if (answer.known().isEmpty()) {
            return new Cuts(answer.refused(notices.sorted()), Optional.empty());
        }
        Answer.Known stack = answer.known().get();
        if (stack.job().isEmpty()) {
            notices.add(Notice.refusal("no-plan", "The stack holds no plan: there is nothing to cut to length.")
                    .cure("Add one, as 'plan: [{ left: return, right: return, stretches: [{ length: 96 }] }]'."));
            return new Cuts(answer.refused(notices.sorted()), Optional.empty());
        }
        Job job = stack.job().get();
        Optional<Shop> shop = stack.shop();
        if (shop.isEmpty()) {
            notices.add(Notice.problem("no-stock", "No stock is given: lengths are known, sticks are not.")
                    .cure("Add it, as 'stock: { sticks: [{ of: 1x6, buy: [8', 12'] }] }'."));
        }
        Optional<CutList> list = shop.map(known -> CutList.of(job, known, limit, notices));
        return new Cuts(
                new Answer(answer.file(), answer.title(), answer.unit(), answer.known(), notices.sorted()),
                Optional.of(new Known(job, stack.covings(), list)));
    }

    /** The same with these notices. */
    public Cuts told(List<Notice> notices) {
        return new Cuts(new Answer(answer.file(), answer.title(), answer.unit(), answer.known(), notices), known);
    }
}
