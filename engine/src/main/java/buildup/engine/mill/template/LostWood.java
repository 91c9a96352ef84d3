package buildup.engine.mill.template;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Segment;
import buildup.profiles.rolling.ThinPart;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Wood that the template of a bushing has no place for, and that a router would cut off: see {@link ThinPart}.
 *
 * @param edge of the piece that is lost, stretch by stretch
 * @param said which piece, how thin it is, what is lost, and the cure
 */
public record LostWood(List<Segment> edge, Notice said) {
    private static final Code TOO_THIN_FOR_A_BUSHING = Code.of(
            "too-thin-for-a-bushing",
            "A template for a bushing is smaller than the piece, and has no place for a thin part of it.");

    private static final String WIDER = "Take a bushing less than {width} larger than its bit, or follow a template as"
            + " large as the piece with a bearing.";

    private static final Kind TOO_THIN = TOO_THIN_FOR_A_BUSHING.note(
            "The bushing's template of '{name}' holds nothing thinner than {least}: the piece is {width} at its thinnest,"
                    + " and up to {lost} of it would be cut off.",
            WIDER);
    private static final Kind TOO_SHARP = TOO_THIN_FOR_A_BUSHING.note(
            "The bushing's template of '{name}' holds nothing thinner than {least}: the piece thins out to an edge, and up"
                    + " to {lost} of it would be cut off.",
            "Follow a template as large as the piece with a bearing.");
    private static final Kind ALL_TOO_THIN = TOO_THIN_FOR_A_BUSHING.note(
            "The bushing's template of '{name}' holds nothing thinner than {least}: nothing is left of it.", WIDER);

    /** Copies the list. */
    public LostWood {
        edge = List.copyOf(edge);
    }

    /**
     * What is lost of a piece.
     *
     * @param name of the piece
     * @param inset how far inside the piece the template lies, in; above 0
     * @return nothing where the template holds it all
     */
    public static Optional<LostWood> of(String name, Outline outline, double inset) {
        List<ThinPart> parts = ThinPart.of(outline, inset);
        double lost = parts.stream().mapToDouble(ThinPart::lost).max().orElse(0);
        return parts.stream()
                .min(Comparator.comparingDouble(ThinPart::width))
                .map(thinnest -> new LostWood(
                        parts.stream().flatMap(part -> part.edge().stream()).toList(),
                        kind(thinnest, lost)
                                .with("name", name)
                                .with("width", Figure.fine(thinnest.width()))
                                .with("least", Figure.fine(2 * inset))
                                .with("lost", Figure.fine(lost))));
    }

    private static Kind kind(ThinPart thinnest, double lost) {
        if (Double.isInfinite(lost)) {
            return ALL_TOO_THIN;
        }
        return thinnest.width() > 0 ? TOO_THIN : TOO_SHARP;
    }
}
