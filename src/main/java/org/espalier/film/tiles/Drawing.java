package org.espalier.film.tiles;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.espalier.film.tiles.Picture.Part;

/**
 * Draws regions of a pyramid. The level just larger than the view is read, values between its pixels are interpolated
 * linearly as stored values, and only then turned into shades.
 */
public final class Drawing {

    private Drawing() {}

    /** Draws a region of a grey picture through its shades; a colour picture needs none and ignores them. */
    public static BufferedImage draw(Pyramid pyramid, Region wanted, Shades shades) throws IOException {
        var region = wanted.within(pyramid.width(), pyramid.height());
        int level = region.level(pyramid.halvings());
        double reduction = 1 << level;
        double step = 1 / region.scale() / reduction;
        var across = Axis.of(region.x() / reduction, step, region.drawnWidth(), pyramid.width(level));
        var down = Axis.of(region.y() / reduction, step, region.drawnHeight(), pyramid.height(level));
        var picture = pyramid.read(level, new Part(across.start(), down.start(), across.length(), down.length()));
        return switch (picture) {
            case GreyPicture grey -> draw(grey, across, down, shades);
            case ColourPicture colour -> draw(colour, across, down);
        };
    }

    private static BufferedImage draw(GreyPicture picture, Axis across, Axis down, Shades shades) {
        var image = new BufferedImage(across.drawn(), down.drawn(), BufferedImage.TYPE_BYTE_GRAY);
        var target = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        boolean exact = across.isExact() && down.isExact();
        int i = 0;
        for (int y = 0; y < down.drawn(); y++) {
            int upper = down.before()[y] * picture.width();
            int lower = down.after(y) * picture.width();
            for (int x = 0; x < across.drawn(); x++) {
                int left = across.before()[x];
                target[i++] = shades.of(
                        exact
                                ? picture.samples()[upper + left]
                                : between(
                                        across.share()[x],
                                        down.share()[y],
                                        picture.value(upper + left),
                                        picture.value(upper + across.after(x)),
                                        picture.value(lower + left),
                                        picture.value(lower + across.after(x))));
            }
        }
        return image;
    }

    private static BufferedImage draw(ColourPicture picture, Axis across, Axis down) {
        var image = new BufferedImage(across.drawn(), down.drawn(), BufferedImage.TYPE_3BYTE_BGR);
        var target = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int i = 0;
        for (int y = 0; y < down.drawn(); y++) {
            for (int x = 0; x < across.drawn(); x++) {
                for (int channel = ColourPicture.CHANNELS - 1; channel >= 0; channel--) {
                    target[i++] = (byte) between(
                            across.share()[x],
                            down.share()[y],
                            picture.value(across.before()[x], down.before()[y], channel),
                            picture.value(across.after(x), down.before()[y], channel),
                            picture.value(across.before()[x], down.after(y), channel),
                            picture.value(across.after(x), down.after(y), channel));
                }
            }
        }
        return image;
    }

    private static int between(int across, int down, int upperLeft, int upperRight, int lowerLeft, int lowerRight) {
        int upper = upperLeft * (Axis.WHOLE - across) + upperRight * across;
        int lower = lowerLeft * (Axis.WHOLE - across) + lowerRight * across;
        long sum = (long) upper * (Axis.WHOLE - down) + (long) lower * down;
        return (int) (sum + (1 << 15) >> 16);
    }

    /**
     * A picture as JPEG.
     *
     * @param quality 1 to 100
     */
    public static byte[] toJpeg(BufferedImage image, int quality) throws IOException {
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream(1 << 16);
        try (var output = new MemoryCacheImageOutputStream(bytes)) {
            var parameters = writer.getDefaultWriteParam();
            parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            parameters.setCompressionQuality(quality / 100f);
            writer.setOutput(output);
            writer.write(null, new IIOImage(image, null, null), parameters);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
