package buildup.catalog.format;

import buildup.profiles.trace.TraceNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Value;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import java.util.List;
import java.util.Map;

/** What files of tracings and drawings have said of them. */
final class FormatNotices {
    static final Code ONE_POINT = Code.of("one-point", "A tracing, or a part of it, is a single point.");
    static final Code NO_POINTS = Code.of("no-points", "A file of a tracing holds no point and no line.");
    static final Code NOT_A_POINT =
            Code.of("not-a-point", "A line of a file of points is not two numbers that a drawing can hold.");
    static final Code TWO_UNITS = Code.of("two-units", "A file of points states two units.");
    static final Code TOO_MANY_POINTS =
            Code.of("too-many-points", "A drawing holds more points or blocks than any profile.");
    static final Code OUTSIDE_REFERENCE =
            Code.of("outside-reference", "A drawing refers to something outside its file, which is not opened.");
    static final Code TOO_DEEP = Code.of("too-deep", "What a drawing holds is nested too deeply.");
    static final Code DXF_ERROR = Code.of("dxf-error", "A part of a DXF file cannot be read.");
    static final Code BINARY_DXF = Code.of("binary-dxf", "A DXF file is binary; only those of text are read.");
    static final Code NOT_READ = Code.of("not-read", "A drawing holds things that are no lines; they are left out.");
    static final Code DRAWING_UNIT = Code.of(
            "drawing-unit", "A DXF file states its unit in an unusual way, or not at all; how it has been taken.");
    static final Code SVG_ERROR = Code.of("svg-error", "A file is no SVG drawing, or a part of it cannot be read.");
    static final Code ENTITY_BOMB =
            Code.of("entity-bomb", "An SVG file declares entities, which could blow up; it is not read.");

    private static final String POINTS_CURE = "Write x and y, as 0.250, 1.125.";
    private static final String TRACE_THE_PICTURE =
            "Draw the outline over it, or have the drawing program trace it, and save that with the scale.";
    private static final String TRACE_ALONG = "Trace along the profile.";
    private static final String PLAIN_SVG = "Save it again as plain SVG.";
    private static final String NO_DOCUMENT_TYPE = "Save it as plain SVG, without a document type.";

    static final Kind EMPTY = DocumentCodes.EMPTY_FILE.refusal("{file} is empty.", "Is it the right file?");
    static final Kind PACKED = DocumentCodes.BINARY_FILE.refusal("{file} is packed.", "Unpack it first.");
    static final Kind NO_TEXT = DocumentCodes.BINARY_FILE.refusal(
            "{file} is not a text file: byte {byte} stands in it.", "Save the profile as CSV, SVG or ASCII DXF.");
    static final Kind TOO_LARGE =
            DocumentCodes.FILE_TOO_LARGE.refusal("{file} holds more than {most} MiB.", "Save the profile alone.");

    static final Kind SINGLE_POINTS = ONE_POINT.refusal("{file} holds single points only.", TRACE_ALONG);
    static final Kind LONE_POINT = ONE_POINT.note("A point stands alone between blank lines, and is left out.", "");
    static final Kind ALL_IN_ONE = ONE_POINT.refusal("All of {file} is at one point.", TRACE_ALONG);
    static final Kind NO_POINT = NO_POINTS.refusal(
            "{file} holds no points.", "Write x and y on each line, as 0.250, 1.125; or name an SVG or DXF file.");
    static final Kind ONLY_PICTURES = NO_POINTS.refusal("{file} shows a picture and draws no line.", TRACE_THE_PICTURE);
    static final Kind NO_LINE = NO_POINTS.refusal("{file} draws no line.", "Is it the right file?");
    static final Kind LONG_LINE =
            NOT_A_POINT.problem("This line is {letters} letters long. The point is left out.", POINTS_CURE);
    static final Kind FIELDS =
            NOT_A_POINT.problem("'{text}' is {found} where {columns} are wanted. The point is left out.", POINTS_CURE);
    static final Kind NO_NUMBER = NOT_A_POINT.problem("{fault}. The point is left out.", POINTS_CURE);
    static final Kind TOO_FAR =
            NOT_A_POINT.refusal("What is drawn reaches far beyond any drawing.", "Look at its scale.");
    static final Kind MANY_POINTS = TOO_MANY_POINTS.refusal(
            "{file} holds more than {most} points.",
            "Keep the profile and leave out the rest, or trace it more coarsely.");
    static final Kind MANY_BLOCKS = TOO_MANY_POINTS.refusal(
            "More than {most} blocks are put into the drawing.", "Keep the profile and leave out the rest.");

