package buildup.engine.judge.proportion;

import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Text;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/** A stack beside the books, as sheets. */
public final class ProportionSheets {
    private static final Rounding TENTHS = Rounding.decimals(1);
    private static final Rounding HUNDREDTHS = Rounding.decimals(2);

    private final Section section;
    private final Proportion proportion;

    private ProportionSheets(Section section, Proportion proportion) {
        this.section = section;
        this.proportion = proportion;
    }

    /** The parts, the orders and rules of the books beside them, and the rhythm of the stack. */
    public static List<Sheet> of(Section section, Proportion proportion) {
        ProportionSheets sheets = new ProportionSheets(section, proportion);
        return List.of(
                sheets.whole(),
                sheets.parts(),
                sheets.orders(),
                sheets.members(),
                sheets.sizes(),
                sheets.overhangs(),
                sheets.rhythm(),
                sheets.reveals());
    }

    private boolean known() {
        return !proportion.parts().isEmpty();
    }

    private Sheet whole() {
        return Sheet.single(
                        "proportion",
                        "PROPORTION: a reading beside the books, no judgment of taste",
                        known() ? Optional.of(proportion) : Optional.empty())
                .length("height", "height of all parts", Proportion::height)
                .lengthIf("projection", "projection of the cornice beyond what is below it", Proportion::projection)
                .measureIf(
                        "projectionToHeight",
                        "projection to height",
                        Quantity.RATIO,
                        HUNDREDTHS,
                        Proportion::projectionToHeight)
                .words("read", "parts", whole -> whole.named() ? "as named" : "read from the stack")
                .sheet()
                .askedIf(proportion.asked());
    }

    private Sheet parts() {
        return Sheet.of("proportion.parts", "PARTS OF THE TRIM, as seen", proportion.parts())
                .name("name", "part", part -> part.part().word())
                .length("bottom", "from", PartShare::bottom)
                .length("top", "to", PartShare::top)
                .length("height", "height of the part", PartShare::height)
                .measure("share", "share of the height", Quantity.SHARE, TENTHS, PartShare::share)
                .names(
                        "pieces",
                        "pieces",
                        part -> part.bodies().stream().map(section::name).toList())
                .sheet()
                .askedIf(proportion.asked());
    }

    private Sheet orders() {
        return Sheet.of(
                        "proportion.orders",
                        "ORDERS OF THE BOOKS at the same height; 'off' is the share of the height that they part otherwise",
                        proportion.orders())
                .name("order", "order", row -> row.order().name())
                .lengthIf("architrave", "architrave", row -> row.height(EntablaturePart.ARCHITRAVE))
                .lengthIf("frieze", "frieze", row -> row.height(EntablaturePart.FRIEZE))
                .lengthIf("cornice", "cornice", row -> row.height(EntablaturePart.CORNICE))
                .lengthIf("out", "cornice out", OrderRow::projection)
                .measure("off", "off", Quantity.SHARE, TENTHS, OrderRow::off)
                .lengthIf("inRoom", "cornice where it fills the room", OrderRow::inRoom)
                .words("book", "book", row -> source(row.order()))
                .table(
                        "ORDERS OF THE BOOKS at the same height; 'off' is the share of the height that they part otherwise",
                        "order",
                        "architrave",
                        "frieze",
                        "cornice",
                        "out",
                        "off",
                        "inRoom")
                .table("SOURCES OF THE ORDERS", "order", "book")
                .sheet()
                .askedIf(proportion.asked() && !proportion.orders().isEmpty());
    }

    private static String source(BookOrder order) {
        return order.book()
                + (order.place().isEmpty() ? "" : ", " + order.place())
                + (order.memory().isEmpty() ? "" : "; from memory: " + order.memory())
                + (order.assumed().isEmpty() ? "" : "; assumed: " + order.assumed());
    }

    private Sheet members() {
        List<LaidOrder.Row> rows = proportion.laid().map(LaidOrder::members).orElse(List.of());
        String name = proportion.laid().map(laid -> laid.order().name()).orElse("");
        return Sheet.of(
                        "proportion.members",
                        Phrase.of("CORNICE OF {order} at the same height, from below")
                                .with("order", name),
                        rows)
                .name("order", "", row -> name)
                .json()
                .name("member", "member", row -> row.member().name())
                .measure("height", "height", Quantity.LENGTH, Rounding.FINE, LaidOrder.Row::height)
                .measure("running", "running height", Quantity.LENGTH, Rounding.FINE, LaidOrder.Row::running)
                .measure("out", "out", Quantity.LENGTH, Rounding.FINE, LaidOrder.Row::out)
                .measure("face", "out in all", Quantity.LENGTH, Rounding.FINE, LaidOrder.Row::face)
                .sheet()
                .askedIf(proportion.asked() && !rows.isEmpty());
    }

    private Sheet sizes() {
        return Sheet.of("proportion.sizes", "RULES OF THE BOOKS at this size", proportion.sizes())
                .name("rule", "rule", row -> row.rule().name())
                .words("of", "of the", row -> row.rule().of().word())
                .lengthIf("least", "at least", SizeRow::least)
                .lengthIf("most", "at most", SizeRow::most)
                .lengthIf("has", "here", SizeRow::has)
                .wordsIf("side", "reads", SizeRow::side)
                .words(
                        "book",
                        "book",
                        row -> row.rule().book() + ", " + row.rule().place()
                                + (row.rule().memory() ? "; from memory" : ""))
                .table("RULES OF THE BOOKS at this size", "rule", "of", "least", "most", "has", "side")
                .table("SOURCES OF THE RULES", "rule", "book")
                .sheet()
                .askedIf(proportion.asked() && !proportion.sizes().isEmpty());
    }

    private Sheet overhangs() {
        return Sheet.of("proportion.overhangs", "OVERHANG beyond what carries it", proportion.overhangs())
                .name("piece", "piece", row -> section.name(row.body()))
                .length("overhang", "overhang beyond the bearing", Overhang::overhang)
                .length("bearing", "bearing", Overhang::bearing)
                .measure("ratio", "overhang to bearing", Quantity.RATIO, HUNDREDTHS, Overhang::ratio)
                .sheet()
                .askedIf(proportion.asked() && !proportion.overhangs().isEmpty());
    }

    private Sheet rhythm() {
        return Sheet.of("proportion.rhythm", "RHYTHM: heights, flats and curves, from below", proportion.rhythm())
                .name("piece", "piece", row -> section.name(member(row).body()))
                .name("member", "member", row -> member(row).member())
                .length("height", "height", RhythmRow::height)
                .words("shape", "shape", row -> row.shape().word())
                .saying("remark", "to look at", row -> said(row.remarks()))
                .both()
                .sheet()
                .askedIf(proportion.asked() && known());
    }

    private Member member(RhythmRow row) {
        return section.members().get(row.member());
    }

    private static Phrase said(List<Phrase> remarks) {
        return Phrase.of("{remarks}")
                .with("remarks", Listing.commas(remarks.isEmpty() ? List.of(new Text("")) : remarks));
    }

    private Sheet reveals() {
        return Sheet.of("proportion.reveals", "REVEALS beside each other", proportion.reveals())
                .name("piece", "piece", row -> section.name(row.reveal().piece()))
                .name("over", "over", row -> section.name(row.reveal().over()))
                .length("amount", "reveal", row -> row.reveal().amount())
                .saying("remark", "to look at", row -> said(row.remarks()))
                .both()
                .sheet()
                .askedIf(proportion.asked() && !proportion.reveals().isEmpty());
    }
}
