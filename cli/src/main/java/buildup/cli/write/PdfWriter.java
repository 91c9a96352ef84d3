package buildup.cli.write;

import buildup.cli.scene.Area;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/** Writes scenes as PDF: pages at exactly 1:1, which ask to be printed unscaled, with the font in it. */
public final class PdfWriter {
    private static final double POINTS_PER_INCH = 72;

    /** Any fixed number will do; without one the file would carry the time of day. */
    private static final long DOCUMENT_ID = 1;

    /** That of ISO 32000-1, on which PDF/A-2 stands. */
    private static final float VERSION = 1.7f;

    private static final String LANGUAGE = "en-US";

    private final PDPageContentStream page;
    private final PDType0Font embedded;
    private final PdfLetters others;
    private final ShippedFont font;

    private PdfWriter(PDPageContentStream page, PDType0Font embedded, PdfLetters others, ShippedFont font) {
        this.page = page;
        this.embedded = embedded;
        this.others = others;
        this.font = font;
    }

    /**
     * One page.
     *
     * @throws UncheckedIOException when the file of the font cannot be read
     */
    public static byte[] write(Scene scene, ShippedFont font) {
        return write(List.of(scene), font);
    }

    /**
     * A page for each scene, one at least, called as the first.
     *
     * @param font that is put into the file
     * @throws UncheckedIOException when the file of the font cannot be read
     */
    public static byte[] write(List<Scene> scenes, ShippedFont font) {
        Scene first = scenes.get(0);
        return write(new PdfBook(first.title(), first.description(), List.of(new PdfBook.Chapter("", scenes))), font);
    }

    /**
     * A page for each scene, with a bookmark for each chapter that has a name.
     *
     * @param font that is put into the file
     * @throws UncheckedIOException when the file of the font cannot be read
     */
    public static byte[] write(PdfBook book, ShippedFont font) {
        try (PDDocument document = new PDDocument();
                InputStream file = ShippedFont.open()) {
            document.setVersion(VERSION);
            document.setDocumentId(DOCUMENT_ID);
            document.getDocumentInformation().setTitle(book.title());
            document.getDocumentInformation().setSubject(book.subject());
            PDDocumentCatalog catalog = document.getDocumentCatalog();
            catalog.setLanguage(LANGUAGE);
            PDViewerPreferences preferences = new PDViewerPreferences(catalog.getCOSObject());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            preferences.setDisplayDocTitle(true);
            catalog.setViewerPreferences(preferences);
            PdfArchive.mark(document, book.title(), book.subject());
            PDType0Font embedded = PDType0Font.load(document, file, true);
            PdfLetters others = new PdfLetters(document);
            PDDocumentOutline outline = new PDDocumentOutline();
            for (PdfBook.Chapter chapter : book.chapters()) {
                int first = document.getNumberOfPages();
                for (Scene scene : chapter.pages()) {
                    page(document, scene, embedded, others, font);
                }
                if (!chapter.name().isEmpty()) {
                    PDOutlineItem item = new PDOutlineItem();
                    item.setTitle(chapter.name());
                    item.setDestination(document.getPage(first));
                    outline.addLast(item);
                }
            }
            if (outline.hasChildren()) {
                catalog.setDocumentOutline(outline);
                catalog.setPageMode(PageMode.USE_OUTLINES);
            }
            others.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void page(
            PDDocument document, Scene scene, PDType0Font embedded, PdfLetters others, ShippedFont font)
            throws IOException {
        PDPage sheet = new PDPage(
                new PDRectangle((float) (scene.width() * POINTS_PER_INCH), (float) (scene.height() * POINTS_PER_INCH)));
        document.addPage(sheet);
        try (PDPageContentStream page = new PDPageContentStream(document, sheet)) {
            new PdfWriter(page, embedded, others, font).draw(scene);
        }
    }

    private void draw(Scene scene) throws IOException {
        page.transform(Matrix.getScaleInstance((float) POINTS_PER_INCH, (float) POINTS_PER_INCH));
        page.setLineJoinStyle(1);
        for (SceneItem item : scene.leaves()) {
            draw(item);
        }
    }

    private void draw(SceneItem item) throws IOException {
        if (item instanceof Area area) {
            page.setNonStrokingColor(new Color(area.tone().rgb()));
            trace(area.ring(), true);
            page.fill();
        } else if (item instanceof Path path) {
            pen(path.style().tone(), path.style().width(), path.style().dash());
            trace(path.segments(), path.closed());
            page.stroke();
        } else if (item instanceof Hatch hatch) {
            pen(Tone.INK, hatch.pattern().width(), hatch.pattern().dash());
            trace(hatch.lines(), false);
            page.stroke();
        } else if (item instanceof Label label) {
            write(label);
        } else if (item instanceof Clip clip) {
            clipped(clip);
        }
    }

    private void clipped(Clip clip) throws IOException {
        Box window = clip.window();
        page.saveGraphicsState();
        page.addRect((float) window.back(), (float) window.bottom(), (float) window.width(), (float) window.height());
        page.clip();
        for (SceneItem item : Scene.leaves(clip.items())) {
            draw(item);
        }
        page.restoreGraphicsState();
    }

    private void pen(Tone tone, double width, List<Double> dash) throws IOException {
        page.setStrokingColor(new Color(tone.rgb()));
        page.setLineWidth((float) width);
        float[] pattern = new float[dash.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = dash.get(i).floatValue();
        }
        page.setLineDashPattern(pattern, 0);
    }

    private void write(Label label) throws IOException {
        SetText text = font.set(label.text());
        page.setNonStrokingColor(new Color(Tone.INK.rgb()));
        page.beginText();
        double from = 0;
        for (SetText.Part part : text.parts()) {
            if (part instanceof SetText.Shipped shipped) {
                page.setFont(embedded, (float) label.size());
                page.setTextMatrix(new Matrix(text.place(label, new Point(from, 0))));
                page.showText(shipped.text());
            } else if (part instanceof SetText.Other other) {
                for (SetText.Glyph glyph : other.glyphs()) {
                    PdfLetters.Letter letter = others.of(glyph);
                    page.setFont(letter.font(), (float) label.size());
                    page.setTextMatrix(
                            new Matrix(text.place(label, glyph.moved(from).at())));
                    page.showText(letter.code());
                }
            }
            from += part.width();
        }
        page.endText();
    }

    private void trace(List<? extends Segment> segments, boolean closed) throws IOException {
        Optional<Point> at = Optional.empty();
        for (Segment segment : segments) {
            Point from = segment.from();
            if (at.isEmpty() || !Joins.meet(at.get(), from)) {
                page.moveTo((float) from.x(), (float) from.y());
            }
            if (segment instanceof Arc arc && Math.abs(arc.sweep()) > 0) {
                for (Cubic curve : Cubic.along(arc)) {
                    curve(curve);
                }
            } else {
                page.lineTo((float) segment.to().x(), (float) segment.to().y());
            }
            at = Optional.of(segment.to());
        }
        if (closed) {
            page.closePath();
        }
    }

    private void curve(Cubic curve) throws IOException {
        page.curveTo(
                (float) curve.first().x(),
                (float) curve.first().y(),
                (float) curve.second().x(),
                (float) curve.second().y(),
                (float) curve.to().x(),
                (float) curve.to().y());
    }
}
