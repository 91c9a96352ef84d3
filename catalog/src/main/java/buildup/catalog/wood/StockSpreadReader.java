package buildup.catalog.wood;

import buildup.catalog.entry.CatalogNotices;
import buildup.shared.document.Fields;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.util.Optional;

/** Reads the entries under {@code spreads:}. */
public final class StockSpreadReader {
    private final Notices notices;

    /** @param notices told what is wrong */
    public StockSpreadReader(Notices notices) {
        this.notices = notices;
    }

    /** The entry; nothing when a size is missing or negative. */
    public Optional<StockSpread> read(Fields fields, String name) {
        String about = fields.text("about").orElse("");
        Optional<Length> thickness = size(fields, "thickness", name);
        Optional<Length> width = size(fields, "width", name);
        return thickness.flatMap(thick -> width.map(wide -> new StockSpread(name, about, thick, wide)));
    }

    private Optional<Length> size(Fields fields, String key, String name) {
        Optional<Length> size = fields.length(key);
        if (!fields.has(key) || size.filter(length -> length.toInches() < 0).isPresent()) {
            notices.add(
                    CatalogNotices.NO_SPREAD.with("name", name).with("key", key).at(fields.mark(key)));
            return Optional.empty();
        }
        return size;
    }
}
