package buildup.engine.room.run;

/**
 * What a wall out of plumb does to a reveal when each course is set to the wall: one that runs out level grows by the
 * lean between the two pieces' middles; an upright one stays. A corner out of square changes lengths and no reveal.
 *
 * @param piece, over bodies of the section
 * @param amount of the reveal as drawn, in
 * @param change in, positive when it grows
 */
public record RevealShift(String run, String stretch, int piece, int over, double amount, double change) {}
