package buildup.catalog.words;

import buildup.profiles.member.Way;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;

/**
 * One profile word, read.
 *
 * @param number place in the outline, from 1
 * @param spelled the word itself as written, in lower case
 * @param ways the directions it names, none twice on one axis
 * @param to whether its size is a coordinate to go to, not a length to go
 * @param sizes at least one, not yet checked for their sign
 * @param name the name behind {@code as}
 */
record Word(
        int number,
        Verb verb,
        String spelled,
        List<Way> ways,
        boolean to,
        List<Length> sizes,
        Optional<String> name,
        Mark mark) {

    /** The direction named on the axis of {@code usual}, else {@code usual}. */
    Way way(Way usual) {
        return ways.stream().filter(way -> sameAxis(way, usual)).findFirst().orElse(usual);
    }

    /** The one direction that a straight word, a fillet or a half round goes, if it names one. */
    Optional<Way> onlyWay() {
        return ways.stream().findFirst();
    }

    /** A size in inches; {@code otherwise} when it was left out. */
    double size(int index, double otherwise) {
        return index < sizes.size() ? sizes.get(index).toInches() : otherwise;
    }

    static boolean sameAxis(Way a, Way b) {
        return (a.unit().x() == 0) == (b.unit().x() == 0);
    }
}
