package buildup.engine.hold.support;

import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.LoadPath;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A piece that lies level on pieces which nothing carries themselves: where the weight that goes through it falls. It has
 * no bearing that counts, and still leans like any other where its weight falls past what it lies on.
 *
 * @param piece that lies there
 * @param carriers the pieces that it lies on, each held by nails only
 * @param group all pieces whose weight goes through it, in the order of putting up
 * @param back, face outer ends of the stretches in which it lies on them, x, in
 * @param level height of the end over which it would turn, in
 * @param weight of the group and of the loads on it, pounds per foot of run
 * @param resultant x of that weight, in
 */
public record Perch(
        int piece,
        List<Integer> carriers,
        List<Integer> group,
        double back,
        double face,
        double level,
        double weight,
        double resultant) {
    /** Copies the lists. */
    public Perch {
        carriers = List.copyOf(carriers);
        group = List.copyOf(group);
    }

    /** All of a stack, in the order of putting up. */
    public static List<Perch> all(Section section, LoadPath path, List<Load> loads) {
        List<Perch> perches = new ArrayList<>();
        for (int piece = 0; piece < section.bodies().size(); piece++) {
            if (section.body(piece).inStack()) {
                Standing standing = section.standing(piece);
                if (standing.bearing().isEmpty() && !standing.hanging().isEmpty() && !standing.fixed()) {
                    perches.add(of(section, path, loads, standing));
                }
            }
        }
        return List.copyOf(perches);
    }

    private static Perch of(Section section, LoadPath path, List<Load> loads, Standing standing) {
        List<Integer> group = path.through(standing.body());
        double weight = 0;
        double moment = 0;
        for (int one : group) {
            double pounds = Composer.weightPerFoot(section.body(one));
            weight += pounds;
            moment += pounds * section.body(one).outline().centroid().x();
        }
        for (Load load : loads) {
            if (group.contains(load.body())) {
                weight += load.poundsPerFoot();
                moment += load.poundsPerFoot() * load.out();
            }
        }
        double resultant = moment / weight;
        List<Point> ends = section.contacts().stream()
                .filter(contact -> contact.b() == standing.body()
                        && standing.hanging().contains(contact.a())
                        && contact.facing()
                                .filter(Contact.Facing.CARRIES::equals)
                                .isPresent()
                        && contact.length() > 0)
                .flatMap(contact -> List.of(contact.from(), contact.to()).stream())
                .sorted(Comparator.comparingDouble(Point::x))
                .toList();
        Point back = ends.get(0);
        Point face = ends.get(ends.size() - 1);
        boolean forward = resultant > (back.x() + face.x()) / 2;
        return new Perch(
                standing.body(),
                standing.hanging().stream().distinct().sorted().toList(),
                group,
                back.x(),
                face.x(),
                forward ? face.y() : back.y(),
                weight,
                resultant);
    }

    /** How far the weight falls past what the piece lies on, in; negative where it falls inside. */
    public double past() {
        return Math.max(resultant - face, back - resultant);
    }
}
