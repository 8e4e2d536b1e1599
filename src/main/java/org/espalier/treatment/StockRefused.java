package org.espalier.treatment;

import java.util.function.Supplier;
import org.espalier.kit.Texts;
import org.espalier.stock.StockRefusal;

/** The stock could not give or take back a piece; nothing of the procedure is recorded. */
public final class StockRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String what;
    private final transient StockRefusal refusal;

    StockRefused(String what, StockRefusal refusal) {
        super(refusal.getMessage(), refusal);
        this.what = what;
        this.refusal = refusal;
    }

    /** Does what the stock may refuse, and says of which piece it was. */
    static <T> T telling(String what, Supplier<T> work) {
        try {
            return work.get();
        } catch (StockRefusal refusal) {
            throw new StockRefused(what, refusal);
        }
    }

    public StockRefusal.Reason reason() {
        return refusal.reason();
    }

    /** Which piece, what is the matter and what to do, in the reader's words. */
    public String text() {
        return Texts.text("treatment.stock-refused", what, refusal.text());
    }
}
