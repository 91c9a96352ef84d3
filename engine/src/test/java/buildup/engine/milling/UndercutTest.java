package buildup.engine.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Shapes whose undercuts are known because they were made so. */
class UndercutTest {
    static Stream<List<String>> shapes() {
        return Reference.rows("Undercuts");
    }

    @Test
    void there_are_twenty_shapes() {
        assertThat(shapes()).hasSize(20);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void every_undercut_is_found_with_its_area_and_the_way_in(List<String> row) {
        List<Undercut> found =
                Molded.milled(Reference.shape(row.get(0), row.get(1))).undercuts();
        assertThat(found).as(row.get(0)).hasSize(Integer.parseInt(row.get(2)));
        assertThat(found.stream().mapToDouble(Undercut::area).sum())
                .as(row.get(0))
                .isCloseTo(Double.parseDouble(row.get(3)), within(1e-7));
        assertThat(found.stream().map(UndercutTest::way).collect(Collectors.joining("; ")))
                .as(row.get(0))
                .isEqualTo(row.get(4));
    }

    private static String way(Undercut undercut) {
        return undercut.tilt()
                .map(Side::word)
                .orElse(undercut.passes().isEmpty() ? "none" : Side.words(undercut.passes()));
    }
}
