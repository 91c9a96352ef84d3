package buildup.cli.write;

import buildup.cli.scene.Scene;
import java.util.List;

/**
 * Sheets to be written as one PDF file.
 *
 * @param chapters at least one
 */
public record PdfBook(String title, String subject, List<Chapter> chapters) {
    /** Copies the list. */
    public PdfBook {
        chapters = List.copyOf(chapters);
    }

    /**
     * Pages under one bookmark.
     *
     * @param pages at least one
     */
    public record Chapter(String name, List<Scene> pages) {
        /** Copies the list. */
        public Chapter {
            pages = List.copyOf(pages);
        }
    }
}
