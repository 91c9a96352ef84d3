package buildup.shared.document.edit;

import buildup.shared.notice.Notice;

/** Ends an edit that cannot be done; never leaves this package. */
final class EditRefused extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Notice notice;

    EditRefused(Notice notice) {
        super(notice.code());
        this.notice = notice;
    }

    Notice notice() {
        return notice;
    }
}
