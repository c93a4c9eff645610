package org.riseandgel.platform.start;

/** A secret that the program makes for itself and keeps in a file of its own. */
public enum Key {
    /** Signs the tokens that prove that a form was sent from one of our pages. */
    CSRF("csrf.key"),
    /** Password of the database login that may do everything. */
    DATABASE_ADMIN("postgres.password"),
    /** Password of the database login that owns the tables. */
    DATABASE_OWNER("database-owner.password"),
    /** Password of the database login of the running program. */
    DATABASE_APP("database-app.password");

    private final String fileName;

    Key(String fileName) {
        this.fileName = fileName;
    }

    String fileName() {
        return fileName;
    }
}
