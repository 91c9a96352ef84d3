package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.room.sticks.Share.Rip;
import org.junit.jupiter.api.Test;

class ShareTest {
    private static final int KERF = 8;

    @Test
    void two_strips_that_fit_a_board_and_no_three_pay_half_each() {
        Rip rip = Rip.of(160, 352, KERF);
        assertThat(rip.each()).isEqualTo(2);
        assertThat(new Share.Equal().charge(rip, 96, 1001)).isEqualTo(501);
    }

    @Test
    void a_strip_as_wide_as_its_board_pays_it_all() {
        assertThat(Rip.of(301, 300, KERF).each())
                .as("within a 64th of its board")
                .isEqualTo(1);
        assertThat(new Share.Equal().charge(Rip.of(300, 300, KERF), 96, 999)).isEqualTo(999);
    }
}
