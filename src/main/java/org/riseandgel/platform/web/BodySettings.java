package org.riseandgel.platform.web;

import io.smallrye.config.ConfigMapping;
import java.util.Set;

/** How large the bodies of requests may be. */
@ConfigMapping(prefix = "riseandgel.body")
public interface BodySettings {
    /** The most bytes that a body may have where nothing else is said. */
    long usualBytes();

    /** The addresses whose bodies may be as large as the server takes at all. */
    Set<String> largeAt();
}
