package buildup.cli.command.files;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import java.util.Set;

/** What is said of files that cannot be read or written. */
public final class FileNotices {
    /** A command needs a stack, and none can be read. */
    public static final Code NO_STACK = Code.of("no-stack", "A command needs a stack, and none can be read.");

    /** What a file is to be is not told by its name. */
    public static final Code UNKNOWN_FORMAT =
            Code.of("unknown-format", "The name of a file does not say in which format it is to be written.");

    static final Code NO_CATALOG = Code.of("no-catalog", "A catalog file is named, and cannot be read.");
    static final Code NO_ORDER = Code.of("no-order", "A command needs an order, and none can be read.");
    static final Code NO_TRACING = Code.of("no-tracing", "A command needs a tracing, and none can be read.");
    private static final Code CATALOG_ELSEWHERE =
            Code.of("catalog-elsewhere", "A document names a catalog file that does not lie beside it.");
    private static final Code OUTPUT_NOT_WRITABLE =
            Code.of("output-not-writable", "An answer cannot be written where it should be.");
    private static final Code OUTPUT_FOLDER_ABSENT =
            Code.of("output-folder-absent", "An answer should be written into a folder that is not there.");
    private static final Code OUTPUT_EXISTS =
            Code.of("output-exists", "A new document should be written over a file that is there already.");

    /** Codes of what is asked for and cannot be written. */
    static final Set<String> NOT_WRITTEN =
            Set.of(OUTPUT_NOT_WRITABLE.name(), OUTPUT_FOLDER_ABSENT.name(), OUTPUT_EXISTS.name());

    /**
     * What is said of a file that cannot be had.
     *
     * @param noName its name is none
     * @param folder it is a folder
     * @param absent it is not there
     * @param endless it is a pipe or a device, of which nobody knows whether it ever ends
     * @param unreadable it cannot be read
     */
    record Unread(Kind noName, Kind folder, Kind absent, Kind endless, Kind unreadable) {
        static Unread of(Code code, String cure) {
            return new Unread(
                    code.refusal("'{file}' is not the name of a file.", cure),
                    code.refusal("{file} is a folder, not a file.", cure),
                    code.refusal("There is no file {file}.", cure),
                    code.refusal(
                            "{file} is a pipe or a device, which may never end.",
                            "Save what it gives as a file and name that."),
                    code.refusal("{file} cannot be read.", "Look at its permissions."));
        }
    }

    static final Kind OTHER_ENDING =
            UNKNOWN_FORMAT.note("{file} holds {form}, and its name says something else.", "Let it end in .{ending}.");
    static final Kind NO_SUCH_ENDING = UNKNOWN_FORMAT.refusal(
            "The ending of {file} names nothing that {command} writes.", "Let it end in {endings}, or give {option}.");

    static final Unread UNREAD_STACK = Unread.of(NO_STACK, "Name a stack document.");
    static final Unread UNREAD_CATALOG = Unread.of(NO_CATALOG, "Name a catalog document.");
    static final Unread UNREAD_ORDER = Unread.of(NO_ORDER, "Name an order document.");
    static final Unread UNREAD_TRACING = Unread.of(NO_TRACING, "Name a CSV, SVG or DXF file.");
    static final Phrase WHICH_FOLDER = Phrase.of("Is it the right folder?");
    static final Kind LARGE_FILE = DocumentCodes.FILE_TOO_LARGE.refusal(
            "{file} holds {size} MiB; {document} may hold {most} MiB.", "Is it the right file?");
    static final Kind LARGE_INPUT = DocumentCodes.FILE_TOO_LARGE.refusal(
            "{file} holds more than {most} MiB; {document} may hold {most} MiB.", "Is it the right file?");
    static final Kind LARGE_ARCHIVE = DocumentCodes.FILE_TOO_LARGE.refusal(
            "{file} holds {size} MiB; an archive may hold {most} MiB.", "Unpack it and name the stack document in it.");
    static final Kind FULL_ARCHIVE = DocumentCodes.FILE_TOO_LARGE.refusal(
            "{file} holds {entries} files; an archive may hold {most}.",
            "Unpack it and name the stack document in it.");
    static final Kind BROKEN_ARCHIVE = NO_STACK.refusal(
            "{file} is an archive that cannot be read.", "It may be damaged or locked: have it sent again.");
    static final Kind NO_JOB = NO_STACK.refusal(
            "{file} is an archive, and none that 'sheets -o JOB.zip' has written.",
            "Unpack it and name the stack document in it.");
    static final Kind NOT_IN_ARCHIVE =
            NO_STACK.refusal("{file} lists '{entry}', and does not hold it.", "Have it sent again, whole.");
    static final Kind UNCHANGED_ARCHIVE = NO_STACK.refusal(
            "{file} is an archive, in which nothing is changed.", "Unpack it and name the stack document in it.");
    static final Kind ELSEWHERE = CATALOG_ELSEWHERE.refusal(
            "'{file}' is not the name of a file beside the {document}.",
            "Put it beside the {document} and give its name alone, or use --catalog.");
    static final Kind NOT_A_FOLDER = OUTPUT_NOT_WRITABLE.refusal(
            "{file} is a file, and the answers need a folder.", "Name a folder, or one that is not there yet.");
    static final Kind OUTPUT_IS_FOLDER = OUTPUT_NOT_WRITABLE.refusal("{file} is a folder.", "Name a file in it.");
    /** What is to be written has a name that no file can have. */
    public static final Kind NO_FILE_NAME =
            OUTPUT_NOT_WRITABLE.refusal("'{file}' is not the name of a file.", "Name another.");

    static final Kind OUTPUT_IS_INPUT =
            OUTPUT_NOT_WRITABLE.refusal("{file} is what the answer comes from.", "Name another file.");
    static final Kind UNWRITABLE =
            OUTPUT_NOT_WRITABLE.refusal("{file} cannot be written.", "Name a file where you may write.");
    static final Kind WRITE_FAILED =
            OUTPUT_NOT_WRITABLE.refusal("{file} cannot be written: {why}.", "Make room there, or name another file.");
    /** The folder in which a file is to stand is not there. */
    public static final Kind NO_FOLDER = OUTPUT_FOLDER_ABSENT.refusal("There is no folder {folder}.", "Make it first.");

    static final Kind THERE_ALREADY =
            OUTPUT_EXISTS.refusal("{file} is there already.", "Name a file that is not there yet.");

    private FileNotices() {}
}
