package org.espalier.access;

import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keys for archives. Each key is an archive of its own in the list of staff, so that the log tells them apart. */
@Service
public class SiteTokenService {

    private final JdbcSiteTokenRepository tokens;
    private final AccessLog log;
    private final Ids ids;
    private final Clock clock;

    SiteTokenService(JdbcSiteTokenRepository tokens, AccessLog log, Ids ids, Clock clock) {
        this.tokens = tokens;
        this.log = log;
        this.ids = ids;
        this.clock = clock;
    }

    /** All keys, newest first. */
    @Transactional
    public List<SiteToken> all() {
        return tokens.all();
    }

    /** Issues a key; its secret is told here and never again. */
    @Transactional
    public SiteTokenSecret issue(SiteId site, String label, Set<TokenScope> scopes) {
        var secret = SiteTokenSecret.fresh();
        var archive = new StaffId(ids.next());
        tokens.addArchive(archive, site, label);
        tokens.add(new SiteToken(ids.next(), site, label, scopes, clock.instant(), null), archive, secret);
        log.managed("token issued", site, archive);
        return secret;
    }

    /** Makes a key open nothing any more. */
    @Transactional
    public void revoke(UUID token) {
        tokens.revoke(token, clock.instant())
                .ifPresent(archive -> log.managed("token revoked", archive.site(), archive.staff()));
    }
}
