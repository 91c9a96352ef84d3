/**
 * Will it be right? One row a question that applies, in the order in which a mistake hurts: an answer, the one figure that
 * decides, why, and for a "no" one cure. Every problem that was said makes the row of its question "no", so that the
 * verdict and the notices never disagree.
 */
@NullMarked
package buildup.engine.judge.verdict;

import org.jspecify.annotations.NullMarked;
