package buildup.cli.watch;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.scene.TextMeasure;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WatchTest {
    private static final ShippedFont FONT = ShippedFont.load();

    private static final Answer LEDGE = ledge("4");
    private static final Answer WIDER = ledge("5");
    private static final Answer BROKEN = Typed.of("title: Ledge\npieces: [ { name: shelf, profile: bord 1 x 4 } ]\n");

    private static Answer ledge(String width) {
        return Typed.of("title: Ledge\npieces:\n  - { name: shelf, profile: board 3/4 x " + width
                + ", lay: flat, back: wall, bottom: 0 }\n");
    }

    @Test
    void at_first_nothing_has_changed() {
        JsonNode shown = shown(new Watch(List.of(LEDGE), FONT));
        assertThat(shown.get("version").intValue()).isEqualTo(1);
        assertThat(shown.get("changed").stringValue()).isEmpty();
        assertThat(stale(shown)).isEmpty();
        assertThat(shown.get("stacks").stringValue()).contains("<article class=\"stack\" id=\"a\"");
    }

    @Test
    void a_save_tells_what_it_changed() {
        Watch watch = new Watch(List.of(LEDGE), FONT);
        watch.take(List.of(WIDER));
        assertThat(shown(watch).get("changed").stringValue()).contains("projection 4 -&gt; 5");
        watch.take(List.of(ledge("5")));
        assertThat(shown(watch).get("changed").stringValue()).contains("No figure changed.");
    }

    @Test
    void a_wrong_save_leaves_the_picture_and_marks_it_with_the_line() {
        Watch watch = new Watch(List.of(LEDGE), FONT);
        String before = shown(watch).get("stacks").stringValue();
        watch.take(List.of(BROKEN));
        JsonNode shown = shown(watch);
        assertThat(shown.get("stacks").stringValue()).isEqualTo(before);
        assertThat(stale(shown)).hasSizeGreaterThan(1);
        assertThat(stale(shown).get(0)).startsWith("Out of date: stdin is wrong as it stands");
        assertThat(stale(shown)).anyMatch(line -> line.startsWith("refusal  stdin:2:") && line.contains("'bord'"));
    }

    /** A measure that fails on one word stands for any fault that a save may lead to while it is drawn. */
    @Test
    void a_save_that_cannot_be_drawn_leaves_the_last_good_picture_and_says_so() {
        TextMeasure faulty = faultyOn("boom");
        Watch watch = new Watch(List.of(LEDGE), faulty);
        String before = shown(watch).get("stacks").stringValue();
        watch.take(List.of(named("boom")));
        assertThat(shown(watch).get("stacks").stringValue()).isEqualTo(before);
        assertThat(stale(shown(watch)))
                .anyMatch(line -> line.contains("Something went wrong inside") && line.contains("the next save"));
        watch.take(List.of(WIDER));
        assertThat(stale(shown(watch))).isEmpty();
        assertThat(shown(watch).get("changed").stringValue()).contains("projection 4 -&gt; 5");
    }

    @Test
    void a_first_reading_that_cannot_be_drawn_says_so_and_the_next_is_drawn() {
        Watch watch = new Watch(List.of(named("boom")), faultyOn("boom"));
        assertThat(shown(watch).get("stacks").stringValue()).contains("Something went wrong inside");
        watch.take(List.of(LEDGE));
        assertThat(shown(watch).get("stacks").stringValue()).contains("<svg");
    }

    @Test
    void of_two_beside_each_other_the_one_that_can_be_drawn_is_not_out_of_date() {
        Watch watch = new Watch(List.of(LEDGE, LEDGE), faultyOn("boom"));
        watch.take(List.of(WIDER, named("boom")));
        assertThat(stale(shown(watch)).stream().filter(line -> line.startsWith("Out of date")))
                .hasSize(1);
        assertThat(shown(watch).get("changed").stringValue()).contains("projection 4 -&gt; 5");
    }

    private static Answer named(String name) {
        return Typed.of("title: Ledge\npieces:\n  - { name: " + name
                + ", profile: board 3/4 x 4, lay: flat, back: wall, bottom: 0 }\n");
    }

    private static TextMeasure faultyOn(String word) {
        return (text, height) -> {
            if (text.contains(word)) {
                throw new IllegalStateException("a fault in drawing");
            }
            return FONT.width(text, height);
        };
    }

    @Test
    void a_repair_takes_the_mark_away_and_is_compared_with_the_last_good_save() {
        Watch watch = new Watch(List.of(LEDGE), FONT);
        watch.take(List.of(BROKEN));
        watch.take(List.of(WIDER));
        assertThat(stale(shown(watch))).isEmpty();
        assertThat(shown(watch).get("changed").stringValue()).contains("projection 4 -&gt; 5");
    }

    @Test
    void what_is_wrong_from_the_start_is_shown_in_place_of_a_picture() {
        Watch watch = new Watch(List.of(BROKEN), FONT);
        assertThat(shown(watch).get("stacks").stringValue()).contains("bord");
        assertThat(stale(shown(watch))).isEmpty();
        watch.take(List.of(LEDGE));
        assertThat(shown(watch).get("stacks").stringValue()).contains("<svg");
    }

    @Test
    void of_two_beside_each_other_the_untouched_one_keeps_its_last_change() {
        Watch watch = new Watch(List.of(LEDGE, LEDGE), FONT);
        watch.take(List.of(WIDER, LEDGE));
        watch.take(List.of(ledge("5"), ledge("6")));
        String changed = shown(watch).get("changed").stringValue();
        assertThat(changed)
                .contains(
                        "projection 4 -&gt; 5",
                        "projection 4 -&gt; 6",
                        "projection 5 -&gt; 6",
                        "Every figure side by side");
        assertThat(shown(watch).get("stacks").stringValue()).contains("id=\"a\"", "id=\"b\"");
    }

    @Test
    void of_two_the_wrong_one_is_named() {
        Watch watch = new Watch(List.of(LEDGE, WIDER), FONT);
        watch.take(List.of(LEDGE, BROKEN));
        assertThat(stale(shown(watch))).hasSizeGreaterThan(1);
        assertThat(shown(watch).get("changed").stringValue()).contains("projection 4 -&gt; 5");
    }

    @Test
    void titles_and_names_are_text_wherever_they_come_up() {
        String hostile = "title: \"</script><img src=x onerror=alert(1)>\"\npieces:\n"
                + "  - { name: \"<u>'&\\\" полка\", profile: board 3/4 x 4, lay: flat, back: wall, bottom: 0 }\n";
        Watch watch = new Watch(List.of(Typed.of(hostile)), FONT);
        watch.take(List.of(Typed.of(hostile.replace("3/4 x 4", "3/4 x 5"))));
        watch.take(List.of(Typed.of(hostile.replace("board", "<i>"))));
        JsonNode shown = shown(watch);
        assertThat(shown.get("stacks").stringValue() + shown.get("changed").stringValue())
                .doesNotContain("<img", "<u>", "</script><");
        assertThat(watch.latest().shown().picture().document(1)).doesNotContain("<img", "<u>", "<i>");
    }

    private static JsonNode shown(Watch watch) {
        LatestPicture.Shown shown = watch.latest().shown();
        return new JsonMapper().readTree(shown.picture().exchange(shown.version()));
    }

    private static List<String> stale(JsonNode shown) {
        return StreamSupport.stream(shown.get("stale").spliterator(), false)
                .map(JsonNode::stringValue)
                .toList();
    }
}
