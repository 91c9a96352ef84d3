package buildup.cli.scene;

import buildup.profiles.outline.Box;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Things on a picture by the square of a grid in which they lie, so that asking what is near a place does not ask
 * everything on the picture.
 *
 * @param <T> what lies there
 */
public final class Nearby<T> {
    private final double cell;
    private final List<T> items = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();
    private final Map<Long, List<Integer>> cells = new HashMap<>();

    /**
     * Nothing yet.
     *
     * @param cell side of a square of the grid, in; about the size of what is asked
     */
    public Nearby(double cell) {
        this.cell = cell;
    }

    /** Adds something that lies in a box. */
    public void add(Box box, T item) {
        int number = items.size();
        items.add(item);
        boxes.add(box);
        for (long column = square(box.back()); column <= square(box.face()); column++) {
            for (long row = square(box.bottom()); row <= square(box.top()); row++) {
                cells.computeIfAbsent(key(column, row), unused -> new ArrayList<>())
                        .add(number);
            }
        }
    }

    private long square(double at) {
        return (long) Math.floor(at / cell);
    }

    private static long key(long column, long row) {
        return (column << Integer.SIZE) ^ (row & 0xFFFF_FFFFL);
    }

    /** Everything, in the order in which it was added. */
    public List<T> all() {
        return List.copyOf(items);
    }

    /** Whether anything whose box meets that one answers a question; the same thing may be asked more than once. */
    public boolean any(Box near, Predicate<T> question) {
        long lastColumn = square(near.face());
        long lastRow = square(near.top());
        for (long column = square(near.back()); column <= lastColumn; column++) {
            for (long row = square(near.bottom()); row <= lastRow; row++) {
                for (int number : cells.getOrDefault(key(column, row), List.of())) {
                    if (boxes.get(number).near(near, 0) && question.test(items.get(number))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** What lies in boxes that meet that one, each once, in the order in which it was added. */
    public List<T> near(Box near) {
        BitSet met = new BitSet();
        for (long column = square(near.back()); column <= square(near.face()); column++) {
            for (long row = square(near.bottom()); row <= square(near.top()); row++) {
                cells.getOrDefault(key(column, row), List.of()).forEach(met::set);
            }
        }
        return met.stream()
                .filter(number -> boxes.get(number).near(near, 0))
                .mapToObj(items::get)
                .toList();
    }
}
