package buildup.engine.judge.bound.form;

import buildup.profiles.outline.Tolerance;
import java.util.function.IntToDoubleFunction;

/**
 * A number that hangs on the free sizes: a constant, a function of each size, and a rest that lies in a range whatever they
 * are. What hangs on several sizes at once is in the rest.
 */
public final class SizeSum {
    /** Functions of the sizes by their choices; an empty one for a size on which it does not hang. */
    private final double[][] ofSizes;

    private final double constant;
    private final Range rest;

    private SizeSum(double[][] ofSizes, double constant, Range rest) {
        this.ofSizes = ofSizes;
        this.constant = constant;
        this.rest = rest;
    }

    static SizeSum of(int sizes, double constant) {
        return new SizeSum(new double[sizes][0], constant, new Range(0, 0));
    }

    /**
     * The sum that comes nearest to a number known for all choices of some sizes.
     *
     * @param sizes how many there are in all
     * @param own the numbers of those on which it hangs
     * @param counts how many choices each of these has
     * @param values by the number of the choices, the last of these sizes turning fastest; no number where no stack is
     */
    static SizeSum fitted(int sizes, int[] own, int[] counts, IntToDoubleFunction values) {
        int all = 1;
        int[] stride = new int[own.length];
        for (int i = own.length - 1; i >= 0; i--) {
            stride[i] = all;
            all *= counts[i];
        }
        int base = 0;
        while (base < all && Double.isNaN(values.applyAsDouble(base))) {
            base++;
        }
        if (base == all) {
            return of(sizes, 0);
        }
        double constant = values.applyAsDouble(base);
        double[][] functions = new double[sizes][0];
        for (int i = 0; i < own.length; i++) {
            double[] function = new double[counts[i]];
            boolean any = false;
            int from = base - base / stride[i] % counts[i] * stride[i];
            for (int k = 0; k < counts[i]; k++) {
                double value = values.applyAsDouble(from + k * stride[i]);
                function[k] = Double.isNaN(value) ? k > 0 ? function[k - 1] : 0 : value - constant;
                any |= Math.abs(function[k]) > 0;
            }
            functions[own[i]] = any ? function : new double[0];
        }
        double least = 0;
        double most = 0;
        for (int number = 0; number < all; number++) {
            double value = values.applyAsDouble(number);
            if (!Double.isNaN(value)) {
                double left = value - constant;
                for (int i = 0; i < own.length; i++) {
                    double[] function = functions[own[i]];
                    left -= function.length == 0 ? 0 : function[number / stride[i] % counts[i]];
                }
                least = Math.min(least, left);
                most = Math.max(most, left);
            }
        }
        boolean none = most - least <= Tolerance.ROUNDING;
        return new SizeSum(functions, constant, none ? new Range(0, 0) : new Range(least, most));
    }

    /** Both together. */
    public SizeSum plus(SizeSum other) {
        return with(other, 1);
    }

    /** This less another: what both hang on alike falls out. */
    public SizeSum minus(SizeSum other) {
        return with(other, -1);
    }

    /** The same and a constant more. */
    public SizeSum plus(double more) {
        return new SizeSum(ofSizes, constant + more, rest);
    }

    /** The same so many times. */
    public SizeSum times(double factor) {
        double[][] functions = new double[ofSizes.length][0];
        for (int i = 0; i < functions.length; i++) {
            functions[i] = ofSizes[i].clone();
            for (int k = 0; k < functions[i].length; k++) {
                functions[i][k] *= factor;
            }
        }
        return new SizeSum(functions, constant * factor, rest.times(factor));
    }

    private SizeSum with(SizeSum other, double factor) {
        double[][] functions = new double[ofSizes.length][0];
        for (int i = 0; i < functions.length; i++) {
            double[] its = other.ofSizes[i];
            if (its.length == 0) {
                functions[i] = ofSizes[i];
            } else {
                functions[i] = new double[its.length];
                boolean any = false;
                for (int k = 0; k < its.length; k++) {
                    functions[i][k] = (ofSizes[i].length == 0 ? 0 : ofSizes[i][k]) + factor * its[k];
                    any |= Math.abs(functions[i][k]) > Tolerance.ROUNDING;
                }
                functions[i] = any ? functions[i] : new double[0];
            }
        }
        return new SizeSum(functions, constant + factor * other.constant, rest.plus(other.rest.times(factor)));
    }

    /** Between what it lies over a box. */
    public Range over(ChoiceBox box) {
        double least = constant + rest.least();
        double most = constant + rest.most();
        for (int i = 0; i < ofSizes.length; i++) {
            double[] function = ofSizes[i];
            if (function.length > 0) {
                double low = function[box.low(i)];
                double high = low;
                for (int k = box.low(i) + 1; k <= box.high(i); k++) {
                    low = Math.min(low, function[k]);
                    high = Math.max(high, function[k]);
                }
                least += low;
                most += high;
            }
        }
        return new Range(least, most);
    }

    /** How much it may change with one size alone over a box. */
    public double spread(int size, ChoiceBox box) {
        double[] function = ofSizes[size];
        if (function.length == 0) {
            return 0;
        }
        double low = function[box.low(size)];
        double high = low;
        for (int k = box.low(size) + 1; k <= box.high(size); k++) {
            low = Math.min(low, function[k]);
            high = Math.max(high, function[k]);
        }
        return high - low;
    }
}
