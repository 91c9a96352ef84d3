package buildup.shared.notice;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;

/**
 * One value of a document and what is to stand in its place.
 *
 * @param place keys and names from the top down with dots between them, as {@code pieces.frieze.bottom}
 * @param value what is to stand there; its figures become sizes in the unit of the document, as a person would type them
 */
public record Change(String place, Phrase value) {
    /** What a person types who follows it, in a document that counts in that unit. */
    public String typed(LengthUnit unit) {
        return new FigurePrinter(unit).print(value);
    }
}
