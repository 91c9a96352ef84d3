package buildup.engine.hold.support;

import buildup.engine.hold.statics.Load;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the loads of a document. */
public final class Loads {
    /** 1 lb/ft = 4.4482216152605 N / 0.3048 m: pound-force and foot by definition (NIST SP 811, B.8; from memory). */
    private static final double NEWTONS_PER_METRE = 4.4482216152605 / 0.3048;

    private static final Pattern LOAD = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,9})?) *(lb/ft|N/m)?");

    private Loads() {}

    /** A load as read; its piece is found when the section is known. */
    public record Wanted(String name, String piece, double out, double poundsPerFoot, Mark mark) {}

    /** The entries under {@code loads:}. */
    public static List<Wanted> read(Stack stack, Fields root, Notices notices) {
        List<Wanted> loads = new ArrayList<>();
        int number = 0;
        for (Fields entry : root.list("loads")) {
            number++;
            String name = entry.text("name").orElse("load " + number);
            Optional<String> piece = entry.text("on");
            OptionalDouble out = entry.length("out")
                    .map(Length::toInches)
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty());
            Optional<String> amount = entry.text("load");
            Optional<Double> pounds = amount.flatMap(Loads::pounds);
            List<String> names = stack.pieces().stream().map(one -> one.name()).toList();
            if (piece.isEmpty() || !names.contains(piece.get())) {
                notices.add(SupportNotices.LOAD_ON_NOTHING
                        .with("load", name)
                        .with(
                                "called",
                                piece.map(asked -> " called '" + asked + "'").orElse(""))
                        .at(entry.mark())
                        .cure(Phrase.plain(Suggestion.cure(piece.orElse(""), names))));
            } else if (pounds.isEmpty()) {
                notices.add(amount.map(asked -> SupportNotices.NOT_A_LOAD.with("asked", asked))
                        .orElse(SupportNotices.NO_LOAD.notice())
                        .with("load", name)
                        .at(entry.mark()));
            } else if (out.isEmpty() && !entry.has("out")) {
                notices.add(SupportNotices.LOAD_NOWHERE.with("load", name).at(entry.mark()));
            } else if (out.isPresent()) {
                loads.add(new Wanted(name, piece.get(), out.getAsDouble(), pounds.get(), entry.mark()));
            }
        }
        return List.copyOf(loads);
    }

    private static Optional<Double> pounds(String text) {
        Matcher matcher = LOAD.matcher(text.trim());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        return Optional.of("N/m".equals(matcher.group(2)) ? value / NEWTONS_PER_METRE : value);
    }

    /** The loads on the pieces of a section; one that stands beside its piece, or lies on framing, is said and left out. */
    static List<Load> on(Section section, List<Wanted> wanted, Notices notices) {
        List<Load> loads = new ArrayList<>();
        for (Wanted load : wanted) {
            for (int i = 0; i < section.bodies().size(); i++) {
                Body body = section.body(i);
                if (body.piece() && body.name().equals(load.piece())) {
                    Box box = body.outline().box();
                    if (load.out() < box.back() - Tolerance.TOUCHING || load.out() > box.face() + Tolerance.TOUCHING) {
                        notices.add(beyond(load, box));
                    } else if (body.framing()) {
                        notices.add(SupportNotices.LOAD_ON_FRAMING
                                .with("load", load.name())
                                .at(load.mark())
                                .of(load.piece()));
                    } else {
                        loads.add(new Load(load.name(), i, load.out(), load.poundsPerFoot(), load.mark()));
                    }
                }
            }
        }
        return loads;
    }

    private static Notice beyond(Wanted load, Box box) {
        double by = Math.max(box.back() - load.out(), load.out() - box.face());
        return SupportNotices.LOAD_BESIDE
                .with("load", load.name())
                .with("from", Figure.length(box.back()))
                .with("to", Figure.length(box.face()))
                .at(load.mark())
                .of(load.piece())
                .amount(Figure.length(by));
    }
}
