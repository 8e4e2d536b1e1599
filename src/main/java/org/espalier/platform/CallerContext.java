package org.espalier.platform;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionDefinition;

/**
 * Tells each new transaction for whom it speaks. Without a caller nothing is set, and the database then refuses every
 * row behind a wall with an error of its own instead of showing an empty list. It is told while the transaction begins,
 * so that one whose connection fails at that very moment has not begun: its thread goes on with another.
 */
@Component("transactionManager")
class CallerContext extends JdbcTransactionManager {

    private static final long serialVersionUID = 1;

    private static final String SPEAK_FOR =
            "select set_config('espalier.staff', ?, true), set_config('espalier.site', ?, true)";

    CallerContext(DataSource dataSource) {
        super(dataSource);
    }

    @Override
    protected void prepareTransactionalConnection(Connection connection, TransactionDefinition definition)
            throws SQLException {
        super.prepareTransactionalConnection(connection, definition);
        var caller = Callers.current();
        if (caller.isPresent()) {
            speakFor(connection, caller.get());
        }
    }

    private static void speakFor(Connection connection, Caller caller) throws SQLException {
        var staff = caller instanceof Caller.Staff(var id) ? id.toString() : "system";
        var site = caller instanceof Caller.SystemAtSite(var id, var purpose) ? id.toString() : "";
        try (var statement = connection.prepareStatement(SPEAK_FOR)) {
            statement.setString(1, staff);
            statement.setString(2, site);
            statement.execute();
        }
    }
}
