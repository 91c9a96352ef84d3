package buildup.cli.fuzz;

import java.util.Map;

/**
 * What came of one question.
 *
 * @param files that lie in the folder afterwards
 * @param nanos of the processor
 * @param allocated bytes
 */
record Outcome(int code, byte[] out, String err, Map<String, byte[]> files, long nanos, long allocated) {
    /** How much was said and written. */
    long size() {
        return out.length
                + err.length()
                + files.values().stream().mapToLong(bytes -> bytes.length).sum();
    }
}
