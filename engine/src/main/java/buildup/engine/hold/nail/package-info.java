/**
 * A row of nails or screws as the document gives it, and what becomes known of it: what it goes through, where it bites, what
 * it may hold, whether it is seen and can be driven.
 */
@NullMarked
package buildup.engine.hold.nail;

import org.jspecify.annotations.NullMarked;
