package buildup.engine.hold.season;

import buildup.engine.section.compose.Reveal;
import buildup.profiles.outline.Point;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A stack through its seasons; the first is the one in which its sizes hold.
 *
 * @param held one for each piece of the stack
 * @param moved for each season how each body has moved since the first
 * @param movements how much each piece is larger or smaller
 * @param effects what that does where pieces meet
 * @param unknown numbers of the pieces whose wood is not listed with its movement: they are not moved
 */
public record Year(
        List<Season> seasons,
        List<Held> held,
        List<List<Moved>> moved,
        List<Movement> movements,
        List<Effect> effects,
        List<Integer> unknown) {
    /** No seasons are given. */
    public static final Year NONE = new Year(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /**
     * How much a piece grows across the section.
     *
     * @param season number of the season
     * @param up whether its height, else its depth out from the wall
     * @param amount in; negative when it shrinks
     */
    public record Movement(int season, int body, boolean up, double amount) {}

    /** Copies the lists. */
    public Year {
        seasons = List.copyOf(seasons);
        held = List.copyOf(held);
        moved = moved.stream().map(List::copyOf).toList();
        movements = List.copyOf(movements);
        effects = List.copyOf(effects);
        unknown = List.copyOf(unknown);
    }

    /** Whether there is anything to compare. */
    public boolean asked() {
        return seasons.size() > 1;
    }

    /** Number of the season in which the wood is driest. */
    public int driest() {
        return IntStream.range(0, seasons.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> seasons.get(i).moisture()))
                .orElse(0);
    }

    /** Number of the season in which the wood is dampest. */
    public int dampest() {
        return IntStream.range(0, seasons.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> seasons.get(i).moisture()))
                .orElse(0);
    }

    /** What moves farthest in sight; a long face between two courses is no reveal that an eye compares. */
    public Optional<Effect> farthest() {
        return effects.stream()
                .filter(effect -> effect.seen() && effect.place() != Effect.Place.ROOM)
                .filter(effect -> effect.place() != Effect.Place.REVEAL
                        || !Reveal.isFace(effect.left().orElse(0) - effect.amount()))
                .max(Comparator.comparingDouble(effect -> Math.abs(effect.amount())));
    }

    /** How far a place of a body has moved in a season. */
    Point moved(int season, int body, Point place) {
        return moved.get(season).get(body).at(place);
    }
}
