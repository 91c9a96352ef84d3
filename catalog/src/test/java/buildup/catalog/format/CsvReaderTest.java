package buildup.catalog.format;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.outline.Point;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvReaderTest {
    private static final List<Point> EXPECTED = List.of(new Point(0.5, 1.25), new Point(-2, 3), new Point(4, 0.75));

    private static Inboxed read(String text) {
        return Inboxed.of(text, "gauge.csv");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.5,1.25\n-2,3\n4,.75\n",
                "0.5;1.25\r\n-2;3\r\n4;.75",
                "0,5;1,25\n-2;3\n4;0,75\n",
                "0.5\t1.25\n-2\t3\n4\t.75\n",
                "0,5\t1,25\n-2\t3\n4\t0,75\n",
                "  0.5   1.25 \n-2 3\n4  0.75",
                "0,5 1,25\n-2 3\n4 0,75",
                "x,y\n0.5, 1.25\n-2, 3\n4, 0.75\n",
                "X\tY\n0.5\t1.25\n-2\t3\n4\t0.75\n",
                "x,y\n0,5;1,25\n-2;3\n4;0,75\n",
                "# of the old mantel\n0.5,1.25\n// the nose\n-2,3\n4,.75e0\n",
                "\uFEFF\"x\",\"y\"\n\"0.5\",\"1.25\"\n\"-2\",\"3\"\n\"4\",\"0.75\"\n",
                "0.5,1.25,\n\u22122,3,\n4,7.5E-1,\n",
                "no,y,z,x\n1,1.25,9,0.5\n2,3,9,-2\n3,0.75,9,4\n"
            })
    void a_gauge_is_read_however_its_fields_are_parted(String text) {
        Inboxed read = read(text);
        assertThat(read.points()).isEqualTo(EXPECTED);
        assertThat(read.only().closed()).isFalse();
        assertThat(read.notices()).isEmpty();
        assertThat(read.drawn().orElseThrow().unit()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "x (mm),y (mm)\n1,2\n3,4\n",
                "x [mm];y [mm]\n1;2\n3;4\n",
                "x (mm),y\n1,2\n3,4\n",
                "units: mm\n1,2\n3,4\n",
                "# units = millimetres\n1,2\n3,4\n",
                "units,mm\nx,y\n1,2\n3,4\n"
            })
    void the_unit_stands_in_the_header_or_in_a_remark(String text) {
        Inboxed read = read(text);
        assertThat(read.drawn().orElseThrow().unit()).contains(LengthUnit.MILLIMETER);
        assertThat(read.points()).containsExactly(new Point(1, 2), new Point(3, 4));
        assertThat(read.notices()).isEmpty();
    }

    @Test
    void two_units_are_refused() {
        Inboxed read = read("x (mm),y (in)\n1,2\n3,4\n");
        assertThat(read.drawn()).isEmpty();
        assertThat(read.codes()).containsExactly("two-units");
        assertThat(read.lines()).containsExactly(1);
    }

    @Test
    void a_unit_that_nobody_knows_is_told() {
        Inboxed read = read("x (cubit),y (cubit)\n1,2\n3,4\n");
        assertThat(read.drawn().orElseThrow().unit()).isEmpty();
        assertThat(read.said()).contains("'cubit' is not a unit");
    }

    @Test
    void blank_lines_part_trails() {
        Inboxed read = read("0,0\n1,0\n\n\n0,5\n1,5\n2,5\n\n9,9\n");
        assertThat(read.trails()).hasSize(2);
        assertThat(read.trails().get(1).points()).hasSize(3);
        assertThat(read.codes()).containsExactly("one-point");
        assertThat(read.lines()).containsExactly(9);
    }

    @Test
    void every_bad_line_is_told_with_its_number_and_the_others_are_kept() {
        Inboxed read = read("0,0\n1;0\n2,zero\n3,NaN\n4,Infinity\n5,1e308\n6,1,2\n7,\n8,8\n");
        assertThat(read.points()).containsExactly(new Point(0, 0), new Point(8, 8));
        assertThat(read.codes()).hasSize(7).containsOnly("not-a-point");
        assertThat(read.lines()).containsExactly(2, 3, 4, 5, 6, 7, 8);
        assertThat(read.notices()).allMatch(notice -> notice.level() == Level.PROBLEM);
        assertThat(read.said()).contains("'zero' is not a number", "'1e308' is far beyond any drawing", "3 fields");
    }

    @Test
    void no_number_in_the_first_line_is_not_taken_for_a_header() {
        Inboxed read = read("NaN,inf\n1,2\n3,4\n");
        assertThat(read.lines()).containsExactly(1);
        assertThat(read.points()).hasSize(2);
    }

    @Test
    void very_many_bad_lines_are_counted() {
        Inboxed read = read("0,0\n1,1\n" + "what\n".repeat(5_000));
        assertThat(read.notices()).hasSize(101);
        assertThat(read.said()).contains("4900 more like these, the last of them in line 5002");
    }

    @Test
    void a_hundred_thousand_points_are_read_and_one_more_is_refused() {
        Inboxed read = read("1.25,2.5\n".repeat(100_000));
        assertThat(read.points()).hasSize(100_000);
        Inboxed more = read("1.25,2.5\n".repeat(100_001));
        assertThat(more.drawn()).isEmpty();
        assertThat(more.codes()).containsExactly("too-many-points");
        assertThat(more.said()).contains("100000");
    }

    @Test
    void letters_of_older_programs_do_no_harm() {
        byte[] latin = "# gr\u00f6\u00dfe\n1,2\n3,4\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(Inboxed.of(latin, "a.csv").points()).hasSize(2);
        byte[] wide = "\uFEFFx,y\n1,2\n3,4\n".getBytes(StandardCharsets.UTF_16LE);
        assertThat(Inboxed.of(wide, "a.csv").points()).hasSize(2);
        assertThat(Inboxed.of("1,2\n3,4\n\u001a\u001a\n", "a.csv").notices()).isEmpty();
    }
}
