/**
 * The statics of a section of rigid pieces: the forces that contacts, ties and friction can give, whether they balance the
 * weights and loads, and how pieces move where they do not.
 */
@NullMarked
package buildup.engine.hold.statics;

import org.jspecify.annotations.NullMarked;
