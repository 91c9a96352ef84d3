package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.hold.backing.Backing;
import buildup.engine.hold.backing.Backings;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.profiles.outline.Box;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A stack document taken as far as it goes. Its profiles are those of the check catalog below: what a shop's own lists
 * hold must not move the figures of a test.
 */
public final class Bench {
    /** A crown without square edges, one with them, a round to stand in a hollow, and two woods of plain density. */
    static final String CHECK_CATALOG = """
            profiles:
              - name: check-crown
                kind: crown
                sizes: [thickness, width]
                sprung: { spring: 38, wall-edge: 0, ceiling-edge: 0 }
              - name: check-crown-edged
                kind: crown
                sizes: [thickness, width]
                sprung: { spring: 38, wall-edge: 1/4, ceiling-edge: 1/4 }
              - name: check-bed
                kind: bed
                sizes: [projection, height]
                words: [out 1/4 as bottom, cove projection - 1/4, up to height as fillet]
              - name: check-backband
                kind: backband
                sizes: [projection, height]
                words:
                  - out 3/4 as shoulder
                  - down 3/8 as lip-back
                  - out to projection as lip-bottom
                  - up to height - 1/2 as face
                  - ovolo in 1/8 as arris
            woods:
              - { name: check-wood, density: 29.35 }
              - { name: heavy-wood, density: 58.7 }
            """;

    private static final Catalog CATALOG = catalog();

    private final Stack stack;
    private final List<Placed> placed;
    private final Optional<Section> section;
    private final List<Backing> backings;
    private final List<Notice> notices;

    private Bench(
            Stack stack, List<Placed> placed, Optional<Section> section, List<Backing> backings, List<Notice> notices) {
        this.stack = stack;
        this.placed = placed;
        this.section = section;
        this.backings = backings;
        this.notices = notices;
    }

    /** The lists that it reads from. */
    static Catalog checkCatalog() {
        return CATALOG;
    }

    private static Catalog catalog() {
        Notices notices = new Notices();
        Document own = DocumentReader.read(
                        "check-catalog.yaml", CHECK_CATALOG.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Catalog catalog = Catalog.builtIn().with(own, new Claims(), notices);
        assertThat(notices.sorted()).isEmpty();
        return catalog;
    }

    /** Reads, places and, when nothing is refused, composes. */
    public static Bench of(String yaml) {
        Notices notices = new Notices();
        Claims claims = new Claims();
        Document document = DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow(() -> new AssertionError(notices.sorted().toString()));
        Stack stack = StackReader.read(document, CATALOG, claims, notices);
        List<Placed> placed = StackPlacing.place(stack, notices);
        notices.addAll(claims.unclaimed(document));
        Optional<Section> section =
                notices.refused() ? Optional.empty() : Optional.of(Composer.compose(stack, placed, notices));
        List<Backing> backings = section.map(found -> Backings.of(
                        found,
                        java.util.Set.of(),
                        piece -> java.util.stream.Stream.empty(),
                        piece -> List.of(),
                        notices))
                .orElse(List.of());
        return new Bench(stack, placed, section, backings, notices.sorted());
    }

    /** As {@link #of}, for a stack that must not be refused. */
    public static Bench sound(String yaml) {
        Bench bench = of(yaml);
        assertThat(bench.refusals()).as("refusals").isEmpty();
        return bench;
    }

    /** Pieces, one a line, in a space of their own without wall, floor or ceiling; wood of 29.35 lb a cubic foot. */
    public static Bench loose(String... pieces) {
        return sound(head("space: { wall: { solid: no } }") + list(pieces));
    }

    /** Pieces on a solid wall without end. */
    public static Bench onWall(String... pieces) {
        return sound(head("space: { wall: { solid: yes } }") + list(pieces));
    }

    public static Bench in(String space, String... pieces) {
        return sound(head("space: " + space) + list(pieces));
    }

    public static Bench refused(String... pieces) {
        return of(head("space: { wall: { solid: no } }") + list(pieces));
    }

    public static String head(String more) {
        return "wood: check-wood\n" + more + "\n";
    }

    public static String list(String... pieces) {
        StringBuilder text = new StringBuilder("pieces:\n");
        for (String piece : pieces) {
            text.append("  - { ").append(piece).append(" }\n");
        }
        return text.toString();
    }

    public static String resource(String name) {
        try (InputStream in = Bench.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    public Stack stack() {
        return stack;
    }

    public List<Placed> placed() {
        return placed;
    }

    public Section section() {
        return section.orElseThrow(() -> new AssertionError(notices.toString()));
    }

    public List<Backing> backings() {
        return backings;
    }

    public List<Notice> notices() {
        return notices;
    }

    public List<Notice> refusals() {
        return notices.stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .toList();
    }

    public List<Notice> notices(String code) {
        return notices.stream().filter(notice -> notice.code().equals(code)).toList();
    }

    public List<String> codes() {
        return notices.stream().map(Notice::code).toList();
    }

    public Placed piece(String name) {
        return placed.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + " in " + notices));
    }

    public Box box(String name) {
        return piece(name).outline().box();
    }

    public String name(int body) {
        return section().name(body);
    }

    public Standing standing(String name) {
        return section().standing().stream()
                .filter(standing -> name(standing.body()).equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Rows as {@code bead bottom 1.000}, in walking order. */
    public List<String> walk() {
        return section().members().stream().map(this::row).toList();
    }

    private String row(Member member) {
        return name(member.body()) + " " + member.member() + " " + three(member.length());
    }

    /** Rows as {@code bead over frieze 0.250 level}. */
    public List<String> reveals() {
        return section().reveals().stream()
                .map((Reveal reveal) -> name(reveal.piece()) + " over " + name(reveal.over()) + " "
                        + three(reveal.amount()) + " " + reveal.along().word())
                .toList();
    }

    /** Rows as {@code bead carries frieze 0.750}, or {@code case meets soffit 0.000} for a point. */
    public List<String> contacts() {
        List<String> rows = new ArrayList<>();
        for (Contact contact : section().contacts()) {
            rows.add(name(contact.a()) + " "
                    + contact.facing().map(Contact.Facing::word).orElse("meets") + " " + name(contact.b()) + " "
                    + three(contact.length()));
        }
        return rows;
    }

    public static String three(double value) {
        return String.format(Locale.ROOT, "%.3f", value + 0.0);
    }
}
