package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.judge.bound.FigureBound;
import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.AskedFigure;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.Musts;
import buildup.engine.section.free.FreeSize;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Document;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random stacks with free sizes, random boxes of their choices, and random stacks of these boxes: no figure lies beyond
 * what is said of its box. More with {@code -Dbuildup.bound.stacks=300 -Dbuildup.bound.boxes=40}, others with
 * {@code -Dbuildup.bound.seed=44}.
 */
class StackBoundsTest {
    private static final int STACKS = Integer.getInteger("buildup.bound.stacks", 2);
    private static final int BOXES = Integer.getInteger("buildup.bound.boxes", 4);
    private static final int IN_EACH = 5;

    /** Far more than rounding leaves. */
    private static final double ROUNDING = 1e-8;

    private final SplittableRandom random = new SplittableRandom(Integer.getInteger("buildup.bound.seed", 43));
    private final Map<String, Integer> told = new TreeMap<>();

    private String some(String... texts) {
        return texts[random.nextInt(texts.length)];
    }

    private String between(int least, int most) {
        int from = least + random.nextInt(2);
        int to = from + 1 + random.nextInt(Math.max(1, most - from));
        return "between " + from + "/8 and " + to + "/8 by 1/" + some("8", "16", "32");
    }

    /** A cornice in which much is left to chance. */
    private String cornice() {
        List<String> pieces = new ArrayList<>();
        String out = some("no", "'one of [no, yes]'", "'one of [yes, no]'");
        if (random.nextInt(4) > 0) {
            pieces.add("{ name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 6-1/4 }");
        }
        pieces.add("{ name: bead, profile: board bead x 3/4, back: wall, bottom: datum }");
        pieces.add("{ name: frieze, profile: board 3/4 x high, back: wall, bottom: bead.top }");
        if (random.nextInt(2) > 0) {
            pieces.add("{ name: necking, section: [out 1/8, "
                    + some("up 3/8", "up 1/8, cove 3/8", "cove 1/4, up 1/8", "bead up 3/8")
                    + "], back: "
                    + some("frieze.face", "frieze.face", "frieze.face - 1/16", "frieze.face + 0.002")
                    + ", bottom: frieze.bottom + " + some("lap", "1", "width - 1") + ", leave-out: " + out + " }");
        }
        pieces.add("{ name: bed, profile: '"
                + some(
                        "any ogee-bed",
                        "one of [cove-bed 1-1/4 x 1-3/8, cove-bed 1 x 1-1/8]",
                        "board 3/4 x 1-1/2",
                        "one of [board 3/4 x 1-1/2, board 1 x 1]")
                + "', back: frieze.face, top: "
                + some("frieze.top", "frieze.top", "frieze.top - lap") + " }");
        pieces.add(
                "{ name: soffit, kind: nailer, profile: board 3/4 x width, lay: flat, back: wall, bottom: frieze.top }");
        pieces.add("{ name: fascia, profile: board 3/4 x " + some("2", "high - 3", "over + 2") + ", back: "
                + some("soffit.face", "soffit.face", "soffit.face - lap", "soffit.face - 3/4")
                + ", bottom: soffit.bottom - lip"
                + some("", "", ", top: soffit.top + 5/8") + " }");
        if (random.nextInt(2) > 0) {
            pieces.add(
                    "{ name: block, kind: nailer, section: [out 1, up 1/2], face: fascia.back, bottom: soffit.top, leave-out: "
                            + out + " }");
        }
        pieces.add("{ name: crown, profile: "
                + some(
                        "plain-crown 3-1/4",
                        "'any cyma-crown'",
                        "'any ogee-crown'",
                        "'any cove-crown'",
                        "board 1 x 2-1/2",
                        "cove-bed 1-1/4 x 1-3/8")
                + ", back: fascia.face, bottom: fascia.top - " + some("lap", "3/8") + " }");
        pieces.add(
                "{ name: cap, profile: board 3/4 x 9, lay: flat, back: wall, face: crown.face + over, bottom: crown.top }");
        if (random.nextInt(4) > 0) {
            pieces.add("{ name: rider, "
                    + some(
                            "section: [out 1, up 1/4, cove 1/4, up 1/8]",
                            "section: [out 1/4, bead up 1/4, out 1/2, up 1/2]",
                            "profile: 'one of [cove-bed 1 x 1-1/8, cove-bed 1-1/4 x 1-3/8]'")
                    + ", back: cap.face - lap, bottom: cap.top" + some("", " - 1/512", " + over") + " }");
        }
        return """
                title: Chance
                wood: yellow-poplar
                sizes:
                  lip: %s
                  width: %s
                  over: %s
                  lap: %s
                  bead: %s
                  high: %s
                space: { floor: -84, ceiling: 14, projection: 8, wall: { solid: %s } }
                eyes:
                  - { name: standing, distance: 72, height: floor + 60 }
                  - { name: aloft, distance: 90, height: 10 }
                lights:
                  - { name: raking, altitude: %s, azimuth: 40 }
                  - { name: lamp, at: { distance: %s, height: %s }, width: 6 }
                %s
                pieces:
                """.formatted(
                                between(1, 9),
                                between(16, 36),
                                between(-2, 5).replace("-1/8", "0").replace("-2/8", "0"),
                                between(1, 6),
                                between(5, 10),
                                between(32, 48),
                                some("no", "yes"),
                                some("12", "24", "40", "55"),
                                some("24", "60", "90"),
                                some("-20", "4", "12", "16"),
                                out.equals("no") && random.nextInt(4) > 0 ? parts(pieces) : "")
                + pieces.stream().map(piece -> "  - " + piece + "\n").reduce("", String::concat);
    }

