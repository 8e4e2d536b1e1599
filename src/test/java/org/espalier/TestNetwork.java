package org.espalier;

import java.util.Arrays;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Makes sites and staff for a test, as the operator of the network would, and speaks as any of them. */
@Component
public class TestNetwork {

    private static final AtomicInteger COUNT = new AtomicInteger();

    private final JdbcClient owner;
    private final Ids ids;
    private final TransactionTemplate transactions;

    TestNetwork(@Qualifier("ownerDataSource") DataSource ownerDataSource, Ids ids, TransactionTemplate transactions) {
        owner = JdbcClient.create(ownerDataSource);
        this.ids = ids;
        this.transactions = transactions;
    }

    /** A new site; its name and code are its own. */
    public UUID site() {
        var id = ids.next();
        int number = COUNT.incrementAndGet();
        owner.sql("insert into site (id, code, name, time_zone) values (?, ?, ?, 'Europe/Lisbon')")
                .params(id, "T" + 1000 + number, "Test hospital " + number)
                .update();
        return id;
    }

    /** A new member of staff with the roles at the site, valid from long ago. */
    public UUID staff(UUID site, String... roles) {
        var id = ids.next();
        int number = COUNT.incrementAndGet();
        owner.sql("insert into staff (id, login, name, kind) values (?, ?, ?, 'person')")
                .params(id, "test-" + number, "Test person " + number)
                .update();
        Arrays.stream(roles).forEach(role -> member(id, site, role));
        return id;
    }

    public void member(UUID staff, UUID site, String role) {
        owner.sql("insert into membership (staff_id, site_id, role, valid) values (?, ?, ?, '[2000-01-01,)')")
                .params(staff, site, role)
                .update();
    }

    /** Does the work in one transaction as the member of staff. */
    public <T> T as(UUID staff, Supplier<T> work) {
        return Callers.callAs(new Caller.Staff(staff), () -> transactions.execute(status -> work.get()));
    }

    /** The database as its owner, past every wall: for arranging a test, never for what it asserts. */
    public JdbcClient owner() {
        return owner;
    }
}
