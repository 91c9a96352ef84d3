package buildup.cli.command.files;

import buildup.catalog.format.TracingReader;
import buildup.cli.command.files.FileNotices.Unread;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Reads the documents of one run, and remembers which files they came from. Faults become refusals. */
public final class InputFiles {
    /** The name by which messages call standard input. */
    public static final String STANDARD_INPUT = "stdin";

    /** A folder may hold any number of files; so many are looked at for a name like the one that is missing. */
    private static final int MOST_NAMES = 10_000;

    private final Streams streams;
    private final Notices notices;
    private final List<Path> read = new ArrayList<>();
    private final List<Path> asked = new ArrayList<>();
    private final Map<String, SentFiles> opened = new HashMap<>();
    private final Map<String, byte[]> stacks = new HashMap<>();
    private final Map<String, Map<String, Path>> beside = new HashMap<>();
    private Optional<Mark> namedAt = Optional.empty();
    private final Map<Path, byte[]> contents = new HashMap<>();

    private final Set<String> namesakes;

    public InputFiles(Streams streams, Notices notices) {
        this(streams, notices, List.of());
    }

    /** @param together words whose documents are told beside each other: those of one name are called as they are typed */
    public InputFiles(Streams streams, Notices notices, List<String> together) {
        this.streams = streams;
        this.notices = notices;
        this.namesakes = together.stream()
                .filter(word -> together.stream()
                        .anyMatch(other -> !other.equals(word) && nameOf(other).equals(nameOf(word))))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** What kind of document is asked for: what it is called, and what is said when it cannot be had. */
    public enum Kind {
        STACK("a", "stack", FileNotices.UNREAD_STACK),
        CATALOG("a", "catalog", FileNotices.UNREAD_CATALOG),
        ORDER("an", "order", FileNotices.UNREAD_ORDER),
        TRACING("a", "tracing", FileNotices.UNREAD_TRACING);

        private final String article;
        private final String word;
        private final Unread unread;

        Kind(String article, String word, Unread unread) {
            this.article = article;
            this.word = word;
            this.unread = unread;
        }

        /** What messages call it. */
        String word() {
            return word;
        }
    }

    /** The stack document that a word of the command line names; {@code -} is standard input. */
    public Optional<Document> stack(String word) {
        return named(Kind.STACK, word);
    }

    /** The document that a word of the command line names; {@code -} is standard input. */
    public Optional<Document> named(Kind kind, String word) {
        return bytes(kind, word).flatMap(bytes -> DocumentReader.read(name(word), bytes, notices));
    }

    /** The text of that document, sign for sign, if it can be read. */
    public Optional<String> text(Kind kind, String word) {
        return bytes(kind, word)
                .flatMap(bytes -> DocumentReader.read(name(word), bytes, notices)
                        .map(read -> new String(bytes, StandardCharsets.UTF_8)));
    }

    /** The text of a stack document that is to be changed: one of its own, not in an archive. */
    public Optional<String> ownText(String word) {
        Optional<String> text = text(Kind.STACK, word);
        return opened.containsKey(word) ? refused(FileNotices.UNCHANGED_ARCHIVE.with("file", nameOf(word))) : text;
    }

    /** How messages call the document that a word of the command line names: in an archive, by its name there. */
    public String name(String word) {
        return namesakes.contains(word)
                ? word
                : sent(word).map(job -> job.stack().name()).orElseGet(() -> nameOf(word));
    }

    /** The job in the archive that a word of the command line names, once it was read. */
    Optional<SentFiles> sent(String word) {
        return Optional.ofNullable(opened.get(word));
    }

    /** A document out of an archive. */
    Optional<Document> document(SentFiles.Named one) {
        String name = one.name().substring(one.name().lastIndexOf('/') + 1);
        streams.given().add(name, one.bytes());
        return DocumentReader.read(name, one.bytes(), notices);
    }

    /**
     * A catalog that the document of a word names, and where it lies. That it cannot be had is said where it is named.
     *
     * @param at where the document names it
     */
    Optional<Document> beside(String word, String name, Path path, Mark at) {
        beside.computeIfAbsent(word, unseen -> new LinkedHashMap<>()).put(name, path);
        namedAt = Optional.of(at);
        Optional<byte[]> bytes = bytes(Kind.CATALOG, path);
        namedAt = Optional.empty();
        return bytes.flatMap(found -> DocumentReader.read(nameOf(path), found, notices));
    }

    /** What the catalogs that the document of a word names hold, by the names that it gives them. */
    public Map<String, byte[]> catalogs(String word) {
        Map<String, byte[]> named = new LinkedHashMap<>();
        sent(word).ifPresent(job -> job.beside().forEach(one -> named.put(one.name(), one.bytes())));
        beside.getOrDefault(word, Map.of()).forEach((name, path) -> {
            if (contents.containsKey(path)) {
                named.put(name, contents.get(path));
            }
        });
        return Collections.unmodifiableMap(named);
    }

    /**
     * A stack and its catalogs, all of which were read, as one archive that opens again as they did.
     *
     * @param word that names the stack
     * @param more catalogs that were given beside it
     * @param made what was made of them, by its name in the archive
     */
    public byte[] archive(String word, List<Path> more, Map<String, byte[]> made) {
        List<SentFiles.Named> named = new ArrayList<>();
        List<SentFiles.Named> lists = new ArrayList<>();
        sent(word).ifPresent(job -> {
            named.addAll(job.beside());
            lists.addAll(job.lists());
        });
        beside.getOrDefault(word, Map.of()).forEach((name, path) -> named.add(kept(name, path)));
        more.forEach(path -> lists.add(kept(nameOf(path), path)));
        SentFiles.Named stack = new SentFiles.Named(name(word), stacks.getOrDefault(word, new byte[0]));
        return JobArchive.write(new SentFiles(stack, named, lists), made);
    }

    private SentFiles.Named kept(String name, Path path) {
        return new SentFiles.Named(name, contents.getOrDefault(path, new byte[0]));
    }

    private Optional<byte[]> bytes(Kind kind, String word) {
        Optional<byte[]> bytes = opened(kind, word);
        if (kind == Kind.STACK) {
            bytes.ifPresent(found -> stacks.put(word, found));
        }
        return bytes;
    }

    private Optional<byte[]> opened(Kind kind, String word) {
        if (word.equals("-")) {
            return bytes(kind, STANDARD_INPUT, streams::in);
        }
        if (word.isBlank()) {
            return refused(kind.unread.noName().with("file", word));
        }
        try {
            Path path = Path.of(word);
            return kind == Kind.STACK && isArchive(path) ? archived(word, path) : bytes(kind, path);
        } catch (InvalidPathException wrong) {
            return refused(kind.unread.noName().with("file", word));
        }
    }

    private static boolean isArchive(Path path) {
        try {
            return Files.isRegularFile(path) && JobArchive.is(path);
        } catch (IOException unreadable) {
            // which is said when it is read
            return false;
        }
    }

    private Optional<byte[]> archived(String word, Path path) {
        asked.add(path);
        read.add(path);
        Optional<SentFiles> job = JobArchive.read(path, nameOf(word), notices);
        job.ifPresent(found -> {
            opened.put(word, found);
            streams.given().add(found.stack().name(), found.stack().bytes());
        });
        return job.map(found -> found.stack().bytes());
    }

    /** The bytes of a tracing that a word of the command line names; {@code -} is standard input. */
    public Optional<byte[]> tracing(String word) {
        if (word.equals("-")) {
            return bytes(streams::in, STANDARD_INPUT);
        }
        try {
            Path path = Path.of(word);
            asked.add(path);
            if (Files.isDirectory(path)) {
                return refused(Kind.TRACING.unread.folder().with("file", path.toString()));
            }
            if (Files.notExists(path)) {
                return refused(Kind.TRACING.unread.absent().with("file", path.toString()));
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                return refused(Kind.TRACING.unread.endless().with("file", path.toString()));
            }
            read.add(path);
            return bytes(() -> Files.newInputStream(path), nameOf(path));
        } catch (InvalidPathException wrong) {
            return refused(Kind.TRACING.unread.noName().with("file", word));
        }
    }

    /** One byte more than is allowed, if there are so many: the reader of tracings then refuses it. */
    private Optional<byte[]> bytes(Source source, String name) {
        try (InputStream in = source.open()) {
            byte[] bytes = in.readNBytes(TracingReader.GREATEST_BYTES + 1);
            streams.given().add(name, bytes);
            return Optional.of(bytes);
        } catch (IOException unreadable) {
            return refused(Kind.TRACING.unread.unreadable().with("file", name));
        }
    }

    /** A document in a file. */
    public Optional<Document> file(Kind kind, Path path) {
        return bytes(kind, path).flatMap(bytes -> DocumentReader.read(nameOf(path), bytes, notices));
    }

    private Optional<byte[]> bytes(Kind kind, Path path) {
        asked.add(path);
        if (Files.isDirectory(path)) {
            return refused(kind.unread.folder().with("file", path.toString()).cure(among(path, "")));
        }
        if (Files.notExists(path)) {
            return refused(kind.unread.absent().with("file", path.toString()).cure(among(folder(path), nameOf(path))));
        }
        // to open a pipe is to wait for whoever writes into it
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            return refused(kind.unread.endless().with("file", path.toString()));
        }
        try {
            if (Files.size(path) > DocumentReader.GREATEST_BYTES) {
                Figure size = Figure.count(Files.size(path) / DocumentReader.GREATEST_BYTES);
                return tooLarge(kind, FileNotices.LARGE_FILE.with("size", size).with("file", nameOf(path)));
            }
            read.add(path);
            Optional<byte[]> bytes = bytes(kind, nameOf(path), () -> Files.newInputStream(path));
            bytes.ifPresent(found -> contents.put(path, found));
            return bytes;
        } catch (IOException unreadable) {
            return refused(kind.unread.unreadable().with("file", path.toString()));
        }
    }

