/**
 * Lengths and angles as values, and the one place where they are read from and printed to text.
 *
 * <p>A {@link buildup.shared.length.Length} holds inches as a double; one inch is exactly 25.4 millimeters. A {@link
 * buildup.shared.length.LengthReader} understands the ways in which a shop writes a size (3/4, 1-3/8, 5'-6 1/2", 38 mm)
 * and says what it read wherever a reader of the file could take it otherwise. A {@link
 * buildup.shared.length.LengthPrinter} writes sizes for a tape (nearest sixteenth, marked when the true size is more or
 * less) and for a grinder (decimals). Nothing here looks at the default locale.
 */
@NullMarked
package buildup.shared.length;

import org.jspecify.annotations.NullMarked;
