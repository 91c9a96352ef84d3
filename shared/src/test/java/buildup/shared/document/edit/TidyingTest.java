package buildup.shared.document.edit;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TidyingTest {

    private static String tidy(String text) {
        Notices notices = new Notices();
        String tidy = Tidying.layOut("cornice.yaml", text, notices).orElse("");
        assertThat(notices.sorted()).isEmpty();
        assertThat(Tidying.layOut("cornice.yaml", tidy, notices)).contains(tidy);
        return tidy;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\u00A6',
            value = {
                "a: {b: 1,c : 2}| a: { b: 1, c: 2 }",
                "a: {  b:   1 ,  c: [ 1,2 , 3 ]  }| a: { b: 1, c: [1, 2, 3] }",
                "a: [ {b: 1} ]| a: [{ b: 1 }]",
                "a: { }| a: {}",
                "a: [  ]| a: []",
                "a:     1| a: 1",
                "a : 1| a: 1",
                "a: {\"b\":1}| a: { \"b\": 1 }",
                "a: {b, c: }| a: { b, c: }",
                "a: [b: 1]| a: [b: 1]",
                "a: &x  1| a: &x 1",
                "a: !!str   1| a: !!str 1",
                "a: 'x  y'| a: 'x  y'",
                "a: x  y| a: x  y",
            })
    void blanks_within_a_line(String loose, String tidy) {
        assertThat(tidy(loose + "\n")).isEqualTo(tidy + "\n");
    }

    @Test
    void steps_of_indentation() {
        assertThat(tidy("a:\n- b:   1\n  c:\n        - 2\n-    d: 1\n     e: 2\n- - x\n  -   y\n"))
                .isEqualTo("a:\n  - b: 1\n    c:\n      - 2\n  - d: 1\n    e: 2\n  - - x\n    - y\n");
        assertThat(tidy("  a:\n     b: 1\n  c:\n   1\n")).isEqualTo("a:\n  b: 1\nc:\n  1\n");
        assertThat(tidy("a:\n  ?   b\n  :   1\n")).isEqualTo("a:\n  ? b\n  : 1\n");
        assertThat(tidy("a:\n -\n     b: 1\n     c: 2\n")).isEqualTo("a:\n  -\n    b: 1\n    c: 2\n");
        assertThat(tidy("---\na: 1\n...\n")).isEqualTo("---\na: 1\n...\n");
    }

    @Test
    void brackets_over_several_lines() {
        assertThat(tidy("a: {\nb: 1,\n      c: [\n2,\n3\n]\n}\n"))
                .isEqualTo("a: {\n  b: 1,\n  c: [\n      2,\n      3\n    ]\n}\n"
                        .replace("      2", "    2")
                        .replace("      3", "    3")
                        .replace("    ]", "  ]"));
        assertThat(tidy("- x\n".replace("- x", "a:\n - { b: 1,\n  c: 2 }")))
                .isEqualTo("a:\n  - { b: 1,\n      c: 2 }\n");
    }

    @Test
    void blank_lines_and_ends() {
        assertThat(tidy("\n\na: 1   \n\n \n\nb: 2\n\n\n")).isEqualTo("a: 1\n\nb: 2\n");
        assertThat(tidy("a: 1")).isEqualTo("a: 1\n");
        assertThat(tidy("\uFEFFa:  1\r\n\r\n\r\nb:  2")).isEqualTo("\uFEFFa: 1\r\n\r\nb: 2\r\n");
    }

    @Test
    void comments_stay_and_stand_as_what_they_are_about() {
        assertThat(tidy("# head\n\na:   # of a\n# of b\n- b\n     # of c\n- c\n# of d\nd: 1\n    # the end\n"))
                .isEqualTo("# head\n\na:   # of a\n  # of b\n  - b\n  # of c\n  - c\n# of d\nd: 1\n# the end\n");
        assertThat(tidy("a:\n   - b\n   # - left out\n   # - this too\nc: 1\n"))
                .isEqualTo("a:\n  - b\n  # - left out\n  # - this too\nc: 1\n");
        assertThat(tidy("a:\n   - b\n   # - left out\n   # - this too"))
                .isEqualTo("a:\n  - b\n  # - left out\n  # - this too\n");
        assertThat(tidy("a: {\n# of b\n b: 1, # B\n}\n")).isEqualTo("a: {\n  # of b\n  b: 1, # B\n}\n");
    }

    @Test
    void a_comment_that_was_set_off_keeps_its_column_where_there_is_room() {
        assertThat(tidy("a: {b: 1}     # one\nabc:  2       # two\nd:   {e: 1,f: 2,g: 3}  # three\nx:     1 # four\n"))
                .isEqualTo("a: { b: 1 }   # one\nabc: 2        # two\nd: { e: 1, f: 2, g: 3 } # three\nx: 1 # four\n");
    }

    @Test
    void texts_over_several_lines_go_along() {
        assertThat(tidy("a:\n- |\n     one\n       two\n\n     three\n- >-\n  four\n"))
                .isEqualTo("a:\n  - |\n       one\n         two\n\n       three\n  - >-\n    four\n");
        assertThat(tidy("a:\n    b: one\n     two\n    c: \"x\n      y\"\n"))
                .isEqualTo("a:\n  b: one\n    two\n  c: \"x\n    y\"\n");
        assertThat(tidy("a:\n     b: |+\n      one\n\n\n     c: 1\n")).isEqualTo("a:\n  b: |+\n   one\n\n\n  c: 1\n");
    }

    @Test
    void what_cannot_be_read_is_refused() {
        Notices notices = new Notices();
        assertThat(Tidying.layOut("cornice.yaml", "a: [1\n", notices)).isEmpty();
        assertThat(notices.sorted().stream().map(NoticeWords.INCHES::message))
                .containsExactly("A bracket is opened in line 1 and not closed, or a comma is missing.");
    }

    @Test
    void what_would_say_something_else_is_refused() {
        Notices notices = new Notices();
        // a key that repeats another text is read, and is nothing that can be laid out
        assertThat(Tidying.layOut("cornice.yaml", "a: &x b\n*x : 1\n", notices)).isEmpty();
        assertThat(notices.sorted().stream().map(NoticeWords.INCHES::message))
                .containsExactly(
                        "The document is written in a way that cannot be laid out without changing what it says.");
    }

    /** Long files are done in a breath: nothing is looked for again and again. */
    @Test
    void time_grows_with_the_file_only() {
        String flow = "a: [" + "1,".repeat(60_000) + "1]\n";
        String comments = "a: 1 # c\n" + "# x\n".repeat(40_000) + "b: 1\n";
        String lines = "a:\n" + "- x # c\n".repeat(20_000);
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(30), () -> {
            for (String text : new String[] {flow, comments, lines}) {
                tidy(text);
                Edited.set(text, "new", "1").gives(text + "new: 1\n");
            }
            Edited.remove(flow, "a.2").gives(flow.replace("[1,1,", "[1,"));
            Edited.move(lines, "a.2", 10_000).gives(lines);
        });
    }
}
