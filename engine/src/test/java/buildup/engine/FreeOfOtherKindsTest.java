package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.judge.along.Turning;
import buildup.engine.judge.along.WhyNot;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchResult;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Searches along what is no length: loads, coefficients, counts. */
class FreeOfOtherKindsTest {
    /** A ledge on a ground that is screwed to the wall, with books on it. */
    private static String shelf(String load) {
        return """
                units: in
                wood: red-oak
                space: { floor: -48, ceiling: 48, wall: { covering: 1/2 } }
                pieces:
                  - { name: ground, kind: nailer, profile: board 3/4 x 2-1/2, back: wall, bottom: datum }
                  - { name: ledge, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: ground.top }
                fastenings:
                  - { name: ground screws, piece: ground, use: screw 8 x 2-1/2, at: { up: 1-1/4 } }
                  - { name: ledge screws, piece: ledge, use: trim screw 7 x 3, at: { out: 3/8, up: ledge.top }, spacing: 8, first: 4 }
                loads: [{ name: books, on: ledge, out: 3, load: "%s" }]
                """.formatted(load);
    }

    private static SearchResult found(String yaml) {
        return SearchedTest.search(yaml, SearchLimits.of(2000), Optional.empty())
                .result()
                .orElseThrow();
    }

    /** What a load of so much may grow by, from the answer of that stack itself. */
    private static double factor(String load) {
        String yaml = shelf("one of [" + load + ", 1], now " + load) + "must: [load factor >= 0]\n";
        return found(yaml).today().candidate().judged().musts().get(0).figure().orElseThrow();
    }

    @Test
    void every_quarter_of_a_pound_is_tried_and_the_greatest_that_is_carried_twice_is_the_best() {
        assertThat(factor("5.75")).isGreaterThan(2);
        assertThat(factor("6")).isLessThan(2);
        String must = "must: [load factor >= 2]\nwish: [load of books near 12]\n";
        SearchResult found = found(shelf("between 2 and 10 by 1/4, now 6") + must);
        // 2, 2-1/4 ... 5-3/4: 16 of the 33
        assertThat(found.meeting()).isEqualTo(16);
        assertThat(found.best().get(0).changes().get(0).to()).isEqualTo("5.75");
        Turning turn = found.turning().get(0);
        assertThat(turn.quantity()).isEqualTo(Quantity.LINE_FORCE);
        assertThat(factor("%.6f".formatted(turn.value()))).isCloseTo(2, within(1e-5));
    }

    @Test
    void a_load_in_newtons_is_written_in_newtons() {
        // 80 N/m are 80 / 14.5939 = 5.48 lb/ft, 90 are 6.17: the turn lies between the two, at 5.93
        SearchResult found = found(shelf("between 60 N/m and 120 N/m by 10 N/m, now 90 N/m")
                + "must: [load factor >= 2]\nwish: [load of books near 12]\n");
        assertThat(found.meeting()).isEqualTo(3);
        assertThat(found.best().get(0).changes().get(0).to()).isEqualTo("80 N/m");
        assertThat(found.turning().get(0).value()).isCloseTo(5.93, within(0.01));
    }

    @Test
    void a_coefficient_turns_at_the_same_place_whatever_its_steps_and_is_no_length() {
        for (String steps : List.of("between 0 and 1 by 0.1, now 0.3", "between 0 and 1 by 0.125, now 0.25")) {
            String yaml = "friction: \"" + steps + "\"\n" + shelf("4 lb/ft");
            WhyNot why = SearchedTest.search(yaml, SearchLimits.of(100), Optional.of("load factor >= 3"))
                    .why()
                    .orElseThrow()
                    .get(0);
            Turning turn = why.turning().orElseThrow();
            assertThat(turn.quantity()).isEqualTo(Quantity.RATIO);
            assertThat(factorAt(turn.value() - 1e-4)).isLessThan(3);
            assertThat(factorAt(turn.value() + 1e-4)).isGreaterThan(3);
            String said = FigurePrinter.INCHES.print(WhyNot.said(List.of(why)).get(1));
            // told on the side on which the rule is met
            double told = Double.parseDouble(said.replaceAll("It turns at friction (.*)\\.", "$1"));
            assertThat(told).isBetween(turn.value(), turn.value() + 0.001);
        }
    }

