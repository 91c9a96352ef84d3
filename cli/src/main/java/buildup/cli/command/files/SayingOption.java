package buildup.cli.command.files;

import buildup.cli.report.NoticeText;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How much is said beside an answer, as every command that gives one asks. */
@Command(addMethodSubcommands = false)
public final class SayingOption {
    @Option(names = "-q", description = "Leave out notices, except what is refused.")
    private boolean quiet;

    @Option(names = "-v", description = "Print every notice at its own place, also when many are alike.")
    private boolean wordy;

    /** Whether nothing is to be said but what is refused. */
    public boolean quiet() {
        return quiet;
    }

    /** Whether everything is to be said. */
    public boolean wordy() {
        return wordy;
    }

    /** What stands behind an answer that is kept in a file. */
    public String kept(List<Notice> notices, String file, LengthUnit unit) {
        return wordy ? NoticeText.writeAll(notices, file, unit) : NoticeText.write(notices, file, unit);
    }

    /** What is said on the screen, worst first. */
    public String said(List<Notice> notices, String file, LengthUnit unit) {
        return kept(
                quiet
                        ? notices.stream()
                                .filter(notice -> notice.level() == Level.REFUSAL)
                                .toList()
                        : notices,
                file,
                unit);
    }
}
