package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.Leaving;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.rule.Trigger;

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

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    Leaving leaving;

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

    @Test
    void whatWaitsForASecondPersonAndWhoHasLeft() {
        UUID learner = school.person(Roles.APPRENTICE);
        UUID suspended = decisions.suspend(DemoPeople.INSTRUCTOR, learner, null, Trigger.OTHER, "A doubt");
        UUID appeal = decisions.appeal(learner, suspended, "It was by the sheet");
        leaving.end(DemoPeople.SAFETY_LEAD, learner, LocalDate.of(2026, 1, 1));
        try (Visitor piet = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs("piet")) {
            piet.open("/register/book?kind=training-given");
            piet.find("a[href^='/register/corrections/']").first().click();
            look(piet);
            piet.find("main form button[type=submit]").click();
            look(piet);
            assertThat(piet.barriersInTheDark()).isEmpty();
            piet.find(".error-summary a").first().click();
            assertThat(piet.page().evaluate("() => document.activeElement.id")).isEqualTo("what");
            for (String page : List.of("/register/appeals/" + appeal, "/register/leavers/" + learner)) {
                piet.open(page);
                look(piet);
                piet.find("main form button[type=submit]").first().click();
                look(piet);
                assertThat(piet.page().title()).startsWith("Error: ");
            }
            assertThat(piet.complaints()).isEmpty();
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
