package buildup.engine.hold.order;

import buildup.engine.hold.nail.Fixed;
import java.util.OptionalInt;

/**
 * When a row of fastenings is driven.
 *
 * @param step counted from 0 in the steps of the order
 * @param bench whether it joins a bench unit, before that goes up
 * @param before the body that, once up, keeps the tool from it; absent when nothing does
 * @param hiddenBy the body of its own unit that keeps the tool from it when the unit is up; absent when nothing does
 */
public record Driving(Fixed fixed, int step, boolean bench, OptionalInt before, OptionalInt hiddenBy) {}
