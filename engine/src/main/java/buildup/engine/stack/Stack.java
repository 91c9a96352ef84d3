package buildup.engine.stack;

import buildup.shared.length.LengthReader;
import java.util.List;

/**
 * A stack document, read.
 *
 * @param boardList the list that nominal sizes are taken from
 * @param lengths reads lengths in the document's unit and with its named sizes; questions read their own blocks with it
 */
public record Stack(
        String title,
        String boardList,
        Space space,
        List<Eye> eyes,
        List<Light> lights,
        List<Piece> pieces,
        LengthReader lengths) {
    public Stack {
        eyes = List.copyOf(eyes);
        lights = List.copyOf(lights);
        pieces = List.copyOf(pieces);
    }
}
