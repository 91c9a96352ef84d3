package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Lights;
import buildup.engine.look.sight.Eyes;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A stack with its fastenings, taken as far as it goes. */
final class Driven {
    /** The check profiles of the worked examples, a wood of round gravity, and woods of every group. */
    private static final String LISTS = """
            profiles:
              - name: check-crown
                kind: crown
                sizes: [thickness, width]
                sprung: { spring: 38, wall-edge: 0, ceiling-edge: 0 }
              - name: check-bed
                kind: bed
                sizes: [projection, height]
                words: [out 1/4 as bottom, cove projection - 1/4, up to height as fillet]
            woods:
              - { name: check-wood, specific-gravity: 0.42, group: hardwood }
              - { name: nameless, specific-gravity: 0.45 }
            """;

    static final Catalog CATALOG = catalog();

    private final Optional<Section> section;
    private final List<Lighting> lights;
    private final List<Sighting> sights;
    private final List<Fixed> fixed;
    private final List<Notice> notices;

    private Driven(
            Optional<Section> section,
            List<Lighting> lights,
            List<Sighting> sights,
            List<Fixed> fixed,
            List<Notice> notices) {
        this.section = section;
        this.lights = lights;
        this.sights = sights;
        this.fixed = fixed;
        this.notices = notices;
    }

    private static Catalog catalog() {
        Notices notices = new Notices();
        Document own = DocumentReader.read("lists.yaml", LISTS.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Catalog catalog = Catalog.builtIn().with(own, new Claims(), notices);
        assertThat(notices.sorted()).isEmpty();
        return catalog;
    }

    static Driven of(String yaml) {
        Notices notices = new Notices();
        Claims claims = new Claims();
        Document document = DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Stack stack = StackReader.read(document, CATALOG, claims, notices);
        List<Fastening> rows =
                Fixing.read(stack, Fields.of(document, claims, notices, stack.lengths()), CATALOG, notices);
        var placed = StackPlacing.place(stack, notices);
        notices.addAll(claims.unclaimed(document));
        if (notices.refused()) {
            return new Driven(Optional.empty(), List.of(), List.of(), List.of(), notices.sorted());
        }
        Section section = Composer.compose(stack, placed, new Notices());
        List<Lighting> lights = Lights.of(section, new Notices());
        List<Sighting> sights = Eyes.of(section, new Notices());
        List<Fixed> fixed = Fixing.of(section, rows, lights, sights, CATALOG, notices);
        return new Driven(Optional.of(section), lights, sights, fixed, notices.sorted());
    }

    /** Pieces and fastenings, one a line, in a space; wood of G 0.42. */
    static Driven in(String space, List<String> pieces, String... rows) {
        return of(text("space: " + space + "\n", pieces, rows));
    }

    static String text(String head, List<String> pieces, String... rows) {
        StringBuilder text =
                new StringBuilder("wood: check-wood\n").append(head).append("pieces:\n");
        pieces.forEach(piece -> text.append("  - { ").append(piece).append(" }\n"));
        text.append(rows.length == 0 ? "" : "fastenings:\n");
        for (String row : rows) {
            text.append("  - { ").append(row).append(" }\n");
        }
        return text.toString();
    }

    Section section() {
        return section.orElseThrow(() -> new AssertionError(notices.toString()));
    }

    List<Fixed> all() {
        assertThat(section).as("refused: %s", notices).isPresent();
        return fixed;
    }

    Fixed nail(int number) {
        return all().get(number - 1);
    }

    List<Proposal> proposals() {
        return Fixing.propose(section(), lights, sights, CATALOG);
    }

    List<Lighting> lights() {
        return lights;
    }

    List<Sighting> sights() {
        return sights;
    }

    int body(String name) {
        return section().bodies().stream().map(body -> body.name()).toList().indexOf(name);
    }

    /** Each notice about a fastening in one line: level, code, piece, place, message and cure. */
    List<String> said() {
        return notices.stream()
                .map(notice -> notice.level() + " " + notice.code() + " "
                        + notice.piece().orElse("-") + " "
                        + notice.mark().map(Mark::line).orElse(0) + " " + NoticeWords.INCHES.message(notice) + " | "
                        + NoticeWords.INCHES.cure(notice))
                .toList();
    }

    List<Notice> notices() {
        return notices;
    }
}
