package buildup.engine.buy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answer;
import buildup.engine.Question;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a job takes besides sticks, worked by hand; a gallon is 231 cubic inches and 128 fluid ounces. */
class PurchasesTest {
    private static final Offset<Double> EXACT = within(1e-6);

    private static final Set<String> CODES = Set.of("supplies-not-counted", "box-unknown", "supplies-without-price");

    private static final String ROWS = """
            fastenings:
              - { name: frieze nails, piece: frieze, use: 15 ga x 2-1/2, at: { up: 2 }, spacing: 16 }
              - { name: cap nails, piece: cap, use: 18 ga x 1-3/4, at: { out: 3/8, up: cap.top }, spacing: 12 }
            """;

    private static String study(String supplies) {
        return BoughtJob.SHELF + ROWS + BoughtJob.wall("left: return, right: return", "120") + "supplies: " + supplies
                + "\n";
    }

    private static String packs(Bought bought) {
        StringBuilder words = new StringBuilder();
        bought.basket()
                .taken()
                .forEach(taken -> words.append(taken.count())
                        .append(" x ")
                        .append(FigurePrinter.INCHES.print(taken.pack().words()))
                        .append(' '));
        return words.toString().strip();
    }

    /**
     * Frieze: 121-1/2 along the face, 119-1/2 between the ends, 8 spaces of 16, 9 nails. Cap: its heads are 3/8 out, where the
     * stick is 120-3/4 long, 118-3/4 between the ends, 10 spaces of 12, 11 brads. A tenth more: 9.9 and 12.1, so 10 and 13.
     */
    @Test
    void fasteners_are_counted_with_their_spares_and_bought_by_the_box() {
        Purchases study = BoughtJob.purchases(study("{ fasteners: [{ of: 15 ga x 2-1/2, box: { 500: 9 } }] }"));
        Bought nails = BoughtJob.bought(study, "15 ga x 2-1/2");
        assertThat(nails.needed().amount()).isEqualTo(10);
        assertThat(packs(nails)).isEqualTo("1 x 500");
        assertThat(nails.basket().price()).isEqualTo(900);
        assertThat(FigurePrinter.INCHES.print(nails.use())).isEqualTo("1 row, 9 counted, 1 over");
        Bought brads = BoughtJob.bought(study, "18 ga x 1-3/4");
        assertThat(brads.needed().amount()).isEqualTo(13);
        assertThat(packs(brads)).isEqualTo("1 x 1000");
        assertThat(study.price()).isEqualTo(900);
        assertThat(study.priced()).isFalse();
    }

    /** 9 counted; 0 over: 9. A quarter: 11.25, so 12. All over again: 18. */
    @ParameterizedTest
    @CsvSource({"0 %, 9", "25 %, 12", "100 %, 18"})
    void a_document_says_how_many_it_wants_over(String spare, int needed) {
        Purchases study = BoughtJob.purchases(study("{ spare: " + spare + " }"));
        assertThat(BoughtJob.bought(study, "15 ga x 2-1/2").needed().amount()).isEqualTo(needed);
    }

    /** 10 are needed and 7 lie there: 3 are bought; with 10 there, none. */
    @Test
    void what_lies_in_the_shop_is_not_bought() {
        String boxes = "{ fasteners: [{ of: 15 ga x 2-1/2, box: { 1: 0.05 }, on-hand: %s }] }";
        Bought some = BoughtJob.bought(BoughtJob.purchases(study(boxes.formatted("7"))), "15 ga x 2-1/2");
        assertThat(packs(some)).isEqualTo("3 x 1");
        Bought all = BoughtJob.bought(BoughtJob.purchases(study(boxes.formatted("10"))), "15 ga x 2-1/2");
        assertThat(all.basket().taken()).isEmpty();
    }

