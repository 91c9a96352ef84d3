package buildup.engine.room.cope;

import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.CopeSide;
import buildup.engine.room.run.CopeSides;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Asks how the copes of a job are cut. The coped end is a part of the face that it is laid over, so along the joint the
 * wood lies between the stick's own face and that of the other: with the face's normal n (out and up, of length 1) and
 * the corner's inside angle C, its angle is acos(ny^2 - nx^2 cos C). An upright face leaves 180 less C, 90 at a square
 * corner; a face that leans by S from upright leaves acos(sin^2 S) there.
 */
public final class Copes {
    /** A face within this of level, as the share of its run that goes out, is flush with the other stick's: 5 degrees. */
    private static final double LEVEL = Math.cos(Math.toRadians(5));

    private Copes() {}

    /** One for each coped end, with a notice for each piece whose edge becomes too thin. */
    public static List<Cope> of(Section section, Optional<Job> job, Notices notices) {
        List<Cope> all = new ArrayList<>();
        job.ifPresent(known -> known.fits().forEach(fit -> {
            for (Hand hand : Hand.values()) {
                if (fit.cut(hand).kind() == EndCut.Kind.COPE) {
                    cope(section, known, fit, hand).ifPresent(all::add);
                }
            }
        }));
        say(all, notices);
        return List.copyOf(all);
    }

    private static Optional<Cope> cope(Section section, Job job, Fit fit, Hand hand) {
        WallRun run = job.plan().runs().get(fit.run());
        List<Frame> frames = job.frames().get(fit.run());
        int own = frames.indexOf(fit.frame());
        int corner = hand == Hand.RIGHT ? own : Math.floorMod(own - 1, frames.size());
        int other = hand == Hand.RIGHT ? (own + 1) % frames.size() : corner;
        Optional<CopeSide> side = CopeSides.at(run, frames, corner);
        return side.map(chosen -> new Cope(
                run.name(),
                fit.stretch(),
                run.stretches().get(other).name(),
                fit,
                hand == Hand.RIGHT,
                chosen,
                fit.cut(hand).corner(),
                edge(section, fit.course().body(), fit.cut(hand).corner())));
    }

    /** The sharpest edge along the faces that show, degrees; curves are taken by their chords. */
    static double edge(Section section, int body, double corner) {
        double cos = Math.cos(Math.toRadians(corner));
        double least = 180 - corner;
        for (Segment segment : section.members().stream()
                .filter(member -> member.body() == body)
                .flatMap(member -> member.segments().stream())
                .toList()) {
            Point chord = segment.to().minus(segment.from()).unit();
            double out = chord.x() * chord.x();
            if (Math.abs(chord.x()) < LEVEL) {
                double angle = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, out - (1 - out) * cos))));
                least = Math.min(least, angle);
            }
        }
        return least;
    }

    private static void say(List<Cope> copes, Notices notices) {
        Set<String> said = new HashSet<>();
        for (Cope cope : copes) {
            if (cope.thin() && said.add(cope.fit().course().name() + " " + cope.corner())) {
                notices.add(CopeNotices.THIN
                        .with("corner", Figure.angle(cope.corner()))
                        .with("stretch", cope.stretch())
                        .with("least", Figure.angle(Cope.THIN))
                        .of(cope.fit().course().name())
                        .amount(Figure.angle(cope.edge())));
            }
        }
    }
}
