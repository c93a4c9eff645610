package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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

/** The packaged program on an empty folder: from the printed address to a graded answer, with nothing but a browser. */
@NeedsBrowser
class FirstStartIT {
    private static final Pattern SET_UP = Pattern.compile("(http://\\S+/set-up\\?key=\\S+)");
    private static final String OFFICE_PASSWORD = "nine copper kettles hum";
    private static final String OWN_PASSWORD = "soft rain over the yard";

    @TempDir
    private Path folder;

    @Test
    void fromThePrintedAddressToAGradedAnswer() throws Exception {
        Path data = Files.createDirectory(folder.resolve("data"));
        try (AppProcess app = AppProcess.start(data, Map.of())) {
            String oneTime = foundSchoolAndAddApprentice(app);
            practise(app, data, oneTime);
            app.stop();
        }
    }

    @Test
    void theSameAddressFillsInTheDemoAndTheOfficeErasesIt() throws Exception {
        Path data = Files.createDirectory(folder.resolve("data"));
        try (AppProcess app = AppProcess.start(data, Map.of());
                Visitor visitor = Visitor.at(app.url().toString())) {
            visitor.page().navigate(setUpAddress(app));
            visitor.find("button:has-text('Fill in the demo school')").click();
            visitor.page().waitForURL("**/sign-in**");
            assertThat(visitor.find(".demo-banner").innerText()).contains("demo school");
            visitor.find("button:has-text('Odile Bracken')").click();
            visitor.page().waitForURL("**/office/people**");
            visitor.open("/office/demo");
            visitor.find("main input[type=checkbox]").check();
            visitor.find("main form button[type=submit]").last().click();
            visitor.page().waitForLoadState();
            visitor.open("/");
            assertThat(visitor.find("main").innerText()).contains("address");
            assertThat(visitor.find(".demo-banner").count()).isZero();
            app.stop();
        }
    }

    private static String foundSchoolAndAddApprentice(AppProcess app) {
        try (Visitor office = Visitor.at(app.url().toString())) {
            Page page = office.page();
            page.navigate(setUpAddress(app));
            page.fill("#school", "Pumice Yard");
            page.fill("#emergency", "Front desk, extension 1");
            page.fill("#name", "Wilma Stroud");
            page.fill("#sign-in-name", "wilma");
            page.fill("#password", OFFICE_PASSWORD);
            page.fill("#password-again", OFFICE_PASSWORD);
            office.find("button:has-text('Found the school')").click();
            page.waitForURL(url -> !url.contains("/set-up"));
            if (page.url().contains("/sign-in")) {
                office.signIn("wilma", OFFICE_PASSWORD);
            }
            office.open("/office/people/new");
            page.fill("#name", "Noor Castell");
            page.fill("#sign-in-name", "noor");
            page.check("#role-apprentice");
            page.fill("#password", OFFICE_PASSWORD);
            office.find("button:has-text('Add the person')").click();
            return office.find("dl.facts code").innerText();
        }
    }

    private static void practise(AppProcess app, Path data, String oneTime) throws Exception {
        try (Visitor noor = Visitor.at(app.url().toString()).signIn("noor", oneTime)) {
            Page page = noor.page();
            page.fill("#current", oneTime);
            page.fill("#new-password", OWN_PASSWORD);
            page.fill("#new-password-again", OWN_PASSWORD);
            noor.find("button:has-text('Change the password')").click();
            page.waitForLoadState();
            if (page.url().contains("/sign-in")) {
                noor.signIn("noor", OWN_PASSWORD);
            }
            noor.open("/practice");
            PracticeHand hand = new PracticeHand(noor);
            noor.find("form[action$='/draw'] button").first().click();
            page.waitForURL("**/practice/**/*");
            hand.pastExample();
            hand.estimate();
            hand.fill(new Oracle(owner(data)).right(noor.draw(), 0));
            hand.handIn();
            assertThat(noor.find(".verdict-word").first().innerText()).contains("Right");
            assertThat(noor.complaints()).isEmpty();
        }
    }

    private static String setUpAddress(AppProcess app) {
        Matcher matcher = SET_UP.matcher(app.output());
        assertThat(matcher.find()).as("a set-up address in\n%s", app.output()).isTrue();
        return matcher.group(1);
    }

    private static Oracle.Connections owner(Path data) throws Exception {
        String port = Files.readAllLines(data.resolve("database/postmaster.pid"))
                .get(3)
                .strip();
        String password =
                Files.readString(data.resolve("keys/database-owner.password")).strip();
        return () -> DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + port + "/riseandgel", "riseandgel_owner", password);
    }
}
