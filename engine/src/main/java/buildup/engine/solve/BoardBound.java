package buildup.engine.solve;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What boards must cost at least that give so much of each strip, when parts of boards may be taken too: the linear
 * relaxation over all ways to rip a board, by column generation (Gilmore and Gomory, Operations Research 9, 1961,
 * 849-859). Whatever the linear program says, exact dynamic programming over whole widths and whole values shows how much
 * a board is worth at most, and the bound is lowered by that: it is proved however the program rounds.
 */
public final class BoardBound {
    /**
     * A strip.
     *
     * @param width with a kerf, at least 1
     * @param wanted how much of it, not negative
     */
    public record Strip(int width, double wanted) {}

    /**
     * A kind of board.
     *
     * @param width with a kerf
     * @param price of one, not negative
     * @param most of them, {@link Double#POSITIVE_INFINITY} when there are as many as anybody could want
     */
    public record Board(int width, double price, double most) {
        boolean unlimited() {
            return Double.isInfinite(most);
        }
    }

    /** Widths are told apart as finely as this part of the widest board; a coarser count lets more strips fit, never fewer. */
    private static final int FINEST = 4_096;

    private static final int MOST_ROUNDS = 300;

    private static final int PIVOTS_FOR_A_ROW = 20;

    /** Whole parts of the dearest board in which strips are valued. */
    private static final double PARTS = 1L << 40;

    private final List<Strip> strips;
    private final List<Board> boards;
    private final int[] widths;
    private final int[] rooms;
    private final double part;
    private final ColumnSimplex simplex;
    private final int[] rowOfBoard;
    private final long[] best;
    private final int[] last;

    private BoardBound(List<Strip> strips, List<Board> boards) {
        this.strips = strips;
        this.boards = boards;
        int widest = boards.stream().mapToInt(Board::width).max().orElse(0);
        int divisor = strips.stream().mapToInt(Strip::width).reduce(0, BoardBound::divisor);
        // what fits a board also fits it when all widths are rounded down alike
        int unit = Math.max(divisor, (widest + FINEST - 1) / FINEST);
        this.widths = strips.stream()
                .mapToInt(strip -> Math.max(1, strip.width() / unit))
                .toArray();
        this.rooms = boards.stream().mapToInt(board -> board.width() / unit).toArray();
        this.part = boards.stream().mapToDouble(Board::price).max().orElse(0) / PARTS;
        this.best = new long[widest / unit + 1];
        this.last = new int[best.length];
        int[] few = IntStream.range(0, boards.size())
                .filter(i -> !boards.get(i).unlimited())
                .toArray();
        this.rowOfBoard = new int[boards.size()];
        double[] sums = new double[strips.size() + few.length];
        double[] lack = new double[sums.length];
        for (int i = 0; i < strips.size(); i++) {
            sums[i] = strips.get(i).wanted();
            lack[i] = 2 * part * PARTS;
        }
        for (int i = 0; i < few.length; i++) {
            rowOfBoard[few[i]] = strips.size() + i;
            sums[strips.size() + i] = boards.get(few[i]).most();
        }
        this.simplex = new ColumnSimplex(sums, lack);
        for (int i = 0; i < strips.size(); i++) {
            simplex.add(new ColumnSimplex.Column(new int[] {i}, new double[] {-1}, 0));
        }
    }

    /** The bound; 0 when nothing has a price. Every strip has to fit some board of which there is no end. */
    public static double least(List<Strip> strips, List<Board> boards) {
        List<Strip> wanted = strips.stream().filter(strip -> strip.wanted() > 0).toList();
        BoardBound bound = new BoardBound(wanted, boards);
        return wanted.isEmpty() || bound.part == 0 ? 0 : bound.search();
    }

    private double search() {
        double least = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            simplex.solve(PIVOTS_FOR_A_ROW * rowOfBoard.length * (strips.size() + 1));
            long[] values = new long[strips.size()];
            Arrays.setAll(values, i -> (long) Math.floor(Math.max(0, simplex.price(i)) / part));
            fill(values);
            least = Math.max(least, proved(values));
            if (!better(values)) {
                break;
            }
        }
        return least;
    }

    /** The most that strips in so much room are worth, and the strip that comes last there, by dynamic programming. */
    private void fill(long[] values) {
        Arrays.fill(best, 0);
        Arrays.fill(last, -1);
        for (int room = 1; room < best.length; room++) {
            best[room] = best[room - 1];
            for (int i = 0; i < widths.length; i++) {
                if (widths[i] <= room && best[room - widths[i]] + values[i] > best[room]) {
                    best[room] = best[room - widths[i]] + values[i];
                    last[room] = i;
                }
            }
        }
    }

    /** Values lowered all alike until no board is worth more than its price, those of which there are few at a premium. */
    private double proved(long[] values) {
        double held = 1;
        for (int i = 0; i < rooms.length; i++) {
            double most = best[rooms[i]] * part;
            if (boards.get(i).unlimited() && most > boards.get(i).price()) {
                held = Math.min(held, boards.get(i).price() / most);
            }
        }
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += values[i] * part * held * strips.get(i).wanted();
        }
        for (int i = 0; i < rooms.length; i++) {
            Board board = boards.get(i);
            if (!board.unlimited()) {
                sum -= board.most() * Math.max(0, best[rooms[i]] * part * held - board.price());
            }
        }
        return sum * (1 - Tolerance.COINCIDENT);
    }

    /** Adds the way to rip each board that is worth most over its price; whether there was one. */
    private boolean better(long[] values) {
        boolean better = false;
        for (int i = 0; i < rooms.length; i++) {
            Board board = boards.get(i);
            double premium = board.unlimited() ? 0 : Math.max(0, -simplex.price(rowOfBoard[i]));
            double over = best[rooms[i]] * part - board.price() - premium;
            if (over > part * PARTS * Tolerance.COINCIDENT) {
                simplex.add(column(i, values.length));
                better = true;
            }
        }
        return better;
    }

    private ColumnSimplex.Column column(int board, int types) {
        int[] counts = new int[types];
        int room = rooms[board];
        while (room > 0) {
            if (last[room] < 0) {
                room--;
            } else {
                counts[last[room]]++;
                room -= widths[last[room]];
            }
        }
        List<Integer> rows = new ArrayList<>();
        List<Double> factors = new ArrayList<>();
        for (int i = 0; i < types; i++) {
            if (counts[i] > 0) {
                rows.add(i);
                factors.add((double) counts[i]);
            }
        }
        if (!boards.get(board).unlimited()) {
            rows.add(rowOfBoard[board]);
            factors.add(1.0);
        }
        return new ColumnSimplex.Column(
                rows.stream().mapToInt(row -> row).toArray(),
                factors.stream().mapToDouble(factor -> factor).toArray(),
                boards.get(board).price());
    }

    private static int divisor(int a, int b) {
        return b == 0 ? a : divisor(b, a % b);
    }
}