    /** The files read so far. */
    public List<Path> read() {
        return List.copyOf(read);
    }

    /** The files asked for so far, also those that are not there. */
    public List<Path> asked() {
        return List.copyOf(asked);
    }

    /** How messages call what a word of the command line names. */
    public static String nameOf(String word) {
        return word.equals("-") ? STANDARD_INPUT : word.substring(word.lastIndexOf('/') + 1);
    }

    private interface Source {
        /**
         * Opens what is to be read.
         *
         * @throws IOException when it cannot be opened
         */
        InputStream open() throws IOException;
    }

    private Optional<byte[]> bytes(Kind kind, String name, Source source) {
        byte[] bytes;
        try (InputStream in = source.open()) {
            bytes = in.readNBytes(DocumentReader.GREATEST_BYTES + 1);
        } catch (IOException unreadable) {
            return refused(kind.unread.unreadable().with("file", name));
        }
        if (bytes.length > DocumentReader.GREATEST_BYTES) {
            return tooLarge(kind, FileNotices.LARGE_INPUT.with("file", name));
        }
        streams.given().add(name, bytes);
        return Optional.of(bytes);
    }

    private <T> Optional<T> tooLarge(Kind kind, Notice notice) {
        return refused(notice.with("document", kind.article + " " + kind.word)
                .with("most", Figure.count(DocumentReader.GREATEST_BYTES >> 20)));
    }

    private <T> Optional<T> refused(Notice notice) {
        notices.add(namedAt.map(notice::at).orElse(notice));
        return Optional.empty();
    }

    private static Path folder(Path path) {
        return Optional.ofNullable(path.getParent()).orElse(Path.of(""));
    }

    /** The last part of the path: messages are the same from whatever folder the program is run. */
    private static String nameOf(Path path) {
        return Optional.ofNullable(path.getFileName()).map(Path::toString).orElse(path.toString());
    }

    /** The documents in a folder, the one with the nearest name if any is near. */
    private static Phrase among(Path folder, String asked) {
        Set<String> names = new TreeSet<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                String name = nameOf(file);
                if (names.size() < MOST_NAMES && (name.endsWith(".yaml") || name.endsWith(".yml"))) {
                    names.add(name);
                }
            }
        } catch (IOException | DirectoryIteratorException unlistable) {
            return FileNotices.WHICH_FOLDER;
        }
        return names.isEmpty() ? FileNotices.WHICH_FOLDER : Suggestion.phrase(asked, names);
    }
}
