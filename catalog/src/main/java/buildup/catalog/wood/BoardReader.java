package buildup.catalog.wood;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.catalog.wood.BoardList.Dressed;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.Reading;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the entries under {@code boards:}. */
public final class BoardReader {

    private final Notices notices;

    public BoardReader(Notices notices) {
        this.notices = notices;
    }

    /** A list of nominal boards from its keys; empty, with notices, when it has no thickness. */
    public Optional<BoardList> read(Fields fields, String name) {
        LengthUnit unit = unit(fields, name);
        List<Length> seldom = new ArrayList<>();
        fields.scalars("seldom").forEach(text -> nominal(text, unit).ifPresent(seldom::add));
        List<Dressed> thicknesses = sizes(fields, "thickness", unit, List.of());
        List<Dressed> widths = sizes(fields, "width", unit, seldom);
        String about = fields.text("about").orElse("");
        if (!fields.has("thickness")) {
            notices.add(CatalogNotices.NO_THICKNESS.with("list", name).at(fields.mark()));
        }
        return thicknesses.isEmpty()
                ? Optional.empty()
                : Optional.of(new BoardList(name, about, unit, thicknesses, widths));
    }

    /** Nominal sizes are names, and inches in any file whose list does not say otherwise. */
    private LengthUnit unit(Fields fields, String name) {
        Optional<String> asked = fields.text("nominal");
        Optional<LengthUnit> unit = asked.flatMap(LengthUnit::named);
        if (asked.isPresent() && unit.isEmpty()) {
            notices.add(CatalogNotices.UNKNOWN_UNIT
                    .with("name", asked.get())
                    .at(fields.mark("nominal"))
                    .of(name));
        }
        return unit.orElse(LengthUnit.INCH);
    }

    private List<Dressed> sizes(Fields fields, String key, LengthUnit unit, List<Length> seldom) {
        Optional<Mapping> mapping = fields.mapping(key);
        List<Dressed> sizes = new ArrayList<>();
        for (Entry entry : mapping.map(Mapping::entries).orElse(List.of())) {
            Fields inside = fields.fields(mapping.orElseThrow(), key);
            Optional<Length> dressed = inside.length(entry.key().text());
            Optional<Length> nominal = nominal(entry.key(), unit);
            if (dressed.isPresent() && nominal.isPresent()) {
                Length named = nominal.get();
                sizes.add(new Dressed(entry.key().text(), named, dressed.get(), holds(seldom, named)));
            }
        }
        sizes.sort(Comparator.comparing(Dressed::nominal));
        return sizes;
    }

    private static boolean holds(List<Length> sizes, Length size) {
        return sizes.stream().anyMatch(one -> one.near(size, Sizes.SAME));
    }

    private Optional<Length> nominal(Scalar text, LengthUnit unit) {
        Optional<Length> size = nominal(text.text(), unit);
        if (size.isEmpty()) {
            notices.add(CatalogNotices.NO_NOMINAL_SIZE.with("text", text.text()).at(text.mark()));
        }
        return size;
    }

    /** A nominal size: {@code 1}, {@code 5/4}, {@code 1-1/4}; without a unit it is in the one given. */
    public static Optional<Length> nominal(String text, LengthUnit unit) {
        return new LengthReader(unit, Map.of()).read(text) instanceof Reading.Good good
                        && good.length().isPositive()
                ? Optional.of(good.length())
                : Optional.empty();
    }
}
