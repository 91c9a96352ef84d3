package buildup.engine.judge.proportion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.book.EntablaturePart;
import buildup.engine.Answer;
import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.Bench;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stacks beside the books; sources in reference/proportion.md. */
class ProportionsTest {
    /** A plate in hundredths is right to half of one. */
    private static final double HUNDREDTHS = 0.005;

    /** Thousandths as the reference prints them. */
    private static final double PRINTED = 0.0006;

    private static final String REFERENCE = Bench.resource("/reference-cornice.yaml");

    private static Proportion reading(String yaml) {
        return Answered.sound(yaml).proportion();
    }

    private static double share(Proportion reading, EntablaturePart part) {
        return reading.part(part).orElseThrow().share();
    }

    /** Sec. 57 at an entablature of 24 in, one part 0.24: shares 27, 36, 37; 8.88 high, 9.60 out. */
    private static final String DENTICULAR_DORIC = """
            wood: check-wood
            sizes: { face: 1 }
            space: { wall: { solid: yes } }
            pieces:
              - { name: architrave, section: [out 1, up 6.48], back: wall, bottom: datum }
              - { name: frieze, section: [out 1, up 8.64], back: wall, bottom: architrave.top }
              - { name: band, section: [out 1.24, up 0.96], back: wall, bottom: frieze.top }
              - { name: reversa, section: [out 1.24, cyma reversa 0.72 x 0.6], back: wall, bottom: band.top }
              - { name: dentils, section: [out 1.96, up 1.44], back: wall, bottom: reversa.top }
              - { name: corona, section: [out 7.672, up 2.64], back: wall, bottom: dentils.top }
              - { name: upper reversa, section: [out 7.672, cyma reversa 0.72 x 0.528], back: wall, bottom: corona.top }
              - { name: crown, section: [out 8.2, cyma recta 2.4 x 2.4], back: wall, bottom: upper reversa.top }
            """;

    private static final String DORIC_PARTS = """
            parts:
              architrave: [architrave]
              frieze: [frieze]
              cornice: [band, reversa, dentils, corona, upper reversa, crown]
            proportion: { beside: Doric with dentils }
            """;

    @Test
    void a_denticular_doric_built_from_its_plate_reads_as_the_plate() {
        Proportion reading = reading(DENTICULAR_DORIC + DORIC_PARTS);
        assertThat(reading.height()).isEqualTo(24, within(1e-9));
        assertThat(share(reading, EntablaturePart.ARCHITRAVE)).isEqualTo(0.27, within(HUNDREDTHS));
        assertThat(share(reading, EntablaturePart.FRIEZE)).isEqualTo(0.36, within(HUNDREDTHS));
        assertThat(share(reading, EntablaturePart.CORNICE)).isEqualTo(0.37, within(HUNDREDTHS));
        assertThat(reading.part(EntablaturePart.CORNICE).orElseThrow().height()).isEqualTo(8.88, within(1e-9));
        assertThat(reading.projection()).hasValueCloseTo(9.60, within(1e-9));
        assertThat(reading.projectionToHeight()).hasValueCloseTo(40 / 37.0, within(1e-9));
        assertThat(reading.nearest().orElseThrow().order().name()).isEqualTo("Doric with dentils");
        assertThat(reading.nearest().orElseThrow().off()).isLessThan(HUNDREDTHS);
    }

