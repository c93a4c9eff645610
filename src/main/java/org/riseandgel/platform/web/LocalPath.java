package org.riseandgel.platform.web;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;

/** A path on this server that somebody may be sent on to. */
public final class LocalPath {
    private static final int LONGEST = 1_000;

    private LocalPath() {}

    /**
     * The asked path if it stays on this server: it begins with a slash, holds no double slash, no
     * backslash and no control character, and names neither a scheme nor a host. Anything else is empty.
     */
    public static Optional<String> of(String asked) {
        if (asked == null || asked.length() > LONGEST || !asked.startsWith("/") || asked.startsWith("//")) {
            return Optional.empty();
        }
        if (asked.indexOf('\\') >= 0 || asked.chars().anyMatch(c -> c <= ' ' || c == 0x7f)) {
            return Optional.empty();
        }
        return parsed(asked);
    }

    private static Optional<String> parsed(String asked) {
        try {
            URI uri = new URI(asked);
            boolean local = uri.getScheme() == null && uri.getRawAuthority() == null;
            return local && !uri.getRawPath().contains("//") ? Optional.of(asked) : Optional.empty();
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }
}
