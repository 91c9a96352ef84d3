package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.format.Drawn;
import buildup.catalog.format.TracingReader;
import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.profiles.Profile;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.Caliper;
import buildup.profiles.trace.Traced;
import buildup.profiles.trace.TracedSide;
import buildup.profiles.trace.Tracer;
import buildup.profiles.trace.TracingOptions;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole sheets that other programs wrote, frames, dimensions, holes and pictures on them, and the profile that is meant:
 * ezdxf (Debian package python3-ezdxf), @tarikjabiri/dxf (npm) and the SVG of rsvg-convert (librsvg2-bin).
 */
@Tag("long")
class DrawnElsewhereTest {
    private static final Path SCRIPTS = Path.of("src/test/browser").toAbsolutePath();

    private static final List<String> SHAPES =
            List.of("ogee-bed 1 x 1-1/4", "bead-cove-bed 1-1/4 x 1-1/2", "architrave 1-1/16 x 4-1/2");

    @TempDir
    private Path folder;

    private List<Outline> outlines = List.of();

    @BeforeEach
    void take_some_shapes_of_the_catalog() {
        List<Profile> all = Outlines.all();
        outlines = SHAPES.stream()
                .map(name -> all.stream()
                        .filter(profile -> profile.name().equals(name))
                        .findFirst()
                        .orElseThrow())
                .map(Outlines::home)
                .toList();
    }

    /** The strokes of an outline for a script. */
    private Path strokes(Outline outline) throws Exception {
        String lines = outline.segments().stream()
                .map(segment -> place(segment.from()) + " " + place(segment.to())
                        + (segment instanceof Arc arc
                                ? " " + place(arc.center()) + (arc.counterclockwise() ? " 1" : " 0")
                                : ""))
                .collect(Collectors.joining("\n"));
        return Files.writeString(folder.resolve("profile.txt"), lines);
    }

    private static String place(Point p) {
        return String.format(Locale.ROOT, "%.12f %.12f", p.x(), p.y());
    }

    /** What a drawing is traced to, and what was said of it. */
    private record Told(Optional<Traced> traced, Notices notices) {
        static Told of(Path file, Optional<String> layer, TracingOptions options) throws Exception {
            Notices notices = new Notices();
            Optional<Drawn> drawn = TracingReader.read(
                    Files.readAllBytes(file), file.getFileName().toString(), layer, notices);
            Optional<Traced> traced = drawn.flatMap(found ->
                    Tracer.trace(found.trails(), found.unit().map(options::in).orElse(options), notices));
            return new Told(traced, notices);
        }

        List<String> problems() {
            return notices.sorted().stream()
                    .filter(notice -> notice.level() != Level.NOTE)
                    .map(NoticeWords.INCHES::message)
                    .toList();
        }

        /** That it is the profile, within so much, and nothing is doubted. */
        void is(Outline outline, double within) {
            assertThat(problems()).isEmpty();
            Outline found = traced.orElseThrow().outline();
            assertThat(found.area()).isCloseTo(outline.area(), within(within * outline.perimeter()));
            for (Stroke stroke : outline.strokes()) {
                for (int k = 0; k <= 8; k++) {
                    Point p = stroke.segment().at(k / 8.0);
                    assertThat(found.distance(p))
                            .as("%s near %s", stroke.member(), p)
                            .isLessThan(within);
                }
            }
        }
    }

    private Path byEzdxf(Outline outline, String way) throws Exception {
        Path file = folder.resolve("sheet.dxf");
        OutsideTool.Run run = OutsideTool.python(folder, "ezdxf", "sheet_write.py", strokes(outline), file, way);
        assertThat(run.code()).as(run.output()).isZero();
        return file;
    }

    @ParameterizedTest
    @ValueSource(strings = {"polyline", "strokes", "splines", "nested"})
    void the_profile_on_a_sheet_of_ezdxf_is_found(String way) throws Exception {
        for (Outline outline : outlines) {
            // the curve through fit points is that of ezdxf's cubic only at those points
            Told.of(byEzdxf(outline, way), Optional.empty(), TracingOptions.PLAIN)
                    .is(outline, way.equals("splines") ? 2e-3 : 5e-4);
        }
    }

    @Test
    void of_two_profiles_on_one_sheet_both_are_listed_and_a_layer_says_which() throws Exception {
        Outline outline = outlines.get(0);
        Path file = byEzdxf(outline, "two");
        Told open = Told.of(file, Optional.empty(), TracingOptions.PLAIN);
        assertThat(open.problems()).anySatisfy(said -> assertThat(said).contains("PROFILE", "OTHER"));
        Told.of(file, Optional.of("PROFILE"), TracingOptions.PLAIN).is(outline, 5e-4);
        Ran ran = Ran.of("trace", file.toString(), "--layer", "profil");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("PROFILE", "OTHER", "FRAME");
    }