    @Test
    void the_order_laid_beside_it_at_24_has_the_running_heights_of_the_plate() {
        LaidOrder laid = reading(DENTICULAR_DORIC + DORIC_PARTS).laid().orElseThrow();
        assertThat(laid.members().stream().map(row -> row.running() / laid.unit()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
                .containsExactly(4.0, 7.0, 13.0, 24.0, 27.0, 37.0);
        assertThat(laid.height(EntablaturePart.CORNICE)).isEqualTo(8.88, within(1e-9));
        assertThat(laid.projection()).hasValueCloseTo(9.60, within(1e-9));
        assertThat(laid.members().get(5).face()).isEqualTo(9.60, within(1e-9));
    }

    /** Without being told, the frieze is found where the plate has it. */
    @Test
    void parts_are_read_from_the_stack_where_none_are_named() {
        String yaml = DENTICULAR_DORIC + "proportion: {}\n";
        Proportion reading = reading(yaml);
        assertThat(reading.named()).isFalse();
        assertThat(share(reading, EntablaturePart.FRIEZE)).isEqualTo(0.36, within(HUNDREDTHS));
    }

    /** Serlio, Book IV, D = 12: three parts alike; cornice 1.5, 3.0, 1.5; its projection taken as its height. */
    /** A frieze from 4 to 11-1/4, before which a fascia hangs down from its soffit to 10-3/4: 4, 6-3/4 and 1-3/4 of 12-1/2. */
    @Test
    void a_fascia_that_hangs_before_the_frieze_is_of_the_cornice() {
        Proportion reading = reading("""
                wood: check-wood
                pieces:
                  - { name: arch, profile: board 1 x 4, back: wall, bottom: 0 }
                  - { name: frieze, profile: board 3/4 x 7-1/4, back: wall, bottom: arch.top }
                  - { name: soffit, kind: nailer, section: [out 3, up 3/4], back: wall, bottom: frieze.top }
                  - { name: fascia, profile: board 3/4 x 1-3/4, back: soffit.face, bottom: 10-3/4 }
                proportion: {}
                """);
        assertThat(share(reading, EntablaturePart.FRIEZE)).isEqualTo(6.75 / 12.5, within(1e-9));
        assertThat(share(reading, EntablaturePart.CORNICE)).isEqualTo(1.75 / 12.5, within(1e-9));
    }

    /** 7-1/4 of board, a neck at 1/2 on it, and a bed of 1-1/2 that covers its top: 5-3/4 are frieze. */
    @Test
    void a_neck_planted_on_the_foot_of_the_frieze_does_not_end_it() {
        Proportion reading = reading("""
                wood: check-wood
                pieces:
                  - { name: frieze, profile: board 3/4 x 7-1/4, back: wall, bottom: 0 }
                  - { name: neck, profile: board 3/4 x 1-1/4, back: frieze.face, bottom: 1/2 }
                  - { name: bed, profile: board 1-1/4 x 1-1/2, back: frieze.face, bottom: 5-3/4 }
                  - { name: cap, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: frieze.top }
                proportion: {}
                """);
        assertThat(reading.part(EntablaturePart.ARCHITRAVE)).isEmpty();
        assertThat(reading.part(EntablaturePart.FRIEZE).orElseThrow().height()).isEqualTo(5.75, within(PRINTED));
        assertThat(reading.part(EntablaturePart.CORNICE).orElseThrow().height()).isEqualTo(2.25, within(PRINTED));
    }

    @Test
    void the_tuscan_of_serlio_reads_as_three_equal_parts() {
        Proportion reading = reading("""
                wood: check-wood
                space: { wall: { solid: yes } }
                pieces:
                  - { name: architrave, section: [out 1, up 6], back: wall, bottom: datum }
                  - { name: frieze, section: [out 1, up 6], back: wall, bottom: architrave.top }
                  - { name: fascia, section: [out 1.75, up 1.5], back: wall, bottom: frieze.top }
                  - { name: corona, section: [out 5.5, up 3], back: wall, bottom: fascia.top }
                  - { name: ovolo, section: [out 5.5, ovolo 1.5], back: wall, bottom: corona.top }
                parts: { architrave: [architrave], frieze: [frieze], cornice: [fascia, corona, ovolo] }
                """);
        for (EntablaturePart part : EntablaturePart.values()) {
            assertThat(share(reading, part)).isEqualTo(1 / 3.0, within(1e-9));
        }
        assertThat(reading.projectionToHeight()).hasValueCloseTo(1.0, within(1e-9));
        assertThat(reading.nearest().orElseThrow().order().name()).isEqualTo("Tuscan after Serlio");
        assertThat(reading.rhythm()).extracting(RhythmRow::height).endsWith(1.5, 3.0, 1.5);
    }

    /** Vignola's plate, 12 parts to a module of 6; members from memory. A part is 1/2 in, half of one is its rounding. */
    @Test
    void the_tuscan_of_vignola_reads_as_12_14_and_16_parts() {
        Proportion reading = reading("""
                wood: check-wood
                space: { wall: { solid: yes } }
                pieces:
                  - { name: fascia, section: [out 1, up 5], back: wall, bottom: datum }
                  - { name: taenia, section: [out 2, up 1], back: wall, bottom: fascia.top }
                  - { name: frieze, section: [out 1, up 7], back: wall, bottom: taenia.top }
                  - { name: reversa, section: [out 1, cyma reversa 2 x 2], back: wall, bottom: frieze.top }
                  - { name: fillet, section: [out 3.25, up 1/4], back: wall, bottom: reversa.top }
                  - { name: corona, section: [out 7.5, up 3], back: wall, bottom: fillet.top }
                  - { name: upper fillet, section: [out 8, up 1/4], back: wall, bottom: corona.top }
                  - { name: astragal, section: [out 8, torus up 1/2], back: wall, bottom: upper fillet.top }
                  - { name: ovolo, section: [out 8, ovolo 2], back: wall, bottom: astragal.top }
                parts:
                  architrave: [fascia, taenia]
                  frieze: [frieze]
                  cornice: [reversa, fillet, corona, upper fillet, astragal, ovolo]
                """);
        assertThat(share(reading, EntablaturePart.ARCHITRAVE)).isEqualTo(12 / 42.0, within(0.25 / 21));
        assertThat(share(reading, EntablaturePart.FRIEZE)).isEqualTo(14 / 42.0, within(0.25 / 21));
        assertThat(share(reading, EntablaturePart.CORNICE)).isEqualTo(16 / 42.0, within(0.25 / 21));
        assertThat(reading.projection()).hasValueCloseTo(9.0, within(0.25));
        assertThat(reading.nearest().orElseThrow().order().name()).isEqualTo("Tuscan after Vignola");
    }

    /** Worked example I on A: bed to cap 5.936 high, 5.876 beyond the frieze, 0.99. */
    @Test
    void the_reference_cornice_projects_nearly_its_height() {
        Proportion reading = reading(REFERENCE + "proportion: {}\n");
        assertThat(reading.part(EntablaturePart.CORNICE).orElseThrow().height()).isEqualTo(5.936, within(PRINTED));
        assertThat(reading.projection()).hasValueCloseTo(5.876, within(PRINTED));
        assertThat(reading.projectionToHeight()).hasValueCloseTo(0.99, within(0.005));
    }

    /** A cornice of 3/19 of the room, by order. */
    @ParameterizedTest
    @CsvSource({"96, 6.496, 5.684, 5.895, 6.063", "108, 7.308, 6.395, 6.632, 6.821", "120, 8.120, 7.105, 7.368, 7.579"})
    void an_order_that_fills_the_room_has_the_cornice_of_the_table(
            double room, double tuscan, double doric, double ionic, double chambers) {
        Proportion reading = reading(DENTICULAR_DORIC + "proportion: { room: " + room + " }\n");
        assertThat(inRoom(reading, "Tuscan")).hasValueCloseTo(tuscan, within(PRINTED));
        assertThat(inRoom(reading, "Doric")).hasValueCloseTo(doric, within(PRINTED));
        assertThat(inRoom(reading, "Ionic")).hasValueCloseTo(ionic, within(PRINTED));
        assertThat(inRoom(reading, "Ionic after Chambers")).hasValueCloseTo(chambers, within(PRINTED));
    }

    private static OptionalDouble inRoom(Proportion reading, String order) {
        return reading.orders().stream()
                .filter(row -> row.order().name().equals(order))
                .findFirst()
                .orElseThrow()
                .inRoom();
    }

    private static SizeRow size(Proportion reading, String rule) {
        return reading.sizes().stream()
                .filter(row -> row.rule().name().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    /** Nicholson, p. 13, and Vignola's nineteen parts. */
    @ParameterizedTest
    @CsvSource({
        "entablature on columns, 96, 13.714, 16",
        "entablature without columns, 96, 12, 13.714",
        "cornice frieze and astragal, 96, 9.6, 9.6",
        "cornice alone, 96, 3.2, 4.8",
        "cornice alone, 108, 3.6, 5.4",
        "cornice alone, 120, 4, 6",
        "entablature of an order with its pedestal, 96, 15.158, 15.158",
        "entablature of an order with its pedestal, 108, 17.053, 17.053",
        "entablature of an order with its pedestal, 120, 18.947, 18.947",
        "entablature of an order without pedestal, 96, 19.2, 19.2",
        "one-piece crown, 96, 3, 4"
    })
    void rules_for_rooms_give_the_sizes_of_the_books(String rule, double room, double least, double most) {
        Proportion reading = reading(DENTICULAR_DORIC + "proportion: { room: " + room + " }\n");
        assertThat(size(reading, rule).least()).hasValueCloseTo(least, within(PRINTED));
        assertThat(size(reading, rule).most()).hasValueCloseTo(most, within(PRINTED));
    }

    @Test
    void a_room_is_as_high_as_from_floor_to_ceiling_where_nothing_else_is_said() {
        Proportion reading = reading(REFERENCE + "proportion: {}\n");
        assertThat(size(reading, "cornice alone").most()).hasValueCloseTo(4.8, within(1e-9));
        assertThat(size(reading, "cornice alone").side()).hasValue("over");
    }

    /** Hatfield art. 299, Nicholson p. 13, Vitruvius IV.6. */
    @ParameterizedTest
    @CsvSource({
        "door two wide to five high, 32",
        "door three wide to seven high, 34.286",
        "grand door, 40",
        "architrave of an inner door, 4.286",
        "jamb face of an Ionic door, 5.714",
        "its cymatium, 0.952",
        "its first fascia, 1.190",
        "its second fascia, 1.587",
        "its third fascia, 1.984",
        "frieze over an Ionic door, 5.714"
    })
    void rules_for_doors_give_the_sizes_of_the_books(String rule, double most) {
        Proportion reading = reading(DENTICULAR_DORIC + "proportion: { opening: { width: 30, height: 80 } }\n");
        assertThat(size(reading, rule).most()).hasValueCloseTo(most, within(PRINTED));
    }

    /** Vitruvius: cymatium and the three fasciae make the jamb face. */
    @Test
    void the_bands_of_an_ionic_door_make_its_jamb() {
        Proportion reading = reading(DENTICULAR_DORIC + "proportion: { opening: { width: 30, height: 80 } }\n");
        double sum = List.of("its cymatium", "its first fascia", "its second fascia", "its third fascia").stream()
                .mapToDouble(rule -> size(reading, rule).most().orElseThrow())
                .sum();
        assertThat(sum)
                .isEqualTo(size(reading, "jamb face of an Ionic door").most().orElseThrow(), within(1e-9));
    }

    /** Sheraton: a cornice projects its height, a Doric one 1-1/4 of it. */
    @Test
    void projections_of_the_books_stand_beside_that_of_the_stack() {
        Proportion reading = reading(DENTICULAR_DORIC + DORIC_PARTS);
        assertThat(size(reading, "projection of a cornice").most()).hasValueCloseTo(8.88, within(1e-9));
        assertThat(size(reading, "projection of a Doric cornice").most()).hasValueCloseTo(11.1, within(1e-9));
        assertThat(size(reading, "projection after Serlio").side()).hasValue("within");
    }

    @Test
    void a_reading_is_for_a_person_to_look_at_and_never_says_no() {
        Answers known = Answered.sound(DENTICULAR_DORIC + DORIC_PARTS);
        Ruling ruling = known.verdict().rulings().stream()
                .filter(one -> one.topic() == Topic.PROPORTION)
                .findFirst()
                .orElseThrow();
        assertThat(ruling.answer()).isEqualTo(Reply.LOOK);
        assertThat(FigurePrinter.INCHES.print(ruling.because()))
                .startsWith(
                        "architrave 27 %, frieze 36 %, cornice 37 %; nearest in the books: Doric with dentils with 27 %,"
                                + " 36 %, 37 %; the cornice projects 1.08 of its height");
    }

    @Test
    void nothing_is_said_where_nobody_asks() {
        Answers known = Answered.sound(DENTICULAR_DORIC);
        assertThat(known.proportion().asked()).isFalse();
        assertThat(known.verdict().rulings()).noneMatch(one -> one.topic() == Topic.PROPORTION);
    }

    private static String boards(String... heights) {
        StringBuilder yaml = new StringBuilder("wood: check-wood\nspace: { wall: { solid: yes } }\npieces:\n");
        for (int i = 0; i < heights.length; i++) {
            yaml.append("  - { name: p")
                    .append(i)
                    .append(", ")
                    .append(heights[i])
                    .append(", back: wall, bottom: ");
            yaml.append(i == 0 ? "datum" : "p" + (i - 1) + ".top").append(" }\n");
        }
        return yaml + "proportion: {}\n";
    }

    private static List<String> remarks(Proportion reading) {
        return reading.rhythm().stream()
                .map(row -> row.remarks().stream()
                        .map(FigurePrinter.INCHES::print)
                        .reduce("", (a, b) -> a.isEmpty() ? b : a + "; " + b))
                .toList();
    }

    /** Two side by side should not be equal (Varnum, rule 3a); within 10 % they read so. */
    @Test
    void equal_neighbors_thin_members_and_curves_alike_are_remarked() {
        assertThat(remarks(reading(
                        boards("section: [out 1, up 2]", "section: [out 2, up 2.1]", "section: [out 3, up 1]"))))
                .containsExactly("", "about as high as p0 up beside it", "");
        assertThat(remarks(reading(
                        boards("section: [out 1, up 2]", "section: [out 1-1/4, up 1/16]", "section: [out 3, up 1]"))))
                .containsExactly("", "under 1/8: reads as a mistake", "");
        assertThat(remarks(reading(
                        boards("section: [out 1, up 4]", "section: [out 1, cove 1]", "section: [out 2, cove 1/2]"))))
                .containsExactly("", "", "hollow on p1 cove");
    }

    @Test
    void reveals_that_are_nearly_alike_or_thin_are_remarked() {
        Proportion reading = reading("""
                wood: check-wood
                space: { wall: { solid: yes } }
                pieces:
                  - { name: a, section: [out 1, up 4], back: wall, bottom: datum }
                  - { name: b, section: [out 1/4, up 3-3/4], back: a.face, bottom: 1/8 }
                  - { name: c, section: [out 1-1/16, up 1], back: wall, bottom: a.top }
                proportion: {}
                """);
        assertThat(reading.reveals()).isNotEmpty();
        assertThat(reading.reveals().stream()
                        .flatMap(row -> row.remarks().stream())
                        .map(FigurePrinter.INCHES::print))
                .allMatch(words -> words.startsWith("under 1/8") || words.contains("meant to be alike?"));
    }

    private static List<String> refusals(String more) {
        Answer answer = Answered.of(DENTICULAR_DORIC + more);
        assertThat(answer.known()).isEmpty();
        return Answered.messages(answer, Level.REFUSAL);
    }

    @Test
    void parts_that_overlap_or_leave_trim_out_are_refused() {
        assertThat(refusals(
                        "parts: { frieze: [architrave, frieze], cornice: [band, reversa, dentils, corona, crown] }\n"))
                .containsExactly("The parts leave out upper reversa."
                        + " Put it into the architrave, the frieze or the cornice.");
        assertThat(refusals("parts: { architrave: [architrave, frieze], frieze: [frieze],"
                        + " cornice: [band, reversa, dentils, corona, upper reversa, crown] }\n"))
                .containsExactly("'frieze' is in the architrave and in the frieze. Leave it in one of the two.");
        assertThat(refusals("parts: { frieze: [architrave, frieze, freeze],"
                        + " cornice: [band, reversa, dentils, corona, upper reversa, crown] }\n"))
                .containsExactly("No piece is called 'freeze', which the frieze holds. Did you mean frieze?");
        assertThat(refusals("parts: {}\n"))
                .containsExactly("No part is named."
                        + " Name pieces under architrave, frieze or cornice, or leave 'parts:' out.");
    }

    @Test
    void parts_out_of_their_order_are_a_problem_and_give_no_figures() {
        Answer answer = Answered.of(DENTICULAR_DORIC + """
                parts:
                  architrave: [frieze]
                  frieze: [architrave]
                  cornice: [band, reversa, dentils, corona, upper reversa, crown]
                """);
        assertThat(Answered.messages(answer, Level.PROBLEM))
                .contains("The parts overlap: 'frieze' of the architrave is seen above 'architrave' of the frieze."
                        + " Put one of the two into the part of the other.");
        assertThat(answer.known().orElseThrow().proportion().parts()).isEmpty();
    }

    @Test
    void an_order_that_no_book_holds_and_a_room_without_height_are_refused() {
        assertThat(refusals("proportion: { beside: Doric with dentels }\n"))
                .containsExactly("No order is called 'Doric with dentels'. Did you mean Doric with dentils?");
        assertThat(refusals("proportion: { room: 0 }\n"))
                .containsExactly("'room' has to be more than 0. Give it a length, as 96 or 8'.");
    }

    @Test
    void a_line_under_must_may_ask_for_a_share() {
        Answers known = Answered.sound(DENTICULAR_DORIC + DORIC_PARTS + """
                must: [share of the height of cornice <= 40 %, projection to height >= 1.1]
                """);
        assertThat(known.must()).extracting(one -> one.met()).containsExactly(true, false);
    }
}
