package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RippingTest {
    private static final String STOCK = """
            stock:
              kerf: 1/8
              trim: 1/2
              sticks:
                - { of: 1x4, buy: [8', 10', 12', 14', 16'], price: 1.80, per: foot }
                - { of: 1x6, buy: [8', 10', 12', 14', 16'], price: 2.75, per: foot }
                - { of: 1x8, buy: [8', 10', 12', 14', 16'], price: 3.60, per: foot }
                - { of: 1x10, buy: [10', 12', 14', 16'], price: 4.90, per: foot }
                - { of: 1x12, buy: [12', 14', 16'], price: 6.10, per: foot }
            """;

    /** Boards of widths of chance, one on the other, round twenty walls of lengths of chance. */
    private static CutList room(int boards, int seed) {
        Random random = new Random(seed);
        String stack = Cutlist.WALL
                + Bench.list(IntStream.range(0, boards)
                        .mapToObj(i -> "name: p" + i + ", profile: board 3/4 x " + (8 + random.nextInt(37)) / 8.0
                                + ", back: wall, bottom: " + (i == 0 ? "datum" : "p" + (i - 1) + ".top"))
                        .toArray(String[]::new));
        StringBuilder plan =
                new StringBuilder("plan:\n  - name: room\n    left: butt\n    right: butt\n    stretches:\n");
        for (int i = 0; i < 20; i++) {
            String corner = i == 19 ? "" : ", corner: " + (i % 2 == 0 ? "outside" : "inside") + " 90";
            plan.append("      - { name: w")
                    .append(i)
                    .append(", length: ")
                    .append(20 + random.nextInt(140))
                    .append(corner)
                    .append(" }\n");
        }
        return Cutlist.of(stack, plan + STOCK).cutList();
    }

    /** The bound is that of the area, or of charges that no board's price is less than: see {@link RipBound}. */
    @Tag("long")
    @Test
    void boards_of_all_widths_are_shared_within_six_percent_of_what_no_way_takes_less_than() {
        for (int seed = 0; seed < 2; seed++) {
            CutList list = room(10, seed);
            assertThat(list.rips().get(0).over() / (double) list.price())
                    .as("seed %d: over the bound, of %d", seed, list.price())
                    .isBetween(0.0, 0.06);
        }
    }

    @Test
    void the_same_room_is_ripped_the_same_way_every_time() {
        assertThat(room(4, 7)).isEqualTo(room(4, 7));
    }
}
