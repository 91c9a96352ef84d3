package buildup.engine.compose;

import buildup.engine.placing.Placed;
import buildup.engine.stack.Piece;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Direction;
import buildup.profiles.travel.Travel;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Says what is wrong with a section as it stands: overlaps, pieces that nothing carries, a stack that does not fit. */
final class Judgement {
    private final Section section;
    private final Notices notices;

    private Judgement(Section section, Notices notices) {
        this.section = section;
        this.notices = notices;
    }

    /** Overlaps, the room, pieces upside down. */
    static void ofShape(Section section, Notices notices) {
        Judgement judgement = new Judgement(section, notices);
        judgement.overlaps();
        judgement.fit();
        judgement.upsideDown();
    }

    /** Pieces that hang, or that nothing carries; and, while no fastenings are given, what counts as fixed. */
    static void ofStanding(Section section, boolean fastened, Notices notices) {
        Judgement judgement = new Judgement(section, notices);
        for (Standing standing : section.standing()) {
            if (!fastened || !standing.fixed()) {
                judgement.standing(standing);
            }
        }
    }

    private void overlaps() {
        for (Overlap overlap : section.overlaps()) {
            Body first = section.body(overlap.a());
            Body later = first.inStack() && !section.body(overlap.b()).piece() ? first : section.body(overlap.b());
            Body other = later.equals(first) ? section.body(overlap.b()) : first;
            add(
                    Notice.problem(
                                    "overlap",
                                    "'" + later.name() + "' cuts " + print(overlap.depth()) + " into " + quoted(other)
                                            + " (" + LengthPrinter.decimals(Length.inches(overlap.area()), 2)
                                            + " sq in).")
                            .amount(Length.inches(overlap.depth()))
                            .cure("Rabbet it, or move it " + safe(overlap.depth()) + "."),
                    later);
        }
        section.contacts().stream()
                .filter(contact -> contact.gap() < -Tolerance.SNAP)
                .forEach(contact -> add(
                        Notice.note(
                                        "overlap-thinner-than-touching",
                                        "'" + section.name(contact.b()) + "' laps " + quoted(section.body(contact.a()))
                                                + " by " + LengthPrinter.decimals(Length.inches(-contact.gap()), 4)
                                                + ", less than 1/256: taken as touching.")
                                .amount(Length.inches(-contact.gap()))
                                .cure("Nothing needs doing."),
                        pieceOf(contact)));
    }

    private Body pieceOf(Contact contact) {
        return section.body(contact.b()).piece() ? section.body(contact.b()) : section.body(contact.a());
    }

    private void standing(Standing standing) {
        Body body = section.body(standing.body());
        if (!body.inStack()) {
            return;
        }
        if (standing.fixed()) {
            Grounding.fixedTo(standing.body(), section.bodies(), section.contacts())
                    .ifPresent(on -> add(
                            Notice.note(
                                            "counts-as-fixed",
                                            "'" + body.name() + "' lies flat on the " + on
                                                    + ": it counts as fixed there until fastenings are given.")
                                    .cure("Give its fastenings."),
                            body));
            return;
        }
        if (!standing.hanging().isEmpty()) {
            hangingSupport(standing, body);
        }
        if (!standing.grounded()) {
            carriedByNothing(standing.body(), body);
        }
    }

    private void hangingSupport(Standing standing, Body body) {
        List<String> names =
                standing.hanging().stream().distinct().map(section::name).toList();
        String hanging = String.join(" and ", names);
        String only =
                names.size() == 1 ? "which only hangs by its fastenings. " : "which only hang by their fastenings. ";
        String counted = standing.bearing().isEmpty()
                ? "Nothing else carries it."
                : "Counting " + sides(standing) + " alone: " + print(width(standing)) + ".";
        add(
                Notice.note(
                                "support-that-only-hangs",
                                "'" + body.name() + "' bears on " + hanging + ", " + only + counted)
                        .amount(Length.inches(width(standing)))
                        .cure("Give " + hanging + " something to stand on, or trust the rest."),
                body);
    }

    private String sides(Standing standing) {
        return String.join(
                " and ",
                standing.bearing().stream()
                        .map(bearing -> section.name(bearing.on()))
                        .distinct()
                        .toList());
    }

    private static double width(Standing standing) {
        return standing.bearing().stream().mapToDouble(Standing.Bearing::width).sum();
    }

    private void carriedByNothing(int number, Body body) {
        List<Contact> touching = section.contacts().stream()
                .filter(contact -> contact.of(number))
                .toList();
        if (touching.stream().anyMatch(contact -> contact.length() > 0)) {
            add(
                    Notice.note("hangs-on-its-fastenings", "'" + body.name() + "' hangs on its fastenings.")
                            .cure("Nail it to what is behind it."),
                    body);
        } else if (overlapped(number)) {
            // said as an overlap: what it stands on is not known until that is mended
            return;
        } else if (!touching.isEmpty()) {
            Body other = section.body(touching.get(0).other(number));
            add(
                    Notice.problem(
                                    "touches-on-a-corner-only",
                                    "'" + body.name() + "' rests on " + quoted(other) + " by a point.")
                            .amount(Length.ZERO)
                            .cure("It needs a flat: lap it at least 1/4."),
                    body);
        } else {
            floating(number, body);
        }
    }

