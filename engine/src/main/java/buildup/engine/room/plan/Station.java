package buildup.engine.room.plan;

/**
 * A place along a stretch where something was measured.
 *
 * @param along from the stretch's left end, in
 * @param amount what was found there, in
 */
public record Station(double along, double amount) {}
