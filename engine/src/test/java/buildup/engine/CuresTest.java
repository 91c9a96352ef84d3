package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.look.sight.Eyes;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.edit.Editor;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Named;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Change;
import buildup.shared.notice.Level;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A cure that says what to move, rip or cut is typed into the document as it is printed: then its notice is gone. */
@Tag("long")
class CuresTest {
    private static final int STACKS = Integer.getInteger("buildup.cures", 60);

    /** What is mended with a saw or by moving something. */
    private static final Set<String> MECHANICAL = Set.of(
            "overlap",
            "floating-piece",
            "too-tall",
            "projects-too-far",
            "rip-through",
            "board-too-small",
            "reveal-larger-than-its-piece",
            "nailer-shows");

    private static NoticeWords words(boolean metric) {
        return NoticeWords.in(metric ? LengthUnit.MILLIMETER : LengthUnit.INCH);
    }

    private static List<Notice> notices(String text) {
        Bench bench = Bench.of(text);
        Notices all = new Notices();
        all.addAll(bench.notices());
        if (bench.refusals().isEmpty()) {
            Eyes.of(bench.section(), all);
        }
        return all.sorted();
    }

    private static String edited(String text, Notice notice, NoticeWords words) {
        Notices unable = new Notices();
        Optional<String> edited = Editor.edit("stack.yaml", text, words.edits(notice), unable);
        assertThat(unable.sorted()).as(text + words.edits(notice)).isEmpty();
        return edited.orElseThrow();
    }

    /** Whether two notices are of one kind about the same things, whatever their figures. */
    private static boolean alike(Notice one, Notice other) {
        return one.code().equals(other.code())
                && one.level() == other.level()
                && one.piece().equals(other.piece())
                && names(one).equals(names(other))
                && (!one.code().equals("board-too-small") || template(one).equals(template(other)));
    }

    /** A board may be too thin and too narrow: two notices of one kind, told apart by what they ask for. */
    private static Optional<String> template(Notice notice) {
        return notice.cure().map(Phrase::template);
    }

    private static List<Named> names(Notice notice) {
        return notice.values().stream()
                .filter(named -> !(named.value() instanceof Figure))
                .filter(named -> List.of("other", "edge").contains(named.name()))
                .toList();
    }

    private static boolean mechanical(Notice notice) {
        return MECHANICAL.contains(notice.code()) && !notice.changes().isEmpty();
    }

    @Test
    void what_a_cure_says_typed_into_the_document_removes_its_notice() {
        Map<String, Integer> cured = new TreeMap<>();
        Map<String, Integer> uncured = new TreeMap<>();
        int stacks = 0;
        int metricStacks = 0;
        for (long seed = 1; stacks < STACKS; seed++) {
            boolean metric = FaultyStack.isMetric(seed);
            String text = FaultyStack.text(seed);
            List<Notice> notices = notices(text);
            if (notices.stream().noneMatch(CuresTest::mechanical)) {
                continue;
            }
            stacks++;
            metricStacks += metric ? 1 : 0;
            for (Notice notice : notices) {
                saysNoInchesIn(metric, notice);
                if (mechanical(notice)) {
                    cured.merge(notice.code() + (metric ? " mm" : " in"), 1, Integer::sum);
                    String after = edited(text, notice, words(metric));
                    assertThat(notices(after))
                            .as("seed " + seed + ": " + words(metric).message(notice) + " "
                                    + words(metric).cure(notice) + "\n" + text + "\n" + after)
                            .filteredOn(left -> alike(left, notice))
                            .isEmpty();
                    saysItsSizes(notice, words(metric));
                } else if (MECHANICAL.contains(notice.code())) {
                    uncured.merge(notice.code(), 1, Integer::sum);
                }
            }
        }
        assertThat(metricStacks).isBetween(STACKS / 3, 2 * STACKS / 3);
        assertThat(cured)
                .containsKeys("overlap in", "overlap mm", "floating-piece in", "floating-piece mm")
                .containsKeys("too-tall in", "too-tall mm", "projects-too-far in", "projects-too-far mm")
                .containsKeys("board-too-small in", "board-too-small mm");
        assertThat(uncured.getOrDefault("overlap", 0))
                .as("where no move or rip helps")
                .isLessThan(cured.get("overlap in") + cured.get("overlap mm"));
    }

