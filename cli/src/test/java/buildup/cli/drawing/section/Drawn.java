package buildup.cli.drawing.section;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.scene.Scene;
import buildup.cli.write.ShippedFont;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A stack document taken to a section and its drawing. */
public record Drawn(Section section, Optional<Scene> drawing, List<Notice> notices) {
    public static final ShippedFont FONT = ShippedFont.load();

    private static final Catalog CATALOG = Catalog.builtIn();

    /** The reading-room cornice: framing behind, blocking, a sprung crown, a void, a ceiling near. */
    public static final String CORNICE = """
            title: Reading-room bookcase cornice
            wood: yellow-poplar
            space: { floor: -84, ceiling: 12, projection: 8, wall: { solid: no } }
            pieces:
              - { name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 6-1/4 }
              - { name: bead, section: [out 1, up 3/4], back: wall, bottom: datum }
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 3/4 }
              - { name: bed, section: [out 1/4, cove 1, up 3/8], back: frieze.face, top: frieze.top }
              - { name: soffit, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top }
              - { name: fascia, profile: board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - 1/4 }
              - { name: block A, kind: nailer, section: [out 1-1/4, up 1], face: fascia.back, bottom: soffit.top }
              - { name: block B, kind: nailer, section: [out 1-1/2, up 2], face: 4-1/4, bottom: 8, top: crown.top }
              - { name: wedge, kind: nailer, section: [chamfer 1.4443 x 1.1284], back: fascia.face, top: crown.top }
              - { name: crown, profile: plain-crown 3-1/4, back: fascia.face, bottom: fascia.top - 1/2 }
              - { name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: 0, face: crown.face + 3/8, bottom: crown.top }
            """;

    /** A base against plaster, between a floor and something overhead. */
    public static final String BASE = """
            title: Wainscot base
            wood: red-oak
            space: { floor: 0, ceiling: 7, wall: { covering: 1/2 } }
            pieces:
              - { name: plinth, profile: board 3/4 x 5-1/2, back: wall, bottom: floor }
              - { name: shoe, profile: base-shoe 1/2 x 3/4, back: plinth.face, bottom: floor }
              - { name: cap, section: [out 5/8, up 1/4, cyma reversa 3/4 x 3/8 in], back: wall, bottom: plinth.top }
            """;

    public static final String ONE = """
            title: One piece
            wood: yellow-poplar
            pieces:
              - { name: bead, section: [out 1/4, bead up 1/2], back: wall, bottom: datum }
            """;

    public static final String NAMES = """
            title: "\u041a\u0430\u0440\u043d\u0438\u0437 over the reading table, a title that will not end on one line"
            wood: yellow-poplar
            space: { wall: { solid: no } }
            pieces:
              - { name: "the lowest of the boards put up here", profile: board 3/4 x 3-1/2, back: 0, top: 3-1/2 }
              - { name: "\u043a\u0430\u0440\u043d\u0438\u0437", section: [out 2-1/2, up 3/4], back: 0, top: 4-1/4 }
              - { name: "\u98fe\u308a\u7e01", profile: board 1/4 x 2, back: 2-1/2, top: 4-1/4 }
              - { name: "\u05e6\u05d9\u05e4\u05d5\u05d9", profile: board 1/4 x 4, lay: flat, back: 0, bottom: 4-1/4 }
              - { name: "\u00c9cran <&> 1", section: [out 3/4, ovolo 3/4], back: 3/4, bottom: 0 }
              - { name: "ecran 1", section: [out 1/2, up 1/2], back: 3/4, bottom: 2 }
            """;

    public static Drawn of(String yaml) {
        return of(yaml, Optional.empty());
    }

    public static Drawn of(String yaml, Optional<String> page) {
        Notices notices = new Notices();
        Document document = DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Stack stack = StackReader.read(document, CATALOG, new Claims(), notices);
        List<Placed> placed = StackPlacing.place(stack, notices);
        assertThat(notices.refused()).as(notices.sorted().toString()).isFalse();
        Section section = Composer.compose(stack, placed, notices);
        Notices own = new Notices();
        return new Drawn(section, SectionDrawing.of(section, FONT, page.flatMap(Pages::named), own), own.sorted());
    }

    public Scene scene() {
        return drawing.orElseThrow();
    }
}
