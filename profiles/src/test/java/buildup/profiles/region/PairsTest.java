package buildup.profiles.region;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.outline.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pairs and groups, against asking each about every other. */
class PairsTest {
    private static final long SEED = 3;

    @Test
    void the_pairs_are_those_that_asking_each_about_every_other_finds() {
        Random random = new Random(SEED);
        for (int round = 0; round < 50; round++) {
            List<Box> boxes = new ArrayList<>();
            for (int i = 0; i < round * 3; i++) {
                double x = random.nextInt(20);
                double y = random.nextInt(20);
                boxes.add(new Box(x, y, x + random.nextInt(4), y + random.nextInt(4)));
            }
            for (double within : new double[] {0, 0.5, 1, -0.25}) {
                List<Pairs.Pair> plain = new ArrayList<>();
                for (int i = 0; i < boxes.size(); i++) {
                    for (int j = i + 1; j < boxes.size(); j++) {
                        if (boxes.get(i).near(boxes.get(j), within)) {
                            plain.add(new Pairs.Pair(i, j));
                        }
                    }
                }
                assertThat(Pairs.near(boxes, within)).isEqualTo(plain);
            }
        }
    }

    @Test
    void joined_numbers_are_one_group_and_groups_come_by_their_least() {
        Groups groups = new Groups(7);
        groups.join(5, 2);
        groups.join(6, 3);
        groups.join(2, 6);
        groups.join(4, 4);
        assertThat(groups.all()).containsExactly(List.of(0), List.of(1), List.of(2, 3, 5, 6), List.of(4));
        assertThat(groups.together(3, 5)).isTrue();
        assertThat(groups.together(0, 1)).isFalse();
    }
}
