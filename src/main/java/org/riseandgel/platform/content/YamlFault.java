package org.riseandgel.platform.content;

/** A text that is not the YAML it should be: the line, counted from 1, and what is wrong with it. */
public final class YamlFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;

    YamlFault(int line, String message) {
        super(message);
        this.line = line;
    }

    /** The line, counted from 1. */
    public int line() {
        return line;
    }
}
