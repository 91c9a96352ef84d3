package buildup.cli.command;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.hold.HoldsDrawing;
import buildup.cli.drawing.hold.SeasonDrawing;
import buildup.cli.drawing.hold.StepsDrawing;
import buildup.cli.drawing.judge.ClearanceDrawing;
import buildup.cli.drawing.judge.ProportionDrawing;
import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.look.RaysDrawing;
import buildup.cli.drawing.look.SightDrawing;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.paper.TitleCell;
import buildup.cli.drawing.paper.TitleStrip;
import buildup.cli.drawing.room.CopeDrawing;
import buildup.cli.drawing.room.PlanDrawing;
import buildup.cli.drawing.room.SticksDrawing;
import buildup.cli.drawing.room.WallsDrawing;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.scene.Scene;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Cuts;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.Sighting;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.Limit;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A stack as one view shows it, on the paper that was asked for.
 *
 * @param paper absent for one sheet as large as the picture
 * @param onPaper whether a picture that is larger is to be parted; else it stays on one sheet
 * @param notices told what cannot be drawn
 */
record DrawnView(
        Answer answer, Answers known, Optional<PaperSize> paper, boolean onPaper, ShippedFont font, Notices notices) {
    /** Larger, and pieces leave the sheet. */
    private static final int MOST_TIMES = 100;

    /**
     * The sheets of a view; none when the stack holds nothing to show in it.
     *
     * @param eye whose rays alone are asked for
     * @param times how many times as large movements are drawn
     */
    List<Scene> scenes(DrawCommand.View view, Optional<String> eye, int times) {
        return switch (view) {
            case section -> section();
            case holds -> fullSize(List.of(holds()));
            case elevation -> elevation();
            case rays -> eye.map(this::seenBy).orElseGet(this::rays);
            case season -> season(times);
            case steps ->
                frame().map(frame -> numbered(StepsDrawing.pages(stack(), known.order(), frame)))
                        .orElseGet(() -> List.of(StepsDrawing.of(stack(), known.order(), font)));
            case proportion -> proportion();
            case clearance -> clearance();
            case plan -> plan();
            case walls -> walls();
            case copes -> copes();
            case sticks -> sticks();
        };
    }

    /** Whether letters are read on paper at full size, and not on a screen that shows the picture whole. */
    private boolean printed() {
        return paper.isPresent() && onPaper;
    }

    private Section stack() {
        return known.section();
    }

    private List<Scene> section() {
        Optional<Scene> whole = SectionDrawing.of(stack(), font, paper, notices);
        if (whole.isPresent() || notices.refused()) {
            return whole.stream().toList();
        }
        return onPaper
                ? numbered(SectionDrawing.pages(stack(), frame(paper.orElseThrow()), notices))
                : SectionDrawing.of(stack(), font, Optional.empty(), notices).stream()
                        .toList();
    }

    private List<Scene> elevation() {
        return light().map(light -> fullSize(
                        "Front",
                        printed()
                                ? ElevationDrawing.onPaper(stack(), light, font)
                                : ElevationDrawing.of(stack(), light, font)))
                .orElse(List.of());
    }

    private Optional<Lighting> light() {
        if (known.lights().isEmpty()) {
            notices.add(CommandNotices.NO_LIGHT.notice());
        }
        return known.lights().stream().findFirst();
    }

    private Shown holds() {
        return new Shown(
                "What holds it",
                printed()
                        ? HoldsDrawing.forScale(stack(), known.support(), known.fixed(), known.proposals(), 1, font)
                        : HoldsDrawing.of(stack(), known.support(), known.fixed(), known.proposals(), font),
                () -> HoldsDrawing.inParts(stack(), known.support(), known.fixed(), known.proposals(), font));
    }

    /** Each on its own sheet, the rays of every light and then those of every eye. */
    private List<Scene> rays() {
        if (known.lights().isEmpty() && known.sights().isEmpty()) {
            notices.add(CommandNotices.NO_LIGHT.notice());
        }
        List<Shown> shown = new ArrayList<>();
        known.lights()
                .forEach(light -> shown.add(new Shown(
                        "In " + light.light().name(),
                        printed()
                                ? RaysDrawing.forScale(stack(), light, 1, font)
                                : RaysDrawing.of(stack(), light, font),
                        () -> RaysDrawing.inParts(stack(), light, font))));
        known.sights().forEach(sight -> shown.add(seen(sight)));
        return fullSize(shown);
    }

    private List<Scene> seenBy(String name) {
        Optional<Sighting> found = known.sights().stream()
                .filter(sight -> sight.eye().name().equals(name))
                .findFirst();
        if (found.isEmpty()) {
            List<String> names =
                    known.sights().stream().map(sight -> sight.eye().name()).toList();
            notices.add(CommandNotices.UNKNOWN_EYE.with("name", name).cure(Suggestion.phrase(name, names)));
        }
        return fullSize(found.map(this::seen).stream().toList());
    }

    private Shown seen(Sighting sight) {
        return new Shown(
                "Seen by " + sight.eye().name(),
                printed() ? SightDrawing.forScale(stack(), sight, 1, font) : SightDrawing.of(stack(), sight, font),
                () -> SightDrawing.inParts(stack(), sight, font));
    }

    private List<Scene> season(int times) {
        if (times < 1 || times > MOST_TIMES) {
            notices.add(CommandNotices.NOT_SO_MANY_TIMES
                    .with("times", Figure.count(times))
                    .with("most", Figure.count(MOST_TIMES)));
            return List.of();
        }
        if (!known.year().asked()) {
            notices.add(CommandNotices.NO_SEASONS.notice());
            return List.of();
        }
        return fullSize(
                "Through the year",
                printed()
                        ? SeasonDrawing.forScale(stack(), known.year(), times, 1, font)
                        : SeasonDrawing.of(stack(), known.year(), times, font));
    }

    private List<Scene> proportion() {
        Optional<Scene> beside = ProportionDrawing.of(stack(), known.proportion(), font);
        if (beside.isEmpty()) {
            notices.add(CommandNotices.NO_PROPORTION.notice());
        }
        return beside.map(scene -> frame().map(
                                frame -> numbered(Paper.asDrawn(frame, "Beside the books", scene, notices)))
                        .orElse(List.of(scene)))
                .orElse(List.of());
    }

    private List<Scene> clearance() {
        Optional<Scene> clear = ClearanceDrawing.of(stack(), known.clearance(), font);
        if (clear.isEmpty()) {
            notices.add(CommandNotices.NO_CLEARANCE
                    .with("top", Figure.thumb(-4))
                    .with("left", Figure.thumb(12))
                    .with("right", Figure.thumb(48)));
        }
        return clear.map(scene -> frame().map(this::clearance).orElseGet(() -> fullSize("Clearances", scene)))
                .orElse(List.of());
    }

    /** The section at full size, and the front on a page of its own, since it is not. */
    private List<Scene> clearance(PageFrame frame) {
        Scene section = ClearanceDrawing.forScale(stack(), known.clearance(), 1, font);
        if (Paper.tooMany(frame, section.box(), notices)) {
            return List.of();
        }
        List<PaperPage> pages = new ArrayList<>(Paper.fullSize(frame, "Clearances", section));
        ClearanceDrawing.front(stack(), known.clearance(), font)
                .ifPresent(front -> pages.addAll(Paper.asDrawn(frame, "Fire from the front", front, notices)));
        return numbered(pages);
    }

    private List<Scene> plan() {
        if (known.job().isEmpty()) {
            notices.add(CommandNotices.NO_CORNER.notice());
        }
        return known.job()
                .map(job -> frame().map(frame -> numbered(PlanDrawing.pages(job, frame)))
                        .orElseGet(() -> List.of(PlanDrawing.of(job, font))))
                .orElse(List.of());
    }

    private List<Scene> copes() {
        Optional<Scene> copes = CopeDrawing.of(stack(), known.copes(), font);
        if (copes.isEmpty()) {
            notices.add(CommandNotices.NOTHING_COPED.notice());
        }
        return copes.map(scene -> frame().map(frame -> numbered(CopeDrawing.each(stack(), known.copes(), font).stream()
                                .flatMap(one -> Paper.fullSize(frame, "Copes", one).stream())
                                .toList()))
                        .orElseGet(() -> fullSize("Copes", scene)))
                .orElse(List.of());
    }

    private List<Scene> walls() {
        Optional<Scene> walls = WallsDrawing.of(stack().stack(), known.surfaces(), font);
        if (walls.isEmpty()) {
            notices.add(CommandNotices.NOTHING_MEASURED
                    .with("high", Figure.thumb(12))
                    .with("along", Figure.thumb(60))
                    .with("low", Figure.thumb(11.75)));
        }
        return walls.map(scene -> frame().map(
                                frame -> numbered(Paper.asDrawn(frame, "Room as measured", scene, notices)))
                        .orElse(List.of(scene)))
                .orElse(List.of());
    }

    private List<Scene> sticks() {
        Cuts cuts = Cuts.of(answer, Limit.usual());
        List<Scene> scenes = cuts.known()
                .flatMap(one ->
                        one.list().filter(list -> !list.pieces().isEmpty()).map(list -> sticks(one, list)))
                .orElse(List.of());
        boolean noStock = scenes.isEmpty() && cuts.known().isPresent();
        if (noStock) {
            notices.add(CommandNotices.NO_STICKS.notice());
        }
        // what the lengths alone say of it would be said twice
        cuts.notices().stream()
                .filter(notice -> !noStock
                        || !notice.code().equals(CommandNotices.NO_STICKS.code().name()))
                .forEach(notices::add);
        return scenes;
    }

    private List<Scene> sticks(Cuts.Known cuts, CutList list) {
        return frame().map(frame -> numbered(SticksDrawing.pages(cuts.job(), list, frame)))
                .orElseGet(() -> List.of(SticksDrawing.of(cuts.job(), list, font)));
    }

    /**
     * A picture at full size.
     *
     * @param view what it shows, for the foot of its sheet
     * @param inParts the same where it takes several pages
     */
    private record Shown(String view, Scene scene, Supplier<Scene> inParts) {}

    private List<Scene> fullSize(String view, Scene scene) {
        return fullSize(List.of(new Shown(view, scene, () -> scene)));
    }

    private List<Scene> fullSize(List<Shown> shown) {
        Optional<PageFrame> frame = frame();
        if (frame.isEmpty()) {
            return shown.stream()
                    .map(one -> FullSize.of(metric()).on(one.scene(), font))
                    .toList();
        }
        return shown.stream()
                        .anyMatch(one -> Paper.tooMany(frame.get(), one.scene().box(), notices))
                ? List.of()
                : numbered(shown.stream()
                        .flatMap(one -> Paper.fullSize(frame.get(), one.view(), one.scene(), one.inParts()).stream())
                        .toList());
    }

    private List<Scene> numbered(List<PaperPage> pages) {
        return PaperPage.scenes(answer.title(), pages);
    }

    private Optional<PageFrame> frame() {
        return printed() ? paper.map(this::frame) : Optional.empty();
    }

    private PageFrame frame(PaperSize page) {
        TitleCell title = new TitleCell("stack", answer.title(), 3);
        return new PageFrame(page, new TitleStrip(List.of(List.of(title))), font, metric());
    }

    private boolean metric() {
        return Drafting.printer(stack().stack()).metric();
    }
}
