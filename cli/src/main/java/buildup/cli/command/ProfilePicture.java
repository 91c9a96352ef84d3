package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.cli.drawing.mill.KnifeDrawing;
import buildup.cli.drawing.mill.MillingDrawing;
import buildup.cli.drawing.mill.ProfileSheet;
import buildup.cli.drawing.mill.RunProfile;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.scene.Scene;
import buildup.cli.write.ShippedFont;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** Draws one profile as a stack of one piece, on a plane with nothing behind it. */
record ProfilePicture(Catalog catalog, LengthUnit unit) {
    /** Room from side to side, and round it, in: a profile wider than that stands upright. */
    private static final double SHEET = 16;

    private static final double MARGIN = 0.3;

    private static final Mark NOWHERE = new Mark("", 1, 1);

    /**
     * The picture.
     *
     * @param call the words by which the catalog gives the profile
     * @param notices told when it is too large to draw; what nails or carries it is nobody's question here
     */
    Optional<Scene> scene(Profile profile, String call, Notices notices) {
        Notices unsaid = new Notices();
        Stack alone = StackReader.read(alone(profile.name(), call), catalog, new Claims(), unsaid);
        Section section = Composer.compose(alone, StackPlacing.place(alone, unsaid), unsaid);
        return SectionDrawing.of(section, ShippedFont.load(), Optional.empty(), notices);
    }

    /**
     * Its sheet for who runs it, with lines to check full size.
     *
     * @param notices told when it is too large to draw
     */
    Optional<Scene> sheet(Profile profile, Milled milled, Notices notices) {
        FigurePrinter printer = new FigurePrinter(unit);
        ShippedFont font = ShippedFont.load();
        if (Paper.tooMany(printer.metric(), font, milled.stick().box(), notices)) {
            return Optional.empty();
        }
        RunProfile run = new RunProfile(profile, milled, SHEET, font, printer);
        return Optional.of(FullSize.of(printer.metric()).on(ProfileSheet.of(run, List.of(), MARGIN), font));
    }

    /** The passes that make it. */
    Scene milling(Profile profile, Milled milled) {
        return MillingDrawing.of(profile, milled, ShippedFont.load(), new FigurePrinter(unit));
    }

    /**
     * The template of its ground knife.
     *
     * @param notices told when there is none to draw
     */
    Optional<Scene> knife(Profile profile, Milled milled, Notices notices) {
        // a knife that would have to reach past the shaft has no edge
        List<Knife> knives = milled.knives().stream()
                .filter(knife -> !knife.edge().isEmpty())
                .toList();
        if (knives.isEmpty()) {
            notices.add((milled.isPlain() ? CommandNotices.PLANED : CommandNotices.NO_HEAD)
                    .notice()
                    .of(profile.name()));
            return Optional.empty();
        }
        return Optional.of(KnifeDrawing.of(profile, knives, ShippedFont.load(), new FigurePrinter(unit)));
    }

    private Document alone(String title, String call) {
        Mapping piece = new Mapping(
                List.of(
                        entry("name", text("profile")),
                        entry("profile", text(call)),
                        entry("back", text("0")),
                        entry("bottom", text("0"))),
                NOWHERE);
        Mapping wall = new Mapping(List.of(entry("solid", text("no"))), NOWHERE);
        return new Document(
                title,
                new Mapping(
                        List.of(
                                entry("title", text(title)),
                                entry("units", text(unit.symbol())),
                                entry("space", new Mapping(List.of(entry("wall", wall)), NOWHERE)),
                                entry("pieces", new Sequence(List.of(piece), NOWHERE))),
                        NOWHERE));
    }

    private static Entry entry(String key, Node value) {
        return new Entry(text(key), value);
    }

    private static Scalar text(String text) {
        return new Scalar(text, NOWHERE);
    }
}
