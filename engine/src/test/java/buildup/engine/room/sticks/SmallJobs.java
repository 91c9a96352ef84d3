package buildup.engine.room.sticks;

import buildup.engine.Bench;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A job of a few square lengths of two widths, and its least price by trying every set of lengths on every board. */
record SmallJobs(List<Integer> widths, List<Integer> lengths, boolean onHand, boolean priced, CutList laid) {
    private static final double KERF = 0.125;

    /** Widths and prices a foot in hundredths of the boards that are offered; lengths in feet. */
    private static final double[][] BOARDS = {{3.5, 180}, {5.5, 270}, {7.25, 390}};

    private static final int[] FEET = {6, 8, 10};

    static SmallJobs of(int seed) {
        Random random = new Random(seed);
        int lots = 2;
        int walls = 3 + random.nextInt(2);
        List<Integer> widths = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < lots; i++) {
            // two of one width would be one lot
            int eighths = 9 + 10 * i + random.nextInt(10);
            pieces.add(String.format(
                    Locale.ROOT,
                    "name: p%d, profile: board 3/4 x %s, back: wall, bottom: %s",
                    i,
                    eighths / 8.0,
                    i == 0 ? "datum" : "p0.top"));
            widths.add(eighths);
        }
        StringBuilder plan = new StringBuilder("plan:\n");
        for (int i = 0; i < walls; i++) {
            int length = 15 + random.nextInt(90);
            lengths.add(length);
            plan.append("  - { name: r")
                    .append(i)
                    .append(", left: square, right: square, stretches: [{ length: ")
                    .append(length)
                    .append(" }] }\n");
        }
        boolean onHand = random.nextInt(3) == 0;
        boolean priced = random.nextInt(4) > 0;
        StringBuilder stock = new StringBuilder("stock:\n  kerf: 1/8\n  trim: 0\n  sticks:\n");
        for (double[] board : BOARDS) {
            stock.append(String.format(
                    Locale.ROOT,
                    "    - { of: board 3/4 x %s, buy: [6', 8', 10']%s%s }%n",
                    board[0],
                    onHand && board[0] > 5 && board[0] < 6 ? ", on-hand: [8']" : "",
                    priced ? ", price: " + board[1] / 100 + ", per: foot" : ""));
        }
        CutList laid = Cutlist.of(Cutlist.WALL + Bench.list(pieces.toArray(String[]::new)), plan + stock.toString())
                .cutList();
        return new SmallJobs(widths, lengths, onHand, priced, laid);
    }

    private int pieces() {
        return widths.size() * lengths.size();
    }

    private int length(int piece) {
        return lengths.get(piece % lengths.size());
    }

    private double width(int piece) {
        return widths.get(piece / lengths.size()) / 8.0;
    }

    /**
     * The least that all can take, over the sets that one more board may hold; the board on hand is used at most once.
     *
     * @param crosscut whether lengths of both widths may come from one strip, each ripped to its own width then
     */
    long least(boolean crosscut) {
        int all = (1 << pieces()) - 1;
        long[] bought = new long[all + 1];
        Arrays.fill(bought, Long.MAX_VALUE / 2);
        bought[0] = 0;
        for (int set = 1; set <= all; set++) {
            int first = Integer.lowestOneBit(set);
            for (int part = set; part > 0; part = (part - 1) & set) {
                if ((part & first) != 0) {
                    bought[set] = Math.min(bought[set], bought[set ^ part] + cheapest(part, crosscut));
                }
            }
        }
        long least = bought[all];
        for (int part = all; onHand && part > 0; part--) {
            if (fits(part, 5.5, 96, crosscut)) {
                least = Math.min(least, bought[all ^ part]);
            }
        }
        return least;
    }

    private long cheapest(int part, boolean crosscut) {
        long cheapest = Long.MAX_VALUE / 4;
        for (double[] board : BOARDS) {
            for (int feet : FEET) {
                long price = priced ? Math.round(board[1] * feet) : 1;
                if (price < cheapest && fits(part, board[0], feet * 12, crosscut)) {
                    cheapest = price;
                }
            }
        }
        return cheapest;
    }

    private boolean fits(int part, double width, int length, boolean crosscut) {
        double widest = part >= 1 << lengths.size() ? width(lengths.size()) : width(0);
        if (crosscut && strips(part, length) * (widest + KERF) - KERF <= width + 1e-9) {
            return true;
        }
        double taken = -KERF;
        for (int lot = 0; lot < widths.size(); lot++) {
            int own = part & (((1 << lengths.size()) - 1) << (lot * lengths.size()));
            taken += strips(own, length) * (width(lot * lengths.size()) + KERF);
        }
        return taken <= width + 1e-9;
    }

    /** The fewest strips of a length that hold a set. */
    private int strips(int set, int length) {
        if (set == 0) {
            return 0;
        }
        int fewest = 1_000;
        int first = Integer.lowestOneBit(set);
        for (int part = set; part > 0; part = (part - 1) & set) {
            if ((part & first) != 0 && taken(part) <= length) {
                fewest = Math.min(fewest, 1 + strips(set ^ part, length));
            }
        }
        return fewest;
    }

    private double taken(int part) {
        double taken = -KERF;
        for (int piece = 0; piece < pieces(); piece++) {
            taken += (part >> piece & 1) == 1 ? length(piece) + KERF : 0;
        }
        return taken;
    }
}
