package buildup.engine.mill.template;

import buildup.catalog.Catalog;
import buildup.catalog.words.WalkReader;
import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.shared.document.DocumentCodes;
import buildup.shared.document.Fields;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What templates are made for, as the document says it.
 *
 * @param bearing diameter of the bearing that runs on the template, as large as the cutter; in
 * @param bushing outer diameter of a guide bushing, in
 * @param bit diameter of the bit in that bushing, in
 * @param ends shapes of ends
 */
public record Templates(OptionalDouble bearing, OptionalDouble bushing, OptionalDouble bit, List<EndShape> ends) {
    private static final Kind NO_SHAPE = DocumentCodes.MISSING_KEY.refusal(
            "The end '{name}' has no one shape.",
            "Give it a 'section:' in profile words, or a 'profile:' of the catalog.");
    private static final Kind NO_NAME =
            DocumentCodes.MISSING_KEY.refusal("An end has no name.", "Give it one, as 'name: scroll'.");
    private static final Kind NO_DIAMETER = DocumentCodes.NOT_A_SIZE.refusal(
            "'{key}' is a diameter, above 0.", "Give it as it stands on the bearing, the bushing or the bit.");

    private static final Kind ALONE = DocumentCodes.MISSING_KEY.refusal(
            "A {given} without a {missing} does not say where the edge of its template runs.",
            "Give both, as 'bushing: 5/8, bit: 1/4', or a 'bearing:' alone.");
    private static final Kind BIT_TOO_LARGE = DocumentCodes.NOT_A_SIZE.refusal(
            "A bit of {bit} does not go through a bushing of {bushing}.",
            "Give the outer diameter of the bushing, and a smaller bit.");

    /** Copies the list. */
    public Templates {
        ends = List.copyOf(ends);
    }

    /** How far inside the piece the template of a bushing lies, in; absent without bushing and bit. */
    public OptionalDouble inset() {
        return bushing.isPresent() && bit.isPresent()
                ? OptionalDouble.of((bushing.getAsDouble() - bit.getAsDouble()) / 2)
                : OptionalDouble.empty();
    }

    /**
     * Reads the blocks {@code templates:} and {@code ends:}.
     *
     * @param lengths of the document
     * @param boards the list that nominal sizes are taken from
     */
    public static Templates read(Fields root, Catalog catalog, LengthReader lengths, String boards, Notices notices) {
        Optional<Fields> block = root.fields("templates");
        List<EndShape> ends = new ArrayList<>();
        for (Fields row : root.list("ends")) {
            Optional<Scalar> name = row.needed("name", NO_NAME.notice().at(row.mark()));
            Optional<Node> words = row.node("section");
            Optional<Scalar> call = row.scalar("profile");
            if (name.isPresent() && words.isPresent() == call.isPresent()) {
                notices.add(NO_SHAPE.with("name", name.get().text()).at(row.mark()));
            } else if (name.isPresent()) {
                Optional<Outline> outline = words.isPresent()
                        ? WalkReader.read(words.get(), lengths, name.get().text(), notices)
                        : catalog.profile(call.orElseThrow(), boards, lengths, notices)
                                .map(Profile::outline);
                outline.ifPresent(shape -> ends.add(new EndShape(name.get().text(), shape)));
            }
        }
        Templates templates = new Templates(
                diameter(block, "bearing", notices),
                diameter(block, "bushing", notices),
                diameter(block, "bit", notices),
                ends);
        block.ifPresent(fields -> templates.pair(fields, notices));
        return templates;
    }

    /** A bushing and its bit are of use together only; a wrong one has been told of before. */
    private void pair(Fields block, Notices notices) {
        if (block.has("bushing") != block.has("bit")) {
            boolean bushed = block.has("bushing");
            String given = bushed ? "bushing" : "bit";
            notices.add(ALONE.with("given", given)
                    .with("missing", bushed ? "bit" : "bushing")
                    .at(block.mark(given)));
        } else if (inset().isPresent() && inset().getAsDouble() <= 0) {
            notices.add(BIT_TOO_LARGE
                    .with("bit", Figure.fine(bit.getAsDouble()))
                    .with("bushing", Figure.fine(bushing.getAsDouble()))
                    .at(block.mark("bit")));
        }
    }

    private static OptionalDouble diameter(Optional<Fields> block, String key, Notices notices) {
        Optional<Length> read = block.flatMap(fields -> fields.length(key));
        if (read.isEmpty()) {
            return OptionalDouble.empty();
        }
        double inches = read.get().toInches();
        if (inches <= 0) {
            notices.add(NO_DIAMETER.with("key", key).at(block.orElseThrow().mark(key)));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(inches);
    }
}
