package buildup.cli.drawing.mill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.drawing.LabelFaults;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.profiles.Profile;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import buildup.shared.document.Scalar;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet by which a profile is run: spring, radii and kerfs are dimensioned, and nothing lies on anything else. */
class ProfileSheetTest {
    private static final Catalog CATALOG = Catalog.builtIn();

    @TempDir
    private java.nio.file.Path folder;

    private static Profile profile(String call) {
        Notices notices = new Notices();
        return CATALOG.profile(
                        new Scalar(call, new Mark("test", 1, 1)),
                        Catalog.USUAL_BOARDS,
                        new LengthReader(LengthUnit.INCH, Map.of()),
                        notices)
                .orElseThrow(() -> new AssertionError(notices.sorted()));
    }

    private static Scene sheet(Profile profile) {
        return sheet(profile, 16);
    }

    private static Scene sheet(Profile profile, double room) {
        Milled milled = Milling.of(profile, CATALOG, Optional.empty(), List.of(), new Notices());
        RunProfile run = new RunProfile(profile, milled, room, Drawn.FONT, new FigurePrinter(LengthUnit.INCH));
        return ProfileSheet.of(run, List.of(), 0.3);
    }

    private static List<String> texts(Scene scene) {
        return scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .toList();
    }

    static Stream<Profile> all() {
        return CATALOG.families().stream()
                .flatMap(family -> CATALOG.usualCalls(family.name(), LengthUnit.INCH).stream())
                .map(ProfileSheetTest::profile);
    }

    @Test
    void on_the_sheet_of_every_profile_of_the_catalog_texts_keep_clear_and_every_radius_is_told() {
        int sprung = 0;
        int arcs = 0;
        for (Profile profile : all().toList()) {
            Scene scene = sheet(profile);
            assertThat(LabelFaults.of(scene)).as(profile.name()).isEmpty();
            assertThat(LabelFaults.lines(scene)).as(profile.name()).isEmpty();
            List<String> texts = texts(scene);
            if (profile.stick() instanceof Profile.Spring) {
                sprung++;
                assertThat(texts).as(profile.name()).anyMatch(text -> text.startsWith("spring "));
            }
            if (profile.asRun().segments().stream().anyMatch(Arc.class::isInstance)) {
                arcs++;
                assertThat(texts).as(profile.name()).anyMatch(text -> text.startsWith("Radii: "));
                assertThat(texts).as(profile.name()).anyMatch(text -> text.startsWith("R "));
            }
        }
        assertThat(sprung).isGreaterThan(10);
        assertThat(arcs).isGreaterThan(50);
    }

    /** On a page too narrow for it to lie, a long stick stands. */
    @Test
    void so_do_those_of_profiles_that_stand() {
        for (Profile profile : all().toList()) {
            Scene scene = sheet(profile, 3);
            assertThat(LabelFaults.of(scene)).as(profile.name()).isEmpty();
            assertThat(LabelFaults.lines(scene)).as(profile.name()).isEmpty();
        }
        assertThat(LabelFaults.of(sheet(profile("plain-crown 5-1/4"), 5))).isEmpty();
    }

    @Test
    void the_angle_of_a_sprung_molding_is_that_between_its_back_and_the_flat_that_meets_the_wall() {
        Profile crown = profile("plain-crown 3-1/4");
        double spring = ((Profile.Spring) crown.stick()).sprung().spring();
        Scene scene = sheet(crown);
        assertThat(texts(scene)).contains("spring " + Math.round(spring) + "°", Math.round(90 - spring) + "°");
        // arcs as long as those angles are wide
        List<Double> angles = scene.leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.DIMENSION)
                .flatMap(item -> ((Path) item).segments().stream())
                .filter(Arc.class::isInstance)
                .map(segment -> Math.toDegrees(segment.length() / ((Arc) segment).radius()))
                .toList();
        assertThat(angles).hasSize(2);
        assertThat(angles.get(0)).isCloseTo(spring, within(1e-6));
        assertThat(angles.get(1)).isCloseTo(90 - spring, within(1e-6));
    }

    @Test
    void the_place_of_a_kerf_is_dimensioned_from_the_edge_that_a_fence_runs_along() throws Exception {
        java.nio.file.Path catalog = java.nio.file.Files.writeString(
                folder.resolve("own.yaml"),
                "profiles:\n  - name: sill\n    words: [out 1, drip 1/4 x 3/8 as kerf, out to 4, up 3/4, in 4]\n");
        java.nio.file.Path out = folder.resolve("sill.svg");
        Ran ran = Ran.of(
                "profile", "sill 3/4 x 4", "--catalog", catalog.toString(), "--view", "sheet", "-o", out.toString());
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        assertThat(Ran.read(out))
                .contains(">1</text>", ">4</text>", "Groove 1/4 wide, 3/8 deep, 1 to 1-1/4 from the back.");
    }

    @Test
    void the_spacing_of_the_grid_is_told_and_is_that_of_its_lines() {
        Scene scene = sheet(profile("cove-bed 1-1/4 x 1-3/8"));
        assertThat(texts(scene)).contains("Grid 1/4 in.");
        List<Double> upright = scene.leaves().stream()
                .filter(item -> item instanceof Path path
                        && (path.style() == LineStyle.GRID || path.style() == LineStyle.GRID_INCH))
                .flatMap(item -> ((Path) item).segments().stream())
                .filter(Line.class::isInstance)
                .map(Segment::box)
                .filter(box -> box.width() < 1e-9)
                .map(Box::back)
                .distinct()
                .sorted()
                .toList();
        assertThat(upright).hasSizeGreaterThan(4);
        for (int i = 1; i < upright.size(); i++) {
            assertThat(upright.get(i) - upright.get(i - 1)).isCloseTo(0.25, within(1e-9));
        }
    }

    @Test
    void the_pages_of_a_stack_say_the_moisture_or_leave_a_line_to_write_it_on() {
        java.nio.file.Path out = folder.resolve("profiles.html");
        for (String demo : List.of("reading-room-cornice.yaml", "reading-room-case.yaml")) {
            Ran.of("sheets", Ran.demo(demo).toString(), "--only", "profiles", "-q", "-o", out.toString());
            boolean seasons = Ran.read(Ran.demo(demo)).contains("\nseasons:");
            assertThat(Ran.read(out))
                    .containsPattern(
                            seasons
                                    ? "Moisture of the wood when it is run: [0-9.]+ %"
                                    : "Moisture of the wood when it is run: _+ %");
        }
    }
}
