package buildup.engine.hold.season;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.season.Effect.Place;
import buildup.engine.hold.season.Held.Hold;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** What a piece would move between two rows of nails that hold it. */
final class NailPairs {
    private final Section section;
    private final List<Fixed> fixed;

    NailPairs(Section section, List<Fixed> fixed) {
        this.section = section;
        this.fixed = fixed;
    }

    /** Of each piece the two rows between which it would move most. */
    List<Effect> of(int season, List<Moved> moved) {
        List<Effect> effects = new ArrayList<>();
        TreeSet<Integer> pieces = new TreeSet<>(fixed.stream().map(Fixed::piece).toList());
        for (int piece : pieces) {
            List<Fixed> own = fixed.stream()
                    .filter(nail -> nail.piece() == piece && !nail.beyond().isEmpty())
                    .toList();
            for (int i = 0; i < own.size(); i++) {
                for (int j = i + 1; j < own.size(); j++) {
                    effects.add(pair(season, piece, own.get(i), own.get(j), moved));
                }
            }
        }
        return effects;
    }

    private Effect pair(int season, int piece, Fixed one, Fixed two, List<Moved> moved) {
        Hold from = Holders.hold(one);
        Hold to = Holders.hold(two);
        Point own = moved.get(piece).at(to.at()).minus(moved.get(piece).at(from.at()));
        Point theirs =
                moved.get(to.body()).at(to.at()).minus(moved.get(from.body()).at(from.at()));
        Point way = to.at().minus(from.at());
        double apart = way.length() > 0 ? own.minus(theirs).dot(way.unit()) : 0;
        return new Effect(
                season,
                Place.NAILS,
                section.name(piece) + " between " + one.fastening().name() + " and "
                        + two.fastening().name(),
                piece,
                piece,
                apart,
                OptionalDouble.empty(),
                false,
                from.at().towards(to.at(), 0.5),
                false);
    }
}
