/** Words: finding the known name that a mistyped one was probably meant to be. Depends on nothing else. */
@NullMarked
package buildup.shared.text;

import org.jspecify.annotations.NullMarked;
