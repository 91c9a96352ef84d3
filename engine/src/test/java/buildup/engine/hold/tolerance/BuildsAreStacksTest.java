package buildup.engine.hold.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A build is what the composer makes of a document with the same sizes: each is placed anew, ripped, and moved to touch. */
@Tag("long")
class BuildsAreStacksTest {
    private static final int BUILDS = 40;

    /** Chords stand for arcs where a piece is moved to touch a round one. */
    private static final double CHORDS = 0.001;

    /** Sizes, in their order of the sources: width and thickness of frieze, bed, ripped cap, lying top, fascia that touches. */
    private static String stack(double[] off, String end) {
        return String.format(
                Locale.ROOT,
                """
                wood: yellow-poplar
                space: { floor: -84, ceiling: 14, projection: 9, wall: { solid: no } }
                tolerance: { ceiling: 0 }
                pieces:
                  - { name: frieze, profile: board %.9f x %.9f, back: wall, bottom: datum, spread: { width: 1/16, thickness: 1/32 } }
                  - { name: bed, profile: board %.9f x %.9f, back: frieze.face, top: frieze.top, spread: { width: 1/16, thickness: 1/32 } }
                  - { name: fit, profile: board %.9f x 3-1/2, back: wall, bottom: frieze.top, top: 8, spread: { width: 1/16, thickness: 1/32 } }
                  - { name: top, profile: board %.9f x %.9f, lay: flat, back: wall, bottom: fit.top, spread: { width: 1/16, thickness: 1/32 } }
                  - { name: fascia, profile: board %.9f x %.9f, back: bed.face + 1/2, top: touch, spread: { width: 1/16, thickness: 1/32 } }
                  - { name: block, kind: nailer, section: [out 1/2, up 1], face: fascia.back, bottom: bed.top - 1/2, spread: 0 }
                %s""",
                0.75 + off[1],
                5.5 + off[0],
                0.75 + off[3],
                2 + off[2],
                0.75 + off[5],
                0.75 + off[7],
                4.5 + off[6],
                0.75 + off[9],
                1.5 + off[8],
                end);
    }

    @Test
    void every_figure_of_a_build_is_that_of_the_stack_with_its_sizes() {
        Strayed drawn = Strayed.read(stack(new double[10], ""));
        List<ErrorSource> sources = drawn.study().sources();
        assertThat(sources).hasSize(10);
        Assembly assembly = Assembly.of(drawn.section(), sources, Optional.empty());
        List<Gauged> gauged = Gauges.of(assembly, List.of(), List.of());
        List<String> names = gauged.stream().map(Gauged::name).toList();
        Random random = new Random(3);
        List<BuiltPiece> pieces = assembly.fresh();
        List<String> compared = new ArrayList<>();
        for (int build = 0; build < BUILDS; build++) {
            double[] off = sources.stream()
                    .mapToDouble(source -> source.spread() * (2 * random.nextDouble() - 1))
                    .map(size -> Math.rint(size * 1e9) / 1e9)
                    .toArray();
            assembly.build(off, pieces);
            Strayed built = Strayed.read(stack(off, ""));
            List<ErrorFigure> figures = built.study().figures();
            List<String> now = figures.stream().map(ErrorFigure::name).toList();
            for (int i = 0; i < gauged.size(); i++) {
                String name = names.get(i);
                // where a joint is no longer flush, figures come and go
                if (Collections.frequency(now, name) == 1 && Collections.frequency(names, name) == 1) {
                    compared.add(name);
                    assertThat(gauged.get(i).gauge().of(pieces, 0, 0))
                            .as(name + " of build " + build)
                            .isEqualTo(figures.get(now.indexOf(name)).drawn(), within(1e-6));
                }
            }
        }
        assertThat(compared)
                .hasSizeGreaterThan(5 * BUILDS)
                .contains("reveal of top over fit", "reveal of bed over block", "height");
    }

    @Test
    void a_piece_that_comes_to_rest_on_a_round_one_rises_and_falls_with_it() {
        String lines = """
                wood: yellow-poplar
                space: { wall: { solid: no } }
                tolerance: { }
                pieces:
                  - { name: round, fixed: shelf, profile: half-round 1/2 x 1, turn: 90, back: wall, bottom: datum, spread: { width: 0, thickness: 1/16 } }
                  - { name: shelf, profile: board 3/4 x 3, lay: flat, back: wall, bottom: touch, spread: 0 }
                """;
        Strayed strayed = Strayed.read(lines);
        ErrorFigure height = strayed.figure("height");
        assertThat(height.rss()).isEqualTo(1.0 / 16, within(CHORDS));
    }
}
