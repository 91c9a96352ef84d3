package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Hiding;
import buildup.engine.look.light.Band;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.SeenMember;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Member;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.OptionalInt;

/** Says what becomes of a head, by the later pieces and the answers about light and sight. */
final class Hidings {
    private final Timber timber;
    private final List<Lighting> lights;
    private final List<Sighting> sights;

    Hidings(Timber timber, List<Lighting> lights, List<Sighting> sights) {
        this.timber = timber;
        this.lights = lights;
        this.sights = sights;
    }

    Hiding of(Spot spot, int step) {
        OptionalInt covered = coveredLater(spot, step);
        OptionalInt member = member(spot);
        boolean dark = !lights.isEmpty()
                && member.isPresent()
                && lights.stream().allMatch(light -> dark(light, member.getAsInt(), spot));
        List<String> seen = member.isEmpty()
                ? List.of()
                : sights.stream()
                        .filter(sight -> seen(sight, member.getAsInt(), spot))
                        .map(sight -> sight.eye().name())
                        .toList();
        return new Hiding(covered, member.isPresent(), spot.member().startsWith("quirk"), sights.size(), seen, dark);
    }

    private OptionalInt coveredLater(Spot spot, int step) {
        for (int i = step + 1; i < timber.count(); i++) {
            if (timber.body(i).inStack() && timber.solid(i).holds(spot.outside(Reaching.OVER))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private OptionalInt member(Spot spot) {
        List<Member> members = timber.section().members();
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).body() == spot.body() && on(members.get(i).segments(), spot)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean on(List<Segment> segments, Spot spot) {
        return segments.stream().anyMatch(segment -> segment.distance(spot.at()) <= Tolerance.TOUCHING);
    }

    private static boolean dark(Lighting light, int member, Spot spot) {
        return light.bands().stream()
                .filter(band -> band.member() == member && on(List.of(band.segment()), spot))
                .allMatch(band -> band.lit() != Band.Lit.LIT);
    }

    private static boolean seen(Sighting sight, int member, Spot spot) {
        return sight.members().stream()
                .filter(seen -> seen.member() == member)
                .map(SeenMember::visible)
                .anyMatch(visible -> on(visible, spot));
    }
}
