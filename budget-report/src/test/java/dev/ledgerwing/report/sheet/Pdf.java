package dev.ledgerwing.report.sheet;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What can be read back from a PDF. */
final class Pdf {

    private static final int DOTS_PER_INCH = 150;
    private static final double POINTS_PER_INCH = 72;
    private static final double MM_PER_INCH = 25.4;

    private Pdf() {}

    /** The text of each page. */
    static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return pages;
        }
    }

    /** How far right any character reaches, from the left edge of the paper. */
    static double rightmostMm(byte[] pdf) throws IOException {
        double[] rightmost = {0};
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    rightmost[0] = Math.max(rightmost[0], text.getXDirAdj() + text.getWidthDirAdj());
                }
            }.getText(document);
        }
        return rightmost[0] * MM_PER_INCH / POINTS_PER_INCH;
    }

    /** Names of the fonts of the first page that are not in the file. */
    static List<String> fontsNotEmbedded(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var resources = document.getPage(0).getResources();
            List<String> missing = new ArrayList<>();
            for (COSName name : resources.getFontNames()) {
                var font = resources.getFont(name);
                if (!font.isEmbedded()) {
                    missing.add(font.getName());
                }
            }
            return missing;
        }
    }

    /** What a telephone's camera reads from the printed first page. */
    static String code(byte[] pdf) throws IOException, ReaderException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return code(new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH));
        }
    }

    private static String code(BufferedImage image) throws ReaderException {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
        var bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
        return new QRCodeReader()
                .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }
}
