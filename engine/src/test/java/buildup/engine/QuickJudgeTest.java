package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.QuickFigures.Depth;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.search.StackSearch;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Document;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Figures that outlines alone tell are those of the whole answer. More stacks with {@code -Dbuildup.quick.stacks=2000}. */
@Tag("sampled")
class QuickJudgeTest {
    private static final int STACKS = Integer.getInteger("buildup.quick.stacks", 8);

    private static final String CORNICE = """
            title: Cornice
            wood: yellow-poplar
            sizes:
              lip: between 1/8 and 1-1/8 by 1/16, now 1/4
              width: between 2-1/2 and 4-1/2 by 1/8, now 3-1/2
              over: between 1/8 and 5/8 by 1/8, now 3/8
            space: { floor: -84, ceiling: 12, projection: 8, wall: { solid: SOLID } }
            eyes:
              - { name: standing, distance: 72, height: floor + 60 }
              - { name: seated, distance: 72, height: floor + 46 }
            lights:
              - { name: raking, altitude: 24, azimuth: 40 }
              - { name: lamp, at: { distance: 60, height: 4 }, width: 6 }
            pieces:
              - { name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 6-1/4, leave-out: LEFT }
              - { name: bead, profile: board 1 x 3/4, back: wall, bottom: datum }
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: bead.top }
              - { name: bed, profile: 'one of [cove-bed 1-1/4 x 1-3/8, cove-bed 1 x 1-1/4]', back: frieze.face, top: frieze.top }
              - { name: soffit, kind: nailer, profile: board 3/4 x width, lay: flat, back: wall, bottom: frieze.top }
              - { name: fascia, profile: board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - lip }
              - { name: block, kind: nailer, section: [out 1, up 1/2], face: fascia.back, bottom: soffit.top, leave-out: 'one of [yes, no]' }
              - { name: crown, profile: plain-crown 3-1/4, back: fascia.face, bottom: fascia.top - lip }
              - { name: cap, profile: board 3/4 x 8, lay: flat, back: wall, face: crown.face + over, bottom: crown.top }
            """;

    /** The lines that ask for each figure of each sheet, whatever it is of. */
    private static List<MustRule> everyFigure(Answers answers, QuickAsking asking) {
        List<Scalar> lines = new ArrayList<>();
        for (Musts.Askable figure : Musts.askable(answers.sheets())) {
            lines.add(new Scalar((figure.word() + " <= 1 " + figure.unit()).strip(), new Mark("", 1, 1)));
        }
        lines.add(new Scalar("share of frieze.face in raking <= 50 %", new Mark("", 1, 1)));
        lines.add(new Scalar("seen of soffit from seated <= 1/4", new Mark("", 1, 1)));
        lines.add(new Scalar("seen of cap from seated = 0", new Mark("", 1, 1)));
        lines.add(new Scalar("bears on of cap >= 1/4", new Mark("", 1, 1)));
        // shadows that end on a face, that cover it, and that it has none of
        for (String on : List.of("frieze.face", "fascia.face", "cap.face", "crown", "frieze", "block", "bed")) {
            for (String light : List.of("raking", "lamp")) {
                lines.add(new Scalar("depth of " + on + " in " + light + " <= 2", new Mark("", 1, 1)));
                lines.add(new Scalar("overhang of " + on + " in " + light + " <= 1", new Mark("", 1, 1)));
            }
        }
        return Musts.rules(lines, answers.sheets(), answers.blocks().stack().lengths(), new Notices()).stream()
                .filter(rule -> QuickFigures.depth(rule.figure(), asking) != Depth.ALL)
                .toList();
    }

    private static void sameFigures(String yaml) {
        Document document = SearchedTest.document(yaml);
        Catalog catalog = Catalog.builtIn();
        FreeSizes free = FreeSizes.read(document, catalog::usualCalls, new Notices());
        Answers start = Answer.of(document, catalog).known().orElseThrow();
        QuickAsking asking = QuickAsking.of(start, document, free);
        List<MustRule> rules = everyFigure(start, asking);
        Set<Depth> depths = EnumSet.noneOf(Depth.class);
        rules.forEach(rule -> depths.add(QuickFigures.depth(rule.figure(), asking)));
        assertThat(depths).contains(Depth.BOXES, Depth.CONTACTS, Depth.WALK, Depth.SIGHT, Depth.LIGHT);
        SearchJudge whole = new SearchJudge(free, catalog, rules, List.of(), SearchJudge.groups(start), List.of());
        QuickJudge quick = new QuickJudge(
                whole, new StackVariants(document, free, catalog), rules, List.of(), asking, () -> Optional.empty());
        long count = StackSearch.count(free.sizes()).longValueExact();
        SplittableRandom random = new SplittableRandom(20);
        for (int i = 0; i < STACKS; i++) {
            List<String> texts = StackSearch.texts(free.sizes(), BigInteger.valueOf(random.nextLong(count)));
            same(texts, quick.judge(texts), whole.judge(texts));
            StackJudgment dropped = quick.judge(texts, 0);
            assertThat(dropped.dropped())
                    .isEqualTo(quick.judge(texts).musts().stream().anyMatch(must -> !must.met()));
        }
        assertThat(quick.composed()).isLessThan(STACKS);
    }

    private static void same(List<String> texts, StackJudgment quick, StackJudgment whole) {
        assertThat(quick.built()).as("%s", texts).isEqualTo(whole.built());
        for (int i = 0; i < whole.musts().size(); i++) {
            MustResult one = quick.musts().get(i);
            MustResult other = whole.musts().get(i);
            assertThat(one.figure().isPresent())
                    .as("%s %s", texts, one.rule())
                    .isEqualTo(other.figure().isPresent());
            assertThat(one.met()).as("%s %s", texts, one.rule()).isEqualTo(other.met());
            assertThat(one.figure().orElse(0))
                    .as("%s %s", texts, one.rule())
                    .isCloseTo(other.figure().orElse(0), within(1e-9));
        }
    }

    @Test
    void in_front_of_a_case_each_figure_is_that_of_the_whole_answer() {
        sameFigures(CORNICE.replace("SOLID", "no").replace("LEFT", "no"));
    }

    @Test
    void on_a_solid_wall_each_figure_is_that_of_the_whole_answer() {
        sameFigures(CORNICE.replace("SOLID", "yes").replace("LEFT", "yes"));
    }

    /** The parts of the trim and how far they are off an order, where no piece may be left out. */
    @Test
    void of_named_parts_each_figure_is_that_of_the_whole_answer() {
        String parts = "parts: { architrave: bead, frieze: frieze, cornice: [bed, soffit, fascia, crown, cap] }\n";
        String yaml =
                parts + CORNICE.replace("SOLID", "no").replace("LEFT", "no").replace("'one of [yes, no]'", "yes");
        Document document = SearchedTest.document(yaml);
        FreeSizes free = FreeSizes.read(document, Catalog.builtIn()::usualCalls, new Notices());
        Answers start = Answer.of(document, Catalog.builtIn()).known().orElseThrow();
        Set<String> asked = new TreeSet<>();
        everyFigure(start, QuickAsking.of(start, document, free))
                .forEach(rule ->
                        asked.add(rule.figure().sheet() + " " + rule.figure().column()));
        assertThat(asked).contains("proportion.parts share", "proportion.orders off");
        sameFigures(yaml);
    }
}
