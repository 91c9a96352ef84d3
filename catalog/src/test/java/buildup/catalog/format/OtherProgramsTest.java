package buildup.catalog.format;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Drawings;
import buildup.catalog.Drawings.Told;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What other programs drew of two profiles of the catalog; the files and their programs are named beside them. */
class OtherProgramsTest {
    /** What a dot of a bitmap of 300 an inch is wide, in. */
    private static final double DOT = 1.0 / 300;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ogee-bed.makerjs.dxf",
                "ogee-bed.makerjs.svg",
                "ogee-bed.dxf-writer.dxf",
                "ogee-bed.jscad.svg",
                "ogee-bed.inkscape.svg",
                "bead-cove-bed.makerjs.dxf",
                "bead-cove-bed.makerjs.svg",
                "bead-cove-bed.dxf-writer.dxf",
                "bead-cove-bed.jscad.svg",
                "bead-cove-bed.inkscape.svg"
            })
    void a_profile_that_was_drawn_elsewhere_is_read_without_a_doubt(String file) throws Exception {
        Told told = Drawings.told(file, false);
        assertThat(told.problems()).isEmpty();
        assertThat(told.off()).isLessThan(1e-4);
        assertThat(told.missing()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ogee-bed.openscad.svg", "bead-cove-bed.openscad.svg"})
    void a_bar_beside_the_profile_is_listed_and_the_profile_is_exact(String file) throws Exception {
        Told told = Drawings.told(file, false);
        assertThat(told.problems()).singleElement().asString().contains("It could as well be");
        assertThat(told.off()).isLessThan(1e-4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ogee-bed.potrace.svg",
                "ogee-bed.potrace.dxf",
                "ogee-bed.imagetracer.svg",
                "ogee-bed.pstoedit.dxf",
                "bead-cove-bed.potrace.svg",
                "bead-cove-bed.potrace.dxf",
                "bead-cove-bed.imagetracer.svg"
            })
    void curves_round_a_bitmap_with_its_height_by_calipers_are_right_or_doubted(String file) throws Exception {
        Told told = Drawings.told(file, true);
        if (told.problems().isEmpty()) {
            assertThat(told.off()).isLessThan(DOT);
            assertThat(Math.abs(told.missing())).isLessThanOrEqualTo(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bead-cove-bed.imagetracer.svg", "bead-cove-bed.potrace.svg", "bead-cove-bed.potrace.dxf"})
    void what_a_vectorizer_made_of_a_bitmap_is_known_within_a_dot(String file) throws Exception {
        assertThat(Drawings.told(file, true).off()).isLessThan(DOT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ogee-bed.pstoedit.dxf", "ogee-bed.potrace.dxf", "bead-cove-bed.imagetracer.svg"})
    void a_drawing_in_no_unit_that_would_be_a_large_molding_in_inches_is_asked_about(String file) throws Exception {
        assertThat(Drawings.told(file, false).problems())
                .anySatisfy(said -> assertThat(said).contains("As inches that is"));
    }
}
