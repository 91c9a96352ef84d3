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
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says which raw nailer an eye sees, from the worst eye, with the smallest change that hides it from all of them. */
final class RawWood {
    private RawWood() {}

    private record View(Sighting sighting, Coverage coverage) {}

    static void say(Section section, List<Sighting> sightings, Notices notices) {
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
                    .or(() -> unseen(section, nailer))
                    .ifPresent(notices::add);
        }
    }

    /** Raw wood on the room side that no eye of the stack sees: worth a word, since another eye may come. */
    private static Optional<Notice> unseen(Section section, int nailer) {
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

    private static Notice placed(Body body, Notice notice) {
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
        Phrase words = (down ? SightNotices.DROP : SightNotices.RAISE)
                .with("other", piece)
                .with("to", to)
                .with("needs", Figure.fine(edge.to()));
        Box box = section.body(edge.body()).outline().box();
        boolean itsEdge = Tolerance.same(edge.from(), down ? box.bottom() : box.top());
        Optional<Mending> tried = itsEdge
                ? Mending.of(section.stack())
                        .placed(piece, Axis.UP, !down, edge.to(), to)
                        .filter(mending -> mending.section()
                                .filter(after -> hidden(after, nailer))
                                .isPresent())
                : Optional.empty();
        return new Cure(words, tried.map(Mending::changes).orElse(List.of()));
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
