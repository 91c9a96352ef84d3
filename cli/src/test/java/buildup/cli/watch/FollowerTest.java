package buildup.cli.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FollowerTest {
    private static final long PATIENCE_S = 20;

    /** Longer than anything that is still to come takes. */
    private static final long SETTLED_MS = 900;

    @TempDir
    private Path folder;

    private Path file;
    private final BlockingQueue<String> taken = new LinkedBlockingQueue<>();
    private final AtomicInteger readings = new AtomicInteger();
    private Thread thread;

    @BeforeEach
    void follow_a_file() throws Exception {
        file = Files.writeString(Files.createDirectory(folder.resolve("shop")).resolve("stack"), "first");
        Follower<String> follower = new Follower<>(this::read, List.of(file));
        assertThat(follower.first()).isEqualTo("first");
        thread = new Thread(() -> {
            try {
                follower.run(taken::add);
            } catch (IOException e) {
                taken.add(e.toString());
            }
        });
        thread.start();
    }

    @AfterEach
    void end() throws InterruptedException {
        thread.interrupt();
        thread.join(TimeUnit.SECONDS.toMillis(PATIENCE_S));
        assertThat(thread.isAlive()).isFalse();
    }

    /**
     * A file that begins with {@code +} names another one. One that holds {@code wrong} is, and so is one that is not
     * there, or still empty as every file is at the start of a save.
     */
    private Follower.Reading<String> read() {
        readings.incrementAndGet();
        List<Path> files = new ArrayList<>(List.of(file));
        String text = text(file);
        if (text.startsWith("+")) {
            Path other = file.resolveSibling(text.substring(1));
            files.add(other);
            text = text + " " + text(other);
        }
        boolean sound = !text.contains("wrong") && !text.contains("none") && !text.isEmpty() && !text.endsWith(" ");
        return new Follower.Reading<>(text, sound, files);
    }

    private static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            return "none";
        }
    }

    @Test
    void a_save_is_taken_once() throws Exception {
        Files.writeString(file, "second");
        assertThat(next()).isEqualTo("second");
        assertNothingMore();
    }

    @Test
    void nothing_is_taken_of_a_save_that_changes_nothing() throws Exception {
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
        Files.writeString(file, "first");
        assertNothingMore();
    }

    @Test
    void a_file_that_an_editor_puts_in_place_of_the_old_one_is_followed() throws Exception {
        for (String text : List.of("second", "third")) {
            Path beside = Files.writeString(file.resolveSibling("stack.part"), text);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            assertThat(next()).isEqualTo(text);
        }
    }

    @Test
    void of_a_hundred_saves_in_a_second_the_last_counts() throws Exception {
        int before = readings.get();
        for (int i = 1; i <= 100; i++) {
            Files.writeString(file, "save " + i);
            Thread.sleep(10);
        }
        List<String> seen = new ArrayList<>();
        while (!seen.contains("save 100")) {
            seen.add(next());
        }
        // where the machine stands still between emptying and writing, the file is empty for long, and that is told
        // each time
        assertThat(seen).filteredOn(text -> !text.isEmpty()).doesNotHaveDuplicates();
        assertNothingMore();
        assertThat(readings.get() - before).isLessThan(60);
    }

    @Test
    void what_is_wrong_for_a_moment_is_not_told() throws Exception {
        Files.writeString(file, "wrong");
        Thread.sleep(60);
        Files.writeString(file, "right");
        assertThat(next()).isEqualTo("right");
        assertNothingMore();
    }

    @Test
    void what_stays_wrong_is_told_and_so_is_its_repair() throws Exception {
        Files.writeString(file, "wrong");
        assertThat(next()).isEqualTo("wrong");
        Files.writeString(file, "right");
        assertThat(next()).isEqualTo("right");
    }

    @Test
    void a_file_that_goes_is_told_and_followed_when_it_is_back() throws Exception {
        Files.delete(file);
        assertThat(next()).isEqualTo("none");
        Files.writeString(file, "back");
        assertThat(next()).isEqualTo("back");
        Files.writeString(file, "again");
        assertThat(next()).isEqualTo("again");
    }

    @Test
    void a_folder_that_goes_and_comes_back_is_followed() throws Exception {
        Files.delete(file);
        Files.delete(file.getParent());
        assertThat(next()).isEqualTo("none");
        Files.createDirectory(file.getParent());
        Files.writeString(file, "back");
        assertThat(next()).isEqualTo("back");
        Files.writeString(file, "again");
        assertThat(next()).isEqualTo("again");
    }

    @Test
    void a_file_that_the_first_one_names_is_followed_also_before_it_is_there() throws Exception {
        Files.writeString(file, "+catalog");
        assertThat(next()).isEqualTo("+catalog none");
        Path catalog = Files.writeString(file.resolveSibling("catalog"), "oak");
        assertThat(next()).isEqualTo("+catalog oak");
        Files.writeString(catalog, "ash");
        assertThat(next()).isEqualTo("+catalog ash");
    }

    @Test
    void a_link_to_a_file_elsewhere_is_followed() throws Exception {
        Path real = Files.writeString(folder.resolve("real"), "second");
        Files.delete(file);
        Files.createSymbolicLink(file, real);
        assertThat(next()).isEqualTo("second");
        Files.writeString(real, "third");
        assertThat(next()).isEqualTo("third");
    }

    private String next() throws InterruptedException {
        String text = taken.poll(PATIENCE_S, TimeUnit.SECONDS);
        assertThat(text).as("what is read next").isNotNull();
        return text;
    }

    private void assertNothingMore() throws InterruptedException {
        assertThat(taken.poll(SETTLED_MS, TimeUnit.MILLISECONDS)).isNull();
    }
}
