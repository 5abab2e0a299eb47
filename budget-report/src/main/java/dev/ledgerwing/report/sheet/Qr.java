package dev.ledgerwing.report.sheet;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A square code for a telephone's camera, as one path of an SVG drawing: sharp at every size, and free of images.
 *
 * @param viewBox of the drawing, with the blank border of four modules that ISO/IEC 18004 asks for
 * @param path the dark modules, a run of each row at a time
 */
public record Qr(String viewBox, String path) {

    private static final int BORDER = 4;

    /** The code for up to some hundreds of characters, readable with 15 % of it damaged. */
    public static Qr of(String text) {
        try {
            return of(Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(
                    "text for a code must be short, was " + text.length() + " characters", tooLong);
        }
    }

    private static Qr of(ByteMatrix dark) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < dark.getHeight(); y++) {
            for (int x = 0; x < dark.getWidth(); x++) {
                int run = run(dark, x, y);
                if (run > 0) {
                    path.append('M').append(x).append(' ').append(y).append('h').append(run);
                    path.append("v1h-").append(run).append('z');
                    x += run;
                }
            }
        }
        int side = dark.getWidth() + 2 * BORDER;
        return new Qr("-" + BORDER + " -" + BORDER + " " + side + " " + side, path.toString());
    }

    private static int run(ByteMatrix dark, int x, int y) {
        int end = x;
        while (end < dark.getWidth() && dark.get(end, y) == 1) {
            end++;
        }
        return end - x;
    }
}
