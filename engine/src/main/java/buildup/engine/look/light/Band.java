package buildup.engine.look.light;

import buildup.profiles.outline.Segment;

/** A stretch of one member, by its number on the walk, that is lit in one way throughout. */
public record Band(int member, Lit lit, Segment segment) {
    /** How light meets a surface. */
    public enum Lit {
        /** The ray arrives. */
        LIT,
        /** Turned away from the light. */
        SHADE,
        /** Turned to the light, with wood in between. */
        CAST;

        /** The word for it in reports and pictures. */
        public String word() {
            return switch (this) {
                case LIT -> "lit";
                case SHADE -> "shade";
                case CAST -> "cast";
            };
        }
    }
}
