package buildup.engine.look.joint;

import buildup.engine.look.sight.SeenMember;
import buildup.engine.look.sight.Sighting;
import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Pairs;
import buildup.profiles.region.Pairs.Pair;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which joints of a section stand open, and which trim is seen by nobody.
 *
 * @param open slots between neighbors, by the order of the bodies; hidden ones too
 * @param unseen pieces of trim of which no eye sees anything; none while no eye stands in the room
 */
public record Joints(List<OpenJoint> open, List<Integer> unseen) {
    public Joints {
        open = List.copyOf(open);
        unseen = List.copyOf(unseen);
    }

    /**
     * What stands open in a section, and what is not seen of it.
     *
     * @param sights what each eye sees of the section
     */
    public static Joints of(Section section, List<Sighting> sights) {
        List<Eye> eyes = sights.stream().map(Sighting::eye).toList();
        return new Joints(open(section, eyes), sights.isEmpty() ? List.of() : unseen(section, sights));
    }

    /** The slots of a section, by the eyes that look at it. */
    static List<OpenJoint> open(Section section, List<Eye> eyes) {
        return new Asking(section, eyes).open();
    }

    private static List<Integer> unseen(Section section, List<Sighting> sights) {
        return IntStream.range(0, section.bodies().size())
                .filter(body -> section.body(body).trim())
                .filter(body ->
                        sights.stream().noneMatch(sighting -> sighting.beyond().contains(body)))
                .filter(body -> sights.stream()
                        .flatMap(sighting -> sighting.members().stream())
                        .filter(seen -> section.members().get(seen.member()).body() == body)
                        .mapToDouble(SeenMember::length)
                        .allMatch(length -> length <= Tolerance.TOUCHING))
                .boxed()
                .toList();
    }

    /** The eyes and the section that they look at. */
    private static final class Asking {
        private final Section section;
        private final List<Eye> eyes;
        private final List<Visibility> views = new ArrayList<>();
        private final Set<Pair> meeting = new HashSet<>();
        private final Throats throats;
        private final Fillers fillers;

        Asking(Section section, List<Eye> eyes) {
            this.section = section;
            this.eyes = eyes;
            this.throats = new Throats(section);
            this.fillers = new Fillers(section);
            for (Eye eye : eyes) {
                Point at = new Point(eye.distance(), eye.height());
                views.add(Visibility.of(new Viewpoint.Near(at), Surfaces.solid(section)));
            }
            for (Contact contact : section.contacts()) {
                meeting.add(new Pair(Math.min(contact.a(), contact.b()), Math.max(contact.a(), contact.b())));
            }
            for (Overlap lap : section.overlaps()) {
                meeting.add(new Pair(lap.a(), lap.b()));
            }
        }

        List<OpenJoint> open() {
            List<OpenJoint> open = new ArrayList<>();
            List<Box> boxes =
                    section.bodies().stream().map(body -> body.outline().box()).toList();
            for (Pair pair : Pairs.near(boxes, Throats.WIDEST)) {
                Body first = section.body(pair.first());
                Body second = section.body(pair.second());
                if ((first.inStack() || second.inStack()) && !meeting.contains(pair)) {
                    // the room stands behind the pieces, and before any of them
                    boolean later = second.piece() && second.inStack();
                    joint(later ? pair.second() : pair.first(), later ? pair.first() : pair.second())
                            .ifPresent(open::add);
                }
            }
            return open;
        }

        private Optional<OpenJoint> joint(int piece, int other) {
            List<Line> found = throats.between(piece, other).stream()
                    .filter(throat -> !fillers.fill(piece, other, throat))
                    .toList();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            List<String> seeing = new ArrayList<>();
            for (int i = 0; i < views.size(); i++) {
                Visibility view = views.get(i);
                if (found.stream().anyMatch(throat -> sees(view, throat) || sees(view, throat.reversed()))) {
                    seeing.add(eyes.get(i).name());
                }
            }
            return Optional.of(new OpenJoint(piece, other, found, seeing, meant(piece, other, found.get(0))));
        }

        /** Whether a sight line passes between the two. */
        private static boolean sees(Visibility view, Line throat) {
            double seen = view.seen(throat).stream()
                    .mapToDouble(stretch -> (stretch.end() - stretch.start()) * throat.length())
                    .sum();
            return seen > Tolerance.TOUCHING;
        }

        /** Whether a rule of either places it at this very distance from the other, across the slot. */
        private boolean meant(int piece, int other, Line throat) {
            return placedBy(piece, other, throat) || placedBy(other, piece, throat.reversed());
        }

        private boolean placedBy(int piece, int other, Line throat) {
            for (Axis axis : Axis.values()) {
                double across = axis == Axis.OUT
                        ? -throat.direction(0).x()
                        : -throat.direction(0).y();
                if (Math.abs(across) > 0.5) {
                    boolean low = across > 0;
                    List<Integer> others = flush(other, axis, !low);
                    if (flush(piece, axis, low).stream()
                            .flatMap(one -> rule(one, axis, low).stream()
                                    .filter(rule -> one == piece || rule instanceof Rule.ByEdge))
                            .anyMatch(rule -> says(rule, others, axis, low, throat.length()))) {
                        return true;
                    }
                }
            }
            return false;
        }

        private Optional<Rule> rule(int body, Axis axis, boolean low) {
            return section.body(body)
                    .placed()
                    .map(Placed::piece)
                    .flatMap(piece ->
                            low ? piece.rules().low(axis) : piece.rules().high(axis));
        }

        /** A body, and those it touches that end level with it on that side: what is planted flush has its gap too. */
        private List<Integer> flush(int body, Axis axis, boolean low) {
            double side = side(body, axis, low);
            return IntStream.concat(
                            IntStream.of(body),
                            IntStream.range(0, section.bodies().size())
                                    .filter(one -> one != body && section.touches(one, List.of(body)))
                                    .filter(one -> Math.abs(side(one, axis, low) - side) < Tolerance.TOUCHING))
                    .boxed()
                    .toList();
        }

        private double side(int body, Axis axis, boolean low) {
            Box box = section.body(body).outline().box();
            return low ? axis.low(box) : axis.high(box);
        }

        /** Whether a rule names the other side of the slot, and the width as its offset. */
        private boolean says(Rule rule, List<Integer> others, Axis axis, boolean low, double width) {
            if (rule instanceof Rule.ByEdge edge) {
                return others.stream().map(section::name).anyMatch(edge.piece()::equals)
                        && edge.edge().equals(low ? axis.high() : axis.low())
                        && Math.abs(Math.abs(edge.offset()) - width) < Tolerance.TOUCHING;
            }
            // a plain length names no landmark, and is on either axis
            return rule instanceof Rule.Level level
                    && level.axis().isPresent()
                    && !section.body(others.get(0)).piece();
        }
    }
}
