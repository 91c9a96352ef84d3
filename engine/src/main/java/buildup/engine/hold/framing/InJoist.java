package buildup.engine.hold.framing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.Optional;

/**
 * What a nail that goes up through a ceiling spends in the joist over it. The ceiling is taken to be covered as the wall is:
 * a covering c, crossed at an angle a from square, takes c / cos a of the nail.
 *
 * @param head of the nail, in
 * @param way unit step from its head to its point
 * @param from, to where along the nail it is over the covering, in from its head
 */
record InJoist(Point head, Point way, double from, double to) {
    private static final int OF_A_NAIL = 12;
    private static final int OF_A_SCREW = 6;

    static InJoist of(Section section, Fixed fixed) {
        Optional<Crossing> crossing = fixed.drive().crossings().stream()
                .filter(one -> one.body().isPresent())
                .filter(one -> isOver(section, one.body().getAsInt()))
                .findFirst();
        Optional<Crossing> last = fixed.drive().crossings().stream()
                .filter(one -> one.body().isPresent())
                .filter(one -> isOver(section, one.body().getAsInt()))
                .reduce((one, next) -> next);
        Space space = section.stack().space();
        double angle = Math.atan(space.slope());
        double square = fixed.way().dot(new Point(-Math.sin(angle), Math.cos(angle)));
        double from = crossing.map(Crossing::from).orElse(0.0)
                + space.wall().covering() / Math.max(square, Tolerance.COINCIDENT);
        double to = last.map(Crossing::to).orElse(0.0);
        return new InJoist(fixed.head(), fixed.way(), from, Math.max(from, to));
    }

    /** Whether a body is the ceiling, or a joist over it that is given as a piece. */
    private static boolean isOver(Section section, int body) {
        return section.overCeiling(body)
                || (!section.body(body).piece() && section.name(body).equals("ceiling"));
    }

    /** The same with a nail so much longer, in. */
    InJoist longer(double by) {
        return new InJoist(head, way, from, to + by);
    }

    /** In a joist that runs out into the room, on which the nail lands: it stays between its sides. */
    double across() {
        return to - from;
    }

    /** In a joist that runs along the wall, from one projection of its sides to the other, in. */
    double along(double near, double far) {
        if (Math.abs(way.x()) < Tolerance.COINCIDENT) {
            return head.x() >= near && head.x() <= far ? across() : 0;
        }
        double one = (near - head.x()) / way.x();
        double other = (far - head.x()) / way.x();
        return Math.max(0, Math.min(to, Math.max(one, other)) - Math.max(from, Math.min(one, other)));
    }

    /** What the rule of thumb asks: 12 diameters of a nail, 6 of a screw. */
    static double wanted(Fixed fixed) {
        Fastener fastener = fixed.fastening().use().fastener();
        int diameters = fastener.kind() == Fastener.Kind.NAIL ? OF_A_NAIL : OF_A_SCREW;
        return diameters * fastener.diameter().toInches();
    }
}
