/**
 * All that is bought for a job besides its sticks: fasteners by the box, glue, adhesive, filler, primer and paint, and the
 * sticks that waste wants on top of a cutting plan. What is counted follows from the rows of fastenings, the plan and the
 * outlines; what goes into a pack and how far it goes is data of the catalog, which a document may replace. Lengths are
 * inches, areas square inches, volumes cubic inches, prices hundredths.
 */
@NullMarked
package buildup.engine.buy;

import org.jspecify.annotations.NullMarked;
