package buildup.engine.room.stock;

import buildup.catalog.entry.CatalogNotices;
import buildup.engine.room.run.RunNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What a shop's stock and cutting it up give cause to say. */
public final class StickNotices {
    /** No wood to cut from. */
    public static final Code NO_STOCK = Code.of("no-stock", "No wood is given to cut from.");

    /** Made of several boards. */
    public static final Kind NO_STICK_LISTED = NO_STOCK.problem(
            "'{piece}': no stick is listed for {stock} of {wood}.",
            "Add it under 'stock:', as '{{ of: {example}, buy: [8', 12'] }'.");

    public static final Kind NO_STICK_FOR_BLOCKS = NO_STOCK.note(
            "'{piece}': no stick is listed for {stock} of {wood}.",
            "Cut it from an offcut as thick, or add a stick under 'stock:', as '{{ of: {example}, buy: [8', 12'] }'.");

    private static final String NO_BOARD =
            "'{piece}': no board that is listed is as thick and wide, {thickness} x {width}.";
    private static final String ADD_A_BOARD = "Add one under 'stock:', or cut it from an offcut.";
    public static final Kind NO_BOARD_FOR_HIDDEN_BLOCKS = NO_STOCK.note(NO_BOARD, ADD_A_BOARD);
    public static final Kind NO_BOARD_FOR_BLOCKS = NO_STOCK.problem(NO_BOARD, ADD_A_BOARD);

    public static final Kind GLUED_UP =
            CatalogNotices.GLUE_UP.note("'{piece}' is larger than any board listed: it is glued up from {plies}.", "");
    public static final Phrase LAYERS = Phrase.of("{layers} layers");
    public static final Phrase STRIPS = Phrase.of("{strips} strips {strip} wide");
    public static final Phrase LAYERS_OF_STRIPS = Phrase.of("{layers} layers, each of {strips} strips {strip} wide");

    public static final Kind MANY_PLIES = CatalogNotices.MM_READ_AS_INCHES.problem(
            "'{piece}' would be glued up from {count} boards: mm read as inches?",
            "Look at its sizes and their unit; nothing is cut for it.");

    private static final Code TOO_LONG =
            Code.of("longer-than-any-stick", "A piece is longer than any stick; where parts reach, it is spliced.");
    public static final Kind LONGER_THAN_ANY_STICK =
            TOO_LONG.problem("'{piece}' on {stretch} is {length} long; the longest stick gives {longest}.", "");
    /** Nothing is left to do but to make the joint. */
    public static final Kind SPLICED =
            TOO_LONG.note("'{piece}' on {stretch} is {length} long; the longest stick gives {longest}.", "");

    public static final Phrase LONGER_STICK = Phrase.of("List a longer stick.");
    public static final Phrase LOOK_AT_THE_PLAN =
            Phrase.of("Look at the plan again: is that a wall's length, and in its unit?");
    public static final Phrase BUTTED = Phrase.of("Here it is spliced: butt it {places} from its left end, {why}.");
    public static final Phrase SCARFED =
            Phrase.of("Here it is spliced: scarf it, the middle {places} from its left end, {why}.");
    public static final Phrase ON_STUD = Phrase.of("on the stud at {stud}");
    public static final Phrase ON_BACKING = Phrase.of("where backing runs all along behind it");
    public static final Phrase NO_STUD_KNOWN = Phrase.of("over something solid: no studs are given");
    public static final Phrase NO_STUD_REACHED = Phrase.of("over a block: no stud lies within reach of the sticks");
    public static final Phrase LEAST_SEEN =
            Phrase.of("{on}, the least seen that is free, {away} from where one comes in");

    private static final Code BROKEN = Code.of("grain-broken", "No stick is long enough for grain to run round.");
    public static final Kind GRAIN_BROKEN = BROKEN.problem(
            "'{piece}': its grain cannot run round from {before} to {after}: that takes {length} of one stick, and the"
                    + " longest gives {longest}.",
            "List a longer stick, or let the grain break at that corner.");

