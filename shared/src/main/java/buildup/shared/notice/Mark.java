package buildup.shared.notice;

/**
 * A place in a file; line and column count characters from 1.
 *
 * @param file as messages call it; for what an option of the command line has given, the option
 * @param line {@link #NO_LINE} where it has none
 */
public record Mark(String file, int line, int column) {
    /** The line and the column of what stands in no file. */
    public static final int NO_LINE = 0;

    /** Whether it stands in a file. */
    public boolean hasLine() {
        return line != NO_LINE;
    }

    @Override
    public String toString() {
        return hasLine() ? file + ":" + line + ":" + column : file;
    }
}
