package buildup.engine;

import buildup.engine.buy.BuySheets;
import buildup.engine.hold.fixing.FixingSheets;
import buildup.engine.hold.framing.FramingSheets;
import buildup.engine.hold.order.OrderSheets;
import buildup.engine.hold.season.SeasonSheets;
import buildup.engine.hold.support.SupportSheets;
import buildup.engine.hold.tolerance.ToleranceSheets;
import buildup.engine.judge.clearance.ClearanceSheets;
import buildup.engine.judge.must.MustSheet;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.proportion.ProportionSheets;
import buildup.engine.judge.verdict.VerdictSheet;
import buildup.engine.look.joint.JointSheet;
import buildup.engine.look.light.LightSheets;
import buildup.engine.look.sight.SightSheets;
import buildup.engine.room.cope.CopeSheet;
import buildup.engine.room.surface.SurfaceSheets;
import buildup.engine.section.compose.SectionSheets;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The sheets of a stack, one a question, in the order of a report. */
public final class Sheets {
    private Sheets() {}

    /** All of them; what the document did not ask for says so itself. */
    public static List<Sheet> of(Answers answers) {
        List<Sheet> sheets = new ArrayList<>(answers.sheets());
        sheets.add(MustSheet.of(answers.must()));
        sheets.add(VerdictSheet.of(answers.verdict()));
        return List.copyOf(sheets);
    }

    /** What its outlines alone tell. */
    static List<Sheet> ofSection(Answers answers) {
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(SectionSheets.totals(answers.section()));
        sheets.add(PieceSheet.of(answers.section(), answers.backings(), answers.catalog()));
        sheets.addAll(SectionSheets.rows(answers.section()));
        return List.copyOf(sheets);
    }

    private static final List<Function<Answers, List<Sheet>>> HOLDING = List.of(
            answers -> SupportSheets.of(answers.section(), answers.support(), answers.pulls()),
            answers -> FixingSheets.of(answers.section(), answers.fixed(), answers.proposals()),
            answers -> OrderSheets.of(answers.section(), answers.order(), answers.job()));

    private static final List<Function<Answers, List<Sheet>>> LOOKING = List.of(
            answers -> LightSheets.of(answers.section(), answers.lights()),
            answers -> SightSheets.of(answers.section(), answers.sights(), answers.approaches()),
            answers -> List.of(JointSheet.of(answers.section(), answers.joints().open())));

    private static final List<Function<Answers, List<Sheet>>> LATER = List.of(
            answers -> FramingSheets.of(answers.section(), answers.framing()),
            answers -> List.of(CopeSheet.of(answers.copes())),
            answers -> SurfaceSheets.of(answers.surfaces()),
            answers -> BuySheets.of(answers.purchases()),
            answers -> SeasonSheets.of(answers.section(), answers.year()),
            answers -> ToleranceSheets.of(answers.section(), answers.errors()),
            answers -> ProportionSheets.of(answers.section(), answers.proportion()),
            answers -> ClearanceSheets.of(answers.section(), answers.clearance()));

    /**
     * What a line under {@code must:} may ask for, a question at a time, in the order of a report: whoever asks for one
     * does not ask the others.
     */
    static final List<Function<Answers, List<Sheet>>> GROUPS = Stream.of(
                    List.<Function<Answers, List<Sheet>>>of(Sheets::ofSection),
                    HOLDING,
                    LOOKING,
                    LATER,
                    List.<Function<Answers, List<Sheet>>>of(answers -> List.of(BuySheets.total(answers.shopping()))))
            .flatMap(List::stream)
            .toList();

    /** The number of the group that tells what all of it costs, which takes a search of its own. */
    static final int COST = GROUPS.size() - 1;

    /** What looking at it tells. */
    static List<Sheet> ofLooks(Answers answers) {
        return of(answers, LOOKING);
    }

    /** Those that a line under {@code must:} may ask for a figure of. */
    static List<Sheet> ofQuestions(Answers answers, List<Sheet> section, List<Sheet> looks) {
        List<Sheet> sheets = new ArrayList<>(section);
        sheets.addAll(of(answers, HOLDING));
        sheets.addAll(looks);
        sheets.addAll(of(answers, LATER));
        boolean cost = Musts.speakOf(answers.blocks().must(), "cost");
        sheets.add(BuySheets.total(cost ? answers.shopping() : Optional.empty()));
        return List.copyOf(sheets);
    }

    private static List<Sheet> of(Answers answers, List<Function<Answers, List<Sheet>>> groups) {
        return groups.stream().flatMap(group -> group.apply(answers).stream()).toList();
    }
}
