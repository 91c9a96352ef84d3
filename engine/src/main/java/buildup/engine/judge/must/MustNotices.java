package buildup.engine.judge.must;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What there is to say of the lines under {@code must:}. */
final class MustNotices {
    private static final String HOW = "Write 'figure of piece >= size', as 'reveal of bead over frieze >= 1/4 in'.";

    static final Code NOT_A_RULE_CODE = Code.of("not-a-rule", "A line under 'must:' cannot be read.");

    static final Kind NOT_A_RULE = NOT_A_RULE_CODE.refusal("'{rule}' holds no figure against a value.", HOW);

    static final Kind NOT_UNDERSTOOD = NOT_A_RULE_CODE.refusal("'{words}' is not understood behind the figure.", HOW);

    static final Kind NOT_OF_THAT = NOT_A_RULE_CODE.refusal(
            "'{figure}' cannot be narrowed down that way.", "Name what its sheet is by: see 'Figures' in the guide.");

    static final Kind NOT_A_VALUE = NOT_A_RULE_CODE.refusal(
            "'{value}' is not a value for '{figure}'.", "Give a value in the unit in which the figure is printed.");

    static final Kind WITHIN_WITHOUT_EQUAL =
            NOT_A_RULE_CODE.refusal("'{rule}': 'within' goes with '='.", "Take 'within' out, or write '='.");

    private static final Code NOT_A_WISH_CODE = Code.of("not-a-wish", "A line under 'wish:' cannot be read.");

    static final Kind NO_PARTS = NOT_A_WISH_CODE.refusal(
            "'{wish}' needs the parts of the trim, and the document does not name them.",
            "Name its pieces, as 'parts: {{ frieze: [frieze], cornice: [bed, crown, cap] }'.");

    static final Kind NOT_A_WISH = NOT_A_WISH_CODE.refusal(
            "'{wish}' is not a wish.",
            "Write 'least FIGURE', 'most FIGURE', 'FIGURE near VALUE', 'shares like ORDER' or 'least change'; 'x 2' behind it"
                    + " doubles its weight.");

    private static final Code NO_FIGURE_CODE =
            Code.of("wish-without-figure", "A line under 'wish:' asks for a figure that no stack of the search has.");

    static final Kind NOT_ASKED_FOR = NO_FIGURE_CODE.refusal(
            "'{wish}': the stack has no such figure, since its document does not ask for it.",
            "Add '{key}', which asks for it.");

    static final Kind NO_COST = NO_FIGURE_CODE.refusal(
            "'{wish}': what the stack costs is not known, since not all of it has a price or a stick.",
            "Run 'cuts': it names what lacks one. Add that under 'stock' or 'supplies'.");

    static final Kind NONE_HAS_IT = NO_FIGURE_CODE.refusal(
            "'{wish}': neither today's stack nor one with another size has such a figure.",
            "Wish for a figure that 'report' prints.");

    static final Code UNKNOWN =
            Code.of("unknown-figure", "A line under 'must:' asks for a figure or name that is not known.");

    static final Kind UNKNOWN_FIGURE = UNKNOWN.refusal("No figure is called '{figure}'.", "{nearest}");

    static final Kind UNKNOWN_NAME = UNKNOWN.refusal("Nothing is called '{name}' behind '{role}'.", "{nearest}");

    static final Kind UNKNOWN_MEMBER = UNKNOWN.refusal("No member of '{piece}' is called '{name}'.", "{nearest}");

    static final Code MUST = Code.of("must-not-met", "The stack does not meet a line under 'must:'.");

    static final Kind NOT_MET = MUST.problem("'{rule}' is not met: it is {figure}, {amount} off.", "");

    static final Kind NO_SUCH_FIGURE = MUST.problem("'{rule}' is not met: the stack has no such figure.", "");

    static final Kind FIGURE_NOT_ASKED_FOR = MUST.problem(
            "'{rule}' is not met: the stack has no such figure, since its document does not ask for it.",
            "Add '{key}', which asks for it.");

    static final Kind ENDLESS = MUST.problem("'{rule}' is not met: nothing bounds that figure.", "");

    private MustNotices() {}
}
