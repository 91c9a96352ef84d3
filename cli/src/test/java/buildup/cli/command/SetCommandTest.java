package buildup.cli.command;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetCommandTest {
    private static final Ran QUIET = new Ran(ExitCode.CLEAN, "", "");

    @TempDir
    private Path folder;

    private Path stack;
    private String before;

    @BeforeEach
    void a_stack_of_ones_own() {
        before = Ran.read(Ran.demo("reading-room-cornice.yaml"));
        stack = written(before);
    }

    private Path written(String text) {
        try {
            return Files.writeString(folder.resolve("mine.yaml"), text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Ran set(String... words) {
        String[] all = new String[words.length + 2];
        all[0] = "set";
        all[1] = stack.toString();
        System.arraycopy(words, 0, all, 2, words.length);
        return Ran.of(all);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "title | Another cornice | title: Reading-room bookcase cornice | title: Another cornice",
                "sizes.lip | 7/8 | lip: 1, | lip: 7/8,",
                "frieze.profile | board 3/4 x 5 | board 3/4 x 5-1/2 | board 3/4 x 5",
                "cap.flip | over | bottom: crown.top } | bottom: crown.top, flip: over }",
                "eyes.seated.height | floor + 40 | floor + 46 | floor + 40",
                "case.section | [out 12, up 90-1/4] | [out 14, up 90-1/4] | [out 12, up 90-1/4]",
                "bed.back | -1/2 | back: frieze.face, top: frieze.top | back: -1/2, top: frieze.top",
            })
    void the_file_changes_in_one_place(String place, String value, String from, String to) {
        assertThat(set(place, value)).isEqualTo(QUIET);
        int last = before.lastIndexOf(from);
        assertThat(Ran.read(stack)).isEqualTo(before.substring(0, last) + to + before.substring(last + from.length()));
    }

    @Test
    void a_new_name_goes_wherever_the_old_one_is_mentioned() {
        assertThat(set("crown.name", "upper crown")).isEqualTo(QUIET);
        assertThat(Ran.read(stack))
                .isEqualTo(before.replace("name: crown,", "name: upper crown,")
                        .replace("crown.top", "upper crown.top")
                        .replace("crown.face", "upper crown.face")
                        .replace("piece: crown,", "piece: upper crown,"));
    }

    @Test
    void from_standard_input_it_goes_to_standard_output() {
        assertThat(Ran.with(before.getBytes(UTF_8), "set", "-", "wood", "white-oak"))
                .isEqualTo(new Ran(ExitCode.CLEAN, before.replace("wood: yellow-poplar", "wood: white-oak"), ""));
    }

    @Test
    void another_file_may_take_it() {
        Path other = folder.resolve("other.yaml");
        assertThat(set("title", "x", "-o", other.toString())).isEqualTo(QUIET);
        assertThat(Ran.read(stack)).isEqualTo(before);
        assertThat(Ran.read(other)).isEqualTo(before.replace("title: Reading-room bookcase cornice", "title: x"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u00A6',
            value = {
                "bead.profile | bord 3/4 x 5 | refusal  mine.yaml:20:28  bead: No profile is called 'bord'. Did you mean board?",
                "frieze.flpi | over | refusal  mine.yaml:21:79  No key is called 'flpi' in 'pieces'. Did you mean flip?",
                "frieze.bottom | bed.top | refusal  mine.yaml:21:69  frieze: frieze is placed on bed, bed is placed on frieze. Place one of them on the wall, the floor or the datum.",
                "freize.bottom | 0 | refusal  mine.yaml  Nothing in the document is called 'freize'. Did you mean frieze?",
                "title.x | 0 | refusal  mine.yaml  'title' holds one value, so there is no 'x' in it. Name 'title' itself.",
                "cap.name | bed | refusal  mine.yaml  There is a piece called 'bed' already. Take a name that is free.",
            })
    void what_its_reader_would_refuse_is_said_and_the_file_stays(String place, String value, String said) {
        Ran ran = set(place, value);
        assertThat(ran).isEqualTo(new Ran(ExitCode.REFUSED, "", said + "\n"));
        assertThat(Ran.read(stack)).isEqualTo(before);
    }

    @Test
    void a_stack_with_two_faults_is_mended_one_by_one() {
        stack = written(
                before.replace("wood: yellow-poplar", "wood: yelow-poplar").replace("cove-bed", "cave-bed"));
        Ran first = set("wood", "yellow-poplar");
        assertThat(first.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(first.err()).contains("cave-bed").doesNotContain("poplar");
        assertThat(Ran.read(stack)).isEqualTo(before.replace("cove-bed", "cave-bed"));
        assertThat(set("bed.profile", "cove-bed 1-1/4 x 1-3/8")).isEqualTo(QUIET);
        assertThat(Ran.read(stack)).isEqualTo(before);
    }

    @Test
    void lists_of_ones_own_are_read_too() throws IOException {
        Path lists = Files.writeString(
                folder.resolve("lists.yaml"), "woods:\n  - { name: my-pine, density: 27, specific-gravity: 0.38 }\n");
        Ran without = set("wood", "my-pine");
        assertThat(without.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(Ran.read(stack)).isEqualTo(before);
        Ran with = set("wood", "my-pine", "--catalog", lists.toString());
        assertThat(with.err())
                .isEqualTo(Ran.of("report", stack.toString(), "--catalog", lists.toString())
                        .err()
                        .lines()
                        .filter(line -> line.startsWith("refusal"))
                        .map(line -> line + "\n")
                        .reduce("", String::concat));
    }

    @Test
    void a_file_that_is_not_text_is_left_alone() throws IOException {
        byte[] bytes = "title: f\u00FCr\npieces: []\n".getBytes(ISO_8859_1);
        Files.write(stack, bytes);
        assertThat(set("title", "x").err())
                .isEqualTo("refusal  mine.yaml:1:9  mine.yaml is not a text file in UTF-8."
                        + " Save it as text in UTF-8, or name the right file.\n");
        assertThat(Files.readAllBytes(stack)).isEqualTo(bytes);
    }

    @Test
    void a_file_that_is_not_there_is_told() {
        assertThat(Ran.of("set", folder.resolve("mein.yaml").toString(), "title", "x"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  mein.yaml  There is no file " + folder.resolve("mein.yaml")
                                + ". Did you mean mine.yaml?\n"));
    }

    @Test
    void what_cannot_be_written_is_told_apart() {
        Path absent = folder.resolve("none");
        assertThat(set("title", "x", "-o", absent.resolve("x.yaml").toString()))
                .isEqualTo(new Ran(
                        ExitCode.NOT_WRITTEN,
                        "",
                        "refusal  mine.yaml  There is no folder " + absent + ". Make it first.\n"));
        OutputStream closed = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("closed");
            }
        };
        Streams streams =
                Streams.of(new ByteArrayInputStream(before.getBytes(UTF_8)), closed, new ByteArrayOutputStream());
        assertThat(Buildup.run(streams, "set", "-", "title", "x")).isEqualTo(ExitCode.NOT_WRITTEN);
    }

    @Test
    void links_and_rights_of_the_file_stay() throws IOException {
        assumeThat(Files.getFileStore(stack).supportsFileAttributeView("posix")).isTrue();
        Files.setPosixFilePermissions(stack, PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), stack);
        assertThat(Ran.of("set", link.toString(), "title", "x")).isEqualTo(QUIET);
        assertThat(link).isSymbolicLink();
        assertThat(Ran.read(stack)).contains("title: x\n");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(stack)))
                .isEqualTo("rw-rw----");
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void a_value_that_is_there_already_leaves_the_file_alone() throws IOException {
        Files.setLastModifiedTime(stack, java.nio.file.attribute.FileTime.fromMillis(0));
        assertThat(set("units", "in")).isEqualTo(QUIET);
        assertThat(Files.getLastModifiedTime(stack).toMillis()).isZero();
    }

    @Test
    void words_too_many_or_too_few_are_a_usage_error() {
        assertThat(set("title").code()).isEqualTo(ExitCode.REFUSED);
        assertThat(set("title", "x", "y").err()).startsWith("buildup: nothing here is called y");
        assertThat(set("title", "x", "--ouput").err()).startsWith("buildup: nothing here is called --ouput");
        assertThat(Ran.read(stack)).isEqualTo(before);
    }
}
