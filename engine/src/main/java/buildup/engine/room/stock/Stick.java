package buildup.engine.room.stock;

import java.util.List;
import java.util.OptionalInt;

/**
 * A stick or board as it is cut up. Lengths in {@link LengthSteps}.
 *
 * @param origin where it comes from
 * @param price in hundredths; 0 for what is on hand and where no price is given
 * @param strips ripped over its whole length, side by side; one as wide as the stick when nothing is ripped
 */
public record Stick(Supply supply, int length, Origin origin, long price, List<Strip> strips) {
    /** Where a stick comes from. */
    public enum Origin {
        ON_HAND("on hand"),
        BOUGHT("to buy"),
        /** There is none: it must be found before the job can be done. */
        MISSING("missing");

        private final String word;

        Origin(String word) {
            this.word = word;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }
    }

    /**
     * A strip of a stick.
     *
     * @param width {@link LengthSteps}
     * @param ripped whether it is narrower than its board
     * @param pieces from its left end
     * @param rest behind the last cut, the trimming of the far end left out
     */
    public record Strip(int width, boolean ripped, List<LaidPiece> pieces, int rest) {
        public Strip {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * A piece and how far its left end lies from that of the stick.
     *
     * @param turned whether it lies face for back, so that its slanted end nests in that of the piece before it
     * @param ripped the width to which it is ripped once it is cut to length, {@link LengthSteps}; absent when it is as wide
     *     as its strip
     */
    public record LaidPiece(StickPiece piece, int from, boolean turned, OptionalInt ripped) {
        /** Where the piece ends on the stick, in length steps. */
        public int to() {
            return from + piece.length();
        }
    }

    public Stick {
        strips = List.copyOf(strips);
    }

    /** Board feet, as the trade counts them. */
    public double boardFeet() {
        return LengthSteps.inches(length) / 12 * supply.feet();
    }

    /**
     * Square inches of its face that lie in pieces, by their mean lengths: an end that is cut aslant takes half of its slant
     * off, and miters that nest share what lies between them.
     */
    public double area() {
        return strips.stream()
                .mapToDouble(strip -> strip.pieces().stream()
                        .mapToDouble(lie -> LengthSteps.inches(lie.ripped().orElse(strip.width())) * mean(lie.piece()))
                        .sum())
                .sum();
    }

    private static double mean(StickPiece piece) {
        return LengthSteps.inches(piece.length())
                - Math.abs(piece.left().slant()) / 2
                - Math.abs(piece.right().slant()) / 2;
    }
}