    /** Every piece in a part: what is thick at the foot, what stands over it, and all the rest. */
    private static String parts(List<String> pieces) {
        List<String> names = pieces.stream()
                .map(piece -> piece.replaceAll("(?s)^\\{ name: (\\S+),.*", "$1"))
                .filter(name -> !List.of("case", "bead", "frieze", "necking").contains(name))
                .toList();
        boolean necking = pieces.stream().anyMatch(piece -> piece.contains("name: necking"));
        return "parts: { architrave: bead, frieze: [frieze" + (necking ? ", necking" : "") + "], cornice: " + names
                + " }";
    }

    private static List<String> members(Answers start, String piece) {
        return start.section().members().stream()
                .filter(member -> start.section().name(member.body()).equals(piece))
                .map(member -> member.member())
                .distinct()
                .toList();
    }

    /** Both ends of every figure that a line may ask for. */
    private static List<MustRule> rules(Answers start) {
        List<String> asked = new ArrayList<>(List.of(
                "height",
                "projection",
                "trimHeight",
                "trimProjection",
                "area",
                "weight",
                "face",
                "back",
                "dark of case.face in raking",
                "length",
                "left under the ceiling",
                "left of the projection",
                "off in Ionic",
                "share of the height"));
        for (String part : List.of("architrave", "frieze", "cornice")) {
            asked.add("share of the height of " + part);
            asked.add("height of the part of " + part);
        }
        List<String> names = start.blocks().stack().pieces().stream()
                .map(piece -> piece.name())
                .toList();
        for (String name : names) {
            for (String figure :
                    List.of("top", "bottom", "face", "back", "bears on", "reveal", "seen", "exposed", "hidden")) {
                asked.add(figure + " of " + name);
            }
            for (String member : members(start, name)) {
                for (String figure : List.of("length", "bottom", "top", "projection")) {
                    asked.add(figure + " of " + name + "." + member);
                }
                for (String light : List.of("raking", "lamp")) {
                    asked.add("share of " + name + "." + member + " in " + light);
                    asked.add("dark of " + name + "." + member + " in " + light);
                    asked.add("overhang of " + name + "." + member + " in " + light);
                    asked.add("depth of " + name + "." + member + " in " + light);
                }
            }
            for (String light : List.of("raking", "lamp")) {
                asked.add("share of " + name + " in " + light);
                asked.add("overhang of " + name + " in " + light);
                asked.add("depth of " + name + " in " + light);
            }
            asked.add("length of " + name);
            asked.add("seen of " + name + " from standing");
            asked.add("hidden of " + name + " from aloft");
            asked.add("area of " + name);
            names.forEach(other -> asked.addAll(
                    List.of("reveal of " + name + " over " + other, "length of " + name + " over " + other)));
        }
        List<Scalar> lines = new ArrayList<>();
        for (String figure : asked) {
            boolean share = figure.startsWith("share") || figure.startsWith("hidden") || figure.startsWith("off");
            String value =
                    share ? "50 %" : figure.startsWith("area") ? "9 sq in" : figure.equals("weight") ? "3" : "1/2";
            lines.add(new Scalar(figure + " <= " + value, new Mark("", 1, 1)));
            lines.add(new Scalar(figure + " >= " + value, new Mark("", 1, 1)));
        }
        List<MustRule> rules = new ArrayList<>();
        List<Sheet> sheets = start.sheets();
        // a name that no sheet of today's stack holds is asked of in vain
        lines.forEach(line -> rules.addAll(
                Musts.rules(List.of(line), sheets, start.blocks().stack().lengths(), new Notices())));
        return rules;
    }

    private ChoiceBox box(List<FreeSize> sizes) {
        ChoiceBox box = ChoiceBox.whole(sizes);
        for (int i = 0; i < sizes.size(); i++) {
            int count = box.width(i);
            int from = random.nextInt(count);
            int to = random.nextInt(3) == 0 ? from : from + random.nextInt(count - from);
            box = box.with(i, from, to);
        }
        return box;
    }

