package buildup.engine.hold.support;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Holds each fastening that could keep a leaning group against what that takes; moments about the end it leans over. */
public final class Pulls {
    private Pulls() {}

    /**
     * One row for each group that leans and each fastening that ties it back; of a group that nothing keeps, the fastening
     * that comes nearest is said.
     */
    public static List<Pull> of(Section section, Support support, List<Fixed> fastenings, Notices notices) {
        List<Pull> pulls = new ArrayList<>();
        for (Balance balance : support.leaning()) {
            List<Pull> own = new ArrayList<>();
            for (Fixed fixed : fastenings) {
                for (Joint joint : fixed.joints()) {
                    if (balance.group().contains(joint.near())
                            && !balance.group().contains(joint.far())) {
                        pull(balance, fixed, joint).ifPresent(own::add);
                    }
                }
            }
            if (!balance.stands() && own.stream().noneMatch(Pull::holds)) {
                own.stream()
                        .max(Comparator.comparingDouble(pull -> pull.allowable() / pull.needed()))
                        .ifPresent(best -> notices.add(fails(section, best)));
            }
            pulls.addAll(own);
        }
        return List.copyOf(pulls);
    }

    private static Optional<Pull> pull(Balance balance, Fixed fixed, Joint joint) {
        boolean outward = balance.outward();
        Point pivot = new Point(outward ? balance.bearingFace() : balance.bearingBack(), balance.level());
        Point arm = fixed.head().minus(pivot);
        // the nail pulls the group along its own way; the group turns clockwise when it leans out
        double lever = outward ? arm.cross(fixed.way()) : -arm.cross(fixed.way());
        if (lever <= Tolerance.TOUCHING) {
            return Optional.empty();
        }
        double needed = balance.overturning() / lever;
        return Optional.of(new Pull(
                balance,
                fixed,
                joint.far(),
                needed,
                joint.pullPerFoot(),
                joint.bite(),
                joint.headPerFoot() < needed ? OptionalDouble.empty() : fixed.biteFor(joint.far(), needed),
                fixed.biteCheck().needs()));
    }

    private static Notice fails(Section section, Pull pull) {
        return SupportNotices.HOLDS_TOO_LITTLE
                .with("fastening", pull.fixed().fastening().name())
                .with("may", Figure.lineForce(pull.allowable()))
                .with("group", FallWords.names(section, pull.balance().group()))
                .with("need", pull.balance().group().size() == 1 ? "needs" : "need")
                .with("needs", Figure.lineForce(pull.needed()))
                .with("bite", Figure.atMost(pull.bite()))
                .with("far", section.name(pull.far()))
                .with("forPull", forPull(pull))
                .with("byRule", Figure.fine(pull.biteByRule()))
                .at(pull.fixed().fastening().mark())
                .of(pull.fixed().fastening().piece())
                .amount(Figure.length(pull.biteNeeded() - pull.bite()));
    }

    /** A bite longer than the longest of its kind is none. */
    private static Phrase forPull(Pull pull) {
        double longest = pull.fixed().fastening().use().fastener().lengths().stream()
                .mapToDouble(length -> length.toInches())
                .max()
                .orElse(0);
        double needed = pull.biteForLoad().orElse(Double.POSITIVE_INFINITY);
        return needed > longest
                ? Phrase.of("no bite there would do")
                : Phrase.of("the pull needs {forPull}").with("forPull", Figure.fine(needed));
    }
}