    /**
     * The faces of the study. Frieze: 5-1/2 x 123 of face and 121-1/2 x 3/4 of underside, 767.625. Cap: underside from 3/4 to
     * 2-1/2, a frame 1-3/4 wide round 121-1/2 by 3/4, outer sides 125 and 2-1/2: 312.5 less 91.125 is 221.375; face 3/4 x 130;
     * top 125 x 2-1/2: 631.375. Together 1399.0 sq in, 9.7153 sq ft.
     *
     * <p>Primer, one coat at 350 sq ft a gallon: 9.7153 / 350 x 128 = 3.5530 fl oz. Paint, two at 400: 6.2178 fl oz.
     */
    @Test
    void paint_follows_from_what_shows_the_coats_and_the_coverage() {
        Purchases study = BoughtJob.purchases(study("{ primer: {}, paint: {} }"));
        double shown = study.faces().stream().mapToDouble(FaceArea::area).sum();
        assertThat(shown).isCloseTo(1399, EXACT);
        Bought primer = BoughtJob.bought(study, "trim primer");
        assertThat(primer.needed().amount()).isCloseTo(1399.0 / 144 / 350 * 128, EXACT);
        assertThat(FigurePrinter.INCHES.print(primer.use())).isEqualTo("9.72 sq ft, 1 coat");
        Bought paint = BoughtJob.bought(study, "trim paint");
        assertThat(paint.needed().amount()).isCloseTo(1399.0 / 144 * 2 / 400 * 128, EXACT);
        assertThat(FigurePrinter.INCHES.print(paint.use())).isEqualTo("9.72 sq ft, 2 coats");
        assertThat(packs(paint)).isEqualTo("1 x 1 qt");
    }

    /** Three coats of the frieze alone at 20 sq ft a gallon: 767.625 / 144 x 3 / 20 x 128 = 102.35 fl oz: 3 quarts and a bit. */
    @Test
    void a_document_says_coats_coverage_packs_and_pieces() {
        Purchases study = BoughtJob.purchases(study(
                "{ paint: { coats: 3, coverage: 20 ft2/gal, packs: { 1 qt: 21, 1 gal: 80 }, pieces: [frieze] } }"));
        Bought paint = BoughtJob.bought(study, "trim paint");
        assertThat(paint.needed().amount()).isCloseTo(767.625 / 144 * 3 / 20 * 128, EXACT);
        assertThat(packs(paint)).isEqualTo("1 x 1 gal"); // four quarts are 84.00
    }

    /**
     * Two returns of each piece, each a miter of 45 degrees: 2 x (4.125 + 1.875) x sqrt 2 = 16.9706 sq in. At 200 sq ft a
     * gallon: 16.9706 / 144 / 200 x 128 = 0.07542 fl oz.
     */
    @Test
    void glue_follows_from_the_faces_of_miters_and_returns() {
        Purchases study = BoughtJob.purchases(study("{ glue: {} }"));
        assertThat(study.glued()).hasSize(1);
        assertThat(study.glued().get(0).joint()).isEqualTo("return");
        assertThat(study.glued().get(0).count()).isEqualTo(4);
        assertThat(study.glued().get(0).area()).isCloseTo(12 * Math.sqrt(2), EXACT);
        Bought glue = BoughtJob.bought(study, "wood glue");
        assertThat(glue.needed().amount()).isCloseTo(12 * Math.sqrt(2) / 144 / 200 * 128, EXACT);
        assertThat(FigurePrinter.INCHES.print(glue.use())).isEqualTo("0.12 sq ft: 4 returns");
        assertThat(packs(glue)).isEqualTo("1 x 8 oz");
    }

    /** The corner of a closed run of 4 is mitered four times: 4 x 4.125 x sqrt 2 sq in. */
    @Test
    void each_miter_is_glued_once() {
        String stretch = "{ name: %s, length: 60, corner: outside 90 }";
        String plan = "plan:\n  - { name: run, stretches: [" + stretch.formatted("a") + ", " + stretch.formatted("b")
                + ", " + stretch.formatted("c") + ", " + stretch.formatted("d") + "] }\n";
        Purchases round = BoughtJob.purchases(BoughtJob.FRIEZE + plan + "supplies: { glue: {} }\n");
        assertThat(round.glued().get(0).joint()).isEqualTo("miter");
        assertThat(round.glued().get(0).count()).isEqualTo(4);
        assertThat(round.glued().get(0).area()).isCloseTo(4 * 4.125 * Math.sqrt(2), EXACT);
    }

