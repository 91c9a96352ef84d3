package buildup.engine.buy;

import buildup.catalog.Catalog;
import buildup.catalog.supply.GoodsReader;
import buildup.catalog.supply.KindOfWork;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.math.BigDecimal;
import java.util.Optional;

/** Reads {@code stock.waste}: a kind of work of the catalog, or a share. */
public final class WasteWish {
    private WasteWish() {}

    /** The share of its lengths that a job wants on top; absent when the document asks for none, or it is refused. */
    public static Optional<Double> read(Fields root, Catalog catalog, Notices notices) {
        Optional<Scalar> text = root.fields("stock")
                .filter(stock -> stock.has("waste"))
                .flatMap(stock -> stock.scalar("waste"))
                .filter(said -> !said.text().isBlank());
        return text.flatMap(said -> share(said, catalog, notices)).map(BigDecimal::doubleValue);
    }

    private static Optional<BigDecimal> share(Scalar said, Catalog catalog, Notices notices) {
        if (Character.isDigit(said.text().strip().charAt(0))) {
            return new GoodsReader(notices).share(said);
        }
        Optional<BigDecimal> waste = catalog.works().stream()
                .filter(work -> work.name().equals(said.text().strip()))
                .map(KindOfWork::waste)
                .findFirst();
        if (waste.isEmpty()) {
            notices.add(BuyNotices.UNKNOWN_WORK
                    .with("name", said.text())
                    .at(said.mark())
                    .cure(Suggestion.phrase(
                            said.text(),
                            catalog.works().stream().map(KindOfWork::name).toList())));
        }
        return waste;
    }
}
