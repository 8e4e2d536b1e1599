package org.espalier.platform;

import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionExecution;
import org.springframework.transaction.TransactionExecutionListener;

/**
 * Tells each new transaction for whom it speaks. Without a caller nothing is set, and the database then refuses every
 * row behind a wall with an error of its own instead of showing an empty list.
 */
@Component
class CallerContext implements TransactionExecutionListener {

    private static final String SPEAK_FOR =
            "select set_config('espalier.staff', :staff, true), set_config('espalier.site', :site, true)";

    private final JdbcClient jdbc;

    CallerContext(DataSource dataSource) {
        jdbc = JdbcClient.create(dataSource);
    }

    @Override
    public void afterBegin(TransactionExecution transaction, @Nullable Throwable failure) {
        if (failure == null && transaction.isNewTransaction()) {
            Callers.current().ifPresent(this::speakFor);
        }
    }

    private void speakFor(Caller caller) {
        var staff = caller instanceof Caller.Staff(var id) ? id.toString() : "system";
        var site = caller instanceof Caller.SystemAtSite(var id, var purpose) ? id.toString() : "";
        jdbc.sql(SPEAK_FOR)
                .param("staff", staff)
                .param("site", site)
                .query((row, number) -> number)
                .single();
    }
}
