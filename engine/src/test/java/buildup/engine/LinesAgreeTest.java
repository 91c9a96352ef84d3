package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.judge.clearance.FireRow;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.room.run.Fit;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Level;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No line of the answers says the contrary of another. */
class LinesAgreeTest {
    /** A rail over an apron, 1-1/2 out in all; the apron butts a casing, the rail ends as said. */
    private static String rail(String end, String casing) {
        return "wood: check-wood\nspace: { floor: -34, wall: { solid: yes } }\npieces:\n"
                + "  - { name: apron, profile: board 3/4 x 2-1/2, back: wall, bottom: datum }\n"
                + "  - { name: rail, profile: board 3/4 x 3, back: apron.face, bottom: apron.top - 1 }\n"
                + "plan:\n  - name: dining\n    left: die\n    right: [{ end: " + end
                + ", pieces: [rail] }, { end: butt"
                + casing + " }]\n    stretches: [{ name: north, length: 100 }]\n";
    }

    private static List<Fit> returns(String yaml) {
        return Answered.sound(yaml).job().orElseThrow().fits().stream()
                .filter(Fit::selfReturn)
                .toList();
    }

    private static List<String> problems(String yaml) {
        return Answered.messages(Answered.of(yaml), Level.PROBLEM).stream()
                .filter(words -> words.contains("rail") && words.contains("return"))
                .toList();
    }

    /** What stands out 1-1/2 beside a casing of 3/4 has 3/4 left to turn back over. */
    @Test
    void a_return_beside_a_casing_ends_on_the_casing_and_not_on_the_wall_behind_it() {
        String beside = rail("return", ", casing: 3/4");
        assertThat(problems(beside)).isEmpty();
        assertThat(returns(beside)).hasSize(1);
        assertThat(returns(beside).get(0).longPoint()).isCloseTo(0.75, within(1e-9));
        assertThat(returns(rail("return", ", casing: 1/2")).get(0).longPoint()).isCloseTo(1, within(1e-9));
        // shorter than it is thick: no miter
        assertThat(problems(rail("return", ", casing: 1")))
                .singleElement()
                .asString()
                .startsWith("'rail': return 1/2 long and 3/4 thick: cannot be mitered.");
    }

    /** Two boards 1/4 apart, seen from 60 out: a rule that asks for the gap judges it, and the row does not deny that it is seen. */
    @Test
    void a_joint_that_a_rule_judges_is_not_told_as_unseen() {
        String apart = "wood: check-wood\nspace: { floor: -60, wall: { solid: no } }\n"
                + "eyes: [ { name: low, distance: 60, height: -20 } ]\npieces:\n"
                + "  - { name: case, kind: framing, section: [out 10, up 60], face: wall, top: 6 }\n"
                + "  - { name: low board, profile: board 3/4 x 2-1/2, back: wall, bottom: 0 }\n"
                + "  - { name: high board, profile: board 3/4 x 2-1/2, back: wall, bottom: 2-3/4 }\n";
        assertThat(Answered.messages(Answered.of(apart), Level.PROBLEM))
                .anyMatch(said -> said.contains("A gap of 1/4 stands open"));
        String judged = apart + "must: [ gap of low board over high board <= 1/2 ]\n";
        assertThat(Answered.messages(Answered.of(judged), Level.PROBLEM)).isEmpty();
        assertThat(Answered.row(judged, Topic.SEEN).answer()).isEqualTo(Reply.YES);
        assertThat(Answered.because(judged, Topic.SEEN))
                .isEqualTo("no raw wood is seen; the joints that stand open were meant, or 'must' asks for them");
    }

    @Test
    void a_return_that_a_casing_covers_whole_is_not_cut() {
        String covered = rail("return", ", casing: 1-1/2");
        assertThat(returns(covered)).isEmpty();
        assertThat(problems(covered))
                .singleElement()
                .asString()
                .contains("a casing that stands 1-1/2 out covers its whole end");
        assertThat(problems(rail("butt", ", casing: 1-1/2"))).isEmpty();
    }

    @Test
    void a_return_beside_a_casing_of_unknown_thickness_asks_for_it() {
        assertThat(problems(rail("return", "")))
                .singleElement()
                .asString()
                .contains("how far that stands out is not given");
    }

    /**
     * A shelf 8-1/2 deep against a casing of 3/4 stands 7-3/4 proud of it; of the core's underside, 3-1/2 deep, an eye sees
     * no more than that.
     */
    @Test
    void end_grain_that_shows_more_than_raw_wood_is_told_before_it_each_with_its_cure() {
        String mantel = """
                wood: check-wood
                space: { floor: 0, ceiling: 96 }
                eyes: [ { name: seated, distance: 60, height: 40 } ]
                pieces:
                  - { name: frieze, profile: board 3/4 x 6, back: wall, top: 52 }
                  - { name: core, kind: nailer, profile: board 3/4 x 4-1/4, lay: flat, back: wall, bottom: 52 }
                  - { name: shelf, profile: board 3/4 x 8-1/2, lay: flat, back: wall, bottom: core.top }
                plan:
                  - { left: { end: butt, casing: 3/4 }, right: die, stretches: [{ name: a, length: 60 }] }
                """;
        assertThat(Answered.row(mantel, Topic.SEEN).answer()).isEqualTo(Reply.NO);
        assertThat(Answered.because(mantel, Topic.SEEN))
                .startsWith("shelf: end grain 7-3/4 proud of the casing")
                .endsWith("of raw 'core'.");
        assertThat(Answered.because(mantel, Topic.SEEN)).doesNotContain("more");
        // a second board of end grain is counted
        String upper = "  - { name: upper, profile: board 3/4 x 8, lay: flat, back: wall, bottom: shelf.top }\nplan:";
        assertThat(Answered.because(mantel.replace("plan:", upper), Topic.SEEN))
                .startsWith("shelf: end grain 7-3/4 proud of the casing, and 1 more. ");
        assertThat(Answered.cure(mantel, Topic.SEEN))
                .startsWith("shelf: Return it, or ")
                .contains(". core: Finish it");
    }

