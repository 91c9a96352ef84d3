package buildup.engine.room.run;

/**
 * How far a wall out of plumb stands from its plane behind a course, in, positive into the room: set to the wall the
 * course moves by so much, set plumb it leaves the gap or has to be scribed.
 *
 * @param body number of the course's piece in the section
 */
public record Lean(String run, String stretch, int body, double atBottom, double atTop) {}
