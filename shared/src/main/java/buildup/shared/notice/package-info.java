/**
 * What a run has to say about its input: notes, problems and refusals, each with its place, piece, amount and one cure.
 *
 * <p>Bad input never raises an exception. Whoever meets it adds a {@link buildup.shared.notice.Notice} to the run's
 * {@link buildup.shared.notice.Notices} and goes on, so that one run reports everything; the worst level decides the
 * exit code.
 */
@NullMarked
package buildup.shared.notice;

import org.jspecify.annotations.NullMarked;
