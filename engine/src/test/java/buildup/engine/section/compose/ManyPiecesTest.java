package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The work of composing grows little faster than the pieces do. What it asks of the memory stands for its work: that is the
 * same on every machine, however busy.
 */
class ManyPiecesTest {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    /** Four times n log n, from 120 to 480 pieces, is 4 * ln 480 / ln 120 = 5.2; the square would be 16. */
    private static final double MOST = 6;

    /** Where welding moves corners, somewhat more: n to the power of 3/2. */
    private static final double MOST_WELDED = 8;

    private static final int FEW = 120;

    /** How boards that touch may lie. */
    enum Lie {
        ONE_ON_ANOTHER(i -> "profile: board 3/4 x 1, back: wall, bottom: " + i),
        SIDE_BY_SIDE(i -> "profile: board 1 x 3, back: " + i + ", bottom: 0"),
        AS_IN_A_FIELD_OF_TWENTY_ACROSS(
                i -> "profile: board 1 x 1, back: " + i % 20 + ", bottom: " + String.format(Locale.ROOT, "%d", i / 20)),
        AS_STEPS(i -> "profile: board 1 x 2, back: " + i + ", bottom: " + i),
        EACH_A_HAIR_INTO_THE_NEXT(i -> "profile: board 3/4 x 1.002, back: wall, bottom: " + i);

        private final IntFunction<String> place;

        Lie(IntFunction<String> place) {
            this.place = place;
        }

        private String stack(int pieces) {
            return "wood: check-wood\nspace: { wall: { solid: no } }\npieces:\n"
                    + IntStream.range(0, pieces)
                            .mapToObj(i -> "  - { name: b" + i + ", " + place.apply(i) + " }\n")
                            .collect(Collectors.joining());
        }
    }

    @ParameterizedTest
    @EnumSource
    void four_times_the_boards_are_little_more_than_four_times_the_work(Lie lie) {
        long few = allocated(lie.stack(FEW));
        long many = allocated(lie.stack(4 * FEW));
        assertThat((double) many / few).isLessThan(lie == Lie.EACH_A_HAIR_INTO_THE_NEXT ? MOST_WELDED : MOST);
    }

    private static long allocated(String stack) {
        Bench.sound(stack);
        long thread = Thread.currentThread().getId();
        long before = THREADS.getThreadAllocatedBytes(thread);
        assertThat(Bench.sound(stack).section().voids()).isEmpty();
        return THREADS.getThreadAllocatedBytes(thread) - before;
    }
}
