package buildup.catalog.entry;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the shop's lists, and calls for what stands in them, have said of them. */
public final class CatalogNotices {
    /** A piece or a profile without thickness. */
    public static final Code THICKNESS_ZERO_OR_NEGATIVE = Code.of(
            "thickness-zero-or-negative", "A thickness or a width is zero or negative, as given or as it comes out.");

    /** A piece that no single board gives. */
    public static final Code GLUE_UP =
            Code.of("glue-up", "A piece is larger than any board at hand and is glued up from several.");

    /** A size that is more likely one of millimeters. */
    public static final Code MM_READ_AS_INCHES =
            Code.of("mm-read-as-inches", "A size is so large that it was likely meant in another unit.");

    /** In place of a cure of those; {@code number} as it is written there. */
    public static final String WRITE_THE_UNIT =
            "Write the unit behind it, '{number} in' or '{number} mm', or 'units: mm' for the file.";

    private static final Code MISSING_SIZE = Code.of("missing-size", "A profile or a nail is called without its size.");
    private static final Code UNKNOWN_LENGTH =
            Code.of("unknown-length", "A nail or a screw is not sold in the length that is asked for.");
    private static final Code NOT_A_DENSITY = Code.of("not-a-density", "A text is not the density of a wood.");

    private static final String MISSING = "'{piece}' has no {key}.";
    private static final String BEHIND = "Write it with its unit, as ";

    public static final Kind MISSING_KEY = DocumentCodes.MISSING_KEY.refusal(MISSING, "Add '{key}:', {what}.");
    public static final Phrase A_LENGTH = Phrase.of("a length");
    public static final Phrase A_NUMBER = Phrase.of("a number");
    public static final Phrase ITS_TOOL = Phrase.of("the name of what drives it");
    public static final Phrase NAIL_OR_SCREW = Phrase.of("nail or screw");
    public static final Phrase ITS_LENGTHS = Phrase.of("the lengths in which it is sold");
    public static final Phrase ITS_SIZES = Phrase.of("the sizes in which it is sold");
    public static final Phrase ONE_OF = Phrase.of("one of {words}");
    public static final Kind MISSING_RATE = DocumentCodes.MISSING_KEY.refusal(
            MISSING, "Add '{key}:'; the list that comes with the program says what it means.");
    public static final Kind NO_NAME = DocumentCodes.MISSING_KEY.refusal("An entry has no name.", "Add 'name:'.");
    public static final Kind NO_THICKNESS = DocumentCodes.MISSING_KEY.refusal(
            "Board list {list} has no thickness.", "Add 'thickness: {{ 1: 3/4 }', nominal to dressed.");
    public static final Kind NO_SPRING = DocumentCodes.MISSING_KEY.refusal(
            "A sprung profile needs its spring.", "Add 'spring: 38', the angle between its back and the wall.");
    public static final Kind NO_DENSITY = DocumentCodes.MISSING_KEY.refusal(
            "Wood {wood} has neither density nor specific-gravity.",
            "Add 'density: 29 lb/ft3' or 'density: 470 kg/m3'.");

    public static final Kind TWICE =
            DocumentCodes.SAME_NAME_TWICE.refusal("'{piece}' is there twice.", "Call one {piece}-2.");
    public static final Kind NAME_LIKE_A_SIZE = DocumentCodes.UNUSABLE_NAME.refusal(
            "'{piece}' reads as a board or a size.", "Begin the name with a letter, and do not call it board.");

