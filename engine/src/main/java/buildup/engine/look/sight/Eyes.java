package buildup.engine.look.sight;

import buildup.engine.look.sight.Coverage.Edge;
import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Section.Beyond;
import buildup.engine.section.stack.Eye;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;

/** Asks what each eye of a stack sees. */
public final class Eyes {
    private final Section section;
    private final List<Surface> surfaces;
    private final Map<Eye, Visibility> looking = new HashMap<>();

    private Eyes(Section section) {
        this.section = section;
        this.surfaces = Surfaces.solid(section);
    }

    /** One answer for each eye that stands in the room; an eye elsewhere is said, and so is raw wood that lies open. */
    public static List<Sighting> of(Section section, Notices notices) {
        return of(section, false, notices);
    }

    /**
     * The same, for a stack to which eyes may also walk up.
     *
     * @param walking whether they do: what is open and these do not see is said of those ({@link Approaches})
     */
    public static List<Sighting> of(Section section, boolean walking, Notices notices) {
        Eyes asked = new Eyes(section);
        List<Sighting> answers = new ArrayList<>();
        for (Eye eye : section.stack().eyes()) {
            Optional<Notice> fault = fault(eye, section);
            fault.ifPresent(notices::add);
            if (fault.isEmpty()) {
                answers.add(asked.sighting(eye));
            }
        }
        RawWood.say(section, answers, !walking, notices);
        return List.copyOf(answers);
    }

    /** Ready to be asked for many eyes; one thread asks. */
    public static Eyes asked(Section section) {
        return new Eyes(section);
    }

