package buildup.engine.judge.must;

import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the lines under {@code wish:}: {@code least cost}, {@code least change}, {@code projection near 6 x 2}, {@code shares like Ionic}. */
final class WishReader {
    private static final Pattern WEIGHTED = Pattern.compile("(.*\\S) +x +([0-9]{1,4}(?:\\.[0-9]{1,4})?)");
    private static final Pattern LIKE = Pattern.compile("shares +like +(\\S.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern NEAR = Pattern.compile("(.*\\S) +near +(\\S.*)");

    /** How far the shares of the parts are from those of an order, as a figure is asked for. */
    private static final String OFF_AN_ORDER = "off in ";

    /** The key of the sheet in which the orders stand. */
    private static final String ORDERS = "proportion.orders";

    private final MustReader figures;
    private final Notices notices;

    WishReader(MustReader figures, Notices notices) {
        this.figures = figures;
        this.notices = notices;
    }

    Optional<WishRule> read(Scalar line) {
        String text = line.text().strip();
        Matcher weighted = WEIGHTED.matcher(text);
        boolean weighs = weighted.matches();
        String words = weighs ? weighted.group(1) : text;
        double weight = weighs ? Double.parseDouble(weighted.group(2)) : 1;
        if (weighs && weight <= 0) {
            return refused(text, line.mark());
        }
        String low = words.toLowerCase(Locale.ROOT);
        if (low.equals("least change")) {
            return Optional.of(new WishRule(text, line.mark(), WishRule.Aim.LEAST_CHANGE, Optional.empty(), 0, weight));
        }
        for (WishRule.Aim aim : List.of(WishRule.Aim.LEAST, WishRule.Aim.MOST)) {
            String first = aim.name().toLowerCase(Locale.ROOT) + " ";
            if (low.startsWith(first)) {
                return figures.figure(words.substring(first.length()).strip(), line.mark())
                        .map(figure -> new WishRule(text, line.mark(), aim, Optional.of(figure), 0, weight));
            }
        }
        Matcher like = LIKE.matcher(words);
        if (like.matches() && !figures.holds(ORDERS)) {
            notices.add(MustNotices.NO_PARTS.with("wish", text).at(line.mark()));
            return Optional.empty();
        }
        if (like.matches()) {
            return figures.figure(OFF_AN_ORDER + like.group(1), line.mark())
                    .map(figure -> new WishRule(text, line.mark(), WishRule.Aim.LEAST, Optional.of(figure), 0, weight));
        }
        Matcher near = NEAR.matcher(words);
        return near.matches() ? near(text, near, weight, line.mark()) : refused(text, line.mark());
    }

    private Optional<WishRule> near(String text, Matcher near, double weight, Mark mark) {
        Optional<AskedFigure> figure = figures.figure(near.group(1), mark);
        if (figure.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble target = figures.amount(near.group(2), figure.get().quantity());
        if (target.isEmpty()) {
            notices.add(MustNotices.notAValue(near.group(2), figure.get().quantity(), near.group(1))
                    .at(mark));
            return Optional.empty();
        }
        return Optional.of(new WishRule(text, mark, WishRule.Aim.NEAR, figure, target.getAsDouble(), weight));
    }

    private Optional<WishRule> refused(String text, Mark mark) {
        notices.add(
                MustNotices.NOT_A_WISH.with("wish", MustReader.shortened(text)).at(mark));
        return Optional.empty();
    }
}
