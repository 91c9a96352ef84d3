package buildup.engine;

import buildup.engine.buy.Shopping;
import buildup.engine.buy.WasteSticks;
import buildup.engine.hold.framing.BackingBlock;
import buildup.engine.hold.framing.BackingStrips;
import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.block.LooseBlocks;
import buildup.engine.room.run.Coving;
import buildup.engine.room.run.Job;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.Limit;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.surface.SlopedCrown;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * What is known of the cuts of a stack.
 *
 * @param answer of the stack
 * @param known absent when something was refused
 * @param notices what there is to say of the cuts; worst first
 */
public record Cuts(Answer answer, Optional<Known> known, List<Notice> notices) {
    /**
     * The job and what it takes.
     *
     * @param blocks behind sprung moldings
     * @param cut all blocks, as they are cut from sticks and boards
     * @param sloped crowns under a sloped ceiling
     * @param list the sticks; absent when the stack names no stock
     * @param shopping all that is bought
     */
    public record Known(
            Job job,
            List<Coving> covings,
            List<BackingBlock> blocks,
            List<LooseBlock> cut,
            List<SlopedCrown> sloped,
            Optional<CutList> list,
            Shopping shopping) {
        /** Copies the lists. */
        public Known {
            covings = List.copyOf(covings);
            blocks = List.copyOf(blocks);
            cut = List.copyOf(cut);
            sloped = List.copyOf(sloped);
        }

        /** The lengths, with their sticks where a stock is named. */
        public CutList lengths() {
            return list.orElseGet(() -> CutList.withoutStock(job, cut));
        }
    }

    /** Copies the list. */
    public Cuts {
        notices = List.copyOf(notices);
    }

    /** Lays out the cuts of a stack along its plan. */
    public static Cuts of(Answer answer, Limit limit) {
        Notices notices = new Notices();
        notices.addAll(answer.notices(EnumSet.of(Question.RUN, Question.BUYING)));
        Optional<Job> job = answer.known().flatMap(Answers::job);
        if (job.isEmpty()) {
            if (answer.known().isPresent()) {
                notices.add(FrontNotices.NOTHING_TO_CUT.notice());
            }
            return new Cuts(answer, Optional.empty(), notices.sorted());
        }
        Answers stack = answer.known().orElseThrow();
        Optional<Shop> shop = stack.shop();
        if (shop.isEmpty()) {
            notices.add(FrontNotices.STICKS_UNKNOWN.notice());
        }
        List<LooseBlock> cut = loose(stack, job.get());
        Shopping shopping = shopping(stack, job.get(), cut, limit, notices);
        return new Cuts(
                answer,
                Optional.of(new Known(
                        job.get(),
                        stack.covings(),
                        stack.framing().blocks(),
                        cut,
                        stack.surfaces().sloped(),
                        shopping.list(),
                        shopping)),
                notices.sorted());
    }

    /** What is bought along the plan of a stack, as its cuts tell it; absent without a plan or a stock. */
    static Optional<Shopping> shopping(Answers stack) {
        return stack.shop().isEmpty()
                ? Optional.empty()
                : stack.job().map(job -> shopping(stack, job, loose(stack, job), Limit.usual(), new Notices()));
    }

    private static List<LooseBlock> loose(Answers stack, Job job) {
        List<LooseBlock> cut = new ArrayList<>(LooseBlocks.of(job));
        cut.addAll(BackingStrips.of(job, stack.framing().blocks(), stack.shop().orElse(Shop.NONE)));
        return cut;
    }

    private static Shopping shopping(Answers stack, Job job, List<LooseBlock> cut, Limit limit, Notices notices) {
        Optional<CutList> list = stack.shop().map(known -> CutList.of(job, cut, known, limit, notices));
        List<WasteSticks> waste = list.flatMap(
                        known -> stack.waste().map(share -> WasteSticks.of(known, share, notices)))
                .orElse(List.of());
        return new Shopping(list, waste, stack.purchases());
    }

    /** The cuts of a stack that could not be read. */
    public static Cuts unread(String file, Notice why) {
        return new Cuts(Answer.unread(file, List.of(why)), Optional.empty(), List.of(why));
    }

    /** The same with one more thing to say. */
    public Cuts saying(Notice more) {
        Notices all = new Notices();
        all.addAll(notices);
        all.add(more);
        return new Cuts(answer, known, all.sorted());
    }

    /** The same without figures, since they could not be delivered. */
    public Cuts refused(List<Notice> why) {
        Notices all = new Notices();
        all.addAll(notices);
        all.addAll(why);
        return new Cuts(answer, Optional.empty(), all.sorted());
    }
}