    /**
     * How well an eye is kept from seeing some nailers, without what would help; none when it stands nowhere.
     *
     * @param wanted the number of a nailer
     */
    public List<Coverage> covered(Eye eye, IntPredicate wanted) {
        if (fault(eye, section).isPresent()) {
            return List.of();
        }
        Visibility view = looking.computeIfAbsent(eye, any -> Visibility.of(viewpoint(eye), surfaces));
        List<Coverage> coverage = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).nailer() && wanted.test(i)) {
                List<Segment> visible = new ArrayList<>();
                coverage.add(new Coverage(i, exposed(i, view, visible), visible, List.of()));
            }
        }
        return coverage;
    }

    /** One row for each nailer. */
    List<Coverage> coverage(Eye eye) {
        Viewpoint viewpoint = viewpoint(eye);
        return coverage(Visibility.of(viewpoint, surfaces), viewpoint);
    }

    private static Viewpoint viewpoint(Eye eye) {
        return new Viewpoint.Near(new Point(eye.distance(), eye.height()));
    }

    /** What keeps an eye from seeing the section: it stands in something. */
    public static Optional<Notice> fault(Eye eye, Section section) {
        Point at = new Point(eye.distance(), eye.height());
        return section.bodies().stream()
                .filter(body -> body.outline().takes(at))
                .map(body -> SightNotices.EYE_IN_WOOD
                        .with("eye", eye.name())
                        .with("out", Figure.length(eye.distance()))
                        .with("up", Figure.length(eye.height()))
                        .with("body", body.name())
                        .with("distance", Figure.atLeast(72))
                        .with("height", Figure.atLeast(60))
                        .at(eye.mark()))
                .findFirst()
                .or(() -> eye.distance() <= 0
                        ? Optional.of(SightNotices.EYE_IN_THE_WALL
                                .with("eye", eye.name())
                                .with("out", Figure.length(eye.distance()))
                                .with("distance", Figure.atLeast(72))
                                .at(eye.mark()))
                        : Optional.empty());
    }

    private Sighting sighting(Eye eye) {
        Viewpoint viewpoint = viewpoint(eye);
        Visibility view = Visibility.of(viewpoint, surfaces);
        List<SeenMember> members = new ArrayList<>();
        for (int i = 0; i < section.members().size(); i++) {
            members.add(seen(i, view, eye));
        }
        return new Sighting(eye, members, beyond(view), coverage(view, viewpoint));
    }

    /** The pieces of trim of which it sees something beyond the walk. */
    private Set<Integer> beyond(Visibility view) {
        Set<Integer> seen = new TreeSet<>();
        for (Beyond beyond : section.beyond()) {
            List<Segment> visible = new ArrayList<>();
            if (section.body(beyond.body()).trim()) {
                visible(view, beyond.segment(), visible);
            }
            if (visible.stream().mapToDouble(Segment::length).sum() > Tolerance.TOUCHING) {
                seen.add(beyond.body());
            }
        }
        return seen;
    }

    private List<Coverage> coverage(Visibility view, Viewpoint viewpoint) {
        List<Coverage> coverage = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).nailer()) {
                coverage.add(coverage(i, view, viewpoint));
            }
        }
        return coverage;
    }

    private SeenMember seen(int number, Visibility view, Eye eye) {
        Member member = section.members().get(number);
        List<Segment> visible = new ArrayList<>();
        member.segments().forEach(segment -> visible(view, segment, visible));
        return new SeenMember(number, visible, member.box().height(), seenHeight(visible, eye));
    }

    private static OptionalDouble seenHeight(List<Segment> visible, Eye eye) {
        if (visible.stream().anyMatch(part -> part.box().face() > eye.distance() - Tolerance.TOUCHING)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(visible.stream()
                .mapToDouble(part -> Math.abs(onPicture(part.from(), eye) - onPicture(part.to(), eye)))
                .sum());
    }

    private static void visible(Visibility view, Segment segment, List<Segment> out) {
        for (Stretch stretch : view.seen(segment)) {
            if ((stretch.end() - stretch.start()) * segment.length() > Tolerance.SNAP) {
                out.add(segment.part(stretch.start(), stretch.end()));
            }
        }
    }

    /** Height over the eye at which the sight line to {@code p} passes the picture plane x = 0 (central projection). */
    private static double onPicture(Point p, Eye eye) {
        return (p.y() - eye.height()) * eye.distance() / (eye.distance() - p.x());
    }

    private Coverage coverage(int nailer, Visibility view, Viewpoint viewpoint) {
        List<Segment> visible = new ArrayList<>();
        double exposed = exposed(nailer, view, visible);
        return new Coverage(nailer, exposed, visible, cures(visible, view, viewpoint));
    }

    /**
     * The length of what lies open of a nailer, in; what is seen of it is added to a list. Beyond the walk, as behind a lip,
     * only what is seen counts as open.
     */
    private double exposed(int nailer, Visibility view, List<Segment> visible) {
        double exposed = 0;
        for (Member member : section.members()) {
            if (member.body() == nailer) {
                exposed += member.length();
                member.segments().forEach(segment -> visible(view, segment, visible));
            }
        }
        for (Beyond beyond : section.beyond()) {
            if (beyond.body() == nailer) {
                int before = visible.size();
                visible(view, beyond.segment(), visible);
                for (Segment seen : visible.subList(before, visible.size())) {
                    exposed += seen.length();
                }
            }
        }
        return exposed;
    }

    /** For each piece whose arris bounds what is seen: the height of that arris at which nothing is seen past it. */
    private List<Edge> cures(List<Segment> visible, Visibility view, Viewpoint viewpoint) {
        if (visible.size() != 1) {
            return List.of();
        }
        List<Edge> cures = new ArrayList<>();
        Segment shows = visible.get(0);
        bounding(shows.from(), shows.to(), view, viewpoint, 1).ifPresent(cures::add);
        bounding(shows.to(), shows.from(), view, viewpoint, -1).ifPresent(cures::add);
        cures.sort(Comparator.comparingDouble(Edge::move));
        return cures;
    }

    /** The cure by what hides the wood beyond {@code edge}, so that {@code far}, the other end, is hidden too. */
    private Optional<Edge> bounding(Point edge, Point far, Visibility view, Viewpoint viewpoint, int side) {
        double beyond = viewpoint.key(edge) + side * Tolerance.BESIDE_A_SIGHT_LINE;
        return view.nearest(beyond)
                .filter(met -> met.body() >= 0
                        && section.body(met.body()).trim()
                        && viewpoint.depth(met.at()) < viewpoint.depth(edge) - Tolerance.SNAP)
                // straight above or below the eye no height of an arris hides anything
                .filter(met -> Math.abs(((Viewpoint.Near) viewpoint).at().x() - far.x()) > Tolerance.TOUCHING)
                .map(met -> {
                    Point eye = ((Viewpoint.Near) viewpoint).at();
                    double to =
                            eye.y() + (far.y() - eye.y()) * (eye.x() - met.at().x()) / (eye.x() - far.x());
                    return new Edge(met.body(), met.at().y(), to);
                });
    }
}
