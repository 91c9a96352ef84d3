package buildup.shared.document;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What documents have said of them as files of keys and values, whatever these mean. */
final class DocumentNotices {
    private static final Code UNKNOWN_KEY =
            Code.of("unknown-key", "A key stands in the document that means nothing there.");
    private static final Code KEY_TWICE = Code.of("key-twice", "A key is given twice; the first value has been taken.");
    private static final Code NOT_YES_OR_NO = Code.of("not-yes-or-no", "A value is neither yes nor no.");
    private static final Code COMMA_IN_BRACES =
            Code.of("comma-in-braces", "A decimal comma inside brackets, without quotes, cuts a number in two.");
    private static final Code YAML_ERROR = Code.of("yaml-error", "The document is not written as YAML 1.2 is.");
    private static final Code TAB_IN_YAML = Code.of("tab-in-yaml", "A line is indented by a tab, which YAML forbids.");
    private static final Code NESTED_TOO_DEEP =
            Code.of("nested-too-deep", "Lists and mappings are nested deeper than in any document.");
    private static final Code TOO_MANY_ALIASES =
            Code.of("too-many-aliases", "A document repeats parts of itself more often than one written by hand.");
    private static final Code MORE_THAN_ONE_DOCUMENT =
            Code.of("more-than-one-document", "A file holds more than one document.");
    private static final Code NOT_A_MAPPING = Code.of("not-a-mapping", "A document does not consist of keys.");
    private static final Code UNSEEN_MARKS = Code.of(
            "unseen-marks", "Marks that nobody sees, which steer a screen or make names alike, have been left out.");

    static final Kind UNSEEN = UNSEEN_MARKS.note(
            "Marks that nobody sees have been left out of this text ({count} such texts in all).",
            "Type those texts again.");
    static final Kind NO_SUCH_KEY = UNKNOWN_KEY.refusal("No key is called '{key}' here.", "");
    static final Kind NO_SUCH_KEY_BELOW = UNKNOWN_KEY.refusal("No key is called '{key}' in '{path}'.", "");
    static final Kind RENAMED_KEY =
            UNKNOWN_KEY.refusal("The key '{key}' is now called '{now}'.", "Write '{now}:' in its place.");
    static final Kind TWICE = KEY_TWICE.refusal(
            "'{key}' is given twice: in line {first} and again in line {second}.", "Keep one of them.");
    static final Kind WRONG_SHAPE = DocumentCodes.WRONG_SHAPE.refusal(
            "'{key}' holds {found} where {expected} is expected.", "Write {expected}.");
    static final Kind NO_ANGLE =
            DocumentCodes.NOT_AN_ANGLE.refusal("'{text}' is not an angle.", "Write degrees, as 38 or 22.5.");
    static final Kind NEITHER_YES_NOR_NO = NOT_YES_OR_NO.refusal("'{text}' is neither yes nor no.", "Write yes or no.");
    static final Kind TORN_NUMBER = COMMA_IN_BRACES.refusal(
            "A comma inside brackets ends the entry, so {text} fell in two.", "Quote it: \"{text}\".");

    static final Phrase ONE_VALUE = Phrase.of("one value");
    static final Phrase A_LIST = Phrase.of("a list");
    static final Phrase A_MAPPING = Phrase.of("a block of 'key: value'");

    static final Kind EMPTY = DocumentCodes.EMPTY_FILE.refusal("{file} is empty.", "Begin with 'title:'.");
    static final Kind NO_KEYS = NOT_A_MAPPING.refusal("{file} holds no keys at its top.", "Begin with 'title:'.");
    static final Kind TOO_LARGE = DocumentCodes.FILE_TOO_LARGE.refusal(
            "{file} holds {size} MiB; a stack may hold {most} MiB.", "Is it the right file?");
    static final Kind NO_TEXT = DocumentCodes.BINARY_FILE.refusal(
            "{file} is not a text file in UTF-8.", "Save it as text in UTF-8, or name the right file.");
    static final Kind SECOND_DOCUMENT = MORE_THAN_ONE_DOCUMENT.refusal(
            "A second document begins here; a file holds one.", "Split the file at '---'.");
    static final Kind DEEP = NESTED_TOO_DEEP.refusal(
            "Lists and mappings are nested more than {most} deep.", "Close the brackets before it.");
    static final Kind REPEATS = TOO_MANY_ALIASES.refusal(
            "The file repeats itself ('*{name}') more than {most} times or {entries} entries.",
            "Write the repeated part out.");

    static final Kind TAB = TAB_IN_YAML.refusal("A tab stands where the line is indented.", "Use blanks.");
    static final Kind NOT_YAML_1_2 = YAML_ERROR.refusal("This is not YAML 1.2: {fault}.", "Save it as YAML 1.2.");
    static final Kind NOT_YAML = YAML_ERROR.refusal("This is not YAML: {fault}.", "Compare with the lines around it.");
    static final Kind OPEN_QUOTE = YAML_ERROR.refusal("A quote is opened and never closed.", "Close the quote.");
    static final Kind OPEN_QUOTE_IN_LINE =
            YAML_ERROR.refusal("A quote is opened in line {line} and never closed.", "Close the quote.");
    static final Kind OPEN_BRACKET = YAML_ERROR.refusal(
            "A bracket is opened and not closed, or a comma is missing.", "Close the bracket or put the comma.");
    static final Kind OPEN_BRACKET_IN_LINE = YAML_ERROR.refusal(
            "A bracket is opened in line {line} and not closed, or a comma is missing.",
            "Close the bracket or put the comma.");
    static final Kind STRAY_COLON = YAML_ERROR.refusal(
            "A colon stands where none can be.",
            "Line the key up with its neighbors, or put quotes round a text that holds a colon.");
    static final Kind NO_COLON =
            YAML_ERROR.refusal("A key has no colon behind it.", "Put a colon and a blank behind the key.");
    static final Kind INDENTED =
            YAML_ERROR.refusal("This line is not indented like its neighbors.", "Line it up with them.");
    static final Kind STRANGE_START =
            YAML_ERROR.refusal("A text cannot begin with this character.", "Put quotes round the text.");
    static final Kind KEY_OF_PARTS =
            YAML_ERROR.refusal("A key must be a single text.", "Put quotes round it if the brackets belong to a text.");
    static final Kind UNKNOWN_ALIAS = YAML_ERROR.refusal(
            "'*{name}' repeats something not marked before it.",
            "Mark it with '&{name}', or quote a text that begins with '*'.");

    private DocumentNotices() {}
}
