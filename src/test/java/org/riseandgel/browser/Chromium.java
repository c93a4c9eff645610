package org.riseandgel.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The machine's own Chromium, started once for all browser tests of a thread: its driver belongs to one thread alone. */
final class Chromium {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome-stable");
    private static final ThreadLocal<Browser> BROWSERS = ThreadLocal.withInitial(Chromium::launch);

    private Chromium() {}

    static boolean required() {
        return Boolean.parseBoolean(System.getenv("RISEANDGEL_BROWSER_REQUIRED"));
    }

    static Optional<Path> executable() {
        String named = System.getenv("RISEANDGEL_CHROMIUM");
        Stream<Path> places = named != null
                ? Stream.of(Path.of(named))
                : NAMES.stream().flatMap(name -> Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                        .map(folder -> Path.of(folder, name)));
        return places.filter(Files::isExecutable).findFirst();
    }

    static Browser browser() {
        return BROWSERS.get();
    }

    private static Browser launch() {
        Path executable = executable()
                .orElseThrow(() -> new IllegalStateException(
                        "Chromium is required here and was not found: install the package chromium"));
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        return playwright.chromium().launch(options(executable));
    }

    private static BrowserType.LaunchOptions options(Path executable) {
        return new BrowserType.LaunchOptions()
                .setExecutablePath(executable)
                .setArgs(List.of(
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync"));
    }
}
