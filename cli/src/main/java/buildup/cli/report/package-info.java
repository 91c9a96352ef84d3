/**
 * Answers as reports. {@link buildup.cli.report.TextReport} says of one stack what a carpenter needs first, first;
 * {@link buildup.cli.report.JsonReport} says all of it to other programs, as {@link
 * buildup.cli.report.ReportSchema} describes. The cuts, a profile, a quote and a tracing become a {@link
 * buildup.cli.tell.Telling}, which is written in every format. Nothing is computed here that the engine does not say.
 */
@NullMarked
package buildup.cli.report;

import org.jspecify.annotations.NullMarked;
