package buildup.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.drawing.hold.HoldsDrawing;
import buildup.cli.drawing.look.RaysDrawing;
import buildup.cli.drawing.look.SightDrawing;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.engine.Answers;
import buildup.engine.section.compose.Section;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Long words beside a picture that takes several pages anyway would make more pages of it, with nothing else on them. */
class NumberedPartsTest {
    private static final PageFrame LETTER = new PageFrame(
            Pages.named("letter").orElseThrow(),
            new TitleStrip(List.of(List.of(new TitleCell("stack", "A stack", 2)))),
            Drawn.FONT,
            false);

    private static final String LONG = "molding that was copied from the old library";

    private record Drawings(Scene whole, Supplier<Scene> inParts) {
        List<PaperPage> pages() {
            return Paper.fullSize(LETTER, "A view", whole, inParts);
        }
    }

    private static Answers stack(double frieze, String name) {
        return Typed.of("""
                        title: Long names
                        wood: red-oak
                        eyes: [{ name: low, distance: 72, height: -40 }]
                        lights: [{ name: lamp, at: { distance: 60, height: 40 } }]
                        pieces:
                          - { name: frieze, profile: board 3/4 x %s, back: wall, bottom: 0 }
                          - { name: bed %s, profile: cove-bed 1-1/4 x 1-3/8, back: frieze.face,
                              top: frieze.top }
                          - { name: crown %s, profile: plain-crown 3-1/4, back: frieze.face,
                              bottom: frieze.top }
                        """.formatted(frieze, name, name)).known().orElseThrow();
    }

    private static Stream<Named<Drawings>> drawings(double frieze, String name) {
        Answers known = stack(frieze, name);
        Section section = known.section();
        return Stream.of(
                Named.of(
                        "rays",
                        new Drawings(
                                RaysDrawing.forScale(section, known.lights().get(0), 1, Drawn.FONT),
                                () -> RaysDrawing.inParts(
                                        section, known.lights().get(0), Drawn.FONT))),
                Named.of(
                        "sight",
                        new Drawings(
                                SightDrawing.forScale(section, known.sights().get(0), 1, Drawn.FONT),
                                () -> SightDrawing.inParts(
                                        section, known.sights().get(0), Drawn.FONT))),
                Named.of(
                        "holds",
                        new Drawings(
                                HoldsDrawing.forScale(
                                        section, known.support(), known.fixed(), known.proposals(), 1, Drawn.FONT),
                                () -> HoldsDrawing.inParts(
                                        section, known.support(), known.fixed(), known.proposals(), Drawn.FONT))));
    }

    static Stream<Named<Drawings>> tall() {
        return drawings(14, LONG);
    }

    static Stream<Named<Drawings>> low() {
        return drawings(1.75, "of ash");
    }

    @ParameterizedTest
    @MethodSource("tall")
    void a_picture_in_parts_is_as_wide_as_what_it_shows_and_its_words_are_read_before_it(Drawings drawings) {
        List<PaperPage> pages = drawings.pages();
        List<PaperPage> parts =
                pages.stream().filter(page -> page.part().isPresent()).toList();
        assertThat(parts).hasSizeGreaterThan(1);
        assertThat(parts).allSatisfy(page -> assertThat(texts(page)).noneMatch(text -> text.contains(LONG)));
        List<String> before = texts(pages.get(0));
        assertThat(before).anyMatch(text -> text.contains(LONG));
        List<String> numbers = parts.stream()
                .flatMap(page -> texts(page).stream())
                .filter(text -> text.matches("(ray |line )?\\d+"))
                .distinct()
                .toList();
        assertThat(numbers).isNotEmpty();
        assertThat(before).containsAll(numbers);
    }

    @ParameterizedTest
    @MethodSource("low")
    void on_one_page_each_line_and_mark_has_its_words_beside_it(Drawings drawings) {
        List<PaperPage> pages = drawings.pages();
        assertThat(pages).allSatisfy(page -> assertThat(page.part()).isEmpty());
        assertThat(texts(pages.get(pages.size() - 1)))
                .anyMatch(text -> text.contains("of ash"))
                .noneMatch(text -> text.matches("(ray|line) \\d+"));
    }

    private static List<String> texts(PaperPage page) {
        return Scene.leaves(page.content()).stream()
                .flatMap(item -> item instanceof Clip clip ? Scene.leaves(clip.items()).stream() : Stream.of(item))
                .filter(Label.class::isInstance)
                .map((SceneItem item) -> ((Label) item).text())
                .toList();
    }
}
