package buildup.engine.buy;

import buildup.engine.room.block.LooseBlock;
import buildup.engine.section.compose.Section;

/**
 * What shows of a piece along a run.
 *
 * @param run number of the run
 * @param body number of the piece, or that of a kind of block
 * @param faces along its sticks and returns, sq in
 * @param ends where it is cut square and its end grain shows, sq in
 */
record FaceArea(int run, int body, double faces, double ends) {
    /** As the piece is called, or the block that it is. */
    String name(Section section) {
        return LooseBlock.Kind.of(body).map(LooseBlock.Kind::word).orElseGet(() -> section.name(body));
    }

    double area() {
        return faces + ends;
    }
}
