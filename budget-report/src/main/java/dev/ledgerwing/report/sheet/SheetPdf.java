package dev.ledgerwing.report.sheet;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Turns pages into PDF. Reads nothing but the paper files of this module, whatever a page refers to. The document has no date and its
 * identity comes from the page, so that equal pages give equal bytes.
 */
final class SheetPdf {

    private static final String SCHEME = "paper";
    private static final String PRODUCER = "Ledgerwing";

    static {
        XRLog.setLoggingEnabled(false);
        OwnFonts.use();
    }

    byte[] of(String html) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawings = new BatikSVGDrawer();
                PdfBoxRenderer renderer = builder(html, drawings, bytes).buildPdfRenderer()) {
            renderer.layout();
            try (PDDocument document = renderer.createPDFKeepOpen()) {
                pin(document, html);
                document.save(bytes);
            }
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return bytes.toByteArray();
    }

    private static PdfRendererBuilder builder(String html, BatikSVGDrawer drawings, ByteArrayOutputStream bytes) {
        return new PdfRendererBuilder()
                .withHtmlContent(html, SCHEME + ":/")
                .withProducer(PRODUCER)
                .useProtocolsStreamImplementation(SheetPdf::open, SCHEME)
                .useSVGDrawer(drawings)
                .useReplacementText("\u25AF")
                .toStream(bytes);
    }

    private static void pin(PDDocument document, String html) {
        document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        document.setDocumentId((long) html.hashCode());
    }

    private static FSStream open(String uri) {
        byte[] bytes = PaperFiles.bytes(URI.create(uri).getPath().substring(("/" + PaperFiles.FOLDER).length()));
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return new ByteArrayInputStream(bytes);
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
            }
        };
    }
}
