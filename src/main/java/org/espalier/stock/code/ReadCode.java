package org.espalier.stock.code;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A code that was understood. A label may carry several; what one leaves out another has: see {@link #joined}.
 *
 * @param issuer whose rules it follows
 * @param product GTIN of 14 digits, or the HIBC labeller, product or catalogue number and unit of measure
 * @param lot lot or batch
 * @param expiry last day of use
 * @param serial serial number
 * @param produced day of manufacture
 * @param quantity how many are in the package, if the code says so
 * @param link of a secondary HIBC code: the check character of the primary code it belongs to
 * @param check of a primary HIBC code: its check character
 * @param parts everything that was in it, in order
 */
public record ReadCode(
        Issuer issuer,
        Optional<String> product,
        Optional<String> lot,
        Optional<LocalDate> expiry,
        Optional<String> serial,
        Optional<LocalDate> produced,
        Optional<Integer> quantity,
        Optional<Character> link,
        Optional<Character> check,
        List<Part> parts)
        implements ScannedCode {

    /** Who published the rules. */
    public enum Issuer {
        GS1,
        HIBC
    }

    /**
     * One part of a code.
     *
     * @param identifier application identifier or HIBC data identifier
     * @param title what the standard calls it
     * @param value as it stands there
     */
    public record Part(String identifier, String title, String value) {}

    public ReadCode {
        parts = List.copyOf(parts);
    }

    /** This code and another one of the same label, if they belong together. */
    public ScannedCode joined(ReadCode other) {
        if (issuer != other.issuer || !linksTo(other) || !other.linksTo(this)) {
            return new UnreadCode(CodeProblem.NOT_OF_ONE_LABEL, name(), other.name());
        }
        var all = new ArrayList<>(parts);
        all.addAll(other.parts);
        if (issuer == Issuer.GS1) {
            var clash = Association.clash(all);
            if (clash.isPresent()) {
                return clash.get();
            }
        }
        return new ReadCode(
                issuer,
                product.or(other::product),
                lot.or(other::lot),
                expiry.or(other::expiry),
                serial.or(other::serial),
                produced.or(other::produced),
                quantity.or(other::quantity),
                Optional.empty(),
                Optional.empty(),
                all);
    }

    /** Parts that the standard wants beside those that are here; another code of the label usually has them. */
    public List<Part> alone() {
        return issuer == Issuer.GS1 ? Association.alone(parts) : List.of();
    }

    private boolean linksTo(ReadCode other) {
        return link.isEmpty() || other.check.isEmpty() || link.equals(other.check);
    }

    private String name() {
        return product.or(this::lot).or(this::serial).orElse("");
    }
}
