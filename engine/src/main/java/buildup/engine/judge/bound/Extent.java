package buildup.engine.judge.bound;

/**
 * From where to where a piece reaches along one axis, or a straight edge of it.
 *
 * @param low the lesser coordinate, in
 * @param high the greater one, in
 */
record Extent(SizeSum low, SizeSum high) {}
