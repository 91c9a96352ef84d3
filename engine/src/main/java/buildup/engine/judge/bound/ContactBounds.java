package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.section.stack.Axis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bounds of the lengths of contacts: where the top of one piece lies under another, which it carries, or its face behind
 * another, which it backs, each along one straight side, there is a contact as long as what the two sides share.
 */
final class ContactBounds {
    private final List<PlacedForms> pieces;

    ContactBounds(List<PlacedForms> pieces) {
        this.pieces = pieces;
    }

    /**
     * The lengths of the contacts of two pieces.
     *
     * @param holds the one that holds; absent for whichever does
     * @param held the other; absent for whichever it is
     */
    Optional<Bounder> of(Optional<String> holds, Optional<String> held) {
        List<FaceMeeting> meetings = new ArrayList<>();
        for (PlacedForms one : pieces) {
            for (PlacedForms other : pieces) {
                if (!one.name().equals(other.name())
                        && (one.inStack() || other.inStack())
                        && holds.map(one.name()::equals).orElse(true)
                        && held.map(other.name()::equals).orElse(true)) {
                    for (Axis across : Axis.values()) {
                        one.flat(across, true)
                                .ifPresent(mine -> other.flat(across, false)
                                        .ifPresent(its -> meetings.add(
                                                new FaceMeeting(one, other, across, true, mine, its, pieces))));
                    }
                }
            }
        }
        return meetings.isEmpty()
                ? Optional.empty()
                : Optional.of(box -> {
                    FigureBound bound = FigureBound.UNKNOWN;
                    for (FaceMeeting meeting : meetings) {
                        if (meeting.isThere(box)) {
                            Range length = meeting.length(box);
                            bound = bound.and(new FigureBound(
                                    length.least() - FaceMeeting.SLACK, length.most() + FaceMeeting.SLACK));
                        }
                    }
                    return bound;
                });
    }
}
