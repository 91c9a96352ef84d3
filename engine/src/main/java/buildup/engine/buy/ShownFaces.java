package buildup.engine.buy;

import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.block.LooseBlocks;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The area that shows of each piece. A true segment of the room-side walk that lies so far out runs as long as the stick
 * there; the length of a mitered stick grows evenly with the projection, so that the area swept is exactly the segment's
 * length by the stick's length at the segment's centroid (the theorem of Pappus for a straight path, mitered at its ends).
 * Where only some pieces run, past an opening or on a stretch that does not carry all, the walk is that of those pieces.
 */
final class ShownFaces {
    private final Section section;
    private final Job job;
    private final Map<Set<String>, Map<String, List<Segment>>> walks = new HashMap<>();

    private ShownFaces(Section section, Job job) {
        this.section = section;
        this.job = job;
    }

    /** One for each run and piece that shows on it. */
    static List<FaceArea> of(Section section, Job job) {
        ShownFaces shown = new ShownFaces(section, job);
        List<FaceArea> all = new ArrayList<>();
        for (int run = 0; run < job.plan().runs().size(); run++) {
            for (int body = 0; body < section.bodies().size(); body++) {
                FaceArea area = shown.of(run, body);
                if (area.area() > Tolerance.LEAST_VOID_AREA) {
                    all.add(area);
                }
            }
            all.addAll(ofBlocks(job, run));
        }
        return List.copyOf(all);
    }

    /** One for each kind of block on a run. */
    private static List<FaceArea> ofBlocks(Job job, int run) {
        Map<LooseBlock.Kind, Double> shown = new EnumMap<>(LooseBlock.Kind.class);
        LooseBlocks.of(job, run).forEach(block -> shown.merge(block.kind(), block.shown(), Double::sum));
        return shown.entrySet().stream()
                .map(own -> new FaceArea(run, own.getKey().body(), own.getValue(), 0))
                .toList();
    }

    private FaceArea of(int run, int body) {
        double faces = 0;
        double ends = 0;
        for (Fit fit : job.fits()) {
            if (fit.run() == run && fit.course().body() == body) {
                faces += fit.selfReturn() ? ofReturn(fit) : ofStick(fit);
                ends += ends(fit);
            }
        }
        return new FaceArea(run, body, faces, ends);
    }

    private double ofReturn(Fit fit) {
        Set<String> there = new TreeSet<>();
        job.fits().stream()
                .filter(other -> other.run() == fit.run()
                        && (!other.course().trim() || other.stretch().equals(fit.stretch())))
                .forEach(other -> there.add(other.course().name()));
        return walk(there, fit).stream()
                .mapToDouble(segment -> segment.length() * fit.at(across(fit, segment)))
                .sum();
    }

    private double ofStick(Fit fit) {
        List<Fit> beside = job.fits().stream()
                .filter(other -> !other.selfReturn()
                        && other.run() == fit.run()
                        && other.frame().equals(fit.frame()))
                .toList();
        double from = fit.start();
        double to = fit.start() + fit.wall();
        TreeSet<Double> cuts = new TreeSet<>(Set.of(from, to));
        beside.forEach(other -> cuts.addAll(List.of(other.start(), other.start() + other.wall())));
        double area = 0;
        List<Double> places =
                cuts.stream().filter(cut -> cut >= from && cut <= to).toList();
        for (int i = 1; i < places.size(); i++) {
            double left = places.get(i - 1);
            double right = places.get(i);
            Set<String> there = beside.stream()
                    .filter(other -> other.start() < right - Tolerance.TOUCHING
                            && other.start() + other.wall() > left + Tolerance.TOUCHING)
                    .map(other -> other.course().name())
                    .collect(Collectors.toCollection(TreeSet::new));
            boolean first = i == 1;
            boolean last = i == places.size() - 1;
            for (Segment segment : right - left < Tolerance.TOUCHING ? List.<Segment>of() : walk(there, fit)) {
                double across = across(fit, segment);
                double length = right
                        - left
                        + (first ? fit.seenPast(Hand.LEFT, across) : 0)
                        + (last ? fit.seenPast(Hand.RIGHT, across) : 0);
                area += segment.length() * length;
            }
        }
        return area;
    }

    /** What shows of a piece in section where these pieces are put up, the framing standing behind. */
    List<Segment> walk(Set<String> there, Fit fit) {
        return walks.computeIfAbsent(there, this::walks)
                .getOrDefault(fit.course().name(), List.of());
    }

    private Map<String, List<Segment>> walks(Set<String> there) {
        List<Placed> placed = section.bodies().stream()
                .filter(body -> body.framing() || there.contains(body.name()))
                .flatMap(body -> body.placed().stream())
                .toList();
        boolean all = placed.size() == section.pieces().size();
        Section some = all ? section : Composer.unjudged(section.stack(), placed);
        Map<String, List<Segment>> walk = new HashMap<>();
        for (Member member : some.members()) {
            walk.computeIfAbsent(some.name(member.body()), name -> new ArrayList<>())
                    .addAll(member.segments());
        }
        return walk;
    }

    /** How far out on its stick the centroid of a segment lies. */
    private static double across(Fit fit, Segment segment) {
        Point centroid = centroid(segment);
        return fit.course().turned() ? centroid.y() : centroid.x();
    }

    /** The centroid of a line is its middle; that of an arc lies R sin(a) / a from the center, a half its sweep. */
    static Point centroid(Segment segment) {
        if (segment instanceof Arc arc) {
            double half = Math.abs(arc.sweep()) / 2;
            Point middle = arc.at(0.5).minus(arc.center());
            return arc.center().plus(middle.times(Math.sin(half) / half));
        }
        return segment.at(0.5);
    }

    private double ends(Fit fit) {
        Body body = section.body(fit.course().body());
        if (!body.trim() || fit.selfReturn()) {
            return 0;
        }
        double ends = 0;
        for (Hand hand : Hand.values()) {
            if (fit.cut(hand).kind() == EndCut.Kind.SQUARE && !returned(job, fit, hand)) {
                ends += body.outline().area();
            }
        }
        return ends;
    }

    /** Whether a return of its own covers an end of a stick. */
    static boolean returned(Job job, Fit fit, Hand hand) {
        String name = fit.stretch() + ", " + hand.word() + " return";
        return job.fits().stream()
                .anyMatch(other -> other.selfReturn()
                        && other.run() == fit.run()
                        && other.course().body() == fit.course().body()
                        && other.stretch().equals(name));
    }
}
