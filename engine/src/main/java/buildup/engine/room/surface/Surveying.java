package buildup.engine.room.surface;

import buildup.engine.room.plan.Measured;
import buildup.engine.room.plan.MeasuredRoom;
import buildup.engine.room.plan.Station;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Asks what the room as it was measured leaves along the runs of a job. */
public final class Surveying {
    /** Two measures of one ceiling at one corner may differ by this, in: what a tape and a level repeat; no source. */
    private static final double SAME_HEIGHT = 0.125;

    /** Half of the 1/16 to which a tape is read, in. */
    private static final double LEAST_HUMP = 1.0 / 32;

    private final Section section;
    private final Job job;
    private final Notices notices;
    private final List<GapAlong> gaps = new ArrayList<>();
    /** Of pieces that stand back from the one that comes nearest. */
    private final List<GapAlong> behind = new ArrayList<>();

    private Surveying(Section section, Job job, Notices notices) {
        this.section = section;
        this.job = job;
        this.notices = notices;
    }

    /** What is left along each stretch, with notices for what clashes; nothing without a plan or measures. */
    public static Surfaced of(Section section, Optional<Job> job, Notices notices) {
        if (job.isEmpty()) {
            return Surfaced.NOTHING;
        }
        Surveying surveying = new Surveying(section, job.get(), notices);
        surveying.look();
        List<Remedy> ways = surveying.gaps.stream()
                .flatMap(gap -> Remedies.of(gap).stream())
                .toList();
        return new Surfaced(
                surveying.gaps,
                ways,
                CrownRolling.of(section, surveying.underCeilings()),
                CrownTilting.of(section, job.get()));
    }

    private void look() {
        for (int i = 0; i < job.plan().runs().size(); i++) {
            WallRun run = job.plan().runs().get(i);
            // the edges of an opening are no stretches of wall
            for (int j = 0; j < (run.opening() ? 0 : run.stretches().size()); j++) {
                Stretch stretch = run.stretches().get(j);
                List<Fit> fits = fits(i, job.frames().get(i).get(j));
                MeasuredRoom measured = stretch.surfaces();
                measured.ceiling().ifPresent(found -> gaps.addAll(along(run, stretch, fits, Surface.CEILING, found)));
                measured.floor().ifPresent(found -> gaps.addAll(along(run, stretch, fits, Surface.FLOOR, found)));
                measured.wall().ifPresent(found -> gaps.addAll(along(run, stretch, fits, Surface.WALL, found)));
                if (stretch.corner().isPresent()) {
                    Stretch next = run.after(j);
                    agree(
                            stretch,
                            next,
                            "ceiling",
                            stretch.surfaces().ceiling(),
                            next.surfaces().ceiling());
                    agree(
                            stretch,
                            next,
                            "floor",
                            stretch.surfaces().floor(),
                            next.surfaces().floor());
                }
            }
        }
        clashes();
    }

    /**
     * The gaps under ceilings; a stretch that is not measured, of a run that is measured elsewhere, has the ceiling of the
     * section over it.
     */
    private List<GapAlong> underCeilings() {
        List<GapAlong> all = new ArrayList<>(gaps);
        OptionalDouble even = section.stack().space().ceiling();
        for (int i = 0; i < job.plan().runs().size() && even.isPresent(); i++) {
            WallRun run = job.plan().runs().get(i);
            boolean some = run.stretches().stream()
                    .anyMatch(stretch -> stretch.surfaces().ceiling().isPresent());
            for (int j = 0; j < (some && !run.opening() ? run.stretches().size() : 0); j++) {
                Stretch stretch = run.stretches().get(j);
                if (stretch.surfaces().ceiling().isEmpty()) {
                    Measured level = new Measured(List.of(new Station(0, even.getAsDouble())));
                    all.addAll(along(run, stretch, fits(i, job.frames().get(i).get(j)), Surface.CEILING, level));
                }
            }
        }
        return all;
    }

    private List<Fit> fits(int run, Frame frame) {
        return job.fits().stream()
                .filter(fit -> fit.run() == run && fit.frame().equals(frame) && !fit.selfReturn())
                .toList();
    }

    private List<GapAlong> along(WallRun run, Stretch stretch, List<Fit> fits, Surface surface, Measured measured) {
        Space space = section.stack().space();
        ToDoubleFunction<Fit> near = switch (surface) {
            case CEILING -> fit -> space.reach(section.body(fit.course().body()).outline());
            case FLOOR -> fit -> -fit.course().box().bottom();
            // whatever stands off the wall plane as drawn does not meet it
            case WALL -> fit -> -fit.course().back();
        };
        Optional<Course> nearest = fits.stream()
                .max(Comparator.comparingDouble(near)
                        .thenComparing(fit -> fit.course().trim()))
                .map(Fit::course);
        List<GapAlong> found = new ArrayList<>();
        for (Fit fit : fits) {
            if (meets(surface, fit)) {
                double level = surface == Surface.CEILING ? near.applyAsDouble(fit) : -near.applyAsDouble(fit);
                double sign = surface == Surface.CEILING ? 1 : -1;
                double from = Math.max(0, fit.start());
                double to = Math.min(stretch.length(), fit.start() + fit.wall());
                Measured gap = measured.between(from, to).from(level, sign);
                boolean first = nearest.filter(fit.course()::equals).isPresent();
                (first ? found : behind)
                        .add(new GapAlong(run.name(), fit.stretch(), surface, fit, gap, stretch.mark()));
            }
        }
        return found;
    }

