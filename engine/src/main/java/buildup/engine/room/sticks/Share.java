package buildup.engine.room.sticks;

/**
 * What of a board's price each of its strips is charged, so that lots of strips can be laid out one after another.
 * Widths are whole {@link LengthSteps}.
 */
sealed interface Share {
    /** The charge for a strip, rounded up. */
    long charge(Rip rip, long price);

    /**
     * A strip of a board; both widths with one kerf, so that strips fit that together are no wider than the board.
     *
     * @param strip at least 1
     * @param board at least as wide
     */
    record Rip(int strip, int board) {
        static Rip of(int strip, int board, int kerf) {
            return new Rip(Math.min(strip, board) + kerf, board + kerf);
        }

        /** Strips that a board gives. */
        int each() {
            return board / strip;
        }
    }

    /** An equal part for each of as many strips as fit. */
    record Equal() implements Share {
        @Override
        public long charge(Rip rip, long price) {
            return (price + rip.each() - 1) / rip.each();
        }
    }

    /**
     * A dual feasible function of the strip's part x of the board: the charges of strips that fit one board together
     * never exceed its price. It is x itself for 0 steps, else x where (steps + 1) x is whole and
     * floor((steps + 1) x) / steps elsewhere (S. P. Fekete and J. Schepers, New classes of fast lower bounds for bin
     * packing problems, Mathematical Programming 91, 2001, theorem 1).
     */
    record Dual(int steps) implements Share {
        @Override
        public long charge(Rip rip, long price) {
            return (price * over(rip) + under(rip) - 1) / under(rip);
        }

        /** The charge, rounded down: then too the charges on one board never exceed its price. */
        long least(Rip rip, long price) {
            return price * over(rip) / under(rip);
        }

        private long over(Rip rip) {
            return whole(rip) ? rip.strip : (steps + 1L) * rip.strip / rip.board;
        }

        private long under(Rip rip) {
            return whole(rip) ? rip.board : steps;
        }

        private boolean whole(Rip rip) {
            return steps == 0 || (steps + 1L) * rip.strip % rip.board == 0;
        }
    }
}
