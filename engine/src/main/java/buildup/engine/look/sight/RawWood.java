package buildup.engine.look.sight;

import buildup.engine.look.sight.Coverage.Edge;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Says which raw nailer an eye sees, from the worst eye, with the smallest change that hides it from all of them. */
final class RawWood {
    private RawWood() {}

    private record View(Sighting sighting, Coverage coverage) {}

    /** @param hiddenToo whether that is said too which none of these eyes sees */
    static void say(Section section, List<Sighting> sightings, boolean hiddenToo, Notices notices) {
        for (int i = 0; i < section.bodies().size(); i++) {
            int nailer = i;
            List<View> views = sightings.stream()
                    .flatMap(sighting -> sighting.coverage().stream()
                            .filter(coverage -> coverage.body() == nailer)
                            .map(coverage -> new View(sighting, coverage)))
                    .filter(view -> view.coverage().seen() > Tolerance.TOUCHING)
                    .toList();
            views.stream()
                    .max(Comparator.comparingDouble(view -> view.coverage().seen()))
                    .map(worst -> shows(section, worst, views))
                    .or(() -> hiddenToo ? unseen(section, nailer) : Optional.empty())
                    .ifPresent(notices::add);
        }
    }

    /** Raw wood on the room side that no eye of the stack sees: worth a word, since another eye may come. */
    static Optional<Notice> unseen(Section section, int nailer) {
        Body body = section.body(nailer);
        double exposed = section.members().stream()
                .filter(member -> member.body() == nailer)
                .mapToDouble(Member::length)
                .sum();
        if (!body.nailer() || exposed <= Tolerance.TOUCHING) {
            return Optional.empty();
        }
        Kind kind = section.stack().eyes().isEmpty() ? SightNotices.NO_EYE : SightNotices.NO_EYE_SEES_IT;
        return Optional.of(placed(body, kind.notice().amount(Figure.length(exposed))));
    }

    static Notice placed(Body body, Notice notice) {
        return body.placed()
                .map(placed -> notice.of(body.name()).at(placed.piece().mark()))
                .orElse(notice);
    }

    private static Notice shows(Section section, View worst, List<View> views) {
        Body body = section.body(worst.coverage().body());
        double seen = worst.coverage().seen();
        Notice notice = SightNotices.NAILER_SHOWS
                .with("eye", worst.sighting().eye().name())
                .amount(Figure.length(seen));
        Cure wayOut = cure(worst, views)
                .map(change -> wayOut(section, worst.coverage().body(), change))
                .orElse(Cure.of(SightNotices.COVER_IT));
        return placed(body, notice.cure(wayOut));
    }

    /** The smallest change at the worst eye, made large enough for every eye that sees the nailer. */
    private static Optional<Edge> cure(View worst, List<View> views) {
        return worst.coverage().cures().stream().findFirst().map(smallest -> {
            boolean down = smallest.to() < smallest.from();
            Stream<Double> needed = views.stream()
                    .flatMap(view -> view.coverage().cures().stream())
                    .filter(cure -> cure.body() == smallest.body() && cure.to() < cure.from() == down)
                    .map(Edge::to);
            double to = needed.reduce(smallest.to(), down ? Math::min : Math::max);
            return new Edge(smallest.body(), smallest.from(), to);
        });
    }

    private static Cure wayOut(Section section, int nailer, Edge edge) {
        boolean down = edge.to() < edge.from();
        String piece = section.body(edge.body()).name();
        Figure to = down ? Figure.atMost(edge.to()) : Figure.atLeast(edge.to());
        Box box = section.body(edge.body()).outline().box();
        // the line beside the sight line meets an upright face a hair beyond its arris
        if (Math.abs(edge.from() - (down ? box.bottom() : box.top())) > Tolerance.TOUCHING) {
            return Cure.of(SightNotices.COVER_IT);
        }
        double width = down ? box.top() - edge.to() : edge.to() - box.bottom();
        Figure size = Figure.atLeast(width);
        Mending drawn = Mending.of(section.stack());
        Stream<Cure> moved = drawn.placed(piece, Axis.UP, !down, edge.to(), to).filter(hides(nailer)).stream()
                .map(mending -> new Cure(down ? SightNotices.DROP : SightNotices.RAISE, mending.changes()));
        Stream<Cure> wider = drawn.wide(piece, width, size).filter(hides(nailer)).stream()
                .map(mending -> new Cure(down ? SightNotices.WIDER_DOWN : SightNotices.WIDER_UP, mending.changes()));
        return Cure.firstOf(Stream.concat(moved, wider)
                        .map(way -> new Cure(
                                way.words()
                                        .with("other", piece)
                                        .with("to", to)
                                        .with("size", size)
                                        .with("needs", Figure.fine(edge.to())),
                                way.changes())))
                .orElse(Cure.of(SightNotices.COVER_IT));
    }

    private static Predicate<Mending> hides(int nailer) {
        return mending ->
                mending.section().filter(after -> hidden(after, nailer)).isPresent();
    }

    /** Whether no eye of the stack sees anything of a nailer. */
    private static boolean hidden(Section section, int nailer) {
        Eyes eyes = Eyes.asked(section);
        return section.stack().eyes().stream()
                .filter(eye -> Eyes.fault(eye, section).isEmpty())
                .flatMap(eye -> eyes.coverage(eye).stream())
                .filter(coverage -> coverage.body() == nailer)
                .allMatch(coverage -> coverage.seen() <= Tolerance.TOUCHING);
    }
}