    static final Kind NO_UNIT =
            TraceNotices.MISSING_UNIT.problem("'{text}' is not a unit of length.", "Write in, mm, cm or ft.");
    static final Kind UNITS_DIFFER =
            TWO_UNITS.refusal("Two units are stated: {first}, and here {second}.", "Keep one of them.");
    static final Kind NO_SHOP_UNIT = DRAWING_UNIT.problem(
            "The drawing is in a unit that no shop works in ($INSUNITS {number}); it is taken as unstated.",
            "Save it in inches or millimeters, or say the unit.");
    static final Kind GUESSED_METRIC = DRAWING_UNIT.note(
            "The drawing states no unit; as it is metric ($MEASUREMENT), it is taken in {unit}.",
            "Say the unit if that is wrong.");
    static final Kind GUESSED_INCHES = DRAWING_UNIT.note(
            "The drawing states no unit; as it is not metric ($MEASUREMENT), it is taken in {unit}.",
            "Say the unit if that is wrong.");
    static final Kind UNIT_TURNED = DRAWING_UNIT.note("The drawing is in {drawn}; turned into {unit}.", "");

    static final Kind BLOCK_ELSEWHERE = OUTSIDE_REFERENCE.problem(
            "Block '{block}' is not in the file, and is left out.",
            "Bind what is outside into the file, or take the block apart.");
    static final Kind OUTSIDE = OUTSIDE_REFERENCE.refusal(
            "The file refers to {what} outside itself. Nothing outside is opened.",
            "Take it out or embed it, and save as plain SVG.");
    static final Kind DEEP_BLOCK = TOO_DEEP.refusal(
            "Block '{block}' holds itself, or blocks lie more than {most} deep within each other.",
            "Take the blocks apart.");
    static final Kind DEEP_ELEMENT =
            TOO_DEEP.refusal("Elements lie more than {most} deep within each other.", "Ungroup the drawing.");
    static final Kind LEFT_OUT = NOT_READ.note(
            "Left out, as they are no lines: {list}.", "Turn them into {lines} if they belong to the profile.");

    static final Kind PICTURES = NOT_READ.note("Left out, as a photo has no lines: {pictures}.", TRACE_THE_PICTURE);
    static final Kind NOTHING_TO_USE = OUTSIDE_REFERENCE.problem(
            "'{name}' is used and is not in the file; it is left out.", "Take the groups apart, and save again.");
    static final Kind NO_SUCH_LAYER = DocumentCodes.UNKNOWN_NAME.refusal("{file} has no layer '{layer}'.", "");
    static final Phrase LAYERS = Phrase.of("Its layers are {layers}.");
    static final Phrase ONE_LAYER = Phrase.of("Its only layer is {layers}.");
    static final Phrase NO_LAYERS = Phrase.of("It has no layers: leave the option out.");

    static final Kind BROKEN_OFF =
            DXF_ERROR.problem("The file breaks off: what should end it is not there.", "Save or copy it again.");
    static final Kind NO_GROUP_CODE = DXF_ERROR.refusal(
            "A group code, a whole number, should stand here, and '{text}' does.", "Save the file again as ASCII DXF.");
    static final Kind ENTITY_LEFT_OUT =
            DXF_ERROR.problem("This {type} is left out. {fault}", "Turn it into a polyline and save again.");
    static final Kind ENTITY_CHANGED =
            DXF_ERROR.problem("This {type}: {fault}", "Turn it into a polyline and save again.");
    static final Kind BINARY = BINARY_DXF.refusal("{file} is a binary DXF file.", "Save it as ASCII DXF.");

