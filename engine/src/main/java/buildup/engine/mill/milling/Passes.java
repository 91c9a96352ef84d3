package buildup.engine.mill.milling;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Carving;
import buildup.profiles.travel.Access;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * How listed cutters make a profile.
 *
 * @param inOrder deepest first, those that cut into the back and the bottom, on which the stick bears, last
 * @param proven whether fewer runs would not do as much
 * @param unmade stretches that no listed cutter makes
 * @param left what still stands when all passes are run
 */
public record Passes(List<Pass> inOrder, boolean proven, List<Unmade> unmade, List<Carving.Left> left) {
    /** A stretch that no listed cutter makes. */
    public record Unmade(String member, Segment segment) {}

    /** More than there can be settings. */
    private static final int SETTINGS = 1000;

    public Passes {
        inOrder = List.copyOf(inOrder);
        unmade = List.copyOf(unmade);
        left = List.copyOf(left);
    }

    /** Runs of the stick in all. */
    public int runs() {
        return inOrder.stream().mapToInt(Pass::times).sum();
    }

    /** Wood left, sq in. */
    public double leftArea() {
        return left.stream().mapToDouble(Carving.Left::area).sum();
    }

    /** Whether a stretch that ends a stroke and the one that begins the next come from one pass. */
    boolean makesCorner(int before, int after) {
        return inOrder.stream()
                .anyMatch(pass -> pass.makes().stream()
                                .anyMatch(stretch ->
                                        stretch.stroke() == before && stretch.to() > 1 - Tolerance.SAME_SHARE)
                        && pass.makes().stream()
                                .anyMatch(
                                        stretch -> stretch.stroke() == after && stretch.from() < Tolerance.SAME_SHARE));
    }

    /** @param ways in which a listed cutter makes some of it */
    static Passes of(MillStick stick, List<Pass> ways) {
        List<Access.Stretch> atoms = atoms(stick, ways);
        List<BitSet> made = new ArrayList<>();
        for (Pass pass : ways) {
            BitSet set = new BitSet();
            for (int i = 0; i < atoms.size(); i++) {
                if (makes(pass, atoms.get(i))) {
                    set.set(i);
                }
            }
            made.add(set);
        }
        // of two ways with as many runs, the one with fewer settings
        Cover cover = Cover.of(
                made, ways.stream().map(pass -> pass.times() * SETTINGS + 1).toList());
        List<Pass> chosen = cover.chosen().stream()
                .map(ways::get)
                .sorted(Comparator.comparing(Pass::takesBearing)
                        .thenComparing(Comparator.comparingDouble(Pass::depth).reversed()))
                .toList();
        BitSet all = new BitSet();
        made.forEach(all::or);
        List<Unmade> unmade = new ArrayList<>();
        for (int i = 0; i < atoms.size(); i++) {
            Access.Stretch atom = atoms.get(i);
            if (!all.get(i)) {
                unmade.add(new Unmade(
                        stick.member(atom.stroke()),
                        stick.segment(atom.stroke()).part(atom.from(), atom.to())));
            }
        }
        List<Outline> cuts = chosen.stream().map(Pass::swept).toList();
        return new Passes(
                chosen, cover.proven(), unmade, Carving.left(Outline.rectangle(stick.box()), stick.outline(), cuts));
    }

    private static boolean makes(Pass pass, Access.Stretch atom) {
        double middle = (atom.from() + atom.to()) / 2;
        return pass.makes().stream()
                .anyMatch(stretch ->
                        stretch.stroke() == atom.stroke() && stretch.from() <= middle && middle <= stretch.to());
    }

    /** All that is not planed already, cut wherever a pass begins or ends. */
    private static List<Access.Stretch> atoms(MillStick stick, List<Pass> ways) {
        List<Access.Stretch> atoms = new ArrayList<>();
        for (int i = 0; i < stick.count(); i++) {
            if (stick.isPlaned(stick.segment(i))) {
                continue;
            }
            int stroke = i;
            double least = Tolerance.TOUCHING / stick.segment(i).length();
            List<Double> ends = new ArrayList<>(List.of(0.0, 1.0));
            ways.forEach(pass -> pass.makes().stream()
                    .filter(stretch -> stretch.stroke() == stroke)
                    .forEach(stretch -> {
                        ends.add(stretch.from());
                        ends.add(stretch.to());
                    }));
            ends.sort(Comparator.naturalOrder());
            double start = 0;
            for (double end : ends) {
                if (end - start > least && (1 - end > least || end >= 1)) {
                    atoms.add(new Access.Stretch(stroke, start, end));
                    start = end;
                }
            }
        }
        return atoms;
    }
}