    private static Answer asked(String text) {
        Document document = DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), new Notices())
                .orElseThrow();
        return Answer.of(document, Bench.checkCatalog());
    }

    private static List<Notice> wrong(Answer answer) {
        return answer.notices(CureTrial.ASKED).stream()
                .filter(notice -> notice.level() != Level.NOTE)
                .toList();
    }

    /** What a stack whose pieces lapped did not show before. */
    private static boolean hidden(Notice cured, Notice later) {
        return cured.code().equals("overlap")
                && Set.of("needs-holding", "tips", "load-too-much").contains(later.code());
    }

    @Test
    void a_cure_that_is_told_removes_its_notice_and_brings_nothing_worse() {
        Told told = new Told();
        for (long seed = 1; seed <= STACKS; seed++) {
            told.putIn(seed, FaultyStack.text(seed));
        }
        assertThat(told.cured.values().stream().mapToInt(Integer::intValue).sum())
                .isGreaterThan(STACKS);
        assertThat(told.none + told.bring).isLessThan(2 * STACKS);
        assertThat(told.cured).containsKeys("overlap", "floating-piece", "projects-too-far", "no-backing");
    }

    @Test
    void a_cure_of_nails_that_is_told_removes_its_notice_and_brings_nothing_worse() {
        Told told = new Told();
        for (long seed = 1; seed <= STACKS; seed++) {
            told.putIn(seed, FaultyStack.nailed(seed));
        }
        assertThat(told.cured).containsKeys("nail-too-short", "tool-cannot-reach", "no-backing", "tips");
    }

    /** How many cures were told and put in, by the code of their notice; and of how many problems none was. */
    private static final class Told {
        private final Map<String, Integer> cured = new TreeMap<>();
        private int none;
        private int bring;

        void putIn(long seed, String text) {
            boolean metric = FaultyStack.isMetric(seed);
            List<Notice> before = wrong(asked(text));
            for (Notice notice : before) {
                String cure = words(metric).cure(notice);
                none += cure.equals("None of the changes tried cures this.") ? 1 : 0;
                bring += cure.contains(" That alone brings another problem: ") ? 1 : 0;
                // what is typed can be read
                assertThat(cure).as("seed " + seed + ": " + text).doesNotContain("is not a length");
                if (notice.level() == Level.PROBLEM && !notice.changes().isEmpty()) {
                    cured.merge(notice.code(), 1, Integer::sum);
                    String after = edited(text, notice, words(metric));
                    List<Notice> later = wrong(asked(after));
                    String as = "seed " + seed + ": " + words(metric).message(notice) + " " + cure + "\n" + text + "\n"
                            + after;
                    assertThat(later.stream().filter(one -> same(one, notice)).map(words(metric)::message))
                            .as(as)
                            .isEmpty();
                    // what is refused is not judged yet
                    assertThat(later.stream()
                                    .filter(one -> before.get(0).level() != Level.REFUSAL)
                                    .filter(one -> !hidden(notice, one))
                                    .filter(one -> before.stream()
                                            .noneMatch(known -> alike(known, one) && asGrave(known, one)))
                                    .map(words(metric)::message))
                            .as(as)
                            .isEmpty();
                }
            }
        }

        /** Whether it goes wrong by no more than it did, but for a step of the rule or a tenth. */
        private static boolean asGrave(Notice before, Notice after) {
            double was = before.amount().map(Figure::amount).orElse(0.0);
            double is = after.amount().map(Figure::amount).orElse(0.0);
            return is <= Math.max(was + 1.0 / 16, was * 1.1);
        }

        /** Whether it is the same problem; of two rows of nails in one piece each has its own. */
        private static boolean same(Notice one, Notice other) {
            return alike(one, other) && row(one).equals(row(other));
        }

        private static Optional<Integer> row(Notice notice) {
            return notice.values().stream().anyMatch(named -> named.name().equals("nail"))
                    ? notice.mark().map(Mark::line)
                    : Optional.empty();
        }
    }

    private static String cure(String text, LengthUnit unit, String code, String piece) {
        return NoticeWords.in(unit)
                .cure(notices(text).stream()
                        .filter(notice -> notice.code().equals(code))
                        .filter(notice -> notice.piece().orElse("").equals(piece))
                        .findFirst()
                        .orElseThrow());
    }

    @Test
    void a_gap_of_a_metric_job_is_closed_to_full_contact() {
        String text = """
                units: mm
                wood: check-wood
                space: { floor: -2000, ceiling: 300, projection: 60, wall: { solid: no } }
                pieces:
                  - { name: frieze, profile: board 19 x 140, back: wall, bottom: datum }
                  - { name: cap, profile: board 19 x 89, lay: flat, back: wall, bottom: 130 }
                  - { name: bit, profile: board 19 x 38, back: 30, bottom: 170 }
                """;
        assertThat(cure(text, LengthUnit.MILLIMETER, "floating-piece", "bit"))
                .isEqualTo("Move it down 21.0 mm, or add a block.");
        assertThat(cure(text, LengthUnit.MILLIMETER, "overlap", "cap")).isEqualTo("Rabbet it, or move it up 10.0 mm.");
        assertThat(cure(text, LengthUnit.MILLIMETER, "projects-too-far", "")).isEqualTo("'cap' could be 60 mm wide.");
        Notice floats = notices(text).stream()
                .filter(notice -> notice.code().equals("floating-piece"))
                .findFirst()
                .orElseThrow();
        String after = edited(text, floats, words(true));
        assertThat(after).isEqualTo(text.replace("bottom: 170", "bottom: 170 - 21.0 mm"));
        assertThat(Bench.of(after).contacts()).contains("cap carries bit 0.748");
    }

    @Test
    void a_gap_between_sixteenths_is_not_closed_too_far() {
        String gap = """
                wood: check-wood
                space: { wall: { solid: no } }
                pieces:
                  - { name: case, kind: framing, section: [out 10, up 20], face: wall, top: 0 }
                  - { name: bed, profile: board 1 x 1, back: -4, bottom: 1-3/32 }
                """;
        assertThat(cure(gap, LengthUnit.INCH, "floating-piece", "bed"))
                .isEqualTo("Move it down 1-3/32, or add a block.");
    }

    @Test
    void inches_in_a_document_of_feet_carry_their_mark() {
        String feet = """
                units: ft
                wood: check-wood
                space: { wall: { solid: no } }
                pieces:
                  - { name: case, kind: framing, section: [out 1, up 2], face: wall, top: 0 }
                  - { name: bed, profile: board 1" x 1", back: -4", bottom: 1/2 }
                """;
        assertThat(cure(feet, LengthUnit.FOOT, "floating-piece", "bed")).isEqualTo("Move it down 6\", or add a block.");
        Notice floats = notices(feet).stream()
                .filter(notice -> notice.code().equals("floating-piece"))
                .findFirst()
                .orElseThrow();
        assertThat(notices(edited(feet, floats, NoticeWords.in(LengthUnit.FOOT))))
                .extracting(Notice::code)
                .doesNotContain("floating-piece");
    }

    private static void saysNoInchesIn(boolean metric, Notice notice) {
        if (metric) {
            assertThat(words(true).message(notice) + " " + words(true).cure(notice))
                    .doesNotContainPattern("\\d/\\d");
        }
    }

    /** Each size that a change types stands in the words of the cure, signs as printed. */
    private static void saysItsSizes(Notice notice, NoticeWords words) {
        for (Change change : notice.changes()) {
            List<String> sizes = change.value().values().stream()
                    .map(Named::value)
                    .filter(Figure.class::isInstance)
                    .map(words.printer()::print)
                    .toList();
            assertThat(sizes).anySatisfy(size -> assertThat(words.cure(notice)).contains(size));
        }
    }
}
