package buildup.engine.look.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Bench;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.look.sight.Eyes;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Eye;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Gaps between neighbors, planted where eyes see them and where they do not. */
class OpenJointTest {
    private static final int STACKS = Integer.getInteger("buildup.joint.stacks", 60);
    private static final long SEED = 2026;

    /** Places across a mouth that are looked at from each eye. */
    private static final int PLACES = 400;

    /** What is narrower than touching, seen slantwise through an edge, is left to chance. */
    private static final double HAIR = 1.0 / 256;

    /** A stack drawn by chance. */
    private static final class Planted {
        final List<Box> boxes = new ArrayList<>();
        final List<Point> eyes = new ArrayList<>();
        final boolean wall;
        final boolean gapped;
        final double gap;
        final int before;
        private final Random random;
        private final boolean upright;

        Planted(long seed) {
            random = new Random(seed);
            wall = random.nextBoolean();
            upright = random.nextBoolean();
            gapped = random.nextInt(8) > 0;
            gap = gapped ? (1 + random.nextInt(31)) / 64.0 : 0;
            int count = 3 + random.nextInt(4);
            before = random.nextInt(count - 1);
            boolean covered = gapped && random.nextInt(3) == 0;
            double at = 0;
            double depth = 0;
            for (int i = 0; i < count; i++) {
                double thick = 1.75 + random.nextInt(16) / 8.0;
                double deep = covered && i == before + 1 ? depth : 0.5 + random.nextInt(28) / 8.0;
                boxes.add(upright ? new Box(0, at, deep, at + thick) : new Box(at, -deep, at + thick, 0));
                depth = deep;
                at += thick + (i == before ? gap : 0);
            }
            double end = at;
            if (!upright) {
                // what hangs side by side hangs from a board over all of them
                boxes.add(new Box(0, 0, end + 1, 0.75));
            }
            if (covered) {
                Box first = boxes.get(before);
                boxes.add(
                        upright
                                ? new Box(first.face(), first.top() - 1, first.face() + 0.5, first.top() + gap + 1)
                                : new Box(
                                        first.face() - 1,
                                        first.bottom() - 0.5,
                                        first.face() + gap + 1,
                                        first.bottom()));
            }
            for (int i = 0; i <= random.nextInt(2); i++) {
                eyes.add(new Point(20 + random.nextInt(80), -70 + random.nextInt(140)));
            }
        }

        String text() {
            StringBuilder text =
                    new StringBuilder("space: { wall: { solid: " + (wall ? "yes" : "no") + " } }\neyes:\n");
            for (int i = 0; i < eyes.size(); i++) {
                text.append("  - { name: e" + i + ", distance: " + eyes.get(i).x() + ", height: "
                        + eyes.get(i).y() + " }\n");
            }
            String[] pieces = new String[boxes.size()];
            for (int i = 0; i < pieces.length; i++) {
                Box box = boxes.get(i);
                pieces[i] = "name: p" + i + ", section: [out " + box.width() + ", up " + box.height() + "], back: "
                        + box.back() + ", bottom: " + box.bottom();
            }
            return Bench.head(text.toString()) + Bench.list(pieces);
        }

        /** How much of the gap's mouths the eyes see at most, in: counted place by place, sight line by sight line. */
        double seen() {
            Box first = boxes.get(before);
            Box second = boxes.get(before + 1);
            double most = 0;
            for (Point eye : eyes) {
                int open = 0;
                for (int i = 0; i < PLACES; i++) {
                    double share = (i + 0.5) / PLACES;
                    // a hair inside the shallower of the two
                    Point place = upright
                            ? new Point(Math.min(first.face(), second.face()) - 1e-6, first.top() + share * gap)
                            : new Point(first.face() + share * gap, Math.max(first.bottom(), second.bottom()) + 1e-6);
                    open += boxes.stream().noneMatch(box -> blocks(box, place, eye)) && !behindWall(place, eye) ? 1 : 0;
                }
                most = Math.max(most, gap * open / PLACES);
            }
            return most;
        }

        private boolean behindWall(Point a, Point b) {
            return wall && (a.x() < 0 || b.x() < 0);
        }

        /** Whether a box stands between two places: the stretch of the line inside it, by clipping. */
        private static boolean blocks(Box box, Point a, Point b) {
            double from = 0;
            double to = 1;
            double[][] sides = {
                {a.x() - b.x(), a.x() - box.back()},
                {b.x() - a.x(), box.face() - a.x()},
                {a.y() - b.y(), a.y() - box.bottom()},
                {b.y() - a.y(), box.top() - a.y()}
            };
            for (double[] side : sides) {
                if (side[0] > 0) {
                    to = Math.min(to, side[1] / side[0]);
                } else if (side[0] < 0) {
                    from = Math.max(from, side[1] / side[0]);
                } else if (side[1] <= 0) {
                    return false;
                }
            }
            return to - from > 1e-12;
        }
    }

