package buildup.shared.notice;

/** How grave a notice is, mildest first. */
public enum Level {
    /** Worth saying; the answer stands. */
    NOTE(0),
    /** Something is wrong with what was drawn; the answer stands. */
    PROBLEM(1),
    /** A figure would be false, so none is given. */
    REFUSAL(2);

    private final int exitCode;

    Level(int exitCode) {
        this.exitCode = exitCode;
    }

    /** The exit code of a run in which nothing graver was said: 0, 1, 2. */
    public int exitCode() {
        return exitCode;
    }
}