    /**
     * A wall of 20 ft from sticks of 12: one scarf, 4.125 x sqrt 2. A board 3/4 x 12 from strips of 1x8, dressed 7-1/4 wide:
     * one line between the two, 3/4 x 120.
     */
    @Test
    void scarfs_and_the_lines_of_boards_that_are_glued_up_are_glued_too() {
        String stock = "stock: { sticks: [{ of: 1x6, buy: [12'] }] }\n";
        Purchases spliced = BoughtJob.purchases(
                BoughtJob.FRIEZE + BoughtJob.wall("left: die, right: die", "240") + stock + "supplies: { glue: {} }\n");
        assertThat(spliced.glued().get(0).joint()).isEqualTo("scarf");
        assertThat(spliced.glued().get(0).area()).isCloseTo(4.125 * Math.sqrt(2), EXACT);
        Purchases plies = BoughtJob.purchases(BoughtJob.FRIEZE.replace("3/4 x 5-1/2", "3/4 x 12")
                + BoughtJob.wall("left: die, right: die", "120")
                + stock.replace("1x6", "1x8") + "supplies: { glue: {} }\n");
        assertThat(plies.glued().get(0).joint()).isEqualTo("glue line");
        assertThat(plies.glued().get(0).area()).isCloseTo(0.75 * 120, EXACT);
    }

    /** A bead 1/4 thick behind 120 in of frieze: pi/4 x 1/16 x 120 = 5.8905 cubic inches, 3.2640 fl oz; a tube has 10. */
    @Test
    void adhesive_is_a_bead_behind_the_pieces_that_are_named() {
        Purchases study = BoughtJob.purchases(study("{ adhesive: { pieces: [frieze] } }"));
        Bought adhesive = BoughtJob.bought(study, "panel adhesive");
        assertThat(adhesive.needed().amount()).isCloseTo(Math.PI / 64 * 120 / (231.0 / 128), EXACT);
        assertThat(FigurePrinter.INCHES.print(adhesive.use())).isEqualTo("10 ft of a bead 1/4 thick behind frieze");
        assertThat(packs(adhesive)).isEqualTo("1 x 10 oz");
    }

    /**
     * 20 heads show: 9 of 0.12 on the frieze, 11 of 0.0677 on the cap; pi/4 x 1/16 x (9 x 0.0144 + 11 x 0.00458329) = 0.0088365.
     * Seams: twice the frieze's 5-1/2 and 3/4 and the cap's 1-3/4, 3/4 and 2-1/2: 22.5 by 1/32 by 1/16 = 0.043945. Three times
     * the sum, 0.158345 cubic inches.
     */
    @Test
    void filler_goes_into_holes_and_the_seams_of_returns() {
        Purchases study = BoughtJob.purchases(study("{ filler: {} }"));
        double holes = Math.PI / 4 / 16 * (9 * 0.12 * 0.12 + 11 * 0.0677 * 0.0677);
        Bought filler = BoughtJob.bought(study, "wood filler");
        assertThat(filler.needed().amount()).isCloseTo(3 * (holes + 22.5 / 512) / (231.0 / 128), EXACT);
        assertThat(FigurePrinter.INCHES.print(filler.use())).isEqualTo("20 nail holes, 1.9 ft of seams at returns");
    }

