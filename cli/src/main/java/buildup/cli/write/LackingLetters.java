package buildup.cli.write;

import buildup.cli.scene.Clip;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says which letters of a picture no font has, so that whoever prints it knows what the boxes stand for. */
public final class LackingLetters {
    private static final Code NO_LETTER =
            Code.of("no-font-has-it", "A letter of a drawing is in no font of the machine; its number stands for it.");

    private static final Kind LACKING = NO_LETTER.note(
            "No font on this machine has {letters}: a box with its number stands for each.",
            "Install a font that has them, and draw again.");
    private static final Kind LACKING_MANY = NO_LETTER.note(
            "No font on this machine has {letters} and {more} more letters: a box with its number stands for each.",
            "Install a font that has them, and draw again.");

    /** More are not named one by one. */
    private static final int NAMED = 8;

    private LackingLetters() {}

    /**
     * Tells the letters that are lacking, where letters are drawn and not left to a viewer.
     *
     * @return whether any is
     */
    public static boolean told(List<Scene> scenes, ShippedFont font, Notices notices) {
        Set<Integer> lacking = new TreeSet<>();
        scenes.forEach(scene -> texts(scene.items()).distinct().forEach(text -> lacking.addAll(font.lacking(text))));
        if (lacking.isEmpty()) {
            return false;
        }
        String named = lacking.stream()
                .limit(NAMED)
                .map(letter -> String.format(Locale.ROOT, "%s (U+%04X)", Character.toString(letter), letter))
                .collect(Collectors.joining(", "));
        int more = lacking.size() - NAMED;
        notices.add(
                more > 0
                        ? LACKING_MANY.with("letters", named).with("more", Figure.count(more))
                        : LACKING.with("letters", named));
        return true;
    }

    private static Stream<String> texts(List<SceneItem> items) {
        return Scene.leaves(items).stream().flatMap(item -> {
            if (item instanceof Clip clip) {
                return texts(clip.items());
            }
            return item instanceof Label label ? Stream.of(label.text()) : Stream.empty();
        });
    }
}
