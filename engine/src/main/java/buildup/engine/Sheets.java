package buildup.engine;

import buildup.engine.hold.fixing.FixingSheets;
import buildup.engine.hold.framing.FramingSheets;
import buildup.engine.hold.order.OrderSheets;
import buildup.engine.hold.season.SeasonSheets;
import buildup.engine.hold.support.SupportSheets;
import buildup.engine.hold.tolerance.ToleranceSheets;
import buildup.engine.judge.clearance.ClearanceSheets;
import buildup.engine.judge.must.MustSheet;
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

    /** What looking at it tells. */
    static List<Sheet> ofLooks(Answers answers) {
        List<Sheet> sheets = new ArrayList<>();
        sheets.addAll(LightSheets.of(answers.section(), answers.lights()));
        sheets.addAll(SightSheets.of(answers.section(), answers.sights(), answers.approaches()));
        sheets.add(JointSheet.of(answers.section(), answers.joints().open()));
        return List.copyOf(sheets);
    }

    /** Those that a line under {@code must:} may ask for a figure of. */
    static List<Sheet> ofQuestions(Answers answers, List<Sheet> section, List<Sheet> looks) {
        List<Sheet> sheets = new ArrayList<>(section);
        sheets.addAll(SupportSheets.of(answers.section(), answers.support(), answers.pulls()));
        sheets.addAll(FixingSheets.of(answers.section(), answers.fixed(), answers.proposals()));
        sheets.addAll(OrderSheets.of(answers.section(), answers.order(), answers.job()));
        sheets.addAll(looks);
        sheets.addAll(FramingSheets.of(answers.section(), answers.framing()));
        sheets.add(CopeSheet.of(answers.copes()));
        sheets.addAll(SurfaceSheets.of(answers.surfaces()));
        sheets.addAll(SeasonSheets.of(answers.section(), answers.year()));
        sheets.addAll(ToleranceSheets.of(answers.section(), answers.errors()));
        sheets.addAll(ProportionSheets.of(answers.section(), answers.proportion()));
        sheets.addAll(ClearanceSheets.of(answers.section(), answers.clearance()));
        return List.copyOf(sheets);
    }
}
