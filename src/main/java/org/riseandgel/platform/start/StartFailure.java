package org.riseandgel.platform.start;

/** The program must not start; the message says why and what to do about it. */
public final class StartFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int exitCode;

    private StartFailure(int exitCode, String message, Throwable cause) {
        super(message, cause);
        this.exitCode = exitCode;
    }

    /** A start that cannot go on; the process ends with code 1. */
    public static StartFailure because(String message) {
        return new StartFailure(1, message, null);
    }

    /** A start that cannot go on because of another failure; the process ends with code 1. */
    public static StartFailure because(String message, Throwable cause) {
        return new StartFailure(1, message, cause);
    }

    /** A start beside a running one; the process ends with code 2. */
    static StartFailure alreadyRunning(String message) {
        return new StartFailure(2, message, null);
    }

    /** What the process ends with. */
    public int exitCode() {
        return exitCode;
    }
}
