package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.Waiting;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a search writes, what it says of its options, and that it seeks what it was asked for. */
class SearchAnswersTest {
    private static final String SHELF = """
            title: Alcove shelf
            units: in
            wood: yellow-poplar
            sizes: { set: 1/4, rise: 4 }
            must: [height <= 9]
            pieces:
              - { name: apron, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }
              - { name: band, profile: cove-bed 3/4 x 3/4, back: apron.face, top: apron.top - set }
              - { name: top, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: apron.top }
            """;

    private static final String PRICED = """
            plan:
              - { name: alcove, left: die, right: die, stretches: [{ name: back, length: 70 }] }
            stock:
              sticks:
                - { of: 1x4, buy: [6', 10'], price: 1.10, per: foot }
                - { of: 1x6, buy: [6', 10'], price: 1.90, per: foot }
                - { of: cove-bed 3/4 x 3/4, buy: [6', 10'], price: 0.95, per: foot }
                - { of: cove-bed 1 x 1, buy: [6', 10'], price: 1.60, per: foot }
                - { of: ovolo-bed 3/4 x 7/8, buy: [6', 10'], price: 0.65, per: foot }
            """;

    private static final String BANDS = "pieces.band.profile=one of [cove-bed 3/4 x 3/4, cove-bed 1 x 1,"
            + " ovolo-bed 3/4 x 7/8], now cove-bed 3/4 x 3/4";

    private static final String SET = "sizes.set=between 0 and 1 by 1/16, now 1/4";

    @TempDir
    private Path folder;

