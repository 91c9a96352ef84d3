package buildup.packing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The one jar, in which what Java would make as it runs is spelled out; see {@link SpelledOut}. */
public final class PackedJar {
    private static final String OURS = "buildup/";
    private static final String CLASS = ".class";

    private PackedJar() {}

    /**
     * Spells out what a jar holds, in its place.
     *
     * @param words the jar
     * @throws IOException where it cannot be read or written; the jar is then as it was
     */
    public static void main(String[] words) throws IOException {
        Path jar = Path.of(words[0]);
        Path packed = jar.resolveSibling(jar.getFileName() + ".packed");
        try {
            write(packed, spelled(read(jar)));
            Files.move(packed, jar, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(packed);
        }
    }

    /** All entries in their order; the program's own classes changed, and what they took on behind them. */
    private static Map<ZipEntry, byte[]> spelled(Map<ZipEntry, byte[]> entries) {
        Map<String, byte[]> ours = new LinkedHashMap<>();
        entries.forEach((entry, bytes) -> {
            String name = entry.getName();
            if (name.startsWith(OURS) && name.endsWith(CLASS)) {
                ours.put(name.substring(0, name.length() - CLASS.length()), bytes);
            }
        });
        Map<String, byte[]> spelled = SpelledOut.of(ours);
        Map<ZipEntry, byte[]> all = new LinkedHashMap<>();
        entries.forEach((entry, bytes) -> {
            String name = entry.getName();
            byte[] changed =
                    name.endsWith(CLASS) ? spelled.remove(name.substring(0, name.length() - CLASS.length())) : null;
            all.put(alike(name, entry), changed == null ? bytes : changed);
        });
        // as old as the others, so that the same sources give the same jar
        ZipEntry first = entries.keySet().iterator().next();
        spelled.forEach((name, bytes) -> all.put(alike(name + CLASS, first), bytes));
        return all;
    }

    private static ZipEntry alike(String name, ZipEntry old) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(old.getTimeLocal());
        return entry;
    }

    private static Map<ZipEntry, byte[]> read(Path jar) throws IOException {
        Map<ZipEntry, byte[]> entries = new LinkedHashMap<>();
        try (InputStream file = Files.newInputStream(jar);
                ZipInputStream zip = new ZipInputStream(file)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry, zip.readAllBytes());
            }
        }
        return entries;
    }

    private static void write(Path jar, Map<ZipEntry, byte[]> entries) throws IOException {
        try (OutputStream file = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(file)) {
            for (Map.Entry<ZipEntry, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(entry.getKey());
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
    }
}
