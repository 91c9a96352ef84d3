package buildup.cli.drawing.job;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.TitleCell;
import buildup.cli.drawing.paper.TitleStrip;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Segment;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What changed since an earlier document, on the section. */
class SinceTest {
    private static final String HEAD = """
            title: Head of the window seat
            wood: red-oak
            pieces:
              - { name: apron, profile: board 3/4 x APRON, back: wall, bottom: 0, fixed: wall }
              - { name: bead, profile: board 1/2 x 3/4, back: apron.face, top: apron.top, fixed: apron }
              - { name: shelf, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: apron.top, fixed: apron }
            """;

    private static Section section(String apron) {
        return Typed.of(HEAD.replace("APRON", apron)).known().orElseThrow().section();
    }

    /** The texts of the section, and what marks the changes. */
    private record Marked(List<Box> texts, List<SceneItem> leaves) {
        List<Path> lines(boolean closed) {
            return leaves.stream()
                    .filter(Path.class::isInstance)
                    .map(Path.class::cast)
                    .filter(path -> path.style() == LineStyle.CLOUD && path.closed() == closed)
                    .toList();
        }
    }

    private static Marked marked(Section before, Section now) {
        Since since = new Since("old", Optional.of(before), List.of("as listed"), "B");
        List<Box> texts = new ArrayList<>();
        List<SceneItem> marks = new ArrayList<>();
        PageFrame frame = new PageFrame(
                Pages.named("letter").orElseThrow(),
                new TitleStrip(List.of(List.of(new TitleCell("stack", "A stack", 2)))),
                Drawn.FONT,
                false);
        SectionDrawing.pages(
                now,
                frame,
                places -> {
                    texts.addAll(places);
                    marks.addAll(since.marks(now, places, Drawn.FONT));
                    return List.copyOf(marks);
                },
                new Notices());
        return new Marked(
                texts,
                marks.stream()
                        .flatMap(item -> item.held().orElseThrow().stream())
                        .toList());
    }

    @Test
    void no_figure_of_the_section_is_struck_out_by_a_cloud_or_hidden_by_a_letter() {
        Marked marked = marked(section("3-1/2"), section("4-1/4"));
        assertThat(marked.texts()).hasSizeGreaterThan(8);
        List<Segment> lines = new ArrayList<>();
        marked.lines(false).forEach(path -> lines.addAll(path.segments()));
        marked.lines(true).forEach(path -> lines.addAll(path.segments()));
        assertThat(lines)
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> assertThat(marked.texts()).noneMatch(text -> Boxes.overlap(text, line.box())));
    }

    @Test
    void what_only_moved_bears_the_letter_and_what_is_of_another_size_a_cloud_too() {
        // the apron is higher; bead and shelf go up with it
        Marked marked = marked(section("3-1/2"), section("4-1/4"));
        assertThat(marked.lines(false)).hasSize(1);
        assertThat(marked.lines(true)).as("a triangle a piece").hasSize(3);
        assertThat(marked.leaves().stream().filter(Label.class::isInstance)).hasSize(3);
        Box cloud = marked.lines(false).get(0).box();
        assertThat(cloud.height()).isBetween(4.25, 4.25 + 1);
        assertThat(marked(section("3-1/2"), section("3-1/2")).leaves()).isEmpty();
    }
}
