package buildup.cli.drawing.paper;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Views of a stack on the paper of a printer. */
class PicturesOnPaperTest {
    private static final String LOW_SHELF = """
            title: Shelf over the reading room's stove
            space: { floor: -70, ceiling: 8, projection: 8 }
            firebox: { top: -18, left: 14, right: 50 }
            lights:
              - { name: window, altitude: 40, azimuth: 20 }
              - { name: sconce, at: { distance: 30, height: 4 }, width: 4 }
              - { name: skylight, altitude: 70, azimuth: -30 }
            eyes: [{ name: seated, distance: 80, height: floor + 46 }]
            plan:
              - left: { end: return }
                right: { end: return }
                stretches:
                  - { length: 64, corner: inside 90, ceiling: [[0, 8], [64, 7-3/4]] }
                  - { length: 52, corner: inside 90, ceiling: [[0, 7-3/4], [52, 8-1/4]] }
                  - { length: 60, ceiling: [[0, 8-1/4], [60, 8]] }
            pieces:
              - { name: apron, profile: board 3/4 x 4-1/2, back: wall, bottom: 0 }
              - { name: shelf, profile: board 3/4 x 6, lay: flat, back: wall, bottom: apron.top }
            """;

    @TempDir
    private Path folder;

    /** Each page's text; every letter of it must lie on the paper. */
    private List<String> pages(String view) throws Exception {
        Path out = folder.resolve(view + ".pdf");
        Ran ran = Ran.with(
                LOW_SHELF.getBytes(UTF_8), "draw", "-", "--view", view, "--page", "letter", "-o", out.toString());
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                float wide = document.getPage(page - 1).getMediaBox().getWidth();
                PDFTextStripper text = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition letter) {
                        assertThat(letter.getX() + letter.getWidth())
                                .as(letter.getUnicode())
                                .isBetween(0f, wide);
                        super.processTextPosition(letter);
                    }
                };
                text.setStartPage(page);
                text.setEndPage(page);
                pages.add(text.getText(document));
            }
        }
        return pages;
    }

    @Test
    void what_is_not_at_full_size_stands_on_a_page_that_does_not_say_so_and_no_caution_runs_off_the_paper()
            throws Exception {
        List<String> pages = pages("clearance");
        assertThat(String.join("\n", pages)).contains("The local authority and the appliance's label decide.");
        List<String> front =
                pages.stream().filter(page -> page.contains("front, about 1 :")).toList();
        assertThat(front)
                .singleElement()
                .asString()
                .contains("as told")
                .doesNotContain("full size")
                .doesNotContain("This line is");
        assertThat(pages.stream().filter(page -> page.contains("This line is")))
                .as("the section stays at full size")
                .isNotEmpty()
                .allMatch(page -> page.contains("full size"));
    }

    @Test
    void a_picture_that_fits_on_one_page_beside_its_texts_has_no_plan_of_parts() throws Exception {
        List<String> pages = pages("walls");
        assertThat(pages).hasSize(2);
        assertThat(String.join("\n", pages)).doesNotContain("parts").doesNotContain("part 1");
    }

    @Test
    void every_light_has_its_picture_before_those_of_the_eyes() throws Exception {
        Stream<String> shown = pages("rays").stream()
                .flatMap(String::lines)
                .filter(line -> line.matches(".*(In window|In sconce|In skylight|Seen by seated)\\b.*"))
                .map(line -> line.replaceFirst(".*(window|sconce|skylight|seated).*", "$1"))
                .distinct();
        assertThat(shown).containsExactly("window", "sconce", "skylight", "seated");
    }

    @ParameterizedTest
    @CsvSource({"section, --eye, seated, rays", "holds, --light, '35,45', elevation", "plan, --times, 10, season"})
    void an_option_that_changes_nothing_in_a_view_is_refused(String view, String option, String value, String other) {
        Path out = folder.resolve("a.svg");
        Ran ran = Ran.with(LOW_SHELF.getBytes(UTF_8), "draw", "-", "--view", view, option, value, "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err())
                .contains(
                        option + " has no meaning in the view of " + view + ". Leave it out, or take --view " + other);
        assertThat(out).doesNotExist();
    }
}