    public static final Kind UNKNOWN_UNIT =
            DocumentCodes.UNKNOWN_NAME.refusal("No unit is called '{name}'.", "Write in, mm, cm or ft.");
    public static final Kind UNKNOWN_TOOL =
            DocumentCodes.UNKNOWN_NAME.refusal("'{piece}' is driven by '{tool}', which is not a known tool.", "");
    public static final Kind NO_PROFILE = DocumentCodes.UNKNOWN_NAME.refusal("No profile is named.", "");
    public static final Kind UNKNOWN_PROFILE = DocumentCodes.UNKNOWN_NAME.refusal("No profile is called '{name}'.", "");
    public static final Kind UNKNOWN_WOOD = DocumentCodes.UNKNOWN_NAME.refusal(
            "No wood is called '{name}'.",
            "{near} Or list your own, with its density, under 'woods:' in a catalog file.");
    public static final Kind UNKNOWN_FASTENER = DocumentCodes.UNKNOWN_NAME.refusal(
            "No nail or screw is called '{name}'.",
            "{near} Or list your own, with its diameter, under 'fasteners:' in a catalog file.");
    public static final Kind UNKNOWN_MILL = DocumentCodes.UNKNOWN_NAME.refusal("No mill is called '{name}'.", "");
    public static final Kind UNKNOWN_HEAD =
            DocumentCodes.UNKNOWN_NAME.refusal("No head is called '{word}'.", "There are: {heads}.");
    public static final Kind NO_SUCH_QUARTER = DocumentCodes.UNKNOWN_NAME.refusal(
            "The boards '{boards}' do not list every quarter of the mill '{piece}'.",
            "Name quarters of that list, or write quarters and what they yield, as {{ 8/4: 1-3/4 }.");
    public static final Kind UNKNOWN_RATES =
            DocumentCodes.UNKNOWN_NAME.refusal("No list of rates is called '{name}'.", "");
    public static final Kind UNKNOWN_BOARDS =
            DocumentCodes.UNKNOWN_NAME.refusal("No board list is called '{name}'.", "");
    public static final Kind NO_BOARD_SIZE = DocumentCodes.UNKNOWN_NAME.refusal(
            "'{text}' is not a board size.", "Write it as 1x4, or as board {size} for a true size.");
    public static final Kind NOT_LISTED = DocumentCodes.UNKNOWN_NAME.refusal(
            "The {list} list has no {text}.", "Take {near}, or write board {size} for a true size.");
    public static final Phrase LISTED_BOARD = Phrase.of("{label} ({thickness} x {width})");
    public static final Phrase LISTED_THICKNESS = Phrase.of("{label} ({size} thick)");
    public static final Phrase EITHER = Phrase.of("{first} or {then}");
    public static final Phrase ANOTHER_LIST = Phrase.of("another list");
    public static final Kind NO_SPREAD = DocumentCodes.NOT_A_SIZE.refusal(
            "'{name}' gives no {key}, or a negative one.", "Write 'thickness: 1/64, width: 1/32'.");
    public static final Kind UNKNOWN_CUTTER_KIND =
            DocumentCodes.UNKNOWN_NAME.refusal("No kind of cutter is called '{name}'.", "");
    public static final Kind UNKNOWN_FASTENER_KIND =
            DocumentCodes.UNKNOWN_NAME.refusal("No kind of fastener is called '{name}'.", "Write nail or screw.");
    public static final Kind UNKNOWN_GROUP = DocumentCodes.UNKNOWN_NAME.refusal(
            "No group of woods is called '{name}'.", "Write softwood, hardwood or panel.");
    public static final Kind UNKNOWN_CUT = DocumentCodes.UNKNOWN_NAME.refusal(
            "No way to saw a board is called '{name}'.", "Write flat or quartered; leave it out for mixed boards.");

    public static final Kind NO_NOMINAL_SIZE =
            DocumentCodes.NOT_A_LENGTH.refusal("'{text}' is not a nominal size.", "Write it as 1, 5/4 or 2.");
    public static final Kind NO_CUTTER_SIZE =
            DocumentCodes.NOT_A_SIZE.refusal("'{piece}' has a {key} of {size}.", BEHIND + "3/8 in.");
    public static final Kind NO_FASTENER_SIZE =
            DocumentCodes.NOT_A_SIZE.refusal("'{piece}' has a {key} of {size}.", BEHIND + "0.072 in.");
    public static final Kind NO_RATE_SIZE =
            DocumentCodes.NOT_A_SIZE.refusal("The {key} of '{piece}' is {size}.", BEHIND + "6 in or 150 mm.");
    public static final Kind BOARD_SHARES = DocumentCodes.NOT_A_SHARE.refusal(
            "The shares of the board widths of '{piece}' add up to {sum}.", "Let them add up to 100 %.");
    public static final Kind NO_QUARTER = DocumentCodes.NOT_A_SIZE.refusal(
            "'{quarter}: {finished}' is not a quarter and what it yields.", "Write it as 8/4: 1-3/4.");
    public static final Kind LONG_NAIL =
            DocumentCodes.NOT_A_SIZE.refusal("A nail or screw cannot be {amount} long.", "{sold}");
    public static final Kind FACE_OFF_ITS_STICK = DocumentCodes.NOT_A_SIZE.refusal(
            "The face does not fit a stick of {size}.", "Keep its words within the thickness and the width.");
    public static final Kind NO_STICK = DocumentCodes.NOT_A_SIZE.refusal(
            "A stick of {size} cannot be used: {fault}.", "Take a wider or a thinner one.");
    public static final Kind TOO_MANY_SIZES = DocumentCodes.NOT_A_SIZE.refusal("{family} needs {sizes}.", "{usually}");
    public static final Kind TOO_FEW_SIZES = MISSING_SIZE.refusal("{family} needs {sizes}.", "{usually}");
    public static final Kind BOARD_SIZES =
            MISSING_SIZE.refusal("A board needs thickness x width.", "Write it as board {size}.");
    public static final Kind NO_NAIL_LENGTH = MISSING_SIZE.refusal("'{piece}' needs one length.", "{sold}");
    public static final Kind NOT_SOLD = UNKNOWN_LENGTH.problem("'{fastener}' is not sold {amount} long.", "{sold}");
    public static final Kind NOTHING_LEFT =
            THICKNESS_ZERO_OR_NEGATIVE.refusal("The {which} of '{call}' is {size}.", "Give it more than 0.");
    public static final Kind TOO_THIN = THICKNESS_ZERO_OR_NEGATIVE.refusal(
            "The {which} of '{call}' is {size}: no wood is so thin.", "Give it {least} or more.");
    public static final Kind LARGE_METRIC_MOLDING = MM_READ_AS_INCHES.problem(
            "A {kind} of {amount}: no molding is so large.", "Check the figure and its unit.");
    public static final Kind LARGE_MOLDING = MM_READ_AS_INCHES.problem(
            "A {kind} of {inches}: as inches that is {run} of molding.",
            "Write mm behind it if millimeters are meant.");

