package buildup.catalog.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgReaderTest {
    private static final double EXACT = 1e-12;
    private static final String HEAD =
            "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'";

    private static Inboxed svg(String inside) {
        return Inboxed.of(HEAD + ">" + inside + "</svg>", "a.svg");
    }

    private static Inboxed path(String data) {
        return svg("<path d='" + data + "'/>");
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static Point last(Trail trail) {
        return trail.points().get(trail.points().size() - 1);
    }

    /** In user units, y up: the height of a sheet that states none is 0. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "M1 2L3 2L3 5H1Z",
                "M1,2 3,2 3,5 1,5z",
                "m1 2 2 0v3h-2z",
                "M 1 2 l 2 0 0 3 -2 0 Z",
                "M1-0L1 2M1 2H3V5 L 1 , 5 Z",
                "M1e0 20e-1h2.v3h-2z",
                "m0 0M1 2l2.0.0 0 3-2 0z"
            })
    void a_square_is_a_square_however_it_is_written(String data) {
        List<Trail> trails = path(data).trails();
        Trail square = trails.get(trails.size() - 1);
        assertThat(square.closed()).isTrue();
        assertThat(square.points()).containsExactly(p(1, -2), p(3, -2), p(3, -5), p(1, -5));
    }

    @Test
    void behind_a_closing_the_next_starts_where_the_last_did() {
        List<Trail> trails = path("M1 1h2v2zl5 5").trails();
        assertThat(trails).hasSize(2);
        assertThat(trails.get(1).points()).containsExactly(p(1, -1), p(6, -6));
        assertThat(trails.get(1).closed()).isFalse();
    }

    @Test
    void arcs_have_flags_without_anything_behind_them() {
        // half a circle of radius 1 from (0,0) to (2,0), toward greater angles: over the top as seen
        Trail half = path("M0 0a1 1 0 012 0").only();
        assertThat(half.points())
                .hasSizeGreaterThan(16)
                .allSatisfy(point -> assertThat(point.distance(p(1, 0))).isCloseTo(1, within(EXACT)));
        assertThat(half.points().stream().mapToDouble(Point::y).max().orElseThrow())
                .isCloseTo(1, within(1e-4));
        assertThat(last(half)).isEqualTo(p(2, 0));
        assertThat(path("M0 0a1 1 0 102 0").only().points().stream()
                        .mapToDouble(Point::y)
                        .min()
                        .orElseThrow())
                .isCloseTo(-1, within(1e-4));
    }

    /** S and T go on from the handle before, turned about the joint; behind anything else their handle is the joint. */
    @Test
    void smooth_curves_go_on_from_the_handle_before() {
        assertThat(path("M0 0C0 1 1 1 1 0S2 -1 2 0").points())
                .isEqualTo(path("M0 0C0 1 1 1 1 0C1 -1 2 -1 2 0").points());
        assertThat(path("M0 0q1 2 2 0t2 0").points())
                .isEqualTo(path("M0 0Q1 2 2 0Q3 -2 4 0").points());
        assertThat(path("M0 0h1s1 1 2 0").points())
                .isEqualTo(path("M0 0h1c0 0 1 1 2 0").points());
        assertThat(path("M0 0c0 1 1 1 1 0t2 1").points())
                .isEqualTo(path("M0 0c0 1 1 1 1 0q0 0 2 1").points());
    }

    @Test
    void the_shapes_are_read() {
        Inboxed read = svg("<line x1='1' y1='2' x2='3' y2='4'/><polyline points='0,0 1,0,1,1'/>"
                + "<polygon points='0 0 1 0 1 1'/><rect x='1' y='1' width='2' height='3'/>"
                + "<rect width='4' height='4' rx='1'/><circle cx='5' cy='5' r='2'/><ellipse rx='3' ry='1'/>");
        assertThat(read.notices()).isEmpty();
        List<Trail> trails = read.trails();
        assertThat(trails).hasSize(7);
        assertThat(trails.stream().map(Trail::closed)).containsExactly(false, false, true, true, true, true, true);
        assertThat(Math.abs(Inboxed.area(trails.get(2)))).isCloseTo(0.5, within(EXACT));
        assertThat(Math.abs(Inboxed.area(trails.get(3)))).isCloseTo(6, within(EXACT));
        // the corners of a rounded square leave (4 - pi) r^2
        assertThat(Math.abs(Inboxed.area(trails.get(4)))).isCloseTo(16 - (4 - Math.PI), within(1e-3));
        assertThat(Math.abs(Inboxed.area(trails.get(5)))).isCloseTo(4 * Math.PI, within(1e-3));
        assertThat(Math.abs(Inboxed.area(trails.get(6)))).isCloseTo(3 * Math.PI, within(1e-3));
    }

    @Test
    void transforms_nest_and_lists_work_from_the_last() {
        Inboxed read = svg("<g transform='translate(10,0)'><g transform='rotate(90) scale(2)'>"
                + "<line x1='0' y1='0' x2='3' y2='1' transform='matrix(1 0 0 1 1 0)'/></g></g>");
        // (0,0) and (3,1), moved by 1, doubled, turned a quarter toward y, moved by 10; then y up
        assertThat(read.points()).containsExactly(p(10, -2), p(8, -8));
        assertThat(svg("<line x2='1' transform='rotate(180 1 1)'/>").points()).containsExactly(p(2, -2), p(1, -2));
        assertThat(svg("<line y2='1' transform='skewX(45)'/>").points().get(1).distance(p(1, -1)))
                .isLessThan(EXACT);
        assertThat(svg("<line x2='1' transform='skewY(45), scale(2 1)'/>")
                        .points()
                        .get(1)
                        .distance(p(2, -2)))
                .isLessThan(EXACT);
    }

    @ParameterizedTest
    @CsvSource({
        "width='100mm' height='50mm' viewBox='0 0 200 100', MILLIMETER, 0.5, 50",
        "width='4in' height='2in' viewBox='0 0 4 2', INCH, 1, 2",
        "width='4in' viewBox='10 10 8 4', INCH, 0.5, 7",
        "width='4cm' height='9cm' viewBox='0 0 4 4', CENTIMETER, 1, 4",
        "width='72pt' height='72pt' viewBox='0 0 2 2', INCH, 0.5, 1",
        "width='10in' height='10in', INCH, 0.010416666666666666, 10",
        "width='10in' height='20in' viewBox='0 0 10 10' preserveAspectRatio='xMidYMid slice', INCH, 2, 20"
    })
    void the_size_of_the_sheet_gives_the_scale(String sheet, LengthUnit unit, double scale, double top) {
        Inboxed read = Inboxed.of(HEAD + " " + sheet + "><line x1='0' x2='6'/></svg>", "a.svg");
        assertThat(read.drawn().orElseThrow().unit()).contains(unit);
        assertThat(read.points().get(0).distance(read.points().get(1))).isCloseTo(6 * scale, within(1e-9));
        assertThat(read.points().get(0).y()).isCloseTo(top, within(1e-9));
        assertThat(read.points().get(0).x()).isCloseTo(sheet.contains("10 10 8") ? -5 : 0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "width='100%' height='100%'", "width='640' height='480px' viewBox='0 0 64 48'"})
    void a_sheet_without_true_size_has_no_unit(String sheet) {
        Inboxed read = Inboxed.of(HEAD + " " + sheet + "><line x1='0' x2='6'/></svg>", "a.svg");
        assertThat(read.drawn().orElseThrow().unit()).isEmpty();
        assertThat(read.points().get(1).x()).isEqualTo(6);
    }

    @Test
    void a_stretched_sheet_is_stretched() {
        Inboxed read = Inboxed.of(
                HEAD
                        + " width='2in' height='6in' viewBox='0 0 1 1' preserveAspectRatio='none'><line x2='1' y2='1'/></svg>",
                "a.svg");
        assertThat(read.points()).containsExactly(p(0, 6), p(2, 0));
    }

    @Test
    void what_is_no_line_is_counted_and_what_is_hidden_is_not_drawn() {
        Inboxed read = svg(
                "<defs><path d='M0 0h9'/></defs><text>x</text><text>y</text><foreignObject/>"
                        + "<g style='fill:none; display:none'><line x2='7'/></g><line x2='1' display='none'/>"
                        + "<title>t</title><metadata><q xmlns='urn:q'/></metadata><z xmlns='urn:z'><line x2='8'/></z><line x2='2'/>");
        assertThat(read.points()).containsExactly(p(0, 0), p(2, 0));
        assertThat(read.codes()).containsExactly("not-read");
        assertThat(read.said()).contains("1 foreignObject, 2 hidden, 2 text");
    }

    @Test
    void the_usual_document_type_is_passed_over() {
        String type = "<?xml version='1.0' encoding='UTF-8' standalone='no'?>\n<!-- <!DOCTYPE trap> -->\n"
                + "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\"\n \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n";
        Inboxed read = Inboxed.of(type + HEAD + "><line x2='1'/><rect width='-1'/></svg>", "a.svg");
        assertThat(read.only().points()).hasSize(2);
        // lines are still counted as the file has them
        assertThat(read.lines()).containsExactly(5);
    }

    @Test
    void an_entity_bomb_is_refused() {
        String bomb = "<?xml version='1.0'?>\n<!DOCTYPE svg [\n<!ENTITY a 'aaaaaaaaaa'>\n"
                + "<!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'>\n<!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;'>\n]>\n";
        Inboxed read = Inboxed.of(bomb + HEAD + "><path d='&c;'/></svg>", "a.svg");
        assertThat(read.drawn()).isEmpty();
        assertThat(read.codes()).containsExactly("entity-bomb");
        assertThat(read.lines()).containsExactly(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg SYSTEM \"file:///etc/hostname\">%s</svg>",
                "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://example.org/svg11.dtd'>%s</svg>",
                "<?xml-stylesheet href='http://example.org/a.css'?>%s</svg>",
                "%s<use xlink:href='other.svg#a'/></svg>",
                "%s<style>@import 'http://example.org/a.css';</style></svg>",
                "%s<defs><style><![CDATA[ a { fill: url( \"http://example.org/a.svg#b\" ) }]]></style></defs></svg>",
                "%s<rect fill='url(other.svg#a)' width='1' height='1'/></svg>",
                "%s<script src='a.js'/></svg>"
            })
    void a_reference_to_outside_is_refused(String file) {
        Inboxed read = Inboxed.of(file.replace("%s", HEAD + "><line x2='1'/>"), "a.svg");
        assertThat(read.drawn()).isEmpty();
        assertThat(read.codes()).containsExactly("outside-reference");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"photo.jpg", "file:///etc/hostname", "http://example.org/a.png", "data:image/png;base64,AAAA"})
    void a_photo_is_never_opened_and_told_with_the_way_round_it(String photo) {
        Inboxed beside = svg("<image xlink:href='" + photo + "'/><line x2='2'/>");
        assertThat(beside.points()).hasSize(2);
        assertThat(beside.codes()).containsExactly("not-read");
        assertThat(NoticeWords.INCHES.cure(beside.notices().get(0))).startsWith("Draw the outline over it");
        Inboxed alone = svg("<g><image href='" + photo + "'/></g>");
        assertThat(alone.drawn()).isEmpty();
        assertThat(alone.codes()).containsExactly("no-points");
        assertThat(NoticeWords.INCHES.cure(alone.notices().get(0))).startsWith("Draw the outline over it");
    }

    @Test
    void what_is_used_is_drawn_where_the_use_puts_it() {
        Inboxed read = svg(
                "<defs><g id='a' transform='scale(2)'><line id='b' x2='1'/></g></defs>"
                        + "<use xlink:href='#a' x='10' y='1'/><g transform='translate(0 5)'><use href='#b' transform='scale(3)'/></g>");
        assertThat(read.notices()).isEmpty();
        assertThat(read.trails().get(0).points()).containsExactly(p(10, -1), p(12, -1));
        assertThat(read.trails().get(1).points()).containsExactly(p(0, -5), p(3, -5));
        assertThat(read.trails().get(0).layers()).containsExactly("a", "b");
    }

    /** SVG 1.1, section 7.8: a box of 4 x 2 in a place of 8 x 8 is shown twice as large, in the middle. */
    @Test
    void symbols_and_nested_drawings_are_shown_in_their_places() {
        Inboxed read = svg(
                "<symbol id='s' viewBox='1 1 4 2'><line x1='1' y1='1' x2='5' y2='3'/></symbol>"
                        + "<use href='#s' x='10' y='20' width='8' height='8'/>"
                        + "<svg x='1' y='2' width='8' height='8' viewBox='0 0 4 2' preserveAspectRatio='xMinYMin'><line x2='4' y2='2'/></svg>");
        assertThat(read.trails().get(0).points()).containsExactly(p(10, -22), p(18, -26));
        assertThat(read.trails().get(1).points()).containsExactly(p(1, -2), p(9, -6));
    }

    @Test
    void uses_of_nothing_of_themselves_and_by_the_thousand_are_told() {
        Inboxed nothing = svg("<use href='#gone'/><line x2='1'/>");
        assertThat(nothing.points()).hasSize(2);
        assertThat(nothing.codes()).containsExactly("outside-reference");
        assertThat(svg("<g id='a'><use href='#a'/></g>").codes()).containsExactly("too-deep");
        StringBuilder bomb = new StringBuilder("<line id='l0' x2='1'/>");
        for (int i = 1; i < 12; i++) {
            bomb.append("<g id='l").append(i).append("'>");
            for (int k = 0; k < 10; k++) {
                bomb.append("<use href='#l").append(i - 1).append("'/>");
            }
            bomb.append("</g>");
        }
        assertThat(svg(bomb.toString()).codes()).containsExactly("too-many-points");
    }

    @Test
    void groups_and_elements_can_be_chosen_by_name_or_label() {
        String file = HEAD + " xmlns:d='urn:drawing'><g id='g1' d:label='Frame'><line x2='9'/></g>"
                + "<g id='g2' d:label='Profile'><line x2='1'/><line id='edge' x2='2'/></g></svg>";
        assertThat(Inboxed.of(file, "a.svg", "profile").trails()).hasSize(2);
        assertThat(Inboxed.of(file, "a.svg", "g1").points().get(1)).isEqualTo(p(9, 0));
        assertThat(Inboxed.of(file, "a.svg", "edge").points().get(1)).isEqualTo(p(2, 0));
        Inboxed none = Inboxed.of(file, "a.svg", "Outline");
        assertThat(none.drawn()).isEmpty();
        assertThat(NoticeWords.INCHES.cure(none.notices().get(0)))
                .isEqualTo("Its layers are g1, Frame, g2, Profile and edge.");
    }

    @Test
    void what_points_within_the_file_or_only_links_is_no_reference_to_outside() {
        Inboxed read = svg("<style>a { fill: url(#g); mask: url('#m') }</style><a xlink:href='http://example.org/'>"
                + "<line x2='1' stroke='url(#g)'/></a><image xlink:href='data:image/png;base64,AAAA'/>");
        assertThat(read.points()).hasSize(2);
        assertThat(read.codes()).containsExactly("not-read");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<svg",
                "<svg xmlns='http://www.w3.org/2000/svg'><g></svg>",
                "<html><path d='M0 0h1'/></html>",
                "<!DOCTYPE svg",
                "<svg>&x;</svg>"
            })
    void what_is_no_svg_is_refused(String text) {
        Inboxed read = Inboxed.of(text, "a.svg");
        assertThat(read.drawn()).isEmpty();
        assertThat(read.codes()).containsExactly("svg-error");
    }

    @Test
    void deep_nesting_is_refused() {
        Inboxed read = svg("<g>".repeat(100_000));
        assertThat(read.codes()).containsExactly("too-deep");
    }

    @ParameterizedTest
    @CsvSource({
        "M0 0L1 1L2, 9",
        "M0 0L1 1 x, 10",
        "M0 0h1L1e308 0, 8",
        "M0 0h1LNaN 0, 8",
        "M0 0h1A1 1 0 2 0 1 1, 14",
        "M0 0h1zZ 5, 10"
    })
    void a_path_is_read_up_to_its_fault(String data, int letter) {
        Inboxed read = svg("\n<path d='" + data + "'/>");
        assertThat(read.trails()).isNotEmpty();
        assertThat(read.lines()).containsExactly(2);
        assertThat(read.said()).contains("beyond letter " + letter + " ");
        assertThat(read.notices().get(0).level()).isEqualTo(Level.PROBLEM);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path d='L1 1'/>",
                "<rect width='50%' height='2'/>",
                "<circle r='-1'/>",
                "<circle r='Infinity'/>",
                "<line x2='1' transform='turn(3)'/>",
                "<line x2='1' transform='scale(1,2,3)'/>",
                "<line x2='1' transform='scale(1e7) scale(1e7)'/>",
                "<polyline points='0,0 1,1 2'/>"
            })
    void a_faulty_element_is_told_and_the_others_are_kept(String element) {
        Inboxed read = svg(element + "<line x2='4'/>");
        assertThat(read.trails()).isNotEmpty();
        assertThat(read.codes()).containsExactly("svg-error");
    }

    @Test
    void too_many_points_are_refused() {
        assertThat(path("M0 0" + "h1".repeat(100_001)).codes()).containsExactly("too-many-points");
        assertThat(path("M0 0" + "a1 1 0 0 1 1 1".repeat(9_000)).codes()).containsExactly("too-many-points");
        assertThat(svg("<polyline points='" + "1 2 ".repeat(100_003) + "'/>").codes())
                .containsExactly("too-many-points");
        assertThat(path("M0 0" + "h1".repeat(99_999)).points()).hasSize(100_000);
    }

    @Test
    void a_drawing_at_one_point_or_of_nothing_is_refused() {
        assertThat(path("M3 3h0").codes()).containsExactly("one-point");
        assertThat(path("M3 3").codes()).containsExactly("no-points");
        assertThat(svg("").codes()).containsExactly("no-points");
    }
}
