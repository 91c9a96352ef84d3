package buildup.engine.buy;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What buying gives cause to say. */
final class BuyNotices {
    private static final Code NOT_COUNTED =
            Code.of("supplies-not-counted", "Something to be bought cannot be counted from what the document says.");
    static final Kind NO_RUN = NOT_COUNTED.note(
            "Nothing is counted under 'supplies:': the stack holds no plan of walls.",
            "Add one, as 'plan: [{{ left: return, right: return, stretches: [{{ length: 96 }] }]'.");
    static final Kind NO_ROWS = NOT_COUNTED.note(
            "No nails are counted for {pieces}: no row of fastenings is given.", "Add their rows under 'fastenings:'.");
    static final Kind BLOCKS_NOT_NAILED = NOT_COUNTED.note(
            "The nails of {count} blocks are not counted.",
            "Say what blocks are nailed with, as 'blocks: 15 ga x 2-1/2' under 'supplies:'.");
    static final Kind ADHESIVE_FOR_WHAT = NOT_COUNTED.note(
            "No adhesive is counted: it is not said which pieces it goes behind.",
            "Name them, as 'adhesive: {{ pieces: [{piece}] }'.");
    static final Kind NO_ROW_USES = NOT_COUNTED.note("No row of fastenings uses '{fastener}'.", "Take it out.");

    private static final Code NO_BOX = Code.of("box-unknown", "It is not known in what boxes a fastener is sold.");
    static final Kind BOX_UNKNOWN = NO_BOX.note(
            "{count} of {fastener} are needed; in what boxes they are sold is not known.",
            "Say it, as 'fasteners: [{{ of: {fastener}, box: 1000 }]'.");

    private static final Code NO_PRICE = Code.of("supplies-without-price", "Something that is bought has no price.");
    static final Kind WITHOUT_PRICE = NO_PRICE.note(
            "No price is given for {goods}: the cost is without them.", "Write it beside the pack, {how}.");
    static final Phrase PRICED_BOX = Phrase.of("as 'box: {{ 1000: 12.50 }'");
    static final Phrase PRICED_PACK = Phrase.of("as 'packs: {{ {pack}: 12.50 }'");

    private static final Code NO_MORE =
            Code.of("waste-not-covered", "No stick can be bought for the waste that is asked.");
    static final Kind NOTHING_TO_BUY = NO_MORE.note(
            "'{stick}': {share} of waste wants {length} more, and none can be bought.",
            "Add 'buy:' with lengths to be had.");

    static final Kind UNKNOWN_GOOD = DocumentCodes.UNKNOWN_NAME.refusal("No {kind} is called '{name}'.", "");
    static final Kind UNKNOWN_PIECE = DocumentCodes.UNKNOWN_NAME.refusal("No piece is called '{word}'.", "");
    static final Kind UNKNOWN_WORK = DocumentCodes.UNKNOWN_NAME.refusal("No kind of work is called '{name}'.", "");
    static final Kind FASTENER_MISSING = DocumentCodes.MISSING_KEY.refusal(
            "This box does not say which fastener it holds.", "Add 'of:', as 15 ga x 2-1/2.");
    static final Kind FASTENER_TWICE =
            DocumentCodes.SAME_NAME_TWICE.refusal("'{fastener}' is there twice.", "Write all its boxes in one.");
    static final Kind NOT_A_PRICE =
            DocumentCodes.NOT_A_PRICE.refusal("'{text}' is not a price.", "Write a plain number, as 3.20.");
    static final Kind TOO_MANY_SIZES = DocumentCodes.NOT_A_NUMBER.refusal(
            "{count} pack sizes are listed; at most {most} are used.", "Keep those that you buy.");
    static final Kind NOT_ON_HAND =
            DocumentCodes.NOT_A_NUMBER.refusal("'{text}' is not how much lies in the shop.", "Write {example}.");
    static final Phrase A_COUNT = Phrase.of("a whole number, as 250");
    static final Phrase A_VOLUME = Phrase.of("it with its unit, as 1 qt or 500 mL");
    static final Kind TOO_MUCH_SPARE =
            DocumentCodes.NOT_A_SHARE.refusal("An overage of {text} is too much.", "Write up to {most}.");

    private BuyNotices() {}
}
