package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.cli.drawing.NearestDrawing;
import buildup.cli.report.CatalogReport;
import buildup.cli.report.NearestReport;
import buildup.cli.report.NoticeText;
import buildup.cli.report.ProfileReport;
import buildup.cli.scene.Scene;
import buildup.cli.write.DxfWriter;
import buildup.cli.write.ShippedFont;
import buildup.cli.write.SvgWriter;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.engine.mill.nearest.Freedom;
import buildup.engine.mill.nearest.Neighbours;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code profile}: what the catalog holds, or one profile of it. */
@Command(
        name = "profile",
        mixinStandardHelpOptions = true,
        description = "Tells what the catalog holds, or describes one profile.")
final class ProfileCommand implements Callable<Integer> {
    /** The forms in which profiles are written. */
    enum Format {
        text,
        json,
        svg,
        dxf
    }

    /** What is drawn of a profile. */
    enum View {
        outline,
        milling,
        knife
    }

    /** What messages call the words of the command line. */
    private static final String WORDS = "NAME";

    private static final int MOST_NEIGHBOURS = 5;

    /** What stands behind the name of a family. */
    private static final Pattern SIZES = Pattern.compile(" [0-9].*$");

    private final Streams streams;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "A profile (default: all of them).")
    private Optional<String> name = Optional.empty();

    @Option(names = "--nearest", description = "Tell which others come nearest to it.")
    private boolean nearest;

    @Option(names = "--any-turn", description = "As --nearest, at any angle, not in quarter turns alone.")
    private boolean anyTurn;

    @Option(names = "--any-size", description = "As --nearest, larger or smaller too.")
    private boolean anySize;

    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES} (default: text).")
    private Format format = Format.text;

    @Option(
            names = "--view",
            paramLabel = "VIEW",
            description = "Draw it: ${COMPLETION-CANDIDATES}; milling shows the passes, knife the full-size template.")
    private Optional<View> view = Optional.empty();

    @Option(
            names = "--tilt",
            paramLabel = "DEGREES",
            split = ",",
            description = "Heads in front that the mill can tilt, up when above 0; several with commas.")
    private List<Double> tilts = List.of();

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    ProfileCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (view.isPresent() && format == Format.text) {
            format = Format.svg;
        }
        nearest = nearest || anyTurn || anySize;
        Notices notices = new Notices();
        Claims claims = new Claims();
        Catalog lists = new CatalogFiles(new InputFiles(streams, notices), claims, notices).of(catalog.files);
        Optional<Profile> profile = name.flatMap(called -> profile(called, lists, notices));
        if (name.isEmpty() && (nearest || format == Format.svg || format == Format.dxf)) {
            notices.add((nearest ? CommandNotices.NEAREST_TO_WHAT : CommandNotices.PICTURE_OF_WHAT).notice());
        }
        if (!notices.refused() && nearest) {
            profile.ifPresent(one -> answerNearest(lists, one, notices));
        } else if (!notices.refused()) {
            answer(lists, profile, notices);
        } else if (format == Format.json) {
            streams.out().print(ProfileReport.refusal(name.orElse(""), notices.sorted()));
        }
        if (format != Format.json) {
            streams.err().print(NoticeText.write(notices.sorted(), WORDS, LengthUnit.INCH));
        }
        return notices.exitCode();
    }

    /** The profile that a word of the command line asks for; what is said of it has no place in a file. */
    private static Optional<Profile> profile(String called, Catalog lists, Notices notices) {
        Notices said = new Notices();
        Optional<Profile> profile = lists.profile(
                new Scalar(called, new Mark(WORDS, 1, 1)),
                Catalog.USUAL_BOARDS,
                new LengthReader(LengthUnit.INCH, Map.of()),
                said);
        said.sorted().forEach(notice -> notices.add(notice.nowhere()));
        return profile;
    }

    private Optional<Scene> picture(Profile profile, Catalog lists, Notices notices) {
        ProfilePicture picture = new ProfilePicture(lists);
        return switch (view.orElse(View.outline)) {
            case outline -> picture.scene(profile, name.orElseThrow(), notices);
            case milling -> Optional.of(picture.milling(profile, milled(profile, lists, notices)));
            case knife -> picture.knife(profile, milled(profile, lists, notices), notices);
        };
    }

    private Milled milled(Profile profile, Catalog lists, Notices notices) {
        return Milling.of(profile, lists, tilts, notices);
    }

    private void answer(Catalog lists, Optional<Profile> profile, Notices notices) {
        switch (format) {
            case text ->
                streams.out()
                        .print(profile.map(one -> ProfileReport.text(one, milled(one, lists, notices)))
                                .orElseGet(() -> CatalogReport.text(lists)));
            case json ->
                streams.out()
                        .print(profile.map(
                                        one -> ProfileReport.json(one, milled(one, lists, notices), notices.sorted()))
                                .orElseGet(() -> CatalogReport.json(lists, notices.sorted())));
            case svg, dxf ->
                profile.flatMap(one -> picture(one, lists, notices))
                        .map(this::written)
                        // as they are: a DXF file has letters of its own
                        .ifPresent(streams::send);
        }
    }

    private byte[] written(Scene scene) {
        return format == Format.svg ? SvgWriter.write(scene, LengthUnit.INCH) : DxfWriter.write(scene);
    }

    private void answerNearest(Catalog lists, Profile profile, Notices notices) {
        List<Profile> others = Neighbours.usual(lists).stream()
                .filter(other -> !isItself(other, profile))
                .toList();
        Neighbours found = Neighbours.of(profile, others, new Freedom(anyTurn, anySize), MOST_NEIGHBOURS);
        switch (format) {
            case text -> streams.out().print(NearestReport.text(profile.name(), found));
            case json -> streams.out().print(NearestReport.json(profile.name(), found, notices.sorted()));
            case svg, dxf ->
                found.use()
                        .or(() -> found.list().stream().findFirst())
                        .map(one -> NearestDrawing.of(profile.name(), found, one, ShippedFont.load()))
                        .map(this::written)
                        .ifPresentOrElse(streams::send, () -> notices.add(CommandNotices.NO_OTHER_PROFILE.notice()));
        }
    }

    /** Whether it is the profile asked about, of the same family and size, whatever way the size was asked for. */
    private static boolean isItself(Profile other, Profile asked) {
        return other.outline().equals(asked.outline())
                && SIZES.matcher(other.name())
                        .replaceFirst("")
                        .equals(SIZES.matcher(asked.name()).replaceFirst(""));
    }
}
