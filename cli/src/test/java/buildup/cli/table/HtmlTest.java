package buildup.cli.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HtmlTest {
    @Test
    void nothing_that_a_user_writes_is_markup() {
        assertThat(Html.text("<b title=\"a\" id='b'> & </b>"))
                .isEqualTo("&lt;b title=&quot;a&quot; id=&#39;b&#39;&gt; &amp; &lt;/b&gt;");
    }

    @Test
    void nothing_steers_what_comes_after_it() {
        assertThat(Html.text("cap\u202E\u0000\nbase")).isEqualTo("cap  base");
        assertThat(Html.name("\u05e6\u05d9\u05e4\u05d5\u05d9")).isEqualTo("<bdi>\u05e6\u05d9\u05e4\u05d5\u05d9</bdi>");
    }

    @Test
    void letters_of_every_script_stay_what_they_are() {
        assertThat(Html.text("\u98fe\u308a\u7e01 \uD83E\uDEB5")).isEqualTo("\u98fe\u308a\u7e01 \uD83E\uDEB5");
    }

    @Test
    void what_is_the_same_in_both_units_is_said_once() {
        assertThat(Html.both("trim", "trim")).isEqualTo("trim");
        assertThat(Html.both("3/4", "19 mm")).isEqualTo("<span class=\"in\">3/4</span><span class=\"mm\">19 mm</span>");
    }

    @Test
    void a_mixed_number_is_not_parted_at_the_end_of_a_line() {
        assertThat(Html.both("bead 1-13/16+", "bead 46 mm"))
                .contains("<span class=\"in\">bead <span class=\"size\">1-13/16+</span></span>");
    }
}