    private static double factorAt(double friction) {
        String yaml = "friction: \"one of [%.6f, 0]\"\n".formatted(friction) + shelf("4 lb/ft")
                + "must: [load factor >= 0]\n";
        return found(yaml).today().candidate().judged().musts().get(0).figure().orElseThrow();
    }

    @Test
    void a_count_turns_at_a_whole_number() {
        // one screw at each stud carries 1.97 times, two about twice that: the rule is met from the second on
        String yaml = shelf("6").replace("up: 1-1/4 } }", "up: 1-1/4 }, per: \"between 1 and 4 by 1\" }")
                + "must: [load factor >= 3]\n";
        Turning turn = found(yaml).turning().get(0);
        assertThat(turn.value()).isEqualTo(2);
        assertThat(turn.metAbove()).isTrue();
        assertThat(turn.metBelow()).isFalse();
    }

    @Test
    void a_choice_that_its_place_does_not_take_is_said_and_not_passed_over() {
        String yaml = shelf("one of [5-1/4, 5], now 5") + "must: [load factor >= 2]\n";
        Searched searched = SearchedTest.search(yaml, SearchLimits.of(100), Optional.empty());
        assertThat(searched.notices())
                .extracting(notice -> NoticeWords.INCHES.message(notice) + " " + NoticeWords.INCHES.cure(notice))
                .anySatisfy(line -> assertThat(line)
                        .contains("With 'loads.books.load' at 5-1/4")
                        .contains("'5-1/4' is not a load")
                        .contains("Of 2 choices of it that were looked at, 1 make none"));
    }

    @Test
    void the_table_of_a_question_why_rounds_as_the_report_does() {
        String yaml = shelf("between 4 and 8 by 2, now 6");
        List<WhyNot> why = SearchedTest.search(yaml, SearchLimits.of(100), Optional.of("load factor >= 2"))
                .why()
                .orElseThrow();
        var sheet = WhyNot.sheet(Optional.of(why));
        var least = sheet.cell(sheet.rows().get(0), "most");
        double most = factor("4");
        assertThat(least.toString()).contains("places=2").contains(Double.toString(most));
    }

    /** A board 3 in wide and 1 thick, turned: it stands 3 sin a + cos a out, 2-3/4 at 41.98 degrees. */
    @Test
    void where_a_rule_turns_is_told_on_the_side_on_which_it_is_met() {
        String yaml = """
                wood: red-oak
                pieces: [{ name: strip, profile: board 1 x 3, turn: "between 0 and 60 by 15, now 30", back: wall, bottom: 0 }]
                must: [RULE]
                """;
        for (String rule : List.of("projection <= 2.75", "projection >= 2.75")) {
            Turning turn = found(yaml.replace("RULE", rule)).turning().get(0);
            String told = FigurePrinter.INCHES.print(turn.at());
            double at = Double.parseDouble(told.replace("\u00b0", ""));
            double out = out(at);
            assertThat(out(turn.value())).isCloseTo(2.75, within(1e-6));
            assertThat(turn.value()).isCloseTo(41.9803, within(1e-3));
            assertThat(rule.contains("<=") ? out <= 2.75 : out >= 2.75)
                    .as(rule + " at " + told)
                    .isTrue();
        }
    }

    /** How far out a board 1 x 3 comes that is turned by so many degrees, its back at the wall. */
    private static double out(double degrees) {
        double a = Math.toRadians(degrees);
        return 3 * Math.sin(a) + Math.cos(a);
    }

