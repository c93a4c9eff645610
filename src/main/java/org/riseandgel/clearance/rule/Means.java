package org.riseandgel.clearance.rule;

import java.util.UUID;

/**
 * How it was seen that the person had understood.
 *
 * @param sitting the sitting, where it was one; else null
 * @param language the language that was spoken or read
 * @param readingSupport whether the text was read out or explained because reading it was hard
 */
public record Means(How how, UUID sitting, String language, boolean readingSupport) {
    /** The ways of finding out. */
    public enum How {
        SITTING,
        ORAL,
        DEMONSTRATION
    }

    public Means {
        if (how == null || (how == How.SITTING) != (sitting != null)) {
            throw new IllegalArgumentException(
                    "Say how it was verified: by a sitting (which one), by word of mouth, or by demonstration.");
        }
        Text.need("language", language);
    }
}