    @Tag("sampled")
    @Test
    void no_figure_lies_beyond_what_is_said_of_its_box() {
        Catalog catalog = Catalog.builtIn();
        for (int stack = 0; stack < STACKS; stack++) {
            String yaml = cornice();
            Document document = SearchedTest.document(yaml);
            FreeSizes free = FreeSizes.read(document, catalog::usualCalls, new Notices());
            Optional<Answers> start = Answer.of(document, catalog).known();
            if (start.isEmpty()) {
                continue;
            }
            List<MustRule> rules = rules(start.get());
            StackBounds bounds = StackBounds.of(document, free, catalog).orElseThrow();
            List<StackBounds.Bounding> figures =
                    bounds.of(rules.stream().map(MustRule::figure).toList());
            SearchJudge whole =
                    new SearchJudge(free, catalog, rules, List.of(), SearchJudge.groups(start.get()), List.of());
            QuickJudge judge = new QuickJudge(
                    whole,
                    new StackVariants(document, free, catalog),
                    rules,
                    List.of(),
                    QuickAsking.of(start.get(), document, free),
                    () -> Optional.empty());
            Told all = new Told(new ArrayList<>(), new ArrayList<>());
            for (int i = 0; i < BOXES; i++) {
                holds(yaml, box(free.sizes()), free, rules, figures, judge, all);
            }
            all.ruledOut(rules).forEach(figure -> told.merge(figure, 1, Integer::sum));
        }
        for (String figure : List.of(
                "totals height most",
                "totals projection least",
                "totals weightPerFoot most",
                "totals area least",
                "pieces top most",
                "space ceilingLeft most",
                "reveals amount least",
                "pieces area most",
                "darkness share most",
                "darkness dark most",
                "darkness dark least",
                "of a molding in raking most",
                "shadows overhang most",
                "shadows overhang least",
                "shadows depth most",
                "shadows depth least",
                "members length most",
                "members length least",
                "members top most",
                "members projection least")) {
            assertThat(told.getOrDefault(figure, 0))
                    .as("stacks of which a bound of " + figure + " rules out a box, among " + told)
                    .isPositive();
        }
    }

    /** What was said of the boxes of one document, and what its stacks have: one list each for every box or stack. */
    private record Told(List<List<FigureBound>> bounds, List<List<MustResult>> musts) {
        /**
         * What the rules are about of which a bound rules out some box: a line that asks as much as some stack has, and is
         * met by it, is missed by all of that box.
         */
        Set<String> ruledOut(List<MustRule> rules) {
            Set<String> ruledOut = new TreeSet<>();
            for (int i = 0; i < rules.size(); i++) {
                int rule = i;
                boolean most = rules.get(i).relation() == MustRule.Relation.AT_MOST;
                double[] figures = musts.stream()
                        .map(stack -> stack.get(rule).figure())
                        .filter(OptionalDouble::isPresent)
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .sorted()
                        .toArray();
                boolean out = figures.length > 0
                        && bounds.stream()
                                .map(box -> box.get(rule))
                                .anyMatch(bound -> most
                                        ? bound.greatest() > figures[0] + ROUNDING
                                        : bound.least() < figures[figures.length - 1] - ROUNDING);
                if (out) {
                    String side = most ? " most" : " least";
                    AskedFigure asked = rules.get(i).figure();
                    ruledOut.add(asked.sheet() + " " + asked.column() + side);
                    String member = asked.named().getOrDefault("member", "face");
                    if (!member.equals("face") && asked.sheet().equals("darkness")) {
                        ruledOut.add("of a molding in " + asked.named().get("light") + side);
                    }
                }
            }
            return ruledOut;
        }
    }

    private void holds(
            String yaml,
            ChoiceBox box,
            FreeSizes free,
            List<MustRule> rules,
            List<StackBounds.Bounding> figures,
            QuickJudge judge,
            Told told) {
        List<FigureBound> bounds =
                figures.stream().map(figure -> figure.over(box)).toList();
        told.bounds.add(bounds);
        for (int i = 0; i < IN_EACH; i++) {
            int[] choices = box.at(random.nextLong(box.count().longValueExact()));
            List<String> texts = new ArrayList<>();
            for (int size = 0; size < choices.length; size++) {
                texts.add(free.sizes().get(size).choices().get(choices[size]));
            }
            StackJudgment judged = judge.judge(texts);
            if (judged.built()) {
                told.musts.add(judged.musts());
            }
            for (int rule = 0; judged.built() && rule < rules.size(); rule++) {
                OptionalDouble figure = judged.musts().get(rule).figure();
                boolean most = rules.get(rule).relation() == MustRule.Relation.AT_MOST;
                double limit =
                        most ? bounds.get(rule).greatest() : bounds.get(rule).least();
                if (bounds.get(rule).missed(rules.get(rule))) {
                    assertThat(judged.musts().get(rule).met())
                            .as(
                                    "'%s' is ruled out, with %s in %s",
                                    rules.get(rule).text(), texts, yaml)
                            .isFalse();
                }
                if (figure.isPresent()) {
                    double beyond = most ? limit - figure.getAsDouble() : figure.getAsDouble() - limit;
                    assertThat(beyond)
                            .as(
                                    "'%s' is %s, and its box says %s, with %s in %s",
                                    rules.get(rule).text(), figure, limit, texts, yaml)
                            .isLessThanOrEqualTo(ROUNDING);
                }
            }
        }
    }
}
