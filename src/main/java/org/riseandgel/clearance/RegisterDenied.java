package org.riseandgel.clearance;

/** Somebody asked for what is not theirs to do; nothing was changed. */
public final class RegisterDenied extends RuntimeException {
    private static final long serialVersionUID = 1;

    RegisterDenied(String message) {
        super(message);
    }
}
