package buildup.engine.look.joint;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What open joints and unseen trim give cause to say. */
final class JointNotices {
    static final Code OPEN_CODE = Code.of("open-joint", "Neighbors nearly meet, and an eye sees into the gap.");
    static final Kind OPEN = OPEN_CODE.problem(
            "A gap of {amount} stands open between '{piece}' and {other}; it is seen from {eyes}.", "");
    static final Phrase WIDER = Phrase.of("Make '{board}' {size} wide.");
    static final Phrase MOVE = Phrase.of("Move '{mover}' {way} {by}.");
    static final Phrase CLOSE_IT = Phrase.of("Close it, or say under 'must' how wide it is to be.");

    static final Code UNSEEN_CODE = Code.of("trim-that-no-eye-sees", "A molding is bought and no eye sees any of it.");
    static final Kind UNSEEN = UNSEEN_CODE.note(
            "'{piece}' is trim, and no eye of the stack sees any of it.",
            "Leave it out, or make it a nailer, unless someone may stand elsewhere.");

    /** A piece. */
    static final Phrase QUOTED = Phrase.of("'{name}'");
    /** Wall, floor or ceiling. */
    static final Phrase OF_THE_ROOM = Phrase.of("the {name}");

    private JointNotices() {}
}
