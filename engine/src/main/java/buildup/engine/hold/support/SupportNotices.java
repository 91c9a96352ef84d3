package buildup.engine.hold.support;

import buildup.engine.hold.fixing.FixingCodes;
import buildup.engine.section.stack.StackNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What may be said of what holds a stack. */
final class SupportNotices {
    private static final Code LEANS = Code.of(
            "needs-holding",
            "The weight of a group, loads counted, falls past all that it bears on, and nothing keeps it.");

    /** {@code group}: the pieces; {@code carriers}; {@code way}: out or back; {@code hold}: a phrase with the pull. */
    static final Kind NEEDS_HOLDING = LEANS.problem(
            "{group} {lean} {way}: {weight} falls {amount} past {carriers}. To stand, {hold}.",
            "Give the fastenings that hold it, or bring its weight back.");

    /** The same where a hair decides; {@code pieces}: it or them. */
    static final Kind ON_THE_EDGE = LEANS.problem(
            "{group} {lean} {way}: {weight} falls on the edge of {carriers}, nearer than touching is told. Any push tips"
                    + " {them}.",
            "Give the fastenings that hold it, or bring its weight back.");

    private static final Code TIPS = Code.of("tips", "The stack has no balance by its contacts and fastenings.");

    /** {@code motion}: which pieces move, about which edge, how far. */
    static final Kind FALLS = TIPS.problem(
            "The stack does not stand: {motion}.", "Fasten what moves, or bring its weight back over its bearing.");

    static final Kind FALLS_UNDER_LOAD = TIPS.problem(
            "The stack does not stand under its loads: {motion}.",
            "Fasten what moves, bring the load back, or take load off.");

    /** {@code row}: of which so many land, {@code landed} of {@code of}, on {@code stretch}; {@code motion}: what falls. */
    static final Kind FALLS_BETWEEN_STUDS = TIPS.problem(
            "The stack does not stand on '{stretch}'{loads}: with {landed} of {of} of row '{row}' on a {framing}, {motion}.",
            "");

    /** In place of the cure where rows of nails were looked for and none was found. */
    static final Phrase NO_ROW = Phrase.of(
            "None of the changes tried cures this: no row of the fasteners listed, driven as its piece goes up, holds it, and"
                    + " no block behind it.");

    /** {@code fixed}: which pieces to what. */
    static final Phrase ANSWER_FOR_IT = Phrase.of(
            "No value is published for their nails there: carry it on a ledge, or answer for it yourself by {fixed}.");

    static final Phrase FIXED = Phrase.of("'fixed: {to}' on {piece}");

    static final Phrase SET_BACK = Phrase.of("Set '{piece}' back by {by}.");
    static final Phrase SET_OUT = Phrase.of("Set '{piece}' out by {by}.");

    static final Phrase NO_ROW_FOR_ITS_LOADS = Phrase.of(
            "None of the changes tried cures this: no row of the fasteners listed, driven as its piece goes up, takes the rest."
                    + " Take load off.");

    /** {@code share}: of the loads; {@code first}: what gives, and how. */
    static final Kind LOAD_TOO_MUCH = Code.of(
                    "load-too-much", "The stack stands, and takes only a part of the loads given.")
            .problem("The stack takes only {share} the loads; {first}.", "Strengthen that, or take load off.");

    /** {@code motion}: which pieces move how far before they are held. */
    static final Kind GAP_CLOSES = Code.of("gap-that-closes", "The stack stands only once a small gap has closed.")
            .note("The stack stands once a gap has closed: {motion}.", "Shim the gap, or move the pieces to touch.");

    /**
     * {@code use}: the fastening; {@code group}, {@code far}: what leans, and what it bites in; {@code may}, {@code needs};
     * {@code bite}, {@code forPull}, {@code byRule}.
     */
    static final Kind HOLDS_TOO_LITTLE = FixingCodes.TOO_SHORT.problem(
            "'{fastening}' may hold {may}; {group} {need} {needs}. It has {bite} in the {far}: {forPull}, the rule for its"
                    + " kind {byRule}.",
            "");

    static final Kind LOAD_ON_NOTHING = DocumentCodes.UNKNOWN_NAME.refusal("Load '{load}' is on no piece{called}.", "");

    private static final Code NO_LOAD_THERE = Code.of("not-a-load", "A load is not given, or cannot be read.");

    static final Kind NOT_A_LOAD =
            NO_LOAD_THERE.refusal("Load '{load}': '{asked}' is not a load.", "Write 'load: 20 lb/ft' (or N/m).");

    static final Kind NO_LOAD =
            NO_LOAD_THERE.refusal("Load '{load}' does not say how heavy it is.", "Write 'load: 20 lb/ft' (or N/m).");

    static final Kind LOAD_NOWHERE = StackNotices.NOT_A_PLACE.refusal(
            "Load '{load}' has no place.", "Give 'out:', its distance from the wall plane.");

    static final Kind LOAD_ON_FRAMING = Code.of(
                    "load-on-framing", "A load lies on framing, which is not asked whether it stands.")
            .note(
                    "Load '{load}' lies on '{piece}', which is framing and stands already: it is not counted.",
                    "Put it on a piece of trim, or have the framing checked for it.");

    static final Kind LOAD_BESIDE = Code.of("load-beyond-the-stack", "A load stands in the air beside its piece.")
            .problem(
                    "Load '{load}' stands {amount} beside '{piece}', in the air: it is not counted.",
                    "Place it between {from} and {to}.");

    static final Kind NOT_A_FRICTION = Code.of("not-a-friction", "A coefficient of friction out of range.")
            .refusal(
                    "'{asked}' is not a coefficient of friction.",
                    "Write a number from 0 to 1; dry wood on wood is about 0.4, and 0.25 is on the safe side.");

    private SupportNotices() {}
}
