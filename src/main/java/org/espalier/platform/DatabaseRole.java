package org.espalier.platform;

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
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
