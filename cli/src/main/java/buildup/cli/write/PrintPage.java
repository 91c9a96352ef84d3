package buildup.cli.write;

import buildup.cli.scene.Scene;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Writes sheets as one HTML file that prints them a page each, unscaled, and holds all that it needs. */
public final class PrintPage {
    private PrintPage() {}

    /**
     * The file, UTF-8; a sheet on its side lies so on its page too.
     *
     * @param outlines the font whose outlines stand for letters; absent for letters as text
     */
    public static byte[] write(PdfBook book, Optional<ShippedFont> outlines) {
        StringBuilder html = new StringBuilder();
        html.append("<!DOCTYPE html>\n<html lang=\"en-US\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
                .append(Markup.escaped(book.title()))
                .append("</title>\n<style>\n")
                .append("body { margin: 0; background: #777; }\n")
                .append("section { margin: 0.2in auto; background: #fff; page-break-after: always; }\n")
                .append("section svg { display: block; }\n")
                .append("@media print { body { background: none; } section { margin: 0; } }\n");
        List<Scene> scenes = book.chapters().stream()
                .flatMap(chapter -> chapter.pages().stream())
                .toList();
        for (int i = 0; i < scenes.size(); i++) {
            String size =
                    inches(scenes.get(i).width()) + " " + inches(scenes.get(i).height());
            html.append("@page sheet")
                    .append(i + 1)
                    .append(" { size: ")
                    .append(size)
                    .append("; margin: 0; }\n");
            html.append("#sheet-").append(i + 1).append(" { page: sheet").append(i + 1);
            html.append("; width: ").append(inches(scenes.get(i).width())).append("; }\n");
        }
        html.append("</style>\n</head>\n<body>\n");
        for (int i = 0; i < scenes.size(); i++) {
            String name = "sheet-" + (i + 1);
            html.append("<section id=\"").append(name).append("\">\n");
            html.append(SvgWriter.element(scenes.get(i), outlines, name + "-")).append("\n</section>\n");
        }
        return html.append("</body>\n</html>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String inches(double size) {
        return Numbers.text(size) + "in";
    }
}
