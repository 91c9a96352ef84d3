/** Families of profiles, each drawn at the sizes that are asked for. */
@NullMarked
package buildup.catalog.family;

import org.jspecify.annotations.NullMarked;
