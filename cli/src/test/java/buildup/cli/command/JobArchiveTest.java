package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A job that is sent as one archive, and archives that somebody else has sent. */
class JobArchiveTest {
    /** Names with blanks, quotes and other scripts; one catalog that the stack names, one that is given beside it. */
    private static final String STACK = """
            title: 'Gesims "Ω", 暖炉'
            catalog: [lists/unsere Hölzer.yaml]
            wood: bog-oak
            ends: [{ name: scroll, profile: whorl 2 }]
            pieces:
              - { name: 'brett ü', profile: board 3/4 x 5-1/2, back: wall, bottom: 0, wood: shop-pine }
              - { name: crown, profile: cove-bed 1-1/4 x 1-3/8, back: brett ü.face, bottom: brett ü.top - 3 }
            plan: [{ left: return, right: return, stretches: [{ length: 96 }] }]
            """;

    private static final String HOELZER = """
            woods:
              - { name: bog-oak, density: 60 }
            """;

    /** A profile that was traced, as a catalog keeps it. */
    private static final String EXTRA = """
            woods:
              - { name: shop-pine, density: 27 }
            profiles:
              - { name: whorl, kind: trim, about: a scroll, sizes: [width], words: [out width, up 1, in 1/2, up 1/2] }
            """;

    @TempDir
    private Path folder;

    private Path stack;
    private Path extra;
    private Path zip;

    @BeforeEach
    void write() throws IOException {
        Path home = Files.createDirectories(folder.resolve("Große Bücherei"));
        stack = Files.writeString(home.resolve("Gesims Ω 暖炉.yaml"), STACK);
        Files.createDirectory(home.resolve("lists"));
        Files.writeString(home.resolve("lists/unsere Hölzer.yaml"), HOELZER);
        extra = Files.writeString(folder.resolve("extra.yaml"), EXTRA);
        zip = folder.resolve("job.zip");
    }

    private Ran sent(Path to) {
        return Ran.of("sheets", stack.toString(), "--catalog", extra.toString(), "-o", to.toString());
    }

    private static byte[] entry(Path archive, String name) throws IOException {
        try (ZipFile file = new ZipFile(archive.toFile())) {
            ZipEntry entry = file.getEntry(name);
            assertThat(entry).as(name).isNotNull();
            return file.getInputStream(entry).readAllBytes();
        }
    }

    @Test
    void an_archive_answers_whatever_is_asked_as_the_files_do_that_it_was_made_of() throws IOException {
        Ran written = sent(zip);
        assertThat(written.code()).as(written.err()).isLessThan(ExitCode.REFUSED);
        List<List<String>> questions = List.of(
                List.of("report", "STACK", "--format", "json"),
                List.of("report", "STACK"),
                List.of("report", "STACK", "--format", "csv"),
                List.of("check", "STACK"),
                List.of("cuts", "STACK"),
                List.of(
                        "search",
                        "STACK",
                        "--free",
                        "brett ü.bottom=between 0 and 1 by 1/4, now 0",
                        "--must",
                        "height <= 9",
                        "--tries",
                        "4"),
                List.of("draw", "STACK", "--to", "dxf", "-o", "-"),
                List.of("sheets", "STACK", "--only", "cover,pieces", "-o", "-"));
        for (List<String> question : questions) {
            List<String> words = new ArrayList<>(question);
            words.set(1, zip.toString());
            Ran here = Ran.of(words.toArray(String[]::new));
            words.set(1, stack.toString());
            words.addAll(List.of("--catalog", extra.toString()));
            Ran there = Ran.of(words.toArray(String[]::new));
            assertThat(here.code()).as(here.err()).isLessThan(ExitCode.REFUSED);
            assertThat(timeless(here)).as(question.toString()).isEqualTo(timeless(there));
        }
        assertThat(entry(zip, "report.json"))
                .isEqualTo(Ran.of("report", zip.toString(), "--format", "json")
                        .out()
                        .getBytes(UTF_8));
        assertThat(new String(entry(zip, "sheets.pdf"), UTF_8)).startsWith("%PDF");
        assertThat(entry(zip, "stack/Gesims Ω 暖炉.yaml")).isEqualTo(Files.readAllBytes(stack));
    }

