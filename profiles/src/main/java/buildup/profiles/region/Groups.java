package buildup.profiles.region;

import java.util.ArrayList;
import java.util.List;

/** Numbers 0 to n - 1 that are joined into groups two by two. */
public final class Groups {
    private final int[] next;

    /** @param count every number is a group of its own at first */
    public Groups(int count) {
        next = new int[count];
        for (int i = 0; i < count; i++) {
            next[i] = i;
        }
    }

    /** Makes one group of the groups of two numbers. */
    public void join(int a, int b) {
        int first = leader(a);
        int second = leader(b);
        next[Math.max(first, second)] = Math.min(first, second);
    }

    /** Whether the two are of one group. */
    public boolean together(int a, int b) {
        return leader(a) == leader(b);
    }

    /** The members of each group in order; the groups by their least members. */
    public List<List<Integer>> all() {
        List<List<Integer>> groups = new ArrayList<>();
        int[] at = new int[next.length];
        for (int i = 0; i < next.length; i++) {
            // the leader is the least, so its group is there before any other of its members comes
            int leader = leader(i);
            if (leader == i) {
                at[i] = groups.size();
                groups.add(new ArrayList<>());
            }
            groups.get(at[leader]).add(i);
        }
        return List.copyOf(groups);
    }

    /** The least member; the way to it is shortened for the next who asks. */
    private int leader(int of) {
        int leader = of;
        while (next[leader] != leader) {
            next[leader] = next[next[leader]];
            leader = next[leader];
        }
        return leader;
    }
}
