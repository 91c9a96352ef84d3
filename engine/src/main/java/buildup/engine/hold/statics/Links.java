package buildup.engine.hold.statics;

import java.util.Arrays;
import java.util.List;

/**
 * Which bodies exert forces on each other, each pair once, in the order in which their first forces came. A link is one end
 * of a pair: the two links of a pair are told apart by their last bit. All lies in plain arrays, for a model is linked anew
 * whenever a piece of it is held.
 */
final class Links {
    static final int NONE = -1;

    /** For each link the body that it starts from. */
    private int[] ends;

    /** For each link the next one of its body. */
    private int[] next;

    /** For each body its first and last link, and how many it has. */
    private final int[] first;

    private final int[] last;
    private final int[] degree;

    /** For each pair its first and last force; for each force the next one of its pair. */
    private int[] firstForce;

    private int[] lastForce;
    private final int[] nextForce;
    private int pairs;

    Links(int bodies, int forces) {
        // most bodies touch one or two more than came before them
        int room = 2 * bodies;
        this.ends = new int[2 * room];
        this.next = new int[2 * room];
        this.first = new int[bodies];
        this.last = new int[bodies];
        this.degree = new int[bodies];
        this.firstForce = new int[room];
        this.lastForce = new int[room];
        this.nextForce = new int[forces];
        Arrays.fill(first, NONE);
    }

    /** Adds a force, by its number, to a pair. */
    void add(int pair, int force) {
        nextForce[force] = NONE;
        if (firstForce[pair] == NONE) {
            firstForce[pair] = force;
        } else {
            nextForce[lastForce[pair]] = force;
        }
        lastForce[pair] = force;
    }

    /** The number of the pair of two bodies, which is linked where it is not yet. */
    int pair(int a, int b) {
        int fewer = degree[a] < degree[b] ? a : b;
        int wanted = fewer == a ? b : a;
        for (int link = first[fewer]; link != NONE; link = next[link]) {
            if (other(link) == wanted) {
                return link >> 1;
            }
        }
        if (pairs == firstForce.length) {
            ends = Arrays.copyOf(ends, 4 * pairs);
            next = Arrays.copyOf(next, 4 * pairs);
            firstForce = Arrays.copyOf(firstForce, 2 * pairs);
            lastForce = Arrays.copyOf(lastForce, 2 * pairs);
        }
        firstForce[pairs] = NONE;
        append(a, 2 * pairs);
        append(b, 2 * pairs + 1);
        return pairs++;
    }

    private void append(int body, int link) {
        ends[link] = body;
        next[link] = NONE;
        if (first[body] == NONE) {
            first[body] = link;
        } else {
            next[last[body]] = link;
        }
        last[body] = link;
        degree[body]++;
    }

    /** The first link of a body, {@link #NONE} for a body without any. */
    int first(int body) {
        return first[body];
    }

    /** The next link of the same body, {@link #NONE} behind the last. */
    int next(int link) {
        return next[link];
    }

    /** The body that a link leads to. */
    int other(int link) {
        return ends[link ^ 1];
    }

    /** Adds the forces of a link. */
    void into(int link, List<Force> all, List<Force> out) {
        for (int force = firstForce[link >> 1]; force != NONE; force = nextForce[force]) {
            out.add(all.get(force));
        }
    }
}
