package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.shared.text.Marks;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks that steer a screen or make two names alike reach nothing that is written, wherever they stand. */
class UnseenMarksTest {
    private static final String DOCUMENT = """
            title: "Led%1$sge"
            wood: yellow-poplar
            eyes: [{ name: "sit%1$sting", distance: 60, height: 40 }]
            lights: [{ name: "lam%1$sp", altitude: 40, azimuth: 30 }]
            pieces:
              - { name: "she%1$slf", profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 0 }
              - { name: rail, profile: board 3/4 x 3, back: wall, top: 0 }
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(ints = {0x1B, 0x9B, 0x200B, 0x2028, 0x202E, 0x2066, 0xFEFF, 0xAD})
    void in_a_document_they_are_left_out_with_a_note(int mark) throws IOException {
        String document = DOCUMENT.formatted("\\U%08X".formatted(mark));
        List<String> written = new ArrayList<>();
        for (String format : List.of("text", "json", "html")) {
            Ran ran = Ran.report(document, "--format", format);
            written.add(ran.out());
            written.add(ran.err());
            assertThat(ran.out() + ran.err()).contains("Marks that nobody sees have been left out");
        }
        for (String view : List.of("section", "elevation", "rays")) {
            for (String kind : List.of("svg", "dxf")) {
                Path out = folder.resolve(view + "." + kind);
                Ran.with(document.getBytes(UTF_8), "draw", "-", "--view", view, "-o", out.toString());
                written.add(Files.readString(out, kind.equals("svg") ? UTF_8 : Charset.forName("windows-1252")));
            }
        }
        assertThat(written).allSatisfy(UnseenMarksTest::assertSeen);
    }

    /** Words of a PDF are read as a reader copies them: also its title, its bookmarks and what programs file it by. */
    @Test
    void of_pages_and_of_the_answers_of_a_search_neither_words_nor_names_hold_any() throws IOException {
        String marks = Stream.of(0x1B, 0x9B, 0x200B, 0x2028, 0x202E, 0x2066, 0xFEFF, 0xAD, 0x3164, 0x1D173, 0xE0041)
                .map("\\U%08X"::formatted)
                .collect(Collectors.joining());
        byte[] document = (DOCUMENT.formatted(marks) + """
                job: { name: "Haw%1$sthorn", client: "cli%1$sent" }
                revisions: [{ letter: A, date: "20%1$s26", change: "hig%1$sher" }]
                must: [height <= 60]
                """.formatted(marks)).getBytes(UTF_8);
        for (String kind : List.of("pdf", "html", "zip")) {
            for (String command : kind.equals("pdf") ? List.of("draw", "sheets") : List.of("sheets")) {
                String out = folder.resolve(command + "." + kind).toString();
                assertThat(Ran.with(document, command, "-", "-o", out).code()).isLessThanOrEqualTo(ExitCode.PROBLEM);
            }
        }
        Ran.with(
                document,
                "sheets",
                "-",
                "--only",
                "cover,section",
                "-o",
                folder.resolve("sheets/").toString() + "/");
        Ran searched = Ran.with(
                document,
                "search",
                "-",
                "--free",
                "pieces.rail.top=between 0 and 1 by 1/2, now 0",
                "-o",
                folder.resolve("answers").toString());
        assertSeen(searched.out());
        List<Path> written;
        try (Stream<Path> files = Files.walk(folder)) {
            written = files.filter(Files::isRegularFile).sorted().toList();
        }
        assertThat(written).hasSizeGreaterThan(7).anyMatch(path -> path.endsWith("answers/index.html"));
        for (Path path : written) {
            assertSeen(folder.relativize(path).toString());
            String name = path.toString();
            if (name.endsWith(".pdf")) {
                read(path).forEach(UnseenMarksTest::assertSeen);
            } else if (!name.endsWith(".zip")) {
                assertSeen(Files.readString(path));
            }
        }
        assertThat(read(folder.resolve("sheets.pdf"))).anyMatch(words -> words.matches("(?s).*Haw +thorn.*"));
    }

    private static List<String> read(Path pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            List<String> words = new ArrayList<>(List.of(
                    new PDFTextStripper().getText(read),
                    Objects.requireNonNullElse(read.getDocumentInformation().getTitle(), ""),
                    // a packet begins with a byte order mark: Adobe, XMP Specification Part 3, 2.6.1, from memory
                    new String(read.getDocumentCatalog().getMetadata().toByteArray(), UTF_8)
                            .replace("begin=\"\uFEFF\"", "")));
            PDDocumentOutline outline = read.getDocumentCatalog().getDocumentOutline();
            for (PDOutlineItem item : outline == null ? List.<PDOutlineItem>of() : outline.children()) {
                words.add(item.getTitle());
            }
            return words;
        }
    }

    @Test
    void names_that_differ_by_what_nobody_sees_are_one_name() {
        Ran ran = Ran.report("""
                pieces:
                  - { name: shelf, profile: 1x4, back: wall, bottom: 0 }
                  - { name: "shelf\\u200B", profile: 1x4, back: wall, bottom: 10 }
                """);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("shelf: twice");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x1B, 0x9B, 0x200B, 0x2028, 0x202E})
    void on_the_command_line_they_reach_no_screen(int mark) throws IOException {
        String word = "a" + Character.toString(mark) + "[31mb";
        Path odd = folder.resolve(word + ".yaml");
        List<Ran> all = new ArrayList<>(List.of(
                Ran.of(word),
                Ran.of("report", word),
                Ran.of("report", word, "--format", "json"),
                Ran.of("check", word),
                Ran.of("report", "x", "--" + word),
                Ran.of("report", "x", "--format", word),
                Ran.of("draw", Ran.demo("reading-room-cornice.yaml").toString(), "-o", word),
                Ran.of("draw", Ran.demo("reading-room-cornice.yaml").toString(), "--light", word, "-o", "x.svg"),
                Ran.of("profile", word),
                Ran.of("profile", word, "--format", "json"),
                Ran.of("profile", word, "--format", "html"),
                Ran.of("trace", word, "--name", word, "--units", word, "--kind", word),
                Ran.of("new", word),
                Ran.of("schema", word),
                Ran.of("set", Ran.demo("reading-room-cornice.yaml").toString(), word, word, "-o", odd.toString())));
        Files.writeString(odd, "title: a\npieces: [{name: b, profile: 1x4, back: wall, bottom: 0}]\n");
        all.add(Ran.of("report", odd.toString()));
        all.add(Ran.of("report", odd.toString(), "--format", "json"));
        all.add(Ran.of("report", odd.toString(), "--format", "html"));
        all.add(Ran.of("report", odd.toString(), odd.toString()));
        all.add(Ran.of("check", odd.toString()));
        all.add(Ran.of("check", odd.toString(), "--format", "json"));
        all.forEach(ran -> {
            assertSeen(ran.out());
            assertSeen(ran.err());
        });
    }

    private static void assertSeen(String text) {
        assertThat(Marks.none(text)).as(text).isTrue();
    }
}
