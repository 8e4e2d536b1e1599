package org.espalier.film.tiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawingTests {

    private static final int WIDTH = 1300;
    private static final int HEIGHT = 1101;

    @TempDir
    Path folder;

    private GreyPicture picture;
    private Pyramid pyramid;

    @BeforeEach
    void build() throws IOException {
        picture = new GreyPicture(WIDTH, HEIGHT, false);
        var random = new Random(7);
        for (int i = 0; i < picture.samples().length; i++) {
            picture.samples()[i] = (short) random.nextInt(1 << 16);
        }
        pyramid = Pyramid.build(picture, folder.resolve("a/picture"));
    }

    @Test
    void drawsEveryPixelOfTheFullSizeAsItIs() throws IOException {
        var image = Drawing.draw(pyramid, new Region(700, 650, 301, 407, 700, 650), upperByte());
        assertThat(image.getWidth()).isEqualTo(700);
        assertThat(image.getHeight()).isEqualTo(650);
        for (int y = 0; y < 650; y += 13) {
            for (int x = 0; x < 700; x += 7) {
                int stored = picture.value((y + 407) * WIDTH + x + 301);
                assertThat(image.getRaster().getSample(x, y, 0)).isEqualTo(stored >> 8);
            }
        }
    }

    @Test
    void givesEdgeTilesTheirTrueSize() throws IOException {
        var image = Drawing.draw(pyramid, new Region(138, 39, 1024, 1024, 276, 77), upperByte());
        assertThat(image.getWidth()).isEqualTo(138);
        assertThat(image.getHeight()).isEqualTo(39);
        assertThat(image.getRaster().getSample(3, 5, 0)).isEqualTo(meanOf(1030, 1034, 2) >> 8);
    }

    @Test
    void meansTheStoredValuesOfWhatAPixelStandsFor() throws IOException {
        var image = Drawing.draw(pyramid, new Region(512, 512, 0, 0, 1024, 1024), upperByte());
        assertThat(image.getRaster().getSample(100, 200, 0)).isEqualTo(meanOf(200, 400, 2) >> 8);
    }

    @Test
    void keepsProportionsInsideTheView() throws IOException {
        var image = Drawing.draw(pyramid, Region.whole(pyramid, 256, 256), upperByte());
        assertThat(image.getWidth()).isEqualTo(256);
        assertThat(image.getHeight()).isEqualTo(217);
    }

    @Test
    void enlargesBetweenPixels() throws IOException {
        var ramp = new GreyPicture(4, 1, false, new short[] {0, 100, 200, 300});
        var image = Drawing.draw(
                Pyramid.build(ramp, folder.resolve("ramp")),
                new Region(16, 4, 0, 0, 4, 1),
                shades(v -> Math.min(v, 255)));
        assertThat(image.getRaster().getSample(0, 0, 0)).isZero();
        assertThat(image.getRaster().getSample(2, 0, 0)).isEqualTo(13);
        assertThat(image.getRaster().getSample(6, 0, 0)).isEqualTo(113);
    }

    @Test
    void readsWhatItBuilt() throws IOException {
        var again = Pyramid.open(folder.resolve("a/picture"));
        assertThat(again.width()).isEqualTo(WIDTH);
        assertThat(again.height()).isEqualTo(HEIGHT);
        assertThat(again.halvings()).isEqualTo(2);
        assertThat(again.least()).isEqualTo(pyramid.least());
        assertThat(again.greatest()).isEqualTo(pyramid.greatest());
        var region = new Region(512, 512, 0, 0, 512, 512);
        assertThat(samples(Drawing.draw(again, region, upperByte())))
                .isEqualTo(samples(Drawing.draw(pyramid, region, upperByte())));
    }

    @Test
    void keepsSignedValuesSigned() throws IOException {
        var signed = new GreyPicture(2, 2, true, new short[] {-4, -2, 2, 4});
        var built = Pyramid.build(signed, folder.resolve("signed"));
        assertThat(built.least()).isEqualTo(-4);
        assertThat(built.greatest()).isEqualTo(4);
        assertThat(signed.halved().value(0)).isZero();
    }

    @Test
    void drawsColoursAsTheyAre() throws IOException {
        var colour = new ColourPicture(2, 1, new byte[] {10, 20, 30, 40, 50, 60});
        var image = Drawing.draw(
                Pyramid.build(colour, folder.resolve("colour")), new Region(2, 1, 0, 0, 2, 1), Shades.NONE);
        assertThat(image.getRGB(0, 0) & 0xFFFFFF).isEqualTo(0x0A141E);
        assertThat(image.getRGB(1, 0) & 0xFFFFFF).isEqualTo(0x28323C);
    }

    @Test
    void refusesAFileThatIsCutShort() throws IOException {
        var file = folder.resolve("a/picture");
        var cut = folder.resolve("cut");
        Files.write(cut, java.util.Arrays.copyOf(Files.readAllBytes(file), 2000));
        assertThatThrownBy(() -> Drawing.draw(Pyramid.open(cut), Region.whole(pyramid, 512, 512), upperByte()))
                .isInstanceOf(BrokenPyramidException.class);
    }

    @Test
    void refusesRegionsOutsideThePicture() {
        assertThatThrownBy(() -> Drawing.draw(pyramid, new Region(10, 10, WIDTH, 0, 10, 10), upperByte()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("outside the picture");
        assertThatThrownBy(() -> new Region(10, 10, 0, 0, Double.NaN, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Region(10, 10, 0, 0, -5, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Region(10_000, 10, 0, 0, 5, 10)).isInstanceOf(IllegalArgumentException.class);
    }

    private int meanOf(int x, int y, int side) {
        int sum = 0;
        for (int dy = 0; dy < side; dy++) {
            for (int dx = 0; dx < side; dx++) {
                sum += picture.value((y + dy) * WIDTH + x + dx);
            }
        }
        return (sum + side * side / 2) / (side * side);
    }

    private static Shades upperByte() {
        return shades(value -> value >> 8);
    }

    private static Shades shades(java.util.function.IntUnaryOperator shade) {
        var table = new byte[1 << 16];
        for (int i = 0; i < table.length; i++) {
            table[i] = (byte) shade.applyAsInt(i);
        }
        return Shades.of(table);
    }

    private static int[] samples(BufferedImage image) {
        return image.getRaster().getSamples(0, 0, image.getWidth(), image.getHeight(), 0, (int[]) null);
    }
}
