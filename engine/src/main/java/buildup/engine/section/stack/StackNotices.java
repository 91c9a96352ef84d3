package buildup.engine.section.stack;

import buildup.catalog.entry.CatalogNotices;
import buildup.profiles.outline.OutlineCodes;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What reading a stack gives cause to say, and the codes that other questions share with it. */
public final class StackNotices {
    /** A rule that names no place. */
    public static final Code NOT_A_PLACE = Code.of("not-a-place", "A rule names no place that a piece can take.");

    /** Rules too many. */
    public static final Code DOUBLED_RULE = Code.of("doubled-rule", "Two rules say the same thing of one piece.");

    /** A light or eye that cannot be where it is said to be. */
    public static final Code IMPOSSIBLE_LIGHT_OR_EYE =
            Code.of("impossible-light-or-eye", "A light, an eye or its way has no place, or one where it cannot be.");

    /** Nothing to measure. */
    public static final Code EMPTY_STACK = Code.of("empty-stack", "There is nothing in the stack to measure.");

    private static final Code NOT_A_NAME = Code.of("not-a-name", "A piece has no name, or one that rules cannot call.");
    static final Kind NO_NAME = NOT_A_NAME.refusal("Piece {number} has no name.", Words.NAME_IT);
    static final Kind NAME_OF_THE_ROOM =
            NOT_A_NAME.refusal("'{piece}' is a place of the room, not a name for a piece.", Words.NAME_IT);
    static final Kind NAME_LIKE_A_RULE =
            NOT_A_NAME.refusal("The name '{piece}' holds a dot, ' + ' or ' - ', which rules use.", Words.NAME_IT);
    static final Kind LONG_NAME =
            NOT_A_NAME.refusal("The name of piece {number} is {letters} characters long.", Words.NAME_IT);

    static final Kind UNKNOWN_KIND = DocumentCodes.UNKNOWN_NAME.refusal(
            "No kind of piece is called '{word}'.", "Write trim, nailer or framing.");
    static final Kind UNKNOWN_GRAIN =
            DocumentCodes.UNKNOWN_NAME.refusal("No way of the grain is called '{word}'.", "Write run, out or up.");
    static final Kind LARGE_SPREAD = Code.of(
                    "spread-larger-than-size",
                    "The size of a piece is said to stray by more than it is, or less than none.")
            .refusal(
                    "'{piece}' cannot stray by {spread} in its {side}, which is {size}.",
                    "Give plus and minus, as 'spread: 1/32' (in millimeters 0.8).");
    static final Kind UNKNOWN_CUT = DocumentCodes.UNKNOWN_NAME.refusal(
            "No way to saw a board is called '{word}'.", "Write flat or quartered; leave it out for mixed boards.");
    static final Kind GIVEN_BY_ITSELF = DocumentCodes.NOT_A_LENGTH.refusal(
            "The length of '{name}' is given by itself, straight or by way of others.",
            "Write a size for one of them.");
    static final Kind UNKNOWN_UNIT =
            DocumentCodes.UNKNOWN_NAME.refusal("No unit is called '{word}'.", "Write in, ft, mm or cm.");
    static final Kind NOTHING_TO_BE_FIXED_TO =
            DocumentCodes.UNKNOWN_NAME.refusal("No piece called '{word}' to be fixed to.", "");
    static final Kind NO_SUCH_LANDMARK = DocumentCodes.UNKNOWN_NAME.refusal(
            "This space has no {landmark}.", "Give 'space: {{ {landmark}: HEIGHT }'.");
    static final Kind UNKNOWN_FLIP = DocumentCodes.UNKNOWN_NAME.refusal(
            "'{piece}': no way to flip a piece is called '{word}'.",
            "Write over (upside down) or ends (back becomes face).");

    static final Kind TWO_OUTLINES =
            OutlineCodes.NO_OUTLINE.refusal("'{piece}' has both a profile and a section.", Words.GIVE_AN_OUTLINE);
    static final Kind NEITHER_OUTLINE =
            OutlineCodes.NO_OUTLINE.refusal("'{piece}' has neither profile nor section.", Words.GIVE_AN_OUTLINE);

