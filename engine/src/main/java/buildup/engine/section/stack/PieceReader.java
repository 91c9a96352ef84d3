package buildup.engine.section.stack;

import buildup.catalog.Catalog;
import buildup.catalog.wood.Sawn;
import buildup.catalog.wood.Wood;
import buildup.catalog.words.WalkReader;
import buildup.engine.section.free.FreeSizes;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Rip;
import buildup.shared.document.Fields;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one entry of {@code pieces:}. */
final class PieceReader {
    /** A longer name stands in no table and on no drawing. */
    private static final int LONGEST_NAME = 60;

    private static final List<String> RESERVED = List.of("wall", "floor", "ceiling", "datum", "touch");

    private final Catalog catalog;
    private final String boardList;
    private final LengthReader lengths;
    private final RuleReader rules;
    private final Optional<Wood> commonWood;
    private final LikelySizes likely;
    private final Notices notices;

    PieceReader(
            Catalog catalog,
            String boardList,
            LengthReader lengths,
            RuleReader rules,
            Optional<Wood> commonWood,
            Notices notices) {
        this.catalog = catalog;
        this.boardList = boardList;
        this.lengths = lengths;
        this.rules = rules;
        this.commonWood = commonWood;
        this.likely = new LikelySizes(lengths, notices);
        this.notices = notices;
    }

    Optional<Piece> read(Fields unnamed, int number) {
        String name = unnamed.text("name").map(PieceReader::asInRules).orElse("");
        Fields fields = unnamed.about(name.isEmpty() ? "piece " + number : name);
        boolean named = nameIsSound(fields, name, number);
        PieceKind kind = kind(fields, name);
        Optional<Wood> wood = fields.scalar("wood")
                .flatMap(scalar -> catalog.wood(scalar, notices))
                .or(() -> commonWood);
        FiberDirection grain = grain(fields, name);
        Optional<Sawn> sawn = sawn(fields, name);
        OwnSpread spread = spread(fields);
        Optional<Drawn> drawn = drawn(fields, name, kind, lengths, notices);
        PieceShaping shaping = shaping(fields);
        Optional<PieceShaping.Shaped> shaped = drawn.flatMap(raw -> shaping.apply(raw, name, fields, notices));
        Rules placed = rules(fields, rules.about(name));
        // a piece that is left out has been taken out of the document before it is read
        fields.yesNo(FreeSizes.LEAVE_OUT);
        Optional<Scalar> fixed =
                fields.scalar("fixed").filter(scalar -> !scalar.text().isBlank());
        if (!named || shaped.isEmpty() || wood.isEmpty()) {
            return Optional.empty();
        }
        Piece piece = new Piece(
                name,
                kind,
                shaped.get().outline(),
                shaped.get().stock(),
                wood.get(),
                grain,
                sawn.or(() -> wood.get().sawn()),
                spread,
                placed,
                shaped.get().flippedOver(),
                fixed,
                fields.mark());
        likely.say(
                piece,
                () -> drawn(fields, name, kind, lengths.inFeet(), new Notices())
                        .flatMap(raw -> shaping.apply(raw, name, fields, new Notices()))
                        .map(other -> other.outline().box()));
        spreadIsSound(piece, fields);
        return Optional.of(piece);
    }

    /** Rules are read with single blanks and plain hyphens: so is the name that they call. */
    private static String asInRules(String name) {
        StringBuilder text = new StringBuilder();
        for (LengthReader.Term term : LengthReader.terms(name)) {
            text.append(text.isEmpty() ? "" : term.minus() ? " - " : " + ").append(term.text());
        }
        return text.toString();
    }

    private boolean nameIsSound(Fields fields, String name, int number) {
        Optional<Notice> fault = Optional.empty();
        if (name.isEmpty()) {
            fault = Optional.of(StackNotices.NO_NAME.with("number", Figure.count(number)));
        } else if (RESERVED.contains(name)) {
            fault = Optional.of(StackNotices.NAME_OF_THE_ROOM.notice());
        } else if (name.contains(".") || name.contains(" + ") || name.contains(" - ")) {
            fault = Optional.of(StackNotices.NAME_LIKE_A_RULE.notice());
        } else if (name.length() > LONGEST_NAME) {
            fault = Optional.of(StackNotices.LONG_NAME
                    .with("number", Figure.count(number))
                    .with("letters", Figure.count(name.length())));
        }
        fault.ifPresent(notice -> notices.add(notice.at(fields.mark("name")).of(name)));
        return fault.isEmpty();
    }

    private PieceKind kind(Fields fields, String name) {
        Optional<Scalar> word = fields.scalar("kind");
        for (PieceKind kind : PieceKind.values()) {
            if (word.isEmpty() || kind.word().equals(word.get().text())) {
                return kind;
            }
        }
        refuse(StackNotices.UNKNOWN_KIND, word.get(), name);
        return PieceKind.TRIM;
    }

    private FiberDirection grain(Fields fields, String name) {
        Optional<Scalar> word = fields.scalar("grain");
        Optional<FiberDirection> grain = word.flatMap(scalar -> FiberDirection.named(scalar.text()));
        if (word.isPresent() && grain.isEmpty()) {
            refuse(StackNotices.UNKNOWN_GRAIN, word.get(), name);
        }
        return grain.orElse(FiberDirection.RUN);
    }

