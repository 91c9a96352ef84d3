package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.judge.bound.FigureBound;
import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.search.StackSearch;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Document;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A cornice of boards and a rider of which three sizes are free: a line that none of its stacks meets, each asked by itself,
 * is ruled out for all of them at once, and one that asks a little less, which some stack meets, is not.
 */
class BoundsRuleOutTest {
    private static final String CORNICE = """
            title: Cornice
            wood: yellow-poplar
            sizes:
              lip: between 1/4 and 3/4 by 1/4, now 1/2
              width: between 3 and 3-1/2 by 1/4, now 3-1/4
              lap: between 1/4 and 3/4 by 1/4, now 1/2
            space: { floor: -84, ceiling: 24 }
            eyes: [{ name: standing, distance: 72, height: floor + 60 }]
            lights:
              - { name: raking, altitude: 45, azimuth: 0 }
              - { name: low, altitude: 20, azimuth: 0 }
              - { name: lamp, at: { distance: 60, height: 20 } }
            parts: { architrave: [bead], frieze: [frieze], cornice: [soffit, fascia, cap, rider] }
            pieces:
              - { name: bead, profile: board 1 x 3/4, back: wall, bottom: datum }
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: bead.top }
              - { name: soffit, kind: nailer, profile: board 3/4 x width, lay: flat, back: wall, bottom: frieze.top }
              - { name: fascia, profile: board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - lip }
              - { name: cap, profile: board 3/4 x 6, lay: flat, back: wall, bottom: fascia.top }
              - { name: rider, section: [out 1, up 1/4, cove 1/4, up 1/8], back: cap.face - lap, bottom: cap.top }
            """;

    private static final Document DOCUMENT = SearchedTest.document(CORNICE);
    private static final Catalog CATALOG = Catalog.builtIn();
    private static final FreeSizes FREE = FreeSizes.read(DOCUMENT, CATALOG::usualCalls, new Notices());
    private static final Answers TODAY = Answer.of(DOCUMENT, CATALOG).known().orElseThrow();

    private static MustRule rule(String line) {
        Notices said = new Notices();
        List<MustRule> rules = Musts.rules(
                List.of(new Scalar(line, new Mark("", 1, 1))),
                TODAY.sheets(),
                TODAY.blocks().stack().lengths(),
                said);
        assertThat(rules).as(line + said.sorted()).hasSize(1);
        return rules.get(0);
    }

    private static boolean isMetBySome(MustRule rule) {
        SearchJudge whole =
                new SearchJudge(FREE, CATALOG, List.of(rule), List.of(), SearchJudge.groups(TODAY), List.of());
        StackJudge judge = new QuickJudge(
                whole,
                new StackVariants(DOCUMENT, FREE, CATALOG),
                List.of(rule),
                List.of(),
                QuickAsking.of(TODAY, DOCUMENT, FREE),
                Optional::empty);
        return LongStream.range(0, StackSearch.count(FREE.sizes()).longValueExact())
                .mapToObj(number -> judge.judge(StackSearch.texts(FREE.sizes(), BigInteger.valueOf(number))))
                .anyMatch(judged -> judged.built() && judged.musts().get(0).met());
    }

    private static FigureBound bound(MustRule rule) {
        return StackBounds.of(DOCUMENT, FREE, CATALOG)
                .orElseThrow()
                .of(List.of(rule.figure()))
                .get(0)
                .over(ChoiceBox.whole(FREE.sizes()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    height                        | <= | 8-3/4 | 9
                    projection                    | >= | 8     | 6-3/4
                    length of frieze over soffit  | >= | 1     | 3/4
                    reveal of bead over frieze    | >= | 3/8   | 1/4
                    exposed of soffit             | <= | 1/4   | 9
                    share of frieze.face in raking | >= | 95 % | 60 %
                    share of frieze.face in raking | <= | 55 % | 70 %
                    dark of frieze.face in lamp   | <= | 1/4   | 2
                    bears on of frieze            | >= | 1     | 3/4
                    bears on of rider             | >= | 1     | 3/4
                    share of the height of frieze | >= | 70 %  | 55 %
                    share of the height of frieze | <= | 45 %  | 55 %
                    share of the height of cornice | <= | 25 % | 37 %
                    height of the part of frieze  | >= | 5-1/2 | 5
                    off in Ionic                  | <= | 1 %   | 30 %
                    overhang of frieze.face in raking | <= | 2-3/4 | 3-1/4
                    overhang of frieze.face in raking | >= | 6-1/2 | 3-1/4
                    depth of frieze.face in raking | <= | 2-3/4 | 3-1/4
                    depth of frieze.face in raking | >= | 6-1/2 | 3-1/4
                    hidden of soffit from standing | >= | 99 % | 50 %
                    share of rider.cove in low    | >= | 90 % | 40 %
                    share of rider.cove in low    | <= | 20 % | 60 %
                    share of rider.cove in lamp   | <= | 5 %  | 60 %
                    """)
    void a_line_that_no_stack_meets_is_ruled_out_for_all_and_a_lesser_one_is_not(
            String figure, String relation, String missed, String met) {
        MustRule more = rule(figure + " " + relation + " " + missed);
        MustRule less = rule(figure + " " + relation + " " + met);
        assertThat(isMetBySome(more)).isFalse();
        assertThat(isMetBySome(less)).isTrue();
        assertThat(bound(more).missed(more)).as("%s", bound(more)).isTrue();
        assertThat(bound(less).missed(less)).as("%s", bound(less)).isFalse();
    }
}
