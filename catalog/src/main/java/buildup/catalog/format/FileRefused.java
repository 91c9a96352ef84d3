package buildup.catalog.format;

import buildup.shared.notice.Notice;

/** Ends the reading of a file that cannot be read on; never leaves this package. */
final class FileRefused extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Notice notice;

    FileRefused(Notice notice) {
        super(notice.code());
        this.notice = notice;
    }

    Notice notice() {
        return notice;
    }
}
