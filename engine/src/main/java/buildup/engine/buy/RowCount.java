package buildup.engine.buy;

import buildup.engine.hold.nail.Fixed;

/**
 * One row of fastenings along the plan.
 *
 * @param sticks that it is driven into
 * @param count of its fasteners, all sticks together
 * @param shown of them whose heads are not covered: their holes are filled
 */
record RowCount(Fixed fixed, int sticks, int count, int shown) {}
