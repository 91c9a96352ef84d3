package buildup.catalog;

import buildup.catalog.wood.Wood;
import buildup.profiles.Profile;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.Reading;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A catalog, what was asked of it and what it said. */
final class Asked {

    static final Catalog BUILT_IN = Catalog.builtIn();
    static final Mark MARK = new Mark("stack.yaml", 7, 3);

    private final Notices notices = new Notices();
    private final Catalog catalog;

    private Asked(Catalog catalog) {
        this.catalog = catalog;
    }

    static Asked builtIn() {
        return new Asked(BUILT_IN);
    }

    /** The built-in catalog with an own file laid over it. */
    static Asked with(String yaml) {
        Asked builtIn = builtIn();
        Document own = DocumentReader.read("own.yaml", yaml.getBytes(StandardCharsets.UTF_8), builtIn.notices)
                .orElseThrow();
        Asked asked = new Asked(builtIn.catalog.with(own, new Claims(), builtIn.notices));
        asked.notices.addAll(builtIn.notices.sorted());
        return asked;
    }

    Catalog catalog() {
        return catalog;
    }

    Optional<Profile> maybe(String call, String boards) {
        LengthReader lengths =
                new LengthReader(LengthUnit.INCH, Map.of("lip", Length.inches(0.25), "tall", Length.inches(5.5)));
        return catalog.profile(new Scalar(call, MARK), boards, lengths, notices);
    }

    Profile profile(String call) {
        return maybe(call, Catalog.USUAL_BOARDS).orElseThrow(() -> new AssertionError(notices.sorted()));
    }

    Optional<Wood> wood(String name) {
        return catalog.wood(new Scalar(name, MARK), notices);
    }

    List<Notice> notices() {
        return notices.sorted();
    }

    /** Each notice in one line: level, code, place, message and cure. */
    List<String> said() {
        return notices.sorted().stream()
                .map(notice -> notice.level() + " " + notice.code() + " "
                        + notice.mark().map(Mark::toString).orElse("-") + " " + NoticeWords.INCHES.message(notice)
                        + " | "
                        + NoticeWords.INCHES.cure(notice))
                .toList();
    }

    static Length inches(String text) {
        return ((Reading.Good) new LengthReader(LengthUnit.INCH, Map.of()).read(text)).length();
    }
}