    @Test
    void a_photo_that_is_linked_is_told_with_the_way_round_it() throws Exception {
        Path file = byEzdxf(outlines.get(0), "photo");
        Ran ran = Ran.of("trace", file.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("sheet.dxf shows a picture and draws no line.", "Draw the outline over it");
    }

    @ParameterizedTest
    @CsvSource({"polyline, LEFT", "strokes, LEFT", "block, DOWN"})
    void the_profile_on_a_sheet_of_a_javascript_library_is_found(String way, TracedSide back) throws Exception {
        OutsideTool.require(
                "npm ci in src/test/browser", Files.isDirectory(SCRIPTS.resolve("node_modules/@tarikjabiri/dxf")));
        for (Outline outline : outlines) {
            Path file = folder.resolve("sheet.dxf");
            OutsideTool.Run run =
                    OutsideTool.run(folder, "node", SCRIPTS.resolve("sheet.mjs"), strokes(outline), file, way);
            assertThat(run.code()).as(run.output()).isZero();
            Told.of(
                            file,
                            Optional.empty(),
                            back == TracedSide.LEFT ? TracingOptions.PLAIN : TracingOptions.PLAIN.back(back))
                    .is(outline, 5e-4);
        }
    }

    /** Symbols used at other sizes, a frame, a picture, nested groups; rsvg-convert flattens all of it. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_profile_in_an_svg_is_found_before_and_after_another_program_rewrote_it(boolean rewritten)
            throws Exception {
        for (Outline outline : outlines) {
            Path file = Files.writeString(folder.resolve("sheet.svg"), svg(outline), StandardCharsets.UTF_8);
            if (rewritten) {
                Path theirs = folder.resolve("theirs.svg");
                OutsideTool.Run run = OutsideTool.run(folder, "rsvg-convert", "-f", "svg", "-o", theirs, file);
                assertThat(run.code()).as(run.output()).isZero();
                file = theirs;
            }
            // it writes no unit, so a size has to be told
            TracingOptions options = rewritten
                    ? TracingOptions.PLAIN.measured(List.of(
                            new Caliper(Caliper.Across.HEIGHT, outline.box().height())))
                    : TracingOptions.PLAIN;
            Told.of(file, Optional.empty(), options).is(outline, rewritten ? 2e-3 : 5e-4);
        }
    }

    private static String svg(Outline outline) {
        StringBuilder path = new StringBuilder();
        Point first = outline.strokes().get(0).segment().from();
        path.append("M ").append(place(first));
        for (Stroke stroke : outline.strokes()) {
            if (stroke.segment() instanceof Arc arc) {
                path.append(String.format(
                        Locale.ROOT,
                        " A %.9f %.9f 0 %d %d %s",
                        arc.radius(),
                        arc.radius(),
                        Math.abs(arc.sweep()) > Math.PI ? 1 : 0,
                        arc.counterclockwise() ? 1 : 0,
                        place(arc.to())));
            } else {
                path.append(" L ").append(place(stroke.segment().to()));
            }
        }
        // half size in the symbol, doubled by its use, upside down as drawings of moldings in the plane y up are
        return """
                <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
                     width="11in" height="8.5in" viewBox="0 0 11 8.5">
                  <defs>
                    <g id="section"><path d="%s Z" transform="scale(0.5)" fill="none" stroke="black"
                         stroke-width="0.01"/></g>
                  </defs>
                  <rect x="0.25" y="0.25" width="10.5" height="8" fill="none" stroke="black" stroke-width="0.02"/>
                  <image width="0.4" height="0.3" x="9" y="1" xlink:href="data:image/png;base64,%s"/>
                  <g id="sheet"><g id="profile" transform="translate(2,7) scale(2,-2)">
                    <use xlink:href="#section"/>
                  </g></g>
                  <g id="dimensions" stroke="black" stroke-width="0.01" fill="none">
                    <line x1="2" y1="7.2" x2="4" y2="7.2"/><line x1="2" y1="7.1" x2="2" y2="7.3"/>
                    <polygon points="2,7.2 2.1,7.17 2.1,7.23"/><circle cx="2.3" cy="6.8" r="0.03"/>
                    <text x="2.4" y="7.4" font-size="0.2">2</text>
                  </g>
                </svg>
                """.formatted(path, PIXEL);
    }

    /** One white pixel. */
    private static final String PIXEL =
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=";
}
