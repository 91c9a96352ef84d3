/**
 * The room as it is: what a ceiling that sags, a floor that dips and a wall with humps and hollows leave between
 * themselves and a stack that runs straight along them, and where to take it. Asked once
 * ({@link buildup.engine.room.surface.Surfaced}), of what the plan's stretches say was measured. Gaps are inches, open
 * when positive and a clash when negative; places are inches along a stretch from its left end.
 */
@NullMarked
package buildup.engine.room.surface;

import org.jspecify.annotations.NullMarked;
