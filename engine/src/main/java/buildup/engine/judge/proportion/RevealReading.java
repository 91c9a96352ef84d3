package buildup.engine.judge.proportion;

import buildup.engine.section.compose.Reveal;
import buildup.shared.figure.Phrase;
import java.util.List;

/** A reveal that an eye compares with others, and what a person may want to look at. */
public record RevealReading(Reveal reveal, List<Phrase> remarks) {
    /** Copies the list. */
    public RevealReading {
        remarks = List.copyOf(remarks);
    }
}
