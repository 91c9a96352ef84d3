package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.catalog.family.Family;
import buildup.catalog.format.Drawn;
import buildup.catalog.format.TracingReader;
import buildup.cli.command.files.CatalogFiles;
import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandAnswer;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.Streams;
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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code trace}: a tracing or a drawing becomes a profile. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = "Turns a tracing (CSV, SVG, DXF) into a profile of lines and arcs.")
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

    @Parameters(index = "0", paramLabel = "FILE", description = "The tracing; - is standard input.")
    private String file = "";

    @Option(names = "--units", paramLabel = "UNIT", description = "Of the tracing: in, mm, cm or ft.")
    private Optional<String> units = Optional.empty();

    @Option(
            names = "--width",
            paramLabel = "SIZE",
            description = "Back to face, by calipers: sets the scale or checks it.")
    private Optional<String> width = Optional.empty();

    @Option(
            names = "--height",
            paramLabel = "SIZE",
            description = "Bottom to top, by calipers: sets the scale or checks it.")
    private Optional<String> height = Optional.empty();

    @Option(
            names = "--measure",
            paramLabel = "'MEMBER height = SIZE'",
            description = "A size of one member, or from one to another, by calipers: 'face height = 2-1/2',"
                    + " 'bottom to cove width = 1-1/4', 'cove radius = 1/2'. May be repeated.")
    private List<String> measures = List.of();

    @Option(
            names = "--deviation",
            paramLabel = "SIZE",
            description = "How far the outline may lie from the points (default: by their scatter).")
    private Optional<String> deviation = Optional.empty();

    @Option(
            names = "--restore-edges",
            paramLabel = "SIZE",
            description = "Sharpen edges that are worn by no more than this.")
    private Optional<String> edges = Optional.empty();

    @Option(names = "--paint", paramLabel = "SIZE", description = "Thickness of paint to remove (not from the back).")
    private Optional<String> paint = Optional.empty();

    @Option(names = "--layer", paramLabel = "NAME", description = "Read only this layer or group of the drawing.")
    private Optional<String> layer = Optional.empty();

    @Option(
            names = "--rotate",
            paramLabel = "DEGREES",
            description = "Turn the tracing counterclockwise before it is read (default: 0).")
    private double rotate;

    @Option(names = "--flip", description = "Turn the tracing end for end.")
    private boolean flip;

    @Option(
            names = "--back",
            paramLabel = "SIDE",
            description = "Where the back lies as drawn: left, right, up or down (default: found).")
    private Optional<String> back = Optional.empty();

    @Option(names = "--kind", paramLabel = "KIND", description = "What the trade calls it (default: trim).")
    private String kind = "trim";

    @Option(names = "--name", paramLabel = "NAME", description = "What the profile is called (default: traced).")
    private String name = "traced";

    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES} (default: yaml).")
    private Format format = Format.yaml;

    @Mixin
    private final OutputOption output = new OutputOption();

    @Mixin
    private final SayingOption saying = new SayingOption();

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    TraceCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
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
                        options.unit().isEmpty() && found.unit().isPresent()
                                ? options.in(found.unit().get())
                                : options,
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
            case yaml -> TraceReport.yaml(name, kind, traced, notices.sorted());
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
                        size("--paint", paint).orElse(0.0)));
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
