package buildup.engine.section.compose;

import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Rule;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Cavity;
import buildup.profiles.travel.Direction;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Says what is wrong with a section as it stands: overlaps, pieces that nothing carries, a stack that does not fit. */
final class Judgment {
    /** A flat that carries without splitting off, in: common practice, no source. */
    private static final double FLAT = 0.25;

    /** A ceiling's slope is told over so much, in, as roofs are. */
    private static final double SLOPE_OVER = 12;

    /** Laps thinner than touching, in, show in the fourth place. */
    private static final Rounding LAP = Rounding.decimals(4);

    private final Section section;
    private final SectionCures cures;
    private final Notices notices;

    private Judgment(Section section, Notices notices) {
        this.section = section;
        this.cures = new SectionCures(section);
        this.notices = notices;
    }

    /** Overlaps, the room, pieces upside down. */
    static void ofShape(Section section, Notices notices) {
        Judgment judgment = new Judgment(section, notices);
        judgment.overlaps();
        judgment.voids();
        judgment.fit();
        judgment.underTheSlope();
        judgment.upsideDown();
    }

    /**
     * Pieces that hang, that nothing carries, or that count as fixed since no fastenings are given for them. Of what
     * fastenings hold nothing is said.
     */
    static void ofStanding(Section section, Notices notices) {
        Judgment judgment = new Judgment(section, notices);
        section.standing().stream()
                .filter(standing -> section.body(standing.body()).inStack())
                .filter(standing -> !section.fastened().pinned().contains(standing.body()))
                .forEach(judgment::standing);
    }

    private void overlaps() {
        for (Overlap overlap : section.overlaps()) {
            boolean roomIsLater = section.body(overlap.a()).inStack()
                    && !section.body(overlap.b()).piece();
            int later = roomIsLater ? overlap.a() : overlap.b();
            int other = roomIsLater ? overlap.b() : overlap.a();
            add(
                    ComposeNotices.OVERLAP
                            .with("other", quoted(section.body(other)))
                            .with("area", Figure.area(overlap.area()))
                            .amount(Figure.length(overlap.depth()))
                            .cure(cures.ofOverlap(later, other)),
                    section.body(later));
        }
        section.contacts().stream()
                .filter(contact -> contact.gap() < -Tolerance.SNAP)
                .forEach(contact -> add(
                        ComposeNotices.THIN_OVERLAP
                                .with("later", section.name(contact.b()))
                                .with("other", quoted(section.body(contact.a())))
                                .with("lap", Figure.length(-contact.gap()).rounded(LAP))
                                .amount(Figure.length(-contact.gap())),
                        pieceOf(contact)));
    }

    private Body pieceOf(Contact contact) {
        return section.body(contact.b()).piece() ? section.body(contact.b()) : section.body(contact.a());
    }

