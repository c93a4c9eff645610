package org.riseandgel.platform.start;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.util.Optional;

/**
 * The settings that decide how the program starts. Each is given as {@code -Driseandgel.<name>}, as an
 * environment variable ({@code RISEANDGEL_DATA_DIR} and so on), or in
 * {@code config/application.properties} beside the program.
 */
@ConfigMapping(prefix = "riseandgel")
public interface StartSettings {
    /** Folder in which the program keeps all its data. Made on the first start. */
    @WithDefault("${user.home}/rise-and-gel")
    String dataDir();

    /** Whether the school is an invented one to look around in. It is never reachable from other computers. */
    @WithDefault("false")
    boolean demo();

    /** Folder with lessons and exercises to use instead of the built-in ones. */
    Optional<String> contentDir();

    /** Folder for the unpacked database server; several data folders may share it. Inside the data folder if absent. */
    Optional<String> postgresDir();

    /**
     * The word that a proxy in front of this program encrypts what leaves the computer. Without it, and
     * without a certificate of its own, the program listens to this computer only.
     */
    @WithDefault("false")
    boolean tlsAtProxy();

    /**
     * The key behind the tokens of forms, at least 32 characters. Made on the first start and kept in the data folder if
     * absent; several nodes must be given the same one.
     */
    Optional<String> formKey();
}
