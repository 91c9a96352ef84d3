package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.catalog.mill.BoardWidths;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.catalog.wood.Wood;
import buildup.catalog.words.WalkReader;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.shared.document.Fields;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Text;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one entry under {@code items:}. */
final class ItemReader {
    /** A molding larger than this is a slip, most likely millimeters read as inches. */
    private static final double LARGEST = 24;

    private final Catalog catalog;
    private final String boards;
    private final LengthReader lengths;
    private final Notices notices;

    /** @param lengths reads those of the order */
    ItemReader(Catalog catalog, String boards, LengthReader lengths, Notices notices) {
        this.catalog = catalog;
        this.boards = boards;
        this.lengths = lengths;
        this.notices = notices;
    }

    Optional<OrderItem> read(Fields plain, Optional<Scalar> usualWood, Optional<Mill> mill, Optional<Rates> rates) {
        Optional<Scalar> call = OrderReader.named(plain, "profile");
        String name = plain.text("name")
                .map(String::strip)
                .or(() -> call.map(Scalar::text))
                .orElse("one-off");
        Fields fields = plain.about(name);
        Optional<Profile> profile = profile(fields, call, name);
        Optional<Scalar> asked = usualWood.isPresent()
                ? OrderReader.named(fields, "wood").or(() -> usualWood)
                : fields.needed("wood", QuoteNotices.NO_WOOD.notice());
        Optional<Wood> wood = asked.flatMap(one -> catalog.wood(one, notices));
        Optional<BigDecimal> feet = OrderReader.wanted(fields, name, notices);
        List<Double> lengths = lengths(fields, name, mill);
        List<Mill.Width> widths = new BoardWidths(notices).read(fields, "board", name);
        boolean newKnife = newKnife(fields);
        Optional<Scalar> work = OrderReader.named(fields, "waste");
        Map<String, BigDecimal> wastes = mill.map(Mill::waste).orElse(Map.of());
        String kind = work.map(text -> text.text().strip())
                .or(() -> wastes.keySet().stream().findFirst())
                .orElse("");
        if (mill.isPresent() && work.isPresent() && !wastes.containsKey(kind)) {
            unknown(QuoteNotices.UNKNOWN_WORK.notice(), work.get(), wastes.keySet());
        }
        List<String> finishes = finishes(fields, rates);
        if (profile.isPresent() && rates.isPresent() && wood.isPresent()) {
            priced(rates.get(), wood.get(), asked.orElseThrow().mark(), name);
        }
        Optional<Scalar> inTwo = OrderReader.named(fields, "in-two");
        Optional<Halving> halving =
                inTwo.flatMap(words -> profile.flatMap(whole -> halving(fields, words, whole, rates, name)));
        if (profile.isPresent() && mill.isPresent()) {
            Mill own = mill.get().withWidths(widths);
            List<Profile> runs =
                    halving.map(cut -> Halving.of(profile.get(), cut)).orElse(List.of(profile.get()));
            runs.forEach(run -> blank(Blank.of(run, own), own, rates, fields.mark(), name));
        }
        if (profile.isEmpty() || wood.isEmpty() || feet.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new OrderItem(
                name,
                profile.get(),
                wood.get(),
                feet.get(),
                lengths,
                widths,
                newKnife,
                kind,
                wastes.getOrDefault(kind, BigDecimal.ZERO),
                finishes,
                halving,
                Optional.empty()));
    }

    /** Where it is run as two pieces: a way and a size, as 'up 2' or 'out 1-1/2'. */
    private Optional<Halving> halving(Fields fields, Scalar words, Profile whole, Optional<Rates> rates, String name) {
        String[] parts = words.text().strip().split("\\s+", 2);
        boolean level = parts[0].equals("up");
        if (parts.length < 2 || (!level && !parts[0].equals("out"))) {
            say(QuoteNotices.NO_CUT.with("word", words.text()), words.mark(), name);
            return Optional.empty();
        }
        Optional<Halving> cut =
                fields.readLength(new Scalar(parts[1], words.mark())).map(at -> new Halving(level, at.toInches()));
        if (cut.filter(there -> Halving.of(whole, there).isEmpty()).isPresent()) {
            say(QuoteNotices.NOT_TWO.with("word", words.text()), words.mark(), name);
            return Optional.empty();
        }
        if (cut.isPresent()) {
            rates.filter(one -> one.glue().isEmpty())
                    .ifPresent(
                            one -> say(QuoteNotices.NO_PRICE_FOR_GLUE.with("rates", one.name()), words.mark(), name));
        }
        return cut;
    }

    private Optional<Profile> profile(Fields fields, Optional<Scalar> call, String name) {
        Optional<Node> section = fields.node("section");
        if (call.isPresent() == section.isPresent()) {
            say(
                    (call.isPresent() ? QuoteNotices.TWO_OUTLINES : QuoteNotices.NEITHER_OUTLINE).notice(),
                    fields.mark(),
                    name);
            return Optional.empty();
        }
        if (call.isPresent()) {
            return catalog.profile(call.get(), boards, lengths, notices);
        }
        Optional<Profile> drawn = section.flatMap(words -> WalkReader.read(words, lengths, name, notices))
                .map(outline -> new Profile(name, "section", outline, new Profile.Milled()));
        drawn.map(one -> one.outline().box())
                .filter(box -> Math.max(box.width(), box.height()) > LARGEST)
                .ifPresent(box -> tooLarge(box, fields.mark("section"), name));
        return drawn;
    }

