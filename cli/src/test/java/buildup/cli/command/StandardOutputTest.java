package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StandardOutputTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "report reading-room-wainscot-cap.yaml",
                "cuts reading-room-case.yaml",
                "quote reading-room-order.yaml",
                "trace reading-room-shelf-edge.csv --units mm --width 1-1/8 --height 2",
                "set reading-room-wainscot-cap.yaml title Cap",
                "fmt reading-room-wainscot-cap.yaml",
                "draw reading-room-wainscot-cap.yaml --to svg"
            })
    void a_dash_asks_for_standard_output_in_every_command(String line) {
        List<String> words = new ArrayList<>(List.of(line.split(" ")));
        words.set(1, Ran.demo(words.get(1)).toString());
        words.addAll(List.of("-o", "-"));
        Ran ran = Ran.of(words.toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        assertThat(ran.out()).hasSizeGreaterThan(300);
        assertThat(Files.exists(Path.of("-"))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"cap", "cornice"})
    void a_starter_goes_there_too(String starter) {
        assertThat(Ran.of("new", starter, "-o", "-").out())
                .isEqualTo(Ran.of("new", starter).out());
    }

    @Test
    void a_quiet_check_still_gives_its_answer() {
        Ran quiet = Ran.of("check", "-q", Ran.demo("reading-room-cornice.yaml").toString());
        assertThat(quiet.out()).isEqualTo("reading-room-cornice.yaml: yes\n");
        assertThat(quiet.err()).isEmpty();
    }
}
