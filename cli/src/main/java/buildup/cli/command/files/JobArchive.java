package buildup.cli.command.files;

import buildup.shared.document.DocumentReader;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * A job in one ZIP file: its documents, and what was made of them for whoever has no such program. Unpacked, the stack
 * lies beside the catalogs that it names. Nothing of an archive is ever written to the disk: the documents that its list
 * names are read, each as large as a document may be, and no entry beside them is opened.
 */
final class JobArchive {
    /** The greatest archive that is opened, bytes. */
    static final long GREATEST_BYTES = 64L << 20;

    /** The most entries of one. */
    static final int MOST_ENTRIES = 1_000;

    /** The entry that lists the documents. */
    private static final String LIST = "job.txt";

    private static final String STACK = "stack/";
    private static final String STACK_LINE = "stack: ";
    private static final String CATALOG_LINE = "catalog: ";

    /** ZIP files begin so, an empty one too. */
    private static final List<byte[]> BEGINNINGS = List.of(new byte[] {'P', 'K', 3, 4}, new byte[] {'P', 'K', 5, 6});

    /** A time that every ZIP program knows; the program knows none. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipFile zip;
    private final String name;
    private final Notices notices;

    private JobArchive(ZipFile zip, String name, Notices notices) {
        this.zip = zip;
        this.name = name;
        this.notices = notices;
    }

    /**
     * Whether a file is an archive.
     *
     * @throws IOException when it cannot be read
     */
    static boolean is(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            byte[] begin = in.readNBytes(4);
            return BEGINNINGS.stream().anyMatch(one -> Arrays.equals(one, begin));
        }
    }

    /**
     * The documents of an archive.
     *
     * @param name for messages
     * @param notices told why there are none
     */
    static Optional<SentFiles> read(Path path, String name, Notices notices) {
        try {
            if (Files.size(path) > GREATEST_BYTES) {
                notices.add(FileNotices.LARGE_ARCHIVE
                        .with("file", name)
                        .with("size", Figure.count(Files.size(path) >> 20))
                        .with("most", Figure.count(GREATEST_BYTES >> 20)));
                return Optional.empty();
            }
            try (ZipFile zip = new ZipFile(path.toFile(), StandardCharsets.UTF_8)) {
                return new JobArchive(zip, name, notices).documents();
            }
        } catch (IOException | IllegalArgumentException damaged) {
            notices.add(FileNotices.BROKEN_ARCHIVE.with("file", name));
            return Optional.empty();
        }
    }

    private Optional<SentFiles> documents() throws IOException {
        if (zip.size() > MOST_ENTRIES) {
            notices.add(FileNotices.FULL_ARCHIVE
                    .with("file", name)
                    .with("entries", Figure.count(zip.size()))
                    .with("most", Figure.count(MOST_ENTRIES)));
            return Optional.empty();
        }
        Optional<? extends ZipEntry> list = zip.stream()
                .filter(entry -> entry.getName().equals(LIST) || entry.getName().endsWith("/" + LIST))
                .findFirst();
        if (list.isEmpty()) {
            notices.add(FileNotices.NO_JOB.with("file", name));
            return Optional.empty();
        }
        String at = list.get().getName();
        String folder = at.substring(0, at.length() - LIST.length());
        Optional<byte[]> lines = bytes(at);
        return lines.isEmpty() ? Optional.empty() : listed(folder, new String(lines.get(), StandardCharsets.UTF_8));
    }

    private Optional<SentFiles> listed(String folder, String list) throws IOException {
        Optional<SentFiles.Named> stack = Optional.empty();
        List<SentFiles.Named> beside = new ArrayList<>();
        List<SentFiles.Named> lists = new ArrayList<>();
        for (String line : list.lines().toList()) {
            boolean isStack = line.startsWith(STACK_LINE);
            if (isStack || line.startsWith(CATALOG_LINE)) {
                String entry = line.substring((isStack ? STACK_LINE : CATALOG_LINE).length());
                Optional<byte[]> bytes = bytes(folder + entry);
                if (bytes.isEmpty()) {
                    return Optional.empty();
                }
                if (isStack) {
                    stack = Optional.of(new SentFiles.Named(last(entry), bytes.get()));
                } else if (entry.startsWith(STACK)) {
                    beside.add(new SentFiles.Named(entry.substring(STACK.length()), bytes.get()));
                } else {
                    lists.add(new SentFiles.Named(last(entry), bytes.get()));
                }
            }
        }
        if (stack.isEmpty()) {
            notices.add(FileNotices.NO_JOB.with("file", name));
        }
        return stack.map(found -> new SentFiles(found, beside, lists));
    }

    private static String last(String entry) {
        return entry.substring(entry.lastIndexOf('/') + 1);
    }

    /** One entry, if it is there and no larger than a document may be. */
    private Optional<byte[]> bytes(String entry) throws IOException {
        ZipEntry found = zip.getEntry(entry);
        if (found == null || found.isDirectory()) {
            notices.add(FileNotices.NOT_IN_ARCHIVE.with("file", name).with("entry", entry));
            return Optional.empty();
        }
        try (InputStream in = zip.getInputStream(found)) {
            // what the entry says of its size may be a lie
            byte[] bytes = in.readNBytes(DocumentReader.GREATEST_BYTES + 1);
            if (bytes.length > DocumentReader.GREATEST_BYTES) {
                notices.add(FileNotices.LARGE_INPUT
                        .with("file", entry)
                        .with("document", "a document")
                        .with("most", Figure.count(DocumentReader.GREATEST_BYTES >> 20)));
                return Optional.empty();
            }
            return Optional.of(bytes);
        }
    }

    /**
     * An archive.
     *
     * @param made what was made of the documents, by its name
     */
    static byte[] write(SentFiles job, Map<String, byte[]> made) {
        StringBuilder list = new StringBuilder("A job for Buildup. It opens as it is: buildup report ARCHIVE.zip\n");
        Map<String, byte[]> entries = new LinkedHashMap<>();
        String stack = STACK + job.stack().name();
        list.append(STACK_LINE).append(stack).append('\n');
        entries.put(stack, job.stack().bytes());
        for (SentFiles.Named one : job.beside()) {
            list.append(CATALOG_LINE).append(STACK).append(one.name()).append('\n');
            entries.put(STACK + one.name(), one.bytes());
        }
        for (int i = 0; i < job.lists().size(); i++) {
            SentFiles.Named one = job.lists().get(i);
            String entry = "catalogs/" + (i + 1) + "/" + one.name();
            list.append(CATALOG_LINE).append(entry).append('\n');
            entries.put(entry, one.bytes());
        }
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put(LIST, list.toString().getBytes(StandardCharsets.UTF_8));
        all.putAll(entries);
        all.putAll(made);
        return zipped(all);
    }

    private static byte[] zipped(Map<String, byte[]> entries) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, byte[]> one : entries.entrySet()) {
                ZipEntry entry = new ZipEntry(one.getKey());
                entry.setTimeLocal(NO_TIME);
                zip.putNextEntry(entry);
                zip.write(one.getValue());
                zip.closeEntry();
            }
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return out.toByteArray();
    }
}
