package org.espalier.film.internal.clip;

import java.util.Comparator;
import java.util.List;

/** The media of a clip, of which the samples of pictures alone are kept. */
record PictureSamples(ClipBytes bytes, List<SampleTable> pictures, List<Box> media) {

    /** Empties whatever lies between samples of pictures: sound, times and places were kept there. */
    void keepAlone() throws ClipNotUnderstood {
        for (var picture : pictures) {
            for (var sample : picture.samples()) {
                demandInMedia(sample);
                picture.units().fillWords(bytes, sample);
            }
        }
        var samples = pictures.stream()
                .flatMap(picture -> picture.samples().stream())
                .sorted(Comparator.comparingLong(SampleTable.Sample::from))
                .toList();
        for (var box : media) {
            emptyBetween(box, samples);
        }
    }

    private void emptyBetween(Box box, List<SampleTable.Sample> samples) throws ClipNotUnderstood {
        int at = box.content();
        for (var sample : samples) {
            int from = Math.toIntExact(sample.from());
            int end = Math.toIntExact(sample.from() + sample.size());
            if (from >= box.content() && end <= box.end()) {
                if (from > at) {
                    bytes.fill(at, from, 0);
                }
                at = Math.max(at, end);
            }
        }
        bytes.fill(at, box.end(), 0);
    }

    private void demandInMedia(SampleTable.Sample sample) throws ClipNotUnderstood {
        if (media.stream()
                .noneMatch(box -> sample.from() >= box.content() && sample.from() + sample.size() <= box.end())) {
            throw new ClipNotUnderstood("a sample outside the media");
        }
    }
}
