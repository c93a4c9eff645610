package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.AppProcess;
import org.riseandgel.Oracle;

/**
 * Somebody sits a check in a real browser. The program is killed after two items, the program with its database after
 * three, and they go on each time where the last saved answer was, hand in, and pass.
 */
@NeedsBrowser
class SittingIT {
    private static final Pattern ITEM = Pattern.compile("/sittings/([0-9a-f-]{36})/items/([0-9]+)");

    @TempDir
    private Path folder;

    private Path data;
    private int port;

    @Test
    void aSittingOutlivesTheServerAndIsFinished() throws Exception {
        data = Files.createDirectory(folder.resolve("data"));
        try (ServerSocket socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        try (Visitor esme = Visitor.at("http://127.0.0.1:" + port)) {
            try (AppProcess app = start()) {
                esme.signInAs("esme");
                esme.open("/checks/whipping-check");
                esme.find("button:has-text('Begin the check')").click();
                save(esme, "Item 1 of 5");
                save(esme, "Item 2 of 5");
                fill(esme);
                app.killHard();
            }
            lost(esme);
            try (AppProcess app = start()) {
                goOn(esme, "3 of 5 are still open");
                save(esme, "Item 3 of 5");
                app.killAll();
            }
            try (AppProcess app = start()) {
                goOn(esme, "2 of 5 are still open");
                save(esme, "Item 4 of 5");
                save(esme, "Item 5 of 5");
                handIn(esme);
                app.stop();
            }
            assertThat(esme.complaints()).isEmpty();
        }
    }

    private AppProcess start() throws Exception {
        return AppProcess.start(data, Map.of("RISEANDGEL_DEMO", "true"), "-Dquarkus.http.port=" + port);
    }

    private void save(Visitor esme, String heading) throws Exception {
        assertThat(esme.find("h1").innerText()).isEqualTo(heading);
        int item = Integer.parseInt(heading.split(" ")[1]);
        fill(esme);
        esme.find("form.form button[type=submit]").click();
        esme.page().waitForURL(url -> !url.contains("/items/" + item + "?") && !url.endsWith("/items/" + item));
        String told = esme.find("main").innerText();
        assertThat(told).containsAnyOf("Item " + item + " is saved", "Every item has an answer");
    }

    private void fill(Visitor esme) throws Exception {
        Matcher item = ITEM.matcher(esme.page().url());
        assertThat(item.find()).as(esme.page().url()).isTrue();
        String right = new Oracle(owner()).rightItem(item.group(1), Integer.parseInt(item.group(2)));
        new PracticeHand(esme).put(right);
    }

    /** What was typed and not saved meets a server that is not there. */
    private static void lost(Visitor esme) {
        assertThatThrownBy(() -> esme.page().reload()).isInstanceOf(PlaywrightException.class);
    }

    private static void goOn(Visitor esme, String open) {
        esme.open("/checks");
        esme.find("a.button:has-text('Go on')").click();
        assertThat(esme.find("main").innerText()).contains(open);
        esme.find("a.button:has-text('Next open item')").click();
    }

    private static void handIn(Visitor esme) {
        Page page = esme.page();
        esme.find("a.button:has-text('Hand in')").click();
        esme.find("button:has-text('Hand in and see the result')").click();
        assertThat(esme.find(".verdict-word").innerText()).contains("Passed");
        assertThat(esme.find(".verdict").innerText()).contains("5 of 5");
        String result = page.url();
        // The page that hands in is not kept by the browser; asked for again, it leads to the one result there is.
        page.goBack();
        page.waitForURL(result);
        assertThat(esme.find(".verdict-word").innerText()).contains("Passed");
        esme.open("/checks/whipping-check");
        assertThat(esme.find("tbody tr").count()).isEqualTo(1);
    }

    private Oracle.Connections owner() throws Exception {
        String databasePort = Files.readAllLines(data.resolve("database/postmaster.pid"))
                .get(3)
                .strip();
        String password =
                Files.readString(data.resolve("keys/database-owner.password")).strip();
        return () -> DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + databasePort + "/riseandgel", "riseandgel_owner", password);
    }
}
