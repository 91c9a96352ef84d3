package buildup.engine.room.plan;

import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;

/**
 * Stretches of wall that follow one another, from left to right as seen from the room.
 *
 * @param left, right its ends; both absent when the last stretch meets the first at a corner
 * @param others ends of single pieces that end otherwise
 * @param opening whether it runs round an opening, in the plane of the wall, as a casing does: its stretches are the
 *     opening's edges, its corners turn in the wall's face
 * @param coped whether inside corners are coped, where they do not say otherwise
 * @param entry where one comes in, from where the joints are looked at first
 * @param grain names of the pieces whose grain runs on round the corners
 */
public record WallRun(
        String name,
        List<Stretch> stretches,
        Optional<Ending> left,
        Optional<Ending> right,
        Others others,
        boolean opening,
        boolean coped,
        Optional<Entry> entry,
        List<String> grain,
        Mark mark) {
    public WallRun {
        stretches = List.copyOf(stretches);
        grain = List.copyOf(grain);
    }

    /**
     * Where one comes into the room.
     *
     * @param stretch its number in the run
     * @param along from the stretch's left end, in
     */
    public record Entry(int stretch, double along) {}

    /** Ends of single pieces on either side. */
    public record Others(List<Ending> left, List<Ending> right) {
        /** No piece ends otherwise. */
        public static final Others NONE = new Others(List.of(), List.of());

        public Others {
            left = List.copyOf(left);
            right = List.copyOf(right);
        }

        private static Optional<Ending> of(List<Ending> own, String piece) {
            return own.stream().filter(end -> end.pieces().contains(piece)).findFirst();
        }
    }

    /** How a piece of that name ends on the left; absent when the run closes. */
    public Optional<Ending> left(String piece) {
        return Others.of(others.left(), piece).or(() -> left);
    }

    /** How a piece of that name ends on the right; absent when the run closes. */
    public Optional<Ending> right(String piece) {
        return Others.of(others.right(), piece).or(() -> right);
    }

    /** Whether the sticks at the right end of a stretch are coped. */
    public boolean copesAt(int stretch) {
        Stretch before = stretches.get(stretch);
        boolean said = before.cope() == Stretch.Cope.LEFT || before.cope() == Stretch.Cope.RIGHT;
        return !opening
                && before.corner().filter(WallCorner::inside).isPresent()
                && (said || (coped && before.cope() == Stretch.Cope.UNSAID));
    }

    /** Whether it comes back to where it starts, so that it has no ends. */
    public boolean closed() {
        return left.isEmpty() && right.isEmpty();
    }

    /** The corner at the left end of a stretch, if there is one. */
    public Optional<WallCorner> cornerBefore(int stretch) {
        if (stretch > 0) {
            return stretches.get(stretch - 1).corner();
        }
        return closed() ? stretches.get(stretches.size() - 1).corner() : Optional.empty();
    }

    /** The stretch to the left of one, the last before the first. */
    public Stretch before(int stretch) {
        return stretches.get(Math.floorMod(stretch - 1, stretches.size()));
    }

    /** The stretch to the right of one, the first after the last. */
    public Stretch after(int stretch) {
        return stretches.get((stretch + 1) % stretches.size());
    }
}
