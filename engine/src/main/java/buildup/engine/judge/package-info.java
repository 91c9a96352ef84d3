/**
 * What the answers add up to: what the stack must meet, and the verdict.
 */
@NullMarked
package buildup.engine.judge;

import org.jspecify.annotations.NullMarked;
