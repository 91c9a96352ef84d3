package buildup.engine.hold.fixing;

import buildup.shared.notice.Code;

/** Codes on fastenings that other questions share. */
public final class FixingCodes {
    /** Too little bite. */
    public static final Code TOO_SHORT = Code.of(
            "nail-too-short", "A fastening has less bite than it needs; or no fastening holds a group that leans.");

    private FixingCodes() {}
}
