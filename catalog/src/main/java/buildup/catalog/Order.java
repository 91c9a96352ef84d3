package buildup.catalog;

import buildup.catalog.words.Speaker;
import buildup.profiles.Profile;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Code;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;

/**
 * One call for a profile, its sizes read.
 *
 * @param text as asked for, blanks set right
 */
record Order(String text, List<Length> sizes, Mark mark, Speaker speaker) {

    /** A molding larger than this is a slip, most likely millimetres read as inches. */
    private static final Length LARGEST_MOLDING = Length.inches(24);

    Optional<Profile> board() {
        if (sizes.size() != 2) {
            speaker.refuse("missing-size", "A board needs thickness x width.", mark, "Write it as board 3/4 x 5-1/2.");
            return Optional.empty();
        }
        return positive(List.of("thickness", "width"))
                ? Optional.of(Profile.board(
                        text, sizes.get(0).toInches(), sizes.get(1).toInches()))
                : Optional.empty();
    }

    /** The order with every size of the family, those left out taken from its usual sizes. */
    Optional<Order> complete(Family family) {
        int wanted = family.sizes().size();
        if (sizes.size() == wanted) {
            return Optional.of(this);
        }
        List<List<Length>> usual = family.usual();
        if (sizes.isEmpty() && usual.size() == 1) {
            return Optional.of(new Order(text + " " + Sizes.text(usual.get(0)), usual.get(0), mark, speaker));
        }
        if (sizes.size() == 1 && wanted == 2) {
            Optional<Length> thickness = thickness(usual, sizes.get(0));
            if (thickness.isPresent()) {
                return Optional.of(new Order(text, List.of(thickness.get(), sizes.get(0)), mark, speaker));
            }
        }
        speaker.refuse(
                sizes.size() > wanted ? "not-a-size" : "missing-size",
                family.name() + " needs " + String.join(" x ", family.sizes()) + ".",
                mark,
                usually(family));
        return Optional.empty();
    }

    /** The thickness usual at that width, or that of all usual sizes when they have but one. */
    private static Optional<Length> thickness(List<List<Length>> usual, Length width) {
        List<Length> atWidth = usual.stream()
                .filter(sizes -> sizes.get(1).near(width, Sizes.SAME))
                .map(sizes -> sizes.get(0))
                .distinct()
                .toList();
        List<Length> any = usual.stream().map(sizes -> sizes.get(0)).distinct().toList();
        List<Length> candidates = atWidth.isEmpty() ? any : atWidth;
        return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
    }

    private static String usually(Family family) {
        List<String> usual = family.usual().stream().map(Sizes::text).toList();
        return usual.isEmpty()
                ? "Give " + String.join(" x ", family.sizes()) + "."
                : "Usual sizes: " + String.join(", ", usual) + ".";
    }

    /** The profile of a family in this size, or refusals. */
    Optional<Profile> draw(Shape shape) {
        Family family = shape.family();
        if (!positive(family.sizes())) {
            return Optional.empty();
        }
        sizes.stream()
                .filter(size -> size.compareTo(LARGEST_MOLDING) > 0)
                .findFirst()
                .ifPresent(size -> tooLarge(family, size));
        return new Draftsman(shape, this).profile();
    }

    private boolean positive(List<String> names) {
        boolean all = true;
        for (int i = 0; i < sizes.size(); i++) {
            if (sizes.get(i).compareTo(Sizes.SAME) <= 0) {
                speaker.refuse(
                        "thickness-zero-or-negative",
                        "The " + names.get(i) + " of '" + text + "' is " + Sizes.text(sizes.get(i)) + ".",
                        mark,
                        "Give it more than nothing.");
                all = false;
            }
        }
        return all;
    }

    private void tooLarge(Family family, Length size) {
        String inches = LengthPrinter.decimals(size, 1);
        String feet = LengthPrinter.fraction(size.times(1.0 / 12), 2).replaceAll("[-+]$", "");
        speaker.notices()
                .add(Notice.problem(
                                "mm-read-as-inches",
                                "A " + family.kind() + " of " + inches + ": as inches that is " + feet
                                        + " ft of molding.")
                        .at(mark)
                        .of(speaker.owner())
                        .amount(size)
                        .cure("Write mm behind it if millimetres are meant."));
    }

    /** Says why this size cannot be drawn. */
    void refuse(Notice reason, Family family) {
        speaker.notices()
                .add(Code.of(reason.code(), "")
                        .refusal("'{size}' cannot be drawn: {reason}", "Take a larger size. {usually}")
                        .with("size", text)
                        .with("reason", reason.sentence())
                        .with("usually", usually(family))
                        .at(mark)
                        .of(speaker.owner()));
    }
}
