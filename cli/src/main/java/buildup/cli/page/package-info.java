/**
 * The report as one file that a browser opens from disk: no network, no framework.
 *
 * <p>{@link buildup.cli.page.PageParts} is one stack on the page: what is seen, and the data from which the page's own
 * script works out light and steps. {@link buildup.cli.page.Page} is the document round one such part, or round
 * several beside each other: style, script, the rule that nothing else may load, and above the stacks a place for what
 * changed and a mark for a picture that is out of date. An open page takes new parts without being loaded again: it
 * listens for the event {@code buildup:parts}, see {@link buildup.cli.page.Page#EXCHANGE}.
 *
 * <p>What does not depend on the light is drawn here; bands, front view and steps are drawn by the script, so that they
 * follow a light that nobody knew of when the page was written. Sizes stand in the page in inches and in millimeters,
 * and the style shows one of the two.
 */
@NullMarked
package buildup.cli.page;

import org.jspecify.annotations.NullMarked;
