package dev.ledgerwing.report.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A small picture of a sheet, to recognise it by. */
public final class SheetPicture {

    private static final float DOTS_PER_INCH = 72;

    static {
        OwnFonts.use();
    }

    private SheetPicture() {}

    /** The first page of a PDF file as PNG, one dot a point. */
    public static byte[] firstPage(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage picture = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.RGB);
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(picture, "png", png);
            return png.toByteArray();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
