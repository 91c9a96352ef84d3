package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.engine.section.compose.Section;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The eyes of a stack document, asked by names. */
final class Sights {
    static final String EYES = """
            eyes:
              - { name: standing, distance: 72, height: floor + 60 }
              - { name: seated, distance: 72, height: floor + 46 }
            """;

    private final Bench bench;
    private final Section section;
    private final List<Sighting> sightings;
    private final List<Notice> notices;

    private Sights(Bench bench, List<Sighting> sightings, List<Notice> notices) {
        this.bench = bench;
        this.section = bench.section();
        this.sightings = sightings;
        this.notices = notices;
    }

    static Sights of(String text) {
        Bench bench = Bench.sound(text);
        Notices notices = new Notices();
        List<Sighting> sightings = Eyes.of(bench.section(), notices);
        return new Sights(bench, sightings, notices.sorted());
    }

    /** The answers to an {@code approach:} block that follows a stack, and what is said about it. */
    static List<Approach> approaches(String stack, String block, Notices notices) {
        Bench bench = Bench.sound(stack);
        String text = stack + block;
        Document document = DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Fields root = Fields.of(document, new Claims(), notices, bench.stack().lengths());
        return Approaches.of(bench.section(), Approaches.read(bench.stack(), root, notices), List.of(), notices);
    }

    Bench bench() {
        return bench;
    }

    List<Sighting> sightings() {
        return sightings;
    }

    List<Notice> notices() {
        return notices;
    }

    Notice said() {
        assertThat(notices).hasSize(1);
        return notices.get(0);
    }

    Sighting from(String eye) {
        return sightings.stream()
                .filter(sighting -> sighting.eye().name().equals(eye))
                .findFirst()
                .orElseThrow();
    }

    Coverage coverage(String eye, String nailer) {
        return from(eye).coverage().stream()
                .filter(row -> section.name(row.body()).equals(nailer))
                .findFirst()
                .orElseThrow();
    }

    SeenMember seen(String eye, String piece, String member) {
        return from(eye).members().stream()
                .filter(row -> {
                    var asked = section.members().get(row.member());
                    return section.name(asked.body()).equals(piece)
                            && asked.member().equals(member);
                })
                .findFirst()
                .orElseThrow();
    }
}
