package org.riseandgel.platform.database;

/** The database server could not be made, started, prepared or stopped; the message says why in plain words. */
public final class DatabaseFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public DatabaseFailure(String message) {
        super(message);
    }

    public DatabaseFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
