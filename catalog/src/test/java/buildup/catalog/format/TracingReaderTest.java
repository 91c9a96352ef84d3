package buildup.catalog.format;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TracingReaderTest {
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg'><line x2='3' y2='4'/></svg>";
    private static final String DXF = "0\nSECTION\n2\nENTITIES\n0\nLINE\n11\n3\n21\n4\n0\nENDSEC\n0\nEOF\n";

    @Test
    void what_a_file_is_it_says_itself() {
        assertThat(Inboxed.of("\n " + SVG, "a.csv").points()).hasSize(2);
        assertThat(Inboxed.of(DXF, "stdin").points()).hasSize(2);
        assertThat(Inboxed.of("999\nby hand\n" + DXF.replace("\n", "\r\n"), "a.svg.txt")
                        .points())
                .hasSize(2);
        assertThat(Inboxed.of(DXF.replace('\n', '\r'), "a.dxf").points()).hasSize(2);
        assertThat(Inboxed.of("0,0\n3,4", "whatever").points()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n\t\n", "\uFEFF"})
    void an_empty_file_is_refused(String text) {
        assertThat(Inboxed.of(text, "a.csv").codes()).containsExactly("empty-file");
        assertThat(Inboxed.of(text, "a.svg").codes()).containsExactly("empty-file");
        assertThat(Inboxed.of(text, "a.dxf").codes()).containsExactly("empty-file");
    }

    @Test
    void a_binary_file_is_refused() {
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13};
        assertThat(Inboxed.of(picture, "a.csv").codes()).containsExactly("binary-file");
        byte[] packed = {0x1f, (byte) 0x8b, 8, 0};
        assertThat(Inboxed.of(packed, "a.svg").said()).contains("packed");
        byte[] noise = new byte[5000];
        new Random(4).nextBytes(noise);
        assertThat(Inboxed.of(noise, "a.dxf").codes()).containsExactly("binary-file");
    }

    @Test
    void a_binary_dxf_is_refused_with_the_way_out() {
        byte[] binary = "Some Binary DXF\r\n\u001a\u0000\u0000\u0000SECTION".getBytes(StandardCharsets.ISO_8859_1);
        Inboxed read = Inboxed.of(binary, "a.dxf");
        assertThat(read.codes()).containsExactly("binary-dxf");
        assertThat(NoticeWords.INCHES.cure(read.notices().get(0))).isEqualTo("Save it as ASCII DXF.");
    }

    @Test
    void a_file_over_the_bound_is_refused_unread() {
        Inboxed read = Inboxed.of(new byte[TracingReader.GREATEST_BYTES + 1], "a.csv");
        assertThat(read.codes()).containsExactly("file-too-large");
        assertThat(read.said()).contains("16 MiB");
    }

    @ParameterizedTest
    @CsvSource({"'1,2', a.csv, one-point", "'# nothing', a.csv, no-points", "'1,1\n1,1', a.svg, svg-error"})
    void what_holds_no_trail_is_refused(String text, String name, String code) {
        Inboxed read = Inboxed.of(text, name);
        assertThat(read.drawn()).isEmpty();
        assertThat(read.codes()).contains(code);
        assertThat(read.notices()).allMatch(notice -> notice.level() == Level.REFUSAL);
    }

    /** Where time grew with the square of the length, these would not end. */
    @Test
    void long_runs_of_nothing_are_passed_in_one_go() {
        String blanks = " ".repeat(2_000_000);
        String svg = "<svg xmlns='http://www.w3.org/2000/svg'>";
        assertThat(Inboxed.of("units" + blanks + "!\n1,1\n2,2\n", "a.csv").codes())
                .containsExactly("not-a-point");
        assertThat(Inboxed.of(svg + "<style>url(" + blanks + "#a)</style><line x2='1'/></svg>", "a.svg")
                        .points())
                .hasSize(2);
        assertThat(Inboxed.of(svg + "<g style='display" + blanks + "x'><line x2='1'/></g></svg>", "a.svg")
                        .points())
                .hasSize(2);
        assertThat(Inboxed.of(svg + "<line x2='1" + blanks + "!'/></svg>", "a.svg")
                        .codes())
                .containsExactly("no-points", "svg-error");
        assertThat(Inboxed.of(svg + "<path d='M0 0L" + "1".repeat(2_000_000) + "'/></svg>", "a.svg")
                        .codes())
                .containsExactly("no-points", "svg-error");
        assertThat(Inboxed.of("<!DOCTYPE svg" + blanks + "x>" + svg + "</svg>", "a.svg")
                        .codes())
                .containsExactly("outside-reference");
        assertThat(Inboxed.of(blanks + "0" + blanks, "a.txt").codes()).containsExactly("no-points", "not-a-point");
    }

    /** Files torn off, and files with letters changed, give trails or notices, and nothing else. */
    @ParameterizedTest
    @ValueSource(strings = {SVG, DXF, "x (mm);y (mm)\n0,5;1\n2;3\n"})
    void no_damage_makes_it_stumble(String whole) {
        Random random = new Random(20261125);
        for (int round = 0; round < 2_000; round++) {
            StringBuilder text = new StringBuilder(whole.substring(0, random.nextInt(whole.length() + 1)));
            for (int i = random.nextInt(4); i > 0 && text.length() > 0; i--) {
                text.setCharAt(
                        random.nextInt(text.length()), "0123456789<>&;,.-+eE\"'\n xMmZA/=".charAt(random.nextInt(31)));
            }
            Inboxed read = Inboxed.of(text.toString(), "a.txt");
            assertThat(read.drawn().isPresent() || !read.notices().isEmpty())
                    .as(text.toString())
                    .isTrue();
        }
    }
}
