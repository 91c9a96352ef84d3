package buildup.catalog.fire;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Fractions;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the entries under {@code clearances:}. */
public final class FireRuleReader {
    private static final String ANY = "any";

    private final Notices notices;

    /** @param notices told what is wrong */
    public FireRuleReader(Notices notices) {
        this.notices = notices;
    }

    /** The rule; nothing, with notices, when a key that it needs is missing or a band cannot be read. */
    public Optional<FireRule> read(Fields plain, String name) {
        Fields fields = plain.about(name);
        String set = needed(fields, "set");
        String edition = needed(fields, "edition");
        String clause = fields.text("clause").orElse("");
        String source = needed(fields, "source");
        boolean usual = fields.yesNo("usual").orElse(false);
        boolean memory = fields.yesNo("memory").orElse(false);
        String about = fields.text("about").orElse("");
        fields.needs("above", CatalogNotices.MISSING_KEY.with("key", "above").with("what", FireNotices.BANDS));
        Optional<List<FireBand>> above = bands(fields, "above", name);
        Optional<List<FireBand>> sides = fields.has("sides") ? bands(fields, "sides", name) : above;
        if (set.isEmpty() || edition.isEmpty() || source.isEmpty() || above.isEmpty() || sides.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new FireRule(name, set, edition, clause, source, usual, memory, about, above.get(), sides.get()));
    }

    private static String needed(Fields fields, String key) {
        return fields.needed(key, CatalogNotices.MISSING_KEY.with("key", key).with("what", FireNotices.SOME_WORDS))
                .map(Scalar::text)
                .map(String::strip)
                .orElse("");
    }

    private Optional<List<FireBand>> bands(Fields fields, String key, String name) {
        List<FireBand> bands = new ArrayList<>();
        List<Fields> written = fields.list(key);
        for (Fields band : written) {
            Optional<FireBand> read = band(band);
            if (read.isEmpty()) {
                notices.add(FireNotices.NO_BAND.notice().at(band.mark()).of(name));
            }
            read.ifPresent(bands::add);
        }
        if (written.isEmpty() || bands.size() < written.size()) {
            return Optional.empty();
        }
        for (int i = 1; i < bands.size(); i++) {
            if (allowsLess(bands.get(i - 1), bands.get(i))) {
                notices.add(FireNotices.LESS_FARTHER_AWAY
                        .with("key", key)
                        .at(written.get(i).mark())
                        .of(name));
                return Optional.empty();
            }
        }
        return Optional.of(bands);
    }

    private static Optional<FireBand> band(Fields fields) {
        boolean past = fields.has("past");
        Optional<Length> from = fields.length(past ? "past" : "from").filter(length -> length.toInches() >= 0);
        Optional<String> most = fields.text("most");
        boolean any = most.map(String::strip).filter(ANY::equals).isPresent();
        Optional<Length> fixed = any || most.isEmpty() ? Optional.empty() : fields.length("most");
        Optional<BigDecimal> share = fields.text("share").flatMap(Fractions::read);
        Optional<Length> less = fields.length("less");
        boolean one =
                (any ? 1 : 0) + (fixed.isPresent() ? 1 : 0) + (share.isPresent() ? 1 : 0) + (less.isPresent() ? 1 : 0)
                        == 1;
        if (from.isEmpty() || !one || (fields.has("past") && fields.has("from"))) {
            return Optional.empty();
        }
        BigDecimal part = share.orElse(less.isPresent() ? BigDecimal.ONE : BigDecimal.ZERO);
        Length plus = fixed.or(() -> less.map(Length::negated)).orElse(Length.ZERO);
        FireBand band = new FireBand(from.get(), past, any, part, plus);
        return part.signum() < 0 || (!any && band.allowed(from.get()).toInches() < 0)
                ? Optional.empty()
                : Optional.of(band);
    }

    /** Whether trim may project less, or no farther away, in the second than at the end of the first. */
    private static boolean allowsLess(FireBand near, FireBand far) {
        if (far.from().compareTo(near.from()) <= 0) {
            return true;
        }
        double most = near.allowed(far.from()).toInches() - Tolerance.ROUNDING;
        return near.any() || (!far.any() && far.allowed(far.from()).toInches() < most);
    }
}
