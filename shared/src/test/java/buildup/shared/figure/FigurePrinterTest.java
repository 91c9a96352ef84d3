package buildup.shared.figure;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Code;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One size prints one way. Factors: NIST Special Publication 811, 2008 edition, Appendix B.8 (1 lb = 0.45359237 kg exactly,
 * 1 in = 25.4 mm exactly, standard gravity 9.80665 m/s2).
 */
class FigurePrinterTest {
    private static final FigurePrinter IN = FigurePrinter.INCHES;
    private static final FigurePrinter MM = new FigurePrinter(LengthUnit.MILLIMETER);

    @Test
    void a_length_is_told_in_the_unit_of_the_document() {
        assertThat(IN.print(Figure.length(6.625))).isEqualTo("6-5/8");
        assertThat(MM.print(Figure.length(0.75))).isEqualTo("19.1- mm");
        assertThat(MM.bare(Figure.length(0.75))).isEqualTo("19.1-");
        assertThat(IN.metric()).isFalse();
        assertThat(MM.metric()).isTrue();
        assertThat(MM.legend()).contains("millimeters");
        assertThat(IN.legend()).contains("inches");
    }

    @Test
    void the_safe_side_is_kept_in_both_units() {
        assertThat(IN.print(Figure.atLeast(0.51))).isEqualTo("9/16");
        assertThat(IN.print(Figure.atMost(0.51))).isEqualTo("1/2");
        assertThat(MM.print(Figure.atLeast(0.51))).isEqualTo("13 mm");
        assertThat(MM.print(Figure.atMost(0.51))).isEqualTo("12 mm");
        assertThat(IN.print(Figure.contact(1.09375))).isEqualTo("1-3/32");
        assertThat(MM.print(Figure.contact(21 / 25.4))).isEqualTo("21.0 mm");
        assertThat(IN.print(Figure.fine(0.2684))).isEqualTo("0.268");
        assertThat(MM.print(Figure.fine(1))).isEqualTo("25.40 mm");
    }

    @Test
    void forces_weights_areas_and_shares_follow_the_unit() {
        assertThat(IN.print(Figure.lineForce(10.85))).isEqualTo("10.85 lb a foot");
        assertThat(MM.print(Figure.lineForce(10.85))).isEqualTo("158.3 N a meter");
        assertThat(IN.print(Figure.of(Quantity.FORCE, 2))).isEqualTo("2.00 lb");
        assertThat(IN.print(Figure.area(2))).isEqualTo("2.00 sq in");
        assertThat(MM.print(Figure.area(1))).isEqualTo("6.45 sq cm");
        assertThat(IN.print(Figure.share(0.576))).isEqualTo("58 %");
        assertThat(IN.print(Figure.count(3))).isEqualTo("3");
        assertThat(IN.bare(Figure.of(Quantity.TIMES, Double.POSITIVE_INFINITY))).isEqualTo("any");
        assertThat(Quantity.LENGTH.held(25.4, true)).isEqualTo(1);
        assertThat(Quantity.SHARE.held(50, false)).isEqualTo(0.5);
    }

    @Test
    void a_phrase_holds_figures_words_phrases_and_lists() {
        Phrase inner = Phrase.of("{a} or {b}").with("a", Figure.length(1)).with("b", "none");
        assertThat(IN.print(Phrase.of("{{x}: {inner}, {list}, {missing}")
                        .with("inner", inner)
                        .with("list", Listing.names(List.of("bead", "bed", "cap")))))
                .isEqualTo("{x}: 1 or none, bead, bed and cap, missing");
        assertThat(IN.print(Listing.commas(List.of(new Text("a"), new Text("b")))))
                .isEqualTo("a, b");
        assertThat(IN.print(Phrase.plain("{as it is}"))).isEqualTo("{as it is}");
    }

    @Test
    void a_notice_becomes_words_in_the_unit_of_its_document() {
        Notice notice = Code.of("floating", "A piece floats.")
                .problem("'{piece}' floats: {amount} of air.", "Move it down {move}.")
                .with("move", Figure.contact(0.5))
                .amount(Figure.length(0.5))
                .of("bed");
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("'bed' floats: 1/2 of air.");
        assertThat(NoticeWords.in(LengthUnit.MILLIMETER).cure(notice)).isEqualTo("Move it down 12.7 mm.");
        assertThat(notice.nowhere().mark()).isEmpty();
    }

    @Test
    void a_percentage_has_a_tenth_only_where_it_needs_one() {
        assertThat(IN.print(Figure.percent(0.12))).isEqualTo("12 %");
        assertThat(IN.print(Figure.percent(0.125))).isEqualTo("12.5 %");
        assertThat(IN.print(Figure.percent(0.9999))).isEqualTo("100 %");
    }
}
