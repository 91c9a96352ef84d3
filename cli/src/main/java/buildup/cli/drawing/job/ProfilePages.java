package buildup.cli.drawing.job;

import buildup.cli.drawing.mill.ProfileSheet;
import buildup.cli.drawing.mill.RunProfile;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.scene.Scene;
import buildup.engine.Answers;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.PieceKind;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Every profile of a stack that a mill runs, one a page, at full size, with what the mill has to know. */
record ProfilePages(Answers known, FigurePrinter printer, Notices notices) {
    private static final String MILLED = "section";
    private static final double ROOM = 7;
    private static final double MARGIN = 0.1;
    private static final String BLANK = "________";

    List<PaperPage> pages(PageFrame frame) {
        List<PaperPage> pages = new ArrayList<>();
        profiles().forEach((profile, pieces) -> {
            if (!Paper.tooMany(frame, profile.outline().box(), notices)) {
                pages.addAll(Paper.fullSize(frame, ShopSheet.PROFILES.title(), scene(frame, profile, pieces)));
            }
        });
        return pages;
    }

    /** Those that no saw makes, each with the pieces that are cut from it. */
    private Map<Profile, List<Placed>> profiles() {
        Map<String, List<Placed>> byName = new LinkedHashMap<>();
        Section section = known.section();
        for (int i = 0; i < section.bodies().size(); i++) {
            Optional<Placed> found =
                    section.body(i).placed().filter(placed -> placed.piece().kind() != PieceKind.FRAMING);
            // blocking of no profile is sawn on the job
            boolean sawn = section.body(i).nailer()
                    && found.filter(placed -> placed.piece().stock().name().equals(MILLED))
                            .isPresent();
            if (found.isPresent() && !sawn) {
                Placed placed = found.get();
                String name = placed.piece().stock().name();
                // a one-off is a profile of its own, however many there are
                byName.computeIfAbsent(
                                name.equals(MILLED) ? "section of " + placed.name() : name, key -> new ArrayList<>())
                        .add(placed);
            }
        }
        Map<Profile, List<Placed>> profiles = new LinkedHashMap<>();
        byName.forEach((name, pieces) -> profile(name, pieces.get(0))
                .filter(profile -> !(profile.stick() instanceof Profile.Board))
                .filter(profile -> !profile.asRun().isRectangle())
                .ifPresent(profile -> profiles.put(profile, pieces)));
        return profiles;
    }

    private Optional<Profile> profile(String name, Placed placed) {
        String called = placed.piece().stock().name();
        if (called.equals(MILLED)) {
            Box box = placed.piece().shape().box();
            return Optional.of(new Profile(
                    name,
                    MILLED,
                    placed.piece().shape().moved(Motion.shift(-box.back(), -box.bottom())),
                    new Profile.Milled()));
        }
        return known.catalog()
                .profile(
                        new Scalar(called, placed.piece().mark()),
                        known.section().stack().boardList(),
                        known.section().stack().lengths(),
                        new Notices());
    }

    private Scene scene(PageFrame frame, Profile profile, List<Placed> pieces) {
        Milled milled = Milling.of(profile, known.catalog(), Optional.empty(), List.of(), new Notices());
        return ProfileSheet.of(new RunProfile(profile, milled, ROOM, frame.measure(), printer), said(pieces), MARGIN);
    }

    private List<String> said(List<Placed> pieces) {
        List<String> said = new ArrayList<>();
        said.add("For "
                + pieces.stream().map(Placed::name).collect(Collectors.joining(", "))
                + ", of "
                + pieces.stream()
                        .map(placed -> placed.piece().wood().name())
                        .distinct()
                        .collect(Collectors.joining(", "))
                + ".");
        said.add("Moisture of the wood when it is run: " + moisture() + " %.");
        known.job().ifPresent(job -> said.add("Net length " + net(job, pieces) + ", before waste."));
        said.add("Keep it dry, and at the moisture of the room, before it is cut and put up.");
        return said;
    }

    /** That in which the sizes hold; a blank to write on where the stack knows no seasons. */
    private String moisture() {
        return known.year().seasons().stream()
                .findFirst()
                .map(built -> printer.bare(Figure.of(Quantity.MOISTURE, built.moisture())))
                .orElse(BLANK);
    }

    private String net(Job job, List<Placed> pieces) {
        double inches = job.cuts().stream()
                .filter(cut -> pieces.stream()
                        .anyMatch(placed -> placed.name().equals(job.section().name(cut.body()))))
                .mapToDouble(cut -> cut.length())
                .sum();
        return length(inches);
    }

    private String length(double inches) {
        return printer.bare(Figure.length(inches));
    }
}
