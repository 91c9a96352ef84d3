package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.judge.along.FigureCurve;
import buildup.engine.judge.along.FigureCurve.Break;
import buildup.engine.judge.along.FigureCurve.How;
import buildup.engine.judge.along.FigureCurve.Place;
import buildup.engine.judge.must.MustResult;
import buildup.engine.section.free.FreeSizes;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Document;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures against a size: each point is what a report of the stack with that size says. */
class FigureCurvesTest {
    private static final double EXACT = 1e-9;

    /**
     * A board 8 tall and a shelf over it, 3/4 thick, under light that falls at 45 degrees in section (tan a = tan 35.2644 /
     * cos 45 = 1): a shelf that stands out by d over the board darkens d of its face, as far as there is any.
     */
    private static final String SHELF = """
            title: Shelf
            wood: yellow-poplar
            sizes: { out: "between 1 and 11 by 1/4, now 4" }
            space: { wall: { solid: no } }
            eyes: [{ name: seated, distance: 60, height: -10 }]
            lights: [{ name: drafting, altitude: 35.264389682754654, azimuth: 45 }]
            pieces:
              - { name: board, profile: board 3/4 x 8, back: wall, bottom: 0 }
              - { name: shelf, section: [out out, up 3/4], back: wall, bottom: board.top }
            must:
              - share of board.face in drafting <= 50 %
              - projection <= 6
            wish: [least weight]
            """;

    private static List<FigureCurve> curves(String yaml) {
        return Answer.of(SearchedTest.document(yaml), Catalog.builtIn())
                .known()
                .orElseThrow()
                .curves()
                .drawn();
    }

    private static FigureCurve curve(String yaml, String rule) {
        return curves(yaml).stream()
                .filter(curve -> curve.rule().text().startsWith(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void every_point_is_what_a_report_says_of_the_stack_with_that_size() {
        Document document = SearchedTest.document(SHELF);
        FreeSizes free = FreeSizes.read(document, Catalog.builtIn()::usualCalls, new Notices());
        List<FigureCurve> curves =
                curves(SHELF).stream().filter(FigureCurve::held).toList();
        assertThat(curves).hasSize(2);
        for (FigureCurve curve : curves) {
            assertThat(curve.places()).hasSizeGreaterThan(20);
            for (Place place : curve.places()) {
                MustResult reported =
                        Answer.of(free.with(List.of(place.typed())), Catalog.builtIn())
                                .known()
                                .orElseThrow()
                                .must()
                                .stream()
                                .filter(must -> must.rule().equals(curve.rule().text()))
                                .findFirst()
                                .orElseThrow();
                assertThat(place.met()).isEqualTo(reported.met());
                assertThat(place.figure().isPresent())
                        .isEqualTo(reported.figure().isPresent());
                reported.figure()
                        .ifPresent(figure ->
                                assertThat(place.figure().getAsDouble()).isCloseTo(figure, within(EXACT)));
            }
        }
    }

    @Test
    void a_shelf_darkens_as_much_of_the_board_as_it_stands_out_under_light_at_45_degrees() {
        FigureCurve curve = curve(SHELF, "share");
        assertThat(curve.places().get(curve.now()).typed()).isEqualTo("4");
        for (Place place : curve.places()) {
            assertThat(place.figure().orElseThrow()).isCloseTo(Math.min(1, (place.at() - 0.75) / 8), within(EXACT));
        }
        assertThat(curve.turns())
                .singleElement()
                .satisfies(turn -> assertThat(turn.value()).isCloseTo(4.75, within(EXACT)));
    }

    @Test
    void it_bends_where_the_shadow_comes_to_the_end_of_the_board() {
        assertThat(curve(SHELF, "share").breaks()).singleElement().satisfies(there -> {
            assertThat(there.how()).isEqualTo(How.BENDS);
            assertThat(there.at()).isCloseTo(8.75, within(1e-6));
            assertThat(there.after().orElseThrow()).isCloseTo(1, within(1e-6));
        });
    }

    @Test
    void what_is_wished_has_a_curve_too_and_no_limit() {
        FigureCurve weight = curve(SHELF, "least weight");
        assertThat(weight.held()).isFalse();
        List<Place> places = weight.places();
        // pounds a foot: square inches by pounds a cubic foot, over 144
        double each =
                places.get(1).figure().orElseThrow() - places.get(0).figure().orElseThrow();
        for (int i = 1; i < places.size(); i++) {
            double step = places.get(i).at() - places.get(i - 1).at();
            double more = places.get(i).figure().orElseThrow()
                    - places.get(i - 1).figure().orElseThrow();
            assertThat(more / step)
                    .isCloseTo(each / (places.get(1).at() - places.get(0).at()), within(EXACT));
        }
    }

    @Test
    void a_reveal_begins_where_the_shelf_comes_out_over_the_board() {
        String yaml = SHELF.replace("share of board.face in drafting <= 50 %", "reveal of shelf over board >= 1/4")
                .replace("between 1 and 11 by 1/4, now 4", "between 1/2 and 2 by 1/8, now 1");
        FigureCurve curve = curve(yaml, "reveal");
        for (Place place : curve.places()) {
            if (place.at() < 0.74) {
                assertThat(place.figure()).isEmpty();
                assertThat(place.met()).isFalse();
            } else if (place.at() > 0.76) {
                assertThat(place.figure().orElseThrow()).isCloseTo(place.at() - 0.75, within(EXACT));
            }
        }
        Break first = curve.breaks().get(0);
        assertThat(first.how()).isEqualTo(How.BEGINS);
        assertThat(first.at()).isCloseTo(0.75, within(Tolerance.TOUCHING));
    }

    @Test
    void a_stack_without_a_free_size_has_none() {
        assertThat(curves(SHELF.replace("\"between 1 and 11 by 1/4, now 4\"", "4")))
                .isEmpty();
    }

    /** The board in two widths, the shelf to be left out: neither lies on a scale. */
    @Test
    void what_lies_on_no_scale_is_told_to_have_no_curve() {
        String yaml = SHELF.replace("profile: board 3/4 x 8,", "profile: 'one of [board 3/4 x 8, board 3/4 x 9]',")
                .replace("bottom: board.top }", "bottom: board.top, leave-out: 'one of [no, yes]' }");
        assertThat(Answer.of(SearchedTest.document(yaml), Catalog.builtIn())
                        .known()
                        .orElseThrow()
                        .curves()
                        .without())
                .containsExactly("pieces.board.profile", "pieces.shelf.leave-out");
    }
}
