/**
 * What holds a section: what stands behind a piece, whether a nail bites, what carries and what leans.
 */
@NullMarked
package buildup.engine.hold;

import org.jspecify.annotations.NullMarked;
