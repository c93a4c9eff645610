package org.riseandgel.platform.start;

import io.quarkus.runtime.configuration.QuarkusConfigBuilderCustomizer;
import io.smallrye.config.PropertiesConfigSourceLoader;
import io.smallrye.config.SmallRyeConfig;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.nio.file.Path;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * The settings as they are before the framework runs: system properties, environment,
 * {@code config/application.properties} in the working folder, then what the program itself brings.
 */
public final class EarlySettings {
    private static final int FILE_RANK = 260;
    private static final int BUILT_IN_RANK = 250;

    private final SmallRyeConfig config;

    private EarlySettings(SmallRyeConfig config) {
        this.config = config;
    }

    /** Reads the settings of this process. */
    public static EarlySettings read() {
        return read(Path.of("config", "application.properties"));
    }

    static EarlySettings read(Path file) {
        ClassLoader loader = EarlySettings.class.getClassLoader();
        return new EarlySettings(new SmallRyeConfigBuilder()
                .forClassLoader(loader)
                .withCustomizers(new QuarkusConfigBuilderCustomizer())
                .addDefaultInterceptors()
                .addSystemSources()
                .withSources(
                        PropertiesConfigSourceLoader.inFileSystem(file.toUri().toString(), FILE_RANK, loader))
                .withSources(PropertiesConfigSourceLoader.inClassPath("application.properties", BUILT_IN_RANK, loader))
                .build());
    }

    /** The value, or empty when it is not set or blank. */
    Optional<String> text(String name) {
        try {
            return config.getOptionalValue(name, String.class).filter(value -> !value.isBlank());
        } catch (NoSuchElementException e) {
            throw StartFailure.because("The setting " + name + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** Whether the setting is {@code true}; anything but {@code true} and {@code false} stops the start. */
    boolean yes(String name) {
        String value = text(name).orElse("false");
        if (!value.equals("true") && !value.equals("false")) {
            throw StartFailure.because("The setting " + name + " is " + value + ", and has to be true or false.");
        }
        return value.equals("true");
    }

    DataFolder dataFolder() {
        String path = text("riseandgel.data-dir")
                .orElseGet(() ->
                        Path.of(System.getProperty("user.home"), "rise-and-gel").toString());
        return DataFolder.at(Path.of(path), text("riseandgel.postgres-dir").map(Path::of));
    }
}