    private void tooLarge(Box box, Mark mark, String name) {
        double size = Math.max(box.width(), box.height());
        boolean metric = lengths.bareUnit().isMetric();
        say(
                QuoteNotices.LARGE_SECTION
                        .with("size", Figure.length(size).rounded(Rounding.decimals(1)))
                        .amount(Figure.length(size))
                        .cure(metric ? QuoteNotices.LOOK_AT_ITS_SIZES : QuoteNotices.WRITE_MM),
                mark,
                name);
    }

    private List<Double> lengths(Fields fields, String name, Optional<Mill> mill) {
        List<Double> lengths = new ArrayList<>();
        for (Scalar text : fields.scalars("lengths")) {
            Optional<Length> length = fields.readLength(text);
            if (length.filter(one -> !one.isPositive()).isPresent()) {
                say(QuoteNotices.NOTHING_LONG.with("word", text.text()), text.mark(), name);
            } else if (length.isPresent()
                    && mill.isPresent()
                    && length.get().compareTo(mill.get().longest()) > 0) {
                Length over = length.get().minus(mill.get().longest());
                say(
                        QuoteNotices.TOO_LONG
                                .with("word", text.text())
                                .with("mill", mill.get().name())
                                .with("longest", Amounts.run(mill.get().longest()))
                                .amount(Figure.length(over.toInches())),
                        text.mark(),
                        name);
            }
            length.ifPresent(one -> lengths.add(one.toInches()));
        }
        return lengths;
    }

    private boolean newKnife(Fields fields) {
        Optional<Scalar> knife = OrderReader.named(fields, "knife");
        List<String> words = List.of("new", "on-hand");
        knife.filter(text -> !words.contains(text.text().strip()))
                .ifPresent(text -> notices.add(
                        QuoteNotices.UNKNOWN_KNIFE.with("word", text.text()).at(text.mark())));
        return knife.map(text -> text.text().strip()).orElse("new").equals("new");
    }

    private List<String> finishes(Fields fields, Optional<Rates> rates) {
        List<String> finishes = new ArrayList<>();
        for (Scalar text : fields.scalars("finish")) {
            String finish = text.text().strip();
            if (rates.isPresent() && !rates.get().finish().containsKey(finish)) {
                unknown(
                        QuoteNotices.UNKNOWN_FINISH.with("rates", rates.get().name()),
                        text,
                        rates.get().finish().keySet());
            }
            finishes.add(finish);
        }
        return finishes.stream().distinct().toList();
    }

    private void priced(Rates rates, Wood wood, Mark mark, String name) {
        if (!rates.wood().containsKey(wood.name())) {
            say(
                    QuoteNotices.NO_PRICE_FOR_WOOD
                            .with("rates", rates.name())
                            .with("wood", wood.name())
                            .with(
                                    "priced",
                                    Listing.commas(rates.wood().keySet().stream()
                                            .map(Text::new)
                                            .toList())),
                    mark,
                    name);
        }
    }

    private void blank(Blank blank, Mill mill, Optional<Rates> rates, Mark mark, String name) {
        if (!blank.canBeCut()) {
            double widest = mill.widths().stream()
                    .mapToDouble(width -> width.width().toInches())
                    .max()
                    .orElse(0);
            say(QuoteNotices.NO_STRIP.with("mill", mill.name()).with("board", Figure.length(widest)), mark, name);
        } else if (blank.gluedUp()) {
            say(QuoteNotices.GLUED_UP.with("ways", glued(blank)), mark, name);
            rates.filter(one -> one.glue().isEmpty())
                    .ifPresent(one -> say(QuoteNotices.NO_PRICE_FOR_GLUE.with("rates", one.name()), mark, name));
        }
    }

    private static Phrase glued(Blank blank) {
        Phrase layers = QuoteNotices.IN_LAYERS
                .with("thickness", Figure.length(blank.thickness()))
                .with("layers", Figure.count(blank.layers()))
                .with("quarter", blank.quarter().label());
        Phrase strips = QuoteNotices.EDGE_TO_EDGE
                .with("blank", Figure.length(blank.blank()))
                .with("plies", Figure.count(blank.plies()));
        if (blank.layers() > 1 && blank.plies() > 1) {
            return QuoteNotices.BOTH.with("layers", layers).with("strips", strips);
        }
        return blank.layers() > 1 ? layers : strips;
    }

    private void unknown(Notice notice, Scalar asked, Collection<String> known) {
        notices.add(notice.with("word", asked.text())
                .cure(Phrase.plain(Suggestion.cure(asked.text(), known)))
                .at(asked.mark()));
    }

    private void say(Notice notice, Mark mark, String name) {
        notices.add(notice.at(mark).of(name));
    }
}
