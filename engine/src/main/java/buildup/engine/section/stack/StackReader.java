package buildup.engine.section.stack;

import buildup.catalog.Catalog;
import buildup.catalog.wood.Wood;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Reads a stack document. Everything wrong with it is said at once. */
public final class StackReader {
    /** A section holds no more pieces than this: a file with more is not a section. */
    static final int MOST_PIECES = 500;

    private static final String DEFAULT_WOOD = "yellow-poplar";
    private static final String DEFAULT_BOARDS = "softwood";

    private StackReader() {}

    /**
     * The stack, with notices for all that is wrong; what could not be read is left out, so a stack that comes with a
     * refusal is good only for finding more faults.
     *
     * @param claims is told which keys were asked for
     */
    public static Stack read(Document document, Catalog catalog, Claims claims, Notices notices) {
        Fields bare = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
        LengthUnit unit = unit(bare, notices);
        boolean bounded = BlockBounds.hold(bare, notices);
        LengthReader none = new LengthReader(unit, Map.of());
        LengthReader lengths = bounded ? NamedSizes.read(bare.withReader(none), unit, notices) : none;
        Fields root = bare.withReader(lengths);
        Space space = SpaceReader.space(root.fields("space"), notices);
        RuleReader rules = new RuleReader(space.floor(), space.ceiling(), notices);
        String boardList = root.text("boards").orElse(DEFAULT_BOARDS);
        PieceReader pieces =
                new PieceReader(catalog, boardList, lengths, rules, commonWood(root, catalog, notices), notices);
        return new Stack(
                root.text("title").orElse(document.file()),
                unit,
                boardList,
                space,
                SpaceReader.eyes(root, rules, notices),
                new LightReader(rules, notices).read(root),
                pieces(root, pieces, notices),
                lengths);
    }

    private static LengthUnit unit(Fields root, Notices notices) {
        Optional<Scalar> word = root.scalar("units");
        Optional<LengthUnit> unit = word.flatMap(scalar -> LengthUnit.named(scalar.text()));
        if (word.isPresent() && unit.isEmpty()) {
            notices.add(StackNotices.UNKNOWN_UNIT
                    .with("word", word.get().text())
                    .at(word.get().mark()));
        }
        return unit.orElse(LengthUnit.INCH);
    }

    private static Optional<Wood> commonWood(Fields root, Catalog catalog, Notices notices) {
        Optional<Scalar> named = root.scalar("wood");
        boolean everyPieceNames = root.node("pieces").orElse(root.mapping()) instanceof Sequence pieces
                && pieces.items().stream().allMatch(StackReader::needsNoCommonWood);
        if (named.isEmpty() && !everyPieceNames) {
            notices.add(StackNotices.COMMON_WOOD.with("wood", DEFAULT_WOOD).at(root.mark()));
        }
        return catalog.wood(named.orElse(new Scalar(DEFAULT_WOOD, root.mark())), notices);
    }

    private static boolean needsNoCommonWood(Node entry) {
        return entry instanceof Mapping piece
                && (piece.get("wood").isPresent()
                        || (piece.get("kind").orElse(piece) instanceof Scalar kind
                                && kind.text().equals(PieceKind.FRAMING.word())));
    }

    /**
     * What a mapping holds under a key or, where it has none of that name, under the first that is nearly so called: what
     * is mistyped is refused by itself, and whatever else is missed follows from it.
     */
    public static Optional<Node> meant(Mapping mapping, String key) {
        Optional<Node> plain = mapping.get(key);
        return plain.isPresent()
                ? plain
                : mapping.entries().stream()
                        .filter(entry -> Suggestion.nearest(entry.key().text(), List.of(key))
                                .isPresent())
                        .map(Entry::value)
                        .findFirst();
    }

    private static List<Piece> pieces(Fields root, PieceReader reader, Notices notices) {
        int count = root.node("pieces").orElse(null) instanceof Sequence list
                ? list.items().size()
                : 0;
        if (count > MOST_PIECES) {
            notices.add(StackNotices.MANY_PIECES
                    .with("count", Figure.count(count))
                    .with("most", Figure.count(MOST_PIECES))
                    .at(root.mark("pieces")));
            return List.of();
        }
        List<Fields> entries = root.list("pieces");
        if (entries.isEmpty()
                && (root.has("pieces") || meant(root.mapping(), "pieces").isEmpty())) {
            notices.add((root.mapping().get("items").isPresent() ? StackNotices.AN_ORDER : StackNotices.NO_PIECES)
                    .notice()
                    .at(root.mark("pieces")));
        }
        List<Piece> pieces = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            Optional<Piece> piece = reader.read(entries.get(i), i + 1);
            if (piece.isPresent() && !names.add(piece.get().name())) {
                twice(piece.get().name(), entries.get(i).mark("name"), names, notices);
            } else {
                piece.ifPresent(pieces::add);
            }
        }
        fixedToSomething(pieces, entries, notices);
        return pieces;
    }

    /** What a piece is said to be fixed to must be there, if only as an entry that was refused. */
    private static void fixedToSomething(List<Piece> pieces, List<Fields> entries, Notices notices) {
        List<String> known = Stream.concat(
                        Stream.of("wall", "floor", "ceiling"),
                        entries.stream().flatMap(entry -> entry.text("name").stream()))
                .toList();
        for (Piece piece : pieces) {
            Optional<Scalar> unknown = piece.fixed()
                    .filter(to -> !known.contains(to.text()) || to.text().equals(piece.name()));
            unknown.ifPresent(to -> notices.add(StackNotices.NOTHING_TO_BE_FIXED_TO
                    .with("word", to.text())
                    .at(to.mark())
                    .of(piece.name())
                    .cure(Phrase.plain(Suggestion.cure(to.text(), known)))));
        }
    }

    private static void twice(String name, Mark mark, Set<String> names, Notices notices) {
        int free = 2;
        while (names.contains(name + "-" + free)) {
            free++;
        }
        notices.add(StackNotices.SAME_PIECE_TWICE
                .with("free", Figure.count(free))
                .at(mark)
                .of(name));
    }
}
