package buildup.engine.hold.support;

import buildup.engine.hold.framing.Landed;
import buildup.engine.hold.framing.Landing;
import buildup.engine.hold.framing.LandingCures;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Asks whether a stack that stands by its rows also stands where some of their nails go between studs. */
final class BetweenStuds {
    /** What holds it on one stretch. */
    private record There(Landed landed, Support support) {
        /** 0 falls, 1 stands once a gap has closed, 2 stands. */
        int rank() {
            return switch (support.whole().answer()) {
                case NO -> 0;
                case TRUST -> 1;
                case STANDS -> 2;
            };
        }

        double factor() {
            return support.whole().factor().orElse(Double.POSITIVE_INFINITY);
        }
    }

    private BetweenStuds() {}

    /**
     * What holds it on the worst of some stretches; absent when no nail misses.
     *
     * @param notices told why it falls there
     */
    static Optional<Support> worst(
            Section section, List<Load> loads, List<Landed> landed, OptionalDouble friction, Notices notices) {
        Optional<There> worst = landed.stream()
                .map(there -> new There(there, Supports.of(section, loads, Ties.of(there.rows()), friction)))
                .min(Comparator.comparingInt(There::rank).thenComparingDouble(There::factor));
        worst.ifPresent(there -> say(section, there, notices));
        return worst.map(There::support);
    }

    private static void say(Section section, There there, Notices notices) {
        if (there.support().whole().answer() == Answer.NO) {
            notices.add(falls(section, there));
        } else {
            SupportFaults.say(section, there.support(), Optional.empty(), notices);
        }
    }

    private static Notice falls(Section section, There there) {
        List<Landing> missing = there.landed().missing();
        Landing worst = missing.get(0);
        Fall fall = there.support().whole().falls().get(0);
        return SupportNotices.FALLS_BETWEEN_STUDS
                .with("stretch", worst.stretch())
                .with("loads", Phrase.of(there.support().whole().underLoad() ? " under its loads" : ""))
                .with("row", worst.fixed().fastening().name())
                .with("landed", Figure.count(worst.landed()))
                .with("of", Figure.count(worst.places().size()))
                .with("framing", worst.into() == Landing.Into.JOISTS ? "joist" : "stud")
                .with("motion", FallWords.of(section, fall))
                .at(worst.fixed().fastening().mark())
                .of(section.name(worst.fixed().piece()))
                .cure(LandingCures.of(missing));
    }
}
