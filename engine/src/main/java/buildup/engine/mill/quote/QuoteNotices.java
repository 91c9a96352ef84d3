package buildup.engine.mill.quote;

import buildup.catalog.entry.CatalogNotices;
import buildup.profiles.outline.OutlineCodes;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What reading an order and pricing it give cause to say. */
final class QuoteNotices {
    private static final Code MISSING_RATE = Code.of("missing-rate", "The rates have no price for what is ordered.");
    static final Kind NO_RATES = DocumentCodes.MISSING_KEY.refusal(
            "The order names no rates.", "Add 'rates:' with a list of your own, or 'rates: example' to try it out.");
    static final Kind NO_PRICE_FOR_WOOD = MISSING_RATE.refusal(
            "The rates '{rates}' have no price for {wood}.", "Add it under their 'wood:', or take one of {priced}.");

    private static final Code EMPTY_ORDER = Code.of("empty-order", "An order holds no items.");
    static final Kind NO_ITEMS = EMPTY_ORDER.refusal(
            "The order holds no items.", "Add one, as 'items: [{{ profile: cove 3/4, wood: red-oak, feet: 200 }]'.");
    static final Kind A_STACK =
            EMPTY_ORDER.refusal("There are no items here, but pieces, as in a stack.", "Ask 'report' how they stand.");
    private static final Code TOO_MANY_ITEMS =
            Code.of("too-many-items", "An order holds more items than are quoted at once.");
    static final Kind MANY_ITEMS = TOO_MANY_ITEMS.refusal(
            "The order holds {items} items; at most {most} are quoted at once.", "Write it as several orders.");
    private static final Code TOO_MANY_QUANTITIES =
            Code.of("too-many-breaks", "An order asks for more other quantities than are priced.");
    static final Kind MANY_QUANTITIES = TOO_MANY_QUANTITIES.refusal(
            "The order asks for {quantities} other quantities; at most {most} are priced.", "Ask for fewer.");
    static final Kind ITEM_TWICE =
            DocumentCodes.SAME_NAME_TWICE.refusal("'{item}' is there twice.", "Call one {item}-2, with 'name:'.");

    static final Kind UNKNOWN_UNIT =
            DocumentCodes.UNKNOWN_NAME.refusal("No unit is called '{word}'.", "Write in, mm, cm or ft.");
    static final Kind UNKNOWN_WORK = DocumentCodes.UNKNOWN_NAME.refusal("No kind of work is called '{word}'.", "");
    static final Kind UNKNOWN_FINISH =
            DocumentCodes.UNKNOWN_NAME.refusal("No finish of the rates '{rates}' is called '{word}'.", "");
    static final Kind UNKNOWN_KNIFE =
            DocumentCodes.UNKNOWN_NAME.refusal("No state of a knife is called '{word}'.", "Write new or on-hand.");
    static final Kind NOT_FEET = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{word}' is not how much to run.",
            "Write a number of feet or meters up to 999,999, a foot at least: 'feet: 260', 'meters: 80'.");
    static final Kind FEET_OR_METERS = DocumentCodes.NOT_A_NUMBER.refusal(
            "{word} ft or m? The order counts in metric units.", "Write {word} ft, or {word} m.");
    private static final Code WANTED_TWICE =
            Code.of("wanted-twice", "An item of an order says in two ways how much of it is wanted.");
    static final Kind FEET_AND_METERS =
            WANTED_TWICE.refusal("'{piece}' has both feet and meters.", "Leave one of them out.");

    static final Kind NO_WOOD =
            DocumentCodes.MISSING_KEY.refusal("'{piece}' has no wood.", "Add 'wood:', as 'wood: red-oak'.");
    static final Kind NO_FEET = DocumentCodes.MISSING_KEY.refusal(
            "'{piece}' does not say how many feet are wanted.", "Add 'feet:', how many are wanted, or 'meters:'.");
    static final Kind TWO_OUTLINES =
            OutlineCodes.NO_OUTLINE.refusal("'{piece}' has both a profile and a section.", Words.GIVE_AN_OUTLINE);
    static final Kind NEITHER_OUTLINE =
            OutlineCodes.NO_OUTLINE.refusal("'{piece}' has neither profile nor section.", Words.GIVE_AN_OUTLINE);
    static final Kind LARGE_SECTION =
            CatalogNotices.MM_READ_AS_INCHES.problem("The section is {size} over all: more than any molding.", "");
    static final Phrase WRITE_MM = Phrase.of("Write mm behind it if millimeters are meant.");
    static final Phrase LOOK_AT_ITS_SIZES = Phrase.of("Look at its sizes again, and at their unit.");

    static final Kind NOTHING_LONG =
            DocumentCodes.NOT_A_SIZE.refusal("'{piece}' is wanted {word} long.", "Give lengths above 0.");
    private static final Code LONGER_THAN_STOCK =
            Code.of("longer-than-stock", "A length is wanted that is longer than the boards of the mill.");
    static final Kind TOO_LONG = LONGER_THAN_STOCK.problem(
            "'{piece}' is wanted {word} long; the boards of the mill '{mill}' end at {longest}.",
            "Take it in two with a scarf, or ask for shorter ones.");

    private static final Code NO_BLANK =
            Code.of("no-blank", "The boards of the mill are too narrow to give strips for a molding.");
    static final Kind NO_STRIP = NO_BLANK.refusal(
            "The boards of the mill '{mill}', up to {board} wide, give no strip for '{piece}'.",
            "List wider boards under 'mills:' in a catalog file, or give the item its own 'board:'.");
    static final Kind NO_PRICE_FOR_GLUE = MISSING_RATE.refusal(
            "The rates '{rates}' have no price for gluing, and '{piece}' is glued up.",
            "Add 'glue:' to them, the price of a square foot of joint.");
    static final Kind GLUED_UP = CatalogNotices.GLUE_UP.note("'{piece}' is glued up: {ways}.", "");
    static final Phrase IN_LAYERS = Phrase.of("no quarter yields {thickness}: {layers} layers of {quarter}");
    static final Phrase EDGE_TO_EDGE =
            Phrase.of("too few boards are as wide as the blank, {blank}: {plies} strips edge to edge");
    static final Phrase BOTH = Phrase.of("{layers}; {strips}");

    private static final Code NO_HALVES =
            Code.of("not-in-two", "A molding is to be run as two pieces along a cut that does not leave two.");
    static final Kind NO_CUT = NO_HALVES.refusal(
            "'{piece}' is to be run as two pieces along '{word}', which is not a cut.", Words.WRITE_A_CUT);
    static final Kind NOT_TWO = NO_HALVES.refusal(
            "A cut along '{word}' does not leave two pieces of '{piece}' that can be clamped.", Words.WRITE_A_CUT);
    static final Phrase PART_ELSEWHERE = Phrase.of("Part the molding elsewhere, or draw it less deep.");
    static final Phrase OR_IN_TWO = Phrase.of("{cure} As two pieces glued it is priced: 'in-two: {way} {at}'.");

    private static final class Words {
        private static final String WRITE_A_CUT =
                "Write how high it lies or how far out it stands, as it is run: 'in-two:"
                        + " up 2', 'in-two: out 1-1/2'.";

        private static final String GIVE_AN_OUTLINE = "Give 'profile: NAME SIZE', or 'section: [words]' for a one-off.";
    }

    private QuoteNotices() {}
}
