package buildup.engine.judge.verdict;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import java.util.List;

/** The sentences of the verdict. */
final class VerdictWords {
    static final Phrase THE_SAME = Phrase.of("The same.");

    static final Phrase SAID = Phrase.of("{what}");

    static final Phrase SAID_AND_MORE = Phrase.of("{what} And {more} more.");

    static final Phrase SAID_AND_OTHERS = Phrase.of("{what} Also {others}");

    /** Where more is to be looked at than what is wrong. */
    static final Phrase SAID_AND_WORSE = Phrase.of("{worse}. {said}");

    static final Phrase MORE_SHOW = Phrase.of("and {count} more");

    static final Phrase CURE_OF = Phrase.of("{piece}: {cure}");

    static final Phrase CURES = Phrase.of("{one} {other}");

    static final Phrase TRIED = Phrase.of("{cure} [tried]");

    static final Phrase FIXED_TO = Phrase.of("{pieces} nailed to {other}");

    static final Phrase UNNAILED = Phrase.of("{pieces} held to {other} by something other than nails");

    static final Phrase NO_LIMIT = Phrase.of("no ceiling or projection is given that it could touch");

    static final Phrase CEILING_LEFT = Phrase.of("{left} left under the ceiling");

    static final Phrase EVEN_ALONG = Phrase.of("{left} left {side} {piece} all along {stretch}");

    static final Phrase UNEVEN_ALONG = Phrase.of(
            "{left} left {side} {piece} at {along} along {stretch}, the least; {most} at {far}{on}, the most");

    static final Phrase ALONG = Phrase.of(" along {stretch}");

    static final Phrase SCRIBE_ALONG = Phrase.of("close it by a strip, or scribe the piece: the gap varies by {by}");

    static final Phrase PROJECTION_LEFT = Phrase.of("{left} left of the projection of {allowed}");

    static final Phrase BOTH_LEFT = Phrase.of("{one}; {other}");

    static final Phrase WOOD = Phrase.of("nothing overlaps, {void}; to buy: {boards}");

    static final Phrase WOOD_ALONE = Phrase.of("nothing overlaps, {void}");

    static final Phrase NO_VOID = Phrase.of("no void");

    static final Phrase ONE_VOID = Phrase.of("one void of {area}");

    static final Phrase VOIDS = Phrase.of("{count} voids, the largest {area}");

    static final Phrase HIDDEN = Phrase.of("no raw wood and no open joint is seen");

    /** Where a joint is seen that stands open, and nothing is wrong with that. */
    static final Phrase HIDDEN_BUT_JOINTS =
            Phrase.of("no raw wood is seen; the joints that stand open were meant, or 'must' asks for them");

    static final Phrase RAW_ON_THE_WAY =
            Phrase.of("{piece}: up to {most} of raw wood from {first} off the wall on, walking up {approach}");

    static final Phrase END_GRAIN = Phrase.of("{piece}: end grain {by} proud of the casing");

    static final Phrase RAW_END = Phrase.of("{names} raw at the end of a run that is cut square");

    static final Phrase OPEN_UNDER_SLOPE = Phrase.of("{piece}: open {by} along its edge under the sloped ceiling");

    static final Phrase FINISH_IT = Phrase.of("Finish it, or cover it, if people come that near.");

    static final Phrase UNSEEN = Phrase.of("no eye sees {pieces}");

    static final Phrase LIT = Phrase.of("{light}: no shadow falls");

    static final Phrase SHADED = Phrase.of("{light}: {dark} of {piece}'s {length} dark");

    static final Phrase ALL_DARK = Phrase.of("{light}: all of {piece} dark");

    static final Phrase MEMBER_DARK = Phrase.of("{light}: all of {piece}'s {member} dark");

    static final Phrase REVEAL = Phrase.of("{piece} {amount}");

    static final Phrase REVEALS = Phrase.of("{all}");

    static final Phrase MUST_MET = Phrase.of("{met} of {all} met; nearest to failing: '{rule}', {spare} to spare");

    static final Phrase GOES_STRAIGHT = Phrase.of("each piece goes in straight, in the order given");

    static final Phrase GOES_IN = Phrase.of("each piece goes in, in the order given");

    static final Phrase TIGHTEST =
            Phrase.of("each piece goes in; the tightest: {unit} has to {move} {needs}, and there is room for {has}");

    static final Phrase MUST_NOT_MET = Phrase.of("{met} of {all} met; worst: '{rule}', it is {figure}, {missing} off");

