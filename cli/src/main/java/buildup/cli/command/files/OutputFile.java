package buildup.cli.command.files;

import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.List;
import java.util.Optional;

/**
 * Writes an answer to a file: whole or not at all. It is written beside the file and then moved to its place, so that
 * whatever was there survives a failure. Faults become refusals.
 */
public final class OutputFile {
    private static final int MOST_TRIES = 100;

    private final Path path;
    private final Notices notices;

    private OutputFile(Path path, Notices notices) {
        this.path = path;
        this.notices = notices;
    }

    /**
     * Writes the bytes.
     *
     * @param inputs files that must not be overwritten
     * @return whether they are there now; if not, a refusal says why
     */
    public static boolean write(Path path, byte[] bytes, List<Path> inputs, Notices notices) {
        OutputFile file = new OutputFile(path, notices);
        Path folder = file.folder();
        try {
            if (!Files.isDirectory(folder)) {
                return file.folderAbsent();
            }
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
            return file.unwritable();
        }
    }

    /**
     * Writes the bytes where there is no file yet.
     *
     * @return whether they are there now; if not, a refusal says why
     */
    public static boolean writeNew(Path path, byte[] bytes, Notices notices) {
        OutputFile file = new OutputFile(path, notices);
        try {
            Files.write(path, bytes, StandardOpenOption.CREATE_NEW);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return file.refused(FileNotices.THERE_ALREADY);
        } catch (NoSuchFileException absent) {
            return file.folderAbsent();
        } catch (IOException unwritable) {
            return file.unwritable();
        }
    }

    private boolean put(byte[] bytes) throws IOException {
        if (!Files.exists(path)) {
            moveInto(path, bytes);
        } else if (!Files.isWritable(path)) {
            return unwritable();
        } else if (Files.isRegularFile(path)) {
            // a link keeps pointing where it points
            moveInto(path.toRealPath(), bytes);
        } else {
            // a pipe or a device cannot be moved over
            Files.write(path, bytes, StandardOpenOption.WRITE);
        }
        return true;
    }

    private static void moveInto(Path place, byte[] bytes) throws IOException {
        Path beside = beside(place);
        try {
            try (OutputStream out = Files.newOutputStream(beside, StandardOpenOption.WRITE)) {
                out.write(bytes);
            }
            keepRights(place, beside);
            try {
                Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException plainly) {
                Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** What takes the place of a file may be read and written by whoever could. */
    private static void keepRights(Path place, Path beside) throws IOException {
        if (Files.exists(place) && Files.getFileStore(place).supportsFileAttributeView(PosixFileAttributeView.class)) {
            Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(place));
        }
    }

    /** A new file in the same folder, with the rights that the user's new files have. */
    private static Path beside(Path place) throws IOException {
        for (int i = 1; ; i++) {
            try {
                return Files.createFile(place.resolveSibling("." + place.getFileName() + "." + i + ".part"));
            } catch (FileAlreadyExistsException taken) {
                if (i == MOST_TRIES) {
                    throw taken;
                }
            }
        }
    }

    private Path folder() {
        return Optional.ofNullable(path.getParent()).orElse(Path.of(""));
    }

    private boolean folderAbsent() {
        notices.add(FileNotices.NO_FOLDER.with("folder", folder().toString()));
        return false;
    }

    private boolean unwritable() {
        return refused(FileNotices.UNWRITABLE);
    }

    private boolean refused(Kind kind) {
        notices.add(kind.with("file", path.toString()));
        return false;
    }
}
