package buildup.engine.section.placing;

import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Rule;
import buildup.engine.section.stack.Stock;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;

/** Says why a rule places nothing, or something doubtful. */
final class PlacingFaults {
    private final List<Piece> pieces;
    private final Notices notices;

    PlacingFaults(List<Piece> pieces, Notices notices) {
        this.pieces = pieces;
        this.notices = notices;
    }

    /** @param ring the pieces in the order in which each is placed on the next, the last on the first */
    void circle(List<Piece> ring, Mark mark) {
        List<Phrase> steps = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            String from = ring.get(i).name();
            String to = ring.get((i + 1) % ring.size()).name();
            if (!from.equals(to)) {
                steps.add(PlacingNotices.STEP.with("from", from).with("to", to));
            }
        }
        Piece first = ring.get(0);
        List<Phrase> said =
                steps.isEmpty() ? List.of(PlacingNotices.ON_ITSELF.with("from", first.name())) : List.copyOf(steps);
        add(PlacingNotices.CIRCLE.with("steps", Listing.commas(said)), first, mark);
    }

    void missing(Piece piece, Axis axis) {
        add(onAxis(PlacingNotices.MISSING.with("measure", axis.measure()), axis), piece, piece.mark());
    }

    void doubled(Piece piece, Axis axis, Mark mark) {
        add(onAxis(PlacingNotices.DOUBLED.with("measure", axis.measure()), axis), piece, mark);
    }

    void nothingLeft(Piece piece, Axis axis, double size, Mark mark) {
        add(onAxis(PlacingNotices.NOTHING_LEFT.with("size", Figure.length(size)), axis), piece, mark);
    }

    private static Notice onAxis(Notice notice, Axis axis) {
        return notice.with("low", axis.low()).with("high", axis.high());
    }

    void tooSmall(Piece piece, Axis axis, double size, double stock, Mark mark) {
        add(
                PlacingNotices.BOARD_TOO_SMALL
                        .with("size", Figure.length(size))
                        .with("stock", piece.stock().name())
                        .with("has", Figure.length(stock))
                        .amount(Figure.length(size - stock))
                        .cure(larger(piece, axis, size - stock)),
                piece,
                mark);
    }

    /** A board larger by so much than the one that the document calls, which may have been ripped before it is fitted. */
    private static Cure larger(Piece piece, Axis axis, double by) {
        Stock stock = piece.stock();
        boolean wide = axis == Axis.OUT == stock.lying();
        Figure needs = Figure.atLeast((wide ? stock.width() : stock.thickness()) + by);
        Phrase words = wide ? PlacingNotices.TAKE_A_WIDER : PlacingNotices.TAKE_A_THICKER;
        Phrase call = wide ? stock.soWide(needs) : stock.soThick(needs);
        return new Cure(words.with("needs", needs), List.of(new Change(piece.place("profile"), call)));
    }

    void roomOnTheWrongAxis(Rule rule, Piece asking, Axis axis) {
        wrongAxis(PlacingNotices.PLACE_OF_THE_ROOM, rule, asking, axis);
    }

    void edgeOnTheWrongAxis(Rule.ByEdge rule, Piece asking, Axis axis) {
        wrongAxis(
                PlacingNotices.EDGE_OF_A_PIECE.with("other", rule.piece()).with("edge", rule.edge()),
                rule,
                asking,
                axis);
    }

    private void wrongAxis(Phrase place, Rule rule, Piece asking, Axis axis) {
        Notice notice = PlacingNotices.WRONG_AXIS
                .with("place", place)
                .with("found", axis.other().measure())
                .with("asked", axis.measure());
        add(onAxis(notice, axis), asking, rule.mark());
    }

    /** Says so when a rule measures farther into a piece than the piece goes. */
    void largeReveal(Rule.ByEdge rule, Piece asking, Piece target, Axis axis) {
        double size = axis.high(target.shape().box()) - axis.low(target.shape().box());
        boolean inward = (rule.edge().equals(axis.high()) && rule.offset() < 0)
                || (rule.edge().equals(axis.low()) && rule.offset() > 0);
        double reveal = Math.abs(rule.offset());
        if (inward && !target.rips() && reveal > size + Tolerance.TOUCHING) {
            add(
                    PlacingNotices.REVEAL_TOO_LARGE
                            .with("reveal", Figure.length(reveal))
                            .with("edge", rule.edge())
                            .with("other", target.name())
                            .with("size", Figure.length(size))
                            .amount(Figure.length(reveal - size))
                            .cure(smaller(rule, asking, Figure.atMost(size))),
                    asking,
                    rule.mark());
        }
    }

    private static Cure smaller(Rule.ByEdge rule, Piece asking, Figure most) {
        Phrase place = (rule.offset() < 0 ? PlacingNotices.BELOW_AN_EDGE : PlacingNotices.ABOVE_AN_EDGE)
                .with("other", rule.piece())
                .with("edge", rule.edge())
                .with("most", most);
        List<Change> changes = asking.rules()
                .keyOf(rule)
                .map(key -> List.of(new Change(asking.place(key), place)))
                .orElse(List.of());
        return new Cure(PlacingNotices.MEASURE_LESS.with("most", most), changes);
    }

    void unknownPiece(Rule.ByEdge rule, Piece asking) {
        List<String> names = pieces.stream().map(Piece::name).toList();
        Phrase cure = Suggestion.nearest(rule.piece(), names)
                .map(near -> didYouMean(pieces.get(names.indexOf(near)), names.size() - 1))
                .orElseGet(() -> Phrase.plain(Suggestion.cure(rule.piece(), names)));
        add(PlacingNotices.UNKNOWN_PIECE.with("word", rule.piece()).cure(cure), asking, rule.mark());
    }

    private static Phrase didYouMean(Piece near, int others) {
        Phrase words = switch (others) {
            case 0 -> PlacingNotices.DID_YOU_MEAN;
            case 1 -> PlacingNotices.DID_YOU_MEAN_OF_TWO;
            default -> PlacingNotices.DID_YOU_MEAN_OF_SEVERAL.with("others", Figure.count(others));
        };
        Box box = near.shape().box();
        return words.with("near", near.name())
                .with("projection", Figure.length(box.width()))
                .with("height", Figure.length(box.height()));
    }

    void unknownEdge(Piece target, String edge, Mark mark, Piece asking) {
        add(
                PlacingNotices.UNKNOWN_EDGE
                        .with("other", target.name())
                        .with("word", edge)
                        .cure(Phrase.plain(Suggestion.cure(edge, Edges.names(target.shape())))),
                asking,
                mark);
    }

    void touchElsewhere(Piece piece, Mark mark) {
        add(PlacingNotices.TOUCHES_ELSEWHERE.notice(), piece, mark);
    }

    void touchingFace(Piece piece, Mark mark) {
        add(PlacingNotices.TOUCHING_FACE.notice(), piece, mark);
    }

    void twoTouches(Piece piece, Mark mark) {
        add(PlacingNotices.TWO_TOUCHES.notice(), piece, mark);
    }

    void meetsNothing(Piece piece, String edge, Mark mark) {
        add(PlacingNotices.MEETS_NOTHING.with("edge", edge), piece, mark);
    }

    private void add(Notice notice, Piece piece, Mark mark) {
        notices.add(notice.at(mark).of(piece.name()));
    }
}