    /** A frieze between two walls has nothing to glue, and no seam of a return. */
    @Test
    void a_job_without_miters_and_returns_says_so() {
        Purchases plain = BoughtJob.purchases(BoughtJob.FRIEZE
                + "fastenings:\n  - { name: row, piece: frieze, use: 15 ga x 2-1/2, at: { up: 2 } }\n"
                + BoughtJob.wall("left: die, right: die", "120") + "supplies: { glue: {}, filler: {} }\n");
        Bought glue = BoughtJob.bought(plain, "wood glue");
        assertThat(FigurePrinter.INCHES.print(glue.use())).isEqualTo("no miter, return or scarf of trim to glue");
        assertThat(glue.basket().taken()).isEmpty();
        Bought filler = BoughtJob.bought(plain, "wood filler");
        assertThat(FigurePrinter.INCHES.print(filler.use())).isEqualTo("9 nail holes");
    }

    /** The study in millimeters takes the same nails and as much paint, in packs of its own. */
    @Test
    void a_metric_job_takes_the_same_and_buys_it_in_its_own_packs() {
        String metric = """
                title: Study
                units: mm
                wood: yellow-poplar
                space: { floor: -2133.6, ceiling: 304.8 }
                pieces:
                  - { name: frieze, profile: board 19.05 x 139.7, back: wall, bottom: datum }
                  - { name: cap, profile: board 19.05 x 63.5, lay: flat, back: wall, bottom: frieze.top }
                fastenings:
                  - { name: frieze nails, piece: frieze, use: 15 ga x 2-1/2 in, at: { up: 50.8 }, spacing: 406.4 }
                  - { name: cap nails, piece: cap, use: 18 ga x 1-3/4 in, at: { out: 9.525, up: cap.top }, spacing: 304.8 }
                plan:
                  - { name: run, left: return, right: return, stretches: [{ name: wall, length: 3048 }] }
                supplies: { paint: { coverage: 10 m2/L }, glue: {}, filler: {}, adhesive: { pieces: [frieze], bead: 6.35 } }
                """;
        Purchases twin = BoughtJob.purchases(metric);
        Purchases study =
                BoughtJob.purchases(study("{ paint: {}, glue: {}, filler: {}, adhesive: { pieces: [frieze] } }"));
        assertThat(BoughtJob.bought(twin, "15 ga x 63.5 mm").needed().amount()).isEqualTo(10);
        assertThat(BoughtJob.bought(twin, "18 ga x 44.5- mm").needed().amount()).isEqualTo(13);
        for (String good : List.of("wood glue", "wood filler", "panel adhesive")) {
            assertThat(BoughtJob.bought(twin, good).needed().amount())
                    .as(good)
                    .isCloseTo(BoughtJob.bought(study, good).needed().amount(), EXACT);
        }
        // 1399 sq in are 0.902579 sq m; two coats at 10 sq m a liter are 180.516 mL
        Bought paint = BoughtJob.bought(twin, "trim paint");
        assertThat(paint.needed().amount() * 29.5735295625).isCloseTo(1399 * 6.4516e-4 * 2 / 10 * 1000, EXACT);
        assertThat(FigurePrinter.MILLIMETERS.print(paint.needed())).isEqualTo("181 mL");
        assertThat(FigurePrinter.MILLIMETERS.print(paint.use())).isEqualTo("0.90 sq m, 2 coats");
        assertThat(packs(paint)).isEqualTo("1 x 750 mL");
        assertThat(packs(BoughtJob.bought(twin, "panel adhesive"))).isEqualTo("1 x 290 mL");
    }