    static final Kind LONG_MOLDING = CatalogNotices.MM_READ_AS_INCHES.problem(
            "'{piece}' is {across} across. As inches that is {feet} of molding: mm?", CatalogNotices.WRITE_THE_UNIT);

    static final Kind FAR_AWAY = CatalogNotices.MM_READ_AS_INCHES.problem(
            "'{piece}' is put {away} from where it is measured: {away} is {feet}. mm?", CatalogNotices.WRITE_THE_UNIT);

    static final Kind MORE_THAN_A_PLACE =
            NOT_A_PLACE.refusal("'at' holds more than a place.", "Write 'at: {{ MEMBER: PLACE }'.");
    static final Kind SEVERAL_PLACES = NOT_A_PLACE.refusal(
            "'{rule}' measures from more than one place or from the far side of one.", Words.ONE_PLACE);
    static final Kind OTHER_AXIS = NOT_A_PLACE.refusal("'{landmark}' is not {measure}.", Words.ONE_PLACE);
    static final Kind HANGS_ON_A_PIECE =
            DocumentCodes.NOT_A_LENGTH.refusal("'{key}' cannot hang on a piece here.", "Give a length.");
    static final Kind LEVEL_ON_A_PIECE = DocumentCodes.NOT_A_LENGTH.refusal(
            "'{key}' cannot hang on a piece here.", "Give a length, or floor + a length.");

    static final Kind SEVERAL_TURNS =
            DOUBLED_RULE.refusal("'{piece}': More than one of lay, turn and spring.", "Keep one of them.");
    static final Kind NO_RIP = DocumentCodes.NOT_A_SIZE.refusal(
            "'{piece}': a rip takes off more than 0.", "Give how much comes off, as {example}.");

    private static final Code RIP_THROUGH = Code.of("rip-through", "A rip leaves nothing of its piece, or strips.");
    static final Kind RIPPED_AWAY = RIP_THROUGH.refusal("'{piece}': the rip leaves nothing.", "");
    static final Kind RIPPED_APART = RIP_THROUGH.refusal("'{piece}': the rip leaves {strips} separate strips.", "");
    static final Phrase RIP_AT_MOST = Phrase.of("Rip {most} or less.");
    static final Phrase NO_SUCH_RIP = Phrase.of("Take the rip out.");

    private static final Code NOT_LAID = Code.of("not-laid", "What is laid is no board, or is not laid flat.");
    static final Kind BOARD_NOT_LAID =
            NOT_LAID.refusal("'{piece}': a board is laid flat or stands.", "Write 'lay: flat'.");
    static final Kind NO_BOARD_TO_LAY =
            NOT_LAID.refusal("'{piece}': only boards are laid flat.", "Turn it instead, as 'turn: 90'.");

    private static final Code NOT_SPRUNG = Code.of("not-sprung", "A spring is given for a profile that has none.");
    static final Kind NO_SPRING =
            NOT_SPRUNG.refusal("'{piece}': only a sprung profile has a spring.", "Take 'spring:' out, or turn it.");

    private static final Code SPRING_SWAPPED =
            Code.of("spring-swapped", "A spring is not the one that the flats of the profile are cut for.");
    static final Kind OTHER_SPRING = SPRING_SWAPPED.refusal(
            "'{piece}': its flats are cut for {own} from the wall, not for {asked}.",
            "Write {own}, or {swapped} for end for end.");
    static final Kind END_FOR_END = SPRING_SWAPPED.note(
            "{own} from the wall gives {drop} down, {out} out. Read as end for end: {out} down, {drop} out.",
            "If you mean the common way, write {own}.");

