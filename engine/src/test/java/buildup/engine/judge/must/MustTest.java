package buildup.engine.judge.must;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a stack has to meet, asked of a bead, a frieze over it and a second board called like a word of the grammar. */
class MustTest {
    private static final String STACK = "title: must\nunits: UNIT\nwood: yellow-poplar\nsizes: { lip: 1/4 in }\n"
            + "space: { wall: { from: 0, to: 90 in } }\npieces:\n"
            + "  - { name: bead, profile: board 1 in x 3/4 in, back: wall, bottom: datum }\n"
            + "  - { name: frieze, profile: board 3/4 in x 5-1/2 in, back: wall, bottom: bead.top }\n"
            + "  - { name: frieze over it, profile: board 1/2 in x 2 in, back: wall, bottom: frieze.top }\n"
            + "must:\n";

    private static Answer ask(String unit, String... lines) {
        String yaml = STACK.replace("UNIT", unit)
                + Stream.of(lines).map(line -> "  - " + line + "\n").collect(Collectors.joining());
        return Answer.of(
                DocumentReader.read("must.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
    }

    private static MustResult met(String line) {
        return ask("in", line).known().orElseThrow().must().get(0);
    }

    private static List<String> refused(String line) {
        Answer answer = ask("in", line);
        assertThat(answer.known()).isEmpty();
        return answer.notices().stream()
                .filter(notice ->
                        notice.code().equals("not-a-rule") || notice.code().equals("unknown-figure"))
                .map(notice -> NoticeWords.INCHES.message(notice) + " | " + NoticeWords.INCHES.cure(notice))
                .toList();
    }

    @Test
    void the_verdict_says_how_many_are_met_and_which_lacks_most() {
        Ruling row =
                ask("in", "height >= 1", "height >= 9", "height >= 90")
                        .known()
                        .orElseThrow()
                        .verdict()
                        .rulings()
                        .stream()
                        .filter(ruling -> ruling.topic() == Topic.MUST)
                        .findFirst()
                        .orElseThrow();
        // 3/4 + 5-1/2 + 2 in high
        assertThat(FigurePrinter.INCHES.print(row.because()))
                .isEqualTo("1 of 3 met; worst: 'height >= 90', it is 8-1/4, 81-3/4 off");
        assertThat(row.answer()).isEqualTo(Reply.NO);
        assertThat(row.figure().orElseThrow().amount()).isCloseTo(81.75, within(1e-9));
    }

    @Test
    void a_figure_of_the_whole_is_held_against_its_value() {
        MustResult height = met("height <= 8");
        assertThat(height.met()).isFalse();
        assertThat(height.figure()).hasValue(8.25);
        assertThat(height.missing().orElseThrow()).isEqualTo(0.25, within(1e-12));
        assertThat(met("height <= 8-1/4").met()).isTrue();
        assertThat(met("height < 8-1/4").met()).isFalse();
        assertThat(met("height > 8").spare().orElseThrow()).isEqualTo(0.25, within(1e-12));
    }

    @Test
    void equal_means_within_touching_unless_it_says_how_much() {
        assertThat(met("projection = 1").met()).isTrue();
        assertThat(met("projection = 1.003").met()).isTrue();
        assertThat(met("projection = 1-1/64").met()).isFalse();
        assertThat(met("projection = 1-1/64 within 1/64").met()).isTrue();
    }

    @Test
    void a_reveal_is_asked_for_by_both_its_pieces() {
        MustResult reveal = met("reveal of bead over frieze >= lip");
        assertThat(reveal.met()).isTrue();
        assertThat(reveal.spare().orElseThrow()).isEqualTo(0, within(1e-12));
        assertThat(met("reveal of bead over frieze >= 5/16").missing().orElseThrow())
                .isEqualTo(0.0625, within(1e-12));
    }

    @Test
    void the_longest_name_wins_and_quotes_are_allowed() {
        assertThat(met("bottom of frieze over it = 6-1/4").met()).isTrue();
        assertThat(met("bottom of 'frieze over it' = 6-1/4").met()).isTrue();
        assertThat(met("\"bottom of frieze = 3/4\"").met()).isTrue();
    }

    @Test
    void the_width_that_bears_is_the_sum_of_its_stretches_and_no_stretch_is_none() {
        assertThat(met("bears on of frieze >= 3/4").met()).isTrue();
        assertThat(met("bearing of frieze >= 3/4").met()).isTrue();
        assertThat(met("bearing of bead = 0").met()).isTrue();
    }

    @Test
    void a_piece_that_shows_no_raw_wood_shows_none_of_it() {
        String eyes = "  - seen of frieze from sofa = 0\neyes:\n  - { name: sofa, distance: 90 in, height: 40 in }\n";
        Answer answer = Answer.of(
                DocumentReader.read(
                                "must.yaml",
                                (STACK.replace("UNIT", "in") + eyes).getBytes(StandardCharsets.UTF_8),
                                new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
        MustResult seen = answer.known().orElseThrow().must().get(0);
        assertThat(seen.met()).isTrue();
        assertThat(seen.figure()).hasValue(0);
        // without an eye nothing is known of what is seen
        assertThat(met("seen of frieze = 0").figure()).isEmpty();
    }

    /** Nothing stands out over the frieze: a light from above and before it lies on all of its face. */
    @Test
    void a_face_that_lies_wholly_in_the_light_is_dark_by_none_of_it() {
        String lamp = "  - share of frieze.face in sun <= 50 %\nlights:\n  - { name: sun, altitude: 30, azimuth: 0 }\n";
        Answer answer = Answer.of(
                DocumentReader.read(
                                "must.yaml",
                                (STACK.replace("UNIT", "in").replace("board 1/2 in x 2 in", "board 3/8 in x 2 in")
                                                + lamp)
                                        .getBytes(StandardCharsets.UTF_8),
                                new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
        MustResult lit = answer.known().orElseThrow().must().get(0);
        assertThat(lit.figure()).hasValue(0);
        assertThat(lit.met()).isTrue();
    }

    @Test
    void a_member_is_named_behind_its_piece() {
        assertThat(met("length of frieze.face >= 5-1/2").met()).isTrue();
        assertThat(met("length of bead.top = 1/4").met()).isTrue();
    }

    /** A back lies on the wall, so that no row of the walk tells it; of its dark there is none to see. */
    @Test
    void a_member_that_is_hidden_is_known_all_the_same() {
        assertThat(met("share of bead.back <= 50 %").figure()).hasValue(0);
    }

    @Test
    void a_member_of_another_piece_is_none_of_this_one() {
        String drawn = STACK.replace("UNIT", "in")
                .replace("profile: board 1/2 in x 2 in", "section: [out 1/2 as sill, up 2 as front]");
        Answer answer = Answer.of(
                DocumentReader.read(
                                "must.yaml",
                                (drawn + "  - length of frieze.front >= 1\n").getBytes(StandardCharsets.UTF_8),
                                new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
        assertThat(answer.known()).isEmpty();
        assertThat(answer.notices())
                .filteredOn(notice -> notice.code().equals("unknown-figure"))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.message(notice))
                        .isEqualTo("No member of 'frieze' is called 'front'."));
    }

    /** 8-1/4 high in all: what is missing is told as finely as it takes, and never as nothing. */
    @Test
    void what_is_missing_is_never_told_as_nothing() {
        assertThat(said("height <= 8.249")).isEqualTo("8-1/4, 0.001");
        assertThat(said("height <= 8.2499")).isEqualTo("8-1/4, 0.000100");
        assertThat(said("top of bead >= 0.7500001")).doesNotEndWith(" 0");
        assertThat(said("weight >= 1000")).doesNotEndWith(" 0");
    }

    private static String said(String line) {
        MustResult result = met(line);
        assertThat(result.met()).as(line).isFalse();
        return FigurePrinter.INCHES.print(result.told().orElseThrow()) + ", "
                + FigurePrinter.INCHES.print(result.lacks().orElseThrow());
    }

    /** Of what may not be told as more the missing is rounded up, and the two make the value again. */
    @Test
    void what_a_stack_takes_is_rounded_down_and_what_is_missing_up() {
        MustResult short3 = new MustResult(
                "load factor >= 3",
                new Mark("must.yaml", 1, 1),
                false,
                Quantity.TIMES,
                Rounding.decimals(2).to(Rounding.Side.DOWN),
                OptionalDouble.of(2.98742),
                OptionalDouble.of(3 - 2.98742),
                OptionalDouble.empty());
        assertThat(FigurePrinter.INCHES.print(short3.told().orElseThrow())).isEqualTo("2.98 times");
        assertThat(FigurePrinter.INCHES.print(short3.lacks().orElseThrow())).isEqualTo("0.02 times");
        MustResult hair = new MustResult(
                "share of bed <= 60 %",
                new Mark("must.yaml", 1, 1),
                false,
                Quantity.SHARE,
                Rounding.NEAREST,
                OptionalDouble.of(0.602),
                OptionalDouble.of(0.002),
                OptionalDouble.empty());
        assertThat(FigurePrinter.INCHES.print(hair.told().orElseThrow())).isEqualTo("60.2 %");
        assertThat(FigurePrinter.INCHES.print(hair.lacks().orElseThrow())).isEqualTo("0.2 %");
    }

    @Test
    void a_metric_stack_is_held_against_millimeters() {
        MustResult height =
                ask("mm", "height <= 200").known().orElseThrow().must().get(0);
        assertThat(height.met()).isFalse();
        assertThat(height.missing().orElseThrow()).isEqualTo(8.25 - 200 / 25.4, within(1e-12));
        assertThat(ask("mm", "weight <= 3")
                                .known()
                                .orElseThrow()
                                .must()
                                .get(0)
                                .figure()
                                .orElseThrow()
                        * 1.48816394)
                .isLessThan(3);
    }

    @Test
    void what_is_not_met_is_a_problem_and_says_by_how_much() {
        List<Notice> notices = ask("in", "height <= 8", "projection <= 2").notices();
        assertThat(notices)
                .filteredOn(notice -> notice.code().equals("must-not-met"))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.message(notice))
                        .isEqualTo("'height <= 8' is not met: it is 8-1/4, 1/4 off."));
    }

    @Test
    void a_word_that_is_not_known_is_refused_with_the_nearest() {
        assertThat(refused("hieght <= 8")).containsExactly("No figure is called 'hieght'. | Did you mean height?");
        assertThat(refused("reveal of bed over frieze >= 1/4"))
                .containsExactly("Nothing is called 'bed' behind 'of'. | Did you mean bead?");
        assertThat(refused("length of bead.tip >= 1/4"))
                .containsExactly("No member of 'bead' is called 'tip'. | Did you mean top?");
        assertThat(refused("length of bead.shoulder >= 1/4"))
                .as("members of other pieces are no help")
                .containsExactly("No member of 'bead' is called 'shoulder'. | Known here: back, bottom, face, top.");
    }

    @Test
    void a_line_that_is_no_rule_is_refused_with_how_to_write_one() {
        String how = " | Write 'figure of piece >= size', as 'reveal of bead over frieze >= 1/4 in'.";
        assertThat(refused("height")).containsExactly("'height' holds no figure against a value." + how);
        assertThat(refused("height about 8 <= 9"))
                .containsExactly("'about 8' is not understood behind the figure." + how);
        assertThat(refused("height <= tall"))
                .containsExactly("'tall' is not a value for 'height'. | Give a value in the unit in which the figure is"
                        + " printed.");
        assertThat(refused("height <= 8 within 1/4"))
                .containsExactly(
                        "'height <= 8 within 1/4': 'within' goes with '='. | Take 'within' out, or write '='.");
        assertThat(refused("reveal of bead from bead >= 1")).hasSize(1);
    }
}
