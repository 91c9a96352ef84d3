package buildup.engine.hold.fixing;

/**
 * Where a piece could be fixed.
 *
 * @param fixed the nail, checked as one of the file; 16 in apart along the run
 * @param reason why there, in words
 */
public record Proposal(Fixed fixed, String reason) {}
