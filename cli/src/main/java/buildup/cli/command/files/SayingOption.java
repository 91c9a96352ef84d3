package buildup.cli.command.files;

import buildup.cli.report.NoticeText;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.List;

/** How much is said beside an answer, as every command that gives one asks. */
public final class SayingOption {
    private boolean quiet;
    private boolean wordy;

    /** Asks for it. */
    public void addTo(CommandForm form) {
        form.flag("-q", "Leave out notices, except what is refused.", () -> quiet = true)
                .flag("-v", "Print every notice at its own place, also when many are alike.", () -> wordy = true);
    }

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
