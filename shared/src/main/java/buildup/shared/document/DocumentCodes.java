package buildup.shared.document;

import buildup.shared.notice.Code;

/** What readers of documents, in whatever package, say of a value or a file. */
public final class DocumentCodes {
    /** There is nothing in the file. */
    public static final Code EMPTY_FILE = Code.of("empty-file", "A file is empty.");

    /** It is no text. */
    public static final Code BINARY_FILE =
            Code.of("binary-file", "A file that should be text holds bytes that are not text, or is packed.");

    /** It is larger than such a file can be. */
    public static final Code FILE_TOO_LARGE =
            Code.of("file-too-large", "A file is larger than any of its kind; it is not read.");

    /** A value of one shape where one of another is expected. */
    public static final Code WRONG_SHAPE =
            Code.of("wrong-shape", "A value has another shape than is expected: a list, a block of keys or one value.");

    /** A key that must be there is not. */
    public static final Code MISSING_KEY = Code.of("missing-key", "An entry lacks a key that it cannot do without.");

    /** Something is called by a name that nothing has. */
    public static final Code UNKNOWN_NAME =
            Code.of("unknown-name", "Something is called by a name that nothing here has.");

    /** Two have one name. */
    public static final Code SAME_NAME_TWICE = Code.of("same-name-twice", "Two entries of a list have the same name.");

    /** A name that cannot be one. */
    public static final Code UNUSABLE_NAME =
            Code.of("unusable-name", "A name cannot be used, as it would be read as something else.");

    /** No length. */
    public static final Code NOT_A_LENGTH = Code.of("not-a-length", "A text cannot be read as a length.");

    /** A length that what it is given for cannot have. */
    public static final Code NOT_A_SIZE = Code.of(
            "not-a-size", "A length can be read, but cannot be right for what it is given: zero, negative, too large.");

    /** No angle, or one that what it is given for cannot have. */
    public static final Code NOT_AN_ANGLE = Code.of(
            "not-an-angle", "A text cannot be read as an angle, or the angle cannot be right for what it is given.");

    /** No number, or one out of bounds. */
    public static final Code NOT_A_NUMBER =
            Code.of("not-a-number", "A text is not a number within the bounds that its key has.");

    /** No price. */
    public static final Code NOT_A_PRICE = Code.of("not-a-price", "A text cannot be read as a price.");

    /** No share. */
    public static final Code NOT_A_SHARE = Code.of("not-a-share", "A text cannot be read as a percentage.");

    private DocumentCodes() {}
}
