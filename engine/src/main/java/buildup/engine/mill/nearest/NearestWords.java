package buildup.engine.mill.nearest;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is found, in the words of the bench; in thousandths, since a plane is set by them. */
public final class NearestWords {
    /** A turn that is printed as none, degrees. */
    private static final double LEAST_TURN = 0.05;

    private static final Rounding THOUSANDTHS = Rounding.decimals(3);

    private static final Phrase ANSWER = Phrase.of("{profile}: {advice}");
    private static final Phrase NONE =
            Phrase.of("No listed profile contains it; closest {profile}, short by {by}, at {x} out and {y} up.");
    private static final Phrase NO_OTHER = Phrase.of("The catalog holds no other profile.");

    private static final Phrase AS_DRAWN = Phrase.of("as drawn");
    private static final Phrase END_FOR_END = Phrase.of("end for end");
    private static final Phrase FLIPPED = Phrase.of("flipped over");
    private static final Phrase TURNED = Phrase.of("turned {turn}");
    private static final Phrase SCALED = Phrase.of("at {scale} of its size");

    private static final Phrase AS_IT_IS = Phrase.of("Use this one as it is.");
    private static final Phrase NEARLY_AS_IT_IS = Phrase.of("Use this one as it is: nowhere more than {off} off.");
    private static final Phrase PLANE = Phrase.of("Use this one and plane {cuts}.");
    private static final Phrase NEARLY_PLANED =
            Phrase.of("Use this one and plane {cuts}; then nowhere more than {off} off.");
    private static final Phrase CUT = Phrase.of("{amount} off its {side}");
    private static final Phrase COVERS =
            Phrase.of("Run it from this one, which covers it all round: {area} come off, up to {deepest} deep.");
    private static final Phrase ANEW = Phrase.of("{profile} at {scale} of its size: mill anew{off}.");
    private static final Phrase NOT_THE_SAME =
            Phrase.of("No listed profile is the same; closest {profile} at {scale} of its size, {off} off at most.");
    private static final Phrase MILL_ANEW = Phrase.of("At {scale} of its size: mill anew{off}.");
    private static final Phrase OFF = Phrase.of("; nowhere more than {off} off");
    private static final Phrase FAR_OFF = Phrase.of("; {off} off at most");
    private static final Phrase TOO_SMALL = Phrase.of("Short by {by}, at {x} out and {y} up.");

    private NearestWords() {}

    /** The answer in a sentence. */
    public static Phrase answer(Neighbors nearest) {
        return nearest.use()
                .map(NearestWords::served)
                .or(() -> nearest.list().stream().findFirst().map(NearestWords::closest))
                .orElse(NO_OTHER);
    }

    private static Phrase served(Neighbor one) {
        Phrase answer = one.advice() instanceof Advice.Anew anew
                ? sized(ANEW, anew).with("off", off(anew))
                : ANSWER.with("advice", sentence(one.advice()));
        return answer.with("profile", one.profile().name());
    }

    private static Phrase closest(Neighbor one) {
        Phrase answer = one.advice() instanceof Advice.Anew anew
                ? sized(NOT_THE_SAME, anew).with("off", Figure.fine(anew.off()))
                : tooSmall(NONE, one.advice());
        return answer.with("profile", one.profile().name());
    }

    private static Phrase sized(Phrase words, Advice.Anew anew) {
        return words.with("scale", Figure.percent(anew.scale()));
    }

    private static Phrase off(Advice.Anew anew) {
        if (anew.off() <= Tolerance.TOUCHING) {
            return Phrase.of("");
        }
        return (anew.serves() ? OFF : FAR_OFF).with("off", Figure.fine(anew.off()));
    }

    /** How it is laid, in words. */
    public static Phrase laid(Pose pose) {
        List<Phrase> words = new ArrayList<>();
        double turn = pose.turned();
        if (pose.over() && 180 - Math.abs(turn) < Tolerance.STEEL) {
            words.add(END_FOR_END);
        } else {
            if (pose.over()) {
                words.add(FLIPPED);
            }
            if (Math.abs(turn) >= LEAST_TURN) {
                words.add(TURNED.with("turn", Figure.angle(turn)));
            }
        }
        if (pose.isScaled()) {
            words.add(SCALED.with("scale", Figure.percent(pose.scale())));
        }
        return words.isEmpty() ? AS_DRAWN : Phrase.of("{words}").with("words", Listing.commas(words));
    }

    /** What to do with it. */
    public static Phrase sentence(Advice advice) {
        if (advice instanceof Advice.AsItIs asItIs) {
            return (asItIs.off() > Tolerance.STEEL ? NEARLY_AS_IT_IS : AS_IT_IS).with("off", Figure.fine(asItIs.off()));
        }
        if (advice instanceof Advice.Plane plane) {
            return (plane.off() > Tolerance.STEEL ? NEARLY_PLANED : PLANE)
                    .with(
                            "cuts",
                            Listing.and(
                                    plane.cuts().stream().map(NearestWords::cut).toList()))
                    .with("off", Figure.fine(plane.off()));
        }
        if (advice instanceof Advice.Covers covers) {
            return COVERS.with("area", Figure.area(covers.area()).rounded(THOUSANDTHS))
                    .with("deepest", Figure.fine(covers.deepest()));
        }
        if (advice instanceof Advice.Anew anew) {
            return sized(MILL_ANEW, anew).with("off", off(anew));
        }
        return tooSmall(TOO_SMALL, advice);
    }

    private static Phrase tooSmall(Phrase words, Advice advice) {
        Advice.TooSmall small = (Advice.TooSmall) advice;
        Point at = small.at();
        return words.with("by", Figure.fine(small.by()))
                .with("x", Figure.fine(at.x()))
                .with("y", Figure.fine(at.y()));
    }

    private static Phrase cut(Advice.Off cut) {
        return CUT.with("amount", Figure.fine(cut.amount()))
                .with("side", cut.side().name().toLowerCase(Locale.ROOT));
    }
}
