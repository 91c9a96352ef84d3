package buildup.engine.hold.support;

import buildup.engine.hold.statics.Force;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Mechanism.Movement;
import buildup.engine.hold.statics.Mechanism.Shift;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.hold.support.Fall.Part;
import buildup.engine.hold.support.Fall.Stop;
import buildup.engine.hold.support.Fall.Way;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Says of a motion in numbers which pieces move as one, about which edge, and what stops them. */
final class Falls {
    /** An edge this near to the center of a turn is the one that it turns on, in; across a gap that has closed, so much farther. */
    private static final double ON_EDGE = 1.0 / 32;

    /** What has turned so far on an edge hangs on it: that does not stop it, degrees. */
    private static final double HANGING = 80;

    private final Section section;
    private final Model model;
    private final List<Weight> weights;
    private final Movement movement;

    /** Whether gaps close in it: what stops it is asked of these. */
    private final boolean closing;

    private final double most;

    private Falls(Model model, List<Weight> weights, Movement movement, boolean closing) {
        this.section = model.section();
        this.model = model;
        this.weights = weights;
        this.movement = movement;
        this.closing = closing;
        double greatest = 0;
        for (Shift shift : movement.shifts()) {
            greatest = Math.max(greatest, size(shift));
        }
        this.most = greatest;
    }

    /**
     * All by which a model falls: the first; then, with those pieces held to what they turned on, the next; until it
     * stands.
     */
    static List<Fall> all(Model model, Loading loading) {
        return all(model, loading, true);
    }

    /** The same, but nobody asks what stops them. */
    static List<Fall> begun(Model model, Loading loading) {
        return all(model, loading, false);
    }

    private static List<Fall> all(Model model, Loading loading, boolean followed) {
        List<Fall> motions = new ArrayList<>();
        Model held = model;
        for (int i = 0; i < model.free().size(); i++) {
            Optional<Movement> next = Mechanism.falling(held, loading);
            if (next.isEmpty()) {
                break;
            }
            Fall motion = new Falls(held, loading.weights(), next.get(), false).motion(followed);
            motions.add(motion);
            held = held(held, motion.first());
        }
        return List.copyOf(motions);
    }