    private Ran search(String yaml, String... options) {
        try {
            List<String> words = new ArrayList<>(List.of("search"));
            words.add(Files.writeString(folder.resolve("shelf.yaml"), yaml).toString());
            words.addAll(List.of(options));
            return Ran.of(words.toArray(String[]::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double number(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @Test
    void the_pictures_of_the_page_show_their_sizes_in_the_unit_of_the_stack_alone() throws IOException {
        Path answers = folder.resolve("answers");
        search(SHELF, "--free", SET, "--wish", "least weight", "-o", answers.toString());
        assertThat(Files.readString(answers.resolve("index.html"))).contains("<html lang=\"en\" data-unit=\"in\">");

        String metric = SHELF.replace("units: in", "units: mm")
                .replace("set: 1/4, rise: 4", "set: 6, rise: 100")
                .replace("height <= 9", "height <= 230")
                .replaceAll("board 3/4 x ([0-9])-1/2", "board 19 x $190")
                .replace("cove-bed 3/4 x 3/4", "cove-bed 19 x 19");
        search(
                metric,
                "--free",
                "sizes.set=between 0 and 20 by 2, now 6",
                "--wish",
                "least weight",
                "-o",
                answers.toString());
        assertThat(Files.readString(answers.resolve("index.html"))).contains("<html lang=\"en\" data-unit=\"mm\">");
    }

    @Test
    void the_page_says_under_each_stack_what_its_verdict_says_no_to() throws IOException {
        Path answers = folder.resolve("answers");
        search(
                SHELF.replace("height <= 9", "height <= 3"),
                "--free",
                SET,
                "--wish",
                "least weight",
                "-o",
                answers.toString());
        String page = Files.readString(answers.resolve("index.html"));
        assertThat(page)
                .containsPattern("today<br>The verdict says no to: [a-z, ]*must")
                .doesNotContain(">No problems<");
    }

    @Test
    void an_answer_finds_the_lists_that_its_document_names() throws IOException {
        Files.createDirectories(folder.resolve("lists"));
        Files.writeString(folder.resolve("lists/shop.yaml"), """
                profiles:
                  - name: shop-cove
                    kind: bed
                    about: of the shop
                    sizes: [projection, height]
                    usual: [3/4 x 3/4]
                    words: [out 1/4, cove 1/2, up 1/4]
                """);
        String own = SHELF.replace("units: in", "units: in\ncatalog: lists/shop.yaml")
                .replace("cove-bed 3/4 x 3/4", "shop-cove 3/4 x 3/4");
        Path answers = folder.resolve("answers");
        for (int again = 0; again < 2; again++) {
            Ran ran = search(own, "--free", SET, "--wish", "least weight", "-o", answers.toString());
            assertThat(ran.code()).as(ran.err()).isLessThan(2);
            Ran check = Ran.of("check", answers.resolve("best-1.yaml").toString());
            assertThat(check.code()).as(check.err()).isLessThan(2);
        }
        // beside the document itself they are there already
        Ran beside = search(own, "--free", SET, "--wish", "least weight", "-o", folder.toString());
        assertThat(beside.code()).as(beside.err()).isLessThan(2);

        Files.writeString(answers.resolve("lists/shop.yaml"), "profiles: []\n");
        Ran other = search(own, "--free", SET, "--wish", "least weight", "-o", answers.toString());
        assertThat(other.err()).contains("shop.yaml is there already.");
        assertThat(answers.resolve("lists/shop.yaml")).hasContent("profiles: []");
    }

    @Test
    void the_cheapest_is_the_one_whose_cuts_cost_least() throws IOException {
        Path answers = folder.resolve("answers");
        Ran ran = search(
                SHELF + PRICED, "--free", BANDS, "--wish", "least cost", "-o", answers.toString(), "--format", "json");
        assertThat(ran.code()).as(ran.err()).isLessThan(2);
        double before = 0;
        for (int i = 1; i <= 3; i++) {
            Ran cuts = Ran.of("cuts", answers.resolve("best-" + i + ".yaml").toString(), "--format", "json");
            double total = number(
                    "\"total\": ([0-9.]+)", cuts.out().substring(cuts.out().indexOf("\"cost\": {")));
            assertThat(ran.out()).contains("\"cost\": " + (total % 1 == 0 ? (int) total : "" + total));
            assertThat(total).isGreaterThan(before);
            before = total;
        }
        assertThat(Files.readString(answers.resolve("best-1.yaml"))).contains("ovolo-bed 3/4 x 7/8");
    }

    @Test
    void a_line_may_hold_the_cost_too() {
        Ran held = search(SHELF.replace("height <= 9", "cost <= 30") + PRICED, "--free", BANDS);
        // 6 ft of 1x4 and 1x6, and of the band: 6.60 + 11.40 and 5.70, 9.60 or 3.90
        assertThat(held.out()).contains("cost <= 30  23.70", "Today's stack is the best answer.");
        assertThat(Ran.report(SHELF.replace("height <= 9", "cost <= 20") + PRICED)
                        .out())
                .contains("'cost <= 20', it is 23.70, 3.70 off");
    }

    @Test
    void a_wish_for_a_figure_that_nobody_asks_for_is_refused_with_the_key_that_asks() {
        for (List<String> one : List.of(
                List.of("least cost", "plan"),
                List.of("least movement of top", "seasons"),
                List.of("least chance", "tolerance"),
                List.of("least packs", "supplies"))) {
            Ran ran = search(SHELF, "--free", SET, "--wish", one.get(0));
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err())
                    .contains("'" + one.get(0) + "': the stack has no such figure", "Add '" + one.get(1) + "'");
        }
        String planned = SHELF + PRICED.substring(0, PRICED.indexOf("stock:"));
        assertThat(search(planned, "--free", SET, "--wish", "least cost").err()).contains("Add 'stock'");
        assertThat(search(
                                SHELF + PRICED.replaceAll(", price: [0-9.]+, per: foot", ""),
                                "--free",
                                SET,
                                "--wish",
                                "least cost")
                        .err())
                .contains("since not all of it has a price or a stick");
    }

    @Test
    void a_cure_shows_its_braces() {
        assertThat(search(SHELF, "--free", SET, "--wish", "shares like Ionic").err())
                .contains("'parts: { frieze: [frieze], cornice: [bed, crown, cap] }'");
    }

    @Test
    void what_an_option_gives_is_told_by_the_option_and_lines_are_those_of_the_file() {
        Ran ran =
                search(SHELF.replace("lay: flat", "lay: flatly"), "--free", SET, "--must", "depht <= 9", "--wish", "x");
        assertThat(ran.err()).contains("shelf.yaml:9:");
        ran = search(SHELF, "--free", SET, "--must", "depht <= 9", "--wish", "x");
        assertThat(ran.err()).contains("refusal  --must  No figure", "refusal  --wish  'x' is not a wish.");
        assertThat(search(SHELF, "--free", "sizes.set=between 1 and 0 by 1/8").err())
                .contains("refusal  --free  'between 1 and 0 by 1/8' leaves nothing to choose.");
        assertThat(search(SHELF, "--free", SET, "--why", "depht <= 9").err()).contains("refusal  --why  No figure");
    }

    @Test
    void a_size_that_the_stack_does_not_have_is_no_free_size() {
        Ran ran = search(SHELF, "--free", SET.replace("set", "sett"), "--wish", "least weight");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("No size of the stack is called 'sett'", "Did you mean set?")
                .doesNotContain("No size of the stack is free");
    }

    @Test
    void no_more_stacks_are_tried_than_may_be() {
        for (String tries : List.of("1", "7", "30")) {
            Ran ran = search(
                    SHELF,
                    "--free",
                    SET,
                    "--free",
                    "sizes.rise=between 1 and 4 by 1/16, now 4",
                    "--must",
                    "bottom of band >= 2-7/8",
                    "--wish",
                    "height near 4",
                    "--tries",
                    tries,
                    "--format",
                    "json");
            assertThat(number("\"judged\": ([0-9]+)", ran.out())).isLessThanOrEqualTo(Integer.parseInt(tries));
        }
        for (String none : List.of("0", "-3")) {
            assertThat(search(SHELF, "--free", SET, "--tries", none, "--answers", none)
                            .err())
                    .contains("refusal  --tries  A search cannot have --tries " + none)
                    .contains("refusal  --answers  A search cannot have --answers " + none);
        }
    }

    @Test
    void a_stack_that_is_refused_today_is_not_searched() {
        Ran ran = search(SHELF, "--free", "sizes.set=one of [deep, 1/4], now deep", "--wish", "least weight");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("No length is called 'deep'.", "A search sets out from the stack as it is now")
                .doesNotContain("fault");
    }

    @Test
    void a_size_may_be_given_by_one_that_stands_behind_it() {
        String later = SHELF.replace("set: 1/4, rise: 4", "set: half, half: 1/2 of rise, rise: 1");
        assertThat(Ran.report(later).code()).isLessThan(2);
        Ran round = Ran.report(SHELF.replace("set: 1/4, rise: 4", "set: rise, rise: set"));
        assertThat(round.code()).isEqualTo(2);
        assertThat(round.err()).contains("The length of 'set' is given by itself");
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_told_once_and_before_searching() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        Ran ran = search(SHELF, "--free", SET, "--wish", "least weight", "-o", file.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).containsOnlyOnce("refusal").contains("is a file, and the answers need a folder.");
        assertThat(file).hasContent("mine");
    }

    @Test
    void what_is_wished_for_is_shown_of_each_answer() {
        String[] words = {"--free", SET, "--wish", "least weight", "--wish", "projection near 6 x 2"};
        Ran text = search(SHELF, words);
        assertThat(text.out())
                .containsPattern("least +1\\.45 lb a +1\\.45 lb a")
                .containsPattern("projection +5-1/2 +5-1/2");
        String[] asked = Arrays.copyOf(words, words.length + 2);
        asked[words.length] = "--format";
        asked[words.length + 1] = "json";
        assertThat(search(SHELF, asked).out())
                .containsPattern("\"wish\": \"least weight\",\\s+\"figure\": 1\\.4")
                .containsPattern("\"wish\": \"projection near 6 x 2\",\\s+\"figure\": 5\\.5");
    }

    @Test
    void a_size_between_two_choices_is_told_as_it_is_typed() {
        // the top lies at 'rise' and is 3/4 thick: 4.55 gives 5.3
        String risen = SHELF.replace("bottom: apron.top }", "bottom: rise }");
        String rise = "sizes.rise=between 3 and 6 by 1/4, now 4";
        assertThat(search(risen.replace("height <= 9", "height = 5.3 in within 1/64"), "--free", rise)
                        .err())
                .contains("'sizes.rise' at 4-9/16. Type '4-9/16' there", "or allow more behind 'within'.");
        Ran finer = search(risen.replace("height <= 9", "height = 5.3 in within 0.006"), "--free", rise);
        assertThat(finer.err()).contains("'sizes.rise' at 4.55 in.");
        String typed =
                risen.replace("height <= 9", "height = 5.3 in within 0.006").replace("rise: 4", "rise: 4.55 in");
        assertThat(Ran.report(typed).out()).contains("yes   must");
        assertThat(search(risen.replace("height <= 9", "height = 5.3 in"), "--free", rise)
                        .err())
                .contains("or write 'within' behind the line");
    }

    @Test
    void brackets_without_a_choice_are_cured_by_a_choice() {
        assertThat(search(SHELF, "--free", "sizes.set=one of []", "--wish", "least weight")
                        .err())
                .contains("Write the choices between the brackets");
    }

    @Test
    void whoever_interrupts_before_anything_was_tried_is_answered_all_the_same() {
        Waiting waiting = Waiting.unseen();
        assertThat(waiting.interrupt()).isFalse();
        waiting.searchBegins();
        assertThat(waiting.interrupt()).isTrue();
        assertThat(waiting.interrupted()).isTrue();
    }
}
