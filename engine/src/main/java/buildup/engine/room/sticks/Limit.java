package buildup.engine.room.sticks;

import buildup.engine.solve.StickSearch;

/**
 * How long each lot is searched.
 *
 * @param steps the same number gives the same answer every time
 * @param watch may end a search earlier
 */
public record Limit(long steps, StickSearch.SearchWatch watch) {
    /** A few seconds. */
    public static Limit usual() {
        return new Limit(StickSearch.USUAL_STEPS, (steps, most) -> true);
    }
}