    private static final Code NO_CLAMP = Code.of(
            "too-little-left-to-clamp", "A short piece is cut off when too little of its stick is left to clamp.");
    public static final Kind TOO_LITTLE_TO_CLAMP = NO_CLAMP.problem(
            "'{label}' is {length} long, and once it is cut off {left} of its stick stays: less than the {hold} that are held.",
            "");
    public static final Phrase DO_THAT = Phrase.of("{how}.");
    public static final Phrase CLAMP_THE_STICK =
            Phrase.of("Cut its other end first, then clamp the {left} left of the stick and cut it off");
    public static final Phrase CLAMP_A_STICK =
            Phrase.of("Cut its other end first, then clamp a stick that leaves {left} and cut it off");
    public static final Phrase RETURN_FROM_A_LONGER_PIECE =
            Phrase.of("Miter it on a piece {hold} long, then cut the return off that by hand");
    public static final Phrase FROM_A_LONGER_PIECE =
            Phrase.of("Cut its angle on a piece {hold} long, then cut it off that by hand");
    public static final Phrase BY_HAND = Phrase.plain("Saw it by hand, in a miter box");
    private static final Code NO_PRICE = Code.of("price-missing", "Not every stick to choose from has a price.");
    public static final Kind PRICE_MISSING = NO_PRICE.problem(
            "Not every stick for {stock} has a price: the fewest are taken, not the cheapest.",
            "Add 'price:', and 'per: foot', 'board-foot' or 'stick'.");

    private static final Code TOO_LITTLE =
            Code.of("too-little-stock", "What is on hand does not hold all pieces, and no more is to be had.");
    public static final Kind ONE_MISSING = TOO_LITTLE.problem(
            "The sticks on hand of {stock} do not hold all pieces: {count} more of {length} is needed.", "");
    public static final Kind SEVERAL_MISSING = TOO_LITTLE.problem(
            "The sticks on hand of {stock} do not hold all pieces: {count} more of {length} are needed.", "");
    public static final Phrase ADD_BUY = Phrase.of("Add 'buy:' with lengths to be had.");
    public static final Phrase BUY_ONE =
            Phrase.of("Buy one so long; or leave the long ones out of 'on-hand:', and the piece is spliced.");

    static final Kind NEGATIVE_KERF =
            RunNotices.NEGATIVE_KERF.refusal("The {key} is {size}.", "It cannot be negative.");
    static final Kind NEGATIVE_TRIM = DocumentCodes.NOT_A_SIZE.refusal(
            "The {key} is {size}.", "Write what comes off each end of a stick, as {example}.");
    static final Kind NEGATIVE_OFFCUT = DocumentCodes.NOT_A_SIZE.refusal(
            "The {key} is {size}.", "Write the shortest offcut worth keeping, as {example}.");
    static final Kind NEGATIVE_HOLD = DocumentCodes.NOT_A_SIZE.refusal(
            "The {key} is {size}.", "Write how much of a stick has to remain to clamp it, as 12.");
    static final Kind TOO_LARGE = DocumentCodes.NOT_A_SIZE.refusal(
            "The {key} is {size}, more than {most}.", "Write mm behind it if millimeters are meant.");
    static final Kind STICK_TOO_LONG = DocumentCodes.NOT_A_SIZE.refusal(
            "A stick of {size} is longer than any wood.", "Write mm behind it if millimeters are meant.");
    static final Kind NOTHING_TO_CUT = DocumentCodes.NOT_A_SIZE.refusal(
            "Of a stick of {size} nothing is left to cut.", "Write its length, as 12'.");
    static final Kind TRIMMED_AWAY = DocumentCodes.NOT_A_SIZE.refusal(
            "Of a stick of {size} nothing is left to cut when both ends are trimmed.", "Write its length, as 12'.");

    static final Kind UNKNOWN_WORD = DocumentCodes.UNKNOWN_NAME.refusal("No {key} is called '{word}'.", "");
    static final Kind UNKNOWN_UNIT = DocumentCodes.UNKNOWN_NAME.refusal("Nothing is priced per '{word}'.", "");

    static final Kind NO_PLAIN_NUMBER =
            DocumentCodes.NOT_A_PRICE.refusal("'{word}' is not a price.", "Write a plain number, as 3.20.");
    static final Kind NOT_A_COUNT = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{word}' is not how many sticks lie there.", "Write it as 3 x {example}.");

    private static final Code TOO_MANY = Code.of("too-many-sticks", "The stock lists more than a job is cut from.");
    static final Kind MANY_KINDS = TOO_MANY.refusal(
            "The stock lists {kinds} kinds of stick; at most {most} are looked at.",
            "List those that this job can be cut from.");
    static final Kind STICK_OF_WHAT = DocumentCodes.MISSING_KEY.refusal(
            "A stick does not say what it is.", "Add 'of:', as 'of: 1x6' or 'of: plain-crown 3-1/4'.");
    static final Kind WHICH_WOOD = DocumentCodes.MISSING_KEY.refusal(
            "The pieces are of several woods, and a stick names none.", "Add 'wood:'.");
    static final Kind STICK_WITHOUT_LENGTH = DocumentCodes.MISSING_KEY.refusal(
            "'{of}' has no length.", "Add 'buy:' with the lengths to be had, or 'on-hand:' with those in the shop.");

    private StickNotices() {}
}
