package buildup.cli.command;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.WrittenForm;
import buildup.cli.drawing.paper.PagesBelow;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.scene.Scene;
import buildup.cli.write.DxfWriter;
import buildup.cli.write.LackingLetters;
import buildup.cli.write.PdfWriter;
import buildup.cli.write.PngWriter;
import buildup.cli.write.ShippedFont;
import buildup.cli.write.SvgWriter;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Question;
import buildup.engine.section.stack.Light;
import buildup.shared.figure.Figure;
import buildup.shared.length.Angle;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Callable;

/** {@code draw}: a picture of a stack. */
final class DrawCommand implements Callable<Integer> {
    /** What the picture shows. */
    enum View {
        section,
        elevation,
        rays,
        holds,
        steps,
        season,
        proportion,
        clearance,
        plan,
        walls,
        copes,
        sticks
    }

    /** The forms in which a picture is written. */
    enum Format {
        svg,
        png,
        pdf,
        dxf
    }

    /** Fine enough to print, and a sheet still opens on a telephone. */
    private static final int PNG_DOTS_PER_INCH = 150;

    /** Of several pictures one below the other: still one file for a telephone, and little memory is enough. */
    private static final int DOTS_OF_SEVERAL = 100;

    /** With fewer an inch the letters of a drawing, 0.12 in, are less than 5 dots high and are not read. */
    private static final int LEAST_DOTS = 40;

    /** Notes on what holds the pieces, which are found as the section is put together and concern one view alone. */
    private static final Set<String> WHAT_HOLDS =
            Set.of("counts-as-fixed", "hangs-on-its-fastenings", "support-that-only-hangs");

