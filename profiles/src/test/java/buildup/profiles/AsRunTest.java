package buildup.profiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Box;
import org.junit.jupiter.api.Test;

class AsRunTest {
    @Test
    void a_sprung_stick_lies_flat_on_its_back_as_thick_and_wide_as_it_is_named() {
        Sprung sprung = new Sprung(38, 3.25, 0.5625, 0.25, 0.25);
        Profile crown = new Profile("crown", "crown", sprung.plain(), new Profile.Spring(sprung));
        Box box = crown.asRun().box();
        assertThat(box.back()).isCloseTo(0, within(1e-9));
        assertThat(box.bottom()).isCloseTo(0, within(1e-9));
        assertThat(box.face()).isCloseTo(0.5625, within(1e-9));
        assertThat(box.top()).isCloseTo(3.25, within(1e-9));
        assertThat(crown.asRun().area()).isCloseTo(crown.outline().area(), within(1e-9));
    }

    @Test
    void any_other_is_run_as_it_is_drawn() {
        Profile board = Profile.board("board", 0.75, 3.5);
        assertThat(board.asRun()).isEqualTo(board.outline());
    }
}
