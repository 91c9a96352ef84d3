package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.solve.StickProblem.Stick;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** What the tests need to judge a plan without asking the search: a recount, plain first fit decreasing, plain bounds. */
final class Cutting {
    private Cutting() {}

    /** A problem with one kind of stick, priced 1. */
    static StickProblem one(int length, int kerf, List<Integer> pieces) {
        return new StickProblem(pieces, List.of(new Stick(length, 1, StickProblem.NO_END)), kerf);
    }

    /** Recounts a plan: every piece once, no stick over-full, no stick that is not there, the price as stated. */
    static void recount(StickProblem problem, StickPlan plan) {
        List<Integer> seen = new ArrayList<>();
        int[] used = new int[problem.sticks().size()];
        long price = 0;
        for (StickPlan.CutUp stick : plan.sticks()) {
            Stick kind = problem.sticks().get(stick.kind());
            int length = problem.kerf() * (stick.pieces().size() - 1);
            for (int piece : stick.pieces()) {
                length += problem.pieces().get(piece);
            }
            assertThat(stick.pieces()).isNotEmpty();
            assertThat(length).as("taken of a stick").isLessThanOrEqualTo(kind.length());
            seen.addAll(stick.pieces());
            used[stick.kind()]++;
            price += kind.price();
        }
        assertThat(seen)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, problem.pieces().size()).boxed().toList());
        for (int kind = 0; kind < used.length; kind++) {
            assertThat(used[kind])
                    .isLessThanOrEqualTo(problem.sticks().get(kind).most());
        }
        assertThat(plan.price()).isEqualTo(price);
        assertThat(plan.leastPrice()).isLessThanOrEqualTo(price);
    }

    /** Sticks that first fit decreasing takes of one length. */
    static int firstFit(int length, int kerf, List<Integer> pieces) {
        List<Integer> left = new ArrayList<>();
        for (int piece : pieces.stream().sorted(Comparator.reverseOrder()).toList()) {
            int at = 0;
            while (at < left.size() && left.get(at) < piece) {
                at++;
            }
            if (at == left.size()) {
                left.add(length);
            }
            left.set(at, left.get(at) - piece - kerf);
        }
        return left.size();
    }

    /** No plan takes fewer sticks of one length: all wood used, and of pieces longer than half a stick one in each. */
    static int bound(int length, int kerf, List<Integer> pieces) {
        long sum = pieces.stream().mapToLong(piece -> piece + kerf).sum();
        long room = length + kerf;
        long halves =
                pieces.stream().filter(piece -> 2L * (piece + kerf) > room).count();
        return (int) Math.max(halves, (sum + room - 1) / room);
    }

    static List<Integer> random(Random random, int count, int least, int most) {
        return random.ints(count, least, most + 1).boxed().toList();
    }
}
