package buildup.cli.command.sheets;

import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.FileNotices;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.Streams;
import buildup.cli.drawing.job.ShopDrawings;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.report.JsonReport;
import buildup.cli.scene.Scene;
import buildup.cli.write.PdfBook;
import buildup.cli.write.PdfWriter;
import buildup.cli.write.PrintPage;
import buildup.cli.write.ShippedFont;
import buildup.cli.write.SvgWriter;
import buildup.engine.Answer;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Writes sheets as the name of what is asked for says: a PDF, a page to print, an archive to send, a folder of pictures.
 *
 * @param output as on the command line
 * @param outlines whether letters of pages and pictures are outlines
 * @param files that the stack was read from
 */
record SheetsOutput(Streams streams, String output, boolean outlines, InputFiles files, Notices notices) {
    private static final List<String> ENDINGS = List.of(".pdf", ".html", ".zip");

    /**
     * Writes them.
     *
     * @param stack the word of the command line that names it
     * @param catalogs given beside it
     */
    void write(String stack, List<Path> catalogs, Answer answer, List<ShopDrawings.Drawn> drawn) {
        Optional<Path> path = path();
        if (!saysWhatItIs(path)) {
            notices.add(SheetsNotices.NO_SHEETS_ENDING.with("file", output));
            return;
        }
        ShippedFont font = ShippedFont.load();
        PdfBook book = book(answer, drawn);
        if (output.equals("-")) {
            new Delivery(streams, Optional.empty(), files.read()).put(PdfWriter.write(book, font), notices);
        } else if (path.isPresent() && isFolder(path.get())) {
            folder(path.get(), answer, drawn, book, font);
        } else if (path.isPresent()) {
            OutputFile.write(path.get(), file(stack, catalogs, answer, book, font), files.read(), notices);
        }
    }

    /** Whether letters are drawn, and not left to a browser or a viewer. */
    boolean drawsLetters() {
        boolean viewer = output.toLowerCase(Locale.ROOT).endsWith(".html")
                || path().filter(this::isFolder).isPresent();
        return outlines || !viewer;
    }

    private Optional<Path> path() {
        try {
            return Optional.of(Path.of(output));
        } catch (InvalidPathException wrong) {
            notices.add(FileNotices.NO_FILE_NAME.with("file", output));
            return Optional.empty();
        }
    }

    /** A pipe or a device may be called anything, and takes a PDF. */
    private boolean saysWhatItIs(Optional<Path> path) {
        String name = output.toLowerCase(Locale.ROOT);
        return path.isEmpty()
                || output.equals("-")
                || ENDINGS.stream().anyMatch(name::endsWith)
                || isFolder(path.get())
                || (Files.exists(path.get()) && !Files.isRegularFile(path.get()));
    }

    private boolean isFolder(Path path) {
        return output.endsWith("/") || Files.isDirectory(path);
    }

    private byte[] file(String stack, List<Path> catalogs, Answer answer, PdfBook book, ShippedFont font) {
        String name = output.toLowerCase(Locale.ROOT);
        if (name.endsWith(".html")) {
            return PrintPage.write(book, outlines ? Optional.of(font) : Optional.empty());
        }
        byte[] pdf = PdfWriter.write(book, font);
        if (!name.endsWith(".zip")) {
            return pdf;
        }
        Map<String, byte[]> made = new LinkedHashMap<>();
        made.put("sheets.pdf", pdf);
        made.put("report.json", JsonReport.write(answer).getBytes(StandardCharsets.UTF_8));
        return files.archive(stack, catalogs, made);
    }

    /** A picture a sheet, in the order of the sheets. */
    private void folder(Path folder, Answer answer, List<ShopDrawings.Drawn> drawn, PdfBook book, ShippedFont font) {
        if (!OutputFile.folder(folder, notices)) {
            return;
        }
        int all = book.chapters().stream().mapToInt(one -> one.pages().size()).sum();
        int digits = String.valueOf(all).length();
        int number = 0;
        for (int i = 0; i < drawn.size(); i++) {
            for (Scene scene : book.chapters().get(i).pages()) {
                number++;
                String name = String.format(
                        Locale.ROOT,
                        "%0" + digits + "d-%s.svg",
                        number,
                        drawn.get(i).sheet().key());
                byte[] svg = outlines
                        ? SvgWriter.outlined(scene, answer.unit(), font)
                        : SvgWriter.write(scene, answer.unit());
                if (!OutputFile.write(folder.resolve(name), svg, files.read(), notices)) {
                    return;
                }
            }
        }
    }

    /** All pages, numbered. */
    static List<Scene> scenes(Answer answer, List<ShopDrawings.Drawn> drawn) {
        return PaperPage.scenes(
                answer.title(),
                drawn.stream().flatMap(one -> one.pages().stream()).toList());
    }

    private static PdfBook book(Answer answer, List<ShopDrawings.Drawn> drawn) {
        List<Scene> scenes = scenes(answer, drawn);
        List<PdfBook.Chapter> chapters = new ArrayList<>();
        int at = 0;
        for (ShopDrawings.Drawn one : drawn) {
            int end = at + one.pages().size();
            chapters.add(new PdfBook.Chapter(one.sheet().title(), scenes.subList(at, end)));
            at = end;
        }
        return new PdfBook(answer.title(), "Shop drawings: " + scenes.size() + " sheets.", chapters);
    }
}