    @Test
    void what_cannot_be_counted_is_said() {
        Answer answer = BoughtJob.answer(BoughtJob.SHELF + "supplies: {}\n");
        assertThat(notes(answer))
                .containsExactly(
                        "Nothing is counted under 'supplies:': the stack holds no plan of"
                                + " walls. Add one, as 'plan: [{ left: return, right: return, stretches: [{ length: 96 }] }]'.");
        Answer bare = BoughtJob.answer(BoughtJob.SHELF + BoughtJob.wall("left: die, right: die", "96")
                + "supplies: { adhesive: {}, fasteners: [{ of: 18 ga x 2, box: 500 }] }\n");
        assertThat(notes(bare))
                .containsExactly(
                        "No row of fastenings uses '18 ga x 2'. Take it out.",
                        "No adhesive is counted: it is not said which pieces it goes behind. Name them, as 'adhesive: {"
                                + " pieces: [frieze] }'.",
                        "No nails are counted for frieze and cap: no row of fastenings is given. Add their rows under"
                                + " 'fastenings:'.");
        Answer boxless = BoughtJob.answer(study("{}").replace("15 ga x 2-1/2", "8d casing"));
        assertThat(notes(boxless))
                .containsExactly(
                        "10 of 8d casing are needed; in what boxes they are sold is not known. Say it, as 'fasteners:"
                                + " [{ of: 8d casing, box: 1000 }]'.",
                        "No price is given for 18 ga x 1-3/4: the cost is without them. Write it beside the pack, as 'box:"
                                + " { 1000: 12.50 }'.");
    }

    private static List<String> notes(Answer answer) {
        NoticeWords words = NoticeWords.in(answer.unit());
        return answer.notices(EnumSet.of(Question.BUYING)).stream()
                .filter(notice -> CODES.contains(notice.code()))
                .map(notice -> words.message(notice) + " " + words.cure(notice))
                .toList();
    }

    private static final String DOOR = """
            title: Door
            wood: yellow-poplar
            space: { wall: { covering: 1/2 } }
            pieces: [{ name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }]
            plan:
              - name: door
                around: opening
                left: { end: block, block: 6 }
                right: { end: block, block: 6 }
                stretches:
                  - { name: left leg, length: 80, corner: outside 90, block: 1/8 }
                  - { name: head, length: 32, corner: outside 90, block: 1/8 }
                  - { name: right leg, length: 80 }
            supplies: { spare: 0 %%, glue: {}, paint: {}, filler: {}%s }
            """;

    /**
     * Two rosettes 3-3/4 square and 7/8 thick: 14.0625 and four edges of 3.28125, less two ends of 3/4 x 3-1/2, 21.9375
     * each. Two plinth blocks 6 x 3-1/2 x 7/8: 21, two edges of 5.25, a top of 3.0625, less one end, 31.9375 each. Six ends
     * butt on them; four blocks take eight nails.
     */
    @Test
    void blocks_are_painted_glued_and_nailed() {
        Purchases door = BoughtJob.purchases(DOOR.formatted(", blocks: 15 ga x 2-1/2"));
        assertThat(door.faces())
                .extracting(face -> face.name(door.section()))
                .containsExactly("casing", "plinth block", "rosette");
        assertThat(door.faces().get(1).area()).isCloseTo(2 * 31.9375, EXACT);
        assertThat(door.faces().get(2).area()).isCloseTo(2 * 21.9375, EXACT);
        assertThat(door.glued()).containsExactly(new GluedFaces("block joint", 6, 6 * 2.625));
        Bought nails = BoughtJob.bought(door, "15 ga x 2-1/2");
        assertThat(nails.needed().amount()).isEqualTo(8);
        assertThat(FigurePrinter.INCHES.print(nails.use())).isEqualTo("8 counted in blocks, 0 over");
        assertThat(FigurePrinter.INCHES.print(
                        BoughtJob.bought(door, "wood filler").use()))
                .isEqualTo("8 nail holes");
    }

    @Test
    void what_blocks_are_nailed_with_is_asked() {
        assertThat(BoughtJob.said(BoughtJob.answer(DOOR.formatted("")), Level.NOTE))
                .contains(
                        "The nails of 4 blocks are not counted. Say what blocks are nailed with, as 'blocks: 15 ga x 2-1/2'"
                                + " under 'supplies:'.");
        Purchases only = BoughtJob.purchases(DOOR.replace("paint: {}", "paint: { coats: 1, pieces: [rosette] }")
                .formatted(""));
        assertThat(FigurePrinter.INCHES.print(
                        BoughtJob.bought(only, "trim paint").use()))
                .isEqualTo("0.30 sq ft, 1 coat");
    }