    /** To be cured by what the trade sells. */
    public static final Phrase SOLD = Phrase.of("Sold: {lengths}; list others under 'fasteners:' in a catalog file.");

    public static final Phrase USUAL_SIZES = Phrase.of("Usual sizes: {sizes}.");
    public static final Phrase GIVE_SIZES = Phrase.of("Give {sizes}.");

    public static final Kind NO_CUTTER_HOOK = DocumentCodes.NOT_AN_ANGLE.refusal(
            "No cutter has a hook of {text}.", "Write degrees from {least} to {most}.");
    public static final Kind NO_CUTTER_ANGLE = DocumentCodes.NOT_AN_ANGLE.refusal(
            "No cutter has an angle of {text}.", "Write degrees from {least} to {most}.");
    public static final Kind NO_SPRING_ANGLE = DocumentCodes.NOT_AN_ANGLE.refusal(
            "A spring lies between 0 and 90 degrees.", "Give the angle between back and wall, as 38.");
    public static final Kind NO_HEAD_NUMBER = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not a {key} figure of a head.", "Write a whole number from 1 to {most}.");
    public static final Kind NO_WOOD_NUMBER = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not a {key} figure of a wood.", "Write a decimal above 0 and up to {most}.");
    public static final Kind DENSITY =
            NOT_A_DENSITY.refusal("'{text}' is not a density.", "Write it as 29 lb/ft3 or 470 kg/m3.");
    public static final Kind NO_SUCH_WEIGHT =
            NOT_A_DENSITY.refusal("No wood weighs {text}.", "Write it as 29 lb/ft3 or 470 kg/m3.");
    public static final Kind NO_PRICE =
            DocumentCodes.NOT_A_PRICE.refusal("'{text}' is not a price.", "Write a plain number, as 3.20.");
    public static final Kind NO_FEET = DocumentCodes.NOT_A_PRICE.refusal(
            "No blank is made ready at 0 feet an hour.", "Write a plain number, as 3.20.");
    public static final Kind NO_SHARE =
            DocumentCodes.NOT_A_SHARE.refusal("'{text}' is not a share.", "Write it as 15 %.");
    public static final Kind SOUND_SHARE = DocumentCodes.NOT_A_SHARE.refusal(
            "The sound share of the wood is more than 0 and up to 100 %.", "Write it as 15 %.");

    public static final Kind WORDS_AND_SPRUNG = DocumentCodes.WRONG_SHAPE.refusal(
            "Profile {piece} has both words and 'sprung:'.", "Put the words under 'sprung:' as 'face:'.");
    public static final Kind NO_WORDS =
            DocumentCodes.WRONG_SHAPE.refusal("Profile {piece} has no words.", "Add 'words: [...]'.");
    public static final Kind SPRUNG_SIZES = DocumentCodes.WRONG_SHAPE.refusal(
            "A sprung profile has the sizes thickness and width.", "Write 'sizes: [thickness, width]'.");
    public static final Kind USUAL =
            DocumentCodes.WRONG_SHAPE.refusal("'{text}' is not {sizes}.", "Give one length for each of the sizes.");

    public static final Phrase MEANT = Phrase.of("Did you mean {name}?");
    public static final Phrase MEANT_ONE_OF = Phrase.of("Did you mean one of {names}?");

    private CatalogNotices() {}

    /** What a size is refused with in which the words of a listed profile do not work: under the code of the reason. */
    public static Kind cannotBeDrawn(Code code) {
        return code.refusal("'{size}' cannot be drawn: {reason}", "Take a larger size. {usually}");
    }
}
