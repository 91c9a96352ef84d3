package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.format.Drawn;
import buildup.catalog.format.TracingReader;
import buildup.cli.OutsideTool;
import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * DXF and SVG to and from other programs: ezdxf (Debian package python3-ezdxf), svgelements (python3-svgelements) and the
 * SVG that rsvg-convert (librsvg2-bin) writes. None shares code with this project or with the libraries in it.
 */
@Tag("long")
class ExchangeTest {
    @TempDir
    private Path folder;

    /** What a script printed: a number of trails, and places on their curves. */
    private record Told(int trails, List<Point> places) {
        static Told of(OutsideTool.Run run) {
            assertThat(run.code()).as(run.output()).isZero();
            List<String> lines = run.output().lines().toList();
            return new Told(
                    Integer.parseInt(lines.get(0)),
                    lines.stream()
                            .skip(1)
                            .map(line -> line.split(" "))
                            .map(xy -> new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])))
                            .toList());
        }
    }

    private static double greatest(List<Point> places, List<Trail> trails) {
        return places.stream()
                .mapToDouble(place -> Outlines.distance(place, trails))
                .max()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"R12, 7", "R2000, 10", "R2010, 10"})
    void a_drawing_of_another_program_is_read_from_dxf(String release, int trails) throws Exception {
        Path file = folder.resolve("other.dxf");
        Told told = Told.of(OutsideTool.python(folder, "ezdxf", "dxf_write.py", file, release));
        Notices notices = new Notices();
        Drawn drawn = TracingReader.read(Files.readAllBytes(file), "other.dxf", notices)
                .orElseThrow();
        assertThat(told.trails()).isEqualTo(trails);
        assertThat(told.places()).hasSizeGreaterThan(100);
        assertThat(drawn.trails()).hasSize(trails);
        assertThat(drawn.unit())
                .isEqualTo(
                        release.equals("R12")
                                ? java.util.Optional.empty()
                                : java.util.Optional.of(LengthUnit.MILLIMETER));
        // of a drawing 160 mm across, chords stray by 0.0016
        assertThat(greatest(told.places(), drawn.trails())).isLessThan(0.003);
        assertThat(notices.sorted()).extracting(Notice::code).containsExactly("not-read");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void random_paths_and_transforms_of_svg_are_read_as_another_program_reads_them(int seed) throws Exception {
        Path file = folder.resolve("random.svg");
        Told told = Told.of(OutsideTool.python(folder, "svgelements", "svg_random.py", file, seed));
        Drawn drawn = Outlines.read(Files.readAllBytes(file), "random.svg");
        assertThat(drawn.unit()).contains(LengthUnit.INCH);
        assertThat(drawn.trails()).hasSize(told.trails());
        List<Point> inches = told.places().stream()
                .map(p -> new Point(p.x() / 96, 10 - p.y() / 96))
                .toList();
        assertThat(inches).hasSizeGreaterThan(500);
        double across = 1e-5 * diagonal(drawn);
        assertThat(greatest(inches, drawn.trails())).isLessThan(2 * across);
    }

    private static double diagonal(Drawn drawn) {
        List<Point> points = drawn.trails().stream()
                .flatMap(trail -> trail.points().stream())
                .toList();
        double width = points.stream().mapToDouble(Point::x).max().orElseThrow()
                - points.stream().mapToDouble(Point::x).min().orElseThrow();
        double height = points.stream().mapToDouble(Point::y).max().orElseThrow()
                - points.stream().mapToDouble(Point::y).min().orElseThrow();
        return Math.hypot(width, height);
    }

    @Test
    void every_outline_has_the_same_area_in_programs_that_read_our_dxf_and_svg() throws Exception {
        List<Outline> outlines = Outlines.all().stream().map(Outlines::home).toList();
        List<Object> dxf = new ArrayList<>();
        List<Object> svg = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            dxf.add(Files.write(folder.resolve(i + ".dxf"), DxfWriter.write(Outlines.scene(outlines.get(i)))));
            svg.add(Files.write(
                    folder.resolve(i + ".svg"), SvgWriter.write(Outlines.scene(outlines.get(i)), LengthUnit.INCH)));
        }
        OutsideTool.Run read = OutsideTool.python(folder, "ezdxf", "dxf_read.py", dxf.toArray());
        assertThat(read.code()).as(read.output()).isZero();
        OutsideTool.Run seen = OutsideTool.python(folder, "svgelements", "svg_read.py", svg.toArray());
        assertThat(seen.code()).as(seen.output()).isZero();
        for (int i = 0; i < outlines.size(); i++) {
            Outline outline = outlines.get(i);
            String[] found = read.output().lines().toList().get(i).split(" ");
            // no fault, no repair, inches, one polyline
            assertThat(List.of(found).subList(0, 4)).containsExactly("0", "0", "1", "POLYLINE:1");
            assertThat(Double.parseDouble(found[4])).isCloseTo(outline.area(), within(1e-6 * outline.perimeter()));
            assertThat(Double.parseDouble(seen.output().lines().toList().get(i)))
                    .isCloseTo(outline.area(), within(1e-5 * outline.perimeter()));
        }
    }

    /** It turns every arc into cubic curves, which stray by up to 2.7e-4 of a radius, and every size into points of 1/72 in. */
    @Test
    void an_svg_that_another_program_wrote_after_ours_is_still_the_profile() throws Exception {
        for (Profile profile : Outlines.all()) {
            Outline outline = Outlines.home(profile);
            Path ours =
                    Files.write(folder.resolve("ours.svg"), SvgWriter.write(Outlines.scene(outline), LengthUnit.INCH));
            Path theirs = folder.resolve("theirs.svg");
            OutsideTool.Run run = OutsideTool.run(folder, "rsvg-convert", "-f", "svg", "-o", theirs, ours);
            assertThat(run.code()).as(run.output()).isZero();
            Notices notices = new Notices();
            Drawn drawn = TracingReader.read(Files.readAllBytes(theirs), "theirs.svg", notices)
                    .orElseThrow(() -> new AssertionError(notices.sorted()));
            double scale = drawn.unit().map(unit -> unit.of(1).toInches()).orElse(1 / 96.0);
            Trail read = drawn.trails().get(0);
            Trail inches =
                    new Trail(read.points().stream().map(p -> p.times(scale)).toList(), read.closed());
            assertThat(Outlines.off(inches, outline)).as(profile.name()).isLessThan(2e-3);
            assertThat(Outlines.area(inches)).isCloseTo(outline.area(), within(1e-3 * outline.perimeter()));
        }
    }
}
