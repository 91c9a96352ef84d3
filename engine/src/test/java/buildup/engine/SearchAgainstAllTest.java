package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.search.Answered;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchResult;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Small spaces are searched, and every stack of them is written out and asked by itself: the smallest change, the best by
 * one wish and the answer "none" must be the same, with all tried and with what a third of the tries proves. More of them with {@code -Dbuildup.search.spaces=200}.
 */
class SearchAgainstAllTest {
    private static final int SPACES = Integer.getInteger("buildup.search.spaces", 4);
    private static final String[] EIGHTHS = {"1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8", "1"};

    /** A stack of a frieze, a soffit and a fascia, three sizes of it to be filled in. */
    private static String stack(String lip, String width, String high, String rules) {
        return """
                title: Small
                wood: yellow-poplar
                sizes:
                  lip: %s
                  width: %s
                  high: %s
                space: { floor: -84, ceiling: 24 }
                eyes: [{ name: seated, distance: 72, height: floor + 46 }]
                lights: [{ name: raking, altitude: 45, azimuth: 0 }]
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
                  - { name: soffit, kind: nailer, profile: board 3/4 x width, lay: flat, back: wall, bottom: frieze.top }
                  - { name: fascia, profile: board 3/4 x high, back: soffit.face, bottom: soffit.bottom - lip }
                %s""".formatted(lip, width, high, rules);
    }

    private record Drawn(List<String> lips, List<String> widths, List<String> highs, int[] now, String rules) {
        String searched() {
            return stack(free(lips, now[0]), free(widths, now[1]), free(highs, now[2]), rules);
        }

        private static String free(List<String> choices, int now) {
            return "one of [" + String.join(", ", choices) + "], now " + choices.get(now);
        }

        String at(int lip, int width, int high) {
            return stack(lips.get(lip), widths.get(width), highs.get(high), rules);
        }
    }

    private static Drawn drawn(Random random) {
        List<String> lips = some(random, 0);
        List<String> widths = some(random, 1 + random.nextInt(3));
        List<String> highs = some(random, 1 + random.nextInt(2));
        String rules = "must:\n  - share of frieze.face in raking <= " + (20 + random.nextInt(70))
                + " %\n  - height <= "
                + (6 + random.nextInt(3)) + "-1/8\n  - seen of soffit from seated <= " + EIGHTHS[random.nextInt(8)]
                + "\nwish: [projection near " + (2 + random.nextInt(3)) + "-1/16]\n";
        int[] now = {random.nextInt(lips.size()), random.nextInt(widths.size()), random.nextInt(highs.size())};
        return new Drawn(lips, widths, highs, now, rules);
    }

    private static List<String> some(Random random, int whole) {
        List<String> some = new ArrayList<>();
        int first = random.nextInt(3);
        int count = 1 + random.nextInt(4);
        for (int i = first; i < first + count; i++) {
            some.add(whole == 0 ? EIGHTHS[i] : whole + "-" + EIGHTHS[i]);
        }
        return some;
    }

    private record Asked(int[] choice, boolean meets, double projection, int changed, double change) {}

    private static Set<String> faults(Answer answer) {
        Set<String> faults = new HashSet<>();
        for (Notice notice : answer.notices()) {
            if (notice.level() != Level.NOTE && !notice.code().equals("must-not-met")) {
                faults.add(notice.code() + " " + notice.piece().orElse(""));
            }
        }
        return faults;
    }

