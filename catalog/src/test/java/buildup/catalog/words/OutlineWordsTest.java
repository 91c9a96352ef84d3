package buildup.catalog.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.profiles.Profile;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OutlineWordsTest {
    private static final LengthReader INCHES = new LengthReader(LengthUnit.INCH, Map.of());

    private static Stream<Profile> profiles() {
        Catalog catalog = Catalog.builtIn();
        return catalog.families().stream()
                .flatMap(family -> family.usual().stream()
                        .map(sizes -> family.name() + " "
                                + sizes.stream()
                                        .map(size -> LengthPrinter.fraction(size, 16))
                                        .collect(Collectors.joining(" x "))))
                .map(call -> catalog.profile(
                                new Scalar(call, new Mark("test", 1, 1)), Catalog.USUAL_BOARDS, INCHES, new Notices())
                        .orElseThrow());
    }

    private static Node list(String words, Notices notices) {
        byte[] document = ("words: " + words).getBytes(StandardCharsets.UTF_8);
        return DocumentReader.read("words.yaml", document, notices)
                .map(read -> ((Mapping) read.root()).entries().get(0).value())
                .orElseThrow(() -> new AssertionError(words + " " + notices.sorted()));
    }

    private static Outline read(String words) {
        return read(words, LengthUnit.INCH);
    }

    private static Outline read(String words, LengthUnit unit) {
        Notices notices = new Notices();
        Node list = list(words, notices);
        Outline outline = WalkReader.read(list, new LengthReader(unit, Map.of()), "test", notices)
                .orElseThrow(() -> new AssertionError(words + " " + notices.sorted()));
        assertThat(notices.sorted()).as(words).isEmpty();
        return outline;
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void words_of_every_profile_read_back_to_its_outline(Profile profile) {
        Outline outline = profile.outline();
        String words = OutlineWords.of(outline).yaml();
        Outline again = read(words);
        assertThat(again.area()).as(words).isEqualTo(outline.area(), within(1e-5));
        for (Stroke stroke : outline.strokes()) {
            for (int k = 0; k <= 8; k++) {
                Point p = stroke.segment().at(k / 8.0);
                assertThat(again.distance(p)).as(words + " " + p).isLessThan(1e-6);
            }
        }
        assertThat(radii(again)).as(words).containsAll(radii(outline));
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void words_in_millimeters_read_back_too(Profile profile) {
        String words = OutlineWords.of(profile.outline(), LengthUnit.MILLIMETER).yaml();
        Outline again = read(words, LengthUnit.MILLIMETER);
        assertThat(again.area()).as(words).isEqualTo(profile.outline().area(), within(1e-5));
        assertThat(words).doesNotContain("/");
    }

    /** Radii to five places, the bend with its sign. */
    private static List<Long> radii(Outline outline) {
        return outline.segments().stream()
                .filter(Arc.class::isInstance)
                .map(Arc.class::cast)
                .map(arc -> Math.round(arc.radius() * 1e4) * (arc.counterclockwise() ? 1 : -1))
                .distinct()
                .toList();
    }

    @Test
    void the_trade_s_words_are_taken_where_they_draw_it() {
        assertThat(said("[out 1/4, cove 1, up 3/8]")).isEqualTo("[out 1/4, cove 1, up 3/8]");
        assertThat(said("[out 1/4 as bottom, up 1/8, cyma recta 1/2 x 3/4, up 1/4 as fillet]"))
                .isEqualTo("[out 1/4 as bottom, up 1/8, cyma recta 1/2 x 3/4, up 1/4 as fillet]");
        assertThat(said("[out 3/4, up 2, back: [down 1/2, relief 1 x 1/16]]"))
                .isEqualTo(
                        "[out 3/4, up 2, back: [down 1/2, out 1/16 as relief, down 1 as relief, in 1/16 as relief]]");
        assertThat(said("[out 1/2, up 1/4, hollow 1/2 x 1/4 x 3/4, up 1/8]"))
                .isEqualTo("[out 1/2, up 1/4, hollow 1/2 x 1/4 x 3/4, up 1/8]");
        assertThat(said("[out 1/2, up 1/4, round in 1/2 x 1/4 x 3/4]"))
                .isEqualTo("[out 1/2, up 1/4, round in 1/2 x 1/4 x 3/4]");
    }

    private static String said(String words) {
        return OutlineWords.of(read(words)).yaml();
    }

    @Test
    void an_arc_says_what_it_cannot_be() {
        Notices notices = new Notices();
        Node list = list("[out 1, round 1 x 0 x 1/4, hollow 0 x 0 x 1]", notices);
        assertThat(WalkReader.read(list, INCHES, "test", notices)).isEmpty();
        assertThat(notices.sorted())
                .extracting(notice -> NoticeWords.INCHES.message(notice) + " " + NoticeWords.INCHES.cure(notice))
                .containsExactly(
                        "Word 2 (round) has a radius of 1/4 and spans 1. Give it a radius of at least half its span.",
                        "Word 3 (hollow) ends where it begins. Give it a height or a width.");
    }
}
