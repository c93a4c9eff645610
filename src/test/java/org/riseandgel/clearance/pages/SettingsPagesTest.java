package org.riseandgel.clearance.pages;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.People;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterCheck;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.policy.OtherPolicy;
import org.riseandgel.clearance.policy.PolicyFile;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Task;

/** What the school lays down for its register, through the pages. */
@QuarkusTest
class SettingsPagesTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    @Inject
    School school;

    @Inject
    Register register;

    @Inject
    RegisterCheck check;

    @Inject
    People people;

    @Inject
    Ledger ledger;

    @Test
    void cr01_aScopeIsDefinedWithAllItsPartsOrNotAtAllAndClosed() {
        Browserless lead = SignedIn.as("safety-lead");
        String title = "Scope " + UUID.randomUUID();
        Map<String, String> form = new HashMap<>(Map.of(
                "title", title,
                "name", "Sodium hexafluorosilicate",
                "cas", "16893-85-4",
                "supplier", "Supplier B",
                "form", "POWDER",
                "room", "Weighing room"));
        Browserless.Answer cas = lead.post("/register/settings/scopes", form);
        assertThat(cas.status()).isEqualTo(422);
        assertThat(cas.page().select("#cas-error").text()).contains("16893-85-9");
        assertThat(cas.page().select("#title").attr("value")).isEqualTo(title);
        form.put("cas", "16893-85-9");
        Browserless.Answer tasks = lead.post("/register/settings/scopes", form);
        assertThat(tasks.page().select("#tasks-error")).hasSize(1);
        assertThat(scope(title)).isNull();
        assertThat(lead.post("/register/settings/scopes", form, "tasks", List.of("WEIGH", "CLEAN"))
                        .status())
                .isEqualTo(303);
        assertThat(scope(title).tasks()).containsExactlyInAnyOrder(Task.WEIGH, Task.CLEAN);
        assertThat(scope(title).respirator()).as("the policy asks for one").isTrue();
        Map<String, String> close =
                new HashMap<>(Map.of("scope", scope(title).id().toString()));
        assertThat(lead.post("/register/settings/scopes/close", close).page().select("#reason-error"))
                .hasSize(1);
        close.put("reason", "No powder any more");
        assertThat(lead.post("/register/settings/scopes/close", close).status()).isEqualTo(303);
        assertThat(scope(title)).isNull();
    }

    @Test
    void cr12_aNewRevisionOfTheSheetIsFiledWithItsFileAndAsksForTraining() {
        Cast cast = school.cleared(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        Map<String, String> form = new HashMap<>(Map.of(
                "substance", EvidenceChoices.key(cast.salt()),
                "label", "2.0",
                "dated", "2026-02-03",
                "sections", "two"));
        byte[] pdf = Arrays.copyOf("%PDF-1.4 invented".getBytes(StandardCharsets.UTF_8), 3_000_000);
        Browserless.Answer odd = lead.postMultipart("/register/settings/sheets", form, "sheet.pdf", pdf);
        assertThat(odd.status()).isEqualTo(422);
        assertThat(odd.page().select("#sections-error").text()).contains("such as 2, 8");
        assertThat(odd.page().select("#label").attr("value")).isEqualTo("2.0");
        form.put("sections", "2, 8");
        assertThat(lead.postMultipart("/register/settings/sheets", form, "a.bin", new byte[] {1, 0, 2})
                        .page()
                        .select("#file-error")
                        .text())
                .contains("PDF or a text file");
        assertThat(lead.postMultipart("/register/settings/sheets", form).page().select("#file-error"))
                .hasSize(1);
        assertThat(lead.postMultipart("/register/settings/sheets", form, "sheet.pdf", pdf)
                        .status())
                .isEqualTo(303);
        assertThat(register.sheet(cast.salt()).orElseThrow().sectionsChanged()).containsExactlyInAnyOrder(2, 8);
        assertThat(register.sheet(cast.salt()).orElseThrow().deltaDue())
                .isEqualTo(LocalDate.now().plusDays(14));
        String file =
                "/register/sheets/" + register.sheet(cast.salt()).orElseThrow().revision() + "/file";
        Browserless.Answer served = lead.get(file);
        assertThat(served.body()).startsWith("%PDF-1.4 invented").hasSize(3_000_000);
        assertThat(served.header("Content-Type")).startsWith("application/pdf");
        Document page = lead.get("/register/settings/sheets").page();
        assertThat(page.select("section[aria-labelledby=r-" + cast.revision() + "]")
                        .text())
                .contains("Read by 1");
    }

    @Test
    void cr18_aQualificationIsGivenByAnotherAndEnds() {
        Cast cast = school.cast(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        String name = people.find(cast.lead()).orElseThrow().signInName();
        Map<String, String> form = new HashMap<>(Map.of(
                "person", "nobody.here",
                "act", "OBSERVE",
                "through", LocalDate.now().plusDays(30).toString(),
                "basis", "Ten years at the bench"));
        assertThat(lead.post("/register/settings/people/give", form).page().select("#person-error"))
                .hasSize(1);
        form.put("person", "piet");
        assertThat(lead.post("/register/settings/people/give", form)
                        .page()
                        .select("#person-error")
                        .text())
                .contains("Nobody qualifies themselves");
        form.put("person", name);
        assertThat(lead.post("/register/settings/people/give", form).status()).isEqualTo(303);
        assertThat(register.qualified()).anyMatch(one -> one.person().equals(cast.lead()));
        Map<String, String> end = new HashMap<>(Map.of("which", cast.lead() + " OBSERVE", "reason", "Has moved on"));
        assertThat(SignedIn.as("office")
                        .post("/register/settings/people/end", end)
                        .status())
                .isEqualTo(404);
        assertThat(lead.post("/register/settings/people/end", end).status()).isEqualTo(303);
        assertThat(register.qualified()).noneMatch(one -> one.person().equals(cast.lead()));
        assertThat(lead.post("/register/settings/people/end", end).page().select("#which-error"))
                .hasSize(1);
    }

    @Test
    void cr11_whoIsEndedForCauseTakesTheClearancesOfThePeopleAlong() {
        Cast cast = school.cleared(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        lead.post(
                "/register/settings/people/end",
                Map.of("which", cast.observer() + " OBSERVE", "cause", "yes", "reason", "Signed unseen"));
        assertThat(check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                        .reason())
                .isEqualTo(Reason.PARTY_WITHDRAWN);
    }

    @Test
    void cr12_anAdditionalTrainingIsAskedForAndHad() {
        Cast cast = school.cleared(SOME);
        Browserless ines = SignedIn.as("instructor");
        Map<String, String> form = new HashMap<>(Map.of(
                "kind", "CHANGED_PROCEDURE",
                "scope", cast.scope().id().toString(),
                "who", people.find(cast.learner()).orElseThrow().signInName(),
                "due", LocalDate.now().minusDays(1).toString(),
                "what", "New waste drum"));
        assertThat(ines.post("/register/settings/people/training", form).page().select("#due-error"))
                .hasSize(1);
        form.put("due", "");
        assertThat(ines.post("/register/settings/people/training", form).status())
                .isEqualTo(303);
        Document evidence = ines.get("/register/evidence/" + cast.learner() + "/additional-training")
                .page();
        assertThat(evidence.select("#asked").text()).contains("New waste drum");
        assertThat(check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                        .status())
                .isEqualTo(Status.CLEARED);
    }

    @Test
    void cr28_thePolicyPageSaysWhatIsInForceAndWhatTheFileProposes() {
        Browserless lead = SignedIn.as("safety-lead");
        Document page = lead.get("/register/settings").page();
        assertThat(page.select("main").text())
                .contains(register.policy().orElseThrow().version(), "says the same");
        assertThat(page.select("form[action=/register/settings/policy]")).isEmpty();
        Browserless.Answer again = lead.post("/register/settings/policy");
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.page().select(".error-summary").text()).contains("in force already");
    }

    @Test
    void cr28_anotherFileIsShownWithWhoWouldLoseAndLookingChangesNothing(@TempDir Path folder) throws IOException {
        Cast cast = school.cleared(SOME);
        String person = "a[href=/register/people/" + cast.learner() + "]";
        Browserless lead = SignedIn.as("safety-lead");
        long lines = ledger.head().number();
        file(folder, "right: 11", "right: 12");
        Document stricter = lead.get("/register/settings").page();
        assertThat(stricter.select("main").text())
                .contains("would no longer pass")
                .doesNotContain("says the same");
        assertThat(stricter.select("li:has(" + person + ")").text())
                .contains(
                        cast.scope().title() + ": by ",
                        String.valueOf(LocalDate.now().plusDays(30).getYear()));
        assertThat(stricter.select("form[action=/register/settings/policy]")).hasSize(1);
        assertThat(SignedIn.as("instructor")
                        .get("/register/settings")
                        .page()
                        .select("form[action=/register/settings/policy]"))
                .as("a safety lead puts it in force")
                .isEmpty();

        file(folder, "renewal-due-days: 30", "renewal-due-days: 40");
        Document other = lead.get("/register/settings").page();
        assertThat(other.select("main").text())
                .contains("proposes version", "Every clearance that holds now would pass");
        assertThat(other.select(person)).isEmpty();

        file(folder, "right: 11", "right: 9");
        Document laxer = lead.get("/register/settings").page();
        assertThat(laxer.select("main").text()).contains("has problems", "clearance.yaml");
        assertThat(laxer.select("form[action=/register/settings/policy]")).isEmpty();
        assertThat(lead.post("/register/settings/policy").status()).isEqualTo(422);

        assertThat(ledger.head().number()).as("nothing was written").isEqualTo(lines);
        assertThat(check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                        .isYes())
                .isTrue();
    }

    private static void file(Path folder, String passage, String other) throws IOException {
        QuarkusMock.installMockForType(OtherPolicy.in(folder, passage, other), PolicyFile.class);
    }

    private Scope scope(String title) {
        return register.scopes().stream()
                .filter(scope -> scope.title().equals(title))
                .findFirst()
                .orElse(null);
    }
}
