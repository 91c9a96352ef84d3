package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.wood.BoardList;
import buildup.profiles.Profile;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class CatalogTest {

    private final Asked asked = Asked.builtIn();

    @Test
    void a_family_takes_any_size_that_its_words_still_draw() {
        assertThat(asked.profile("cove-bed 1-13/16 x 2-3/32").outline().box().width())
                .isEqualTo(1.8125);
        assertThat(asked.profile("cove-bed lip + 1 x tall").outline().box().height())
                .isEqualTo(5.5);
        assertThat(asked.profile("quarter-round 19 mm x 19 mm").outline().box().top())
                .isEqualTo(19 / 25.4);
        assertThat(asked.notices()).isEmpty();
    }

    @Test
    void a_name_may_be_written_in_capitals() {
        assertThat(asked.profile("Cove-Bed 1 x 1-1/8").kind()).isEqualTo("bed");
    }

    @Test
    void thickness_comes_from_the_usual_sizes_when_only_the_width_is_given() {
        assertThat(asked.profile("casing-colonial 2-1/4").outline().box().width())
                .isEqualTo(11.0 / 16);
        assertThat(asked.profile("cyma-crown 4-5/8").thickness()).isEqualTo(11.0 / 16);
        assertThat(asked.profile("plain-crown 3").thickness()).isEqualTo(9.0 / 16);
    }

    @Test
    void a_size_that_leaves_a_doubt_is_refused_with_the_usual_ones() {
        asked.maybe("scotia", "softwood");
        asked.maybe("cyma-crown 3", "softwood");
        asked.maybe("scotia 1 x 1 x 1", "softwood");
        assertThat(asked.said())
                .containsExactly(
                        "REFUSAL missing-size stack.yaml:7:3 scotia needs projection x height."
                                + " | Usual sizes: 3/4 x 3/4, 1 x 1, 1-1/4 x 1-1/4.",
                        "REFUSAL missing-size stack.yaml:7:3 cyma-crown needs thickness x width."
                                + " | Usual sizes: 9/16 x 2-1/4, 9/16 x 2-3/4, 9/16 x 3-5/8, 11/16 x 4-5/8.",
                        "REFUSAL not-a-size stack.yaml:7:3 scotia needs projection x height."
                                + " | Usual sizes: 3/4 x 3/4, 1 x 1, 1-1/4 x 1-1/4.");
    }

    @Test
    void an_unknown_name_is_refused_with_the_one_that_was_meant() {
        asked.maybe("cove-bad 1-1/4 x 1-3/8", "softwood");
        asked.maybe("picture 11/16 x 2", "softwood");
        asked.maybe("drip", "softwood");
        asked.maybe("", "softwood");
        assertThat(asked.said().subList(0, 3))
                .containsExactly(
                        "REFUSAL unknown-name stack.yaml:7:3 No profile is called 'cove-bad'. | Did you mean cove-bed?",
                        "REFUSAL unknown-name stack.yaml:7:3 No profile is called 'picture'."
                                + " | Did you mean picture-rail?",
                        "REFUSAL unknown-name stack.yaml:7:3 No profile is called 'drip'."
                                + " | Did you mean one of corona, drip-cap?");
        assertThat(asked.said().get(3)).contains("No profile is named.");
    }

    @Test
    void a_bad_length_in_a_call_is_refused_at_the_call() {
        asked.maybe("cove-bed 3/43 x 1", "softwood");
        assertThat(asked.said())
                .containsExactly("REFUSAL fraction-mistyped stack.yaml:7:3 3/43 is not a shop fraction (halves,"
                        + " quarters, 8ths, 16ths, 32nds, 64ths). | Meant 3/4?");
    }

    @Test
    void a_size_too_small_for_its_words_is_refused_at_the_call() {
        asked.maybe("cove-bed 1/8 x 1", "softwood");
        asked.maybe("cove-bed 1-1/4 x 1/2", "softwood");
        asked.maybe("plain-crown 2 x 1", "softwood");
        assertThat(asked.said())
                .containsExactly(
                        "REFUSAL not-a-size stack.yaml:7:3 'cove-bed 1/8 x 1' cannot be drawn: Word 2 (cove) comes out"
                                + " at -1/8. | Take a larger size. Usual sizes: 3/4 x 3/4, 1 x 1-1/8, 1-1/4 x 1-3/8.",
                        "REFUSAL not-a-size stack.yaml:7:3 'cove-bed 1-1/4 x 1/2' cannot be drawn: Word 3 (up) goes to"
                                + " 1/2, which lies 1/2 behind it. | Take a larger size. Usual sizes: 3/4 x 3/4, 1 x"
                                + " 1-1/8, 1-1/4 x 1-3/8.",
                        "REFUSAL not-a-size stack.yaml:7:3 'plain-crown 2 x 1' cannot be drawn: A stick of 2 x 1 cannot"
                                + " be used: a thickness of 2 leaves no back on a face of 1. | Take a larger size. Usual"
                                + " sizes: 9/16 x 2-1/4, 9/16 x 2-3/4, 9/16 x 3-1/4, 9/16 x 3-5/8, 9/16 x 4-5/8, 9/16 x"
                                + " 5-1/4.");
    }

    @Test
    void nothing_is_nothing_thick() {
        asked.maybe("plain-crown 0 x 3-1/4", "softwood");
        assertThat(asked.notices()).extracting(Notice::code).containsExactly("thickness-zero-or-negative");
    }

    @Test
    void millimeters_read_as_inches_are_a_problem() {
        assertThat(asked.profile("quarter-round 114.3 x 114.3").thickness()).isEqualTo(114.3);
        assertThat(asked.said())
                .containsExactly(
                        "PROBLEM mm-read-as-inches stack.yaml:7:3 A quarter round of 114.3: as inches that is 9.5"
                                + " ft of molding. | Write mm behind it if millimeters are meant.");
    }

    @Test
    void an_own_file_adds_profiles_and_replaces_those_of_the_same_name() {
        Asked own = Asked.with("""
                units: mm
                profiles:
                  - name: shop-cap
                    kind: cap
                    about: Chamfered
                    sizes: [projection, height]
                    usual: [60 x 20]
                    let: { flat: height - 5, quarter: 1/4 of height }
                    words: [out projection, up flat, chamfer in 5 x quarter]
                  - { name: cove, kind: cove, sizes: [radius], words: [out 3, cove radius, up 3] }
                """);
        assertThat(own.said()).isEmpty();
        Profile cap = own.profile("shop-cap");
        assertThat(cap.outline().box().width()).isCloseTo(60 / 25.4, within(1e-12));
        assertThat(cap.outline().members()).containsExactly("out", "up", "chamfer", "top", "back");
        assertThat(own.profile("cove 1").outline().box().width()).isCloseTo(1 + 3 / 25.4, within(1e-12));
        assertThat(own.profile("cove-bed 1 x 1-1/8").kind()).isEqualTo("bed");
        assertThat(own.catalog().families()).hasSize(asked.catalog().families().size() + 1);
    }

    @Test
    void the_faults_of_an_own_profile_are_told_at_its_own_words() {
        Asked own = Asked.with("""
                profiles:
                  - name: bent
                    sizes: [height]
                    words: [out 1, coove 1/2, up heigth]
                """);
        assertThat(own.maybe("bent 2", "softwood")).isEmpty();
        assertThat(own.said())
                .containsExactly(
                        "REFUSAL unknown-word own.yaml:4:20 No profile word is called 'coove'. | Did you mean cove?",
                        "REFUSAL unknown-name own.yaml:4:31 No length is called 'heigth'. | Did you mean height?");
        assertThat(own.notices())
                .allSatisfy(notice -> assertThat(notice.piece()).contains("bent"));
    }

    @Test
    void everything_wrong_with_an_own_file_is_said_and_the_rest_is_taken() {
        Asked own = Asked.with("""
                profiles:
                  - { name: one, words: [out 1, up 1], colour: red }
                  - { name: one, words: [out 1, up 1] }
                  - { words: [out 1, up 1] }
                  - { name: board, words: [out 1, up 1] }
                  - { name: empty }
                  - { name: both, words: [out 1], sprung: { spring: 38 } }
                  - { name: odd, sizes: [radius], sprung: { spring: 38 } }
                  - { name: flat, sprung: { spring: 90 } }
                  - { name: loose, sprung: { } }
                  - { name: usual, usual: [3/4 x 1 x 2], words: [out thickness, up width] }
                boards:
                  - { name: none }
                  - { name: bad, thickness: { thick: 3/4 } }
                woods:
                  - { name: nothing }
                  - { name: heavy, density: 470 }
                  - { name: odd, density: much }
                  - { name: odd-too, specific-gravity: 42 }
                unit: mm
                """);
        assertThat(own.said())
                .containsExactlyInAnyOrder(
                        "REFUSAL unknown-key own.yaml:2:40 No key is called 'colour' in 'profiles'. | Known here: about,"
                                + " kind, let, name, sizes, sprung, usual, words.",
                        "REFUSAL same-name-twice own.yaml:3:13 'one' is there twice. | Call one one-2.",
                        "REFUSAL missing-key own.yaml:4:5 An entry has no name. | Add 'name:'.",
                        "REFUSAL unusable-name own.yaml:5:13 'board' reads as a board or a size."
                                + " | Begin the name with a letter, and do not call it board.",
                        "REFUSAL wrong-shape own.yaml:6:5 Profile empty has no words. | Add 'words: [...]'.",
                        "REFUSAL wrong-shape own.yaml:7:5 Profile both has both words and 'sprung:'."
                                + " | Put the words under 'sprung:' as 'face:'.",
                        "REFUSAL wrong-shape own.yaml:8:25 A sprung profile has the sizes thickness and width."
                                + " | Write 'sizes: [thickness, width]'.",
                        "REFUSAL not-an-angle own.yaml:9:37 A spring lies between 0 and 90 degrees."
                                + " | Give the angle between back and wall, as 38.",
                        "REFUSAL missing-key own.yaml:10:28 A sprung profile needs its spring."
                                + " | Add 'spring: 38', the angle between its back and the wall.",
                        "REFUSAL wrong-shape own.yaml:11:28 '3/4 x 1 x 2' is not thickness x width."
                                + " | Give one length for each of the sizes.",
                        "REFUSAL missing-key own.yaml:13:5 Board list none has no thickness."
                                + " | Add 'thickness: { 1: 3/4 }', nominal to dressed.",
                        "REFUSAL not-a-length own.yaml:14:31 'thick' is not a nominal size. | Write it as 1, 5/4 or 2.",
                        "REFUSAL missing-key own.yaml:16:5 Wood nothing has neither density nor specific-gravity."
                                + " | Add 'density: 29 lb/ft3' or 'density: 470 kg/m3'.",
                        "REFUSAL not-a-density own.yaml:17:29 No wood weighs 470 lb/ft3."
                                + " | Write it as 29 lb/ft3 or 470 kg/m3.",
                        "REFUSAL not-a-density own.yaml:18:27 'much' is not a density."
                                + " | Write it as 29 lb/ft3 or 470 kg/m3.",
                        "REFUSAL not-a-number own.yaml:19:40 '42' is not a specific-gravity figure of a wood."
                                + " | Write a decimal above 0 and up to 1.5.",
                        "REFUSAL unknown-key own.yaml:20:1 No key is called 'unit' here. | Did you mean units?");
        assertThat(own.maybe("one 1 x 1", "softwood")).isPresent();
        assertThat(own.maybe("empty 1 x 1", "softwood")).isEmpty();
    }

    @Test
    void a_face_that_leaves_its_stick_is_refused() {
        Asked own = Asked.with("""
                profiles:
                  - name: deep
                    sprung: { spring: 38, face: [up 1/4, in 3/4, up 1, out 3/4] }
                  - name: backed
                    sprung: { spring: 38, face: [up 1/4, back: [down 1]] }
                  - name: emptied
                    sprung:
                      { spring: 38, wall-edge: 9/16, ceiling-edge: 9/16, face: [in 9/16, up to width, out 9/16] }
                """);
        own.maybe("deep 9/16 x 3", "softwood");
        own.maybe("backed 9/16 x 3", "softwood");
        own.maybe("emptied 9/16 x 3", "softwood");
        assertThat(own.said())
                .containsExactly(
                        "REFUSAL not-a-size stack.yaml:7:3 The face does not fit a stick of 9/16 x 3."
                                + " | Keep its words within the thickness and the width.",
                        "REFUSAL wrong-shape own.yaml:5:33 A face has no 'back:'. | Take 'back:' out.",
                        "REFUSAL not-a-size stack.yaml:7:3 The face does not fit a stick of 9/16 x 3."
                                + " | Keep its words within the thickness and the width.");
    }

    @Test
    void own_boards_are_a_list_like_any_other() {
        Asked own = Asked.with("""
                boards:
                  - { name: metric, about: planed, thickness: { 1: 21 mm }, width: { 4: 95 mm, 6: 145 mm } }
                """);
        assertThat(own.maybe("1x4", "metric").orElseThrow().width()).isEqualTo(95 / 25.4);
        assertThat(own.catalog().boardLists()).extracting(BoardList::name).contains("softwood", "metric");
        assertThat(own.notices()).noneMatch(notice -> notice.level() == Level.REFUSAL);
    }

    @Test
    void the_lists_that_come_with_the_program_hold_no_fault() throws IOException {
        for (String file : List.of("profiles.yaml", "boards.yaml", "woods.yaml")) {
            try (InputStream in = Catalog.class.getResourceAsStream(file)) {
                Asked copied = Asked.with(new String(in.readAllBytes(), StandardCharsets.UTF_8));
                assertThat(copied.said()).as(file).isEmpty();
                assertThat(copied.catalog().families())
                        .isEqualTo(asked.catalog().families());
                assertThat(copied.catalog().boardLists())
                        .isEqualTo(asked.catalog().boardLists());
                assertThat(copied.catalog().woods()).isEqualTo(asked.catalog().woods());
            }
        }
    }

    @Test
    void the_same_question_has_the_same_answer() {
        assertThat(Catalog.builtIn().families()).isEqualTo(Catalog.builtIn().families());
        assertThat(asked.profile("ogee-crown 3-1/4")).isEqualTo(asked.profile("ogee-crown 3-1/4"));
    }
}
