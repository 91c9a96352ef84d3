package buildup.cli.command.files;

import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;

/**
 * Writes an answer to a file: whole or not at all. It is written beside the file and then moved to its place, so that
 * whatever was there survives a failure. Faults become refusals.
 */
public final class OutputFile {
    /** What stands beside the file while it is written: short, since names have a greatest length. */
    private static final String PART = ".buildup-";

    private static final String ENDING = ".part";

    /** The names of parts, and of nothing else that a person or another program would call a file of theirs. */
    private static final Pattern PART_NAME =
            Pattern.compile(Pattern.quote(PART) + "[0-9a-f]{1,16}" + Pattern.quote(ENDING));

    /** Where a file system cannot tell whether a part is held, one that is so old belongs to nobody any more. */
    private static final Duration OLD = Duration.ofHours(1);

    /** A part that another run swept away between its making and its holding is begun anew; so often. */
    private static final int MOST_BEGUN = 3;

    /** A folder may hold any number of files; so many are looked at for parts that were left behind. */
    private static final int MOST_SWEPT = 1_000;

    /** Links that lead to links, before they count as leading round. */
    private static final int MOST_LINKS = 40;

    private static final Path STANDARD_OUTPUT = Path.of("-");

    private final Path path;
    private final Notices notices;

    private OutputFile(Path path, Notices notices) {
        this.path = path;
        this.notices = notices;
    }

    /** The file that was asked for; none where {@code -} asks for standard output. */
    public static Optional<Path> named(Optional<Path> asked) {
        return asked.filter(path -> !path.equals(STANDARD_OUTPUT));
    }

    /**
     * Makes a folder for files to be written in, where there is none yet.
     *
     * @return whether it is there now; if not, a refusal says why
     */
    public static boolean folder(Path folder, Notices notices) {
        try {
            Files.createDirectories(folder);
            return true;
        } catch (IOException unwritable) {
            notices.add(
                    Files.exists(folder)
                            ? FileNotices.NOT_A_FOLDER.with("file", folder.toString())
                            : FileNotices.NO_FOLDER.with("folder", folder.toString()));
            return false;
        }
    }

    /**
     * Whether a folder of that name may be written into or made, as far as can be seen before anything is written.
     *
     * @return if not, a refusal says why
     */
    public static boolean mayBeFolder(Path folder, Notices notices) {
        boolean other = Files.exists(folder) && !Files.isDirectory(folder);
        if (other) {
            notices.add(FileNotices.NOT_A_FOLDER.with("file", folder.toString()));
        }
        return !other;
    }

    /** Whether these bytes stand in that file already. */
    public static boolean holds(Path path, byte[] bytes) {
        try {
            return Files.isRegularFile(path)
                    && Files.size(path) == bytes.length
                    && Arrays.equals(Files.readAllBytes(path), bytes);
        } catch (IOException unreadable) {
            // which is said when it is written
            return false;
        }
    }

    /**
     * Writes the bytes.
     *
     * @param inputs files that must not be overwritten
     * @return whether they are there now; if not, a refusal says why
     */
    public static boolean write(Path path, byte[] bytes, List<Path> inputs, Notices notices) {
        OutputFile file = new OutputFile(path, notices);
        try {
            if (Files.isDirectory(path)) {
                return file.refused(FileNotices.OUTPUT_IS_FOLDER);
            }
            for (Path input : inputs) {
                if (Files.exists(path) && Files.isSameFile(path, input)) {
                    return file.refused(FileNotices.OUTPUT_IS_INPUT);
                }
            }
            return file.put(bytes);
        } catch (IOException unwritable) {
            return file.unwritable(unwritable);
        }
    }

    /**
     * Writes the bytes where there is no file yet.
     *
     * @return whether they are there now; if not, a refusal says why
     */
    public static boolean writeNew(Path path, byte[] bytes, Notices notices) {
        OutputFile file = new OutputFile(path, notices);
        if (!Files.isDirectory(folder(path))) {
            return file.folderAbsent(path);
        }
        try {
            if (Files.exists(path) || Files.isSymbolicLink(path)) {
                return file.refused(FileNotices.THERE_ALREADY);
            }
            moveInto(path, bytes, false);
            return true;
        } catch (FileAlreadyExistsException meanwhile) {
            return file.refused(FileNotices.THERE_ALREADY);
        } catch (IOException unwritable) {
            return file.unwritable(unwritable);
        }
    }

