package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pictures of the guide are those that the commands draw. Run with {@code -Dbuildup.update=true} to draw them anew. */
class GalleryTest {
    @ParameterizedTest
    @CsvSource({
        "section, reading-room-cornice.yaml, 1",
        "elevation, reading-room-cornice.yaml, 1",
        "rays, reading-room-cornice.yaml, 1",
        "holds, reading-room-cornice.yaml, 1",
        "steps, reading-room-cornice.yaml, 1",
        "season, reading-room-case.yaml, 10",
        "proportion, reading-room-mantel.yaml, 1",
        "clearance, reading-room-mantel.yaml, 1",
        "plan, reading-room-case.yaml, 1",
        "sticks, reading-room-case.yaml, 1"
    })
    void every_picture_of_the_gallery_is_drawn_by_its_view(String view, String demo, String times, @TempDir Path folder)
            throws IOException {
        Path drawn = folder.resolve(view + ".svg");
        Ran ran = Ran.of("draw", Ran.demo(demo).toString(), "--view", view, "--times", times, "-o", drawn.toString());
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        Path kept = Path.of("guide/pictures", view + ".svg");
        if (Boolean.getBoolean("buildup.update")) {
            Files.createDirectories(kept.getParent());
            Files.copy(drawn, kept, StandardCopyOption.REPLACE_EXISTING);
        }
        assertThat(Ran.read(drawn)).isEqualTo(Ran.read(kept));
    }
}
