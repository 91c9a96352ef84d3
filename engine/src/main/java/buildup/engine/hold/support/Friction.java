package buildup.engine.hold.support;

import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Notices;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code friction:}, the coefficient with which contacts rub. Left out, nothing rubs: the safe side. */
public final class Friction {
    private Friction() {}

    /** The coefficient; a value that is none from 0 to 1 is refused. */
    public static OptionalDouble read(Fields root, Notices notices) {
        Optional<Scalar> text =
                root.scalar("friction").filter(scalar -> !scalar.text().isBlank());
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!text.get().text().matches("0|1|1\\.0{1,9}|0?\\.[0-9]{1,9}")) {
            notices.add(SupportNotices.NOT_A_FRICTION
                    .with("asked", text.get().text())
                    .at(text.get().mark()));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(text.get().text()));
    }
}
