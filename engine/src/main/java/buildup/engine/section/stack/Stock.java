package buildup.engine.section.stack;

import buildup.catalog.words.SizeText;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import java.util.List;
import java.util.Optional;

/**
 * The stick a piece is cut from, before it is ripped to fit; inches.
 *
 * @param name the profile as it was asked for, or "section" for a one-off
 * @param profileKind the trade's word for the profile, "section" for a one-off
 * @param rips whether two rules on an axis may cut it to fit: boards and plain blocking
 * @param board whether it is a board of a list
 * @param lying whether its width lies level
 */
public record Stock(
        String name, String profileKind, double thickness, double width, boolean rips, boolean board, boolean lying) {
    private static final String TRUE_SIZE = "board ";
    private static final Phrase BOARD = Phrase.of(TRUE_SIZE + "{thickness} x {width}");

    /** The same, its width level. */
    Stock laid() {
        return new Stock(name, profileKind, thickness, width, rips, board, true);
    }

    /** How the document would call the same board if it were so wide. */
    public Phrase soWide(Figure other) {
        return BOARD.with("thickness", called(0).orElse(Figure.contact(thickness)))
                .with("width", other);
    }

    /** How the document would call the same board if it were so thick. */
    public Phrase soThick(Figure other) {
        return BOARD.with("thickness", other).with("width", called(1).orElse(Figure.contact(width)));
    }

    /** A size in the words of the document; nothing when the board is called by a nominal size. */
    private Optional<Value> called(int size) {
        List<String> sizes =
                name.startsWith(TRUE_SIZE) ? SizeText.split(name.substring(TRUE_SIZE.length())) : List.of();
        return sizes.size() == 2 ? Optional.of(new Text(sizes.get(size))) : Optional.empty();
    }

    /** Whether the profile is known to be run with its narrow side down. */
    public Optional<String> downIsNarrow() {
        return switch (profileKind) {
            case "crown", "bed", "cove" -> Optional.of(profileKind);
            default -> Optional.empty();
        };
    }
}
