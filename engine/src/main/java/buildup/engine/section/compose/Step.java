package buildup.engine.section.compose;

/** The box of the stack after a piece has been put up: its height, greatest projection and top, framing left out; in. */
public record Step(int body, double height, double projection, double top) {}
