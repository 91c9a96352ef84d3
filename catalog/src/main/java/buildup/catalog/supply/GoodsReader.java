package buildup.catalog.supply;

import buildup.catalog.entry.CatalogNotices;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Text;
import buildup.shared.length.Length;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the entries under {@code supplies:} and {@code works:}, and the values that documents share with them. */
public final class GoodsReader {
    private static final int MOST_COATS = 9;
    private static final int MOST_IN_A_BOX = 100_000;
    private static final Length THICKEST_BEAD = Length.inches(1);
    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
    private static final Pattern SHARE = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,9})?) ?%");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Notices notices;

    public GoodsReader(Notices notices) {
        this.notices = notices;
    }

    /** A good from its keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Good> good(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        Optional<Good.Kind> kind = kind(fields, name);
        Optional<WetFilm> coverage = coverage(fields);
        Optional<Length> bead = bead(fields);
        int coats = coats(fields).orElse(1);
        if (kind.filter(Good.Kind::spread).isPresent()) {
            fields.needs(
                    "coverage",
                    CatalogNotices.MISSING_KEY.with("key", "coverage").with("what", SupplyNotices.SOME_COVERAGE));
        }
        if (kind.equals(Optional.of(Good.Kind.ADHESIVE))) {
            fields.needs("bead", CatalogNotices.MISSING_KEY.with("key", "bead").with("what", CatalogNotices.A_LENGTH));
        }
        if (fields.scalars("packs").isEmpty()) {
            notices.add(CatalogNotices.MISSING_KEY
                    .with("key", "packs")
                    .with("what", SupplyNotices.SOME_PACKS)
                    .at(fields.mark("packs"))
                    .of(name));
        }
        List<Volume> packs = several(fields, "packs", Volume::read, SupplyNotices.NO_VOLUME);
        List<Volume> metric = fields.has("metric-packs")
                ? several(fields, "metric-packs", Volume::read, SupplyNotices.NO_VOLUME)
                : packs;
        boolean spreads = kind.filter(Good.Kind::spread).isEmpty() || coverage.isPresent();
        boolean beads = !kind.equals(Optional.of(Good.Kind.ADHESIVE)) || bead.isPresent();
        return kind.isPresent() && spreads && beads && !packs.isEmpty()
                ? Optional.of(new Good(name, about, kind.get(), coverage, bead, coats, packs, metric))
                : Optional.empty();
    }

    /** A kind of work from its keys; empty, with notices, when its waste is missing or wrong. */
    public Optional<KindOfWork> work(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        return fields.needed(
                        "waste", CatalogNotices.MISSING_KEY.with("key", "waste").with("what", SupplyNotices.SOME_WASTE))
                .flatMap(this::share)
                .map(waste -> new KindOfWork(name, about, waste));
    }

    private Optional<Good.Kind> kind(Fields fields, String name) {
        List<String> words =
                Arrays.stream(Good.Kind.values()).map(Good.Kind::word).toList();
        Optional<Scalar> word = fields.needed(
                "kind",
                CatalogNotices.MISSING_KEY
                        .with("key", "kind")
                        .with(
                                "what",
                                CatalogNotices.ONE_OF.with(
                                        "words",
                                        Listing.commas(
                                                words.stream().map(Text::new).toList()))));
        Optional<Good.Kind> kind = word.flatMap(asked -> Arrays.stream(Good.Kind.values())
                .filter(one -> one.word().equals(asked.text().strip()))
                .findFirst());
        if (word.isPresent() && kind.isEmpty()) {
            notices.add(SupplyNotices.UNKNOWN_KIND
                    .with("name", word.get().text())
                    .at(word.get().mark())
                    .of(name)
                    .cure(Suggestion.phrase(word.get().text(), words)));
        }
        return kind;
    }

    /** A share as {@code 15 %}; nothing, with a refusal, when it is none. */
    public Optional<BigDecimal> share(Scalar text) {
        Matcher share = SHARE.matcher(text.text().strip());
        if (share.matches()) {
            return Optional.of(new BigDecimal(share.group(1)).divide(HUNDRED));
        }
        return refused(text, CatalogNotices.NO_SHARE);
    }

    /** The coverage under {@code coverage:}, if there is one. */
    public Optional<WetFilm> coverage(Fields fields) {
        return given(fields, "coverage")
                .flatMap(text -> WetFilm.read(text.text()).or(() -> refused(text, SupplyNotices.NO_COVERAGE)));
    }

    /** The number of coats under {@code coats:}, if there is one. */
    public Optional<Integer> coats(Fields fields) {
        return given(fields, "coats").flatMap(text -> whole(text, MOST_COATS, SupplyNotices.NO_COATS));
    }

    /** The diameter under {@code bead:}, if there is one. */
    public Optional<Length> bead(Fields fields) {
        Optional<Length> bead = fields.has("bead") ? fields.length("bead") : Optional.empty();
        if (bead.filter(size -> !size.isPositive() || size.compareTo(THICKEST_BEAD) > 0)
                .isPresent()) {
            notices.add(SupplyNotices.NO_BEAD
                    .with("size", Figure.length(bead.get().toInches()))
                    .with("most", Figure.length(THICKEST_BEAD.toInches()))
                    .at(fields.mark("bead")));
            return Optional.empty();
        }
        return bead;
    }

    /** The sizes of box under {@code box:}; none when there is none. */
    public List<Integer> boxes(Fields fields) {
        return fields.has("box") ? several(fields, "box", this::count, SupplyNotices.NO_BOX) : List.of();
    }

    /** A size of pack; nothing, with a refusal, when it is none. */
    public Optional<Volume> pack(Scalar text) {
        return Volume.read(text.text()).or(() -> refused(text, SupplyNotices.NO_VOLUME));
    }

    /** How many lie in a box; nothing, with a refusal, when it is no whole number. */
    public Optional<Integer> box(Scalar text) {
        return whole(text, MOST_IN_A_BOX, SupplyNotices.NO_BOX);
    }

    private Optional<Integer> count(String text) {
        return WHOLE.matcher(text.strip()).matches()
                ? Optional.of(Integer.parseInt(text.strip())).filter(count -> count >= 1 && count <= MOST_IN_A_BOX)
                : Optional.empty();
    }

    private Optional<Integer> whole(Scalar text, int most, Kind wrong) {
        String plain = text.text().strip();
        Optional<Integer> count = WHOLE.matcher(plain).matches()
                ? Optional.of(Integer.parseInt(plain)).filter(one -> one >= 1 && one <= most)
                : Optional.empty();
        if (count.isEmpty()) {
            notices.add(wrong.with("text", text.text())
                    .with("most", Figure.count(most))
                    .at(text.mark()));
        }
        return count;
    }

    private static Optional<Scalar> given(Fields fields, String key) {
        return fields.has(key) ? fields.scalar(key) : Optional.empty();
    }

    private <T> List<T> several(Fields fields, String key, Function<String, Optional<T>> reader, Kind wrong) {
        List<T> all = new ArrayList<>();
        for (Scalar text : fields.scalars(key)) {
            Optional<T> one = reader.apply(text.text());
            if (one.isEmpty()) {
                notices.add(wrong.with("text", text.text())
                        .with("most", Figure.count(MOST_IN_A_BOX))
                        .at(text.mark()));
            }
            one.ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    private <T> Optional<T> refused(Scalar text, Kind wrong) {
        notices.add(wrong.with("text", text.text()).at(text.mark()));
        return Optional.empty();
    }
}
