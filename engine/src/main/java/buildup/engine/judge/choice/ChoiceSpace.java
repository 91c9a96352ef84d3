package buildup.engine.judge.choice;

import buildup.engine.section.free.FreeSize;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** All choices of some free sizes. */
public final class ChoiceSpace {
    private final List<FreeSize> sizes;

    /** @param sizes that are free */
    public ChoiceSpace(List<FreeSize> sizes) {
        this.sizes = List.copyOf(sizes);
    }

    /** The free sizes, in their order. */
    public List<FreeSize> sizes() {
        return sizes;
    }

    /** How many stacks it holds. */
    public BigInteger count() {
        return sizes.stream()
                .map(size -> BigInteger.valueOf(size.choices().size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    /** The choices of today's stack. */
    public int[] now() {
        return sizes.stream().mapToInt(FreeSize::now).toArray();
    }

    /** The choices by number, the last size turning fastest. */
    public int[] at(long number) {
        int[] choices = new int[sizes.size()];
        long left = number;
        for (int i = sizes.size() - 1; i >= 0; i--) {
            int count = sizes.get(i).choices().size();
            choices[i] = (int) (left % count);
            left /= count;
        }
        return choices;
    }

    /** The same of a space with more choices than a number of the machine counts. */
    public int[] at(BigInteger number) {
        int[] choices = new int[sizes.size()];
        BigInteger left = number;
        for (int i = sizes.size() - 1; i >= 0; i--) {
            BigInteger[] parts = left.divideAndRemainder(
                    BigInteger.valueOf(sizes.get(i).choices().size()));
            choices[i] = parts[1].intValue();
            left = parts[0];
        }
        return choices;
    }

    /** The number of some choices, as {@link #at(long)} counts; of a space of no more than so many. */
    public long number(int[] choices) {
        long number = 0;
        for (int i = 0; i < choices.length; i++) {
            number = number * sizes.get(i).choices().size() + choices[i];
        }
        return number;
    }

    /** What is typed for each size. */
    public List<String> texts(int[] choices) {
        String[] texts = new String[choices.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = sizes.get(i).choices().get(choices[i]);
        }
        return List.of(texts);
    }

    /** What is typed for today's stack, with another text for one size. */
    public List<String> textsWith(int size, String text) {
        List<String> texts = new ArrayList<>(texts(now()));
        texts.set(size, text);
        return List.copyOf(texts);
    }

    /** How many sizes are other than today's. */
    public int changed(int[] choices) {
        int changed = 0;
        for (int i = 0; i < choices.length; i++) {
            changed += choices[i] == sizes.get(i).now() ? 0 : 1;
        }
        return changed;
    }

    /** The sum of the changes of sizes, in. */
    public double change(int[] choices) {
        double change = 0;
        for (int i = 0; i < choices.length; i++) {
            change += sizes.get(i).change(choices[i]);
        }
        return change;
    }

    /**
     * How much is changed as a share of all that could be: first of how many sizes there are, then, as less than one size
     * more, of how far they could go.
     */
    public double share(int[] choices) {
        double most = sizes.stream()
                .mapToDouble(size ->
                        Math.max(size.change(0), size.change(size.choices().size() - 1)))
                .sum();
        double far = most > 0 ? change(choices) / most / 2 : 0;
        return (changed(choices) + far) / (sizes.size() + 0.5);
    }
}
