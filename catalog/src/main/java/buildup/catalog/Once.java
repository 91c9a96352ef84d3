package buildup.catalog;

import java.util.Optional;
import java.util.function.Supplier;

/** A value that is made when it is first asked for and kept. Several threads may ask. */
final class Once<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private volatile Optional<T> made = Optional.empty();

    private Once(Supplier<T> maker) {
        this.maker = maker;
    }

    static <T> Supplier<T> of(Supplier<T> maker) {
        return new Once<>(maker);
    }

    @Override
    public T get() {
        if (made.isEmpty()) {
            synchronized (this) {
                if (made.isEmpty()) {
                    made = Optional.of(maker.get());
                }
            }
        }
        return made.orElseThrow();
    }
}
