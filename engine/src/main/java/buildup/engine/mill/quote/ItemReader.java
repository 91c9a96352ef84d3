package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.catalog.Head;
import buildup.catalog.Mill;
import buildup.catalog.Rates;
import buildup.catalog.Wood;
import buildup.catalog.words.WalkReader;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
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
    /** A molding larger than this is a slip, most likely millimetres read as inches. */
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

    Optional<Item> read(
            Fields plain, Optional<Scalar> usualWood, Optional<Mill> mill, Optional<Rates> rates, Optional<Head> head) {
        Optional<Scalar> call = OrderReader.named(plain, "profile");
        String name = plain.text("name")
                .map(String::strip)
                .or(() -> call.map(Scalar::text))
                .orElse("one-off");
        Fields fields = plain.about(name);
        Optional<Profile> profile = profile(fields, call, name);
        Optional<Scalar> asked = OrderReader.named(fields, "wood").or(() -> usualWood);
        if (asked.isEmpty()) {
            missing(fields, name, "wood", "as 'wood: red-oak'");
        }
        Optional<Wood> wood = asked.flatMap(one -> catalog.wood(one, notices));
        Optional<Scalar> wanted = OrderReader.named(fields, "feet");
        if (wanted.isEmpty()) {
            missing(fields, name, "feet", "how many are wanted");
        }
        Optional<BigDecimal> feet = wanted.flatMap(text -> OrderReader.feet(text, notices));
        List<Double> lengths = lengths(fields, name, mill);
        boolean newKnife = newKnife(fields);
        Optional<Scalar> work = OrderReader.named(fields, "waste");
        Map<String, BigDecimal> wastes = mill.map(Mill::waste).orElse(Map.of());
        String kind = work.map(text -> text.text().strip())
                .or(() -> wastes.keySet().stream().findFirst())
                .orElse("");
        if (mill.isPresent() && work.isPresent() && !wastes.containsKey(kind)) {
            unknown("kind of work", work.get(), wastes.keySet());
        }
        List<String> finishes = finishes(fields, rates);
        if (profile.isPresent() && rates.isPresent() && wood.isPresent()) {
            priced(rates.get(), wood.get(), asked.orElseThrow().mark(), name);
        }
        if (profile.isPresent() && mill.isPresent() && head.isPresent()) {
            machined(profile.get(), mill.get(), head.get(), fields.mark(), name);
        }
        if (profile.isEmpty() || wood.isEmpty() || feet.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Item(
                name,
                profile.get(),
                wood.get(),
                feet.get(),
                lengths,
                newKnife && !Item.planed(profile.get()),
                kind,
                wastes.getOrDefault(kind, BigDecimal.ZERO),
                finishes));
    }

    private Optional<Profile> profile(Fields fields, Optional<Scalar> call, String name) {
        Optional<Node> section = fields.node("section");
        if (call.isPresent() == section.isPresent()) {
            String fault = call.isPresent() ? "has both a profile and a section" : "has neither profile nor section";
            refuse(
                    "no-outline",
                    "'" + name + "' " + fault + ".",
                    fields.mark(),
                    name,
                    "Give 'profile: NAME SIZE', or 'section: [words]' for a one-off.");
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
        Length size = Length.inches(Math.max(box.width(), box.height()));
        notices.add(Notice.problem(
                        "mm-read-as-inches",
                        "The section is " + LengthPrinter.decimals(size, 1) + " in over all: more than any molding.")
                .at(mark)
                .of(name)
                .amount(size)
                .cure("Write mm behind it if millimetres are meant."));
    }

    private List<Double> lengths(Fields fields, String name, Optional<Mill> mill) {
        List<Double> lengths = new ArrayList<>();
        for (Scalar text : fields.scalars("lengths")) {
            Optional<Length> length = fields.readLength(text);
            if (length.filter(one -> !one.isPositive()).isPresent()) {
                refuse(
                        "not-a-size",
                        "'" + name + "' is wanted " + text.text() + " long.",
                        text.mark(),
                        name,
                        "Give lengths above nothing.");
            } else if (length.isPresent()
                    && mill.isPresent()
                    && length.get().compareTo(mill.get().longest()) > 0) {
                Length over = length.get().minus(mill.get().longest());
                notices.add(Notice.problem(
                                "longer-than-stock",
                                "'" + name + "' is wanted " + text.text() + " long; the boards of the mill '"
                                        + mill.get().name() + "' end at "
                                        + feet(mill.get().longest()) + " ft.")
                        .at(text.mark())
                        .of(name)
                        .amount(over)
                        .cure("Take it in two with a scarf, or ask for shorter ones."));
            }
            length.ifPresent(one -> lengths.add(one.toInches()));
        }
        return lengths;
    }

    private static String feet(Length length) {
        return LengthPrinter.decimals(length.times(1.0 / 12), 1).replaceAll("\\.0$", "");
    }

    private boolean newKnife(Fields fields) {
        Optional<Scalar> knife = OrderReader.named(fields, "knife");
        List<String> words = List.of("new", "on-hand");
        knife.filter(text -> !words.contains(text.text().strip()))
                .ifPresent(text -> refuse(
                        "unknown-name", "A knife is not '" + text.text() + "'.", text.mark(), "Write new or on-hand."));
        return knife.map(text -> text.text().strip()).orElse("new").equals("new");
    }

    private List<String> finishes(Fields fields, Optional<Rates> rates) {
        List<String> finishes = new ArrayList<>();
        for (Scalar text : fields.scalars("finish")) {
            String finish = text.text().strip();
            if (rates.isPresent() && !rates.get().finish().containsKey(finish)) {
                unknown(
                        "finish of the rates '" + rates.get().name() + "'",
                        text,
                        rates.get().finish().keySet());
            }
            finishes.add(finish);
        }
        return finishes.stream().distinct().toList();
    }

    private void priced(Rates rates, Wood wood, Mark mark, String name) {
        if (!rates.wood().containsKey(wood.name())) {
            refuse(
                    "missing-rate",
                    "The rates '" + rates.name() + "' have no price for " + wood.name() + ".",
                    mark,
                    name,
                    "Add it under their 'wood:', or take one of "
                            + String.join(", ", rates.wood().keySet()) + ".");
        }
    }

    private void machined(Profile profile, Mill mill, Head head, Mark mark, String name) {
        Blank blank = Blank.of(profile, mill);
        double knife = Item.knifeWidth(profile);
        Length over = Length.inches(knife).minus(head.widest());
        if (!Item.planed(profile) && over.toInches() > Tolerance.COINCIDENT) {
            notices.add(Notice.refusal(
                            "knife-wider-than-machine",
                            "'" + name + "' takes a knife " + size(knife) + " wide; the " + head.name() + " holds "
                                    + size(head.widest().toInches()) + ".")
                    .at(mark)
                    .of(name)
                    .amount(over)
                    .cure("Run it as two moldings, or name a wider head."));
        }
        if (!blank.canBeCut()) {
            refuse(
                    "no-blank",
                    "The boards of the mill '" + mill.name() + "', "
                            + size(mill.board().toInches()) + " wide, give no strip for '" + name + "'.",
                    mark,
                    name,
                    "List wider boards under 'mills:' in a catalog file.");
        } else if (blank.gluedUp()) {
            notices.add(
                    Notice.note("glue-up", glued(blank, mill, name)).at(mark).of(name));
        }
    }

    private static String glued(Blank blank, Mill mill, String name) {
        List<String> ways = new ArrayList<>();
        if (blank.layers() > 1) {
            ways.add("no quarter yields " + size(blank.thickness()) + ": " + blank.layers() + " layers of "
                    + blank.quarter().label());
        }
        if (blank.plies() > 1) {
            ways.add("boards are " + size(mill.board().toInches()) + " wide and the blank " + size(blank.blank()) + ": "
                    + blank.plies() + " strips edge to edge");
        }
        return "'" + name + "' is glued up: " + String.join("; ", ways) + ".";
    }

    private static String size(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    private void missing(Fields fields, String name, String key, String what) {
        refuse(
                "missing-key",
                "'" + name + "' has no " + key + ".",
                fields.mark(),
                name,
                "Add '" + key + ":', " + what + ".");
    }

    private void unknown(String what, Scalar asked, Collection<String> known) {
        refuse(
                "unknown-name",
                "No " + what + " is called '" + asked.text() + "'.",
                asked.mark(),
                Suggestion.cure(asked.text(), known));
    }

    private void refuse(String code, String message, Mark mark, String cure) {
        notices.add(Notice.refusal(code, message).at(mark).cure(cure));
    }

    private void refuse(String code, String message, Mark mark, String name, String cure) {
        notices.add(Notice.refusal(code, message).at(mark).of(name).cure(cure));
    }
}
