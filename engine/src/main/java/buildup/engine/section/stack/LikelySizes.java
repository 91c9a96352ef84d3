package buildup.engine.section.stack;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Text;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthReader.Term;
import buildup.shared.length.Reading;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Asks whether millimeters were meant where inches are far more than trim has; a size with its unit written is not asked. */
public final class LikelySizes {
    /** Wider trim than this is more likely a size in millimeters: 60 in, wider than any board and most sheets. */
    private static final double WIDEST_TRIM = 60;

    /** Trim that stands out farther, or goes up farther, in inches, was more likely measured in millimeters. */
    private static final double FARTHEST_OUT = 60;

    private static final double FARTHEST_UP = 480;

    private final LengthReader lengths;
    private final Notices notices;

    LikelySizes(LengthReader lengths, Notices notices) {
        this.lengths = lengths;
        this.notices = notices;
    }

    /** @param inFeet the piece as it would be if bare numbers were feet */
    void say(Piece piece, Supplier<Optional<Box>> inFeet) {
        if (lengths.bareUnit().isMetric() || piece.kind() == PieceKind.FRAMING) {
            return;
        }
        size(piece, inFeet);
        place(piece, List.of("back", "face"), FARTHEST_OUT);
        place(piece, List.of("bottom", "top"), FARTHEST_UP);
    }

    private void size(Piece piece, Supplier<Optional<Box>> inFeet) {
        Box box = piece.shape().box();
        double most = Math.max(box.width(), box.height());
        // the catalog has judged its own profiles
        boolean ofCatalog =
                !piece.stock().board() && !piece.stock().profileKind().equals("section");
        if (!ofCatalog
                && most > WIDEST_TRIM
                && !inFeet.get().filter(other -> written(box, other)).isPresent()) {
            notices.add(StackNotices.LONG_MOLDING
                    .with("across", Figure.length(most).rounded(Rounding.decimals(1)))
                    .with("feet", Figure.of(Quantity.RUN, most / 12))
                    .with("number", number(most))
                    .at(piece.mark())
                    .of(piece.name())
                    .amount(Figure.length(most)));
        }
    }

    private static boolean written(Box box, Box inFeet) {
        return Stream.of(box.width(), box.height())
                .filter(side -> side > WIDEST_TRIM)
                .allMatch(side -> Tolerance.same(side, inFeet.width()) || Tolerance.same(side, inFeet.height()));
    }

    /** The edges on one axis of which the first that has a rule says where the piece is. */
    private void place(Piece piece, List<String> edges, double most) {
        edges.stream()
                .filter(edge -> piece.rules().at(edge).isPresent())
                .findFirst()
                .ifPresent(edge -> {
                    Rule rule = piece.rules().at(edge).orElseThrow();
                    double away = Math.abs(offset(rule));
                    if (away > most && !(own(piece.rules().written().getOrDefault(edge, "")) > most)) {
                        notices.add(StackNotices.FAR_AWAY
                                .with("away", Figure.length(away).rounded(Rounding.decimals(0)))
                                .with("feet", Figure.of(Quantity.RUN, away / 12).rounded(Rounding.decimals(0)))
                                .with("number", number(away))
                                .at(rule.mark())
                                .of(piece.name())
                                .amount(Figure.length(away)));
                    }
                });
    }

    private static double offset(Rule rule) {
        if (rule instanceof Rule.Level level) {
            return level.at();
        }
        return rule instanceof Rule.ByEdge edge ? edge.offset() : 0;
    }

    /** What the terms of a rule that have their unit written come to, in; the heights of the room left out. */
    private double own(String text) {
        double sum = 0;
        for (Term term : LengthReader.terms(text)) {
            if (lengths.unitWritten(term.text()) && lengths.read(term.text()) instanceof Reading.Good good) {
                sum += (term.minus() ? -1 : 1) * good.length().toInches();
            }
        }
        return Math.abs(sum);
    }

    /** A size as somebody may have typed it who meant millimeters: its number alone, in. */
    public static Text number(double inches) {
        return new Text(BigDecimal.valueOf(inches)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString());
    }
}