    static final Kind NOT_SVG = SVG_ERROR.refusal("{file} is not an SVG drawing.", "Save the profile as plain SVG.");
    static final Kind NOT_XML =
            SVG_ERROR.refusal("This is not well-formed XML, from which an SVG file is made.", PLAIN_SVG);
    static final Kind NO_END = SVG_ERROR.refusal("The document type has no end.", PLAIN_SVG);
    static final Kind TRANSFORM =
            SVG_ERROR.problem("The transform of this {element} cannot be read. It is left out.", PLAIN_SVG);
    static final Kind READ_IN_PART = SVG_ERROR.problem("{fault} Only what stands before is taken.", PLAIN_SVG);
    static final Kind ENTITY_USED = ENTITY_BOMB.refusal(
            "The file uses an entity of its own; such can blow up, and are not read.", NO_DOCUMENT_TYPE);
    static final Kind ENTITY_DECLARED = ENTITY_BOMB.refusal(
            "The file declares entities or other rules of its own; such can blow up, and are not read.",
            NO_DOCUMENT_TYPE);

    static final Phrase QUOTED = Phrase.of("'{text}'");
    static final Phrase A_DOCUMENT_TYPE = Phrase.of("a document type");
    static final Phrase A_STYLE_SHEET = Phrase.of("a style sheet");
    static final Phrase A_STYLE = Phrase.of("a style, a font or a picture");
    static final Phrase NUMBER_TOO_FAR = Phrase.of("'{text}' is far beyond any drawing");
    static final Phrase NOT_A_NUMBER = Phrase.of("'{text}' is not a number");
    static final Phrase ONE_FIELD = Phrase.of("{fields} field");
    static final Phrase SEVERAL_FIELDS = Phrase.of("{fields} fields");
    static final Phrase IN_LINE = Phrase.of("In line {line}, {fault}.");
    static final Phrase NOT_A_SHAPE_LENGTH = Phrase.of("{element} {attribute}='{text}' is not a length here.");
    static final Phrase PATH_BEYOND = Phrase.of("The path cannot be read beyond letter {letter} of its data.");
    static final Phrase POINTS_BEYOND = Phrase.of("The points of the {element} cannot be read beyond letter {letter}.");
    static final Phrase RADIUS_BELOW = Phrase.of("The {element} has a radius below 0.");
    static final Phrase SIDE_BELOW = Phrase.of("The rect has a side below 0.");
    static final Phrase TILTED = Phrase.of("It lies in a plane that is tilted out of the drawing.");
    static final Phrase NO_RADIUS = Phrase.of("Its radius is not above 0.");
    static final Phrase NO_AXIS = Phrase.of("One of its axes is not above 0.");
    static final Phrase NET = Phrase.of("It is a net of faces.");
    static final Phrase WHOLE_POINTS = Phrase.of("It has {points} whole points.");
    static final Phrase BULGE = Phrase.of("The bulge at its point {point} is no arc.");
    private static final Phrase AS_A_SPLINE = Phrase.of("As a spline, {faults}.");
    private static final Phrase BOTH = Phrase.of("{first}; {then}");
    private static final Phrase SO_MANY = Phrase.of("{number} {what}");

    private FormatNotices() {}

    /** What is told of all faults of a kind that were not told one by one: {@code more}, the last in {@code line}. */
    static Kind more(Code code) {
        return code.problem(
                "{more} more like these, the last of them in line {line}.", "Look at how the file was saved.");
    }

    /** What keeps an entity from being a spline. */
    static Phrase asASpline(List<Phrase> faults) {
        return faults.stream()
                .reduce((first, then) -> BOTH.with("first", first).with("then", then))
                .map(all -> AS_A_SPLINE.with("faults", all))
                .orElse(AS_A_SPLINE);
    }

    /** How many of what were left out: {@code 2 HATCH, 1 TEXT}. */
    static Value counted(Map<String, Integer> left) {
        return Listing.commas(left.entrySet().stream()
                .map(entry ->
                        SO_MANY.with("number", Figure.count(entry.getValue())).with("what", entry.getKey()))
                .toList());
    }
}
