package buildup.engine.judge.bound.form;

import buildup.engine.section.free.FreeSize;
import java.math.BigInteger;
import java.util.List;

/** A part of a space of choices: for each free size the choices from one number to another, both among them. */
public final class ChoiceBox {
    private final int[] low;
    private final int[] high;

    private ChoiceBox(int[] low, int[] high) {
        this.low = low;
        this.high = high;
    }

    /** All choices of some sizes. */
    public static ChoiceBox whole(List<FreeSize> sizes) {
        return new ChoiceBox(
                new int[sizes.size()],
                sizes.stream().mapToInt(size -> size.choices().size() - 1).toArray());
    }

    /** How many sizes it speaks of. */
    public int sizes() {
        return low.length;
    }

    /** The number of the first choice of a size. */
    public int low(int size) {
        return low[size];
    }

    /** The number of the last choice of a size. */
    public int high(int size) {
        return high[size];
    }

    /** How many choices of a size it holds. */
    public int width(int size) {
        return high[size] - low[size] + 1;
    }

    /** Whether it holds a choice of a size. */
    public boolean holds(int size, int choice) {
        return low[size] <= choice && choice <= high[size];
    }

    /** How many stacks it holds. */
    public BigInteger count() {
        BigInteger count = BigInteger.ONE;
        for (int i = 0; i < low.length; i++) {
            count = count.multiply(BigInteger.valueOf(width(i)));
        }
        return count;
    }

    /** The same with other choices of one size. */
    public ChoiceBox with(int size, int from, int to) {
        int[] lower = low.clone();
        int[] upper = high.clone();
        lower[size] = from;
        upper[size] = to;
        return new ChoiceBox(lower, upper);
    }

    /** One of its stacks, the last size turning fastest; numbers from 0. */
    public int[] at(long number) {
        int[] choices = new int[low.length];
        long left = number;
        for (int i = low.length - 1; i >= 0; i--) {
            choices[i] = low[i] + (int) (left % width(i));
            left /= width(i);
        }
        return choices;
    }
}
