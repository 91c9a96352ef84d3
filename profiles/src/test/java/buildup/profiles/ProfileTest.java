package buildup.profiles;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import org.junit.jupiter.api.Test;

class ProfileTest {
    @Test
    void a_board_is_as_thick_and_wide_as_it_is_named() {
        Profile board = Profile.board("board 3/4 x 3-1/2", 0.75, 3.5);
        assertThat(board.outline().box()).isEqualTo(new Box(0, 0, 0.75, 3.5));
        assertThat(board.thickness()).isEqualTo(0.75);
        assertThat(board.width()).isEqualTo(3.5);
    }

    @Test
    void a_milled_molding_is_as_thick_as_it_stands_out() {
        Outline outline = Outline.rectangle(new Box(0, 0, 1.25, 1.375));
        Profile milled = new Profile("cove-bed", "bed", outline, new Profile.Milled());
        assertThat(milled.thickness()).isEqualTo(1.25);
        assertThat(milled.width()).isEqualTo(1.375);
    }

    @Test
    void a_sprung_molding_is_cut_from_a_flat_stick() {
        Sprung sprung = new Sprung(38, 3.25, 0.5625, 0.25, 0.25);
        Profile crown = new Profile("crown", "crown", sprung.plain(), new Profile.Spring(sprung));
        assertThat(crown.thickness()).isEqualTo(0.5625);
        assertThat(crown.width()).isEqualTo(3.25);
    }
}
