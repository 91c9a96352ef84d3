package buildup.cli.report;

import buildup.catalog.words.OutlineWords;
import buildup.cli.tell.Json;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.Traced;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A tracing as an entry of a catalog, and as figures. */
public final class TraceReport {
    private TraceReport() {}

    /** A catalog of one profile, how well it fits in the comments above it. */
    public static String yaml(String name, String kind, Traced traced) {
        Box box = traced.outline().box();
        OutlineWords.Said said = OutlineWords.of(traced.outline());
        StringBuilder yaml = new StringBuilder();
        yaml.append(String.format(
                Locale.ROOT,
                "# Traced: %d members from %d points. Largest deviation %.4f in, near (%.3f, %.3f);\n"
                        + "# root mean square %.4f in.\n",
                traced.members().size(),
                traced.points().size(),
                traced.largest(),
                traced.farthest().x(),
                traced.farthest().y(),
                traced.rms()));
        for (Traced.Fit fit : traced.members()) {
            yaml.append(String.format(
                            Locale.ROOT,
                            "#   %-16s %6d points  largest %.4f  rms %.4f",
                            fit.member(),
                            fit.points(),
                            fit.largest(),
                            fit.rms()))
                    .append("\n");
        }
        yaml.append("profiles:\n  - name: ")
                .append(name)
                .append("\n    kind: ")
                .append(kind)
                .append("\n    about: Traced\n    sizes: [projection, height]\n    usual: [")
                .append(size(box.width()))
                .append(" x ")
                .append(size(box.height()))
                .append("]\n    words:\n");
        said.front().forEach(word -> yaml.append("      - ").append(word).append("\n"));
        if (!said.back().isEmpty()) {
            yaml.append("      - back: [")
                    .append(String.join(", ", said.back()))
                    .append("]\n");
        }
        return yaml.toString();
    }

    private static String size(double inches) {
        String fraction = LengthPrinter.fraction(Length.inches(inches), 64);
        return fraction.endsWith("+") || fraction.endsWith("-")
                ? LengthPrinter.decimals(Length.inches(inches), 4)
                : fraction;
    }

    /** All figures; inches. */
    public static String json(String name, String kind, Optional<Traced> traced, List<Notice> notices) {
        Json json = new Json().put("name", name).put("kind", kind);
        traced.ifPresent(found -> figures(json, found));
        return json.put("notices", JsonReport.notices(notices, Optional.empty(), LengthUnit.INCH))
                        .written() + "\n";
    }

    private static void figures(Json json, Traced traced) {
        Box box = traced.outline().box();
        List<Json> members = new ArrayList<>();
        for (int i = 0; i < traced.members().size(); i++) {
            Traced.Fit fit = traced.members().get(i);
            Stroke stroke = traced.outline().strokes().get(i);
            Segment segment = stroke.segment();
            Json member = new Json().put("member", fit.member()).put("shape", segment instanceof Arc ? "arc" : "line");
            if (segment instanceof Arc arc) {
                member.put("radius", arc.radius());
            }
            members.add(member.put("length", segment.length())
                    .put("from", segment.from())
                    .put("to", segment.to())
                    .put("points", fit.points())
                    .put("largest", fit.largest())
                    .put("rms", fit.rms()));
        }
        OutlineWords.Said said = OutlineWords.of(traced.outline());
        json.put("projection", box.width())
                .put("height", box.height())
                .put("area", traced.outline().area())
                .put("points", traced.points().size())
                .put("largest", traced.largest())
                .put("at", traced.farthest())
                .put("rms", traced.rms())
                .put("noise", traced.noise())
                .put("members", members)
                .texts("words", said.front())
                .texts("back", said.back());
    }
}
