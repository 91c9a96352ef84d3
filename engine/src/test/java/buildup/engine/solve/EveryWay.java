package buildup.engine.solve;

import java.util.Arrays;

/** The least price, and at it the fewest sticks, by trying every set of pieces for every stick. */
final class EveryWay {
    private static final long NONE = Long.MAX_VALUE / 4;

    private final StickProblem problem;
    private final long best;

    EveryWay(StickProblem problem) {
        this.problem = problem;
        int all = 1 << problem.pieces().size();
        // cost of cutting a set of pieces from the kinds so far; a stick adds 1, a unit of price 1000
        long[] costs = new long[all];
        Arrays.fill(costs, NONE);
        costs[0] = 0;
        for (StickProblem.Stick stick : problem.sticks()) {
            for (int i = 0; i < Math.min(stick.most(), problem.pieces().size()); i++) {
                long[] more = costs.clone();
                for (int done = 0; done < all; done++) {
                    for (int set = 1; set < all; set++) {
                        if ((done & set) == 0 && costs[done] < NONE && fits(set, stick)) {
                            more[done | set] = Math.min(more[done | set], costs[done] + stick.price() * 1000 + 1);
                        }
                    }
                }
                costs = more;
            }
        }
        best = costs[all - 1];
    }

    private boolean fits(int set, StickProblem.Stick stick) {
        int length = -problem.kerf();
        for (int piece = 0; piece < problem.pieces().size(); piece++) {
            length += (set >> piece & 1) == 1 ? problem.pieces().get(piece) + problem.kerf() : 0;
        }
        return length <= stick.length();
    }

    long price() {
        return best / 1000;
    }

    int sticks() {
        return (int) (best % 1000);
    }
}
