package org.espalier;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.espalier.access.SignedInStaff;
import org.espalier.access.SiteId;
import org.espalier.access.SiteTokenService;
import org.espalier.access.StaffId;
import org.espalier.access.TokenScope;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Makes sites and staff for a test, as the operator of the network would, and speaks as any of them. */
@Component
public class TestNetwork {

    private static final AtomicInteger COUNT = new AtomicInteger();

    private final JdbcClient owner;
    private final Ids ids;
    private final TransactionTemplate transactions;
    private final SiteTokenService tokens;

    TestNetwork(
            @Qualifier("ownerDataSource") DataSource ownerDataSource,
            Ids ids,
            TransactionTemplate transactions,
            SiteTokenService tokens) {
        owner = JdbcClient.create(ownerDataSource);
        this.ids = ids;
        this.transactions = transactions;
        this.tokens = tokens;
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

    /** A person who runs the network and works at no site. */
    public UUID operator() {
        var id = ids.next();
        owner.sql("insert into staff (id, login, name, kind, operator) values (?, ?, ?, 'person', true)")
                .params(id, "operator-" + id, "Test operator")
                .update();
        return id;
    }

    public String login(UUID staff) {
        return owner.sql("select login from staff where id = ?")
                .param(staff)
                .query(String.class)
                .single();
    }

    /** Gives the member of staff a password of their own; hashed at a low cost, for tests sign in often. */
    public String password(UUID staff) {
        var password = "garden wall " + ids.next();
        owner.sql("insert into staff_password (staff_id, hash, must_change, changed_at)"
                        + " values (?, ?, false, current_timestamp)"
                        + " on conflict (staff_id) do update set hash = excluded.hash, must_change = false")
                .params(staff, "{bcrypt}" + new BCryptPasswordEncoder(4).encode(password))
                .update();
        return password;
    }

    /** The secret of a new token for the site's archive, to be sent as {@code Authorization: Bearer}. */
    public String token(UUID site) {
        return token(site, TokenScope.all());
    }

    /** The same, of a token for these purposes alone. */
    public String token(UUID site, Set<TokenScope> scopes) {
        return Callers.callAs(
                        new Caller.Staff(operator()), () -> tokens.issue(new SiteId(site), "Test archive", scopes))
                .value();
    }

    /** The member of staff as a signed-in principal, for requests that do not pass the door. */
    public Authentication authentication(UUID staff) {
        return UsernamePasswordAuthenticationToken.authenticated(new SignedIn(staff), null, List.of());
    }

    private record SignedIn(UUID id) implements SignedInStaff {

        @Override
        public StaffId staff() {
            return new StaffId(id);
        }

        @Override
        public boolean mustChangePassword() {
            return false;
        }

        @Override
        public Caller caller() {
            return new Caller.Staff(id);
        }
    }

    /** Does the work in one transaction as the member of staff. */
    public <T> T as(UUID staff, Supplier<T> work) {
        return Callers.callAs(new Caller.Staff(staff), () -> transactions.execute(status -> work.get()));
    }

    /** The database as its owner, past every wall: for arranging a test, never for what it asserts. */
    public JdbcClient owner() {
        return owner;
    }

    /** What a statement of the owner counts. */
    public long count(String sql, Object... parameters) {
        return owner.sql(sql).params(parameters).query(Long.class).single();
    }
}