    /**
     * A model with what falls held to what it turned on, and where that is nothing, with the first of its pieces held; what
     * only came along may still fall by itself.
     */
    static Model held(Model model, Part part) {
        int on = part.on().orElse(Force.EARTH);
        List<Integer> touching = new ArrayList<>(2);
        List<Force> forces = model.forces();
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            if (force.kind() == Force.Kind.PUSH && (force.on() == on || force.against() == on)) {
                int other = force.on() == on ? force.against() : force.on();
                if (part.pieces().contains(other) && !touching.contains(other)) {
                    touching.add(other);
                }
            }
        }
        return model.welded(touching.isEmpty() ? part.pieces().subList(0, 1) : touching, on);
    }

    /** The motion by which gaps close. */
    static Fall closing(Model model, List<Weight> weights, Movement movement) {
        return new Falls(model, weights, movement, true).motion(true);
    }

    /** Where a motion turns or slides on something, as a contact is called; nothing when it turns in the open. */
    static Optional<Force> pivot(Model model, Movement movement) {
        Falls motions = new Falls(model, List.of(), movement, false);
        return motions.lots().stream()
                .map(motions::pivot)
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Whether a piece moves in a motion, by more than rounding. */
    static boolean moves(Movement movement, int piece) {
        double most = movement.shifts().stream().mapToDouble(Falls::size).max().orElse(0);
        return most > 0 && !little(size(movement.shifts().get(piece)), most);
    }

    private static double size(Shift shift) {
        return Math.abs(shift.turn()) + shift.by().length();
    }

    /** Whether part of a motion is no more than rounding beside the whole. */
    private static boolean little(double part, double whole) {
        return part <= Tolerance.SAME_MOTION * whole;
    }

    private Fall motion(boolean followed) {
        List<List<Integer>> lots = lots();
        if (lots.size() > 1) {
            lots.sort(Comparator.comparingDouble((List<Integer> lot) -> -work(lot)));
        }
        List<Part> parts = new ArrayList<>(lots.size());
        for (List<Integer> lot : lots) {
            parts.add(part(lot, followed));
        }
        if (closing) {
            // what closes a gap before what only comes along
            parts.sort(Comparator.comparing(part -> part.stop().isEmpty()));
        }
        return new Fall(parts);
    }

    private double work(List<Integer> lot) {
        double work = 0;
        for (Weight weight : weights) {
            if (lot.contains(weight.body())) {
                work -= weight.pounds()
                        * movement.of(weight.body(), new Point(weight.out(), 0)).y();
            }
        }
        return work;
    }

    /** The pieces that move, in lots that move as one. */
    private List<List<Integer>> lots() {
        List<List<Integer>> lots = new ArrayList<>();
        for (int body : model.free()) {
            Shift shift = movement.shifts().get(body);
            if (most > 0 && !little(size(shift), most)) {
                lotOf(body, lots).add(body);
            }
        }
        return lots;
    }

    private List<Integer> lotOf(int body, List<List<Integer>> lots) {
        for (List<Integer> lot : lots) {
            if (alike(lot.get(0), body)) {
                return lot;
            }
        }
        List<Integer> own = new ArrayList<>();
        lots.add(own);
        return own;
    }

    private boolean alike(int one, int other) {
        Point center = model.centroid(one);
        double turns =
                movement.shifts().get(one).turn() - movement.shifts().get(other).turn();
        double moves =
                movement.of(one, center).minus(movement.of(other, center)).length();
        return little(Math.abs(turns) + moves, most);
    }

    private Part part(List<Integer> lot, boolean followed) {
        Shift shift = movement.shifts().get(lot.get(0));
        boolean turns = !little(Math.abs(shift.turn()), size(shift));
        Optional<Force> pivot = pivot(lot);
        Optional<Point> about = turns ? pivot.map(Force::at).or(() -> Optional.of(center(shift))) : Optional.empty();
        OptionalInt on = pivot.map(force -> OptionalInt.of(other(force, lot))).orElse(OptionalInt.empty());
        Optional<Stop> stop;
        if (!followed) {
            stop = Optional.empty();
        } else if (closing) {
            stop = closed(lot, shift);
        } else if (turns) {
            stop = Stops.ofTurn(section, lot, about.orElseThrow(), shift.turn() < 0)
                    .filter(met -> on.isEmpty() || met.by() != on.getAsInt() || met.degrees() < HANGING);
        } else {
            stop = Stops.ofSlide(section, lot, shift.by().unit());
        }
        return new Part(lot, turns ? turning(shift) : sliding(shift.by()), about, on, stop);
    }

    private static Way turning(Shift shift) {
        return shift.turn() < 0 ? Way.TIPS_OUT : Way.TIPS_BACK;
    }

    private static Way sliding(Point by) {
        if (Math.abs(by.y()) >= Math.abs(by.x())) {
            return by.y() < 0 ? Way.FALLS : Way.RISES;
        }
        return by.x() > 0 ? Way.SLIDES_OUT : Way.SLIDES_BACK;
    }

    /** The place that stays where it is. */
    private static Point center(Shift shift) {
        return shift.centroid().plus(shift.by().left().times(1 / shift.turn()));
    }

    private static int other(Force force, List<Integer> lot) {
        return lot.contains(force.on()) ? force.against() : force.on();
    }

    /** Of the contacts with what does not move along, the one where they move and slide least. */
    private Optional<Force> pivot(List<Integer> lot) {
        Shift shift = movement.shifts().get(lot.get(0));
        boolean turns = !little(Math.abs(shift.turn()), size(shift));
        boolean[] along = along(lot);
        Optional<Force> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        List<Force> forces = model.forces();
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            if (force.kind() == Force.Kind.PUSH && along[force.on()] != along[force.against()]) {
                Point between = movement.between(force);
                double slides = between.length();
                boolean keeps = little(Math.abs(between.dot(force.way())), size(shift))
                        && (!turns || slides <= (ON_EDGE + force.gap()) * Math.abs(shift.turn()));
                double moves = shift.of(force.at()).length() + slides;
                if (keeps && moves < least) {
                    best = Optional.of(force);
                    least = moves;
                }
            }
        }
        return best;
    }

    /** For each body whether it is one of these. */
    private boolean[] along(List<Integer> lot) {
        boolean[] along = new boolean[section.bodies().size()];
        for (int body : lot) {
            along[body] = true;
        }
        return along;
    }

    /** The widest gap that this motion closes. */
    private Optional<Stop> closed(List<Integer> lot, Shift shift) {
        return model.forces().stream()
                .filter(force -> force.gap() > 0)
                .filter(force -> lot.contains(force.on()) != lot.contains(force.against()))
                .filter(force -> movement.parts(force) <= -force.gap() * (1 - Tolerance.SAME_MOTION))
                .max(Comparator.comparingDouble(Force::gap))
                .map(force ->
                        new Stop(other(force, lot), force.at(), force.gap(), Math.toDegrees(Math.abs(shift.turn()))));
    }
}
