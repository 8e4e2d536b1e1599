package org.espalier.benchmark;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferUShort;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.film.FilmId;
import org.espalier.film.FilmImages;
import org.espalier.film.FilmService;
import org.espalier.film.FilmView;
import org.espalier.film.Received;
import org.espalier.film.TestFilm;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;

/**
 * A film of 3000 × 9000 pixels of 16 bits: until it is stored and first shown, and then tile by tile; beside the
 * general imaging library of the Java platform and, where it is installed, the DICOM toolkit of the system, on the same
 * film.
 */
final class FilmBenchmark {

    private static final int WIDTH = 3000;
    private static final int HEIGHT = 9000;
    private static final int TILE = 512;
    private static final int TILES = 400;
    private static final int REFERENCES = 5;
    private static final double FIRST_SHOWN_SECONDS = 5;
    private static final double TILE_MILLISECONDS = 30;

    private final FilmService films;
    private final FilmImages images;
    private final UUID staff;
    private final SiteId site;
    private final Path folder;

    private FilmBenchmark(FilmService films, FilmImages images, TestNetwork network, Path folder) {
        this.films = films;
        this.images = images;
        this.folder = folder;
        site = new SiteId(network.site());
        staff = network.staff(site.value(), "RADIOGRAPHER");
    }

    public static void main(String[] arguments) throws Exception {
        var folder = Files.createTempDirectory("espalier-bench");
        boolean met;
        try (var context = BenchmarkHouse.open()) {
            met = new FilmBenchmark(
                            context.getBean(FilmService.class),
                            context.getBean(FilmImages.class),
                            context.getBean(TestNetwork.class),
                            folder)
                    .run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() throws Exception {
        var warm = TestFilm.of(600, 700).bytes();
        first(warm);
        var samples = noisyFilm();
        var bytes = TestFilm.of(WIDTH, HEIGHT)
                .number(0x00280101, 16)
                .number(0x00280102, 15)
                .pixels(samples)
                .bytes();
        long start = System.nanoTime();
        var film = first(bytes);
        double shown = seconds(start);
        say("stored, decoded and first shown", shown, "s, goal under " + FIRST_SHOWN_SECONDS);
        var tiles = tiles(film);
        double p95 = tiles[(int) (TILES * 0.95)];
        say("tile, median of " + TILES, tiles[TILES / 2], "ms");
        say("tile, p95", p95, "ms, goal under " + TILE_MILLISECONDS);
        compare("general imaging library, one tile of the same film", library(samples), tiles[TILES / 2]);
        if (Files.isExecutable(Path.of("/usr/bin/dcmj2pnm"))) {
            compare("DICOM toolkit, one tile of the same film", toolkit(bytes), tiles[TILES / 2]);
        }
        return shown < FIRST_SHOWN_SECONDS && p95 < TILE_MILLISECONDS;
    }

    private FilmId first(byte[] bytes) {
        var outcome = asStaff(() -> films.receive(site, new ByteArrayInputStream(bytes), "benchmark.dcm"));
        var film = ((Received.Taken) outcome).film();
        asStaff(() -> images.open(film).orElseThrow().jpeg(FilmView.of("700,1000", null, null)));
        return film;
    }

    /** Milliseconds of tiles as the film room asks for them, each authorised and written down, in rising order. */
    private double[] tiles(FilmId film) {
        var random = new Random(11);
        var times = new double[TILES];
        for (int i = -TILES / 2; i < TILES; i++) {
            var view = tile(random);
            long start = System.nanoTime();
            asStaff(() -> images.open(film).orElseThrow().jpeg(view));
            times[Math.max(0, i)] = seconds(start) * 1000;
        }
        Arrays.sort(times);
        return times;
    }

    private static FilmView tile(Random random) {
        int side = TILE << random.nextInt(5);
        int x = random.nextInt((WIDTH + side - 1) / side) * side;
        int y = random.nextInt((HEIGHT + side - 1) / side) * side;
        int width = Math.min(side, WIDTH - x);
        int height = Math.min(side, HEIGHT - y);
        int scale = side / TILE;
        var viewport = String.join(
                ",",
                String.valueOf((width + scale - 1) / scale),
                String.valueOf((height + scale - 1) / scale),
                String.valueOf(x),
                String.valueOf(y),
                String.valueOf(width),
                String.valueOf(height));
        return FilmView.of(viewport, "30000," + (20_000 + random.nextInt(20_000)) + ",linear", 85);
    }

    /** Milliseconds in which the platform's own library reads the film as 16-bit PNG and writes one tile. */
    private double library(short[] samples) throws IOException {
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_USHORT_GRAY);
        var data = ((DataBufferUShort) image.getRaster().getDataBuffer()).getData();
        System.arraycopy(samples, 0, data, 0, samples.length);
        var file = folder.resolve("film.png");
        ImageIO.write(image, "png", file.toFile());
        return median(() -> {
            try {
                var read = ImageIO.read(file.toFile());
                var tile = new BufferedImage(TILE, TILE, BufferedImage.TYPE_BYTE_GRAY);
                for (int y = 0; y < TILE; y++) {
                    for (int x = 0; x < TILE; x++) {
                        int value = read.getRaster().getSample(x + 1024, y + 4096, 0);
                        tile.getRaster().setSample(x, y, 0, Math.clamp((value - 15_000) * 255 / 30_000, 0, 255));
                    }
                }
                ImageIO.write(tile, "jpeg", folder.resolve("tile.jpg").toFile());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private double toolkit(byte[] film) throws IOException {
        var file = Files.write(folder.resolve("film.dcm"), film);
        return median(() -> {
            try {
                var command = new ProcessBuilder(
                        "/usr/bin/dcmj2pnm",
                        "+oj",
                        "+Ww",
                        "30000",
                        "30000",
                        "+C",
                        "1024",
                        "4096",
                        "512",
                        "512",
                        file.toString(),
                        folder.resolve("toolkit.jpg").toString());
                int status = command.inheritIO().start().waitFor();
                if (status != 0) {
                    throw new IllegalStateException("the toolkit ended with " + status);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    private static double median(Runnable work) {
        var times = new double[REFERENCES];
        for (int i = 0; i < REFERENCES; i++) {
            long start = System.nanoTime();
            work.run();
            times[i] = seconds(start) * 1000;
        }
        Arrays.sort(times);
        return times[REFERENCES / 2];
    }

    /** A slope with noise, so that nothing compresses better than on a real film. */
    private static short[] noisyFilm() {
        var random = new Random(5);
        var samples = new short[WIDTH * HEIGHT];
        for (int i = 0; i < samples.length; i++) {
            double slope = 12_000 + 40_000.0 * (i / WIDTH) / HEIGHT;
            samples[i] = (short) (slope + 600 * random.nextGaussian());
        }
        return samples;
    }

    private <T> T asStaff(Supplier<T> work) {
        return Callers.callAs(new Caller.Staff(staff), work);
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static void say(String what, double figure, String unit) {
        System.out.printf(Locale.ROOT, "%-55s %9.1f %s%n", what, figure, unit);
    }

    private static void compare(String reference, double milliseconds, double ours) {
        say(reference, milliseconds, String.format(Locale.ROOT, "ms, %.0f times a tile here", milliseconds / ours));
    }
}
