package buildup.catalog.fire;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Kind;

/** What a list of clearances gives cause to say. */
final class FireNotices {
    static final Phrase SOME_WORDS = Phrase.of("in your own words");

    static final Phrase BANDS = Phrase.of("bands of distance from the opening");

    static final Kind NO_BAND = DocumentCodes.WRONG_SHAPE.refusal(
            "A band of '{piece}' cannot be read.",
            "Write where it begins and how far trim may project, as '{{ from: 6 in, share: 1/8 }' or '{{ past: 12 in,"
                    + " most: any }'.");

    static final Kind LESS_FARTHER_AWAY = DocumentCodes.NOT_A_SIZE.refusal(
            "Under '{key}:' '{piece}' allows less farther away than nearer.",
            "Write the bands from near to far, each allowing no less than the one before.");

    private FireNotices() {}
}
