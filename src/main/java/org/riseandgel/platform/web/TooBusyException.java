package org.riseandgel.platform.web;

/** The server has so much to do that this request was not begun; nothing was changed by it. */
public class TooBusyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public TooBusyException(String message) {
        super(message);
    }
}