    private boolean overlapped(int number) {
        return section.overlaps().stream().anyMatch(overlap -> overlap.a() == number || overlap.b() == number);
    }

    private void floating(int number, Body body) {
        OptionalDouble below = section.bodies().stream()
                .filter(other -> !other.equals(body))
                .flatMapToDouble(
                        other -> Travel.meeting(body.outline(), List.of(other.outline()), Direction.DOWN).stream())
                .filter(fall -> fall < 0)
                .max();
        Notice notice;
        if (below.isPresent()) {
            double air = -below.getAsDouble();
            notice = Notice.problem(
                            "floating-piece",
                            "'" + body.name() + "' touches nothing: " + print(air) + " of air below it.")
                    .amount(Length.inches(air))
                    .cure("Move it down " + print(air) + ", or add a block.");
        } else {
            notice = Notice.problem("floating-piece", "'" + body.name() + "' touches nothing, and nothing is below it.")
                    .cure("Place it on a piece, or add a block.");
        }
        add(notice, section.body(number));
    }

    private void fit() {
        OptionalDouble left = section.ceilingLeft();
        if (left.isPresent() && left.getAsDouble() < -Tolerance.TOUCHING) {
            double over = -left.getAsDouble();
            double space = section.stack().space().ceiling().orElseThrow()
                    - section.totals().bottom();
            notices.add(Notice.problem(
                            "too-tall",
                            "The stack is " + print(section.totals().height()) + " in a space of " + print(space)
                                    + ": over by " + print(over) + ".")
                    .amount(Length.inches(over))
                    .cure(tallest()
                            .map(board -> "'" + board.name() + "' could be "
                                    + LengthPrinter.sixteenths(LengthPrinter.roundDown(
                                            Length.inches(board.outline().box().height() - over), 16))
                                    + ".")
                            .orElse("Lower the stack by " + safe(over) + ".")));
        }
        OptionalDouble out = section.projectionLeft();
        if (out.isPresent() && out.getAsDouble() < -Tolerance.TOUCHING) {
            double over = -out.getAsDouble();
            notices.add(Notice.problem(
                            "projects-too-far",
                            "The stack projects " + print(section.totals().projection()) + ", " + print(over)
                                    + " more than allowed.")
                    .amount(Length.inches(over))
                    .cure("Bring it back " + safe(over) + "."));
        }
    }

    /** The tallest standing board of the trim, which is the easiest to rip. */
    private Optional<Body> tallest() {
        OptionalDouble left = section.ceilingLeft();
        double over = left.isPresent() ? -left.getAsDouble() : 0;
        return section.bodies().stream()
                .filter(Body::trim)
                .filter(body -> body.placed()
                        .map(Placed::piece)
                        .map(piece -> piece.rips()
                                && piece.stock().board()
                                && !piece.stock().lying())
                        .orElse(false))
                .filter(body -> body.outline().box().height() > over + 1)
                .max(Comparator.comparingDouble(
                        (Body body) -> body.outline().box().height()));
    }

    /** A crown, bed or cove runs narrow side down; said once the piece has been turned without a word about it. */
    private void upsideDown() {
        for (Body body : section.pieces()) {
            Piece piece = body.placed().orElseThrow().piece();
            Optional<String> kind = piece.stock().downIsNarrow();
            if (kind.isPresent() && !piece.flippedOver() && widensDownward(body.outline())) {
                add(
                        Notice.problem("upside-down", "'" + body.name() + "': the " + kind.get() + " widens downward.")
                                .cure("If you mean it, say 'flip: over'; otherwise turn it the other way."),
                        body);
            }
        }
    }

    private static boolean widensDownward(Outline outline) {
        Box box = outline.box();
        return width(outline, box.bottom()) > width(outline, box.top()) + Tolerance.TOUCHING;
    }

    /** How wide the outline is at one of its extreme levels. */
    private static double width(Outline outline, double level) {
        DoubleSummaryStatistics out = outline.flattened(Tolerance.CHORD).stream()
                .filter(p -> Math.abs(p.y() - level) <= Tolerance.TOUCHING)
                .mapToDouble(Point::x)
                .summaryStatistics();
        return out.getMax() - out.getMin();
    }

    private static String quoted(Body body) {
        return body.piece() ? "'" + body.name() + "'" : "the " + body.name();
    }

    private static String print(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    /** A cure rounds up: moving a little too far still cures. */
    private static String safe(double inches) {
        return LengthPrinter.sixteenths(LengthPrinter.roundUp(Length.inches(inches), 16));
    }

    private void add(Notice notice, Body body) {
        Optional<Placed> placed = body.placed();
        notices.add(placed.map(found -> notice.of(found.name()).at(found.piece().mark()))
                .orElse(notice));
    }
}