    /** A wall is met by what is drawn on it alone. */
    private static boolean meets(Surface surface, Fit fit) {
        return surface != Surface.WALL || Math.abs(fit.course().back()) <= Tolerance.TOUCHING;
    }

    private void agree(Stretch one, Stretch next, String what, Optional<Measured> left, Optional<Measured> right) {
        if (left.isEmpty() || right.isEmpty()) {
            return;
        }
        double ends = left.get().at(one.length());
        double begins = right.get().at(0);
        if (Math.abs(ends - begins) > SAME_HEIGHT + Tolerance.COINCIDENT) {
            notices.add(SurfaceNotices.HEIGHTS_DISAGREE
                    .with("surface", what)
                    .with("stretch", one.name())
                    .with("next", next.name())
                    .with("one", Figure.length(ends))
                    .with("other", Figure.length(begins))
                    .at(next.mark())
                    .amount(Figure.length(Math.abs(ends - begins))));
        }
    }

    /** A wall bears a hump that no tape tells. */
    private static boolean isTold(GapAlong gap) {
        return gap.surface() != Surface.WALL || -gap.least().amount() >= LEAST_HUMP;
    }

    /** Every clash, the deepest first: what clears that one clears them all. */
    private void clashes() {
        List<GapAlong> deepest = gaps.stream()
                .filter(GapAlong::clashes)
                .filter(Surveying::isTold)
                .sorted(Comparator.comparingDouble(gap -> gap.least().amount()))
                .toList();
        Set<Surface> begun = EnumSet.noneOf(Surface.class);
        boolean pinched = Stream.of(Surface.CEILING, Surface.FLOOR)
                .allMatch(surface -> deepest.stream().anyMatch(gap -> gap.surface() == surface));
        for (GapAlong gap : deepest) {
            Notice clash = clash(gap);
            if (gap.surface() == Surface.WALL) {
                notices.add(clash);
                continue;
            }
            Cure scribe = Cure.of(
                    (gap.surface() == Surface.CEILING ? SurfaceNotices.SCRIBE_TOP : SurfaceNotices.SCRIBE_BOTTOM)
                            .with("what", scribed(gap)));
            Optional<Cure> moved = begun.add(gap.surface()) && !pinched
                    ? moved(gap).map(cure -> cure.or(List.of(scribe)))
                    : Optional.empty();
            notices.add(clash.cure(moved.orElse(scribe)));
        }
    }

    /** The whole stack moved clear of the surface. */
    private Optional<Cure> moved(GapAlong gap) {
        Figure by = by(gap);
        double up = (gap.surface() == Surface.CEILING ? -1 : 1) * by.amount();
        return Mending.of(section.stack())
                .wholeMoved(Axis.UP, up, by)
                .map(mending -> new Cure(
                        (gap.surface() == Surface.CEILING ? SurfaceNotices.LOWER : SurfaceNotices.RAISE)
                                .with("what", scribed(gap)),
                        mending.changes()));
    }

    /** What else clashes with the same surface on the same stretch: the deepest place of each piece. */
    private List<GapAlong> others(GapAlong gap) {
        Map<String, GapAlong> others = new LinkedHashMap<>();
        behind.stream()
                .filter(other -> other.surface() == gap.surface() && other.clashes())
                .filter(other ->
                        other.run().equals(gap.run()) && other.stretch().equals(gap.stretch()))
                .sorted(Comparator.comparingDouble(other -> other.least().amount()))
                .forEach(other -> others.putIfAbsent(other.fit().course().name(), other));
        return List.copyOf(others.values());
    }

    private Phrase scribed(GapAlong gap) {
        List<String> names = Stream.concat(Stream.of(gap), others(gap).stream())
                .map(one -> "'" + one.fit().course().name() + "'")
                .toList();
        return (names.size() == 1 ? SurfaceNotices.ITS : SurfaceNotices.SEVERAL.with("pieces", Listing.names(names)))
                .with("side", gap.surface() == Surface.CEILING ? "top" : "bottom");
    }

    private Phrase intoOthers(GapAlong gap) {
        List<Phrase> into = others(gap).stream()
                .map(other -> SurfaceNotices.INTO
                        .with("by", by(other))
                        .with("other", other.fit().course().name()))
                .toList();
        return into.isEmpty() ? Phrase.of("") : SurfaceNotices.INTO_OTHERS.with("into", Listing.and(into));
    }

    private static Figure by(GapAlong gap) {
        return Figure.atLeast(-gap.least().amount());
    }

    private Notice clash(GapAlong gap) {
        return (gap.surface() == Surface.CEILING
                        ? SurfaceNotices.CEILING_TOO_LOW
                        : gap.surface() == Surface.FLOOR ? SurfaceNotices.FLOOR_TOO_HIGH : SurfaceNotices.WALL_HUMPS)
                .with("stretch", gap.stretch())
                .with("along", Figure.length(gap.least().along()))
                .with("by", by(gap))
                .with("over", Figure.length(gap.gap().lengthBelow()))
                .with("others", intoOthers(gap))
                .at(gap.mark())
                .of(gap.fit().course().name())
                .amount(Figure.length(-gap.least().amount()));
    }
}
