package buildup.engine.judge.verdict;

import buildup.shared.figure.Phrase;

/** The sentences of the verdict. */
final class VerdictWords {
    static final Phrase SAID = Phrase.of("{what}");

    static final Phrase SAID_AND_MORE = Phrase.of("{what} And {more} more");

    static final Phrase SAID_AND_OTHERS = Phrase.of("{what} Also {others}");

    static final Phrase FIXED_TO = Phrase.of("{pieces} nailed to {other}");

    static final Phrase NO_LIMIT = Phrase.of("no ceiling or projection is given that it could touch");

    static final Phrase CEILING_LEFT = Phrase.of("{left} left under the ceiling");

    static final Phrase PROJECTION_LEFT = Phrase.of("{left} left of the projection of {allowed}");

    static final Phrase BOTH_LEFT = Phrase.of("{one}; {other}");

    static final Phrase WOOD = Phrase.of("nothing overlaps, {void}; {boards} to buy");

    static final Phrase WOOD_ALONE = Phrase.of("nothing overlaps, {void}");

    static final Phrase NO_VOID = Phrase.of("no void");

    static final Phrase VOIDS = Phrase.of("{count} closed void of {area} at the most");

    static final Phrase HIDDEN = Phrase.of("no raw wood and no open joint is seen");

    static final Phrase RAW = Phrase.of("{piece}: {seen} of raw wood seen from {eye}");

    static final Phrase LIT = Phrase.of("{light}: no shadow falls");

    static final Phrase SHADED = Phrase.of("{light}: {dark} of {piece}'s {length} dark");

    static final Phrase ALL_DARK = Phrase.of("{light}: all of {piece} dark");

    static final Phrase REVEAL = Phrase.of("{piece} {amount}");

    static final Phrase REVEALS = Phrase.of("{all}");

    static final Phrase MUST_MET = Phrase.of("{met} of {all} met; nearest to failing: '{rule}', {spare} to spare");

    static final Phrase STANDS = Phrase.of("every piece is carried");

    static final Phrase HELD = Phrase.of("every fastening bites; least bite {bite}, wanted {wanted}");

    static final Phrase HELD_UNASKED = Phrase.of("there is something to nail every piece into");

    private VerdictWords() {}
}
