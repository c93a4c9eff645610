package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;
import org.riseandgel.account.TestPeople;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.SittingsForTests;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Somebody new becomes cleared through the pages, with three people at three windows: the learner, an instructor who trains
 * and observes, a safety lead who decides. Then comes a suspension that the door tells at once, and the day on which the
 * learner leaves and is forgotten by name. How the checks are sat is shown in {@link CheckBrowserTest}.
 */
@QuarkusTest
@NeedsBrowser
class ClearanceBrowserTest {
    private static final String SCOPE = "00000000-0000-4000-8000-0000000000c9";
    private static final String SHEET = "00000000-0000-4000-8000-0000000000d3";
    private static final String PLACE = new Place(
                    new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"),
                    Form.DISPERSION,
                    "Foaming room")
            .id()
            .toString();

    private static final String ON_PAPER = "spill-response";

    @TestHTTPResource
    String base;

    @Inject
    SchoolSettings settings;

    private TestPeople.Added learner;

    @Test
    void fromTheFirstTrainingToClearedThenSuspendedThenForgotten() {
        learner = TestPeople.settled(Roles.APPRENTICE);
        SittingsForTests.handIn(UUID.fromString(learner.id()), Instant.now().minus(Duration.ofHours(49)), 12, 0);
        SittingsForTests.handIn(UUID.fromString(learner.id()), Instant.now().minus(Duration.ofHours(2)), 11, 0);
        try (Visitor apprentice =
                        Visitor.onPhone(base, ColorScheme.LIGHT).signIn(learner.signInName(), TestPeople.PASSWORD);
                Visitor instructor = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs("ines");
                Visitor lead = Visitor.at(base).signInAs("piet");
                Visitor door = Visitor.at(base).signInAs("ines")) {
            ofAge(lead);
            trained(instructor);
            equipmentShown(instructor);
            observed(instructor);
            assertThat(grant(lead))
                    .as("not before the learner has done their part")
                    .isFalse();
            readAndSeen(apprentice);
            assertThat(grant(lead)).isTrue();
            assertThat(atTheDoor(door)).isEqualTo("Yes");
            apprentice.open("/register/mine");
            assertThat(apprentice.find("section[aria-labelledby=now]").innerText())
                    .contains("cleared");

            suspended(lead);
            assertThat(atTheDoor(door)).isEqualTo("No");
            forgotten(lead);
            door.open("/door/" + PLACE);
            assertThat(door.find("#person option[value='" + learner.id() + "']").count())
                    .isZero();
            for (Visitor visitor : List.of(apprentice, instructor, lead, door)) {
                assertThat(visitor.complaints()).isEmpty();
            }
        }
    }

    private void ofAge(Visitor lead) {
        lead.open("/register/evidence/" + learner.id() + "/age");
        lead.page().fill("#born", "1995-05-14");
        written(lead);
    }

    /** Held yesterday and signed on paper then; what is on the paper is entered today. */
    private void trained(Visitor instructor) {
        instructor.open("/register/evidence/" + learner.id() + "/training");
        String salt =
                instructor.find("#substance option:has-text('Supplier A')").getAttribute("value");
        instructor.find("#substance").selectOption(salt);
        instructor.find("#trainer").selectOption(DemoPeople.INSTRUCTOR.toString());
        instructor.page().fill("#topic", "Hazards of the salt, and what to do when something goes wrong");
        instructor.find("#how").selectOption("ORAL");
        instructor.page().fill("#when", yesterday() + "T10:00");
        written(instructor);
    }

    private void equipmentShown(Visitor instructor) {
        instructor.open("/register/evidence/" + learner.id() + "/equipment");
        instructor.find("#form").selectOption("DISPERSION");
        instructor.find("#observer").selectOption(DemoPeople.INSTRUCTOR.toString());
        for (String item : List.of("chemical gloves", "splash goggles", "closed coat", "closed shoes")) {
            instructor.find("input[name=items][value='" + item + "']").check();
        }
        instructor.find("#how").selectOption("DEMONSTRATION");
        written(instructor);
    }

