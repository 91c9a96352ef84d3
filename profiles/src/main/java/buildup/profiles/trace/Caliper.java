package buildup.profiles.trace;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A size of the traced piece as measured with calipers.
 *
 * @param members what the jaws lay on: one or more members by name; none for the whole piece
 * @param size in
 */
public record Caliper(List<String> members, Across across, double size) {
    /** Copies the list. */
    public Caliper {
        members = List.copyOf(members);
    }

    /** A size of the whole piece. */
    public Caliper(Across across, double size) {
        this(List.of(), across, size);
    }

    /** What was measured, on the piece with its back upright. */
    public enum Across {
        /** From back to face, or out over the members that are named. */
        WIDTH,
        /** From bottom to top, or up over the members that are named. */
        HEIGHT,
        /** The lesser of the two. */
        THICKNESS,
        /** Of one arc. */
        RADIUS;

        /** Its name in a sentence. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        double of(Box box) {
            return switch (this) {
                case WIDTH -> box.width();
                case HEIGHT -> box.height();
                case THICKNESS, RADIUS -> Math.min(box.width(), box.height());
            };
        }
    }

    /** Whether it was taken over the whole piece. */
    boolean isOverall() {
        return members.isEmpty();
    }

    /** The first size of a kind over the whole piece. */
    static Optional<Double> overall(List<Caliper> calipers, Across across) {
        return calipers.stream()
                .filter(caliper -> caliper.isOverall() && caliper.across == across)
                .map(Caliper::size)
                .findFirst();
    }

    /** What it is on an outline, in; empty when the outline has no such members, or no such radius. */
    Optional<Double> on(Outline outline) {
        if (isOverall()) {
            return Optional.of(across.of(outline.box()));
        }
        List<Segment> named = outline.strokes().stream()
                .filter(stroke -> members.contains(stroke.member()))
                .map(Stroke::segment)
                .toList();
        boolean all = members.stream().allMatch(name -> outline.members().contains(name));
        if (!all || named.isEmpty()) {
            return Optional.empty();
        }
        if (across == Across.RADIUS) {
            return named.get(0) instanceof Arc arc ? Optional.of(arc.radius()) : Optional.empty();
        }
        return Optional.of(across.of(Box.around(named.stream().map(Segment::box).toList())));
    }

    /** What was measured, in words: {@code height}, {@code face height}, {@code bottom to cove width}. */
    String words() {
        return isOverall() ? across.word() : String.join(" to ", members) + " " + across.word();
    }
}
