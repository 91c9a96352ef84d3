package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Head;
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
import buildup.cli.drawing.mill.NearestDrawing;
import buildup.cli.report.ProfileTelling;
import buildup.cli.scene.Scene;
import buildup.cli.tell.Telling;
import buildup.cli.write.DxfWriter;
import buildup.cli.write.ShippedFont;
import buildup.cli.write.SvgWriter;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.engine.mill.nearest.Freedom;
import buildup.engine.mill.nearest.Neighbors;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Scalar;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** {@code profile}: what the catalog holds, or one profile of it. */
final class ProfileCommand implements Callable<Integer> {
    /** The forms in which profiles are written. */
    enum Format {
        text,
        json,
        csv,
        html,
        svg,
        dxf;

        boolean picture() {
            return this == svg || this == dxf;
        }
    }

    /** What is drawn of a profile. */
    enum View {
        outline,
        sheet,
        milling,
        knife
    }

    private static final int MOST_NEIGHBORS = 5;

    /** A size in millimeters or centimeters. */
    private static final Pattern METRIC = Pattern.compile("\\d ?[mc]m\\b");

    /** What stands behind the name of a family. */
    private static final Pattern SIZES = Pattern.compile(" [0-9].*$");

    private final Streams streams;
    private LengthUnit unit = LengthUnit.INCH;
    private Optional<String> name = Optional.empty();
    private boolean nearest;
    private boolean rotate;
    private boolean scale;
    private Optional<Format> wanted = Optional.empty();
    private Format format = Format.text;
    private final OutputOption output = new OutputOption();
    private Optional<View> view = Optional.empty();
    private List<Double> tilts = List.of();
    private Optional<String> head = Optional.empty();
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    ProfileCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("profile", "Lists what the catalog holds, or describes one profile.", this)
                .maybeWord("NAME", "A profile (default: all of them).", asked -> name = Optional.of(asked))
                .flag("--nearest", "List the profiles nearest to it, and what to plane off.", () -> nearest = true)
                .flag("--rotate", "As --nearest, turned by any angle, not only by quarter turns.", () -> rotate = true)
                .flag("--scale", "As --nearest, made larger or smaller too.", () -> scale = true)
                .option(
                        Format.class,
                        "--format",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: by the ending of the file, else text).",
                        asked -> wanted = Optional.of(asked))
                .with(output::addTo)
                .option(
                        View.class,
                        "--view",
                        "VIEW",
                        "Draw it: ${COMPLETION-CANDIDATES}. A sheet has the sizes, radii, kerfs and spring; milling, the passes; knife, the full-size template.",
                        asked -> view = Optional.of(asked))
                .list(
                        Double.class,
                        "--tilt",
                        "DEGREES",
                        "Angles to which the mill can tilt an outside head, up when above 0; several with commas.",
                        asked -> tilts = asked)
                .option(
                        String.class,
                        "--head",
                        "NAME",
                        "The head that runs it (default: the first that is listed).",
                        asked -> head = Optional.of(asked))
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        List<Format> forms = Stream.of(Format.values())
                .filter(form -> view.isEmpty() || form.picture())
                .toList();
        Optional<Format> settled = new WrittenForm<>(
                        forms, Optional.of(view.isPresent() ? Format.svg : Format.text), "profile", "--format")
                .settled(
                        wanted.filter(form -> view.isEmpty() || form != Format.text),
                        output.file(),
                        streams,
                        saying,
                        place());
        if (settled.isEmpty()) {
            return ExitCode.REFUSED;
        }
        format = settled.get();
        nearest = nearest || rotate || scale;
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        Catalog lists = new CatalogFiles(files, new Claims(), notices).of(catalog.files);
        unit = unit(lists);
        Optional<Profile> profile = name.flatMap(called -> profile(called, lists, notices));
        if (name.isEmpty() && (nearest || format.picture())) {
            notices.add((nearest ? CommandNotices.NEAREST_TO_WHAT : CommandNotices.PICTURE_OF_WHAT).notice());
        }
        Delivery delivery = new Delivery(streams, output.file(), files.read());
        Optional<byte[]> answer = notices.refused() ? Optional.empty() : answer(lists, profile, notices);
        boolean delivered = answer.filter(bytes -> delivery.put(bytes, notices)).isPresent();
        if (!delivered && format == Format.json) {
            streams.out()
                    .print(told(ProfileTelling.refused(place(), unit), notices).json());
        }
        if (format != Format.json) {
            streams.err().print(saying.said(notices.sorted(), place(), unit));
        }
        return ExitCode.of(notices);
    }

    /** That of the catalog; else metric where the sizes of the command line are. */
    private LengthUnit unit(Catalog lists) {
        boolean metric = name.filter(called -> METRIC.matcher(called).find()).isPresent();
        return metric && !lists.unit().isMetric() ? LengthUnit.MILLIMETER : lists.unit();
    }

    /** What messages call the words of the command line. */
    private String place() {
        return name.orElse("profile");
    }

    private CommandAnswer told(Telling telling, Notices notices) {
        return new CommandAnswer(telling, place(), Optional.empty(), notices.sorted());
    }

    /** The profile that a word of the command line asks for; what is said of it has no place in a file. */
    private Optional<Profile> profile(String called, Catalog lists, Notices notices) {
        Notices said = new Notices();
        Optional<Profile> profile = lists.profile(
                new Scalar(called, new Mark(place(), 1, 1)),
                Catalog.USUAL_BOARDS,
                new LengthReader(unit, Map.of()),
                said);
        said.sorted().forEach(notice -> notices.add(notice.nowhere()));
        return profile;
    }

    private Optional<Scene> picture(Profile profile, Catalog lists, Notices notices) {
        ProfilePicture picture = new ProfilePicture(lists, unit);
        return switch (view.orElse(View.outline)) {
            case outline -> picture.scene(profile, name.orElseThrow(), notices);
            case sheet -> picture.sheet(profile, milled(profile, lists, notices), notices);
            case milling -> Optional.of(picture.milling(profile, milled(profile, lists, notices)));
            case knife -> picture.knife(profile, milled(profile, lists, notices), notices);
        };
    }

    private Milled milled(Profile profile, Catalog lists, Notices notices) {
        Notices said = new Notices();
        Optional<Head> named = lists.head(head.map(called -> new Scalar(called, new Mark(place(), 1, 1))), said);
        said.sorted().forEach(notice -> notices.add(notice.nowhere()));
        return Milling.of(profile, lists, named, tilts, notices);
    }

    /** The answer as it is written; nothing when it cannot be drawn. */
    private Optional<byte[]> answer(Catalog lists, Optional<Profile> profile, Notices notices) {
        if (nearest) {
            Profile one = profile.orElseThrow();
            Neighbors found = neighbors(lists, one);
            return format.picture()
                    ? nearest(one, found, notices)
                    : written(ProfileTelling.nearest(one.name(), found, unit), notices);
        }
        return format.picture()
                ? profile.flatMap(one -> picture(one, lists, notices)).map(this::drawn)
                : written(
                        profile.map(one -> ProfileTelling.of(one, milled(one, lists, notices), unit))
                                .orElseGet(() -> ProfileTelling.of(lists, unit)),
                        notices);
    }

    private Optional<byte[]> written(Telling telling, Notices notices) {
        CommandAnswer told = told(telling, notices);
        return Optional.of(
                        switch (format) {
                            case json -> told.json();
                            case csv -> told.csv();
                            case html -> told.html();
                            default -> told.text(output.file().isPresent());
                        })
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }

    private byte[] drawn(Scene scene) {
        return format == Format.svg ? SvgWriter.write(scene, unit) : DxfWriter.write(scene);
    }

    private Neighbors neighbors(Catalog lists, Profile profile) {
        List<Profile> others = Neighbors.usual(lists, unit).stream()
                .filter(other -> !isItself(other, profile))
                .toList();
        ProgressBar bar = new ProgressBar(streams.waiting(), System::nanoTime, Double.MAX_VALUE);
        Neighbors found = Neighbors.of(profile, others, new Freedom(rotate, scale), MOST_NEIGHBORS, bar::goOn);
        bar.end();
        return found;
    }

    private Optional<byte[]> nearest(Profile profile, Neighbors found, Notices notices) {
        Optional<byte[]> picture = found.use()
                .or(() -> found.list().stream().findFirst())
                .map(one -> NearestDrawing.of(profile.name(), found, one, ShippedFont.load(), new FigurePrinter(unit)))
                .map(this::drawn);
        if (picture.isEmpty()) {
            notices.add(CommandNotices.NO_OTHER_PROFILE.notice());
        }
        return picture;
    }

    /** Whether it is the profile asked about, of the same family and size, whatever way the size was asked for. */
    private static boolean isItself(Profile other, Profile asked) {
        return other.outline().equals(asked.outline())
                && SIZES.matcher(other.name())
                        .replaceFirst("")
                        .equals(SIZES.matcher(asked.name()).replaceFirst(""));
    }
}
