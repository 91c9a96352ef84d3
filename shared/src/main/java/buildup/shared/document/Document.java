package buildup.shared.document;

import java.util.Iterator;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * A file that was read.
 *
 * @param file its name, as messages call it
 */
public record Document(String file, Mapping root) {

    /** Whether it says what another document does, wherever the words stand in the two files. */
    public boolean says(Document other) {
        return same(root, other.root);
    }

    private static boolean same(Node one, Node other) {
        if (one instanceof Mapping left && other instanceof Mapping right) {
            return alike(
                    left.entries(),
                    right.entries(),
                    (mine, its) -> mine.key().text().equals(its.key().text()) && same(mine.value(), its.value()));
        }
        if (one instanceof Sequence left && other instanceof Sequence right) {
            return alike(left.items(), right.items(), Document::same);
        }
        return one instanceof Scalar left
                && other instanceof Scalar right
                && left.text().equals(right.text());
    }

    private static <T> boolean alike(List<T> left, List<T> right, BiPredicate<T, T> same) {
        Iterator<T> rest = right.iterator();
        return left.size() == right.size() && left.stream().allMatch(item -> same.test(item, rest.next()));
    }
}
