package buildup.profiles.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import java.util.List;
import org.junit.jupiter.api.Test;

class CarvingTest {
    private static Outline board(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    @Test
    void what_the_cuts_leave_beside_the_wood_is_told_piece_by_piece() {
        Outline blank = board(0, 0, 2, 4);
        Outline wood = board(0, 0, 1, 4);
        List<Carving.Left> left = Carving.left(blank, wood, List.of(board(1, 1, 3, 2)));
        assertThat(left).hasSize(2);
        assertThat(left.stream().mapToDouble(Carving.Left::area).sum()).isCloseTo(3, within(1e-9));
        assertThat(Carving.left(blank, wood, List.of(board(1, -1, 3, 5)))).isEmpty();
    }

    @Test
    void touching_is_no_bite_and_a_64th_is() {
        Outline wood = board(0, 0, 1, 4);
        assertThat(Carving.bites(board(1, 0, 2, 1), wood)).isFalse();
        assertThat(Carving.bites(board(1 - 1.0 / 512, 0, 2, 1), wood)).isFalse();
        assertThat(Carving.bites(board(1 - 1.0 / 64, 0, 2, 1), wood)).isTrue();
        assertThat(Carving.bites(board(5, 0, 6, 1), wood)).isFalse();
    }
}
