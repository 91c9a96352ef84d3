package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bounds of reveals of a piece over another that lies flat against one side of it: where its side runs on beyond the end of
 * the contact, and the air there is open to the room in a level line, there is a reveal no longer than that run.
 */
final class RevealBounds {
    private static final double SLACK = FaceMeeting.SLACK;
    private static final double SLIT = UprightFace.SLIT;

    private final List<PlacedForms> pieces;

    RevealBounds(List<PlacedForms> pieces) {
        this.pieces = pieces;
    }

    /** The reveals of a piece over another, or over whatever it is; absent where nothing is known of them. */
    Optional<Bounder> of(String shows, Optional<String> over) {
        List<Beyond> meetings = new ArrayList<>();
        for (PlacedForms piece : pieces) {
            for (PlacedForms other : pieces) {
                if (piece.name().equals(shows)
                        && !piece.name().equals(other.name())
                        && over.map(name -> name.equals(other.name())).orElse(true)) {
                    meetings(piece, other, meetings);
                }
            }
        }
        return meetings.isEmpty()
                ? Optional.empty()
                : Optional.of(box -> {
                    FigureBound bound = FigureBound.UNKNOWN;
                    for (Beyond meeting : meetings) {
                        bound = bound.and(meeting.over(box));
                    }
                    return bound;
                });
    }

    /** A side of one piece on the facing side of another. */
    private void meetings(PlacedForms piece, PlacedForms other, List<Beyond> out) {
        for (Axis across : Axis.values()) {
            for (boolean high : new boolean[] {true, false}) {
                // no level line leaves the air behind a piece that hangs before another
                if (across == Axis.UP || high) {
                    Optional<Extent> mine = piece.flat(across, high);
                    Optional<Extent> its = other.flat(across, !high);
                    if (mine.isPresent() && its.isPresent()) {
                        out.add(new Beyond(piece, other, across, high, mine.get(), its.get()));
                    }
                }
            }
        }
    }

    /** What of another piece stands in the way of a level line out of the air beside a joint. */
    private record Beside(PlacedForms piece, SizeSum bottom, SizeSum top, SizeSum face) {
        /** Whether a line just over its height is free of the piece in every stack of a box. */
        boolean freeAbove(ChoiceBox box) {
            return !piece.piece().maybe(box)
                    || bottom.over(box).least() > SLIT
                    || top.over(box).most() <= Tolerance.COINCIDENT
                    || face.over(box).most() <= Tolerance.COINCIDENT;
        }

        boolean freeBelow(ChoiceBox box) {
            return !piece.piece().maybe(box)
                    || bottom.over(box).least() >= -Tolerance.COINCIDENT
                    || top.over(box).most() < -SLIT
                    || face.over(box).most() <= Tolerance.COINCIDENT;
        }
    }

    /** Two pieces that may lie flat against each other, and how far the side of the first runs on beyond the other. */
    private final class Beyond {
        private final FaceMeeting meeting;
        private final List<Run> runs = new ArrayList<>();

        Beyond(PlacedForms piece, PlacedForms other, Axis across, boolean high, Extent mine, Extent its) {
            this.meeting = new FaceMeeting(piece, other, across, high, mine, its, pieces);
            if (across == Axis.UP) {
                SizeSum level = piece.side(across, high);
                runs.add(new Run(mine.high().minus(its.high()), high, beside(level, its.high())));
            } else {
                SizeSum line = piece.side(across, true);
                runs.add(new Run(mine.high().minus(its.high()), true, beside(its.high(), line)));
                runs.add(new Run(its.low().minus(mine.low()), false, beside(its.low(), line)));
            }
        }

        private List<Beside> beside(SizeSum height, SizeSum out) {
            return pieces.stream()
                    .map(one -> new Beside(
                            one,
                            one.up().low().minus(height),
                            one.up().high().minus(height),
                            one.out().high().minus(out)))
                    .toList();
        }

        FigureBound over(ChoiceBox box) {
            FigureBound bound = FigureBound.UNKNOWN;
            if (meeting.isThere(box)) {
                for (Run run : runs) {
                    bound = bound.and(run.over(box));
                }
            }
            return bound;
        }
    }

    /**
     * How far a side runs on beyond an end of a contact.
     *
     * @param above whether the air beside the joint lies over its height
     */
    private record Run(SizeSum length, boolean above, List<Beside> beside) {
        FigureBound over(ChoiceBox box) {
            Range run = length.over(box);
            boolean surely = run.least() > SLACK;
            for (Beside one : beside) {
                surely = surely && (above ? one.freeAbove(box) : one.freeBelow(box));
            }
            return surely ? new FigureBound(0, run.most() + SLACK) : FigureBound.UNKNOWN;
        }
    }
}