    private final Streams streams;
    private String stack = "";
    private View view = View.section;
    private Optional<String> light = Optional.empty();
    private Optional<String> eye = Optional.empty();
    private int times = 1;
    private Optional<String> page = Optional.empty();
    private Optional<Format> format = Optional.empty();
    private boolean outlineText;
    private Path output = Path.of("");
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    DrawCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("draw", "Draws a stack.", this)
                .word("STACK", "The stack document; - is standard input.", asked -> stack = asked)
                .option(
                        View.class,
                        "--view",
                        "VIEW",
                        "${COMPLETION-CANDIDATES} (default: section).",
                        asked -> view = asked)
                .option(
                        String.class,
                        "--light",
                        "ALT,AZ",
                        "Degrees above level, and degrees from square to the wall (+ from the left).",
                        asked -> light = Optional.of(asked))
                .option(
                        String.class,
                        "--eye",
                        "NAME",
                        "For --view rays: only what this eye sees (default: each light, then each eye).",
                        asked -> eye = Optional.of(asked))
                .option(
                        Integer.class,
                        "--times",
                        "N",
                        "For --view season: draw the movement this many times as large (default: 1).",
                        asked -> times = asked)
                .option(
                        String.class,
                        "--page",
                        "NAME",
                        "The paper to draw on, in parts where it is too small.",
                        asked -> page = Optional.of(asked))
                .option(
                        Format.class,
                        "--to",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: by the ending of the file).",
                        asked -> format = Optional.of(asked))
                .flag(
                        "--outline-text",
                        "In SVG, draw letters as outlines, for a viewer without the font; PDF and PNG carry it.",
                        () -> outlineText = true)
                .needed(
                        Path.class,
                        "-o",
                        "FILE",
                        "Where to write; - is standard output, in the form of --to (there: svg when left out).",
                        asked -> output = asked)
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        Optional<Path> file = OutputFile.named(Optional.of(output));
        Optional<Format> usual = file.isPresent() ? Optional.empty() : Optional.of(Format.svg);
        Optional<Format> wanted = new WrittenForm<>(List.of(Format.values()), usual, "draw", "--to")
                .settled(format, file, streams, saying, InputFiles.nameOf(stack));
        if (wanted.isEmpty()) {
            return ExitCode.REFUSED;
        }
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        Answer answer = new StackLoader(files, notices, lights(notices)).load(stack, catalog.files);
        if (fitsTheView(notices)) {
            Delivery delivery = new Delivery(streams, file, files.read());
            answer.known().ifPresent(known -> draw(answer, known, wanted.get(), delivery, notices));
        }
        answer.notices(concerns()).stream()
                .filter(notice -> view == View.holds || !WHAT_HOLDS.contains(notice.code()))
                .forEach(notices::add);
        streams.err().print(saying.said(notices.sorted(), answer.file(), answer.unit()));
        return ExitCode.of(notices);
    }

    /** What has no meaning in a view is said, not left out. */
    private boolean fitsTheView(Notices notices) {
        Set<View> lit = EnumSet.of(View.elevation, View.rays);
        return fitsTheView("--light", light.isPresent(), lit, notices)
                && fitsTheView("--eye", eye.isPresent(), EnumSet.of(View.rays), notices)
                && fitsTheView("--times", times != 1, EnumSet.of(View.season), notices);
    }

    private boolean fitsTheView(String option, boolean given, Set<View> views, Notices notices) {
        if (!given || views.contains(view)) {
            return true;
        }
        notices.add(CommandNotices.OTHER_VIEW
                .with("option", option)
                .with("view", view.name())
                .with("other", views.iterator().next().name()));
        return false;
    }

    /** The questions that the picture answers: nothing else is said beside it. */
    private Set<Question> concerns() {
        return switch (view) {
            case section -> EnumSet.of(Question.SECTION);
            case elevation -> EnumSet.of(Question.LIGHT);
            case rays -> EnumSet.of(Question.LIGHT, Question.SIGHT);
            case holds -> EnumSet.of(Question.SECTION, Question.FIXING, Question.SUPPORT);
            case steps -> EnumSet.of(Question.ORDER);
            case season -> EnumSet.of(Question.SECTION, Question.SEASON);
            case proportion -> EnumSet.of(Question.PROPORTION);
            case clearance -> EnumSet.of(Question.CLEARANCE);
            case plan, walls, copes, sticks -> EnumSet.of(Question.RUN);
        };
    }

    /** As many dots an inch as usual, fewer where the picture is large; none where its letters could then not be read. */
    private static OptionalInt dots(Scene scene, int usual, Notices notices) {
        double inches = scene.width() * scene.height();
        int dots = (int) Math.min(usual, Math.floor(Math.sqrt(PngWriter.MOST_PIXELS / inches)));
        Figure most = Figure.count(PngWriter.MOST_PIXELS / 1_000_000);
        if (dots < LEAST_DOTS) {
            notices.add(CommandNotices.MANY_PIXELS
                    .with("pixels", Figure.count((long) Math.ceil(inches * usual * usual / 1_000_000)))
                    .with("most", most));
            return OptionalInt.empty();
        }
        if (dots < usual) {
            notices.add(CommandNotices.FEWER_PIXELS
                    .with("dots", Figure.count(dots))
                    .with("usual", Figure.count(usual))
                    .with("most", most));
        }
        return OptionalInt.of(dots);
    }

    private void draw(Answer answer, Answers known, Format wanted, Delivery delivery, Notices notices) {
        Optional<PaperSize> paper = page.flatMap(name -> Pages.asked(name, notices));
        if (page.isPresent() && paper.isEmpty()) {
            return;
        }
        ShippedFont font = ShippedFont.load();
        // a drawing of lines is not printed as it is, and knows no paper
        List<Scene> scenes =
                new DrawnView(answer, known, paper, wanted != Format.dxf, font, notices).scenes(view, eye, times);
        if (scenes.isEmpty()) {
            return;
        }
        Scene all = PagesBelow.of(scenes);
        int usual = scenes.size() == 1 ? PNG_DOTS_PER_INCH : DOTS_OF_SEVERAL;
        OptionalInt dots = wanted == Format.png ? dots(all, usual, notices) : OptionalInt.of(usual);
        if (dots.isEmpty()) {
            return;
        }
        if (wanted == Format.png || wanted == Format.pdf || (wanted == Format.svg && outlineText)) {
            LackingLetters.told(scenes, font, notices);
        }
        delivery.put(
                switch (wanted) {
                    case svg ->
                        outlineText
                                ? SvgWriter.outlined(all, answer.unit(), font)
                                : SvgWriter.write(all, answer.unit());
                    case dxf -> DxfWriter.write(all);
                    case png -> PngWriter.write(all, font, dots.getAsInt());
                    case pdf -> PdfWriter.write(scenes, font);
                },
                notices);
    }

    /** The light of the command line, in place of those of the stack. */
    private Optional<List<Light>> lights(Notices notices) {
        if (light.isEmpty()) {
            return Optional.empty();
        }
        String[] parts = light.get().split(",", -1);
        Optional<Angle> altitude = Angle.read(parts[0].strip());
        Optional<Angle> azimuth = parts.length > 1 ? Angle.read(parts[1].strip()) : Optional.of(Angle.degrees(0));
        if (parts.length > 2 || altitude.isEmpty() || azimuth.isEmpty()) {
            notices.add(CommandNotices.NO_TWO_ANGLES.with("text", light.get()));
            return Optional.empty();
        }
        return Optional.of(List.of(new Light.Distant(
                "as asked", altitude.get().toDegrees(), azimuth.get().toDegrees(), Optional.empty())));
    }
}
