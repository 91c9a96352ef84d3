package buildup.cli.watch;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Waits until something happens in the folders of some files. It may wake for nothing, and it may sleep through a change
 * (a network folder, a folder that was itself removed, a link to elsewhere): whoever waits looks at the files' contents
 * in any case, and never waits long.
 */
final class FileEvents implements AutoCloseable {
    private static final List<WatchEvent.Kind<?>> KINDS = List.of(
            StandardWatchEventKinds.ENTRY_CREATE,
            StandardWatchEventKinds.ENTRY_MODIFY,
            StandardWatchEventKinds.ENTRY_DELETE,
            StandardWatchEventKinds.OVERFLOW);

    private final Optional<WatchService> service;
    private final Map<Path, WatchKey> folders = new HashMap<>();

    FileEvents() {
        service = open();
    }

    private static Optional<WatchService> open() {
        try {
            return Optional.of(FileSystems.getDefault().newWatchService());
        } catch (IOException | UnsupportedOperationException none) {
            return Optional.empty();
        }
    }

    /** Waits for an event in the folder of one of the files, at most so long; returns whether there was one. */
    boolean await(Collection<Path> files, long milliseconds) throws InterruptedException {
        if (service.isEmpty()) {
            Thread.sleep(milliseconds);
            return false;
        }
        files.stream().map(FileEvents::folder).distinct().forEach(folder -> register(service.get(), folder));
        WatchKey key = service.get().poll(milliseconds, TimeUnit.MILLISECONDS);
        boolean any = key != null;
        while (key != null) {
            key.pollEvents();
            if (!key.reset()) {
                // the folder is gone; when it is back, it is another
                folders.values().remove(key);
            }
            key = service.get().poll();
        }
        return any;
    }

    private void register(WatchService events, Path folder) {
        if (!folders.containsKey(folder)) {
            try {
                folders.put(folder, folder.register(events, KINDS.toArray(new WatchEvent.Kind<?>[0])));
            } catch (IOException notThere) {
                folders.remove(folder);
            }
        }
    }

    private static Path folder(Path file) {
        return Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    }

    @Override
    public void close() throws IOException {
        if (service.isPresent()) {
            service.get().close();
        }
    }
}
