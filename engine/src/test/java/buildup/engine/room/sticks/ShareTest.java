package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ShareTest {
    private static final int KERF = 8;

    /** The property that the bound stands on, of which the published theorem is the proof. */
    @Test
    void strips_that_fit_one_board_are_together_never_charged_more_than_it_costs() {
        Random random = new Random(20);
        int full = 0;
        for (int round = 0; round < 20_000; round++) {
            int board = 64 + random.nextInt(700);
            long price = 1 + random.nextInt(100_000);
            Share.Dual share = new Share.Dual(random.nextInt(7));
            List<Integer> strips = strips(board, random);
            long charged = strips.stream()
                    .mapToLong(strip -> share.least(Share.Rip.of(strip, board, KERF), price))
                    .sum();
            assertThat(charged).as("%s, %s of %d", share, strips, board).isLessThanOrEqualTo(price);
            full += charged == price ? 1 : 0;
        }
        assertThat(full).as("boards that are paid for to the last").isPositive();
    }

    private static List<Integer> strips(int board, Random random) {
        List<Integer> strips = new ArrayList<>();
        int left = board + KERF;
        int part = 1 + random.nextInt(6);
        while (left - KERF >= 1 && strips.size() < 12) {
            // as wide as fits, or one of so many alike
            int most = left - KERF;
            int alike = Math.max(1, (board + KERF) / part - KERF);
            int strip = random.nextInt(3) == 0
                    ? most
                    : Math.min(most, random.nextBoolean() ? alike : 1 + random.nextInt(most));
            strips.add(strip);
            left -= strip + KERF;
        }
        return strips;
    }

    @Test
    void two_strips_that_fit_a_board_and_no_three_pay_half_each() {
        Share.Rip rip = Share.Rip.of(160, 352, KERF);
        assertThat(rip.each()).isEqualTo(2);
        assertThat(new Share.Equal().charge(rip, 1001)).isEqualTo(501);
        assertThat(new Share.Dual(2).least(rip, 1000)).isEqualTo(500);
        assertThat(new Share.Dual(0).charge(rip, 1000)).as("168 of 360").isEqualTo(467);
    }

    @Test
    void a_strip_as_wide_as_its_board_pays_it_all() {
        for (int steps = 0; steps < 7; steps++) {
            assertThat(new Share.Dual(steps).least(Share.Rip.of(300, 300, KERF), 999))
                    .isEqualTo(999);
        }
        assertThat(Share.Rip.of(301, 300, KERF).each())
                .as("within a 64th of its board")
                .isEqualTo(1);
    }
}