    private record Told(Bench bench, Joints joints, List<OpenJoint> wrong, List<Notice> notices) {
        static Told of(String text) {
            return of(text, Set.of());
        }

        static Told of(String text, Set<List<String>> meant) {
            Bench bench = Bench.sound(text);
            Section section = bench.section();
            List<Sighting> sights = Eyes.of(section, new Notices());
            List<Eye> eyes = sights.stream().map(Sighting::eye).toList();
            Joints joints = Joints.of(section, sights);
            Notices notices = new Notices();
            List<OpenJoint> wrong = JointFaults.of(section, joints, eyes, meant, true, notices);
            return new Told(bench, joints, wrong, notices.sorted());
        }

        List<String> said(String code) {
            return notices.stream()
                    .filter(notice -> notice.code().equals(code))
                    .map(NoticeWords.INCHES::message)
                    .toList();
        }
    }

    @Tag("sampled")
    @Test
    void every_gap_that_an_eye_sees_is_named_and_no_other() {
        int seen = 0;
        int hidden = 0;
        int told = 0;
        for (long seed = SEED; told < STACKS; seed++) {
            Planted planted = new Planted(seed);
            double open = planted.gapped ? planted.seen() : 0;
            if (open > 0 && open < 2 * HAIR) {
                continue;
            }
            told++;
            String which = "seed " + seed + "\n" + planted.text();
            Told answer = Told.of(planted.text());
            if (open > 0) {
                seen++;
                assertThat(answer.wrong()).as(which).singleElement().satisfies(joint -> {
                    assertThat(joint.other()).isEqualTo(planted.before);
                    assertThat(joint.piece()).isEqualTo(planted.before + 1);
                    assertThat(joint.width()).isCloseTo(planted.gap, within(1e-9));
                });
                assertThat(answer.said("open-joint")).as(which).hasSize(1);
            } else {
                hidden += planted.gapped ? 1 : 0;
                assertThat(answer.wrong()).as(which).isEmpty();
            }
            assertThat(answer.joints().open()).as(which).hasSize(planted.gapped ? 1 : 0);
        }
        assertThat(seen).isGreaterThan(STACKS / 5);
        assertThat(hidden).isGreaterThan(STACKS / 5);
    }

    @Tag("sampled")
    @Test
    void a_cure_typed_into_the_document_as_it_is_printed_closes_the_gap() {
        int cured = 0;
        int seen = 0;
        for (long seed = SEED; seen < STACKS / 4; seed++) {
            Planted planted = new Planted(seed);
            Told told = Told.of(planted.text());
            for (Notice notice : told.notices()) {
                if (notice.code().equals("open-joint")) {
                    seen++;
                    cured += notice.changes().isEmpty() ? 0 : 1;
                    if (!notice.changes().isEmpty()) {
                        Told after = Told.of(edited(planted.text(), notice));
                        assertThat(after.wrong())
                                .as("seed " + seed + ": " + cure(notice))
                                .isEmpty();
                        assertThat(after.bench().section().overlaps()).isEmpty();
                    }
                }
            }
        }
        assertThat(cured).as("of %d", seen).isGreaterThan(seen / 2);
    }

    private static String edited(String text, Notice notice) {
        Notices unable = new Notices();
        Optional<String> edited = Editor.edit("stack.yaml", text, NoticeWords.INCHES.edits(notice), unable);
        assertThat(unable.sorted()).isEmpty();
        return edited.orElseThrow();
    }

    private static String cure(Notice notice) {
        return NoticeWords.INCHES.cure(notice);
    }

    private static final String EYES = "eyes: [{ name: standing, distance: 72, height: 10 }]\n";

    private static Told told(String space, String... pieces) {
        return Told.of(Bench.head("space: " + space + "\n" + EYES) + Bench.list(pieces));
    }

    private static final String FRIEZE = "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0";

    private static String soffit(String bottom) {
        return "name: soffit, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: " + bottom;
    }

    @Test
    void a_slot_is_told_with_its_width_the_eyes_and_the_size_that_closes_it() {
        Told slot =
                told("{ wall: { solid: yes } }", FRIEZE, soffit("5.6875").replace("soffit,", "soffit, kind: trim,"));
        assertThat(slot.said("open-joint"))
                .containsExactly("A gap of 3/16 stands open between 'soffit' and 'frieze'; it is seen from standing.");
        assertThat(cure(slot.notices().get(0))).isEqualTo("Make 'frieze' 5-11/16 wide.");
        assertThat(slot.wrong().get(0).at().y()).isCloseTo(5.5 + 3.0 / 32, within(1e-9));
    }

