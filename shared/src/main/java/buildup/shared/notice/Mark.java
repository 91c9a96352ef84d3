package buildup.shared.notice;

/** A place in a file; line and column count characters from 1. */
public record Mark(String file, int line, int column) {

    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
