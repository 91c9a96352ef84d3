package buildup.cli.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SlugsTest {
    private final Slugs slugs = new Slugs();

    @Test
    void a_plain_name_is_hyphenated() {
        assertThat(slugs.next("Block A")).isEqualTo("block-a");
    }

    @Test
    void names_that_come_out_alike_are_numbered() {
        assertThat(slugs.next("block a")).isEqualTo("block-a");
        assertThat(slugs.next("Block  A!")).isEqualTo("block-a-2");
        assertThat(slugs.next("block a 2")).isEqualTo("block-a-2-2");
        assertThat(slugs.next("BLOCK A")).isEqualTo("block-a-3");
    }

    @Test
    void accents_fall_away_and_other_scripts_become_numbers() {
        assertThat(slugs.next("\u00c9cran")).isEqualTo("ecran");
        assertThat(slugs.next("\u0431\u0430")).isEqualTo("u431u430");
        assertThat(slugs.next("<&>\"'")).isEqualTo("unnamed");
        assertThat(slugs.next("\u0130 stanbul")).matches("[a-z0-9-]+");
    }

    @Test
    void long_names_stay_apart() {
        String name = "a board ".repeat(12);
        String first = slugs.next(name + "left");
        assertThat(first).hasSizeLessThanOrEqualTo(60);
        assertThat(slugs.next(name + "right")).isEqualTo(first + "-2");
    }
}