    @Test
    void end_grain_proud_of_a_casing_is_looked_at_with_eyes_or_without() {
        for (String eyes : List.of("", "eyes: [{ name: standing, distance: 60, height: floor + 64 }]\n")) {
            String proud = eyes + rail("butt, casing: 3/4", ", casing: 3/4");
            assertThat(Answered.row(proud, Topic.SEEN).answer()).isEqualTo(Reply.LOOK);
            assertThat(Answered.because(proud, Topic.SEEN)).startsWith("rail: end grain 3/4 proud of the casing");
            assertThat(Answered.cure(proud, Topic.SEEN)).isEqualTo("Return it, or thicken the casing with a backband.");
            assertThat(Answered.sound(proud.replace("butt, casing: 3/4, pieces", "return, pieces"))
                            .verdict()
                            .rulings())
                    .noneMatch(ruling -> ruling.topic() == Topic.SEEN && ruling.answer() == Reply.LOOK);
            String little = proud.replace("casing: 3/4", "casing: 1-1/8");
            assertThat(Answered.cure(little, Topic.SEEN)).isEqualTo("Thicken the casing with a backband.");
        }
    }

    /** A rise of 3 in 12 is 14.04 degrees; the upper flat, (9/16 - 1/4) / cos 38 = 0.397, opens by its sine: 0.096. */
    @Test
    void a_crown_that_stands_open_under_a_sloped_ceiling_is_looked_at() {
        String sloped =
                "wood: check-wood\nspace: { floor: -90, ceiling: { height: 6, slope: 3 in 12 }, wall: { solid: yes } }\n"
                        + "pieces:\n  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, top: ceiling - 1/8 }\n"
                        + "  - { name: crown, profile: check-crown-edged 9/16 x 3-5/8, back: frieze.face, top: touch }\n"
                        + "plan: [{ name: room, left: die, right: die, stretches: [{ name: a, length: 120 }] }]\n";
        assertThat(Answered.row(sloped, Topic.SEEN).answer()).isEqualTo(Reply.LOOK);
        assertThat(Answered.because(sloped, Topic.SEEN))
                .isEqualTo("crown: open 0.096 along its edge under the sloped ceiling");
        // a crown that stays clear of the ceiling meets nothing that could stand open
        assertThat(Answered.sound(sloped.replace("top: touch", "top: frieze.top - 1"))
                        .verdict()
                        .rulings())
                .noneMatch(ruling -> ruling.topic() == Topic.SEEN);
        assertThat(Answered.sound(sloped.replace("{ height: 6, slope: 3 in 12 }", "6"))
                        .verdict()
                        .rulings())
                .noneMatch(ruling -> ruling.topic() == Topic.SEEN);
    }

    /** IRC R1001.11, exception 4: 1/8 for each inch of distance; at 11-1/4 that is 1.40625, which no line tells as more. */
    @Test
    void a_limit_of_fire_is_told_as_no_more_than_it_is() {
        String mantel =
                "wood: check-wood\nspace: { floor: -50, wall: { solid: yes } }\nfirebox: { top: -10, left: 12, right: 48 }\n"
                        + "pieces:\n  - { name: shelf, profile: board 1-1/2 x 9-1/4, lay: flat, back: wall, bottom: 1-1/4 }\n";
        Answers answers = Answered.sound(mantel);
        FireRow irc = answers.clearance().fire().stream()
                .filter(row -> row.rule().set().equals("IRC"))
                .findFirst()
                .orElseThrow();
        assertThat(irc.allowed().orElseThrow()).isCloseTo(11.25 / 8, within(1e-9));
        assertThat(Answered.because(mantel, Topic.FIRE)).contains("IRC 2018 allows 1-3/8.");
        Sheet sheet = answers.sheets().stream()
                .filter(one -> one.key().equals("clearance"))
                .findFirst()
                .orElseThrow();
        for (String key : List.of("distance", "allowed", "margin", "spare")) {
            assertThat(column(sheet, key).type()).isEqualTo(new Type.Measure(Quantity.LENGTH, Rounding.DOWN));
        }
        for (String key : List.of("needs", "has")) {
            assertThat(column(sheet, key).type()).isEqualTo(new Type.Measure(Quantity.LENGTH, Rounding.UP));
        }
    }

    private static Column column(Sheet sheet, String key) {
        return sheet.columns().get(sheet.at(key).orElseThrow());
    }
}
