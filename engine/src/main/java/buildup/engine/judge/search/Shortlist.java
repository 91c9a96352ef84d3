package buildup.engine.judge.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
    private final TreeSet<Candidate> byUnmet = new TreeSet<>(Candidate.BY_UNMET);
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
        keep(byUnmet, candidate, 1);
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
            keep(byUnmet, candidate, 1);
        }
    }

    /** With what another holds. */
    Shortlist with(Shortlist other) {
        judged += other.judged;
        built += other.built;
        meeting += other.meeting;
        other.byScore.forEach(one -> keep(byScore, one, KEPT));
        other.byChange.forEach(one -> keep(byChange, one, KEPT));
        other.byUnmet.forEach(one -> keep(byUnmet, one, 1));
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

    /** The one that gives up fewest rules. */
    List<Candidate> nearest() {
        return new ArrayList<>(byUnmet);
    }
}