    @Test
    void a_gap_that_a_rule_names_is_meant() {
        String space = "{ ceiling: 12, wall: { solid: yes } }";
        assertThat(told(space, FRIEZE, soffit("frieze.top + 3/16")).wrong()).isEmpty();
        assertThat(told(space, FRIEZE, soffit("datum + 5-11/16")).wrong()).hasSize(1);
        String shelf = "name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: ";
        assertThat(told(space, shelf + "wall + 1/4, bottom: 0").wrong())
                .as("off the wall on purpose")
                .isEmpty();
        assertThat(told(space, shelf + "1/4, bottom: 0").wrong())
                .as("a plain length names nothing")
                .hasSize(1);
        assertThat(told(space, shelf + "wall, top: ceiling - 1/4").wrong()).isEmpty();
        assertThat(told(space, shelf + "wall, top: 11-3/4").wrong()).hasSize(1);
    }

    /** A bed planted flush has the gap that is asked of what it is planted on; one that stands off it has another. */
    @Test
    void a_meant_gap_is_meant_of_what_is_planted_flush_too() {
        String space = "{ ceiling: 12, wall: { solid: yes } }";
        String bed = "name: bed, profile: board 3/4 x 1, back: frieze.face, top: frieze.top";
        assertThat(told(space, FRIEZE, bed, soffit("frieze.top + 3/16")).wrong())
                .isEmpty();
        assertThat(told(space, FRIEZE, bed, soffit("5.6875")).wrong())
                .as("nobody wrote it")
                .isNotEmpty();
        assertThat(told(space, FRIEZE, bed + " - 1/8", soffit("frieze.top + 3/16"))
                        .wrong())
                .as("5/16 over a bed that is not flush")
                .hasSize(1);
        String hood = "name: hood, profile: board 3/4 x 1, back: cap.face, bottom: cap.bottom";
        String cap = "name: cap, profile: board 3/4 x 3, back: wall, bottom: frieze.top + 3/16";
        assertThat(told(space, FRIEZE, bed, cap, hood).wrong())
                .as("flush on both sides of the gap")
                .isEmpty();
    }

    @Test
    void a_gap_that_the_document_speaks_of_elsewhere_is_meant() {
        String text = Bench.head("space: { wall: { solid: yes } }\n" + EYES) + Bench.list(FRIEZE, soffit("5.6875"));
        assertThat(Told.of(text, Set.of(List.of("soffit", "frieze"))).wrong()).isEmpty();
        assertThat(Told.of(text, Set.of(List.of("soffit", "bed"))).wrong()).hasSize(1);
    }

    @Test
    void the_verdict_says_no_to_an_open_joint_unless_a_line_under_must_speaks_of_it() {
        String text =
                "wood: yellow-poplar\nspace: { wall: { solid: yes } }\n" + EYES + Bench.list(FRIEZE, soffit("5.6875"));
        assertThat(seen(text)).isEqualTo(Ruling.Reply.NO);
        assertThat(seen(text + "must: [gap of soffit over frieze <= 1/4]\n")).isEqualTo(Ruling.Reply.YES);
        assertThat(seen(text + "must: [gap of soffit over frieze = 1/8]\n"))
                .as("wrong by the line, and no open joint beside")
                .isEqualTo(Ruling.Reply.YES);
        assertThat(seen(text + "must: [height <= 12]\n")).isEqualTo(Ruling.Reply.NO);
        String hidden = "wood: yellow-poplar\nspace: { wall: { solid: yes } }\n" + EYES
                + Bench.list(
                        FRIEZE,
                        "name: cover, profile: board 3/4 x 7, back: frieze.face, bottom: -3/4",
                        "name: foot, kind: nailer, section: [out 3/4, up 3/4], back: wall, top: frieze.bottom",
                        "name: top, profile: board 3/4 x 1-1/2, lay: flat, back: wall, bottom: frieze.top + 3/4");
        assertThat(seen(hidden))
                .as("trim that no eye sees is for a person to judge")
                .isEqualTo(Ruling.Reply.LOOK);
    }

