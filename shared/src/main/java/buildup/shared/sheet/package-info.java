/**
 * Sheets: the answer to one question as typed rows. A question fills its sheet once; text, HTML, CSV, JSON, its schema
 * and the comparison of two answers are written from the same columns, so a new figure is added in one place.
 *
 * <pre>
 * Sheet.of("reveals", "REVEALS: how far the first shows past the second", section.reveals())
 *         .name("piece", "piece", reveal -> section.name(reveal.piece()))
 *         .name("over", "over", reveal -> section.name(reveal.over()))
 *         .length("amount", "reveal", Reveal::amount)
 *         .words("along", "along", reveal -> reveal.along().word())
 *         .sheet();
 * </pre>
 */
@NullMarked
package buildup.shared.sheet;

import org.jspecify.annotations.NullMarked;
