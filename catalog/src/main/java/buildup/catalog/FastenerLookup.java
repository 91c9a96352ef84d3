package buildup.catalog;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.words.SizeText;
import buildup.catalog.words.WordProblems;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Where a stack asks for nails and screws. */
final class FastenerLookup {
    /** Longer than any nail or screw in trim: a slip, most likely millimeters read as inches. */
    private static final Length LONGEST = Length.inches(12);

    private final Lists lists;
    private final Notices notices;

    FastenerLookup(Lists lists, Notices notices) {
        this.lists = lists;
        this.notices = notices;
    }

    /** {@code 15 ga x 2-1/2}, {@code 8d finish}, {@code screw 8 x 2}; capitals and blanks in the name do not matter. */
    Optional<Fastener.Cut> cut(Scalar call, LengthReader lengths) {
        List<String> parts = SizeText.split(call.text());
        String asked = parts.get(0);
        Optional<Fastener> fastener = lists.names(Fastener.class).stream()
                .filter(name -> plain(name).equals(plain(asked)))
                .findFirst()
                .flatMap(name -> lists.find(Fastener.class, name));
        if (fastener.isEmpty()) {
            unknown(call, asked);
            return Optional.empty();
        }
        if (parts.size() == 1 && fastener.get().lengths().size() == 1) {
            return Optional.of(fastener.get().cuts().get(0));
        }
        if (parts.size() != 2) {
            say(CatalogNotices.NO_NAIL_LENGTH.with("sold", sold(fastener.get())), call);
            return Optional.empty();
        }
        return new WordProblems(call.text(), notices)
                .length(parts.get(1), lengths, call.mark())
                .flatMap(length -> cut(fastener.get(), length, call));
    }

    private Optional<Fastener.Cut> cut(Fastener fastener, Length length, Scalar call) {
        if (!length.isPositive() || length.compareTo(LONGEST) > 0) {
            say(CatalogNotices.LONG_NAIL.with("sold", sold(fastener)).amount(Sizes.figure(length)), call);
            return Optional.empty();
        }
        Optional<Length> listed = fastener.lengths().stream()
                .filter(one -> one.near(length, Length.inches(Tolerance.SAW_CUT)))
                .findFirst();
        if (listed.isEmpty()) {
            say(
                    CatalogNotices.NOT_SOLD
                            .with("fastener", fastener.name())
                            .with("sold", sold(fastener))
                            .amount(Sizes.figure(length)),
                    call);
        }
        return Optional.of(new Fastener.Cut(fastener, length));
    }

    private static Phrase sold(Fastener fastener) {
        return CatalogNotices.SOLD.with(
                "lengths",
                Listing.commas(fastener.lengths().stream().map(Sizes::figure).toList()));
    }

    private void unknown(Scalar call, String asked) {
        Map<String, String> known = new TreeMap<>();
        lists.names(Fastener.class).forEach(name -> known.put(name, ""));
        say(CatalogNotices.UNKNOWN_FASTENER.with("name", asked).with("near", NearNames.cure(asked, known)), call);
    }

    private static String plain(String name) {
        return name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }

    private void say(Notice notice, Scalar call) {
        new WordProblems(call.text(), notices).say(notice, call.mark());
    }
}
