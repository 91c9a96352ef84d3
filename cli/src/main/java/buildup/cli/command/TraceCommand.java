package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.catalog.family.Family;
import buildup.catalog.format.Drawn;
import buildup.catalog.format.TracingReader;
import buildup.cli.command.files.CatalogFiles;
import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandAnswer;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.WrittenForm;
import buildup.cli.drawing.mill.TraceDrawing;
import buildup.cli.report.TraceReport;
import buildup.cli.report.TraceTelling;
import buildup.cli.tell.Telling;
import buildup.cli.write.ShippedFont;
import buildup.cli.write.SvgWriter;
import buildup.profiles.trace.Caliper;
import buildup.profiles.trace.Traced;
import buildup.profiles.trace.TracedSide;
import buildup.profiles.trace.Tracer;
import buildup.profiles.trace.TracingOptions;
import buildup.shared.document.Claims;
import buildup.shared.document.SizeNotices;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.Reading;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** {@code trace}: a tracing or a drawing becomes a profile. */
final class TraceCommand implements Callable<Integer> {
    /** The forms in which a traced profile is written. */
    enum Format {
        yaml,
        text,
        json,
        csv,
        html,
        svg
    }

    /** A size in millimeters or centimeters. */
    private static final Pattern METRIC = Pattern.compile("\\d ?[mc]m\\b");

