package buildup.shared.document.edit;

import buildup.shared.edit.Naming;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a stack document mentions the names that it gives. A key that is new and mentions one belongs into this list.
 *
 * @param path keys from the top of the document; it speaks for all that lies below
 * @param form how the name stands there
 */
record Mentions(String path, Form form) {

    /** How a name stands in a text that mentions it. */
    enum Form {
        /** It is the whole text. */
        ALONE,
        /** The edge of a piece, and lengths added or taken off: {@code frieze.top - lip}. */
        PLACE,
        /** Behind the first word, between blanks: {@code board lip x 3}, {@code out lip}. */
        WORDS,
        /** A line of what has to be met: {@code reveal of frieze over bed in lamp from chair >= 1/4}. */
        SENTENCE
    }

    private static final List<Mentions> SENTENCES = all(Form.SENTENCE, "must", "wish");

    private static final List<Mentions> OF_PIECES = Stream.of(
                    all(
                            Form.ALONE,
                            "pieces.fixed",
                            "fastenings.piece",
                            "fastenings.after",
                            "loads.on",
                            "plan.grain",
                            "plan.left.pieces",
                            "plan.right.pieces",
                            "plan.stretches.pieces",
                            "plan.stretches.openings.pieces",
                            "bench",
                            "parts",
                            "firebox.noncombustible",
                            "supplies.adhesive.pieces",
                            "supplies.primer.pieces",
                            "supplies.paint.pieces"),
                    all(
                            Form.PLACE,
                            "pieces.back",
                            "pieces.face",
                            "pieces.bottom",
                            "pieces.top",
                            "pieces.at",
                            "fastenings.at"),
                    SENTENCES)
            .flatMap(List::stream)
            .toList();

    private static final List<Mentions> OF_SIZES = Stream.of(
                    all(
                            Form.PLACE,
                            "sizes",
                            "space.floor",
                            "space.ceiling",
                            "space.projection",
                            "space.wall",
                            "eyes.distance",
                            "eyes.height",
                            "lights.at",
                            "lights.width",
                            "approach.from",
                            "approach.to",
                            "loads.out",
                            "plan.left.plumb",
                            "plan.left.casing",
                            "plan.left.room",
                            "plan.left.block",
                            "plan.right.block",
                            "plan.stretches.block",
                            "plan.entry.at",
                            "plan.studs",
                            "plan.joists",
                            "plan.stretches.studs",
                            "plan.stretches.joists",
                            "plan.right.plumb",
                            "plan.right.casing",
                            "plan.right.room",
                            "plan.stretches.length",
                            "plan.stretches.plumb",
                            "plan.stretches.ceiling",
                            "plan.stretches.floor",
                            "plan.stretches.wall",
                            "plan.stretches.openings.from",
                            "plan.stretches.openings.to",
                            "plan.stretches.openings.bottom",
                            "plan.stretches.openings.top",
                            "plan.stretches.openings.casing",
                            "stock.kerf",
                            "stock.rip-kerf",
                            "stock.trim",
                            "stock.offcut",
                            "stock.hold",
                            "stock.sticks.buy",
                            "stock.sticks.on-hand",
                            "supplies.adhesive.bead",
                            "table-saw-cove.width",
                            "table-saw-cove.depth",
                            "table-saw-cove.blade",
                            "table-saw-cove.kerf",
                            "pieces.rip",
                            "pieces.back",
                            "pieces.face",
                            "pieces.bottom",
                            "pieces.top",
                            "pieces.at",
                            "pieces.spread",
                            "tolerance.plumb",
                            "tolerance.ceiling",
                            "firebox.top",
                            "firebox.left",
                            "firebox.right",
                            "firebox.beside.from",
                            "firebox.beside.to",
                            "firebox.beside.out",
                            "keep-clear",
                            "proportion.room",
                            "proportion.opening",
                            "fastenings.at",
                            "fastenings.spacing"),
                    all(
                            Form.WORDS,
                            "pieces.profile",
                            "pieces.section",
                            "stock.sticks.of",
                            "fastenings.use",
                            "supplies.fasteners.of"),
                    SENTENCES)
            .flatMap(List::stream)
            .toList();

    private static List<Mentions> all(Form form, String... paths) {
        return Stream.of(paths).map(path -> new Mentions(path, form)).toList();
    }

    /** How a text at a place mentions a name of the kind, if it does. */
    static Optional<Form> at(String path, Naming kind) {
        List<Mentions> known = switch (kind) {
            case PIECE -> OF_PIECES;
            case SIZE -> OF_SIZES;
            case EYE, LIGHT -> SENTENCES;
        };
        return known.stream()
                .filter(mention -> path.equals(mention.path) || path.startsWith(mention.path + "."))
                .map(Mentions::form)
                .findFirst();
    }
}
