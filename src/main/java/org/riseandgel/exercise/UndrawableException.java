package org.riseandgel.exercise;

/** No draw of an exercise passed its conditions; the message says what most draws failed on. */
public final class UndrawableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UndrawableException(String message) {
        super(message);
    }
}