    private final Streams streams;
    private LengthUnit unit = LengthUnit.INCH;
    private final Notices notices = new Notices();
    private String file = "";
    private Optional<String> units = Optional.empty();
    private Optional<String> width = Optional.empty();
    private Optional<String> height = Optional.empty();
    private List<String> measures = List.of();
    private Optional<String> deviation = Optional.empty();
    private Optional<String> edges = Optional.empty();
    private Optional<String> paint = Optional.empty();
    private Optional<String> layer = Optional.empty();
    private double rotate;
    private boolean flip;
    private Optional<String> back = Optional.empty();
    private String kind = "trim";
    private String name = "traced";
    private Optional<Format> wanted = Optional.empty();
    private Format format = Format.yaml;
    private final OutputOption output = new OutputOption();
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    TraceCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("trace", "Turns a tracing (CSV, SVG, DXF) into a profile of lines and arcs.", this)
                .word("FILE", "The tracing; - is standard input.", asked -> file = asked)
                .option(
                        String.class,
                        "--units",
                        "UNIT",
                        "Of the tracing: in, mm, cm or ft.",
                        asked -> units = Optional.of(asked))
                .option(
                        String.class,
                        "--width",
                        "SIZE",
                        "Back to face, by calipers: sets the scale or checks it.",
                        asked -> width = Optional.of(asked))
                .option(
                        String.class,
                        "--height",
                        "SIZE",
                        "Bottom to top, by calipers: sets the scale or checks it.",
                        asked -> height = Optional.of(asked))
                .repeated(
                        String.class,
                        "--measure",
                        "'MEMBER height = SIZE'",
                        "A size of one member, or from one to another, by calipers: 'face height = 2-1/2',"
                                + " 'bottom to cove width = 1-1/4', 'cove radius = 1/2'. May be repeated.",
                        asked -> measures = asked)
                .option(
                        String.class,
                        "--deviation",
                        "SIZE",
                        "How far the outline may lie from the points (default: by their scatter).",
                        asked -> deviation = Optional.of(asked))
                .option(
                        String.class,
                        "--restore-edges",
                        "SIZE",
                        "Sharpen edges that are worn by no more than this.",
                        asked -> edges = Optional.of(asked))
                .option(
                        String.class,
                        "--paint",
                        "SIZE",
                        "Thickness of paint to remove (not from the back).",
                        asked -> paint = Optional.of(asked))
                .option(
                        String.class,
                        "--layer",
                        "NAME",
                        "Read only this layer or group of the drawing.",
                        asked -> layer = Optional.of(asked))
                .option(
                        Double.class,
                        "--rotate",
                        "DEGREES",
                        "Turn the tracing counterclockwise before it is read (default: 0).",
                        asked -> rotate = asked)
                .flag("--flip", "Turn the tracing end for end.", () -> flip = true)
                .option(
                        String.class,
                        "--back",
                        "SIDE",
                        "Where the back lies as drawn: left, right, up or down (default: found).",
                        asked -> back = Optional.of(asked))
                .option(
                        String.class,
                        "--kind",
                        "KIND",
                        "What the trade calls it (default: trim).",
                        asked -> kind = asked)
                .option(
                        String.class,
                        "--name",
                        "NAME",
                        "What the profile is called (default: traced).",
                        asked -> name = asked)
                .option(
                        Format.class,
                        "--format",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: by the ending of the file, else yaml).",
                        asked -> wanted = Optional.of(asked))
                .with(output::addTo)
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        Optional<Format> settled = new WrittenForm<>(
                        List.of(Format.values()), Optional.of(Format.yaml), "trace", "--format")
                .settled(wanted, output.file(), streams, saying, InputFiles.nameOf(file));
        if (settled.isEmpty()) {
            return ExitCode.REFUSED;
        }
        format = settled.get();
        if (!name.matches("[a-z0-9][a-z0-9-]*")) {
            notices.add(CommandNotices.UNUSABLE_NAME.with("name", name));
        }
        InputFiles files = new InputFiles(streams, notices);
        Claims claims = new Claims();
        Catalog lists = new CatalogFiles(files, claims, notices).of(catalog.files);
        TracingOptions options = options(lists);
        Optional<Drawn> drawn = files.tracing(file)
                .flatMap(bytes -> TracingReader.read(bytes, InputFiles.nameOf(file), layer, notices));
        unit = told(options.unit().or(() -> drawn.flatMap(Drawn::unit)).orElse(LengthUnit.INCH));
        Optional<Traced> traced = drawn.filter(any -> !notices.refused())
                .flatMap(found -> Tracer.trace(
                        found.trails(),
                        (options.unit().isEmpty() && found.unit().isPresent()
                                        ? options.in(found.unit().get())
                                        : options)
                                .drawnIn(unit),
                        notices));
        Delivery delivery = new Delivery(streams, output.file(), files.read());
        boolean delivered =
                traced.filter(found -> delivery.put(written(found), notices)).isPresent();
        if (!delivered && format == Format.json) {
            streams.out().print(told(Telling.refused(name, unit)).json());
        }
        if (format != Format.json) {
            streams.err().print(saying.said(notices.sorted(), InputFiles.nameOf(file), unit));
        }
        return ExitCode.of(notices);
    }

    /** Whoever gives sizes reads the answer in their unit, else in that of the tracing. */
    private LengthUnit told(LengthUnit ofTracing) {
        List<String> sizes = Stream.concat(
                        Stream.of(width, height, deviation, edges, paint).flatMap(Optional::stream), measures.stream())
                .toList();
        boolean metric = sizes.isEmpty()
                ? ofTracing.isMetric()
                : sizes.stream().anyMatch(size -> METRIC.matcher(size).find());
        return metric ? LengthUnit.MILLIMETER : LengthUnit.INCH;
    }

    private CommandAnswer told(Telling telling) {
        return new CommandAnswer(telling, InputFiles.nameOf(file), Optional.empty(), notices.sorted());
    }

    private String written(Traced traced) {
        CommandAnswer told = told(TraceTelling.of(name, kind, traced, unit));
        return switch (format) {
            case yaml -> TraceReport.yaml(name, kind, traced, unit, notices.sorted());
            case text -> told.text(output.file().isPresent());
            case json -> told.json();
            case csv -> told.csv();
            case html -> told.html();
            case svg ->
                new String(
                        SvgWriter.write(
                                TraceDrawing.of(name, traced, ShippedFont.load(), new FigurePrinter(unit)), unit),
                        StandardCharsets.UTF_8);
        };
    }

    private TracingOptions options(Catalog lists) {
        List<Caliper> calipers = new ArrayList<>();
        size("--width", width).ifPresent(size -> calipers.add(new Caliper(Caliper.Across.WIDTH, size)));
        size("--height", height).ifPresent(size -> calipers.add(new Caliper(Caliper.Across.HEIGHT, size)));
        measures.forEach(text -> Measure.read(text, notices).ifPresent(calipers::add));
        TracingOptions options = new TracingOptions(
                units.flatMap(this::unit),
                calipers,
                size("--deviation", deviation),
                Optional.empty(),
                new TracingOptions.Pose(rotate, flip, back.flatMap(this::side)),
                new TracingOptions.Wear(
                        size("--restore-edges", edges).orElse(0.0),
                        size("--paint", paint).orElse(0.0)),
                false);
        return usual(lists).map(options::of).orElse(options);
    }

    private Optional<LengthUnit> unit(String word) {
        Optional<LengthUnit> unit = LengthUnit.named(word);
        if (unit.isEmpty()) {
            notices.add(CommandNotices.UNKNOWN_UNIT.with("word", word));
        }
        return unit;
    }

    private Optional<TracedSide> side(String word) {
        Optional<TracedSide> side = Stream.of(TracedSide.values())
                .filter(one -> one.name().equalsIgnoreCase(word.strip()))
                .findFirst();
        if (side.isEmpty()) {
            notices.add(CommandNotices.UNKNOWN_SIDE.with("word", word));
        }
        return side;
    }

    private Optional<Double> size(String option, Optional<String> text) {
        Optional<Reading> reading = text.map(new LengthReader(LengthUnit.INCH, Map.of())::read);
        if (reading.orElse(null) instanceof Reading.Bad bad) {
            notices.add(SizeNotices.of(bad).of(option));
        } else if (reading.orElse(null) instanceof Reading.Good good) {
            if (good.length().isPositive()) {
                return Optional.of(good.length().toInches());
            }
            notices.add(CommandNotices.NO_SIZE.with("option", option).with("text", text.orElse("")));
        }
        return Optional.empty();
    }

    /** The largest size in which a molding of the kind is usually run. */
    private Optional<TracingOptions.Usual> usual(Catalog lists) {
        List<Family> all = lists.families();
        List<Family> alike =
                all.stream().filter(family -> family.kind().equals(kind)).toList();
        if (alike.isEmpty() && !kind.equals("trim")) {
            TreeSet<String> kinds = new TreeSet<>();
            all.forEach(family -> kinds.add(family.kind()));
            notices.add(CommandNotices.UNKNOWN_KIND.with("kind", kind).cure(Suggestion.phrase(kind, kinds)));
        }
        return alike.stream()
                .flatMap(family -> family.usual().stream())
                .flatMap(List::stream)
                .max(Length::compareTo)
                .map(largest -> new TracingOptions.Usual(kind, largest.toInches()));
    }
}
