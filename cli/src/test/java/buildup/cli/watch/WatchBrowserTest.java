package buildup.cli.watch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.page.Page;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is followed and what is set side by side, in a real browser. Skipped where there is none. */
@Tag("long")
class WatchBrowserTest {
    private static final Path CHECKS = Path.of("src/test/browser").toAbsolutePath();

    @TempDir
    private Path folder;

    @Test
    void the_page_follows_saves_faults_deletions_and_storms_and_answers_no_other_site() throws Exception {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        String said = node("watch.mjs", folder, java, System.getProperty("java.class.path"));
        // a figure to look at, never a floor: the machine may be busy
        System.out.print(said);
        assertThat(said).contains("from save to new picture");
    }

    @ParameterizedTest
    @ValueSource(strings = {"narrow", "accessible"})
    void two_stacks_side_by_side_can_be_read_everywhere_and_by_everyone(String check) throws Exception {
        Path two = folder.resolve("two.html");
        Ran.of("report", demo("cornice"), demo("door-head"), "--format", "html", "-o", two.toString());
        node("check.mjs", check, unfolded(two, Files.readString(two)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"narrow", "accessible"})
    void a_picture_that_is_out_of_date_can_be_read_everywhere_and_by_everyone(String check) throws Exception {
        Answer cornice = Typed.of(Ran.read(Path.of(demo("cornice"))));
        Watch watch = new Watch(List.of(cornice), ShippedFont.load());
        watch.take(List.of(Typed.of(Ran.read(Path.of(demo("cornice"))).replace("lip: 1,", "lip: 3/4,"))));
        watch.take(List.of(Typed.of("title: Wrong\npieces: [ { name: \"a\u0301 <b>\", profile: bord } ]\n")));
        Picture picture = watch.latest().shown().picture();
        // as it lies on disk: without the script that would ask for more
        String page = Page.of(picture.parts(), picture.above(), Optional.empty());
        node("check.mjs", check, unfolded(folder.resolve("stale.html"), page));
    }

    private static String demo(String name) {
        return Ran.demo("reading-room-" + name + ".yaml").toString();
    }

    private static Path unfolded(Path file, String page) throws IOException {
        return Files.write(
                file, page.replace("<details class", "<details open class").getBytes(UTF_8));
    }

    private String node(String script, Object... words) throws IOException, InterruptedException {
        OutsideTool.require("chromium");
        OutsideTool.require("npm ci in src/test/browser", Files.isDirectory(CHECKS.resolve("node_modules")));
        List<Object> all = new ArrayList<>(List.of(CHECKS.resolve(script)));
        all.addAll(Arrays.asList(words));
        OutsideTool.Run run = OutsideTool.run(folder, "node", all.toArray());
        assertThat(run.code()).as(run.output()).isZero();
        return run.output();
    }
}
