package buildup.catalog.supply;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Kind;

/** What the lists of supplies, and documents that name some, have said of them. */
public final class SupplyNotices {
    public static final Kind UNKNOWN_KIND = DocumentCodes.UNKNOWN_NAME.refusal("'{name}' is not a kind of supply.", "");
    public static final Kind NO_VOLUME = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not the size of a pack.", "Write it with its unit, as 1 qt, 10 oz or 750 mL.");
    public static final Kind NO_COVERAGE =
            DocumentCodes.NOT_A_NUMBER.refusal("'{text}' is not a coverage.", "Write it as 400 ft2/gal or 10 m2/L.");
    public static final Kind NO_COATS = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not a number of coats.", "Write a whole number from 1 to {most}.");
    public static final Kind NO_BOX = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not how many lie in a box.", "Write a whole number from 1 to {most}, as 1000.");
    public static final Kind NO_BEAD = DocumentCodes.NOT_A_SIZE.refusal(
            "A bead cannot be {size} thick.", "Write its diameter, up to {most}, as 1/4.");

    static final Phrase SOME_PACKS = Phrase.of("the packs in which it is sold, as [1 qt, 1 gal]");
    static final Phrase SOME_COVERAGE = Phrase.of("as 400 ft2/gal or 10 m2/L");
    static final Phrase SOME_WASTE = Phrase.of("a share, as 15 %");

    private SupplyNotices() {}
}
