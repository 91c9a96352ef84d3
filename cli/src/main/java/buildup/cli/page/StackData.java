package buildup.cli.page;

import buildup.cli.drawing.section.ScreenDrawing;
import buildup.engine.Answers;
import buildup.engine.look.light.FrontFaces;
import buildup.engine.look.light.FrontView;
import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Step;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What the page's script works with, as JSON (RFC 8259) without a character that could end the script it stands in:
 *
 * <ul>
 *   <li>{@code origin, height, scale}: where the section lies on its drawing, in inches of the sheet
 *   <li>{@code box}: of the whole stack
 *   <li>{@code names}: of all bodies by number; {@code letters}: of the pieces, which come first; {@code framing}: the
 *       numbers of those that are there from the beginning
 *   <li>{@code stages}: one for each step of {@link #stages}, the last of them the whole: {@code piece}, the last put up; {@code members},
 *       the walk as {@code [body, name, segments]}; {@code surfaces}, all that can stand in the way of light, as
 *       {@code [body, segment]}; {@code front}, what shows straight from the front whatever the light, as {@code [member,
 *       segment of it, start, end, shares...]}: start and end are shares of the segment, and of as many strips of it as
 *       there are, how much of the room each sees
 *   <li>{@code roomShare}: what an evenly lit room gives beside the light itself
 * </ul>
 *
 * <p>A segment is {@code [x, y, x, y]}, an arc with {@code x, y} of its center and 1 for counterclockwise or 0 behind.
 */
final class StackData {
    /** Far finer than any tolerance of the light, so that the script decides as the program does. */
    private static final int DECIMALS = 9;

    private static final int SHARE_DECIMALS = 3;

    /** Pieces of all stages together. */
    private static final int MOST_PIECES_SHOWN = 5000;

    private final Section whole;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private StackData(Section whole) {
        this.whole = whole;
        for (int i = 0; i < whole.bodies().size(); i++) {
            numbers.put(whole.name(i), i);
        }
    }

    /**
     * The program's tolerances for the script, as a JSON object: {@code least} (a stretch, or a difference in depth, that
     * is none; above the rounding of the numbers in the page), {@code touching} and {@code off} (how far off a face a
     * look begins), in inches; {@code edgeOn}, as {@link Tolerance#EDGE_ON}; {@code upright}, in degrees.
     */
    static String tolerances() {
        return "{\"least\":" + Tolerance.SNAP + ",\"touching\":" + Tolerance.TOUCHING + ",\"off\":" + Tolerance.CHORD
                + ",\"edgeOn\":" + Tolerance.EDGE_ON + ",\"upright\":" + Math.toDegrees(Tolerance.SAME_DIRECTION)
                + "}";
    }

    static String of(Answers known, ScreenDrawing drawing) {
        return new StackData(known.section()).json(drawing);
    }

    private String json(ScreenDrawing drawing) {
        Box box = whole.bodies().stream()
                .filter(body -> body.inStack())
                .map(body -> body.outline().box())
                .reduce(Box::with)
                .orElseThrow();
        List<Integer> framing =
                pieces().boxed().filter(number -> whole.body(number).framing()).toList();
        return "{\"origin\":" + numbers(drawing.origin().x(), drawing.origin().y()) + ",\"height\":"
                + number(drawing.scene().height()) + ",\"scale\":" + number(drawing.scale()) + ",\n\"box\":{\"face\":"
                + number(box.face()) + ",\"bottom\":" + number(box.bottom()) + ",\"top\":" + number(box.top())
                + "},\n\"roomShare\":" + number(FrontView.ROOM_SHARE) + ",\n\"names\":"
                + list(whole.bodies(), body -> text(body.name())) + ",\n\"letters\":"
                + list(pieces().boxed().toList(), number -> text(Section.letter(number))) + ",\n\"framing\":"
                + list(framing, String::valueOf) + ",\n\"stages\":" + list(stages(whole), this::stage) + "}";
    }

    /**
     * The steps at which the page shows the stack half built: all of them, or of a stack of many pieces every few, since
     * each takes as long as the stack has pieces. The last is always the whole.
     */
    static List<Step> stages(Section section) {
        List<Step> steps = section.steps();
        int most = Math.max(1, MOST_PIECES_SHOWN / Math.max(1, steps.size()));
        int each = (steps.size() + most - 1) / most;
        return IntStream.range(0, steps.size())
                .filter(step -> (steps.size() - 1 - step) % Math.max(1, each) == 0)
                .mapToObj(steps::get)
                .toList();
    }

    private IntStream pieces() {
        return IntStream.range(0, whole.pieces().size());
    }

    private String stage(Step step) {
        Section section = upTo(step.body());
        return "\n{\"piece\":" + step.body() + ",\"members\":"
                + list(section.members(), member -> member(section, member)) + ",\n\"surfaces\":"
                + list(Surfaces.withoutFloorAndCeiling(section), surface -> surface(section, surface)) + ",\n\"front\":"
                + front(section) + "}";
    }

    /** The section as it stands when that piece is up: the framing and the pieces to that one. */
    private Section upTo(int last) {
        List<Placed> placed = new ArrayList<>();
        boolean all = true;
        for (int number : pieces().toArray()) {
            if (number <= last || whole.body(number).framing()) {
                placed.add(whole.body(number).placed().orElseThrow());
            } else {
                all = false;
            }
        }
        // what is wrong with half a stack is no news
        return all ? whole : Composer.unjudged(whole.stack(), placed);
    }

    private String member(Section section, Member member) {
        return "\n[" + number(section, member.body()) + "," + text(member.member()) + ","
                + list(member.segments(), StackData::segment) + "]";
    }

    private String surface(Section section, Surface surface) {
        return "\n[" + number(section, surface.body()) + "," + segment(surface.segment()) + "]";
    }

    private static String front(Section section) {
        FrontFaces front = FrontFaces.of(section);
        List<String> faces = new ArrayList<>();
        for (int member = 0; member < section.members().size(); member++) {
            List<Segment> segments = section.members().get(member).segments();
            for (int segment = 0; segment < segments.size(); segment++) {
                String place = member + "," + segment + ",";
                front.of(segments.get(segment))
                        .forEach(face -> faces.add("\n[" + place
                                + number(face.start()) + "," + number(face.end()) + ","
                                + face.open().stream().map(StackData::share).collect(Collectors.joining(",")) + "]"));
            }
        }
        return faces.stream().collect(Collectors.joining(",", "[", "]"));
    }

    /** A share of the room; finer than the eye tells tones apart. */
    private static String share(double share) {
        return number(share, SHARE_DECIMALS);
    }

    /** A body's number in the whole stack. */
    private int number(Section section, int body) {
        return numbers.getOrDefault(section.name(body), -1);
    }

    private static String segment(Segment segment) {
        return segment instanceof Arc arc && Math.abs(arc.sweep()) > 0
                ? numbers(
                        arc.from().x(),
                        arc.from().y(),
                        arc.to().x(),
                        arc.to().y(),
                        arc.center().x(),
                        arc.center().y(),
                        arc.counterclockwise() ? 1 : 0)
                : numbers(
                        segment.from().x(),
                        segment.from().y(),
                        segment.to().x(),
                        segment.to().y());
    }

    private static <T> String list(List<T> items, Function<T, String> written) {
        return items.stream().map(written).collect(Collectors.joining(",", "[", "]"));
    }

    private static String numbers(double... numbers) {
        return Arrays.stream(numbers).mapToObj(StackData::number).collect(Collectors.joining(",", "[", "]"));
    }

    private static String number(double number) {
        return number(number, DECIMALS);
    }

    private static String number(double number, int decimals) {
        return new BigDecimal(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A string in which everything but plain letters, figures and blanks is written by its number. */
    private static String text(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain =
                    (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == ' ' || c == '-';
            String hex = Integer.toHexString(c);
            quoted.append(plain ? String.valueOf(c) : "\\u" + "0".repeat(4 - hex.length()) + hex);
        }
        return quoted.append('"').toString();
    }
}
