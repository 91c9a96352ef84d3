package buildup.catalog;

import buildup.catalog.words.SizeText;
import buildup.catalog.words.Speaker;
import buildup.shared.document.Scalar;
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
final class FastenerCounter {
    /** Longer than any nail or screw in trim: a slip, most likely millimetres read as inches. */
    private static final Length LONGEST = Length.inches(12);

    private final Lists lists;
    private final Notices notices;

    FastenerCounter(Lists lists, Notices notices) {
        this.lists = lists;
        this.notices = notices;
    }

    /** {@code 15 ga x 2-1/2}, {@code 8d finish}, {@code screw 8 x 2}; capitals and blanks in the name do not matter. */
    Optional<Fastener.Cut> cut(Scalar call, LengthReader lengths) {
        List<String> parts = SizeText.split(call.text());
        String asked = parts.get(0);
        Optional<Fastener> fastener = lists.fasteners().keySet().stream()
                .filter(name -> plain(name).equals(plain(asked)))
                .findFirst()
                .flatMap(lists::fastener);
        if (fastener.isEmpty()) {
            unknown(call, asked);
            return Optional.empty();
        }
        if (parts.size() == 1 && fastener.get().lengths().size() == 1) {
            return Optional.of(fastener.get().cuts().get(0));
        }
        if (parts.size() != 2) {
            refuse("missing-size", call, "'" + call.text() + "' needs one length.", sold(fastener.get()));
            return Optional.empty();
        }
        return new Speaker(call.text(), notices)
                .length(parts.get(1), lengths, call.mark())
                .flatMap(length -> cut(fastener.get(), length, call));
    }

    private Optional<Fastener.Cut> cut(Fastener fastener, Length length, Scalar call) {
        if (!length.isPositive() || length.compareTo(LONGEST) > 0) {
            refuse("not-a-size", call, "No nail or screw is " + Sizes.text(length) + " in long.", sold(fastener));
            return Optional.empty();
        }
        Optional<Length> listed = fastener.lengths().stream()
                .filter(one -> one.near(length, Length.inches(1.0 / 64)))
                .findFirst();
        if (listed.isEmpty()) {
            notices.add(Notice.problem(
                            "unknown-length", "'" + fastener.name() + "' is not sold " + Sizes.text(length) + " long.")
                    .at(call.mark())
                    .of(call.text())
                    .amount(length)
                    .cure(sold(fastener)));
        }
        return Optional.of(new Fastener.Cut(fastener, length));
    }

    private static String sold(Fastener fastener) {
        List<String> sizes = fastener.lengths().stream().map(Sizes::text).toList();
        return "Sold: " + String.join(", ", sizes) + "; list others under 'fasteners:' in a catalog file.";
    }

    private void unknown(Scalar call, String asked) {
        Map<String, String> known = new TreeMap<>();
        lists.fasteners().keySet().forEach(name -> known.put(name, ""));
        refuse(
                "unknown-name",
                call,
                "No nail or screw is called '" + asked + "'.",
                NearNames.cure(asked, known)
                        + " Or list your own, with its diameter, under 'fasteners:' in a catalog file.");
    }

    private static String plain(String name) {
        return name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }

    private void refuse(String code, Scalar call, String message, String cure) {
        new Speaker(call.text(), notices).refuse(code, message, call.mark(), cure);
    }
}
