package buildup.cli.watch;

import buildup.cli.command.Typed;
import buildup.cli.write.ShippedFont;
import java.util.List;

/** What a page shows that followed a stack through its saves. */
public final class Saves {
    private static final ShippedFont FONT = ShippedFont.load();

    private Saves() {}

    /** The page and its exchange after the last of the texts. */
    public static String shown(List<String> texts) {
        Watch watch = new Watch(List.of(Typed.of(texts.get(0))), FONT);
        texts.stream().skip(1).forEach(text -> watch.take(List.of(Typed.of(text))));
        LatestPicture.Shown shown = watch.latest().shown();
        return shown.picture().document(shown.version()) + shown.picture().exchange(shown.version());
    }
}
