package buildup.engine.hold.support;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.hold.fixing.Fixing;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The nails of worked example D (resources/reference/worked-examples.md) against the load that leans. */
class PullsTest {
    private static final String DOOR_HEAD = """
            wood: check-wood
            space: { floor: -84, wall: { from: -5, covering: 1/2 } }
            loads: [ { name: leaning, on: cap, out: 6, load: 20 lb/ft } ]
            fastenings:
              - { name: top nails, piece: frieze, use: %s, at: { up: 9 }, per: 2, spacing: 16 }
            pieces:
              - { name: backband, fixed: wall, section: [out 1-5/8, up 1, ovolo in 1/8 as arris], back: wall, top: 0 }
              - { name: frieze back, kind: nailer, profile: board 3/4 x 9-1/4, back: 1/16, bottom: backband.top }
              - { name: frieze, profile: board 3/4 x 9-1/4, back: frieze back.face, bottom: backband.top }
              - { name: bed, fixed: frieze, section: [out 1/4, cove 1, up 1/4], back: frieze.face, top: frieze.top }
              - { name: soffit, fixed: frieze, profile: board 3/4 x 5, lay: flat, back: 1/16, bottom: frieze.top }
              - { name: cap, fixed: soffit, profile: board 3/4 x 6, lay: flat, back: 1/16, bottom: soffit.top }
            """;

    private static final String WOODS =
            "woods: [ { name: check-wood, specific-gravity: 0.42, density: 29.35 lb/ft3 } ]";

    private record Asked(Section section, List<Pull> pulls, List<Notice> notices) {
        Pull by(String fastening) {
            return pulls.stream()
                    .filter(pull -> pull.fixed().fastening().name().equals(fastening))
                    .filter(pull -> pull.balance().carriers().stream()
                            .map(section::name)
                            .toList()
                            .equals(List.of("backband")))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static Asked asked(String use) {
        Notices notices = new Notices();
        Claims claims = new Claims();
        Document woods = DocumentReader.read("woods.yaml", WOODS.getBytes(UTF_8), notices)
                .orElseThrow();
        Catalog catalog = Catalog.builtIn().with(woods, claims, notices);
        Document document = DocumentReader.read(
                        "head.yaml", DOOR_HEAD.formatted(use).getBytes(UTF_8), notices)
                .orElseThrow();
        Stack stack = StackReader.read(document, catalog, claims, notices);
        Fields root = Fields.of(document, claims, notices, stack.lengths());
        Section shape = Composer.composeFastened(stack, StackPlacing.place(stack, notices), notices);
        List<Fastening> given = Fixing.read(stack, root, catalog, notices);
        List<Fixed> fixed = Fixing.of(shape, given, List.of(), List.of(), catalog, notices);
        Section section = shape.heldBy(Ties.fastened(shape, given, fixed), notices);
        Support support =
                Supports.of(section, Loads.read(stack, root, notices), Ties.of(fixed), OptionalDouble.empty(), notices);
        List<Pull> pulls = Pulls.of(section, support, fixed, notices);
        return new Asked(section, pulls, notices.sorted());
    }

    @Test
    void two_nails_with_seven_sixteenths_in_the_wall_do_not_hold_a_leaning_person() {
        Pull pull = asked("15 ga x 2-1/2").by("top nails");
        assertThat(pull.needed()).as("hold-back, lb a foot").isCloseTo(10.04, within(0.005));
        assertThat(pull.allowable()).as("two nails in 16 in, lb a foot").isCloseTo(7.45, within(0.005));
        assertThat(pull.bite()).isCloseTo(0.4375, within(1e-9));
        assertThat(pull.biteForLoad().orElseThrow()).isCloseTo(0.589, within(0.0005));
        assertThat(pull.biteByRule()).as("12 diameters").isCloseTo(0.864, within(1e-9));
        assertThat(pull.biteNeeded()).as("the larger governs").isCloseTo(0.864, within(1e-9));
        assertThat(pull.holds()).isFalse();
    }

    @Test
    void what_fails_is_said_with_both_bites() {
        Asked asked = asked("15 ga x 2-1/2");
        assertThat(asked.notices().stream()
                        .map(NoticeWords.INCHES::message)
                        .filter(message -> message.contains("may hold")))
                .containsExactly("'top nails' may hold 7.45 lb a foot; frieze back, frieze and 3 more need 10.04 lb a"
                        + " foot. It has 7/16 in the wall: the pull needs 0.589, the rule for its kind 0.864.");
        assertThat(asked.notices()).extracting(Notice::code).contains("load-too-much");
        Notice short_by = asked.notices().stream()
                .filter(notice -> NoticeWords.INCHES.message(notice).contains("may hold"))
                .findFirst()
                .orElseThrow();
        assertThat(short_by.amount().orElseThrow().amount())
                .as("bite that is missing")
                .isCloseTo(0.864 - 0.4375, within(1e-9));
    }

    @Test
    void a_longer_screw_holds_and_nothing_is_said() {
        Asked asked = asked("trim screw 7 x 3");
        assertThat(asked.by("top nails").holds()).isTrue();
        assertThat(asked.notices())
                .noneMatch(notice -> NoticeWords.INCHES.message(notice).contains("may hold"));
    }

    /** A shelf 10 wide stands 6 past the edge of its ledge, to the room or to the wall, nailed at 3 and at 2 behind it. */
    private static Answers shelf(boolean out) {
        String place = out ? "face: 0" : "back: 0";
        String sign = out ? "-" : "";
        return Answered.sound("""
                wood: check-wood
                space: { wall: { solid: no } }
                loads: [ { name: books, on: shelf, out: %s5, load: 36 lb/ft } ]
                fastenings:
                  - { name: far brads, piece: shelf, use: 18 ga x 1-1/4, at: { out: %s3, up: 3/4 }, spacing: 16 }
                  - { name: near brads, piece: shelf, use: 18 ga x 1-1/4, at: { out: %s2, up: 3/4 }, spacing: 16 }
                pieces:
                  - { name: ledge, kind: framing, section: [out 6, up 6], %s, top: 0 }
                  - { name: shelf, profile: board 3/4 x 10, lay: flat, back: %s, bottom: 0 }
                """.formatted(out ? "" : "-", sign, sign, place, out ? "-4" : "-6"));
    }

    @Test
    void a_group_that_leans_to_the_wall_is_held_as_one_that_leans_to_the_room_and_the_nearest_to_do_is_told() {
        double moment = 7.5 * Held.WOOD * 1 + 36 * 5;
        for (boolean out : List.of(true, false)) {
            Answers answers = shelf(out);
            assertThat(answers.pulls())
                    .extracting(pull -> pull.fixed().fastening().name())
                    .containsExactly("far brads", "near brads");
            assertThat(answers.pulls().get(0).needed()).isCloseTo(moment / 3, within(1e-6));
            assertThat(answers.pulls().get(1).needed()).isCloseTo(moment / 2, within(1e-6));
            Notices told = new Notices();
            Pulls.of(answers.section(), answers.support(), answers.fixed(), told);
            assertThat(told.sorted())
                    .singleElement()
                    .satisfies(notice ->
                            assertThat(NoticeWords.INCHES.message(notice)).startsWith("'far brads' may hold "));
            List<Fixed> turned = new ArrayList<>(answers.fixed());
            Collections.reverse(turned);
            Notices again = new Notices();
            Pulls.of(answers.section(), answers.support(), turned, again);
            assertThat(again.sorted()).as("whichever stands first").isEqualTo(told.sorted());
        }
    }
}
