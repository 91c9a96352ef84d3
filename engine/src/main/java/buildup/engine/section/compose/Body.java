package buildup.engine.section.compose;

import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.PieceKind;
import buildup.profiles.outline.Outline;
import java.util.Optional;

/**
 * Something solid in the section: a piece, the solid wall, the floor or the ceiling.
 *
 * @param name the piece's name, or wall, floor, ceiling
 * @param placed empty for wall, floor and ceiling
 */
public record Body(String name, Outline outline, Optional<Placed> placed) {
    /** Whether it stood before the stack: wall, floor, ceiling, framing. */
    public boolean standing() {
        return placed.isEmpty() || framing();
    }

    /** Whether it is part of the stack: trim or nailer. */
    public boolean inStack() {
        return !standing();
    }

    /** Whether it is trim: planned to be seen. */
    public boolean trim() {
        return is(PieceKind.TRIM);
    }

    /** Whether it is a nailer: put there to be nailed to. */
    public boolean nailer() {
        return is(PieceKind.NAILER);
    }

    /** Whether it is framing: there before the trim. */
    public boolean framing() {
        return is(PieceKind.FRAMING);
    }

    /** Whether it is a piece, framing included, and not the room itself. */
    public boolean piece() {
        return placed.isPresent();
    }

    private boolean is(PieceKind kind) {
        return placed.isPresent() && placed.get().piece().kind() == kind;
    }
}
