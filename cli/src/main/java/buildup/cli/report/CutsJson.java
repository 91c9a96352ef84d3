package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.sticks.Bill;
import buildup.engine.sticks.CutList;
import buildup.engine.sticks.Fine;
import buildup.engine.sticks.LotPlan;
import buildup.engine.sticks.Piece;
import buildup.engine.sticks.RipPlan;
import buildup.engine.sticks.Shop;
import buildup.engine.sticks.Stick;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The cuts of a stack, or of two, for other programs: decimal inches, degrees and units of money. */
public final class CutsJson {
    private static final double HUNDREDTHS = 100;

    private CutsJson() {}

    /** The object; title and notices alone when the cuts are not known. */
    public static String write(Cuts cuts) {
        return object(cuts).written() + "\n";
    }

    /** Two beside each other. */
    public static String write(Cuts a, Cuts b) {
        return new Json().put("a", object(a)).put("b", object(b)).written() + "\n";
    }

    private static Json object(Cuts cuts) {
        Answer answer = cuts.answer();
        Json json = new Json().put("title", answer.title());
        cuts.known().ifPresent(known -> {
            CutJson.put(json, known.job(), known.covings());
            known.list().ifPresent(list -> list(json, list, new Printed(answer.unit())));
        });
        return json.put("notices", JsonReport.notices(cuts.notices(), Optional.of(answer.file()), answer.unit()));
    }

    private static void list(Json json, CutList list, Printed printed) {
        json.put("pieces", pieces(list))
                .put(
                        "sticks",
                        IntStream.range(0, list.sticks().size())
                                .mapToObj(i -> stick(list, i))
                                .toList())
                .put("lots", list.lots().stream().map(lot -> lot(lot, printed)).toList())
                .put("rips", list.rips().stream().map(CutsJson::rip).toList())
                .put("wood", list.bills().stream().map(CutsJson::wood).toList())
                .put("joints", joints(list))
                .put(
                        "cost",
                        new Json()
                                .put("wood", list.price() / HUNDREDTHS)
                                .put("complete", list.priced())
                                .put("labor", list.labor() / HUNDREDTHS)
                                .put("total", (list.price() + list.labor()) / HUNDREDTHS));
    }

    private static List<Json> pieces(CutList list) {
        List<String> without = list.without().stream().map(Piece::id).toList();
        return list.pieces().stream()
                .map(piece -> new Json()
                        .put("id", piece.id())
                        .put("course", piece.course())
                        .put("stretch", piece.stretch())
                        .put("length", Fine.inches(piece.length()))
                        .put("left", piece.left().joint().word())
                        .put("right", piece.right().joint().word())
                        .put("hasStick", !without.contains(piece.id())))
                .toList();
    }

    private static Json stick(CutList list, int i) {
        Stick stick = list.sticks().get(i);
        return new Json()
                .put("number", i + 1)
                .put("of", stick.supply().name())
                .put("wood", stick.supply().wood())
                .put("from", StickTables.origin(stick.origin()))
                .put("length", Fine.inches(stick.length()))
                .put("boardFeet", stick.boardFeet())
                .put(
                        "price",
                        stick.price() == 0 ? OptionalDouble.empty() : OptionalDouble.of(stick.price() / HUNDREDTHS))
                .put(
                        "strips",
                        stick.strips().stream().map(strip -> strip(list, strip)).toList());
    }

    private static Json strip(CutList list, Stick.Strip strip) {
        return new Json()
                .put("width", Fine.inches(strip.width()))
                .put("ripped", strip.ripped())
                .put("rest", Fine.inches(strip.rest()))
                .put("kept", list.keeps(strip))
                .put(
                        "pieces",
                        strip.pieces().stream()
                                .map(lie -> new Json()
                                        .put("id", lie.piece().id())
                                        .put(
                                                "part",
                                                Optional.of(lie.piece().part()).filter(part -> !part.isEmpty()))
                                        .put("from", Fine.inches(lie.from()))
                                        .put("length", Fine.inches(lie.piece().length())))
                                .toList());
    }

    private static Json lot(LotPlan lot, Printed printed) {
        boolean cheapest = lot.aim() == Shop.Aim.CHEAPEST;
        return new Json()
                .put("of", printed.words(lot.name()))
                .put("wood", lot.wood())
                .put("width", Fine.inches(lot.strip()))
                .put("ripped", lot.ripped())
                .put("pieces", lot.pieces())
                .put("sticks", lot.sticks())
                .put("aim", cheapest ? "cheapest" : "fewest")
                .put("proved", lot.proved())
                .put("missing", lot.missing())
                .put("over", cheapest ? lot.over() / HUNDREDTHS : lot.over())
                .put("steps", lot.steps());
    }

    private static Json rip(RipPlan rip) {
        boolean cheapest = rip.aim() == Shop.Aim.CHEAPEST;
        return new Json()
                .put("thickness", rip.thickness())
                .put("wood", rip.wood())
                .put("aim", cheapest ? "cheapest" : "fewest")
                .put("over", cheapest ? rip.over() / HUNDREDTHS : rip.over());
    }

    private static Json wood(Bill bill) {
        Json json = new Json()
                .put("of", bill.name())
                .put("wood", bill.wood())
                .put("sticks", bill.sticks())
                .put("feet", bill.feet())
                .put("boardFeet", bill.boardFeet())
                .put("used", bill.used())
                .put("kept", bill.kept())
                .put("wasted", bill.wasted());
        return bill.priced() ? json.put("price", bill.price() / HUNDREDTHS) : json;
    }

    private static List<Json> joints(CutList list) {
        List<Json> joints = new ArrayList<>();
        list.joints().forEach((joint, count) -> {
            Optional<Long> price = Optional.ofNullable(list.shop().joints().get(joint));
            Json json = new Json().put("joint", joint.word()).put("count", count);
            joints.add(price.isEmpty() ? json : json.put("each", price.get() / HUNDREDTHS));
        });
        return joints;
    }
}
