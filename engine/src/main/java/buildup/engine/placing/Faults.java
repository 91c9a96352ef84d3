package buildup.engine.placing;

import buildup.engine.stack.Axis;
import buildup.engine.stack.Piece;
import buildup.engine.stack.Rule;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;

/** Says why a rule places nothing, or something doubtful. */
final class Faults {
    private static final String NO_PLACE = "circular-or-missing-placing";
    private static final String NOT_A_PLACE = "not-a-place";

    private final List<Piece> pieces;
    private final Notices notices;

    Faults(List<Piece> pieces, Notices notices) {
        this.pieces = pieces;
        this.notices = notices;
    }

    /** @param ring the pieces in the order in which each is placed on the next, the last on the first */
    void circle(List<Piece> ring, Mark mark) {
        List<String> steps = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            String from = ring.get(i).name();
            String to = ring.get((i + 1) % ring.size()).name();
            if (!from.equals(to)) {
                steps.add(from + " is placed on " + to);
            }
        }
        Piece first = ring.get(0);
        String message = steps.isEmpty() ? first.name() + " is placed on itself" : String.join(", ", steps);
        refuse(NO_PLACE, first, mark, message + ".", "Place one of them on the wall, the floor or the datum.");
    }

    void missing(Piece piece, Axis axis) {
        refuse(
                NO_PLACE,
                piece,
                piece.mark(),
                "'" + piece.name() + "' has no place: nothing says " + axis.measure() + ".",
                "Give '" + axis.low() + ":' or '" + axis.high() + ":'.");
    }

    void doubled(Piece piece, Axis axis, Mark mark) {
        refuse(
                "doubled-rule",
                piece,
                mark,
                "'" + piece.name() + "' has two rules for " + axis.measure()
                        + "; only a board or plain blocking is ripped to fit.",
                "Keep '" + axis.low() + ":' or '" + axis.high() + ":'.");
    }

    void nothingLeft(Piece piece, Axis axis, double size, Mark mark) {
        refuse(
                "thickness-zero-or-negative",
                piece,
                mark,
                "'" + piece.name() + "' is left " + print(size) + " between its " + axis.low() + " and its "
                        + axis.high() + ".",
                "Move one of the two, or take it out.");
    }

    void tooSmall(Piece piece, double size, double stock, Mark mark) {
        notices.add(Notice.problem(
                        "board-too-small",
                        "'" + piece.name() + "' needs " + print(size) + ", but "
                                + piece.stock().name() + " gives " + print(stock) + ".")
                .at(mark)
                .of(piece.name())
                .amount(Length.inches(size - stock))
                .cure("Take a larger board, or glue one up."));
    }

    void wrongAxis(String place, Rule rule, Piece asking, Axis axis) {
        refuse(
                NOT_A_PLACE,
                asking,
                rule.mark(),
                place + " is " + axis.other().measure() + ", not " + axis.measure() + ".",
                "Name a " + axis.low() + " or a " + axis.high() + ".");
    }

    /** Says so when a rule measures farther into a piece than the piece goes. */
    void largeReveal(Rule.ByEdge rule, Piece asking, Piece target, Axis axis) {
        double size = axis.high(target.shape().box()) - axis.low(target.shape().box());
        boolean inward = rule.edge().equals(axis.high()) && rule.offset() < 0
                || rule.edge().equals(axis.low()) && rule.offset() > 0;
        if (inward && !target.rips() && Math.abs(rule.offset()) > size + Tolerance.TOUCHING) {
            notices.add(Notice.problem(
                            "reveal-larger-than-its-piece",
                            "'" + asking.name() + "' stands " + print(Math.abs(rule.offset())) + " from the "
                                    + rule.edge() + " of '" + target.name() + "', which is only " + print(size) + ".")
                    .at(rule.mark())
                    .of(asking.name())
                    .amount(Length.inches(Math.abs(rule.offset()) - size))
                    .cure("Measure from its other edge, or make it less than " + print(size) + "."));
        }
    }

    void unknownPiece(Rule.ByEdge rule, Piece asking) {
        List<String> names = pieces.stream().map(Piece::name).toList();
        String cure = Suggestion.nearest(rule.piece(), names)
                .map(near -> pieces.get(names.indexOf(near)))
                .map(near -> "Did you mean " + near.name() + " (" + described(near) + ")?" + others(names.size() - 1))
                .orElseGet(() -> Suggestion.cure(rule.piece(), names));
        refuse("unknown-name", asking, rule.mark(), "No piece called '" + rule.piece() + "'.", cure);
    }

    private static String others(int count) {
        return count == 0 ? "" : count == 1 ? " There is 1 other." : " There are " + count + " others.";
    }

    private static String described(Piece piece) {
        Box box = piece.shape().box();
        return print(box.width()) + " out x " + print(box.height()) + " up";
    }

    void unknownEdge(Piece target, String edge, Mark mark, Piece asking) {
        refuse(
                "unknown-name",
                asking,
                mark,
                "'" + target.name() + "' has no one straight, level or upright edge called '" + edge + "'.",
                Suggestion.cure(edge, Edges.names(target.shape())));
    }

    void touchElsewhere(Piece piece, Mark mark) {
        refuse(
                NOT_A_PLACE,
                piece,
                mark,
                "'" + piece.name() + "' touches by back, bottom or top alone.",
                "Give a place here, as 'frieze.top'.");
    }

    void touchingFace(Piece piece, Mark mark) {
        refuse(
                NOT_A_PLACE,
                piece,
                mark,
                "A face touches nothing: pieces come in from the room.",
                "Write 'back: touch'.");
    }

    void twoTouches(Piece piece, Mark mark) {
        refuse(
                NOT_A_PLACE,
                piece,
                mark,
                "'" + piece.name() + "' has two touches: it would never stop in the same place.",
                "Give one of them a place.");
    }

    void meetsNothing(Piece piece, String edge, Mark mark) {
        refuse(
                NO_PLACE,
                piece,
                mark,
                "'" + piece.name() + "' meets nothing on its way.",
                "Give '" + edge + ":' a place.");
    }

    private void refuse(String code, Piece piece, Mark mark, String message, String cure) {
        notices.add(Notice.refusal(code, message).at(mark).of(piece.name()).cure(cure));
    }

    private static String print(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }
}
