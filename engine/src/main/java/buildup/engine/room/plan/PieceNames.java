package buildup.engine.room.plan;

import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;

/** Reads lists of pieces of the stack by their names. */
record PieceNames(Stack stack, Notices notices) {
    /** The names under a key; one that no piece has is refused and left out. */
    List<String> of(Fields fields, String key) {
        return of(fields, key, PlanNotices.UNKNOWN_PIECE);
    }

    /** The same, an unknown name said in a way of its own. */
    List<String> of(Fields fields, String key, Kind unknown) {
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        List<String> names = new ArrayList<>();
        for (Scalar name : fields.scalars(key)) {
            if (known.contains(name.text())) {
                names.add(name.text());
            } else {
                notices.add(unknown.with("word", name.text())
                        .cure(Phrase.plain(Suggestion.cure(name.text(), known)))
                        .at(name.mark()));
            }
        }
        return List.copyOf(names);
    }
}
