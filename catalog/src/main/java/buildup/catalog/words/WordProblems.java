package buildup.catalog.words;

import buildup.shared.document.SizeNotices;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.Reading;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Optional;

/**
 * Says what is wrong with one piece or profile.
 *
 * @param owner as messages call it
 */
public record WordProblems(String owner, Notices notices) {

    /** A length, or a refusal; how it was read is said only where it could be meant otherwise. */
    public Optional<Length> length(String text, LengthReader lengths, Mark mark) {
        Reading reading = lengths.read(text);
        if (reading instanceof Reading.Good good) {
            good.echo().ifPresent(echo -> say(SizeNotices.of(echo), mark));
            return Optional.of(good.length());
        }
        if (reading instanceof Reading.Bad bad) {
            say(SizeNotices.of(bad), mark);
        }
        return Optional.empty();
    }

    /** Says it of the owner, at a place. */
    public void say(Notice notice, Mark mark) {
        notices.add(notice.at(mark).of(owner));
    }
}