    /** Without how long a search took. */
    private static Ran timeless(Ran ran) {
        return new Ran(ran.code(), ran.out().replaceAll("[0-9.]+ s(econds)?\\b", "s"), ran.err());
    }

    @Test
    void the_same_job_is_the_same_archive_and_so_is_that_of_its_archive() throws IOException {
        sent(zip);
        Path second = folder.resolve("second.zip");
        sent(second);
        assertThat(second).hasSameBinaryContentAs(zip);
        Path third = folder.resolve("third.zip");
        Ran.of("sheets", zip.toString(), "-o", third.toString());
        assertThat(third).hasSameBinaryContentAs(zip);
    }

    @Test
    void unpacked_and_packed_again_by_somebody_else_it_still_opens() throws IOException {
        sent(zip);
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry one : file.stream().toList()) {
                entries.put("my job/" + one.getName(), entry(zip, one.getName()));
            }
        }
        Path again = zip("again.zip", entries);
        assertThat(Ran.of("report", again.toString())).isEqualTo(Ran.of("report", zip.toString()));
    }

    @Test
    void an_earlier_job_can_be_compared_with() throws IOException {
        sent(zip);
        Files.writeString(stack, STACK.replace("5-1/2", "3-1/2"));
        Ran since = Ran.of(
                "sheets",
                stack.toString(),
                "--catalog",
                extra.toString(),
                "--since",
                zip.toString(),
                "--only",
                "cover",
                "-o",
                folder.resolve("since.pdf").toString());
        assertThat(since.code()).as(since.err()).isLessThan(ExitCode.REFUSED);
        Ran beside = Ran.of("report", zip.toString(), stack.toString(), "--catalog", extra.toString());
        assertThat(beside.out()).contains("Gesims");
    }

    @ParameterizedTest
    @ValueSource(strings = {"set STACK title x", "fmt STACK"})
    void nothing_is_changed_in_an_archive(String command) throws IOException {
        sent(zip);
        byte[] before = Files.readAllBytes(zip);
        Ran ran = Ran.of(Stream.of(command.split(" "))
                .map(word -> word.equals("STACK") ? zip.toString() : word)
                .toArray(String[]::new));
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("job.zip is an archive, in which nothing is changed. Unpack it");
        assertThat(zip).hasBinaryContent(before);
    }

    private Path zip(String name, Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream archive = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> one : entries.entrySet()) {
                archive.putNextEntry(new ZipEntry(one.getKey()));
                archive.write(one.getValue());
                archive.closeEntry();
            }
        }
        return Files.write(folder.resolve(name), out.toByteArray());
    }

    private static void refused(Path archive, String says) {
        Ran ran = Ran.of("report", archive.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains(says).doesNotContain("went wrong");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void an_archive_of_something_else_is_refused_with_what_to_do() throws IOException {
        refused(
                zip("photos.zip", Map.of("beach.txt", new byte[10])),
                "photos.zip is an archive, and none that 'sheets -o JOB.zip' has written. Unpack it");
        refused(zip("empty.zip", Map.of()), "empty.zip is an archive, and none that");
        refused(
                zip("list.zip", Map.of("job.txt", "stack: stack/a.yaml\n".getBytes(UTF_8))),
                "list.zip lists 'stack/a.yaml', and does not hold it.");
        refused(zip("bare.zip", Map.of("job.txt", "hello\n".getBytes(UTF_8))), "bare.zip is an archive, and none");
    }

    @Test
    void a_damaged_archive_is_refused() throws IOException {
        sent(zip);
        byte[] whole = Files.readAllBytes(zip);
        for (int length : new int[] {4, 100, whole.length / 2, whole.length - 1}) {
            Path cut = Files.write(folder.resolve("cut.zip"), java.util.Arrays.copyOf(whole, length));
            refused(cut, "cut.zip is an archive that cannot be read. It may be damaged or locked");
        }
        byte[] spoiled = whole.clone();
        for (int i = 40; i < 400; i++) {
            spoiled[i] ^= 0x55;
        }
        Ran ran = Ran.of(
                "report", Files.write(folder.resolve("spoiled.zip"), spoiled).toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("spoiled.zip").doesNotContain("went wrong");
    }

    @Test
    void no_entry_leads_out_of_the_archive() throws IOException {
        Files.writeString(folder.resolve("secret.yaml"), STACK);
        for (String way :
                List.of("../secret.yaml", folder.resolve("secret.yaml").toString(), "stack/../../secret.yaml")) {
            Path archive = zip("way.zip", Map.of("job.txt", ("stack: " + way + "\n").getBytes(UTF_8)));
            refused(archive, "way.zip lists '" + way + "', and does not hold it.");
        }
        // held under such a name, it is read from the archive, and nothing is written anywhere
        Path archive = zip(
                "held.zip",
                Map.of(
                        "job.txt", "stack: ../a.yaml\n".getBytes(UTF_8),
                        "../a.yaml", "pieces: [{ name: a, profile: 1x4, back: wall, bottom: 0 }]".getBytes(UTF_8)));
        assertThat(Ran.of("report", archive.toString()).code()).isLessThan(ExitCode.REFUSED);
        assertThat(folder.resolve("a.yaml")).doesNotExist();
        assertThat(folder.getParent().resolve("a.yaml")).doesNotExist();
    }

    @Test
    void what_swells_is_read_no_further_than_a_document_may_reach() throws IOException {
        byte[] zeros = new byte[64 << 20];
        Path bomb = zip("bomb.zip", Map.of("job.txt", "stack: stack/a.yaml\n".getBytes(UTF_8), "stack/a.yaml", zeros));
        assertThat(Files.size(bomb)).isLessThan(200_000);
        refused(bomb, "stack/a.yaml holds more than 1 MiB");
        Path list = zip("list.zip", Map.of("job.txt", zeros));
        refused(list, "job.txt holds more than 1 MiB");
        // what is not listed is not opened
        Path beside = zip(
                "beside.zip",
                Map.of(
                        "job.txt",
                        "stack: a.yaml\n".getBytes(UTF_8),
                        "a.yaml",
                        "title: x\npieces: [{ name: a, profile: 1x4, back: wall, bottom: 0 }]".getBytes(UTF_8),
                        "sheets.pdf",
                        zeros));
        assertThat(Ran.of("check", beside.toString()).err()).doesNotContain("MiB");
    }

    @Test
    void archives_with_too_much_in_them_are_refused() throws IOException {
        Map<String, byte[]> many = new LinkedHashMap<>();
        for (int i = 0; i < 1001; i++) {
            many.put("file-" + i, new byte[0]);
        }
        refused(zip("many.zip", many), "many.zip holds 1001 files; an archive may hold 1000.");
        Path large = zip("large.zip", Map.of("job.txt", new byte[1]));
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(70L << 20);
        }
        refused(large, "large.zip holds 70 MiB; an archive may hold 64 MiB.");
    }

    @Test
    void a_folder_takes_an_svg_a_sheet() throws IOException {
        Path svgs = folder.resolve("sheets");
        Ran ran = Ran.of(
                "sheets", stack.toString(), "--catalog", extra.toString(), "--only", "cover,pieces", "-o", svgs + "/");
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        assertThat(svgs).isDirectoryContaining(file -> file.endsWith("1-cover.svg"));
        assertThat(svgs).isDirectoryContaining(file -> file.endsWith("2-pieces.svg"));
        assertThat(Files.readString(svgs.resolve("1-cover.svg"))).contains("width=\"8.5in\"", "Ω");
        byte[] first = Files.readAllBytes(svgs.resolve("2-pieces.svg"));
        Ran.of(
                "sheets",
                stack.toString(),
                "--catalog",
                extra.toString(),
                "--only",
                "cover,pieces",
                "-o",
                svgs.toString());
        assertThat(svgs.resolve("2-pieces.svg")).hasBinaryContent(first);
        Ran outlined = Ran.of(
                "sheets",
                stack.toString(),
                "--catalog",
                extra.toString(),
                "--only",
                "pieces",
                "--outline-text",
                "-o",
                svgs.toString());
        assertThat(outlined.code()).isLessThan(ExitCode.REFUSED);
        assertThat(Files.readString(svgs.resolve("1-pieces.svg"))).doesNotContain("<text");
    }
}
