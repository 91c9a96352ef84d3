package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import java.util.List;
import java.util.Optional;

/** What a place of a document leads to. */
sealed interface Target {

    /** The mark by which something on the way there is repeated elsewhere: a change would show there too. */
    Optional<String> shared();

    /**
     * An entry of a list, or a key and what it holds.
     *
     * @param in the list or mapping
     * @param index of the entry in it, counted from 0
     */
    record Entry(Group in, int index, Optional<String> shared) implements Target {
        Item item() {
            return in.items().get(index);
        }

        TextPart value() {
            return item().value();
        }
    }

    /**
     * Keys that are not there yet, below something that is.
     *
     * @param holder what is to hold them; the top of the document when absent
     * @param keys one below the other, at least one
     */
    record Missing(Optional<Entry> holder, List<String> keys, Optional<String> shared) implements Target {}
}
