package org.riseandgel;

import io.quarkus.runtime.Application;
import io.quarkus.runtime.ApplicationLifecycleManager;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.riseandgel.clearance.ledger.VerifyCommand;
import org.riseandgel.platform.database.DatabaseFailure;
import org.riseandgel.platform.start.EarlySettings;
import org.riseandgel.platform.start.ListenRule;
import org.riseandgel.platform.start.StartFailure;
import org.riseandgel.platform.start.Storage;

/**
 * Starts the program: opens the data, then runs the framework on it, and closes the data when the
 * framework is done. Ends with code 2 when the program already runs on the same data folder, and with
 * code 1 after any other failure.
 */
@QuarkusMain
public final class RiseAndGel {
    private RiseAndGel() {}

    public static void main(String... args) {
        if (ApplicationLifecycleManager.isAppCDSGeneration()) {
            // The build runs the program for a moment to see which classes it loads; no data is wanted for that.
            Quarkus.run(args);
            return;
        }
        if (args.length > 0 && args[0].equals(VerifyCommand.NAME)) {
            List<String> files = List.of(args).subList(1, args.length);
            System.exit(VerifyCommand.run(files, System.out, System.err));
        }
        Storage storage = new Storage();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> closeLast(storage), "close the data"));
        Map<String, String> properties = open(storage);
        properties.forEach(System::setProperty);
        Quarkus.run(args);
        // Reached only where the framework does not end the process itself, as while developing.
        storage.close();
        properties.keySet().forEach(System::clearProperty);
    }

    private static Map<String, String> open(Storage storage) {
        try {
            EarlySettings settings = EarlySettings.read();
            Map<String, String> properties = new HashMap<>(ListenRule.check(settings));
            properties.putAll(storage.open(settings));
            return properties;
        } catch (StartFailure e) {
            return end(e.getMessage(), e.exitCode());
        } catch (DatabaseFailure e) {
            return end(e.getMessage(), 1);
        }
    }

    private static Map<String, String> end(String message, int exitCode) {
        System.err.println(message);
        System.exit(exitCode);
        return Map.of();
    }

    /** The database has to outlive the work on it; the process may be told to end at any moment. */
    private static void closeLast(Storage storage) {
        Application application = ApplicationLifecycleManager.getCurrentApplication();
        if (application != null) {
            application.awaitShutdown();
        }
        try {
            storage.close();
        } catch (DatabaseFailure | StartFailure e) {
            System.err.println(e.getMessage());
        }
    }
}
