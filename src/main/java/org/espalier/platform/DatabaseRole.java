package org.espalier.platform;

import java.util.Locale;

/** The roles the house uses in PostgreSQL; db/README.md says what each may do. */
enum DatabaseRole {
    OWNER,
    APP,
    JOB,
    BACKUP;

    String user() {
        return "espalier_" + settingName();
    }

    String settingName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
