package buildup.catalog;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.catalog.family.Family;
import buildup.catalog.family.Shape;
import buildup.catalog.words.WordProblems;
import buildup.profiles.Profile;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;

/**
 * One call for a profile, its sizes read.
 *
 * @param text as asked for, blanks set right
 * @param unit of bare numbers in it
 */
record ProfileRequest(String text, List<Length> sizes, LengthUnit unit, Mark mark, WordProblems speaker) {

    /** A molding larger than this is a slip, most likely millimeters read as inches. */
    private static final Length LARGEST_MOLDING = Length.inches(24);

    private static final List<Length> USUAL_FRIEZE = List.of(Length.inches(0.75), Length.inches(5.5));

    Optional<Profile> board() {
        if (sizes.size() != 2) {
            speaker.say(CatalogNotices.BOARD_SIZES.with("size", Sizes.figures(USUAL_FRIEZE)), mark);
            return Optional.empty();
        }
        return positive(List.of("thickness", "width"))
                ? Optional.of(Profile.board(
                        text, sizes.get(0).toInches(), sizes.get(1).toInches()))
                : Optional.empty();
    }

    /** The order with every size of the family, those left out taken from its usual sizes. */
    Optional<ProfileRequest> complete(Family family) {
        int wanted = family.sizes().size();
        if (sizes.size() == wanted) {
            return Optional.of(this);
        }
        List<List<Length>> usual = family.usual();
        if (sizes.isEmpty() && usual.size() == 1) {
            return Optional.of(
                    new ProfileRequest(text + " " + Sizes.call(usual.get(0), unit), usual.get(0), unit, mark, speaker));
        }
        if (sizes.size() == 1 && wanted == 2) {
            Optional<Length> thickness = thickness(usual, sizes.get(0));
            if (thickness.isPresent()) {
                return Optional.of(
                        new ProfileRequest(text, List.of(thickness.get(), sizes.get(0)), unit, mark, speaker));
            }
        }
        Kind kind = sizes.size() > wanted ? CatalogNotices.TOO_MANY_SIZES : CatalogNotices.TOO_FEW_SIZES;
        speaker.say(
                kind.with("family", family.name())
                        .with("sizes", Sizes.names(family.sizes()))
                        .with("usually", usually(family)),
                mark);
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

    private static Phrase usually(Family family) {
        List<Phrase> usual = family.usual().stream().map(Sizes::figures).toList();
        return usual.isEmpty()
                ? CatalogNotices.GIVE_SIZES.with("sizes", Sizes.names(family.sizes()))
                : CatalogNotices.USUAL_SIZES.with("sizes", Listing.commas(usual));
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
                speaker.say(
                        CatalogNotices.NOTHING_LEFT
                                .with("which", names.get(i))
                                .with("call", text)
                                .with("size", Sizes.figure(sizes.get(i))),
                        mark);
                all = false;
            } else if (sizes.get(i).toInches() < Tolerance.TOUCHING) {
                speaker.say(
                        CatalogNotices.TOO_THIN
                                .with("which", names.get(i))
                                .with("call", text)
                                .with("size", thin(sizes.get(i).toInches()))
                                .with(
                                        "least",
                                        thin(Tolerance.TOUCHING)
                                                .rounded(Rounding.decimals(3).to(Rounding.Side.UP))),
                        mark);
                all = false;
            }
        }
        return all;
    }

    private static Figure thin(double inches) {
        return Figure.length(inches).rounded(Rounding.decimals(6));
    }

    private void tooLarge(Family family, Length size) {
        Notice said = unit.isMetric()
                ? CatalogNotices.LARGE_METRIC_MOLDING.notice()
                : CatalogNotices.LARGE_MOLDING
                        .with(
                                "inches",
                                Figure.of(Quantity.COUNT, size.toInches()).rounded(Rounding.decimals(1)))
                        .with("run", Figure.of(Quantity.RUN, size.toInches() / 12));
        speaker.say(said.with("kind", family.kind()).amount(Figure.length(size.toInches())), mark);
    }

    /** Says why this size cannot be drawn. */
    void refuse(Notice reason, Family family) {
        speaker.say(
                CatalogNotices.cannotBeDrawn(reason.kind().code())
                        .with("size", text)
                        .with("reason", reason.sentence())
                        .with("usually", usually(family)),
                mark);
    }
}
