package buildup.engine.judge.must;

import buildup.shared.figure.Quantity;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What there is to say of the lines under {@code must:}. */
final class MustNotices {
    private static final int HUNDRED = 100;

    /** Decimals of a percentage that is offered. */
    private static final int PLACES = 6;

    private static final String HOW = "Write 'figure of piece >= size', as 'reveal of bead over frieze >= 1/4 in'.";

    static final Code NOT_A_RULE_CODE = Code.of("not-a-rule", "A line under 'must:' cannot be read.");

    static final Kind NOT_A_RULE = NOT_A_RULE_CODE.refusal("'{rule}' holds no figure against a value.", HOW);

    static final Kind NOT_UNDERSTOOD = NOT_A_RULE_CODE.refusal("'{words}' is not understood behind the figure.", HOW);

    static final Kind NOT_OF_THAT = NOT_A_RULE_CODE.refusal(
            "'{figure}' cannot be narrowed down that way.", "Name what its sheet is by: see 'Figures' in the guide.");

    private static final Kind NOT_A_VALUE = NOT_A_RULE_CODE.refusal(
            "'{value}' is not a value for '{figure}'.", "Give a value in the unit in which the figure is printed.");

    private static final Kind BARE_SHARE = NOT_A_RULE_CODE.refusal(
            "'{value}' for '{figure}' may be {whole} % or {part} %.", "Write '{whole} %' or '{part} %'.");

    /** A share as a part of one, or in percent: up to 1 nobody knows which. */
    private static final Pattern UP_TO_ONE = Pattern.compile("(\\d{1,9})/(\\d{1,9})|(\\d{0,9}\\.\\d{1,9}|1)");

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

    /** A text that is no value of that quantity; of a bare share both of its readings are told. */
    static Notice notAValue(String text, Quantity quantity, String figure) {
        Matcher share = UP_TO_ONE.matcher(text.strip());
        double part = quantity == Quantity.SHARE && share.matches() ? part(share) : 0;
        if (part > 0 && part <= 1) {
            return BARE_SHARE
                    .with("value", text.strip())
                    .with("figure", figure)
                    .with("whole", plain(part * HUNDRED))
                    .with("part", plain(part));
        }
        return NOT_A_VALUE.with("value", MustReader.shortened(text)).with("figure", figure);
    }

    private static double part(Matcher share) {
        return share.group(1) == null
                ? Double.parseDouble(share.group(0))
                : Double.parseDouble(share.group(1)) / Double.parseDouble(share.group(2));
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number)
                .setScale(PLACES, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
