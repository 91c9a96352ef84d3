package buildup.engine.hold.support;

import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.fixing.Joint;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds each fastening that could keep a leaning group against what that takes; moments about the end it leans over. */
public final class Pulls {
    private Pulls() {}

    /**
     * One row for each group on a carrier that leans and each fastening that ties it back; where none suffices, the one
     * that comes nearest is said.
     */
    public static List<Pull> of(Section section, Support support, List<Fixed> fastenings, Notices notices) {
        List<Pull> pulls = new ArrayList<>();
        for (Balance balance : support.balances()) {
            if (balance.carrier() && !balance.stands()) {
                List<Pull> own = new ArrayList<>();
                for (Fixed fixed : fastenings) {
                    for (Joint joint : fixed.joints()) {
                        if (balance.group().contains(joint.near())
                                && !balance.group().contains(joint.far())) {
                            pull(balance, fixed, joint).ifPresent(own::add);
                        }
                    }
                }
                if (own.stream().noneMatch(Pull::holds)) {
                    own.stream()
                            .max(Comparator.comparingDouble(pull -> pull.allowable() / pull.needed()))
                            .ifPresent(best -> notices.add(fails(section, best)));
                }
                pulls.addAll(own);
            }
        }
        return List.copyOf(pulls);
    }

    private static Optional<Pull> pull(Balance balance, Fixed fixed, Joint joint) {
        boolean outward = balance.loaded() > balance.bearingFace();
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
                joint.withdrawalPerFoot(),
                joint.bite(),
                fixed.biteFor(joint.far(), needed),
                fixed.biteCheck().needs()));
    }

    private static Notice fails(Section section, Pull pull) {
        String name = pull.fixed().fastening().name();
        String far = section.name(pull.far());
        String forLoad = pull.biteForLoad().isPresent()
                ? "the pull needs "
                        + LengthPrinter.decimals(
                                Length.inches(pull.biteForLoad().getAsDouble()), 3)
                : "no bite there would do";
        Length needs = LengthPrinter.roundUp(Length.inches(pull.biteNeeded()), 16);
        return Notice.problem(
                        "nail-too-short",
                        "'" + name + "' may hold " + decimals(pull.allowable()) + " lb a foot; what stands on '"
                                + section.name(pull.balance().body()) + "' needs " + decimals(pull.needed())
                                + ". Only " + LengthPrinter.sixteenths(Length.inches(pull.bite())) + " is left in the "
                                + far + ": " + forLoad + ", the rule for its kind "
                                + LengthPrinter.decimals(Length.inches(pull.biteByRule()), 3) + ".")
                .at(pull.fixed().fastening().mark())
                .of(pull.fixed().fastening().piece())
                .amount(Length.inches(pull.biteNeeded() - pull.bite()))
                .cure("Take a nail or screw that leaves " + LengthPrinter.sixteenths(needs)
                        + " in it, more of them, a wider bearing, or run a board back over the framing.");
    }

    private static String decimals(double value) {
        return LengthPrinter.decimals(Length.inches(value), 2);
    }
}
