package buildup.cli.command.files;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * The documents that a run has read, each as it was last read, for whoever is to mend a fault of the program. Their
 * readers bound their size.
 */
public final class DocumentsRead {
    private final Map<String, byte[]> documents = new TreeMap<>();

    DocumentsRead() {}

    /** Keeps a document. */
    public void add(String name, byte[] bytes) {
        documents.put(name, bytes);
    }

    /** Whether nothing has been read. */
    public boolean isEmpty() {
        return documents.isEmpty();
    }

    /** The documents, each behind a line with its name and the version; nothing of the machine or its user. */
    public byte[] written(String version) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        documents.forEach((name, bytes) -> {
            all.writeBytes(("# " + version + ", " + name + "\n").getBytes(StandardCharsets.UTF_8));
            all.writeBytes(bytes);
            all.writeBytes("\n".getBytes(StandardCharsets.UTF_8));
        });
        return all.toByteArray();
    }
}
