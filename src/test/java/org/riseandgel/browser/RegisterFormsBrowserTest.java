package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.riseandgel.account.DemoPeople;

/** The register's forms on a phone, by day and by night, for everybody who fills them in. */
@QuarkusTest
@NeedsBrowser
class RegisterFormsBrowserTest {
    private static final String SCOPE = "00000000-0000-4000-8000-0000000000c9";
    private static final String SHEET = "00000000-0000-4000-8000-0000000000d3";

    /** Who opens what. */
    private static final Map<String, List<String>> PAGES = Map.of(
            "ines",
            List.of(
                    "/register/people/" + DemoPeople.FINTAN,
                    "/register/evidence/" + DemoPeople.FINTAN,
                    "/register/evidence/" + DemoPeople.FINTAN + "/training",
                    "/register/evidence/" + DemoPeople.FINTAN + "/equipment",
                    "/register/evidence/" + DemoPeople.FINTAN + "/fit-for-task",
                    "/register/observe/" + DemoPeople.FINTAN + "/" + SCOPE + "/spill-response"),
            "piet",
            List.of(
                    "/register",
                    "/register/book",
                    "/register/book/check",
                    "/register/book/questions",
                    "/register/waiting",
                    "/register/leavers",
                    "/register/settings",
                    "/register/settings/scopes",
                    "/register/settings/sheets",
                    "/register/settings/people",
                    "/register/evidence/" + DemoPeople.FINTAN + "/age",
                    "/register/evidence/" + DemoPeople.FINTAN + "/age-exception"),
            "fintan",
            List.of("/register/mine", "/register/sheets/" + SHEET));

    @TestHTTPResource
    String base;

    @Test
    void byDayAndByNight() {
        PAGES.forEach(this::look);
    }

    @Test
    void aPracticalThatMissesAStepLeadsToItOnAPhone() {
        try (Visitor ines = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs("ines")) {
            ines.open("/register/observe/" + DemoPeople.ESME + "/" + SCOPE + "/spill-response");
            List<Locator> first =
                    ines.find("fieldset.panel label:has-text('Unprompted')").all();
            first.subList(1, first.size()).forEach(Locator::click);
            ines.find("label:has-text('an inert stand-in')").click();
            ines.find("#how").selectOption("DEMONSTRATION");
            ines.find("main form button[type=submit]").click();
            look(ines);
            ines.find(".error-summary a").first().click();
            assertThat(ines.page().evaluate("() => document.activeElement.id")).isEqualTo("step-stop");
            ines.find("#step-stop").check();
            ines.find("main form button[type=submit]").click();
            assertThat(ines.find(".done").innerText()).isEqualTo("It is on record.");
            look(ines);
        }
        try (Visitor esme = Visitor.onPhone(base, ColorScheme.DARK).signInAs("esme")) {
            esme.open("/register/mine");
            look(esme);
            esme.find("button:has-text('I have seen this')").click();
            assertThat(esme.find(".done").innerText()).contains("you have seen it");
        }
    }

    private void look(String name, List<String> pages) {
        try (Visitor visitor = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs(name)) {
            for (String page : pages) {
                visitor.open(page);
                look(visitor);
                assertThat(visitor.barriersInTheDark())
                        .as("%s in the dark", page)
                        .isEmpty();
                String folder = System.getenv("PICTURES");
                if (folder != null) {
                    visitor.page()
                            .screenshot(new Page.ScreenshotOptions()
                                    .setFullPage(true)
                                    .setPath(Path.of(
                                            folder,
                                            page.replaceAll("[0-9a-f-]{36}", "x")
                                                            .replace('/', '-') + ".png")));
                }
            }
            assertThat(visitor.complaints()).isEmpty();
        }
    }

    private static void look(Visitor visitor) {
        String where = visitor.page().url();
        assertThat(visitor.find("h1").count()).as("a heading on %s", where).isEqualTo(1);
        assertThat(visitor.barriers()).as("axe on %s", where).isEmpty();
        assertThat(visitor.scrollsSideways()).as("%s scrolls sideways", where).isFalse();
    }
}
