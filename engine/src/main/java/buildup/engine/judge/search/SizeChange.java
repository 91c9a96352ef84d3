package buildup.engine.judge.search;

/**
 * One size that differs from today's.
 *
 * @param key the place of the size in the document
 * @param from what is typed there today
 * @param to what is to be typed
 */
public record SizeChange(String key, String from, String to) {}
