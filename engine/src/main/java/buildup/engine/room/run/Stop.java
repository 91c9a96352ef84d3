package buildup.engine.room.run;

import buildup.shared.figure.Phrase;

/**
 * What the end of a stick comes up against where it is no half of a miter.
 *
 * @param words for it, empty when it is nothing
 * @param wall whether it is a wall, which may not be true
 * @param hidden whether the stick on the other wall hides a part of the end: at a coped or butted inside corner
 * @param clear whether the stick only stays clear of it and does not touch
 */
record Stop(Phrase words, boolean wall, boolean hidden, boolean clear) {
    static final Stop NOTHING = touching("");
    static final Stop WALL = new Stop(Phrase.of("the wall"), true, false, false);
    static final Stop WALL_BEHIND_A_COPE = new Stop(Phrase.of("the wall, behind the coped stick"), true, true, false);
    static final Stop FACE_BEFORE_IT = new Stop(Phrase.of("the face of the stick before it"), false, true, false);
    static final Stop FACE_BEHIND_IT = new Stop(Phrase.of("the face of the stick after it"), false, true, false);
    static final Stop CASING = touching("the casing");
    static final Stop BLOCK = touching("the block");
    static final Stop PLANTED = touching("the piece, planted");

    private static final Phrase PIECE = Phrase.of("the {piece} of '{stretch}'");
    private static final Phrase PIECE_BEHIND_A_COPE = Phrase.of("the {piece} of '{stretch}', behind the coped stick");

    private static final Phrase FACE = Phrase.of("the face of the {piece}");

    private static Stop touching(String words) {
        return new Stop(Phrase.of(words), false, false, false);
    }

    /** A piece of the same wall that runs on. */
    static Stop face(String piece) {
        return new Stop(FACE.with("piece", piece), false, false, false);
    }

    /** A piece that stands on the other wall already. */
    static Stop piece(String piece, String stretch) {
        return new Stop(PIECE.with("piece", piece).with("stretch", stretch), false, false, false);
    }

    /** The same where the stick that is put up next on that wall is coped over this one. */
    static Stop pieceBehindACope(String piece, String stretch) {
        return new Stop(PIECE_BEHIND_A_COPE.with("piece", piece).with("stretch", stretch), false, true, false);
    }

    /** A piece on the other wall that is to find room. */
    static Stop clearOf(String piece, String stretch) {
        return new Stop(PIECE.with("piece", piece).with("stretch", stretch), false, false, true);
    }
}