    private boolean put(byte[] bytes) throws IOException {
        if (!Files.exists(path)) {
            Path place = endOfLinks();
            if (!Files.isDirectory(folder(place))) {
                return folderAbsent(place);
            }
            moveInto(place, bytes, true);
        } else if (!Files.isWritable(path)) {
            return refused(FileNotices.UNWRITABLE);
        } else if (Files.isRegularFile(path)) {
            // a link keeps pointing where it points
            moveInto(path.toRealPath(), bytes, true);
        } else {
            // a pipe or a device cannot be moved over
            Files.write(path, bytes, StandardOpenOption.WRITE);
        }
        return true;
    }

    /** Where a link leads at whose end there is nothing yet; the path itself when it is no link. */
    private Path endOfLinks() throws IOException {
        Path place = path;
        for (int links = 0; Files.isSymbolicLink(place); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemException(path.toString(), "", "the link leads round to itself");
            }
            place = place.resolveSibling(Files.readSymbolicLink(place));
        }
        return place;
    }

    private static void moveInto(Path place, byte[] bytes, boolean over) throws IOException {
        Part part = Part.beside(place);
        try (FileChannel held = part.held()) {
            sweep(part.path());
            Channels.newOutputStream(held).write(bytes);
            keepRights(place, part.path());
            if (over) {
                moveOver(part.path(), place);
            } else {
                Files.move(part.path(), place);
            }
        } finally {
            Files.deleteIfExists(part.path());
        }
    }

    /**
     * A part just begun. Whoever writes one holds it, and a run that is killed lets go of it.
     *
     * @param held to be written to, and to be closed once the part has come to its place
     */
    private record Part(Path path, FileChannel held) {
        static Part beside(Path place) throws IOException {
            for (int begun = 1; ; begun++) {
                // a name that nobody can guess would take longer to make than many a file, and what is there is never
                // opened
                long name = ThreadLocalRandom.current().nextLong();
                Path path = place.resolveSibling(PART + Long.toHexString(name) + ENDING);
                FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                if (begun == MOST_BEGUN || (holds(channel) && Files.exists(path))) {
                    return new Part(path, channel);
                }
                channel.close();
                Files.deleteIfExists(path);
            }
        }

        private static boolean holds(FileChannel channel) {
            try {
                return Optional.ofNullable(channel.tryLock()).isPresent();
            } catch (IOException unknownHere) {
                return true;
            }
        }
    }

    private static void moveOver(Path beside, Path place) throws IOException {
        try {
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException plainly) {
            Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Takes away what killed runs left beside a part just begun; what cannot be taken away is in nobody's way. */
    private static void sweep(Path begun) {
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder(begun), OutputFile::isPart)) {
            // by the clock of the file system alone: the machine's own may be another
            FileTime old =
                    FileTime.from(Files.getLastModifiedTime(begun).toInstant().minus(OLD));
            int seen = 0;
            for (Path part : parts) {
                if (++seen > MOST_SWEPT) {
                    return;
                }
                if (!part.getFileName().equals(begun.getFileName())) {
                    sweep(part, old);
                }
            }
        } catch (IOException | DirectoryIteratorException leftThere) {
            return;
        }
    }

    private static boolean isPart(Path path) {
        return PART_NAME.matcher(path.getFileName().toString()).matches()
                && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
    }

    private static void sweep(Path part, FileTime old) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            if (Optional.ofNullable(channel.tryLock()).isPresent()) {
                Files.deleteIfExists(part);
            }
        } catch (OverlappingFileLockException heldByThisRun) {
            return;
        } catch (IOException unknownHere) {
            if (Files.getLastModifiedTime(part).compareTo(old) < 0) {
                Files.deleteIfExists(part);
            }
        }
    }

    /** What takes the place of a file may be read and written by whoever could. */
    private static void keepRights(Path place, Path beside) throws IOException {
        if (Files.exists(place) && Files.getFileStore(place).supportsFileAttributeView(PosixFileAttributeView.class)) {
            Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(place));
        }
    }

    private static Path folder(Path place) {
        return Optional.ofNullable(place.getParent()).orElse(Path.of(""));
    }

    private boolean folderAbsent(Path place) {
        notices.add(FileNotices.NO_FOLDER.with("folder", folder(place).toString()));
        return false;
    }

    private boolean unwritable(IOException why) {
        if (why instanceof AccessDeniedException) {
            return refused(FileNotices.UNWRITABLE);
        }
        Optional<String> reason = why instanceof FileSystemException of
                ? Optional.ofNullable(of.getReason())
                : Optional.ofNullable(why.getMessage());
        if (reason.isEmpty()) {
            return refused(FileNotices.UNWRITABLE);
        }
        notices.add(FileNotices.WRITE_FAILED.with("file", path.toString()).with("why", reason.get()));
        return false;
    }

    private boolean refused(Kind kind) {
        notices.add(kind.with("file", path.toString()));
        return false;
    }
}
