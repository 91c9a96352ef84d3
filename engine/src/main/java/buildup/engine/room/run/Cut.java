package buildup.engine.room.run;

import buildup.shared.figure.Phrase;
import java.util.Optional;

/**
 * A stick to be cut.
 *
 * @param body number of the piece in the section
 * @param length long point to long point along the stick, in
 * @param stock what it is cut from: a profile, or a board by thickness x width
 * @param thickness, width of the stick, in
 * @param grainGroup names the pieces whose grain runs on round their corners; they follow one another in the list
 * @param selfReturn whether it is the short piece that turns a course back to its own wall
 */
public record Cut(
        String course,
        String stretch,
        int body,
        double length,
        Phrase stock,
        double thickness,
        double width,
        EndCut left,
        EndCut right,
        Optional<String> grainGroup,
        boolean selfReturn) {}
