package buildup.engine.judge.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The candidates worth keeping, by three orders, so that memory does not grow with how many are judged. Not safe for many
 * threads: each fills its own, and they are joined.
 */
final class Shortlist {
    /** So many are kept by each order: the first of them may yet bring a fault that no rule speaks of. */
    static final int KEPT = 400;

    private final TreeSet<Candidate> byScore = new TreeSet<>(Candidate.BY_SCORE);
    private final TreeSet<Candidate> byChange = new TreeSet<>(Candidate.BY_CHANGE);
    /** Of those that give up fewest rules, by the rules that they give up, the one that misses these by least. */
    private final Map<List<Integer>, Candidate> byUnmet = new HashMap<>();

    private final TreeSet<Candidate> unbuilt = new TreeSet<>(Candidate.BY_CHANGE);
    private long judged;
    private long built;
    private long meeting;

    /** One more was judged. */
    void add(Candidate candidate) {
        judged++;
        if (!candidate.judged().built()) {
            keep(unbuilt, candidate, 1);
            return;
        }
        built++;
        if (candidate.unmet() == 0) {
            meeting++;
            keep(byScore, candidate, KEPT);
            keep(byChange, candidate, KEPT);
        }
        near(candidate);
    }

    private void near(Candidate candidate) {
        int fewest =
                byUnmet.values().stream().mapToInt(Candidate::unmet).findAny().orElse(Integer.MAX_VALUE);
        if (candidate.unmet() > fewest) {
            return;
        }
        if (candidate.unmet() < fewest) {
            byUnmet.clear();
        }
        byUnmet.merge(
                candidate.given(),
                candidate,
                (one, other) -> Candidate.BY_UNMET.compare(one, other) <= 0 ? one : other);
        if (byUnmet.size() > KEPT) {
            byUnmet.values().remove(Collections.max(byUnmet.values(), Candidate.BY_SCORE));
        }
    }

    private static void keep(NavigableSet<Candidate> kept, Candidate candidate, int most) {
        kept.add(candidate);
        if (kept.size() > most) {
            kept.pollLast();
        }
    }

    /** One more was judged, as far as it took to know that it does not meet every rule. */
    void drop() {
        judged++;
        built++;
    }

    /** One that may give up fewest rules; it is not counted. */
    void consider(Candidate candidate) {
        if (candidate.judged().built()) {
            near(candidate);
        }
    }

    /** With what another holds. */
    Shortlist with(Shortlist other) {
        judged += other.judged;
        built += other.built;
        meeting += other.meeting;
        other.byScore.forEach(one -> keep(byScore, one, KEPT));
        other.byChange.forEach(one -> keep(byChange, one, KEPT));
        other.byUnmet.values().forEach(this::near);
        other.unbuilt.forEach(one -> keep(unbuilt, one, 1));
        return this;
    }

    /**
     * The last that is kept of those that meet every rule, if no more are kept than that: nothing behind it is.
     *
     * @param byChange whether it is the last by the least change; else by what is wished
     */
    Optional<Candidate> lastKept(boolean byChange) {
        TreeSet<Candidate> kept = byChange ? this.byChange : byScore;
        return kept.size() < KEPT ? Optional.empty() : Optional.of(kept.last());
    }

    /** How many were judged. */
    long judged() {
        return judged;
    }

    /** Of how many there is a stack. */
    long built() {
        return built;
    }

    /** Of those that could not be put together the one that differs least from today's. */
    Optional<Candidate> unbuilt() {
        return unbuilt.stream().findFirst();
    }

    /** How many meet every rule. */
    long meeting() {
        return meeting;
    }

    /** Those that meet every rule, in that order. */
    List<Candidate> meeting(Comparator<Candidate> order) {
        return new ArrayList<>(order == Candidate.BY_CHANGE ? byChange : byScore);
    }

    /**
     * Those that give up fewest rules, for each choice of rules the one that misses them by least: the nearest to what is
     * wished first, or else the least change.
     */
    List<Candidate> nearest() {
        return byUnmet.values().stream().sorted(Candidate.BY_SCORE).toList();
    }
}