    /**
     * Every practical that the scope asks for: the first on a phone at the bench, step by step; the one of the spill was
     * watched without a network, on a printed form, and is entered afterwards with the times on the paper.
     */
    private void observed(Visitor instructor) {
        instructor.open("/register/evidence/" + learner.id());
        List<String> practicals = instructor.find("a[href*='/" + SCOPE + "/']").all().stream()
                .map(link -> link.getAttribute("href"))
                .toList();
        assertThat(practicals).hasSizeGreaterThan(1).anyMatch(practical -> practical.endsWith(ON_PAPER));
        for (String practical : practicals) {
            boolean onPaper = practical.endsWith(ON_PAPER);
            List<String> printed = onPaper ? printed(instructor) : List.of();
            instructor.open(practical);
            instructor.find("#observer").selectOption(DemoPeople.INSTRUCTOR.toString());
            instructor.find("label:has-text('an inert stand-in')").click();
            if (practical.equals(practicals.get(0))) {
                instructor
                        .find("fieldset.panel label:has-text('Unprompted')")
                        .all()
                        .forEach(Locator::click);
            } else {
                instructor
                        .page()
                        .evaluate("() => document.querySelectorAll('main input[value=UNPROMPTED]')"
                                + ".forEach(one => { one.checked = true; })");
            }
            if (onPaper) {
                assertThat(instructor
                                .find("fieldset.panel p[aria-hidden] > strong")
                                .allInnerTexts())
                        .as("the paper asks for what is entered")
                        .isNotEmpty()
                        .isEqualTo(printed);
                instructor.page().fill("#startedAt", yesterday() + "T14:00");
                instructor.page().fill("#endedAt", yesterday() + "T14:25");
            }
            instructor.find("#how").selectOption("DEMONSTRATION");
            written(instructor);
        }
        assertThat(instructor.find("main").innerText())
                .as("it happened when it stood on the paper")
                .contains(yesterday().getDayOfMonth() + " ", "14:25");
    }

    /** The blank form on one sheet, and its steps. */
    private static List<String> printed(Visitor instructor) {
        instructor.open("/register/paper/practicals/" + ON_PAPER);
        byte[] pdf = instructor.page().pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
        assertThat(PrintedPaths.of(pdf).pages()).isEqualTo(1);
        return instructor.find(".paper-steps tbody th").allInnerTexts().stream()
                .map(step -> step.replace("\u25c6 critical", "").strip())
                .toList();
    }

    private LocalDate yesterday() {
        return LocalDate.now(settings.zone()).minusDays(1);
    }

    private static void written(Visitor visitor) {
        visitor.find("main form button[type=submit]").click();
        assertThat(visitor.find(".error-summary").allInnerTexts()).isEmpty();
        assertThat(visitor.find(".done").innerText()).isEqualTo("It is on record.");
    }

    private void readAndSeen(Visitor apprentice) {
        apprentice.open("/register/sheets/" + SHEET);
        apprentice.find("button:has-text('I have read this sheet')").click();
        apprentice.open("/register/mine");
        while (apprentice.find("button:has-text('I have seen this')").count() > 0) {
            apprentice.find("button:has-text('I have seen this')").first().click();
            assertThat(apprentice.find(".done").innerText()).contains("you have seen it");
        }
    }

    /** Whether pressing the button cleared the learner. */
    private boolean grant(Visitor lead) {
        lead.open("/register/people/" + learner.id() + "/" + SCOPE);
        lead.page().fill("#password", SignedIn.passwordOf("safety-lead").get("password"));
        lead.find("form[action$='/grant'] button[type=submit]").click();
        return lead.find(".done").count() == 1 && lead.find(".done").innerText().equals("Cleared.");
    }

    private String atTheDoor(Visitor door) {
        door.open("/door/" + PLACE);
        door.find("#person").selectOption(learner.id());
        door.find("#task").selectOption("clean");
        door.find("main form button[type=submit]").click();
        return door.find(".told h2").innerText().strip();
    }

    /** One press opens the learner's record, a second one suspends; what happened is typed between them. */
    private void suspended(Visitor lead) {
        lead.open("/register");
        lead.find("a[href^='/register/people/" + learner.id() + "']").first().click();
        lead.find("#trigger").selectOption("UNSAFE_ACT");
        lead.page().fill("form[action$='/suspend'] [name=reason]", "A glove was torn and nobody said so");
        lead.find("button:has-text('Suspend now')").click();
        assertThat(lead.find(".done").innerText()).startsWith("Suspended");
    }

    private void forgotten(Visitor lead) {
        lead.open("/register/leavers");
        lead.page().fill("#person", learner.signInName());
        lead.page().fill("#on", LocalDate.now(settings.zone()).toString());
        lead.find("button:has-text('Write it down')").click();
        assertThat(lead.find(".done").innerText()).contains("has left");
        lead.open("/register/leavers/" + learner.id());
        lead.find("#sure").check();
        lead.find("button.danger:has-text('Anonymise')").click();
        assertThat(lead.find(".done").innerText()).contains("are erased");
        assertThat(lead.find("h1").innerText()).startsWith("Former member");
        lead.open("/register/book/check");
        lead.find("form[action$='/now'] button[type=submit]").first().click();
        assertThat(lead.find("#report").innerText())
                .as("the book after a leaver")
                .endsWith(": sound");
    }
}
