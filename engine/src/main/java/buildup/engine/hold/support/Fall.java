package buildup.engine.hold.support;

import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How pieces of a stack begin to move when nothing keeps them, and how far until something stops them.
 *
 * @param parts each lot of pieces that move as one, the one that falls most first; where gaps close, before it those that
 *     close one
 */
public record Fall(List<Part> parts) {
    /** Copies the list. */
    public Fall {
        parts = List.copyOf(parts);
    }

    /** Which way a lot of pieces moves. */
    public enum Way {
        /** Turns with its top toward the room: clockwise with the room on the right. */
        TIPS_OUT("tips out", "tip out"),
        /** Turns with its top toward the wall. */
        TIPS_BACK("tips back", "tip back"),
        /** Moves straight, more out than anything else. */
        SLIDES_OUT("slides out", "slide out"),
        /** Moves straight, more toward the wall than anything else. */
        SLIDES_BACK("slides back", "slide back"),
        /** Moves straight down, or nearly so. */
        FALLS("falls", "fall"),
        /** Is lifted by others that fall. */
        RISES("is lifted", "are lifted");

        private final String words;
        private final String plural;

        Way(String words, String plural) {
            this.words = words;
            this.plural = plural;
        }

        /** As sentences say it, of one piece. */
        public String words() {
            return words;
        }

        /** As sentences say it, of several pieces. */
        public String plural() {
            return plural;
        }

        /** Whether it turns. */
        public boolean turns() {
            return this == TIPS_OUT || this == TIPS_BACK;
        }
    }

    /**
     * Pieces that move as one.
     *
     * @param pieces their numbers
     * @param about where they turn; absent when they move straight
     * @param on the body on whose edge they turn or slide; absent when there is none
     * @param stop what stops them; absent when nothing does within a quarter turn, or within the room
     */
    public record Part(List<Integer> pieces, Way way, Optional<Point> about, OptionalInt on, Optional<Stop> stop) {
        /** Copies the list. */
        public Part {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * What stops a motion.
     *
     * @param by number of the body
     * @param at where the two meet
     * @param travel how far the place that meets it has come, in
     * @param degrees how far the pieces have turned; 0 when they move straight
     */
    public record Stop(int by, Point at, double travel, double degrees) {}

    /** All pieces that move, those of the first lot first. */
    public List<Integer> pieces() {
        return parts.stream().flatMap(part -> part.pieces().stream()).distinct().toList();
    }

    /** The lot that falls most, or that closes a gap. */
    public Part first() {
        return parts.get(0);
    }
}
