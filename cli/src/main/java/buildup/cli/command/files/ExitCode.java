package buildup.cli.command.files;

import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Collection;

/** What the program tells its caller when it ends. */
public final class ExitCode {
    /** Nothing to say, or notes only. */
    public static final int CLEAN = 0;

    /** The work is done, and something in it is a problem. */
    public static final int PROBLEM = 1;

    /** Refused, because a figure would be false; or the command line was not understood. */
    public static final int REFUSED = 2;

    /** What was asked for could not be written. */
    public static final int NOT_WRITTEN = 3;

    private ExitCode() {}

    /** The code of a run that has no more to say than this: that of its worst notice. */
    public static int of(Collection<Notice> notices) {
        return notices.stream().mapToInt(ExitCode::of).max().orElse(CLEAN);
    }

    /** The code of a run that has no more to say than this. */
    public static int of(Notices notices) {
        return of(notices.sorted());
    }

    private static int of(Notice notice) {
        return FileNotices.NOT_WRITTEN.contains(notice.code())
                ? NOT_WRITTEN
                : notice.level().exitCode();
    }
}
