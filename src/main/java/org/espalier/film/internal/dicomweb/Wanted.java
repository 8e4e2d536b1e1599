package org.espalier.film.internal.dicomweb;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;

/**
 * In which form films are wanted (PS3.18 section 8.7.7). They are sent as they were received, never encoded anew.
 *
 * @param single whether one film may come without a multipart around it
 * @param syntaxes transfer syntaxes that are accepted; empty for any
 */
record Wanted(boolean single, List<String> syntaxes) {

    static Wanted of(@Nullable String accept) {
        try {
            var types = accept == null ? List.<MediaType>of() : MediaType.parseMediaTypes(accept);
            boolean single = !types.isEmpty()
                    && types.stream().allMatch(type -> type.isConcrete() && DicomTypes.DICOM.includes(type));
            return new Wanted(single, syntaxes(types));
        } catch (InvalidMediaTypeException e) {
            throw new IllegalArgumentException("the accept header is not of its form", e);
        }
    }

    private static List<String> syntaxes(List<MediaType> types) {
        var syntaxes = types.stream()
                .map(type -> type.getParameter("transfer-syntax"))
                .map(syntax -> syntax == null ? "*" : syntax.replace("\"", ""))
                .toList();
        return syntaxes.contains("*") ? List.of() : syntaxes;
    }

    boolean allows(@Nullable String syntax) {
        return syntaxes.isEmpty() || (syntax != null && syntaxes.contains(syntax));
    }
}
