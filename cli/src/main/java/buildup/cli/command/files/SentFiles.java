package buildup.cli.command.files;

import java.util.List;
import java.util.Optional;

/**
 * The documents that say one job, sign for sign.
 *
 * @param stack the stack document, by its name alone
 * @param beside the catalogs that it names, as it names them
 * @param lists the catalogs that were given beside it, in their order
 */
record SentFiles(Named stack, List<Named> beside, List<Named> lists) {
    SentFiles {
        beside = List.copyOf(beside);
        lists = List.copyOf(lists);
    }

    /** A document by its name, as it was read. */
    static final class Named {
        private final String name;
        private final byte[] bytes;

        Named(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes.clone();
        }

        String name() {
            return name;
        }

        byte[] bytes() {
            return bytes.clone();
        }
    }

    /** The catalog that the stack names so. */
    Optional<Named> beside(String name) {
        return beside.stream().filter(one -> one.name().equals(name)).findFirst();
    }
}
