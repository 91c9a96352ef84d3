/** What is bought besides wood: glue, adhesive, filler, primer and paint in their packs; the waste of each kind of work. */
@NullMarked
package buildup.catalog.supply;

import org.jspecify.annotations.NullMarked;
