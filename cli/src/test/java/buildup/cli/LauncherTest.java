package buildup.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher in a house of straw: a Java and a Maven that only say what was asked of them. */
class LauncherTest {
    private static final List<String> TOOLS =
            List.of("bash", "env", "readlink", "find", "cksum", "cat", "mkdir", "mv", "rm", "sleep", "touch");

    @TempDir
    private Path temp;

    private Path project;
    private Path tools;

    @BeforeEach
    void set_up_the_house_of_straw() throws IOException {
        project = temp.resolve("a project");
        tools = Files.createDirectory(temp.resolve("tools"));
        write("pom.xml", "<project/>");
        write("shared/pom.xml", "<project/>");
        write("shared/src/main/java/A.java", "class A {}");
        write("shared/src/main/java/B.java", "class B {}");
        write("cli/packing/pom.xml", "<project/>");
        write("cli/packing/src/main/java/C.java", "class C {}");
        write("cli/buildup", Files.readString(Path.of("buildup")));
        runnable(project.resolve("cli/buildup"));
        for (String tool : TOOLS) {
            script(tool, "exec '" + onPath(tool) + "' \"$@\"");
        }
        script("mvn", "echo built >> '" + temp.resolve("builds") + "'; touch cli/target/buildup.jar");
        script("java", """
                case "$*" in
                *-version*) echo 'openjdk version "17.0.1" 2021-10-19' >&2 ;;
                *-Xshare:dump* | *DumpLoadedClassList*) ;;
                *) printf '%s|' "${@: -2}"; cat; exit 7 ;;
                esac
                """);
    }

    /** Java would put a file of its own in the place of what is closed, and read that. */
    @Test
    void a_closed_standard_input_is_an_empty_one() throws Exception {
        script("closed", "exec '" + project.resolve("cli/buildup") + "' report - <&-");
        Run run = launch(tools.resolve("closed"));
        assertThat(run.out).isEqualTo("report|-|");
        assertThat(run.code).isEqualTo(7);
    }

    @Test
    void words_input_and_exit_code_pass_through() throws Exception {
        Run run = launch(project.resolve("cli/buildup"), "report", "my stack.yaml");
        assertThat(run.code).isEqualTo(7);
        assertThat(run.out).isEqualTo("report|my stack.yaml|the input");
    }

    @Test
    void where_the_locale_knows_ascii_alone_java_is_given_one_that_knows_every_letter() throws Exception {
        script("java", """
                case "$*" in
                *-version*) echo 'openjdk version "17.0.1" 2021-10-19' >&2 ;;
                *) printf '%s' "${LC_ALL:-}" ;;
                esac
                """);
        assertThat(launch(Map.of("LANG", "C")).out).isEqualTo("C.UTF-8");
        assertThat(launch(Map.of("LC_ALL", "POSIX")).out).isEqualTo("C.UTF-8");
        assertThat(launch(Map.of()).out).isEqualTo("C.UTF-8");
        assertThat(launch(Map.of("LANG", "C", "LC_CTYPE", "de_DE.UTF-8")).out).isEmpty();
    }

