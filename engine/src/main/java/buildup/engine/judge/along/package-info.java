/**
 * Each free size alone, all others as they are today: how a figure runs along it, where a rule turns, and which sizes a rule
 * hangs on.
 */
@NullMarked
package buildup.engine.judge.along;

import org.jspecify.annotations.NullMarked;
