package buildup.packing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lambdas of every kind, for the test to spell out. {@link Supplier#get} gives what they answer. */
public final class Lambdas implements Supplier<List<String>> {
    private final String own = "own";
    private final List<String> answers = new ArrayList<>();

    private interface Wide {
        double of(double x, long n, byte b, String text);
    }

    private interface Named<T extends Comparable<T>> {
        String name(T one);

        default String twice(T one) {
            return name(one) + name(one);
        }
    }

    private static final class Inner {
        private final int size;

        private Inner(int size) {
            this.size = size;
        }

        private int size() {
            return size;
        }

        private Supplier<String> deep() {
            return () -> "deep " + size;
        }
    }

    @Override
    public List<String> get() {
        plain();
        taken(3, 4L, 0.5, 'c', true);
        references();
        adapted();
        left();
        records();
        return answers;
    }

    private void plain() {
        Supplier<String> nothing = () -> "nothing taken";
        answers.add(nothing.get());
        Function<String, String> mine = text -> text + own;
        answers.add(mine.apply("taken from this: "));
        answers.add(new Inner(7).deep().get());
        Runnable adds = () -> answers.add("run");
        adds.run();
    }

    private void taken(int i, long l, double d, char c, boolean b) {
        byte small = (byte) i;
        float single = (float) d;
        int[] array = {i, i + 1};
        Supplier<String> all = () -> i + " " + l + " " + d + " " + c + " " + b + " " + small + " " + single + array[1];
        answers.add(all.get());
        Function<Integer, Function<Integer, Integer>> nested = x -> y -> x * y + i;
        answers.add(String.valueOf(nested.apply(2).apply(5)));
    }

    private void references() {
        Function<Integer, Inner> creates = Inner::new;
        Function<Inner, Integer> asks = Inner::size;
        answers.add(String.valueOf(asks.apply(creates.apply(11))));
        Supplier<Integer> bound = "four"::length;
        answers.add(String.valueOf(bound.get()));
        Function<Object, String> inherited = Object::toString;
        answers.add(inherited.apply(12));
        IntFunction<String[]> arrays = String[]::new;
        answers.add(String.valueOf(arrays.apply(3).length));
        Supplier<List<String>> lists = ArrayList::new;
        answers.add(lists.get().toString());
        BinaryOperator<String> joins = String::concat;
        answers.add(joins.apply("a", "b"));
        Consumer<String> drops = answers::add;
        drops.accept("what the method gives is dropped");
        Supplier<String> upper = super::toString;
        answers.add(String.valueOf(upper.get().isEmpty()));
        Function<List<String>, Stream<String>> ofInterface = List::stream;
        answers.add(ofInterface.apply(List.of("x", "y")).collect(Collectors.joining("-")));
        Named<String> named = text -> "<" + text + ">";
        answers.add(named.twice("n"));
    }

    private void adapted() {
        ToDoubleFunction<Integer> unboxedAndWidened = Integer::intValue;
        answers.add(String.valueOf(unboxedAndWidened.applyAsDouble(6)));
        ToDoubleFunction<Integer> taking = Lambdas::half;
        answers.add(String.valueOf(taking.applyAsDouble(7)));
        Function<Double, Object> boxed = Math::round;
        answers.add(String.valueOf(boxed.apply(2.6)));
        DoubleUnaryOperator same = Math::sqrt;
        answers.add(String.valueOf(same.applyAsDouble(16)));
        ToLongFunction<Character> letter = Lambdas::code;
        answers.add(String.valueOf(letter.applyAsLong('A')));
        Predicate<String> yes = String::isEmpty;
        answers.add(String.valueOf(yes.negate().test("")));
        BiFunction<Boolean, Short, String> little = (flag, number) -> flag + " " + number;
        answers.add(little.apply(true, (short) 9));
        Wide wide = (x, n, b, text) -> x + n + b + text.length();
        answers.add(String.valueOf(wide.of(0.5, 10L, (byte) 2, "abc")));
        Callable<Integer> called = () -> 5;
        try {
            answers.add(String.valueOf(called.call()));
        } catch (Exception none) {
            throw new IllegalStateException(none);
        }
    }

    /** Two kinds that another factory makes, which stay as they are. */
    private void left() {
        Supplier<String> written = (Supplier<String> & Serializable) () -> "can be written";
        answers.add(written.get());
        Runnable marked = (Runnable & Cloneable) () -> answers.add("has two interfaces");
        marked.run();
    }

    private record Parts(
            boolean b, byte small, char c, short s, int i, long l, float f, double d, String text, List<Inner> list) {
        Parts of(double other) {
            return new Parts(b, small, c, s, i, l, f, other, text, list);
        }
    }

    private record Nothing() {}

    private void records() {
        List<Inner> list = List.of(new Inner(2));
        Parts one = new Parts(true, (byte) 1, 'c', (short) 2, -3, 1L << 40, 0.1f, 0.2, "text", List.of());
        List<Parts> others = List.of(
                one.of(0.2),
                one.of(0.3),
                new Parts(false, (byte) 1, 'c', (short) 2, -3, 1L << 40, 0.1f, 0.2, "text", List.of()),
                new Parts(true, (byte) 2, 'c', (short) 2, -3, 1L << 40, 0.1f, 0.2, "text", List.of()),
                new Parts(true, (byte) 1, 'd', (short) 2, -3, 1L << 40, 0.1f, 0.2, "text", List.of()),
                new Parts(true, (byte) 1, 'c', (short) 3, -3, 1L << 40, 0.1f, 0.2, "text", List.of()),
                new Parts(true, (byte) 1, 'c', (short) 2, 3, 1L << 40, 0.1f, 0.2, "text", List.of()),
                new Parts(true, (byte) 1, 'c', (short) 2, -3, 1L << 41, 0.1f, 0.2, "text", List.of()),
                new Parts(true, (byte) 1, 'c', (short) 2, -3, 1L << 40, 0.2f, 0.2, "text", List.of()),
                new Parts(true, (byte) 1, 'c', (short) 2, -3, 1L << 40, 0.1f, 0.2, "other", List.of()),
                new Parts(true, (byte) 1, 'c', (short) 2, -3, 1L << 40, 0.1f, 0.2, "text", list));
        others.forEach(
                other -> answers.add(one.equals(other) + " " + (other.list().isEmpty() ? other.hashCode() : 0)));
        answers.add(one.of(0.0).equals(one.of(-0.0)) + " " + one.of(Double.NaN).equals(one.of(Double.NaN)));
        answers.add(one.equals(null) + " " + one.equals("text") + " " + one);
        answers.add(new Nothing().equals(new Nothing()) + " " + new Nothing().hashCode());
    }

    private static double half(double whole) {
        return whole / 2;
    }

    private static int code(int letter) {
        return letter;
    }
}