    @Test
    void it_builds_once() throws Exception {
        assertThat(launch().err).isEqualTo("buildup: building; this takes a moment\n");
        assertThat(launch().err).isEmpty();
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void it_builds_again_when_what_packs_the_jar_changes() throws Exception {
        launch();
        Files.writeString(project.resolve("cli/packing/src/main/java/C.java"), "class C { int i; }");
        launch();
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void it_builds_again_when_a_source_changes_and_its_time_does_not() throws Exception {
        Path source = project.resolve("shared/src/main/java/A.java");
        launch();
        var time = Files.getLastModifiedTime(source);
        Files.writeString(source, "class A { }");
        Files.setLastModifiedTime(source, time);
        launch();
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void sources_that_the_system_knows_to_be_untouched_are_not_read_again() throws Exception {
        launch();
        script("cksum", "echo read >> '" + temp.resolve("reads") + "'; exec '" + onPath("cksum") + "' \"$@\"");
        assertThat(launch().code).isEqualTo(7);
        assertThat(temp.resolve("reads")).doesNotExist();
        Files.writeString(project.resolve("shared/src/main/java/A.java"), "class A {}");
        launch();
        launch();
        assertThat(temp.resolve("reads")).hasContent("read");
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void it_builds_again_when_a_source_is_put_back_from_before_the_build() throws Exception {
        Path source = project.resolve("shared/src/main/java/A.java");
        Path older = Files.writeString(temp.resolve("older"), "class A { int before; }");
        Files.setLastModifiedTime(older, FileTime.fromMillis(0));
        launch();
        Files.move(older, source, StandardCopyOption.REPLACE_EXISTING);
        launch();
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void it_builds_again_when_a_source_is_gone() throws Exception {
        launch();
        Files.delete(project.resolve("shared/src/main/java/B.java"));
        launch();
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void it_builds_again_over_a_jar_that_it_did_not_build() throws Exception {
        launch();
        Path jar = project.resolve("cli/target/buildup.jar");
        Files.writeString(jar, "from elsewhere");
        Files.setLastModifiedTime(jar, FileTime.fromMillis(Long.MAX_VALUE / 1_000_000));
        launch();
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void a_touched_source_is_no_reason_to_build() throws Exception {
        launch();
        Files.writeString(project.resolve("shared/src/main/java/A.java"), "class A {}");
        launch();
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void it_finds_its_project_through_links() throws Exception {
        Path link = Files.createSymbolicLink(temp.resolve("a link"), Path.of("a project/cli/buildup"));
        Path onward = Files.createSymbolicLink(temp.resolve("link of a link"), link);
        assertThat(launch(onward, "x", "y").out).isEqualTo("x|y|the input");
    }

    @Test
    void where_nothing_locks_files_a_folder_is_the_lock_and_a_dead_one_is_cleared_away() throws Exception {
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        write("cli/target/buildup.lock.d/pid", dead.pid() + "\n");
        assertThat(launch().code).isEqualTo(7);
        assertThat(project.resolve("cli/target/buildup.lock.d")).doesNotExist();
    }

    @Test
    void a_failed_build_is_told_and_leaves_no_jar_to_run() throws Exception {
        script("mvn", "echo broken; exit 1");
        Run run = launch();
        assertThat(run.code).isEqualTo(2);
        assertThat(run.out).isEmpty();
        assertThat(run.err).contains("broken").endsWith("buildup: the build failed; see above\n");
        assertThat(launch().code).isEqualTo(2);
    }

    @Test
    void a_missing_java_or_maven_is_one_clear_line() throws Exception {
        Files.delete(tools.resolve("mvn"));
        assertThat(launch().err).contains("Maven").hasLineCount(1);
        Files.delete(tools.resolve("java"));
        Run run = launch();
        assertThat(run.err).contains("Java 17").hasLineCount(1);
        assertThat(run.code).isEqualTo(2);
    }

    @Test
    void an_old_java_is_one_clear_line() throws Exception {
        script("java", "echo 'java version \"1.8.0_202\"' >&2");
        Run run = launch();
        assertThat(run.err).contains("Java 17").hasLineCount(1);
        assertThat(run.code).isEqualTo(2);
    }

    private record Run(int code, String out, String err) {}

    private Run launch() throws Exception {
        return launch(project.resolve("cli/buildup"), "x", "y");
    }

    private Run launch(Map<String, String> locale) throws Exception {
        return launch(locale, project.resolve("cli/buildup"), "x");
    }

    private Run launch(Path launcher, String... words) throws Exception {
        return launch(Map.of(), launcher, words);
    }

    private Run launch(Map<String, String> locale, Path launcher, String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(Arrays.asList(words));
        Path in = Files.writeString(temp.resolve("in"), "the input");
        File out = temp.resolve("out").toFile();
        File err = temp.resolve("err").toFile();
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(temp.toFile())
                .redirectInput(in.toFile())
                .redirectOutput(out)
                .redirectError(err);
        process.environment().put("PATH", tools.toString());
        process.environment().keySet().removeAll(Set.of("JAVA_HOME", "LANG", "LC_ALL", "LC_CTYPE"));
        process.environment().putAll(locale);
        int code = process.start().waitFor();
        return new Run(code, Files.readString(out.toPath()), Files.readString(err.toPath()));
    }

    private long builds() throws IOException {
        return Files.readAllLines(temp.resolve("builds")).size();
    }

    private void write(String path, String text) throws IOException {
        Path file = project.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, UTF_8);
    }

    private void script(String name, String body) throws IOException {
        runnable(Files.writeString(tools.resolve(name), "#!" + onPath("bash") + "\n" + body + "\n"));
    }

    private static void runnable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static Path onPath(String tool) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow();
    }
}
