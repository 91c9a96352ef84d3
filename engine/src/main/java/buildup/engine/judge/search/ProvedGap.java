package buildup.engine.judge.search;

import buildup.engine.judge.must.AskedFigure;
import buildup.engine.judge.must.WishRule;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * By how much an answer that is not proved to be the best may fall short of it: the figure of the one wish, or, where there
 * are several, how far all are from it together.
 *
 * @param wish the one that there is; absent where there are several
 * @param found figure of the answer, in the unit of the wish
 * @param bound that no stack betters
 */
record ProvedGap(Optional<WishRule> wish, double found, double bound) {
    /** More decimals than this are not printed. */
    private static final int MOST_PLACES = 6;

    /** What is left between the best answer and its bound; absent where that is proved to be nothing, or not known. */
    static Optional<ProvedGap> of(SearchResult result) {
        OptionalDouble bound = result.proof().bound();
        // without a wish the bound is one of change, and no figure of an answer is held against it
        boolean wished = !result.goal().wishes().isEmpty();
        if (!wished || result.proved() || bound.isEmpty() || result.best().isEmpty()) {
            return Optional.empty();
        }
        double score = result.best().get(0).candidate().score();
        List<WishRule> wishes = result.goal().wishes();
        if (wishes.size() != 1 || wishes.get(0).figure().isEmpty()) {
            return Optional.of(new ProvedGap(Optional.empty(), score, bound.getAsDouble()));
        }
        WishRule wish = wishes.get(0);
        double unit = (wish.aim() == WishRule.Aim.MOST ? -1 : 1)
                * result.goal().scales().get(0)
                / wish.weight();
        return Optional.of(new ProvedGap(Optional.of(wish), score * unit, bound.getAsDouble() * unit));
    }

    Quantity quantity() {
        return wish.flatMap(WishRule::figure).map(AskedFigure::quantity).orElse(Quantity.TIMES);
    }

    double amount() {
        return Math.abs(found - bound);
    }

    private Figure figure(double value) {
        return Figure.of(quantity(), value).rounded(rounding());
    }

    /** As finely as it takes that the gap is not printed as nothing. */
    private Rounding rounding() {
        return quantity() == Quantity.LENGTH ? Rounding.FINE : Rounding.decimals(places());
    }

    private int places() {
        int places = quantity().places(false);
        while (places < MOST_PLACES && between(places) < 1) {
            places++;
        }
        return places;
    }

    /** How many steps of so many decimals lie between the two figures as they are printed. */
    private double between(int places) {
        double scale = Math.pow(10, places);
        return Math.abs(Math.rint(quantity().shown(found, false) * scale)
                - Math.rint(quantity().shown(bound, false) * scale));
    }

    /** What lies between the two figures as they are printed, so that whoever takes one from the other gets it. */
    private double printed() {
        return quantity() == Quantity.LENGTH
                ? amount()
                : quantity().held(between(places()) / Math.pow(10, places()), false);
    }

    Phrase said() {
        boolean near = wish.filter(one -> one.aim() == WishRule.Aim.NEAR).isPresent();
        String words = wish.isEmpty()
                ? "All wishes together: {found} away from the best of each, and nothing can be better than {bound} (gap {gap})."
                : near
                        ? "'{wish}': {found} off, and nothing can be better than {bound} off (gap {gap})."
                        : "'{wish}': {found}, and nothing can be better than {bound} (gap {gap}).";
        Phrase phrase = Phrase.of(words)
                .with("found", figure(found))
                .with("bound", figure(bound))
                .with("gap", figure(printed()));
        return wish.map(one -> phrase.with("wish", one.text())).orElse(phrase);
    }
}
