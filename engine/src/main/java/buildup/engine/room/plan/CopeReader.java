package buildup.engine.room.plan;

import buildup.engine.room.plan.Stretch.Cope;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** Reads how inside corners are cut: {@code inside:} and {@code entry:} of a run, {@code cope:} of a stretch. */
final class CopeReader {
    private final Notices notices;

    CopeReader(Notices notices) {
        this.notices = notices;
    }

    /** Whether inside corners are coped. */
    boolean inside(Fields fields) {
        Optional<Scalar> word = fields.scalar("inside");
        word.filter(text -> !text.text().equals("cope") && !text.text().equals("miter"))
                .ifPresent(text -> say(PlanNotices.UNKNOWN_INSIDE.with("word", text.text()), text.mark()));
        return word.filter(text -> text.text().equals("cope")).isPresent();
    }

    /** What a stretch says of its right corner. */
    Cope cope(String stretch, Fields fields, Optional<WallCorner> corner) {
        Optional<Scalar> word = fields.scalar("cope");
        if (word.isEmpty()) {
            return Cope.UNSAID;
        }
        if (corner.filter(WallCorner::inside).isEmpty()) {
            say(PlanNotices.NOTHING_TO_COPE.with("stretch", stretch), word.get().mark());
            return Cope.UNSAID;
        }
        return switch (word.get().text().strip()) {
            case "left" -> Cope.LEFT;
            case "right" -> Cope.RIGHT;
            case "no" -> Cope.NO;
            default -> {
                say(
                        PlanNotices.UNKNOWN_COPE.with("word", word.get().text()),
                        word.get().mark());
                yield Cope.UNSAID;
            }
        };
    }

    /** {@code entry: { stretch: south, at: 72 }}; in the middle of the stretch when it does not say where. */
    Optional<WallRun.Entry> entry(Fields fields, List<Stretch> stretches) {
        Optional<Fields> entry = fields.fields("entry");
        if (entry.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> at = entry.get().length("at").map(Length::toInches);
        Optional<String> name = entry.get().text("stretch");
        List<String> names = stretches.stream().map(Stretch::name).toList();
        int number = name.map(names::indexOf).orElse(-1);
        if (number < 0) {
            say(
                    PlanNotices.NO_SUCH_ENTRY.with("word", name.orElse("")),
                    entry.get().mark());
            return Optional.empty();
        }
        double length = stretches.get(number).length();
        double along = at.orElse(length / 2);
        if (along < 0 || along > length) {
            say(
                    PlanNotices.ENTRY_BEYOND
                            .with("along", Figure.length(along))
                            .with("stretch", name.orElseThrow())
                            .with("length", Figure.length(length)),
                    entry.get().mark("at"));
            return Optional.empty();
        }
        return Optional.of(new WallRun.Entry(number, along));
    }

    private void say(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