    private void standing(Standing standing) {
        Body body = section.body(standing.body());
        if (standing.counted()) {
            Grounding.fixedTo(standing.body(), section.bodies(), section.contacts())
                    .ifPresent(on -> add(ComposeNotices.FIXED.with("on", on), body));
        }
        if (standing.fixed()) {
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
        List<String> names = standing.hanging().stream()
                .filter(one -> !section.fastened().pinned().contains(one))
                .distinct()
                .map(section::name)
                .toList();
        if (names.isEmpty()) {
            return;
        }
        Phrase counted = standing.bearing().isEmpty()
                ? ComposeNotices.NOTHING_ELSE
                : ComposeNotices.COUNTING
                        .with("sides", sides(standing))
                        .with("bearing", Figure.length(width(standing)));
        add(
                ComposeNotices.HANGING_SUPPORT
                        .with("hanging", Listing.names(names))
                        .with("only", names.size() == 1 ? ComposeNotices.HANGS : ComposeNotices.HANG)
                        .with("counted", counted)
                        .amount(Figure.length(width(standing))),
                body);
    }

    private Listing sides(Standing standing) {
        return Listing.names(standing.bearing().stream()
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
            add(ComposeNotices.HANGS_ON_NAILS.notice(), body);
        } else if (overlapped(number)) {
            // said as an overlap: what it stands on is not known until that is mended
            return;
        } else if (!touching.isEmpty()) {
            Body other = section.body(touching.get(0).other(number));
            add(
                    ComposeNotices.ON_A_CORNER
                            .with("other", quoted(other))
                            .with("flat", Figure.atLeast(FLAT))
                            .amount(Figure.length(0)),
                    body);
        } else {
            floating(number, body);
        }
    }

    private boolean overlapped(int number) {
        return section.overlaps().stream().anyMatch(overlap -> overlap.a() == number || overlap.b() == number);
    }

    private void floating(int number, Body body) {
        List<Outline> others = section.bodies().stream()
                .filter(other -> !other.equals(body))
                .map(Body::outline)
                .toList();
        Notice notice = Stream.of(
                        air("below", body, others, Direction.DOWN),
                        air("behind", body, others, Direction.BACK),
                        air("above", body, others, Direction.UP))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Air::amount))
                .map(air -> ComposeNotices.FLOATING.with("side", air.side()).amount(Figure.length(air.amount())))
                .orElseGet(ComposeNotices.FLOATING_FREE::notice);
        add(notice.cure(cures.ofFloating(number).orElse(Cure.of(ComposeNotices.PLACE_IT))), body);
    }

    /** How much of it lies on a side of a piece, up to what is next there. */
    private record Air(String side, double amount) {}

    private static Optional<Air> air(String side, Body body, List<Outline> others, Direction way) {
        return SectionCures.fall(body.outline(), others, way).map(by -> new Air(side, Math.abs(by)));
    }

    private void voids() {
        for (ClosedVoid hollow : section.voids()) {
            if (!hollow.corners().isEmpty()) {
                notices.add(ComposeNotices.POINT_VOID
                        .with(
                                "meetings",
                                Listing.and(hollow.corners().stream()
                                        .map(this::meeting)
                                        .toList()))
                        .amount(Figure.area(hollow.area())));
            }
        }
    }

    private Phrase meeting(Cavity.Corner corner) {
        List<Phrase> bodies = corner.outlines().stream()
                .map(body -> quoted(section.body(body)))
                .toList();
        return ComposeNotices.MEETING
                .with("bodies", Listing.and(bodies))
                .with("out", Figure.length(corner.at().x()))
                .with("up", Figure.length(corner.at().y()));
    }

    private void fit() {
        Optional<Notice> outside = section.room().fault();
        outside.ifPresent(notices::add);
        OptionalDouble left = section.ceilingLeft();
        if (outside.isEmpty() && left.isPresent() && left.getAsDouble() < -Tolerance.TOUCHING) {
            double over = -left.getAsDouble();
            notices.add(tooTall().amount(Figure.length(over)).cure(cures.ofHeight(over)));
        }
        OptionalDouble out = section.projectionLeft();
        if (out.isPresent() && out.getAsDouble() < -Tolerance.TOUCHING) {
            double over = -out.getAsDouble();
            notices.add(ComposeNotices.TOO_FAR
                    .with("projection", Figure.length(section.totals().projection()))
                    .amount(Figure.length(over))
                    .cure(cures.ofProjection(over)));
        }
    }

    private Notice tooTall() {
        Space space = section.stack().space();
        double ceiling = space.ceiling().orElseThrow();
        if (Math.abs(space.slope()) > 0) {
            Body through = section.bodies().stream()
                    .filter(Body::inStack)
                    .max(Comparator.comparingDouble(body -> space.reach(body.outline())))
                    .orElseThrow();
            return ComposeNotices.THROUGH_THE_SLOPE
                    .with("way", space.slope() > 0 ? ComposeNotices.RISES : ComposeNotices.FALLS)
                    .with("by", Figure.length(Math.abs(space.slope()) * SLOPE_OVER))
                    .with("over", Figure.length(SLOPE_OVER))
                    .of(through.name());
        }
        return ComposeNotices.TOO_TALL
                .with("height", Figure.length(section.totals().height()))
                .with("space", Figure.length(ceiling - section.totals().bottom()));
    }

    /** {@code top: ceiling} is its height at the wall: what stands out from there ends under a ceiling that rises. */
    private void underTheSlope() {
        Space space = section.stack().space();
        section.bodies().stream().filter(Body::trim).forEach(body -> {
            Piece piece = body.placed().orElseThrow().piece();
            boolean told = piece.rules()
                    .high(Axis.UP)
                    .filter(rule -> rule instanceof Rule.Level level
                            && level.ceiling()
                            && Tolerance.same(level.at(), space.ceiling().orElse(Double.NaN)))
                    .isPresent();
            OptionalDouble left = space.left(body.outline());
            if (told && left.isPresent() && left.getAsDouble() >= Tolerance.SAW_CUT) {
                Phrase place = ComposeNotices.CEILING_AND.with("up", Figure.fine(left.getAsDouble()));
                add(
                        ComposeNotices.UNDER_THE_SLOPE
                                .with("by", Figure.length(space.slope() * SLOPE_OVER))
                                .with("over", Figure.length(SLOPE_OVER))
                                .amount(Figure.length(left.getAsDouble()))
                                .cure(new Cure(
                                        ComposeNotices.UP_TO_IT.with("place", place),
                                        List.of(new Change(piece.place("top"), place)))),
                        body);
            }
        });
    }

    /** A crown, bed or cove runs narrow side down; said once the piece has been turned without a word about it. */
    private void upsideDown() {
        for (Body body : section.pieces()) {
            Piece piece = body.placed().orElseThrow().piece();
            Optional<String> kind = piece.stock().downIsNarrow();
            if (kind.isPresent() && !piece.flippedOver() && widensDownward(body.outline())) {
                add(ComposeNotices.UPSIDE_DOWN.with("molding", kind.get()), body);
            }
        }
    }

    private static boolean widensDownward(Outline outline) {
        Box box = outline.box();
        return width(outline, box.bottom()) > width(outline, box.top()) + Tolerance.TOUCHING;
    }

    /** How wide the outline is at one of its extreme levels. */
    private static double width(Outline outline, double level) {
        DoubleSummaryStatistics out = outline.chords().stream()
                .filter(p -> Math.abs(p.y() - level) <= Tolerance.TOUCHING)
                .mapToDouble(Point::x)
                .summaryStatistics();
        return out.getMax() - out.getMin();
    }

    private static Phrase quoted(Body body) {
        return (body.piece() ? ComposeNotices.QUOTED : ComposeNotices.OF_THE_ROOM).with("name", body.name());
    }

    private void add(Notice notice, Body body) {
        Optional<Placed> placed = body.placed();
        notices.add(placed.map(found -> notice.of(found.name()).at(found.piece().mark()))
                .orElse(notice));
    }
}