    /**
     * A shelf 7 in out over a board 12 in high that faces south, in the sun of midwinter at latitude 45. By the usual formulas
     * (declination d = -23.44, h = 15 degrees an hour from noon) the sun stands sin 45 (sin d + cos d cos h) high and
     * sin 45 (cos d cos h - sin d) to the south, and the shadow is 7 in times the first by the second. It is 2.4 in deep, 20 % of
     * the board, where that is 0.34286: cos d cos h = 0.39778 x 1.34286 / 0.65714 = 0.81286, h = 27.63 degrees or 1.842 hours,
     * so from 10.158 (10:09 and 29 s) to 13.842 (13:50 and 31 s).
     */
    @Test
    void where_a_rule_turns_along_an_hour_is_exact_and_told_as_a_time_of_day_that_meets_it() {
        for (String hours : List.of("between 9 and 15 by 0.5, now 12", "between 9:00 and 15:00 by 0:30, now 12:00")) {
            SearchResult found = found("""
                    wood: red-oak
                    space: { floor: -48, wall: { solid: yes } }
                    lights: [{ name: sun, latitude: 45, day: 21 December, hour: "%s", faces: 180 }]
                    pieces:
                      - { name: frieze, profile: board 1 x 12, back: wall, bottom: 0 }
                      - { name: shelf, profile: board 1 x 8, lay: flat, back: wall, bottom: frieze.top }
                    must: [share of frieze.face in sun >= 20 %%]
                    wish: [least change]
                    """.formatted(hours));
            assertThat(found.turning())
                    .extracting(Turning::value)
                    .satisfiesExactly(
                            morning -> assertThat(morning).isCloseTo(10.158, within(0.002)),
                            evening -> assertThat(evening).isCloseTo(13.842, within(0.002)));
            assertThat(found.turning())
                    .extracting(turn -> FigurePrinter.INCHES.print(turn.at()))
                    .containsExactly("10:10", "13:50");
            assertThat(found.turning()).allMatch(turn -> turn.shop().isEmpty());
        }
    }

    @Test
    void an_hour_is_typed_as_a_time_of_day() {
        // the sun stands lower toward morning and evening, and its shadow is less deep: 9:00 is the least of these
        SearchResult found = found("""
                wood: red-oak
                space: { floor: -48, wall: { solid: yes } }
                lights: [{ name: sun, latitude: 45, day: 21 December, hour: "between 9 and 12 by 0.25, now 12", faces: 180 }]
                pieces:
                  - { name: frieze, profile: board 1 x 12, back: wall, bottom: 0 }
                  - { name: shelf, profile: board 1 x 8, lay: flat, back: wall, bottom: frieze.top }
                wish: [share of frieze.face in sun near 20 %]
                """);
        // 20 % lies at 10:09, see above, and 10:15 is the nearest quarter
        assertThat(found.best().get(0).changes())
                .extracting(change -> change.to())
                .containsExactly("10:15");
    }

    /** A block on the floor and a board on it: a load over the block brings nothing down, one past its edge tips the board. */
    @Test
    void what_nothing_brings_down_is_the_best_where_the_most_is_wished() {
        String yaml = """
                wood: red-oak
                space: { floor: 0, wall: { solid: no } }
                pieces:
                  - { name: low, profile: board 3 x 6, face: 5, bottom: 0 }
                  - { name: top, profile: board 1 x 8, lay: flat, face: 8, bottom: low.top }
                loads: [{ name: books, on: top, out: "one of [6, 4], now 6", load: 1 }]
                wish: [most load factor]
                """;
        SearchResult found = found(yaml);
        assertThat(found.best().get(0).changes().get(0).to()).isEqualTo("4");
    }

    @Test
    void of_what_nothing_bounds_it_is_not_said_that_no_stack_has_the_figure() {
        String yaml = """
                wood: red-oak
                space: { floor: 0, wall: { solid: no } }
                pieces: [{ name: low, profile: board 3 x 6, face: 5, bottom: 0 }]
                loads: [{ name: books, on: low, out: "between 3 and 4 by 1/2, now 3", load: 1 }]
                """;
        List<WhyNot> why = SearchedTest.search(yaml, SearchLimits.of(100), Optional.of("load factor >= 2"))
                .why()
                .orElseThrow();
        assertThat(WhyNot.said(why))
                .extracting(FigurePrinter.INCHES::print)
                .containsExactly("'load factor >= 2' is met today.", "It does not hang on loads.books.out.");
    }
}
