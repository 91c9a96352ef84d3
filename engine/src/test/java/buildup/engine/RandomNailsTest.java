package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.support.LeastRow;
import buildup.engine.hold.support.Trust;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What holds of any stack, however its nails are driven. */
class RandomNailsTest {
    private static final int STACKS = Integer.getInteger("buildup.nails", 12);

    private static void each(BiConsumer<String, Answers> told) {
        for (long seed = 1; seed <= STACKS; seed++) {
            String text = FaultyStack.nailed(seed);
            answers(text).ifPresent(answers -> told.accept(text, answers));
        }
    }

    /** Ten times as many, and nothing is proposed for them. */
    private static void eachOfMany(BiConsumer<String, Answers> told) {
        for (long seed = 1; seed <= 10L * STACKS; seed++) {
            String text = FaultyStack.nailed(seed);
            untried(text).ifPresent(answers -> told.accept(text, answers));
        }
    }

    private static Document document(String text) {
        return DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), new Notices())
                .orElseThrow();
    }

    private static Optional<Answers> untried(String text) {
        return Answer.untried(document(text), Bench.checkCatalog(), new Claims(), new Notices(), Optional.empty())
                .known();
    }

    private static Optional<Answers> answers(String text) {
        return Answer.of(document(text), Bench.checkCatalog()).known();
    }

    private static boolean sold(Fixed nail) {
        Fastener.Cut use = nail.fastening().use();
        return use.fastener().lengths().stream()
                .anyMatch(length -> Math.abs(length.toInches() - use.length().toInches()) < 1.0 / 64);
    }

    @Test
    void what_is_proposed_is_sold_and_its_point_ends_in_wood_with_some_before_it() {
        int[] rows = {0};
        each((text, answers) -> {
            List<LeastRow> least = answers.support().proposed();
            List<Fixed> nails = new ArrayList<>(
                    answers.proposals().stream().map(one -> one.fixed()).toList());
            for (LeastRow row : least) {
                nails.add(row.nail());
                row.others().forEach(other -> nails.add(other.nail()));
            }
            rows[0] += nails.size();
            for (Fixed nail : nails) {
                assertThat(sold(nail)).as(text + nail).isTrue();
                assertThat(nail.sound()).as(text + nail).isTrue();
                assertThat(nail.check(Check.Rule.FAR_FACE).map(Check::has).orElse(1.0))
                        .as(text + nail)
                        .isGreaterThan(1.0 / 8 - 1e-9);
            }
        });
        assertThat(rows[0]).isGreaterThan(STACKS);
    }

    @Test
    void a_cure_names_no_nail_that_is_not_sold() {
        Pattern use = Pattern.compile("(15 ga|16 ga|18 ga|23 ga|screw \\d+|trim screw \\d+) x (\\S+)");
        each((text, answers) -> {
            List<Notice> notices = answers.notices();
            for (Notice notice : notices) {
                String cure = notice.cure().map(FigurePrinter.INCHES::print).orElse("");
                Matcher matcher = use.matcher(cure.replaceAll("\\. That alone brings.*", ""));
                while (matcher.find()) {
                    String name = matcher.group(1);
                    String length = matcher.group(2).replaceAll("[.,;)]+$", "");
                    assertThat(Bench.checkCatalog().fasteners().stream()
                                    .filter(fastener -> fastener.name().equals(name))
                                    .flatMap(fastener -> fastener.cuts().stream())
                                    .map(Fastener.Cut::call))
                            .as(text + cure)
                            .contains(name + " x " + length);
                }
            }
        });
    }

    @Test
    void wood_beside_a_nail_is_a_figure_of_its_piece_or_none() {
        eachOfMany((text, answers) -> answers.fixed()
                .forEach(nail -> assertThat(nail.edge().orElse(0))
                        .as(text + nail.fastening().name())
                        .isLessThan(12)));
    }

    @Test
    void rows_that_come_as_near_as_their_shanks_are_thick_and_stand_side_by_side_are_told() {
        int[] crossings = {0};
        eachOfMany((text, answers) -> {
            List<Fixed> all = answers.fixed();
            Set<Integer> told = answers.notices().stream()
                    .filter(notice -> notice.code().equals("nails-that-cross"))
                    .map(notice -> notice.mark().orElseThrow().line())
                    .collect(Collectors.toSet());
            for (int i = 0; i < all.size(); i++) {
                for (int j = i + 1; j < all.size(); j++) {
                    Fixed one = all.get(i);
                    Fixed other = all.get(j);
                    // all rows of these stacks start together, so each pair stands side by side where both begin
                    double clear = (thick(one) + thick(other)) / 2;
                    double near = near(one, other);
                    if (near < clear - 0.01) {
                        crossings[0]++;
                        assertThat(told)
                                .as(text + one.fastening().name() + " and "
                                        + other.fastening().name())
                                .contains(other.fastening().mark().line());
                    }
                }
            }
        });
        assertThat(crossings[0]).isGreaterThan(STACKS / 10);
    }

    private static double thick(Fixed nail) {
        return nail.fastening().use().fastener().diameter().toInches();
    }

    /** The least distance between points of two shanks, a hundredth apart. */
    private static double near(Fixed one, Fixed other) {
        double least = Double.POSITIVE_INFINITY;
        for (Point p : points(one)) {
            for (Point q : points(other)) {
                least = Math.min(least, p.distance(q));
            }
        }
        return least;
    }

    private static List<Point> points(Fixed nail) {
        int count = 1 + (int) (nail.drive().length() * 100);
        return IntStream.rangeClosed(0, count)
                .mapToObj(i -> nail.head().plus(nail.point().minus(nail.head()).times(i / (double) count)))
                .toList();
    }

    @Test
    void a_piece_without_nails_of_its_own_stays_what_it_was_when_others_are_nailed() {
        int[] kept = {0};
        for (long seed = 1; seed <= STACKS; seed++) {
            String text = FaultyStack.nailed(seed);
            Optional<Answers> nailed = untried(text);
            Optional<Answers> bare = untried(text.replaceAll("(?s)fastenings:.*?(?=loads:|$)", ""));
            if (nailed.isPresent() && bare.isPresent()) {
                Set<Integer> given = nailed.get().section().fastened().given();
                Set<Integer> before = fixedOnTrust(bare.get());
                before.removeAll(given);
                kept[0] += given.isEmpty() ? 0 : before.size();
                assertThat(fixedOnTrust(nailed.get())).as(text).containsAll(before);
            }
        }
        assertThat(kept[0]).isGreaterThan(STACKS / 10);
    }

    private static Set<Integer> fixedOnTrust(Answers answers) {
        return answers.support().trust().stream()
                .filter(trust ->
                        trust.why() == Trust.Why.COUNTS_AS_FIXED || trust.why() == Trust.Why.FALLS_UNLESS_FIXED)
                .map(Trust::piece)
                .collect(Collectors.toCollection(HashSet::new));
    }

    @Test
    void a_piece_pinned_into_trim_that_is_held_is_held() {
        int[] pinned = {0};
        eachOfMany((text, answers) -> {
            Section section = answers.section();
            Set<Integer> held = new HashSet<>();
            for (int body = 0; body < section.bodies().size(); body++) {
                if (section.standing(body).grounded()) {
                    held.add(body);
                }
            }
            List<Joint> joints = answers.fixed().stream()
                    .flatMap(nail -> nail.joints().stream())
                    .filter(joint -> joint.pull() > 0)
                    .toList();
            int before = -1;
            while (before != held.size()) {
                before = held.size();
                joints.stream().filter(joint -> held.contains(joint.far())).forEach(joint -> held.add(joint.near()));
            }
            for (Joint joint : joints) {
                if (held.contains(joint.far()) && section.body(joint.near()).trim()) {
                    pinned[0]++;
                    String name = section.name(joint.near());
                    assertThat(answers.notices().stream()
                                    .filter(notice -> notice.code().equals("no-backing"))
                                    .flatMap(notice -> notice.piece().stream()))
                            .as(text)
                            .doesNotContain(name);
                    assertThat(section.fastened().pinned().contains(joint.near())
                                    || section.standing(joint.near()).grounded())
                            .as(text + name)
                            .isTrue();
                }
            }
        });
        assertThat(pinned[0]).isGreaterThan(0);
    }

    @Test
    void with_the_least_row_it_stands_and_with_the_next_wider_spacing_it_falls() {
        int[] rows = {0};
        for (long seed = 1; rows[0] < Math.max(3, STACKS / 10) && seed < 20L * STACKS; seed++) {
            String text = FaultyStack.nailed(seed);
            Optional<Answers> falls = answers(text);
            if (falls.isEmpty()
                    || falls.get().support().proposed().size() != 1
                    || !falls.get().support().cured()) {
                continue;
            }
            LeastRow row = falls.get().support().proposed().get(0);
            if (row.instead().isPresent()) {
                continue;
            }
            rows[0]++;
            assertThat(untried(with(text, row, row.spacing()))
                            .orElseThrow()
                            .support()
                            .whole()
                            .stands())
                    .as(with(text, row, row.spacing()))
                    .isTrue();
            double wider = List.of(4.0, 6.0, 8.0, 12.0, 16.0).stream()
                    .filter(spacing -> spacing > row.spacing())
                    .findFirst()
                    .orElse(0.0);
            if (wider > 0) {
                assertThat(untried(with(text, row, wider))
                                .orElseThrow()
                                .support()
                                .whole()
                                .stands())
                        .as(with(text, row, wider))
                        .isFalse();
            }
        }
        assertThat(rows[0]).isGreaterThan(0);
    }

    private static String with(String text, LeastRow row, double spacing) {
        Fixed nail = row.nail();
        String line = String.format(
                Locale.ROOT,
                "  - { name: least, piece: %s, use: %s, at: { out: %.4f in, up: %.4f in }, angle: %.0f, spacing: %.1f in }%n",
                nail.fastening().piece(),
                nail.fastening().use().call() + (nail.fastening().use().call().contains(" x ") ? " in" : ""),
                nail.head().x(),
                nail.head().y(),
                nail.fastening().angle(),
                spacing);
        return text.contains("fastenings:\n")
                ? text.replace("fastenings:\n", "fastenings:\n" + line)
                : text + "fastenings:\n" + line;
    }
}
