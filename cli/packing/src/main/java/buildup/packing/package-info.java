/** What is done to the one jar as it is packed, so that a run starts sooner. It is no part of the program. */
@NullMarked
package buildup.packing;

import org.jspecify.annotations.NullMarked;