    static final Phrase MUST_UNKNOWN = Phrase.of("{met} of {all} met; worst: '{rule}', the stack has no such figure");

    static final Phrase CARRIED = Phrase.of("every piece is carried");

    static final Phrase CARRIED_LOADED = Phrase.of("every piece is carried, whatever the loads");

    static final Phrase CARRIES = Phrase.of("carries {times} its weight{first}");

    static final Phrase TAKES = Phrase.of("takes {times} its loads{first}");

    static final Phrase GIVES_FIRST = Phrase.of("; {first}");

    static final Phrase STANDS_AFTER = Phrase.of("once {motion}; then it {factor}");

    static final Phrase HANGS = Phrase.of("all but {pieces}, which hangs on nails that are not given");

    static final Phrase HANG = Phrase.of("all but {pieces}, which hang on nails that are not given");

    static final Phrase A_STUD_THERE = Phrase.of("a stud at each nail into the wall, since none are given");

    static final Phrase SAID_FIXED_TO = Phrase.of("{pieces} fixed to {other}, as said");

    static final Phrase SAID_FIXED = Phrase.of("{pieces} fixed, as said");

    static final Phrase HELD =
            Phrase.of("every fastening bites; least to spare: {fastening}, {bite} deep where {wanted} is asked");

    static final Phrase IN_MASONRY = Phrase.of("{rows} in masonry, of which nothing is published: held as said");

    static final Phrase HELD_TOO = Phrase.of("{held}; {more}");

    static final Phrase HELD_OPEN = Phrase.of("{held}; none is given for {pieces}");

    static final Phrase HELD_UNASKED = Phrase.of("no fastenings are given; there is wood to nail all trim into");

    static final Phrase MOVES = Phrase.of("at most {amount} in sight: {name}, {way} in {season}");

    static final Phrase STILL = Phrase.of("nothing in sight moves");

    static final Phrase MOVES_UNKNOWN = Phrase.of("no list says how {pieces} move; {rest}");

    static final Phrase MOVES_FROM = Phrase.of("{pieces} held where they lie, for the seasons");

    private static final Phrase FEW = Phrase.of("{some} and {more} more");

    /** A longer list would fill the block; the notices name them all. */
    private static final int MOST_NAMES = 4;

    static final Phrase RIGHT = Phrase.of("{right} of builds are right; fails first: {figure}");

    static final Phrase WRONG_AS_DRAWN = Phrase.of("{wrong}: not what is wanted as drawn; of the rest {right}");

    static final Phrase STRAYS = Phrase.of("{figure} strays by {by}, root-sum-square; nothing is wanted of it");

    static final Phrase KEEPS =
            Phrase.of("keeps {rules}; {piece} has the least to spare: {spare} nearer to the opening");

    static final Phrase FIRE_DECIDES = Phrase.of(
            "of fire nothing more than these rules say: the local authority and the appliance's label decide");

    static final Phrase NOTHING_BURNS = Phrase.of("nothing that burns stands round the opening");

    static final Phrase NONCOMBUSTIBLE = Phrase.of("{pieces} does not burn, as said");

    static final Phrase NONCOMBUSTIBLES = Phrase.of("{pieces} do not burn, as said");

    static final Phrase READS = Phrase.of("{shares}{nearest}{projects}{remarks}");

    static final Phrase SHARE_OF = Phrase.of("{part} {share}");

    static final Phrase NEAREST_ORDER = Phrase.of("; nearest in the books: {order} with {shares}");

    static final Phrase PROJECTS = Phrase.of("; the cornice projects {ratio} of its height");

    static final Phrase ONE_REMARK = Phrase.of("; 1 member or reveal to look at");

    static final Phrase REMARKS = Phrase.of("; {count} members or reveals to look at");

    static final Phrase AIR_LEFT = Phrase.of("{air} to spare beside {place}");

    static final Phrase PLUMB = Phrase.of("wall plumb within {out} in {over}");

    static final Phrase LEVEL = Phrase.of("ceiling level within {by}");

    private VerdictWords() {}

    /** Names; of many, the first and how many more. */
    static Value names(List<String> names) {
        if (names.size() <= MOST_NAMES) {
            return Listing.names(names);
        }
        List<Text> some =
                names.subList(0, MOST_NAMES - 1).stream().map(Text::new).toList();
        return FEW.with("some", Listing.commas(some)).with("more", Figure.count(names.size() - some.size()));
    }
}
