package buildup.engine.mill.milling;

import buildup.profiles.travel.Access;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** How listed cutters make a profile, as sheets. */
final class PassSheets {
    private static final Rounding THOUSANDTHS = Rounding.decimals(3);

    private static final Phrase ONCE = Phrase.of("{cutter}");
    private static final Phrase OFTEN = Phrase.of("{cutter}, {times} passes");

    private static final Phrase ONE_FEWEST = Phrase.of("Needs 1 pass, the fewest.");
    private static final Phrase FEWEST = Phrase.of("Needs {passes} passes, the fewest.");
    private static final Phrase ONE = Phrase.of("Needs 1 pass.");
    private static final Phrase SOME = Phrase.of("Needs {passes} passes.");
    private static final Phrase LOOSE = Phrase.of("{needs} {left} stands loose beside it: rip it off first.");
    private static final Phrase UNMADE =
            Phrase.of("Listed bits and blades do not make {members}. Take a ground knife.");
    private static final Phrase PARTLY =
            Phrase.of("Listed bits and blades do not make {members}; {left} is left there. Take a ground knife.");

    private static final Phrase BITS =
            Phrase.of("BITS without a molder: the lowest of the published limits for the diameter; the maker's marking"
                    + " governs. Feed for a chip of {chip} in hardwood with {edges} edges; light passes of {deepest}.");
    private static final Rounding DOWN_TO_WHOLE = Rounding.decimals(0).to(Rounding.Side.DOWN);

    /** A pass with its number. */
    private record Row(int number, Pass pass, Milled milled) {
        List<String> makes() {
            return pass.makes().stream()
                    .map(Access.Stretch::stroke)
                    .map(milled.stick()::member)
                    .distinct()
                    .toList();
        }
    }

    private PassSheets() {}

    /** @param milled absent for the columns alone; without passes where bits were not looked for */
    static List<Sheet> of(Optional<Milled> milled) {
        Optional<Passes> passes = milled.flatMap(Milled::passes);
        boolean asked = passes.isPresent();
        return List.of(
                inOrder(milled).askedIf(asked),
                bits(passes).askedIf(asked),
                runs(milled),
                unmade(passes).askedIf(asked),
                Sheet.single("milling", "LEFT STANDING", milled)
                        .measureIf(
                                "left",
                                "left when all passes are run",
                                Quantity.AREA,
                                Rounding.NEAREST,
                                PassSheets::leftArea)
                        .silent()
                        .sheet());
    }

    private static Sheet inOrder(Optional<Milled> milled) {
        List<Row> rows = MillingSheets.all(
                milled,
                one -> one.passes()
                        .map(passes -> IntStream.range(0, passes.inOrder().size())
                                .mapToObj(i -> new Row(i + 1, passes.inOrder().get(i), one))
                                .toList())
                        .orElse(List.of()));
        return Sheet.of(
                        "milling.passes",
                        "PASSES in order; depth below the side that it cuts; from the fence to the middle of the cutter,"
                                + " minus when that lies outside the stick",
                        rows)
                .count("number", "", Row::number)
                .text()
                .saying("cutter", "cutter", row -> row.pass().cutter())
                .json()
                .saying("setting", "cutter", PassSheets::setting)
                .words("side", "from", row -> row.pass().side().word())
                .count("runs", "passes", row -> row.pass().times())
                .json()
                .length("depth", "depth", row -> row.pass().depth())
                .length("fence", "fence", row -> row.pass().fence())
                .words("fenceOn", "fence on", row -> row.pass().fencedByBack() ? "back" : "bottom")
                .flag("through", "parts off what lies beyond", row -> row.pass().through())
                .json()
                .names("makes", "makes", Row::makes)
                .sheet();
    }

    private static Phrase setting(Row row) {
        Pass pass = row.pass();
        return (pass.times() > 1 ? OFTEN : ONCE)
                .with("cutter", pass.cutter())
                .with("times", Figure.count(pass.times()));
    }

    private static Sheet bits(Optional<Passes> passes) {
        List<BitRun> runs = passes.map(Passes::inOrder).orElse(List.of()).stream()
                .flatMap(pass -> BitRun.of(pass).stream())
                .distinct()
                .toList();
        Phrase title = BITS.with("chip", Figure.fine(BitRun.CHIP))
                .with("edges", Figure.count(BitRun.EDGES))
                .with("deepest", Figure.atMost(BitRun.DEEPEST));
        return Sheet.of("milling.bits", title, runs)
                .saying("cutter", "bit", BitRun::cutter)
                .both()
                .length("diameter", "diameter", BitRun::diameter)
                .lengthIf(
                        "bearing",
                        "bearing",
                        run -> run.bearing().map(OptionalDouble::of).orElse(OptionalDouble.empty()))
                .measure("turns", "at most", Quantity.RPM, DOWN_TO_WHOLE, BitRun::turns)
                .measure("rim", "rim speed", Quantity.FEED, BitRun::rim)
                .measure("feed", "feed", Quantity.FEED, BitRun::feed)
                .count("lightPasses", "light passes", BitRun::lightPasses)
                .sheet();
    }

    private static OptionalDouble count(Milled milled) {
        return milled.passes().map(passes -> OptionalDouble.of(passes.runs())).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble leftArea(Milled milled) {
        return milled.passes()
                .map(passes -> OptionalDouble.of(passes.leftArea()))
                .orElse(OptionalDouble.empty());
    }

    private static Sheet runs(Optional<Milled> milled) {
        return Sheet.single("milling", "PASSES", milled)
                .measureIf("runs", "passes", Quantity.COUNT, Rounding.NEAREST, PassSheets::count)
                .flagIf(
                        "fewest",
                        "fewer would not do as much",
                        one -> one.passes().map(Passes::proven))
                .silent()
                .sheet();
    }

    /** How many it takes, and what they leave, in a sentence. */
    static Phrase needs(Passes passes) {
        Figure left = Figure.area(passes.leftArea()).rounded(THOUSANDTHS);
        if (!passes.unmade().isEmpty()) {
            return (passes.inOrder().isEmpty() ? UNMADE : PARTLY)
                    .with(
                            "members",
                            Listing.names(passes.unmade().stream()
                                    .map(Passes.Unmade::member)
                                    .distinct()
                                    .toList()))
                    .with("left", left);
        }
        Phrase one = passes.proven() ? ONE_FEWEST : ONE;
        Phrase some = passes.proven() ? FEWEST : SOME;
        Phrase needs = (passes.runs() == 1 ? one : some).with("passes", Figure.count(passes.runs()));
        return passes.leftArea() > 0 ? LOOSE.with("needs", needs).with("left", left) : needs;
    }

    private static Sheet unmade(Optional<Passes> passes) {
        return Sheet.of(
                        "milling.unmade",
                        "What no listed cutter makes",
                        passes.map(Passes::unmade).orElse(List.of()))
                .name("member", "member", Passes.Unmade::member)
                .place(
                        "from",
                        "from",
                        unmade -> unmade.segment().from().x(),
                        unmade -> unmade.segment().from().y())
                .place(
                        "to",
                        "to",
                        unmade -> unmade.segment().to().x(),
                        unmade -> unmade.segment().to().y())
                .silent()
                .sheet();
    }
}
