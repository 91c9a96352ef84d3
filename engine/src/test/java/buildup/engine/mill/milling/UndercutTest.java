package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UndercutTest {
    /** A row of reference/undercuts.csv, whose head says how it was made. */
    record Shape(String words, int count, List<Double> areas, List<String> from, List<String> to, List<String> heads) {
        @Override
        public String toString() {
            return words;
        }
    }

    static Stream<Shape> shapes() {
        return Bench.resource("/reference/undercuts.csv")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split("\\|", -1))
                .map(row -> new Shape(
                        row[0].strip(),
                        Integer.parseInt(row[1].strip()),
                        split(row[2], " ").stream().map(Double::valueOf).toList(),
                        split(row[3], ";"),
                        split(row[4], ";"),
                        split(row[5], ";")));
    }

    private static List<String> split(String cell, String at) {
        return Arrays.stream(cell.split(at, -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void every_undercut_is_found_and_no_other(Shape shape) {
        List<Undercut> found = Molded.milled(Molded.words(shape.words)).undercuts();
        assertThat(found).hasSize(shape.count);
        for (int i = 0; i < shape.count; i++) {
            Undercut undercut = found.get(i);
            assertThat(undercut.area()).isCloseTo(shape.areas.get(i), within(1e-9));
            assertThat(undercut.from().distance(point(shape.from.get(i)))).isLessThan(1e-6);
            assertThat(undercut.to().distance(point(shape.to.get(i)))).isLessThan(1e-6);
            assertThat(undercut.open() ? FigurePrinter.INCHES.print(Side.words(undercut.passes())) : "none")
                    .isEqualTo(shape.heads.get(i));
        }
    }

    private static Point point(String text) {
        String[] xy = text.split(" ");
        return new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
    }

    @Test
    void there_are_twenty_shapes() {
        assertThat(shapes()).hasSize(20);
    }

    @Test
    void a_head_tilted_into_a_slanted_groove_reaches_what_no_square_one_does() {
        // a groove that runs in and up at 45 degrees from the face
        Milled milled = Molded.milled(
                Molded.words("out 2, up 1, chamfer in up 1/2 x 1/2, up 1/4, chamfer out down 1/2 x 1/2, up 2"));
        assertThat(milled.undercuts()).hasSize(1);
        assertThat(milled.undercuts().get(0).passes()).isEmpty();
        assertThat(milled.undercuts().get(0).tilt().map(Side::degrees)).contains(-45.0);
    }
}
