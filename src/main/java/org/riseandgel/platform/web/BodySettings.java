package org.riseandgel.platform.web;

import io.smallrye.config.ConfigMapping;
import java.util.Set;

/** How large the bodies of requests may be. */
@ConfigMapping(prefix = "riseandgel.body")
public interface BodySettings {
    /** Bytes that a body may have at most, where nothing larger is expected. */
    long usualBytes();

    /** Addresses that take files up to the server's own limit. */
    Set<String> largeAt();
}
