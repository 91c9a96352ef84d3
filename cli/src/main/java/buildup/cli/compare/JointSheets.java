package buildup.cli.compare;

import static buildup.cli.compare.Sheet.length;
import static buildup.cli.compare.Sheet.names;
import static buildup.cli.compare.Sheet.words;

import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Row;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Hollow;
import buildup.engine.section.compose.Section;
import buildup.profiles.region.Bound;
import java.util.List;
import java.util.stream.Collectors;

/** The sheets of where pieces meet: contacts, overlaps, and the air shut in between them. */
record JointSheets(Section section) {
    static final String VOIDS = "voids";

    List<Sheet> all() {
        return List.of(contacts(), overlaps(), voids());
    }

    private Sheet contacts() {
        return new Sheet(
                "contacts",
                "CONTACTS, and the end where each begins; slope in degrees from level",
                names("piece", "other"),
                List.of(
                        words("facing", "how"),
                        length("length"),
                        Sheet.of("slope", "slope", Kind.DEGREES),
                        length("out"),
                        length("up")),
                section.contacts().stream()
                        .map(contact -> new Row(
                                List.of(section.name(contact.a()), section.name(contact.b())),
                                List.of(
                                        Figure.of(contact.facing()
                                                .map(Contact.Facing::word)
                                                .orElse("meets")),
                                        Figure.of(contact.length()),
                                        Figure.of(contact.slope()),
                                        Figure.of(contact.from().x()),
                                        Figure.of(contact.from().y()))))
                        .toList());
    }

    private Sheet overlaps() {
        return new Sheet(
                "overlaps",
                "OVERLAPS: wood in the same place twice",
                names("piece", "other"),
                List.of(length("depth"), Sheet.of("area", "sq in", Kind.AREA), length("out"), length("up")),
                section.overlaps().stream()
                        .map(overlap -> new Row(
                                List.of(section.name(overlap.a()), section.name(overlap.b())),
                                List.of(
                                        Figure.of(overlap.depth()),
                                        Figure.of(overlap.area()),
                                        Figure.of(overlap.at().x()),
                                        Figure.of(overlap.at().y()))))
                        .toList());
    }

    private Sheet voids() {
        return new Sheet(
                VOIDS,
                "VOIDS: air shut in",
                names("between"),
                List.of(Sheet.of("area", "sq in", Kind.AREA), length("out"), length("up")),
                section.voids().stream()
                        .map(hollow -> new Row(
                                List.of(between(hollow)),
                                List.of(
                                        Figure.of(hollow.area()),
                                        Figure.of(hollow.at().x()),
                                        Figure.of(hollow.at().y()))))
                        .toList());
    }

    private String between(Hollow hollow) {
        return hollow.ring().bounds().stream()
                .map(Bound::outline)
                .distinct()
                .sorted()
                .map(section::body)
                .map(Body::name)
                .collect(Collectors.joining(", "));
    }
}
