package buildup.engine.section.heading;

import buildup.shared.document.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the title block says of the job. The program knows no date: all of it is in the words of who draws.
 *
 * @param revision the letter that is in force
 * @param scaleNote what is to be said of scale and printing
 * @param revisions all so far, in the order of the document
 */
public record JobSheet(
        Optional<String> name,
        Optional<String> client,
        Optional<String> address,
        Optional<String> drawnBy,
        Optional<String> checkedBy,
        Optional<String> number,
        Optional<String> revision,
        Optional<String> date,
        Optional<String> scaleNote,
        List<Revision> revisions) {
    /** Copies the list. */
    public JobSheet {
        revisions = List.copyOf(revisions);
    }

    /** Reads the blocks {@code job:} and {@code revisions:} of a document. */
    public static JobSheet read(Fields root) {
        Optional<Fields> job = root.fields("job");
        List<Revision> revisions = new ArrayList<>();
        for (Fields row : root.list("revisions")) {
            Optional<String> letter = text(Optional.of(row), "letter");
            Optional<String> date = text(Optional.of(row), "date");
            Optional<String> change = text(Optional.of(row), "change");
            revisions.add(new Revision(letter.orElse(""), date, change));
        }
        return new JobSheet(
                text(job, "name"),
                text(job, "client"),
                text(job, "address"),
                text(job, "drawn-by"),
                text(job, "checked-by"),
                text(job, "number"),
                text(job, "revision"),
                text(job, "date"),
                text(job, "scale-note"),
                revisions);
    }

    private static Optional<String> text(Optional<Fields> fields, String key) {
        return fields.flatMap(one -> one.text(key)).map(String::strip).filter(words -> !words.isEmpty());
    }

    /** The letter in force: that of the job, else the last revision's. */
    public Optional<String> inForce() {
        return revision.or(() -> revisions.isEmpty()
                ? Optional.empty()
                : Optional.of(revisions.get(revisions.size() - 1).letter()));
    }
}
