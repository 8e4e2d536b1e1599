package org.espalier.film.internal.dicom;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/**
 * A program that reads and decodes spoiled films, run by tests in a Java machine with little memory: it ends well only
 * if each film was either read or refused. Arguments: how many mutations of each file (0 for the file as it is), then
 * the files.
 */
final class HostileFilms {

    private static final long SEED = 20_250_314;

    private int decoded;
    private int refused;

    private HostileFilms() {}

    public static void main(String[] arguments) throws IOException {
        int mutations = Integer.parseInt(arguments[0]);
        HostileFilms films = new HostileFilms();
        Random random = new Random(SEED);
        for (int i = 1; i < arguments.length; i++) {
            byte[] good = Files.readAllBytes(Path.of(arguments[i]));
            if (mutations == 0) {
                films.take(arguments[i], good);
            }
            for (int j = 0; j < mutations; j++) {
                Mutation mutation = Mutation.values()[j % Mutation.values().length];
                films.take(arguments[i] + " " + mutation + " " + j, mutation.apply(good, random));
            }
        }
        System.out.println("decoded " + films.decoded + ", refused " + films.refused);
    }

    private void take(String name, byte[] bytes) {
        try {
            if (isDecoded(bytes)) {
                decoded++;
            } else {
                refused++;
            }
        } catch (Throwable e) {
            throw new AssertionError(name, e);
        }
    }

    private static boolean isDecoded(byte[] bytes) {
        return switch (DicomReader.read(ByteBuffer.wrap(bytes), Limits.STANDARD)) {
            case ReadResult.Read(DicomFile film) -> isDecoded(film);
            case ReadResult.Refused refusal -> false;
        };
    }

    private static boolean isDecoded(DicomFile film) {
        film.dataSet().forEach(element -> film.dataSet().strings(element.tag()));
        SpacingReading.of(film.dataSet());
        return switch (PixelDecoder.decode(film, Limits.STANDARD)) {
            case StoredImage image -> {
                GreyTransform.of(film.dataSet(), image).ifPresent(grey -> grey.table(grey.standard(image)));
                ColourImage.of(film.dataSet(), image);
                yield true;
            }
            case Decoded.Refused(Refusal reason, String detail) -> {
                if (detail.equals(PixelDecoder.OUT_OF_MEMORY)) {
                    throw new AssertionError(detail);
                }
                yield false;
            }
        };
    }
}
