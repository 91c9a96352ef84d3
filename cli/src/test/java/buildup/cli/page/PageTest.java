package buildup.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.engine.section.compose.Step;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class PageTest {
    private static final Answer CORNICE = Typed.of(Ran.read(Ran.demo("reading-room-cornice.yaml")));
    private static final String PAGE = Page.of(CORNICE);

    private static final String LINE = """
            title: A line "too" <many>
            pieces:
              - { name: frieze, profile: board 3/4 x 3-1/2, back: 0, bottom: nowhere.top }
            """;

    @Test
    void all_of_it_is_in_the_one_file() {
        // the name of a vocabulary, which no browser asks for
        String page = PAGE.replace("http://www.w3.org/2000/svg", "");
        assertThat(List.of("http:", "https:", "src=", "@import", "url(\"", "<link", "<base", "<iframe", "//www"))
                .noneMatch(page::contains);
        assertThat(page).doesNotContainPattern("href=\"[^#]");
    }

    @Test
    void nothing_runs_and_nothing_styles_but_what_stands_in_the_file() throws Exception {
        String policy = first("Content-Security-Policy\" content=\"([^\"]*)\"", PAGE);
        assertThat(policy)
                .startsWith("default-src 'none'; ")
                .contains("style-src '" + hash(first("<style>(.*?)</style>", PAGE)) + "'")
                .contains("script-src '" + hash(first("<script>(.*?)</script>", PAGE)) + "'")
                .contains("base-uri 'none'; form-action 'none'")
                .doesNotContain("unsafe", "connect-src", "*");
        assertThat(PAGE).doesNotContain(" style=").doesNotContainPattern(" on[a-z]+=\"");
    }

    @Test
    void a_page_that_follows_its_file_may_ask_where_it_came_from_and_nowhere_else() throws Exception {
        String page = Page.of(parts(), Page.Above.NOTHING, Optional.of("\nfollow();\n"));
        assertThat(first("Content-Security-Policy\" content=\"([^\"]*)\"", page))
                .contains("'" + hash("\nfollow();\n") + "'; connect-src 'self';");
        assertThat(page).contains("<script>\nfollow();\n</script>");
    }

    @Test
    void what_is_the_matter_comes_before_every_figure() {
        assertThat(PAGE.indexOf("a-warnings"))
                .isPositive()
                .isLessThan(PAGE.indexOf("a-figures"))
                .isLessThan(PAGE.indexOf("<svg"));
    }

    @Test
    void every_table_of_the_text_report_is_on_it() {
        assertThat(Ran.of("report", Ran.demo("reading-room-cornice.yaml").toString())
                        .out()
                        .lines()
                        .filter(line -> line.matches("[A-Z]{3,}['A-Z ]*\\b.*") && !line.startsWith("WILL IT")))
                .hasSizeGreaterThan(8)
                .allSatisfy(title -> assertThat(PAGE)
                        .contains(title.replaceFirst("[;:,].*", "")
                                .replaceFirst(" (in the order|along the).*", "")
                                .replace("'", "&#39;")));
    }

    @Test
    void a_stack_without_figures_shows_what_is_wrong_and_where() {
        String page = Page.of(Typed.of(LINE));
        assertThat(page)
                .contains("Refused: no figures", "nowhere", ":3:")
                .contains("A line &quot;too&quot; &lt;many&gt;")
                .doesNotContain("<svg", "class=\"data\"");
    }

    @Test
    void a_picture_out_of_date_is_marked_in_words() {
        Page.Above above = new Page.Above("<p>height</p>", List.of("stack.yaml:3:1 <wrong>"));
        assertThat(Page.of(parts(), above, Optional.empty()))
                .contains("<div id=\"stale\" role=\"alert\"><p>stack.yaml:3:1 &lt;wrong&gt;</p></div>")
                .contains("What changed</h2><div class=\"what\"><p>height</p></div>");
        assertThat(PAGE).contains("<div id=\"stale\" role=\"alert\" hidden>");
    }

    @Test
    void two_stacks_stand_beside_each_other_without_sharing_an_id() {
        ShippedFont font = ShippedFont.load();
        String page = Page.of(
                List.of(PageParts.of(CORNICE, "a", font), PageParts.of(CORNICE, "b", font)),
                Page.Above.NOTHING,
                Optional.empty());
        List<String> ids = Pattern.compile(" id=\"([^\"]*)\"")
                .matcher(page.substring(0, page.indexOf("<script>")))
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(100);
        assertThat(page).contains("class=\"beside\"");
    }

    @Test
    void millimeters_come_first_where_the_stack_counts_in_them() {
        Answer metric =
                Typed.of("units: mm\npieces:\n  - { name: frieze, profile: board 19 x 89, back: wall, bottom: 0 }\n");
        assertThat(Page.of(metric)).contains("<html lang=\"en\" data-unit=\"mm\">");
        assertThat(PAGE).contains("<html lang=\"en\" data-unit=\"in\">");
    }

    /** Each stage is composed and lit anew: one for every piece of 500 would take half a minute. */
    @Test
    void a_stack_of_many_pieces_is_built_a_few_pieces_at_a_time() {
        assertThat(stages(9)).isEqualTo(List.of(0, 1, 2, 3, 4, 5, 6, 7, 8));
        List<Integer> many = stages(120);
        assertThat(many).hasSize(40).endsWith(116, 119);
    }

    private static List<Integer> stages(int pieces) {
        StringBuilder yaml = new StringBuilder("wood: yellow-poplar\nspace: { wall: { solid: yes } }\npieces:\n");
        for (int i = 0; i < pieces; i++) {
            yaml.append("  - { name: p" + i + ", profile: board 3/4 x 1, back: wall, bottom: " + i + " }\n");
        }
        return StackData.stages(Typed.of(yaml.toString()).known().orElseThrow().section()).stream()
                .map(Step::body)
                .toList();
    }

    @Test
    void the_same_stack_gives_the_same_bytes() {
        assertThat(Page.of(CORNICE)).isEqualTo(PAGE);
    }

    private static List<PageParts> parts() {
        return List.of(PageParts.of(CORNICE, "a", ShippedFont.load()));
    }

    private static String first(String pattern, String text) {
        MatchResult found = Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(text)
                .results()
                .findFirst()
                .orElseThrow();
        return found.group(1);
    }

    private static String hash(String text) throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
        return "sha256-" + Base64.getEncoder().encodeToString(digest);
    }

    @Test
    void what_is_free_and_has_no_slider_is_named() {
        String stack = """
                title: Shelf
                wood: yellow-poplar
                sizes: { out: OUT }
                space: { wall: { solid: no } }
                pieces:
                  - { name: board, profile: PROFILE, back: wall, bottom: 0 }
                  - { name: shelf, section: [out out, up 3/4], back: wall, bottom: board.top }
                """;
        String one = "board 3/4 x 8";
        String either = "'one of [board 3/4 x 8, board 3/4 x 9]'";
        String range = "'between 1 and 3 by 1'";
        String none = Page.of(Typed.of(stack.replace("OUT", "2").replace("PROFILE", one)));
        String both = Page.of(Typed.of(stack.replace("OUT", range).replace("PROFILE", either)));
        String alone = Page.of(Typed.of(stack.replace("OUT", "2").replace("PROFILE", either)));
        String named = "Free too, without a slider: pieces.board.profile.";
        assertThat(both).contains(named).contains("<input type=\"range\"");
        assertThat(alone).contains(named).doesNotContain("<input type=\"range\" id=\"a-curve");
        assertThat(none).doesNotContain("without a slider").doesNotContain("Free sizes</h2>");
    }
}