    private static double inches(String text) {
        String[] parts = text.split("[-/]");
        return parts.length == 3
                ? Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]) / Double.parseDouble(parts[2])
                : parts.length == 2
                        ? Double.parseDouble(parts[0]) / Double.parseDouble(parts[1])
                        : Double.parseDouble(parts[0]);
    }

    private static List<Asked> all(Drawn drawn) {
        Set<String> today = faults(ask(drawn.at(drawn.now[0], drawn.now[1], drawn.now[2])));
        List<Asked> all = new ArrayList<>();
        for (int i = 0; i < drawn.lips.size(); i++) {
            for (int j = 0; j < drawn.widths.size(); j++) {
                for (int k = 0; k < drawn.highs.size(); k++) {
                    Answer answer = ask(drawn.at(i, j, k));
                    if (answer.known().isPresent()) {
                        boolean meets = answer.known().get().must().stream().allMatch(MustResult::met)
                                && today.containsAll(faults(answer));
                        int[] choice = {i, j, k};
                        all.add(new Asked(
                                choice,
                                meets,
                                answer.known().get().section().totals().projection(),
                                changed(drawn, choice),
                                change(drawn, choice)));
                    }
                }
            }
        }
        return all;
    }

    private static int changed(Drawn drawn, int[] choice) {
        int changed = 0;
        for (int i = 0; i < 3; i++) {
            changed += choice[i] == drawn.now[i] ? 0 : 1;
        }
        return changed;
    }

    private static double change(Drawn drawn, int[] choice) {
        List<List<String>> sizes = List.of(drawn.lips, drawn.widths, drawn.highs);
        double change = 0;
        for (int i = 0; i < 3; i++) {
            change += Math.abs(
                    inches(sizes.get(i).get(choice[i])) - inches(sizes.get(i).get(drawn.now[i])));
        }
        return change;
    }

    private static Answer ask(String yaml) {
        return Answer.of(SearchedTest.document(yaml), Catalog.builtIn());
    }

    private static SearchResult search(Drawn drawn, long tries) {
        return SearchedTest.search(drawn.searched(), SearchLimits.of(tries), Optional.empty())
                .result()
                .orElseThrow();
    }

    @Tag("sampled")
    @Test
    void a_search_finds_what_asking_every_stack_by_itself_finds() {
        Random random = new Random(20);
        int none = 0;
        int provedByBounds = 0;
        for (int i = 0; i < SPACES; i++) {
            Drawn drawn = drawn(random);
            List<Asked> meeting = all(drawn).stream().filter(Asked::meets).toList();
            none += meeting.isEmpty() ? 1 : 0;
            SearchResult all = search(drawn, 1000);
            assertThat(all.proved()).isTrue();
            assertThat(all.smallest().isPresent()).as(drawn.toString()).isEqualTo(!meeting.isEmpty());
            proves(drawn, meeting, all);
            SearchResult some = search(drawn, Math.max(1, all.judged() / 3));
            proves(drawn, meeting, some);
            provedByBounds += some.proved() || some.nothingLeft() ? 1 : 0;
        }
        assertThat(none).as("some have no answer, and some have").isBetween(1, SPACES - 1);
        assertThat(provedByBounds)
                .as("some are proved with a third of all tried")
                .isPositive();
    }

    /** What a search says to be proved is so among all stacks that meet every line. */
    private static void proves(Drawn drawn, List<Asked> meeting, SearchResult found) {
        if (found.proved() || found.nothingLeft()) {
            assertThat(found.best().isEmpty()).as(drawn.toString()).isEqualTo(meeting.isEmpty());
        }
        if (found.proved() && !meeting.isEmpty()) {
            double target = Double.parseDouble(drawn.rules.replaceAll("(?s).*near (\\d)-1/16.*", "$1")) + 1.0 / 16;
            double nearest = meeting.stream()
                    .mapToDouble(one -> Math.abs(one.projection() - target))
                    .min()
                    .orElseThrow();
            List<Integer> best = found.best().get(0).candidate().choices();
            assertThat(found.best().get(0).candidate().judged().wishes().get(0).orElseThrow())
                    .as(() -> drawn.searched() + best + faults(ask(drawn.at(best.get(0), best.get(1), best.get(2))))
                            + " today " + faults(ask(drawn.at(drawn.now[0], drawn.now[1], drawn.now[2]))))
                    .isCloseTo(nearest, within(1e-9));
        }
        if (found.smallestProved()) {
            Answered smallest = found.smallest().orElseThrow();
            int fewest = meeting.stream().mapToInt(Asked::changed).min().orElseThrow();
            assertThat(smallest.candidate().changed()).as(drawn.toString()).isEqualTo(fewest);
            double least = meeting.stream()
                    .filter(one -> one.changed() == fewest)
                    .mapToDouble(Asked::change)
                    .min()
                    .orElseThrow();
            assertThat(smallest.candidate().change()).as(drawn.toString()).isCloseTo(least, within(1e-9));
        }
    }
}
