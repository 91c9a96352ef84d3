package buildup.cli.command.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
    private static final String JOB = """
            job: { name: Reading room, client: "A. \\"Reader\\" & S\u00f8nner", number: 2217, drawn-by: JB, date: 3 May 2027 }
            revisions: [{ letter: A, date: 1 April 2027, change: first issue }, { letter: B, change: "cap wider" }]
            """;

    private static final String CASE = Ran.read(Ran.demo("reading-room-case.yaml")) + JOB;

    @TempDir
    private Path folder;

    private Path drawn(String yaml, String... options) {
        Path out = folder.resolve("job.pdf");
        List<String> words = new ArrayList<>(List.of("sheets", "-", "-o", out.toString()));
        words.addAll(List.of(options));
        Ran ran = Ran.with(yaml.getBytes(StandardCharsets.UTF_8), words.toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        return out;
    }

    /** What a refused call says. */
    private String said(String yaml, String file) {
        Ran ran = Ran.with(
                yaml.getBytes(StandardCharsets.UTF_8),
                "sheets",
                "-",
                "--only",
                "section",
                "-o",
                folder.resolve(file).toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.REFUSED);
        return ran.err();
    }

    private static List<String> bookmarks(PDDocument document) {
        List<String> names = new ArrayList<>();
        for (PDOutlineItem item =
                        document.getDocumentCatalog().getDocumentOutline().getFirstChild();
                item != null;
                item = item.getNextSibling()) {
            names.add(item.getTitle());
        }
        return names;
    }

    private String text(Path pdf) throws IOException, InterruptedException {
        OutsideTool.Run run = OutsideTool.run(folder, "pdftotext", "-layout", pdf.toString(), "-");
        assertThat(run.code()).isZero();
        return run.output();
    }

    @Test
    void all_that_the_stack_has_data_for_is_drawn_in_its_order_a_bookmark_a_sheet() throws IOException {
        try (PDDocument document = Loader.loadPDF(drawn(CASE).toFile())) {
            assertThat(bookmarks(document))
                    .containsExactly(
                            "Cover",
                            "Section",
                            "Pieces",
                            "Sequence and nails",
                            "Lengths and saw settings",
                            "Sticks and labels",
                            "Light and eyes",
                            "Through the year",
                            "What errors come to",
                            "Material and cost",
                            "Profiles to be milled",
                            "Warnings");
            for (PDPage page : document.getPages()) {
                assertThat(List.of(
                                page.getMediaBox().getWidth(),
                                page.getMediaBox().getHeight()))
                        .containsExactlyInAnyOrder(612f, 792f);
            }
        }
        try (PDDocument document = Loader.loadPDF(
                drawn(Ran.read(Ran.demo("reading-room-cornice.yaml"))).toFile())) {
            assertThat(bookmarks(document))
                    .as("no plan, no seasons")
                    .doesNotContain("Lengths and saw settings", "Sticks and labels", "Through the year");
        }
    }

    @Test
    void only_what_is_asked_for_is_drawn_on_the_page_asked_for() throws IOException {
        try (PDDocument document = Loader.loadPDF(
                drawn(CASE, "--only", "sticks,section", "--page", "arch-d").toFile())) {
            assertThat(bookmarks(document)).containsExactly("Section", "Sticks and labels");
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(24 * 72f);
            assertThat(document.getNumberOfPages())
                    .as("nothing has to be parted")
                    .isEqualTo(2);
        }
    }

    @Test
    void what_nobody_knows_is_refused_with_the_nearest_name() {
        String out = folder.resolve("x.pdf").toString();
        Ran ran = Ran.of("sheets", Ran.demo("reading-room-cornice.yaml").toString(), "--only", "stiks", "-o", out);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("No sheet is called 'stiks'. Did you mean sticks?");
        Ran none = Ran.of("sheets", Ran.demo("reading-room-cornice.yaml").toString(), "--only", "sticks", "-o", out);
        assertThat(none.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(none.err()).contains("holds nothing for the sheet 'sticks'");
        assertThat(Path.of(out)).doesNotExist();
    }

    @Test
    void the_title_block_says_what_the_document_says_and_every_page_which_it_is() throws Exception {
        Path pdf = drawn(CASE);
        String text = text(pdf);
        assertThat(text).contains("Reading room", "A. \"Reader\" & S\u00f8nner", "2217", "3 May 2027", "first issue");
        int pages;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            pages = document.getNumberOfPages();
        }
        assertThat(text)
                .contains(IntStream.rangeClosed(1, pages)
                        .mapToObj(page -> page + " of " + pages)
                        .toArray(String[]::new));
        assertThat(text).contains("Will it be right? yes", "cap", "3/4 x 6-13/16+", "case", "frieze nails");
    }

    /** ISO 19005-2: XMP that says so, an output intent for the colors, fonts in the file, no encryption. */
    @Test
    void the_file_says_that_it_can_be_kept_and_holds_what_that_takes() throws Exception {
        Path pdf = drawn(CASE, "--only", "section,pieces");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Reading-room bookcase cornice, round the case");
            String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertThat(xmp)
                    .contains(
                            "<pdfaid:part>2</pdfaid:part>", "<pdfaid:conformance>B<", "Reading-room bookcase cornice");
            assertThat(document.getDocumentCatalog().getOutputIntents()).hasSize(1);
            assertThat(document.getVersion()).isEqualTo(1.7f);
            assertThat(document.isEncrypted()).isFalse();
            assertThat(document.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
            // nothing of it shines through anything else
            for (PDPage page : document.getPages()) {
                assertThat(page.getResources().getExtGStateNames()).isEmpty();
                assertThat(page.getResources().getXObjectNames()).isEmpty();
                assertThat(page.getCOSObject().getDictionaryObject("Group")).isNull();
            }
        }
        assertThat(OutsideTool.run(folder, "qpdf", "--check", pdf.toString()).code())
                .isZero();
        assertThat(OutsideTool.run(folder, "pdffonts", pdf.toString())
                        .output()
                        .lines()
                        .skip(2))
                .isNotEmpty()
                .allMatch(line -> line.contains("yes yes yes"));
    }

    @Test
    void one_page_of_html_holds_every_sheet_at_its_size_and_a_name_once() {
        Path out = folder.resolve("job.html");
        Ran ran = Ran.of("sheets", Ran.demo("reading-room-case.yaml").toString(), "-q", "-o", out.toString());
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        String html = Ran.read(out);
        assertThat(html).contains("@page sheet1 { size: 8.5in 11in; margin: 0; }", "This line is 4 in", "part 4 of 4");
        List<String> names = Pattern.compile(" id=\"([^\"]+)\"")
                .matcher(html)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(names).doesNotHaveDuplicates().hasSizeGreaterThan(40);
        assertThat(Pattern.compile("url\\(#([^)]+)\\)").matcher(html).results().map(found -> found.group(1)))
                .isNotEmpty()
                .isSubsetOf(names);
    }

    /** Figures of the demo by hand: a cornice of 1-3/4 + 7/8 on a frieze of 5-7/8, of 8-1/2 in all. */
    @Test
    void what_is_judged_beside_the_section_has_sheets_of_its_own() throws Exception {
        String mantel = Ran.read(Ran.demo("reading-room-mantel.yaml"));
        assertThat(text(drawn(mantel, "--only", "proportion,clearance,must")))
                .contains("Beside the books", "cornice 2-5/8, 31 %", "Fire from the front", "What it has to meet")
                .doesNotContain("part 1 of");
        assertThat(text(drawn(mantel, "--only", "sequence"))).contains("Bearing");
        Ran none = Ran.of(
                "sheets",
                Ran.demo("reading-room-cornice.yaml").toString(),
                "--only",
                "cover,clearance",
                "-o",
                folder.resolve("none.pdf").toString());
        assertThat(none.err()).contains("The stack holds nothing for the sheet 'clearance'.");
    }

    @Test
    void no_warnings_says_what_was_not_checked() throws Exception {
        String plain =
                "wood: red-oak\npieces: [{ name: a, profile: board 3/4 x 3-1/2, back: wall, bottom: 0, fixed: wall }]";
        assertThat(text(drawn(plain, "--only", "warnings")).replaceAll("\\s+", " "))
                .contains("No warnings.")
                .contains("Not checked, since the stack does not ask for it: ")
                .contains("proportion (how it stands to the books)", "firebox (how near to a fire)");
    }

    @Test
    void the_same_stack_gives_the_same_bytes() throws IOException {
        byte[] first = Files.readAllBytes(drawn(CASE, "--only", "cover,section,light"));
        assertThat(Files.readAllBytes(drawn(CASE, "--only", "cover,section,light")))
                .isEqualTo(first);
    }

    @Test
    void what_changed_since_an_earlier_document_is_listed_with_the_letter() throws Exception {
        Path old = Files.writeString(
                folder.resolve("old.yaml"), CASE.replace("cove-bed 1-1/4 x 1-3/8", "cove-bed 1-1/8 x 1-1/4"));
        String text = text(drawn(CASE, "--since", old.toString(), "--only", "cover,section"));
        assertThat(text)
                .contains("What differs from old.yaml", "bed: cove-bed 1-1/8 x 1-1/4 -> cove-bed 1-1/4 x 1-3/8");
        assertThat(text(drawn(
                        CASE,
                        "--since",
                        Files.writeString(folder.resolve("same.yaml"), CASE).toString(),
                        "--only",
                        "cover")))
                .contains("What differs from same.yaml", "Nothing.");
    }

    @Test
    void a_story_pole_of_thirty_feet_is_parted_and_every_piece_is_on_it() throws Exception {
        StringBuilder tall = new StringBuilder("title: Tall\nwood: red-oak\nspace: { floor: -360 }\npieces:\n");
        for (int rail = 0; rail <= 10; rail++) {
            tall.append("  - { name: \"rail '")
                    .append(rail)
                    .append("'\", profile: board 3/4 x 5-1/2, back: wall, bottom: ")
                    .append(-5.5 - 34 * rail)
                    .append(" }\n");
        }
        Path pdf = drawn(tall.toString(), "--only", "story-pole");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            // 8.7 in of every page hold 360 in but for what laps: 44 pages and the plan of them
            assertThat(document.getNumberOfPages()).isBetween(44, 48);
        }
        assertThat(text(pdf))
                .contains("Heights over the floor.", "360 rail '0' top", "354-1/2 rail '0' bottom", "20 rail '10' top")
                .doesNotContain("left out");
    }

    @Test
    void where_a_story_pole_has_no_mark_for_long_it_is_left_out_and_the_distance_is_told_at_both_ends()
            throws Exception {
        String tall = "title: Tall\nwood: red-oak\nspace: { floor: -360 }\npieces:\n"
                + "  - { name: band, profile: board 3/4 x 5-1/2, back: wall, bottom: -5-1/2 }\n"
                + "  - { name: \"low 'rail'\", profile: board 3/4 x 3-1/2, back: wall, bottom: floor + 36 }\n";
        Path pdf = drawn(tall, "--only", "story-pole");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isLessThan(12);
        }
        // the next whole inches 2 in and more beyond 39-1/2 and 354-1/2
        assertThat(text(pdf))
                .contains("360 band top", "36 low 'rail' bottom", "Where nothing is marked the pole is left out")
                .contains("42 measure from here: 310 up to the line at 352")
                .contains("352 measure from here: 310 down to the line at 42");
    }

    @Test
    void a_story_pole_without_a_floor_begins_at_the_lowest_piece() throws Exception {
        String loose = "title: Loose\nwood: red-oak\npieces:\n"
                + "  - { name: band, profile: board 3/4 x 5-1/2, back: wall, bottom: 1 }\n";
        assertThat(text(drawn(loose, "--only", "story-pole")))
                .contains("Heights over the datum.", "1 band bottom", "6-1/2 band top")
                .doesNotContain("floor");
    }

    @Test
    void the_strip_to_tape_up_is_one_page_wide_and_bears_heights_over_the_floor() throws Exception {
        String text = text(drawn(CASE, "--only", "strip"));
        assertThat(text).contains("94-15/16+ cap top", "84 bead bottom", "part 2 joins here");
        assertThat(text).doesNotContain("block A");
    }

    /** A cove of 1 in just takes a bearing of 2 in, and no larger one. */
    @Test
    void a_template_says_where_an_inside_curve_is_tighter_than_the_bearing() throws Exception {
        String cove = "title: Cove\nwood: red-oak\ntemplates: { bearing: SIZE, bushing: 5/8, bit: 1/4 }\npieces:\n"
                + "  - { name: bed, section: [out 1/4, cove 1, up 1/4], back: wall, bottom: 0 }\n"
                + "ends: [{ name: scroll, section: [out 3, up 1] }]\n";
        String fits = text(drawn(cove.replace("SIZE", "2"), "--only", "templates"));
        assertThat(fits).doesNotContain("Tighter inside").contains("bed, other hand", "scroll, other hand");
        // half of 5/8 less 1/4
        assertThat(fits).contains("make the template 0.188");
        assertThat(text(drawn(cove.replace("SIZE", "2-1/4"), "--only", "templates")))
                .contains("Tighter inside than the bearing, radius 1.125")
                .contains("the bearing where the inside is tightest, radius 1.125")
                // half of 5/8, beside a template whose edge is drawn
                .contains("the bushing where the inside is tightest, radius 0.313")
                .contains("edge of the template for the bushing");
    }

    /** A nose of 1/4 has no room for an offset of 3/16 from both sides, and has for one of 1/8 less 1/64. */
    @Test
    void a_template_for_a_bushing_says_which_part_it_would_cut_off() throws Exception {
        String nose = "title: Nose\nwood: red-oak\ntemplates: { bushing: 5/8, bit: BIT }\npieces:\n"
                + "  - { name: lip, section: [out 1, up 1, out 1/2, up 1/4], back: wall, bottom: 0 }\n";
        assertThat(text(drawn(nose.replace("BIT", "1/4"), "--only", "templates"))
                        .replaceAll("\\s+", " "))
                .contains(
                        "holds nothing thinner than 0.375: the piece is 0.250 at its thinnest, and up to 0.515 of it would be"
                                + " cut off.")
                .contains("Take a bushing less than 0.250 larger than its bit")
                .contains("Sharp outside corners come out round, radius 0.188.");
        assertThat(text(drawn(nose.replace("BIT", "13/32"), "--only", "templates")))
                .contains("For a bushing of 0.625")
                .doesNotContain("cut off");
    }

    @Test
    void a_bushing_without_its_bit_or_with_a_larger_one_is_refused() throws Exception {
        String bed = "title: Bed\nwood: red-oak\ntemplates: { BOTH }\npieces:\n"
                + "  - { name: bed, section: [out 1/4, cove 1, up 1/4], back: wall, bottom: 0 }\n";
        assertThat(said(bed.replace("BOTH", "bushing: 5/8"), "t.pdf")).contains("A bushing without a bit does not say");
        assertThat(said(bed.replace("BOTH", "bit: 1/4"), "t.pdf")).contains("A bit without a bushing does not say");
        assertThat(said(bed.replace("BOTH", "bushing: 5/8, bit: 3/4"), "t.pdf"))
                .contains("does not go through a bushing of 0.625");
    }

    @Test
    void a_file_whose_ending_names_no_kind_is_refused_and_not_written() throws Exception {
        assertThat(said(CASE, "n.docx")).contains("The ending of", "n.docx names no kind of file");
        assertThat(folder.resolve("n.docx")).doesNotExist();
    }

    @Test
    void returns_and_copes_have_templates_of_their_own() throws Exception {
        String corner = "title: Corner\nwood: red-oak\npieces:\n"
                + "  - { name: bed, section: [out 1/4, cove 1, up 1/4], back: wall, bottom: 0 }\n"
                + "plan: [{ inside: cope, left: return, right: return, stretches:"
                + " [{ length: 48, corner: inside 90 }, { length: 36 }] }]\n";
        String text = text(drawn(corner, "--only", "templates")).replaceAll("\\s+", " ");
        assertThat(text)
                .contains("bed, return: make 1; turned over, other hand: make 1", "from above, the wall below")
                .contains("cope line: saw along it", "Cope at an inside corner of 90°, full size");
    }

    @Test
    void without_warnings_the_sheet_says_what_was_not_checked() throws Exception {
        String quiet = "title: Quiet\nwood: red-oak\nspace: { floor: 0, wall: { solid: yes } }\npieces:\n"
                + "  - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor, fixed: wall }\n";
        assertThat(text(drawn(quiet, "--only", "warnings")))
                .contains("No warnings.", "Not checked, since the stack does not ask for it:");
    }

    @Test
    void forty_pieces_with_blanks_quotes_and_other_scripts_in_their_names_are_drawn() throws Exception {
        StringBuilder yaml = new StringBuilder("title: \"Forty \\\"pieces\\\"\"\nwood: red-oak\npieces:\n");
        for (int i = 0; i < 40; i++) {
            yaml.append("  - { name: \"\u043a\u0430\u0440\u043d\u0438\u0437 '")
                    .append(i)
                    .append("' \u03b1 b\"");
            yaml.append(", profile: board 3/4 x 2, lay: flat, back: wall, bottom: ")
                    .append(i)
                    .append(" }\n");
        }
        String escaped = yaml.toString();
        String text = text(drawn(escaped, "--only", "section,pieces"));
        assertThat(text).contains("\u043a\u0430\u0440\u043d\u0438\u0437 '39' \u03b1 b", "Forty \"pieces\"");
    }
}