    static final Kind CEILING_WITHOUT_HEIGHT = DocumentCodes.MISSING_KEY.refusal(
            "A ceiling with a slope says how high it is at the wall plane.", "Add 'height: {example}'.");
    static final Kind NO_SLOPE = DocumentCodes.NOT_A_SIZE.refusal(
            "'{slope}' is not the slope of a ceiling.",
            "Write how far it rises over how far into the room, as '{up} in {out}', at most twice as far; with a minus"
                    + " where it falls.");
    private static final Code CEILING_UNDER_FLOOR =
            Code.of("ceiling-under-floor", "The ceiling is not above the floor.");
    static final Kind LOW_CEILING = CEILING_UNDER_FLOOR.refusal(
            "The ceiling is not above the floor.",
            "Heights are measured up from the datum; a floor below it is negative.");
    static final Kind THIN_COVERING = DocumentCodes.NOT_A_SIZE.refusal(
            "A covering cannot be thinner than nothing.", "Write its thickness, as {example}.");
    private static final Code WALL_UPSIDE_DOWN =
            Code.of("wall-upside-down", "The solid part of the wall ends where it begins, or below.");
    static final Kind WALL_ENDS_LOW =
            WALL_UPSIDE_DOWN.refusal("The wall ends where it begins, or below.", "Let 'to' be above 'from'.");

    static final Kind EYE_WITHOUT_PLACE = IMPOSSIBLE_LIGHT_OR_EYE.refusal(
            "Eye '{eye}' has no place.", "Give distance (from the wall plane) and height, as 'floor + {example}'.");
    static final Kind LAMP_WITHOUT_PLACE = IMPOSSIBLE_LIGHT_OR_EYE.problem(
            "Lamp '{light}' has no place.", "Write 'at: {{ distance: {distance}, height: floor + {height} }'.");
    static final Kind LIGHT_WITHOUT_ALTITUDE = IMPOSSIBLE_LIGHT_OR_EYE.problem(
            "Light '{light}' has no altitude.",
            "Give 'altitude:' in degrees over the horizon, 'at:' for a lamp, or 'latitude:', 'day:' and 'hour:' for the"
                    + " sun.");
    static final Kind SUN_WITHOUT_PLACE =
            IMPOSSIBLE_LIGHT_OR_EYE.problem("The sun of light '{light}' cannot be placed.", "Give {missing}.");
    static final Phrase LATITUDE = Phrase.of("'latitude:' in degrees, north positive");
    static final Phrase DAY = Phrase.of("'day:' as 21 June or 2026-06-21");
    static final Phrase HOUR = Phrase.of("'hour:' as 15 or 15:30");
    static final Phrase FACES = Phrase.of("'faces:', the bearing that the trimmed face looks to, as 180 for south");
    static final Phrase UTC_OFFSET = Phrase.of("'utc-offset:' as -5 with 'longitude:' in degrees, east positive");

    private static final Code WOOD_NOT_NAMED =
            Code.of("wood-not-named", "No wood is named, so that weights are those of a common one.");
    static final Kind COMMON_WOOD =
            WOOD_NOT_NAMED.note("No wood is named: weights are for {wood}.", "Write 'wood: NAME'.");

    private static final Code TOO_MANY_PIECES = Code.of("too-many-pieces", "A stack holds more pieces than a section.");
    static final Kind MANY_PIECES = TOO_MANY_PIECES.refusal(
            "The stack holds {count} pieces; a section holds at most {most}.", "Draw the repeated part once.");
    private static final Code TOO_MANY_ENTRIES =
            Code.of("too-many-entries", "A block of a stack holds more than one section is asked about.");
    static final Kind MANY_ENTRIES = TOO_MANY_ENTRIES.refusal(
            "'{key}' holds {count} entries; at most {most} are looked at.",
            "Leave out what is alike, or ask in several files.");
    static final Kind AN_ORDER = EMPTY_STACK.refusal(
            "There are no pieces here, but items, as in an order for a mill.", "Ask 'quote' for what they cost.");
    static final Kind NO_PIECES = EMPTY_STACK.refusal(
            "The stack holds no pieces: there is nothing to measure.", "List them under 'pieces:'.");
    static final Kind SAME_PIECE_TWICE =
            DocumentCodes.SAME_NAME_TWICE.refusal("'{piece}' twice.", "Call one '{piece}-{free}'.");

    private static final class Words {
        private static final String NAME_IT = "Give it a short name of its own, as 'name: frieze'.";
        private static final String GIVE_AN_OUTLINE = "Give 'profile: NAME SIZE', or 'section: [words]' for a one-off.";
        private static final String ONE_PLACE = "Write one place and lengths, as 'frieze.top + {example}'.";
    }

    private StackNotices() {}
}