    private static Ruling.Reply seen(String text) {
        Answer answer = Answer.of(
                DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
        return answer.known().orElseThrow().verdict().rulings().stream()
                .filter(ruling -> ruling.topic() == Topic.SEEN)
                .findFirst()
                .orElseThrow()
                .answer();
    }

    @Test
    void gaps_of_half_an_inch_and_of_less_than_touching_are_none() {
        for (double gap : new double[] {1.0 / 300, 0.5, 0.51, 2}) {
            assertThat(told("{ wall: { solid: yes } }", FRIEZE, soffit(Double.toString(5.5 + gap)))
                            .joints()
                            .open())
                    .as("a gap of %s", gap)
                    .isEmpty();
        }
    }

    private static final String UPPER = "name: upper, profile: board 3/4 x 5-1/2, back: wall, bottom: 5-7/8";

    private static String lath(String profile, String more) {
        return "name: lath, profile: board " + profile + ", back: wall, bottom: frieze.top" + more;
    }

    @Test
    void a_strip_that_lies_on_both_boards_fills_the_gap_between_them_wherever_its_face_is() {
        String space = "{ wall: { solid: yes } }";
        for (String thick : List.of("1/4", "1/2", "11/16", "3/4", "1")) {
            assertThat(told(space, FRIEZE, UPPER, lath(thick + " x 3/8", ""))
                            .joints()
                            .open())
                    .as("a strip %s thick", thick)
                    .isEmpty();
        }
        assertThat(told(
                                space,
                                FRIEZE,
                                UPPER,
                                lath("1/2 x 3/16", ""),
                                "name: second, profile: board 1/4 x 3/16, back: wall, bottom: lath.top")
                        .joints()
                        .open())
                .as("two strips on each other")
                .isEmpty();
    }

    @Test
    void a_strip_between_shelves_that_hang_side_by_side_fills_their_gap_too() {
        Told filled = told(
                "{ wall: { solid: yes } }",
                "name: bed, section: [out 2, up 1-1/2], back: wall, bottom: 0",
                "name: lip, section: [out 3/4, up 1-1/2], back: bed.face + 1/4, bottom: 0",
                "name: fillet, section: [out 1/4, up 1], back: bed.face, top: bed.top");
        assertThat(filled.joints().open()).isEmpty();
    }

    @Test
    void what_fills_only_a_part_of_the_gap_or_stands_behind_it_leaves_it_open() {
        String space = "{ wall: { solid: yes } }";
        assertThat(told(space, FRIEZE, UPPER, lath("1/4 x 1/4", "")).said("open-joint"))
                .as("a strip too narrow")
                .isNotEmpty();
        String behind = "name: ground, kind: nailer, profile: board 3/4 x 9, back: wall, bottom: 1";
        assertThat(told(
                                space,
                                behind,
                                FRIEZE.replace("back: wall", "back: ground.face"),
                                UPPER.replace("back: wall", "back: ground.face"))
                        .said("open-joint"))
                .as("a board that both lie on")
                .isNotEmpty();
    }

    @Test
    void a_round_and_a_turned_board_that_nearly_meet_a_face_leave_a_slot_too() {
        Told round = told(
                "{ wall: { solid: no } }",
                "name: base, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 0",
                "name: rod, section: [bead 1 as rod], back: 1, bottom: 0.875");
        assertThat(round.joints().open())
                .singleElement()
                .satisfies(joint -> assertThat(joint.width()).isCloseTo(1.0 / 8, within(1e-9)));
        Told turned = told(
                "{ wall: { solid: no } }",
                "name: base, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 0",
                "name: lean, profile: board 3/4 x 3, turn: 10, back: 1, bottom: 1");
        assertThat(turned.wrong())
                .singleElement()
                .satisfies(joint -> assertThat(joint.width()).isCloseTo(0.25, within(1e-9)));
    }

    @Test
    void pieces_that_only_pass_each_other_at_their_corners_leave_no_slot() {
        Told apart = told(
                "{ wall: { solid: no } }",
                "name: low, profile: board 3/4 x 2, back: 0, bottom: 0",
                "name: high, profile: board 3/4 x 2, back: 1, bottom: 2.2");
        assertThat(apart.joints().open()).isEmpty();
        Told inLine = told(
                "{ wall: { solid: no } }",
                "name: low, profile: board 3/4 x 2, back: 0, bottom: 0",
                "name: high, profile: board 3/4 x 2, back: 3/4, bottom: 2.2");
        assertThat(inLine.joints().open())
                .as("face of the one in line with the back of the other")
                .isEmpty();
    }

    @Test
    void trim_that_no_eye_sees_is_said_and_blocking_is_not() {
        Told hidden = told(
                "{ wall: { solid: yes } }",
                FRIEZE,
                "name: cover, profile: board 3/4 x 7, back: frieze.face, bottom: -3/4",
                "name: block, kind: nailer, section: [out 3/4, up 3/4], back: wall, top: frieze.bottom",
                "name: top, profile: board 3/4 x 1-1/2, lay: flat, back: wall, bottom: frieze.top");
        assertThat(hidden.said("trim-that-no-eye-sees"))
                .containsExactly("'frieze' is trim, and no eye of the stack sees any of it.");
        Told blind = Told.of(Bench.head("space: { wall: { solid: yes } }") + Bench.list(FRIEZE));
        assertThat(blind.notices()).as("no eye, no word").isEmpty();
    }
}
