package buildup.engine.hold.order;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the order of putting up gives cause to say. */
final class OrderNotices {
    static final Code CANNOT_GO_IN =
            Code.of("cannot-go-in", "A piece cannot be brought to its place past what stands before it.");
    static final Kind TOO_LITTLE_ROOM = CANNOT_GO_IN.problem(
            "{unit} cannot go in past {passed}: it has to {move} {needs}, and {blockers} leaves room for {has}.", "");
    static final Kind NO_WAY = CANNOT_GO_IN.problem(
            "{unit} cannot go in past {blockers}: no straight move gets it there, and none with one bend.", "");
    static final Phrase NEAREST = Phrase.of("Put up {moves}: then each piece goes in");
    static final Phrase PROPPED =
            Phrase.of("Put up {moves}, and prop it until what carries it is there: then each piece goes in");
    static final Phrase BEFORE = Phrase.of("'{piece}' before '{other}'");
    static final Phrase JOIN = Phrase.of(
            "No order goes. Join {pieces} on the bench first and put them up as one, as 'bench: {{ unit: [{list}] }'");
    static final Phrase SLIDE =
            Phrase.of("No order goes. Slide it in from an open end, or tip it in: that is not looked at here");
    static final Phrase QUOTED = Phrase.of("'{name}'");
    static final Phrase THE = Phrase.of("the {name}");
    static final Phrase MOVES = Phrase.of("{more} more, as the sequence lists");
    static final Phrase MORE = Phrase.of("{more} more");
    static final Phrase UNIT = Phrase.of("The bench unit '{name}'");

    static final Code LOOSE_CODE =
            Code.of("nothing-there-to-hold-it", "A piece is put up before all that it rests on or lies against.");
    static final Kind LOOSE = LOOSE_CODE.note(
            "'{piece}' goes up before all that it rests on or lies against: {others}.", "Put it up later.");

    static final Code HIDDEN_CODE = Code.of(
            "nail-hidden-by-its-unit", "A fastening that holds a bench unit is covered by the unit's own pieces.");
    static final Kind HIDDEN = HIDDEN_CODE.problem(
            "No tool gets to '{fastening}' once the unit '{unit}' is joined: '{other}' is in the way.",
            "Leave '{other}' out of the unit, or fasten the unit where it can be reached.");

    static final Code BENCH_CODE = Code.of("bench-unit-wrong", "A bench unit cannot be made as the document says.");
    static final Kind NOT_A_LIST = BENCH_CODE.refusal(
            "'{unit}' under 'bench' must be a list of pieces.", "Write it as '{unit}: [piece, piece]'.");
    static final Kind NO_SUCH_PIECE =
            BENCH_CODE.refusal("'{unit}' names '{word}', and no piece has that name.", "{nearest}");
    static final Kind FRAMING = BENCH_CODE.refusal(
            "'{unit}' holds '{word}', which is framing: it stands already.", "Leave it out of the unit.");
    static final Kind TWICE = BENCH_CODE.refusal(
            "'{word}' is in the bench units '{first}' and '{unit}'.", "Leave it out of one of them.");
    static final Kind ALONE =
            BENCH_CODE.refusal("The bench unit '{unit}' holds one piece only.", "Add a piece, or leave the unit out.");
    static final Kind APART = BENCH_CODE.problem(
            "The pieces of the bench unit '{unit}' do not touch: {others} and {pieces} have nothing to be joined by.",
            "Make two units of them, or add the piece between.");
    static final Kind TOO_EARLY = BENCH_CODE.problem(
            "The bench unit '{unit}' goes up after '{last}', before all that it stands on or lies against: {others}.",
            "Move {others} up in the list of pieces, before '{last}'.");

    private OrderNotices() {}
}
