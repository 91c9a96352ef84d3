/**
 * Does the saw's error matter? Each size strays by its spread; the pieces are placed anew for each of many builds, so that
 * what is ripped to fit takes the error up; and of every figure is told how far it strays and how often it fails.
 */
@NullMarked
package buildup.engine.hold.tolerance;

import org.jspecify.annotations.NullMarked;
