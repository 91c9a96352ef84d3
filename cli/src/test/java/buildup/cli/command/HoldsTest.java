package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether it holds, as a carpenter reads it. */
class HoldsTest {
    private static final String NAILED = Ran.stack("nailed-door-head.yaml").toString();

    @Test
    void the_report_says_by_itself_whether_the_backband_carries_what_stands_on_it() {
        Ran ran = Ran.of("report", NAILED);
        assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(ran.out())
                .contains("BEARING: where", "FASTENINGS AGAINST LEANING", "NAILS AND SCREWS", "FORMULAS")
                .containsPattern("backband +top nails +10\\.04 +7\\.45 +7/16 +0\\.864")
                .contains("local code, makers' labels and a licensed person decide.");
        assertThat(ran.err())
                .contains("'top nails' may hold 7.45 lb a foot; frieze back, frieze and 3 more need 10.04 lb a foot.")
                .contains("the pull needs 0.589, the rule for its kind 0.864");
    }

    @Test
    void json_gives_nails_with_their_bites_and_the_verdict_on_the_whole() {
        assertThat(Ran.of("report", NAILED, "--format", "json").out())
                .contains("\"support\"", "\"whole\"", "\"nails\"", "\"withdrawalPerFoot\"", "\"proposals\"");
    }

    @Test
    void the_picture_shows_bearings_weights_and_nails_with_the_caution(@TempDir Path folder) {
        Path out = folder.resolve("holds.svg");
        Ran.of("draw", NAILED, "--view", "holds", "-o", out.toString());
        assertThat(Ran.read(out))
                .contains("frieze back and 4 more, 24.67 lb a foot at 5-3/16-: 3-11/16- past, falls")
                .contains("top nails: 15 ga x 2-1/2, bite 1-3/16")
                .contains("A bench check for trim, not engineering");
    }
}