    private Optional<Sawn> sawn(Fields fields, String name) {
        Optional<Scalar> word = fields.scalar("cut");
        Optional<Sawn> sawn = word.flatMap(scalar -> Sawn.named(scalar.text()));
        if (word.isPresent() && sawn.isEmpty()) {
            refuse(StackNotices.UNKNOWN_CUT, word.get(), name);
        }
        return sawn;
    }

    /** One length for both sizes of the stick, or one for each. */
    private static OwnSpread spread(Fields fields) {
        if (!fields.has("spread")) {
            return OwnSpread.NONE;
        }
        if (fields.mapping().get("spread").orElse(fields.mapping()) instanceof Scalar) {
            OptionalDouble both = inches(fields, "spread");
            return new OwnSpread(both, both);
        }
        return fields.fields("spread")
                .map(sizes -> new OwnSpread(inches(sizes, "width"), inches(sizes, "thickness")))
                .orElse(OwnSpread.NONE);
    }

    private static OptionalDouble inches(Fields fields, String key) {
        return fields.length(key)
                .map(length -> OptionalDouble.of(length.toInches()))
                .orElse(OptionalDouble.empty());
    }

    private void spreadIsSound(Piece piece, Fields fields) {
        spreadIsSound(piece, "width", piece.spread().width(), piece.stock().width(), fields);
        spreadIsSound(
                piece, "thickness", piece.spread().thickness(), piece.stock().thickness(), fields);
    }

    private void spreadIsSound(Piece piece, String side, OptionalDouble spread, double size, Fields fields) {
        if (spread.isPresent() && (spread.getAsDouble() < 0 || spread.getAsDouble() >= size)) {
            notices.add(StackNotices.LARGE_SPREAD
                    .with("side", side)
                    .with("spread", Figure.length(spread.getAsDouble()))
                    .with("size", Figure.length(size))
                    .at(fields.mark("spread"))
                    .of(piece.name()));
        }
    }

    private void refuse(Kind unknown, Scalar word, String name) {
        notices.add(unknown.with("word", word.text()).at(word.mark()).of(name));
    }

    /** A profile as drawn, with its stick. */
    record Drawn(Outline outline, Optional<Profile> profile, Stock stock) {}

    private Optional<Drawn> drawn(Fields fields, String name, PieceKind kind, LengthReader lengths, Notices notices) {
        Optional<Scalar> call = fields.scalar("profile");
        Optional<Node> words = fields.node("section");
        if (call.isPresent() == words.isPresent()) {
            notices.add((call.isPresent() ? StackNotices.TWO_OUTLINES : StackNotices.NEITHER_OUTLINE)
                    .notice()
                    .at(fields.mark())
                    .of(name));
            return Optional.empty();
        }
        if (words.isPresent()) {
            return WalkReader.read(words.get(), lengths, name, notices).map(outline -> oneOff(outline, kind));
        }
        // the catalog speaks of the profile; here it is the piece that the user looks for
        Notices said = new Notices();
        Optional<Drawn> drawn =
                catalog.profile(call.get(), boardList, lengths, said).map(PieceReader::ofCatalog);
        said.sorted().forEach(notice -> notices.add(notice.of(name)));
        return drawn;
    }

    private static Drawn oneOff(Outline outline, PieceKind kind) {
        Box box = outline.box();
        boolean rips = kind != PieceKind.TRIM && outline.isRectangle();
        return new Drawn(
                outline,
                Optional.empty(),
                new Stock("section", "section", box.width(), box.height(), rips, false, false));
    }

    private static Drawn ofCatalog(Profile profile) {
        boolean board = profile.stick() instanceof Profile.Board;
        return new Drawn(
                profile.outline(),
                Optional.of(profile),
                new Stock(profile.name(), profile.kind(), profile.thickness(), profile.width(), board, board, false));
    }

    private static PieceShaping shaping(Fields fields) {
        Map<Rip.Side, Double> rip = new LinkedHashMap<>();
        fields.fields("rip").ifPresent(sides -> {
            for (Rip.Side side : Rip.Side.values()) {
                sides.length(side.name().toLowerCase(Locale.ROOT))
                        .ifPresent(amount -> rip.put(side, amount.toInches()));
            }
        });
        return new PieceShaping(
                rip, fields.scalar("lay"), fields.angle("turn"), fields.angle("spring"), fields.scalar("flip"));
    }

    private Rules rules(Fields fields, RuleReader reader) {
        Map<String, Rule> byMember = new LinkedHashMap<>();
        Map<String, String> written = new LinkedHashMap<>();
        for (String key : List.of("back", "face", "bottom", "top")) {
            if (fields.mapping().get(key).orElse(fields.mapping()) instanceof Scalar scalar) {
                written.put(key, scalar.text().trim());
            }
        }
        fields.mapping("at")
                .ifPresent(mapping -> mapping.entries().forEach(entry -> {
                    if (entry.value() instanceof Scalar scalar) {
                        byMember.put(entry.key().text(), reader.rule(fields, scalar, Optional.empty()));
                        written.put(Rules.key(entry.key().text()), scalar.text().trim());
                    } else {
                        notices.add(StackNotices.MORE_THAN_A_PLACE
                                .notice()
                                .at(entry.value().mark()));
                    }
                }));
        return new Rules(
                reader.rule(fields, "back", Axis.OUT),
                reader.rule(fields, "face", Axis.OUT),
                reader.rule(fields, "bottom", Axis.UP),
                reader.rule(fields, "top", Axis.UP),
                byMember,
                Map.copyOf(written));
    }
}
