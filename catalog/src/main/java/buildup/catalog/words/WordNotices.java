package buildup.catalog.words;

import buildup.profiles.outline.OutlineCodes;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;

/** What profile words have said of them. */
public final class WordNotices {
    /** A groove goes through its board. */
    public static final Code KERF_THROUGH =
            Code.of("kerf-through", "A groove or a cut is as deep as what it is cut into is thick.");

    private static final Code UNKNOWN_WORD =
            Code.of("unknown-word", "A profile is drawn with a word that does not exist.");
    private static final Code TOO_MANY_WORDS =
            Code.of("too-many-words", "An outline is drawn with more words than any profile needs.");

    static final Kind NO_WORDS =
            OutlineCodes.NO_AREA.refusal("No words are given, so nothing is drawn.", "Begin with 'out'.");
    static final Kind NO_AREA =
            OutlineCodes.NO_AREA.refusal("The outline closes no area.", "Go out and up before it closes.");
    static final Kind TOO_THIN = OutlineCodes.NO_AREA.refusal(
            "The outline is {size} across: no wood is so thin.", "Look at its sizes and their unit.");
    static final Kind MIRRORED =
            OutlineCodes.MIRRORED.refusal("The back of this profile is on the room side.", "Say out for in.");
    static final Kind TURNED_ROUND = OutlineCodes.CLOCKWISE.note(
            "The outline runs clockwise; turned round.",
            "Begin at the lower end of the back and go out along the bottom.");
    static final Kind DOUBLED = OutlineCodes.DOUBLED_POINTS.note("Doubled points dropped: {doubled}.", "");
    static final Kind CROSSES_ITSELF = OutlineCodes.CROSSES_ITSELF.refusal(
            "Outline crosses itself near {place}, {where}.", "Shorten one of the two.");
    static final Kind THROUGH = KERF_THROUGH.refusal("Kerf is {depth} deep in a {board} board.", "Cut it less deep.");

    static final Phrase WHERE_IT_CLOSES = Phrase.of("where it closes");
    static final Phrase WITHIN_A_WORD = Phrase.of("within word {first}");
    static final Phrase AT_THE_CLOSING_LINE = Phrase.of("between word {first} and the line that closes it");
    static final Phrase BETWEEN_WORDS = Phrase.of("between words {first} and {second}");

    static final Kind MANY_WORDS = TOO_MANY_WORDS.refusal("{count} words in one outline.", "Say it in {most}.");
    static final Kind NO_TEXT = DocumentCodes.WRONG_SHAPE.refusal("A word is one text.", "Write it as 'cove 1/2'.");
    static final Kind NO_PROFILE_WORD = DocumentCodes.WRONG_SHAPE.refusal(
            "'{key}:' is not a profile word.", "Write words without a colon; only 'back:' has one.");
    static final Kind NO_LIST =
            DocumentCodes.WRONG_SHAPE.refusal("'back:' holds a list of words.", "Write it as 'back: [down 1/2]'.");
    static final Kind FACE_WITH_BACK = DocumentCodes.WRONG_SHAPE.refusal("A face has no 'back:'.", "Take 'back:' out.");
    static final Kind NO_SUCH_WORD = UNKNOWN_WORD.refusal("No profile word is called '{word}'.", "");
    static final Kind NO_MEMBER_NAME = DocumentCodes.UNUSABLE_NAME.refusal(
            "'{name}' cannot name a member: a name holds no dot and no ' + ' or ' - '.",
            "Take letters, digits and hyphens.");
    static final Kind MANY_SIZES =
            DocumentCodes.NOT_A_SIZE.refusal("'{word}' takes {takes}, not {count} sizes.", "Take '{more}' out.");

    static final Kind NOTHING = sized("comes out at {size}.", "Give it a size of more than 0.");
    static final Kind WIDE_SCOTIA =
            sized("is {width} wide and only {height} high.", "Make it higher than wide, or say cove.");
    static final Kind NO_SPAN = sized("ends where it begins.", "Give it a height or a width.");
    static final Kind SMALL_RADIUS =
            sized("has a radius of {radius} and spans {span}.", "Give it a radius of at least half its span.");
    static final Kind GOES_BACK = sized(
            "goes to {size}, which lies {behind} behind it.", "Go the other way, or shorten the words before it.");

    private WordNotices() {}

    private static Kind sized(String what, String cure) {
        return DocumentCodes.NOT_A_SIZE.refusal("Word {number} ({word}) " + what, cure);
    }

    /** A notice of one word. */
    static Notice of(Kind kind, Word word) {
        return kind.with("number", Figure.count(word.number())).with("word", word.spelled());
    }
}
