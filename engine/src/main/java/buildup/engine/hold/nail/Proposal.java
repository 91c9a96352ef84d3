package buildup.engine.hold.nail;

import buildup.shared.figure.Phrase;

/**
 * Where a piece could be fixed.
 *
 * @param fixed the nail, checked as one of the file; 16 in apart along the run
 * @param reason why there
 */
public record Proposal(Fixed fixed, Phrase reason) {}
