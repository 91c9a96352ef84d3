package buildup.cli.write;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/**
 * What a PDF file says of itself so that it can be kept: PDF/A-2b (ISO 19005-2), with the colors that it means and its title
 * in XMP. No date, since the program knows none.
 */
final class PdfArchive {
    private static final String COLORS = "sRGB IEC61966-2.1";

    private PdfArchive() {}

    static void mark(PDDocument document, String title, String subject) throws IOException {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(title, subject).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
        byte[] colors = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(colors));
        intent.setInfo(COLORS);
        intent.setOutputCondition(COLORS);
        intent.setOutputConditionIdentifier(COLORS);
        intent.setRegistryName("http://www.color.org");
        catalog.addOutputIntent(intent);
    }

    private static String xmp(String title, String subject) {
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                + "<rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
                + "<pdfaid:part>2</pdfaid:part>\n"
                + "<pdfaid:conformance>B</pdfaid:conformance>\n"
                + "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + Markup.escaped(title)
                + "</rdf:li></rdf:Alt></dc:title>\n"
                + "<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">" + Markup.escaped(subject)
                + "</rdf:li></rdf:Alt></dc:description>\n"
                + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
    }
}
