package buildup.engine.mill.quote;

import java.util.List;

/**
 * What an item has from boards that are ripped for other items, and what they have from its own.
 *
 * @param strips feet of strip that come from other items' boards
 * @param taken board feet of those boards that go with them, kerfs and what is not sound included
 * @param given board feet of its own boards that go with strips of other items
 * @param used board feet of its drops that are kept no longer, because strips of other items are in them
 * @param from items whose boards it has strips from
 * @param to items that have strips from its boards
 */
record Shared(double strips, double taken, double given, double used, List<String> from, List<String> to) {
    /** Of an item by itself. */
    static final Shared NONE = new Shared(0, 0, 0, 0, List.of(), List.of());

    /** Copies the lists. */
    Shared {
        from = List.copyOf(from);
        to = List.copyOf(to);
    }
}
