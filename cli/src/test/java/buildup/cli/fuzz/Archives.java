package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Archives of a job as the program writes them, and such as somebody packed by hand. */
final class Archives {
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private Archives() {}

    /** An archive with a stack in it, and mostly with the list that says so. */
    static byte[] of(Chance chance, String stack) {
        Map<String, String> entries = new LinkedHashMap<>();
        String name = chance.any("stack/job.yaml", "stack/sub/job.yaml", "job.yaml", "../job.yaml");
        StringBuilder list = new StringBuilder("stack: ").append(name).append('\n');
        if (chance.of(0.3)) {
            list.append("catalog: catalogs/1/own.yaml\n");
            if (chance.of(0.8)) {
                entries.put("catalogs/1/own.yaml", Papers.catalog(chance));
            }
        }
        if (chance.of(0.9)) {
            entries.put(chance.any("job.txt", "job.txt", "folder/job.txt"), list.toString());
        }
        if (chance.of(0.95)) {
            entries.put(name, stack);
        }
        return packed(entries);
    }

    private static byte[] packed(Map<String, String> entries) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> one : entries.entrySet()) {
                ZipEntry entry = new ZipEntry(one.getKey());
                entry.setTimeLocal(TIME);
                zip.putNextEntry(entry);
                zip.write(one.getValue().getBytes(UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
