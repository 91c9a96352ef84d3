package buildup.engine.mill.milling;

import buildup.catalog.Catalog;
import buildup.catalog.family.Family;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Profiles to be milled, from the catalog or from words, and what is said of them. */
final class Molded {
    static final Catalog BUILT_IN = Catalog.builtIn();

    private Molded() {}

    static Profile profile(String call) {
        return profile(call, BUILT_IN);
    }

    static Profile profile(String call, Catalog catalog) {
        Notices notices = new Notices();
        return catalog.profile(
                        new Scalar(call, new Mark("test", 1, 1)),
                        Catalog.USUAL_BOARDS,
                        new LengthReader(LengthUnit.INCH, Map.of()),
                        notices)
                .orElseThrow(() -> new AssertionError(call + ": " + notices.sorted()));
    }

    static Profile words(String words) {
        return profile(
                "shape 1 x 1",
                with("profiles: [{ name: shape, kind: shape, about: x, sizes: [a, b], words: [" + words + "] }]"));
    }

    static Catalog with(String yaml) {
        Notices notices = new Notices();
        Document own = DocumentReader.read("own.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Catalog catalog = BUILT_IN.with(own, new Claims(), notices);
        if (notices.refused()) {
            throw new AssertionError(notices.sorted());
        }
        return catalog;
    }

    /** Every family of the catalog at every usual size. */
    static List<Profile> all() {
        List<Profile> all = new ArrayList<>();
        for (Family family : BUILT_IN.families()) {
            family.usual()
                    .forEach(sizes -> all.add(profile(family.name() + " "
                            + sizes.stream().map(Molded::text).collect(Collectors.joining(" x ")))));
        }
        return all;
    }

    private static String text(Length size) {
        return LengthPrinter.fraction(size, 64);
    }

    static Milled milled(Profile profile) {
        return Milling.of(profile, BUILT_IN, BUILT_IN.head(Optional.empty(), new Notices()), List.of(), new Notices());
    }

    /** Code, message and cure of each notice. */
    static List<String> said(Profile profile, Catalog catalog) {
        Notices notices = new Notices();
        Milling.of(profile, catalog, catalog.head(Optional.empty(), notices), List.of(), notices);
        return notices.sorted().stream()
                .map(notice -> notice.level() + " " + notice.code() + ": " + NoticeWords.INCHES.message(notice) + " | "
                        + NoticeWords.INCHES.cure(notice))
                .toList();
    }
}
