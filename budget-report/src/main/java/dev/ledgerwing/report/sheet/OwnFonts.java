package dev.ledgerwing.report.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers every question for a font of the machine with the font of the sheets. Left to itself the PDF library looks through all
 * fonts of the machine, and keeps what it found in a file of the person's home folder.
 */
final class OwnFonts implements FontMapper {

    private final TrueTypeFont font;

    private OwnFonts(TrueTypeFont font) {
        this.font = font;
    }

    /** From now on, for the whole program. */
    static void use() {
        try {
            FontMappers.set(new OwnFonts(
                    new TTFParser().parse(new RandomAccessReadBuffer(PaperFiles.bytes("fonts/Roboto-Regular.ttf")))));
        } catch (IOException packedWithUs) {
            throw new UncheckedIOException(packedWithUs);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor description) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor description) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, @Nullable PDFontDescriptor description, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, font, false);
    }
}
