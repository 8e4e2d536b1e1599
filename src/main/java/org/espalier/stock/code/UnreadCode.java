package org.espalier.stock.code;

import org.espalier.kit.Texts;

/**
 * A code that breaks a rule of its standard.
 *
 * @param problem which
 * @param where at which part, as printed on labels, such as {@code (17) USE BY or EXPIRY}
 * @param what the characters concerned
 */
public record UnreadCode(CodeProblem problem, String where, String what) implements ScannedCode {

    /** What is wrong and what to do, in the reader's words. */
    public String explained() {
        return Texts.text("stock.CodeProblem." + problem.name(), where, what);
    }
}
