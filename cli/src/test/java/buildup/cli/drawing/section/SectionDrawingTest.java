package buildup.cli.drawing.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sizes of the cornice: reference/worked-examples.md A of the engine, this project's own arithmetic. */
class SectionDrawingTest {
    private static final Drawn CORNICE = Drawn.of(Drawn.CORNICE);

    private static List<String> texts(Scene scene) {
        return scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .toList();
    }

    private static List<Area> pieces(Scene scene) {
        return scene.leaves().stream()
                .filter(Area.class::isInstance)
                .map(Area.class::cast)
                .filter(area -> area.id().filter(id -> id.startsWith("piece-")).isPresent())
                .toList();
    }

    private static Area piece(Scene scene, String id) {
        return pieces(scene).stream()
                .filter(area -> area.id().equals(Optional.of(id)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void every_piece_is_one_area_with_its_letter_and_name() {
        assertThat(pieces(CORNICE.scene())).hasSize(11);
        assertThat(piece(CORNICE.scene(), "piece-block-a").title()).contains("G block A");
    }

    @Test
    void pieces_lie_as_in_the_section_at_full_size() {
        Box bead = piece(CORNICE.scene(), "piece-bead").box();
        double right = bead.back() - 0;
        double up = bead.bottom() - 0;
        for (Body body : CORNICE.section().pieces()) {
            if (body.framing()) {
                continue;
            }
            String id =
                    "piece-" + body.name().toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
            Box drawn = piece(CORNICE.scene(), id).box();
            Box own = body.outline().box();
            assertThat(drawn.back()).as(id).isCloseTo(own.back() + right, within(1e-9));
            assertThat(drawn.face()).as(id).isCloseTo(own.face() + right, within(1e-9));
            assertThat(drawn.bottom()).as(id).isCloseTo(own.bottom() + up, within(1e-9));
            assertThat(drawn.top()).as(id).isCloseTo(own.top() + up, within(1e-9));
        }
    }

    @Test
    void a_case_of_ninety_inches_is_broken_off_near_the_stack() {
        Box shown = piece(CORNICE.scene(), "piece-case").box();
        assertThat(shown.width()).isBetween(1.0, 1.6);
        assertThat(shown.height()).isBetween(6.25 + 0.5, 6.25 + 1.6);
        assertThat(CORNICE.scene().leaves())
                .anyMatch(item -> item instanceof Path path && path.style() == LineStyle.BREAK);
    }

    @Test
    void reveals_heights_and_the_whole_are_dimensioned() {
        // reveals 1/4, 4-1/8, 1-1/2; heights of bead, frieze, bed, fascia; 3/8 past the crown
        assertThat(texts(CORNICE.scene()))
                .contains("1/4", "4-1/8", "1-1/2", "3/4", "5-1/2", "1-3/8", "2", "3/8")
                .anyMatch(text -> text.startsWith("projection 6-"))
                .anyMatch(text -> text.startsWith("height 10-"));
    }

    @Test
    void each_letter_stands_on_the_picture_in_the_list_and_where_its_height_is_given() {
        List<String> texts = texts(CORNICE.scene());
        for (int i = 0; i < 11; i++) {
            assertThat(texts)
                    .filteredOn(Section.letter(i)::equals)
                    .as(Section.letter(i))
                    .hasSizeBetween(2, 3);
        }
        assertThat(texts).filteredOn("C"::equals).hasSize(3);
    }

    @Test
    void the_list_says_what_each_piece_is_cut_from() {
        assertThat(texts(CORNICE.scene()))
                .contains("frieze", "board 3/4 x 5-1/2", "3/4 x 5-1/2", "nailer", "framing", "blank", "projection");
    }

    @Test
    void full_size_is_checked_both_ways() {
        List<Segment> lines = CORNICE.scene().leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.CHECK)
                .map(item -> ((Path) item).segments().get(0))
                .toList();
        assertThat(lines)
                .hasSize(2)
                .allSatisfy(line -> assertThat(line.length()).isCloseTo(4, within(1e-9)));
        assertThat(lines)
                .anyMatch(line -> line.box().width() > 3)
                .anyMatch(line -> line.box().height() > 3);
        assertThat(texts(CORNICE.scene()))
                .filteredOn("This line is 4 in"::equals)
                .hasSize(2);
    }

    @Test
    void a_void_is_named() {
        assertThat(CORNICE.section().voids()).hasSize(1);
        assertThat(texts(CORNICE.scene())).contains("void");
    }

    @Test
    void kinds_differ_in_hatch_and_not_in_color_alone() {
        assertThat(CORNICE.scene().leaves().stream()
                        .filter(Hatch.class::isInstance)
                        .map(item -> ((Hatch) item).pattern())
                        .distinct())
                .hasSize(4);
    }

    @Test
    void plaster_is_shown_between_the_plane_and_the_wall() {
        assertThat(texts(Drawn.of(Drawn.BASE).scene())).contains("plaster or wallboard", "wall, floor, ceiling");
    }

    @Test
    void thin_pieces_get_their_letter_beside_them() {
        Drawn names = Drawn.of(Drawn.NAMES);
        assertThat(names.scene().leaves())
                .filteredOn(item -> item instanceof Path path
                        && path.style() == LineStyle.LEADER
                        && path.segments().size() == 1)
                .hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void ids_are_safe_and_unique_whatever_the_names() {
        assertThat(pieces(Drawn.of(Drawn.NAMES).scene()).stream()
                        .map(area -> area.id().orElseThrow()))
                .doesNotHaveDuplicates()
                .allMatch(id -> id.matches("[a-z][a-z0-9-]*"))
                .contains("piece-ecran-1", "piece-ecran-1-2", "piece-u43au430u440u43du438u437");
    }

    @Test
    void the_same_stack_gives_the_same_scene() {
        assertThat(Drawn.of(Drawn.CORNICE).scene()).isEqualTo(CORNICE.scene());
    }

    /** A box of boards with room for the line in it, and none beside it. */
    @Test
    void the_check_line_never_stands_in_a_closed_void() {
        Scene scene = Drawn.of("""
                title: Box beam
                wood: red-oak
                pieces:
                  - { name: rear, profile: board 3/4 x 9, back: wall, bottom: 3/4 }
                  - { name: sole, profile: board 3/4 x 9, lay: flat, back: wall, bottom: 0 }
                  - { name: front, profile: board 3/4 x 9, face: 9, bottom: 3/4 }
                  - { name: lid, profile: board 3/4 x 9, lay: flat, back: wall, bottom: 9-3/4 }
                """).scene();
        Box empty = scene.leaves().stream()
                .filter(item -> item instanceof Area area && area.title().equals(Optional.of("void")))
                .map(SceneItem::box)
                .findFirst()
                .orElseThrow();
        Path line = scene.leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.CHECK)
                .map(Path.class::cast)
                .filter(path -> path.box().height() > path.box().width())
                .findFirst()
                .orElseThrow();
        assertThat(Boxes.overlap(line.box(), empty)).isFalse();
    }
}
