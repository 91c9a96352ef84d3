package buildup.catalog.mill;

import buildup.catalog.entry.CatalogNotices;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the widths in which boards come: one width ({@code 10}), widths evenly spread ({@code 5 to 12}, as much wood at
 * each quarter inch), or several of either with their shares of the wood ({@code { 6: 40 %, 8 to 10: 60 % }}).
 */
public final class BoardWidths {
    /** Widths of a spread lie so far apart, in: as finely as boards are tallied. */
    private static final double STEP = 0.25;

    /** No board is narrower or wider. */
    private static final Length LEAST = Length.inches(0.5);

    private static final Length MOST = Length.inches(60);

    private static final Pattern SPREAD = Pattern.compile("(.+) to (.+)");

    private final Notices notices;

    /**
     * A reader.
     *
     * @param notices told what is wrong with them
     */
    public BoardWidths(Notices notices) {
        this.notices = notices;
    }

    /** In rising order; none when there is no such key, or anything under it was refused. */
    public List<Mill.Width> read(Fields fields, String key, String name) {
        Optional<Node> node = fields.node(key);
        if (node.isPresent() && node.get() instanceof Mapping) {
            return shared(fields, key, name);
        }
        return fields.scalar(key)
                .map(text -> spread(fields, text, key, name, BigDecimal.ONE))
                .orElse(List.of());
    }

    private List<Mill.Width> shared(Fields fields, String key, String name) {
        List<Mill.Width> widths = new ArrayList<>();
        Mapping mapping = fields.mapping(key).orElseThrow();
        Fields inside = fields.fields(mapping, key);
        BigDecimal sum = BigDecimal.ZERO;
        boolean sound = true;
        for (Entry entry : mapping.entries()) {
            Optional<Scalar> text = inside.scalar(entry.key().text());
            Optional<BigDecimal> share =
                    text.flatMap(one -> RatesReader.share(one.text())).filter(one -> one.signum() > 0);
            if (text.isPresent() && share.isEmpty()) {
                notices.add(CatalogNotices.NO_SHARE
                        .with("text", text.get().text())
                        .at(text.get().mark())
                        .of(name));
            }
            List<Mill.Width> here = share.map(one -> spread(fields, entry.key(), key, name, one))
                    .orElse(List.of());
            sound = sound && !here.isEmpty();
            sum = sum.add(share.orElse(BigDecimal.ZERO));
            widths.addAll(here);
        }
        if (sound && sum.compareTo(BigDecimal.ONE) != 0) {
            notices.add(CatalogNotices.BOARD_SHARES
                    .with("sum", Figure.share(sum.doubleValue()))
                    .at(mapping.mark())
                    .of(name));
            sound = false;
        }
        widths.sort(Comparator.comparing(Mill.Width::width));
        return sound ? widths : List.of();
    }

    private List<Mill.Width> spread(Fields fields, Scalar text, String key, String name, BigDecimal share) {
        Matcher spread = SPREAD.matcher(text.text().strip());
        boolean several = spread.matches();
        String first = several ? spread.group(1) : text.text();
        String last = several ? spread.group(2) : text.text();
        Optional<Length> from = fields.readLength(new Scalar(first, text.mark()));
        Optional<Length> to = several ? fields.readLength(new Scalar(last, text.mark())) : from;
        if (from.isEmpty() || to.isEmpty()) {
            return List.of();
        }
        double least = from.get().toInches();
        double most = to.get().toInches();
        if (from.get().compareTo(LEAST) < 0 || to.get().compareTo(MOST) > 0 || least > most) {
            notices.add(CatalogNotices.NO_RATE_SIZE
                    .with("key", key)
                    .with("size", text.text())
                    .at(text.mark())
                    .of(name));
            return List.of();
        }
        int steps = (int) Math.floor((most - least) / STEP + Tolerance.COINCIDENT);
        List<Mill.Width> widths = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            widths.add(new Mill.Width(
                    Length.inches(least + i * STEP),
                    share.divide(BigDecimal.valueOf(steps + 1), MathContext.DECIMAL64)));
        }
        return widths;
    }
}
