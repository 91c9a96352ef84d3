package buildup.engine.mill.nearest;

import buildup.profiles.outline.Point;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is found, in the words of the bench; three decimals, since a plane is set by them. */
public final class Wording {
    /** Below this, steel and paper both show nothing, in. */
    private static final double NOTHING = 0.0005;

    private Wording() {}

    /** The answer in a sentence. */
    public static String answer(Neighbours nearest) {
        return nearest.use()
                .map(one -> one.profile().name() + ": " + sentence(one.advice()))
                .orElseGet(() -> nearest.list().stream()
                        .findFirst()
                        .map(one -> "None of these holds it. " + one.profile().name() + " comes nearest: "
                                + sentence(one.advice()))
                        .orElse("The catalog holds no other profile."));
    }

    /** How it is laid, in words. */
    public static String laid(Pose pose) {
        List<String> words = new ArrayList<>();
        double turn = ((pose.turn() % 360) + 360) % 360;
        boolean ends = pose.over() && Math.abs(turn - 180) < NOTHING;
        if (ends) {
            words.add("end for end");
        } else {
            if (pose.over()) {
                words.add("flipped over");
            }
            if (turn > NOTHING && turn < 360 - NOTHING) {
                words.add("turned "
                        + LengthPrinter.decimals(Length.inches(turn), 1).replaceAll("\\.0$", "") + "\u00B0");
            }
        }
        if (Math.abs(pose.scale() - 1) > NOTHING) {
            words.add("at " + inches(pose.scale()) + " of its size");
        }
        return words.isEmpty() ? "as drawn" : String.join(", ", words);
    }

    /** What to do with it. */
    public static String sentence(Advice advice) {
        if (advice instanceof Advice.AsItIs asItIs) {
            return "Use this one as it is" + (asItIs.off() > NOTHING ? ": " + off(asItIs.off()) : "") + ".";
        }
        if (advice instanceof Advice.Plane plane) {
            return plane.cuts().stream()
                            .map(cut -> inches(cut.amount()) + " off its " + side(cut))
                            .collect(Collectors.joining(" and ", "Use this one and plane ", ""))
                    + (plane.off() > NOTHING ? "; then " + off(plane.off()) : "")
                    + ".";
        }
        if (advice instanceof Advice.Covers covers) {
            return "Run it from this one, which covers it all round: " + inches(covers.area())
                    + " sq in come off, up to " + inches(covers.deepest()) + " deep.";
        }
        Advice.TooSmall small = (Advice.TooSmall) advice;
        return "Too small by " + inches(small.by()) + ", at " + place(small.at()) + ".";
    }

    private static String off(double inches) {
        return "nowhere more than " + inches(inches) + " off";
    }

    private static String place(Point at) {
        return inches(at.x()) + " out and " + inches(at.y()) + " up";
    }

    private static String inches(double inches) {
        return LengthPrinter.decimals(Length.inches(inches), 3);
    }

    private static String side(Advice.Off cut) {
        return cut.side().name().toLowerCase(Locale.ROOT);
    }
}
