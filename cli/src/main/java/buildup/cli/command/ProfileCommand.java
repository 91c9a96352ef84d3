package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.cli.report.CatalogReport;
import buildup.cli.report.NoticeText;
import buildup.cli.report.ProfileReport;
import buildup.cli.write.DxfWriter;
import buildup.cli.write.SvgWriter;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
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

    /** What messages call the words of the command line. */
    private static final String WORDS = "NAME";

    private final Streams streams;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "A profile (default: all of them).")
    private Optional<String> name = Optional.empty();

    @Option(names = "--nearest", description = "Tell which others come nearest to it.")
    private boolean nearest;

    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES} (default: text).")
    private Format format = Format.text;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    ProfileCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (nearest) {
            return NotThereYet.say(streams, "profile --nearest");
        }
        Notices notices = new Notices();
        Claims claims = new Claims();
        Catalog lists = lists(claims, notices);
        Optional<Profile> profile = name.flatMap(called -> profile(called, lists, notices));
        if (name.isEmpty() && (format == Format.svg || format == Format.dxf)) {
            notices.add(Notice.refusal("no-profile", "A picture is drawn of one profile.")
                    .cure("Name it, with its sizes."));
        }
        notices.addAll(claims.ordinaryEchoes());
        if (!notices.refused()) {
            answer(lists, profile, notices);
        } else if (format == Format.json) {
            streams.out().print(ProfileReport.refusal(name.orElse(""), notices.sorted()));
        }
        if (format != Format.json) {
            streams.err().print(NoticeText.write(notices.sorted(), WORDS));
        }
        return notices.exitCode();
    }

    private Catalog lists(Claims claims, Notices notices) {
        InputFiles files = new InputFiles(streams, notices);
        Catalog lists = Catalog.builtIn();
        for (Path path : catalog.files) {
            Optional<Document> own = files.file(InputFiles.Kind.CATALOG, path);
            lists = own.isPresent() ? lists.with(own.get(), claims, notices) : lists;
        }
        return lists;
    }

    /** The profile that a word of the command line asks for; what is said of it has no place in a file. */
    private static Optional<Profile> profile(String called, Catalog lists, Notices notices) {
        Notices said = new Notices();
        Optional<Profile> profile = lists.profile(
                new Scalar(called, new Mark(WORDS, 1, 1)),
                Catalog.USUAL_BOARDS,
                new LengthReader(LengthUnit.INCH, Map.of()),
                said);
        said.sorted()
                .forEach(notice -> notices.add(new Notice(
                        notice.level(),
                        notice.code(),
                        Optional.empty(),
                        notice.piece(),
                        notice.amount(),
                        notice.message(),
                        notice.cure())));
        return profile;
    }

    private void answer(Catalog lists, Optional<Profile> profile, Notices notices) {
        switch (format) {
            case text ->
                streams.out().print(profile.map(ProfileReport::text).orElseGet(() -> CatalogReport.text(lists)));
            case json ->
                streams.out()
                        .print(profile.map(one -> ProfileReport.json(one, notices.sorted()))
                                .orElseGet(() -> CatalogReport.json(lists, notices.sorted())));
            case svg, dxf ->
                profile.flatMap(one -> new ProfilePicture(lists).scene(one, name.orElseThrow(), notices))
                        .map(scene ->
                                format == Format.svg ? SvgWriter.write(scene, LengthUnit.INCH) : DxfWriter.write(scene))
                        // as they are: a DXF file has letters of its own
                        .ifPresent(streams::send);
        }
    }
}