    /**
     * A frieze of 200 in from sticks of 8 ft: three parts, two joints. Laid as one it has 198 / 16, so 13 spaces of 15.23 and
     * 14 nails at 1, 16.2, .. 199. Either side of a joint has its own, at 95.6 besides those of the row, and at 183.6 in
     * place of the one at 183.8.
     */
    @Test
    void either_side_of_a_scarf_has_its_nail() {
        String stock =
                "stock: { trim: 0, sticks: [{ of: 1x6, buy: [%s], price: 2, per: foot }] }\nsupplies: { spare: 0 %% }\n";
        String job = BoughtJob.FRIEZE
                + ROWS.replaceAll("(?m)^.*cap nails.*\n", "")
                + BoughtJob.wall("left: die, right: die", "200");
        RowCount whole =
                BoughtJob.purchases(job + stock.formatted("18'")).rows().get(0);
        assertThat(whole.sticks()).isEqualTo(1);
        assertThat(whole.count()).isEqualTo(14);
        RowCount parts = BoughtJob.purchases(job + stock.formatted("8'")).rows().get(0);
        assertThat(parts.sticks()).isEqualTo(3);
        assertThat(parts.count()).isEqualTo(14 - 1 + 2 * 2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{ spare: lots } | 'lots' is not a share. Write it as 15 %.",
                "{ spare: 200 % } | An overage of 200 % is too much. Write up to 100 %.",
                "{ fasteners: [{ box: 500 }] } | This box does not say which fastener it holds. Add 'of:', as 15 ga x 2-1/2.",
                "{ fasteners: [{ of: 15 ga x 2-1/2, box: many }] } | 'many' is not how many lie in a box. Write a whole"
                        + " number from 1 to 100000, as 1000.",
                "{ fasteners: [{ of: 15 ga x 2-1/2, box: { 500: cheap } }] } | 'cheap' is not a price. Write a plain number,"
                        + " as 3.20.",
                "{ fasteners: [{ of: 15 ga x 2-1/2, on-hand: few }] } | 'few' is not how much lies in the shop. Write a whole"
                        + " number, as 250.",
                "{ fasteners: [{ of: 15 ga x 2-1/2 }, { of: 15 ga x 2-1/2 }] } | '15 ga x 2-1/2' is there twice. Write all its"
                        + " boxes in one.",
                "{ paint: { use: trim pait } } | No paint is called 'trim pait'. Did you mean trim paint?",
                "{ paint: { coats: 0 } } | '0' is not a number of coats. Write a whole number from 1 to 9.",
                "{ paint: { coverage: thick } } | 'thick' is not a coverage. Write it as 400 ft2/gal or 10 m2/L.",
                "{ paint: { coverage: 0 ft2/gal } } | '0 ft2/gal' is not a coverage. Write it as 400 ft2/gal or 10 m2/L.",
                "{ paint: { packs: [1 bucket] } } | '1 bucket' is not the size of a pack. Write it with its unit, as 1 qt, 10 oz"
                        + " or 750 mL.",
                "{ paint: { on-hand: half } } | 'half' is not how much lies in the shop. Write it with its unit, as 1 qt or 500"
                        + " mL.",
                "{ paint: { pieces: [crown] } } | No piece is called 'crown'. Known here: cap, frieze.",
                "{ adhesive: { bead: 3, pieces: [frieze] } } | A bead cannot be 3 thick. Write its diameter, up to 1, as 1/4.",
                "{ paint: { packs: [1 oz, 2 oz, 3 oz, 4 oz, 5 oz, 6 oz] } } | 6 pack sizes are listed; at most 5 are used. Keep those that"
                        + " you buy."
            })
    void what_cannot_be_read_is_refused_with_a_cure(String supplies, String message) {
        assertThat(BoughtJob.said(BoughtJob.answer(study(supplies)), Level.REFUSAL))
                .containsExactly(message);
    }
}
