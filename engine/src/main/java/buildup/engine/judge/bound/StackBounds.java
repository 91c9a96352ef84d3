package buildup.engine.judge.bound;

import buildup.catalog.Catalog;
import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.StackForms;
import buildup.engine.judge.must.AskedFigure;
import buildup.engine.judge.proportion.Proportions;
import buildup.engine.section.free.FreeSizes;
import buildup.engine.section.stack.Space;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bounds of the figures of all stacks of a document, over any box of choices of its free sizes. Many threads may ask. */
public final class StackBounds {
    /** A piece that is left out or not counts as one whose edges move by so much, in. */
    private static final double LEFT_OUT = 4;

    private final List<PlacedForms> pieces;
    private final Stack stack;
    private final boolean fixedSpace;
    private final boolean fixedEyes;
    private final boolean fixedLights;
    private final Optional<PartBounds> parts;
    private final List<BookOrder> orders;

    private StackBounds(Document document, FreeSizes free, Catalog catalog, List<PlacedForms> pieces) {
        this.pieces = pieces;
        this.stack = StackReader.read(free.now(), catalog, new Claims(), new Notices());
        this.fixedSpace = fixed(document, free, "space") && fixed(document, free, "units");
        this.fixedEyes = fixedSpace && fixed(document, free, "eyes");
        this.fixedLights = fixedSpace && fixed(document, free, "lights");
        this.orders = catalog.orders();
        this.parts = fixedSpace && fixed(document, free, "parts")
                ? PartBounds.of(named(free.now(), catalog), pieces, stack.space())
                : Optional.empty();
    }

    /** The names of pieces by the part of the trim to which the document gives them. */
    private Map<EntablaturePart, List<String>> named(Document document, Catalog catalog) {
        Fields root = Fields.of(document, new Claims(), new Notices(), stack.lengths());
        return Proportions.read(stack, root, catalog, new Notices()).parts();
    }

    private Optional<BookOrder> order(AskedFigure figure) {
        return orders.stream()
                .filter(order -> order.name().equals(figure.named().get("order")))
                .findFirst();
    }

    private static boolean fixed(Document document, FreeSizes free, String key) {
        return document.root().get(key).map(node -> free.behind(node).isEmpty()).orElse(true);
    }

    /**
     * What is known of the stacks of a document.
     *
     * @return absent where some piece has no place that is known for all choices at once, so that nothing is known
     */
    public static Optional<StackBounds> of(Document document, FreeSizes free, Catalog catalog) {
        return StackForms.of(document, free, catalog).map(pieces -> new StackBounds(document, free, catalog, pieces));
    }

    /** The bounds of one figure; absent where nothing is known of it. */
    private Optional<Bounder> bounder(AskedFigure figure) {
        if (figure.several()) {
            // the worst may stand in a column that is not asked here
            return Optional.empty();
        }
        Optional<String> piece = Optional.ofNullable(figure.named().get("piece"));
        Optional<String> name = Optional.ofNullable(figure.named().get("name"));
        String column = figure.column();
        Space space = stack.space();
        return switch (figure.sheet()) {
            case "totals" -> new TotalsBounds(pieces).of(column);
            case "pieces" -> fixedSpace ? new PieceBounds(pieces, space).of(column, name) : Optional.empty();
            case "space" -> fixedSpace ? left(column, space) : Optional.empty();
            case "reveals" ->
                column.equals("amount")
                        ? piece.flatMap(shows -> new RevealBounds(pieces)
                                .of(shows, Optional.ofNullable(figure.named().get("over"))))
                        : Optional.empty();
            case "contacts" ->
                column.equals("length")
                        ? new ContactBounds(pieces)
                                .of(
                                        Optional.ofNullable(figure.named().get("a")),
                                        Optional.ofNullable(figure.named().get("b")))
                        : Optional.empty();
            case "members" ->
                fixedSpace
                        ? piece.flatMap(of -> new MemberBounds(pieces, space)
                                .of(
                                        column,
                                        of,
                                        Optional.ofNullable(figure.named().get("member"))))
                        : Optional.empty();
            case "darkness" ->
                fixedLights ? new ShadowBounds(pieces, stack.lights(), space).ofDarkness(figure) : Optional.empty();
            case "shadows" ->
                fixedLights ? new ShadowBounds(pieces, stack.lights(), space).ofShadows(figure) : Optional.empty();
            case "coverage" ->
                fixedEyes && space.slope() == 0
                        ? new SightBounds(pieces, stack.eyes(), space).of(column, figure.named())
                        : Optional.empty();
            case "proportion.parts" -> parts.flatMap(known -> known.ofParts(column, name));
            case "proportion.orders" ->
                column.equals("off") ? parts.flatMap(known -> order(figure).flatMap(known::off)) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private Optional<Bounder> left(String column, Space space) {
        String of = column.equals("ceilingLeft") ? "top" : "projection";
        var allowed = column.equals("ceilingLeft") ? space.ceiling() : space.projection();
        boolean known = allowed.isPresent() && (of.equals("projection") || space.slope() == 0);
        return known
                ? new TotalsBounds(pieces).of(of).map(bounder -> box -> {
                    FigureBound bound = bounder.of(box);
                    return new FigureBound(
                            allowed.getAsDouble() - bound.least(), allowed.getAsDouble() - bound.greatest());
                })
                : Optional.empty();
    }

    /** The bounds of some figures, in their order. */
    public List<Bounding> of(List<AskedFigure> figures) {
        return figures.stream().map(figure -> new Bounding(bounder(figure))).toList();
    }

    /** How much the edges of all pieces may move with one size over a box, in, added up. */
    public double spread(int size, ChoiceBox box) {
        double spread = 0;
        for (PlacedForms piece : pieces) {
            spread += piece.out().low().spread(size, box)
                    + piece.out().high().spread(size, box)
                    + piece.up().low().spread(size, box)
                    + piece.up().high().spread(size, box)
                    + (piece.piece().leaveOut() == size ? LEFT_OUT : 0);
        }
        return spread;
    }

    /** The bounds of one figure over any box. */
    public static final class Bounding {
        private final Optional<Bounder> bounder;

        private Bounding(Optional<Bounder> bounder) {
            this.bounder = bounder;
        }

        /** Whether anything is known of the figure. */
        public boolean known() {
            return bounder.isPresent();
        }

        /** What is known of it for the stacks of a box. */
        public FigureBound over(ChoiceBox box) {
            return bounder.map(known -> known.of(box)).orElse(FigureBound.UNKNOWN);
        }
    }
}
