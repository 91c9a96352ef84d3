package buildup.cli.drawing.draft;

import buildup.cli.scene.ChordRing;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the picture shows of the section: the whole stack, and as much of what stands round it as lies near.
 *
 * @param window all that is shown lies in it
 * @param stack box of the stack, framing left out
 * @param scale inches of the picture to an inch of wood
 */
public record PictureView(Box window, Box stack, List<Shown> shown, double scale) {
    /** What begins farther than this from the stack's box is not shown. */
    private static final double NEAR = 1.25;

    /** How far framing is shown behind the stack. */
    private static final double BEHIND = 1.25;

    /** How much is shown of a wall behind the stack, of a floor below and a ceiling above it. */
    private static final double THICK = 0.6;

    /** How far a wall, a floor or framing is shown to run on past the stack. */
    private static final double RUN_ON = 0.9;

    /** The same on the room side, where dimensions want the place. */
    private static final double RUN_OUT = 0.4;

    /** Size of the texts, as a share of the picture's height. */
    private static final double LETTERS = 0.016;

    /** Air round what is shown. */
    private static final double MARGIN = 0.3;

    public PictureView {
        shown = List.copyOf(shown);
    }

    /**
     * What is shown of a body; several parts when the window's edge parts it.
     *
     * @param number of the body in the section
     */
    public record Shown(int number, Body body, List<Part> parts) {
        public Shown {
            parts = List.copyOf(parts);
        }
    }

    /** A closed part: its edges as drawn, and those where it goes on beyond the picture. */
    public record Part(List<Segment> ring, List<Segment> edges, List<Line> breaks, ChordRing chords) {
        Part scaled(double by) {
            List<Segment> smaller = Scale.of(ring, by);
            return new Part(
                    smaller,
                    Scale.of(edges, by),
                    breaks.stream().map(line -> Scale.of(line, by)).toList(),
                    ChordRing.of(smaller, Tolerance.DRAWN_CHORD));
        }
    }

    /** The stack with its room, and as much of wall, floor and ceiling as a picture needs. */
    public static PictureView of(Section section) {
        Box stack = Box.around(section.bodies().stream()
                .filter(Body::inStack)
                .map(body -> body.outline().box())
                .toList());
        List<Body> near = section.bodies().stream()
                .filter(body -> body.outline().box().near(stack, NEAR))
                .toList();
        double covering = section.stack().space().wall().covering();
        Box far = near.stream().map(body -> reach(body, stack, covering)).reduce(stack, Box::with);
        Box cut = near.stream().map(body -> common(body.outline().box(), far)).reduce(stack, Box::with);
        Box window = new Box(
                side(cut.back(), far.back(), -MARGIN),
                side(cut.bottom(), far.bottom(), -MARGIN),
                side(cut.face(), far.face(), MARGIN),
                side(cut.top(), far.top(), MARGIN));
        List<Shown> shown = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            Body body = section.body(i);
            if (body.outline().box().near(stack, NEAR)) {
                shown.add(new Shown(i, body, parts(body.outline(), window)));
            }
        }
        return new PictureView(window, stack, shown, 1);
    }

    /** Size of the texts on it, in: read on a screen that shows the picture whole. */
    public double letters() {
        return Math.max(Drafting.TEXT, LETTERS * window.height());
    }

    /** The same, drawn to another scale. */
    public PictureView scaled(double by) {
        List<Shown> smaller = shown.stream()
                .map(one -> new Shown(
                        one.number(),
                        one.body(),
                        one.parts().stream().map(part -> part.scaled(by)).toList()))
                .toList();
        return new PictureView(Scale.of(window, by), Scale.of(stack, by), smaller, scale * by);
    }

    /** How far a body that runs on without end is followed. */
    private static Box reach(Body body, Box stack, double covering) {
        Box box = body.outline().box();
        double behind = body.framing() ? BEHIND : THICK + covering;
        return new Box(
                stack.back() - (box.face() > stack.back() + Tolerance.TOUCHING ? RUN_OUT : behind),
                box.top() < stack.bottom() + Tolerance.TOUCHING ? box.top() - THICK : stack.bottom() - RUN_ON,
                stack.face() + RUN_OUT,
                box.bottom() > stack.top() - Tolerance.TOUCHING ? box.bottom() + THICK : stack.top() + RUN_ON);
    }

    /** A side of the window: where something is cut off, no air beyond the cut. */
    private static double side(double shown, double cut, double margin) {
        return Tolerance.same(shown, cut) ? shown : shown + margin;
    }

    private static Box common(Box a, Box b) {
        return new Box(
                Math.max(a.back(), b.back()),
                Math.max(a.bottom(), b.bottom()),
                Math.min(a.face(), b.face()),
                Math.min(a.top(), b.top()));
    }

    private static List<Part> parts(Outline outline, Box window) {
        Box box = outline.box();
        List<Outline> parts = Stream.of(outline)
                .flatMap(o -> Rip.off(o, Rip.Side.BACK, window.back() - o.box().back()).stream())
                .flatMap(o -> Rip.off(o, Rip.Side.FACE, o.box().face() - window.face()).stream())
                .flatMap(o ->
                        Rip.off(o, Rip.Side.BOTTOM, window.bottom() - o.box().bottom()).stream())
                .flatMap(o -> Rip.off(o, Rip.Side.TOP, o.box().top() - window.top()).stream())
                .toList();
        return parts.stream().map(part -> part(part, box, window)).toList();
    }

    private static Part part(Outline part, Box whole, Box window) {
        List<Segment> ring = part.segments();
        List<Segment> edges = new ArrayList<>();
        List<Line> breaks = new ArrayList<>();
        for (Segment segment : ring) {
            if (segment instanceof Line line && isCut(line.box(), whole, window)) {
                breaks.add(line);
            } else {
                edges.add(segment);
            }
        }
        return new Part(ring, edges, breaks, ChordRing.of(ring, Tolerance.DRAWN_CHORD));
    }

    private static boolean isCut(Box line, Box whole, Box window) {
        return (on(line.back(), line.face(), window.back()) && whole.back() < window.back() - Tolerance.TOUCHING)
                || (on(line.back(), line.face(), window.face()) && whole.face() > window.face() + Tolerance.TOUCHING)
                || (on(line.bottom(), line.top(), window.bottom())
                        && whole.bottom() < window.bottom() - Tolerance.TOUCHING)
                || (on(line.bottom(), line.top(), window.top()) && whole.top() > window.top() + Tolerance.TOUCHING);
    }

    private static boolean on(double least, double most, double side) {
        return Math.abs(least - side) <= Tolerance.SNAP && Math.abs(most - side) <= Tolerance.SNAP;
    }
}
