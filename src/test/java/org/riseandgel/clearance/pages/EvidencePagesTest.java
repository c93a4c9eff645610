package org.riseandgel.clearance.pages;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;

/** Evidence as it is written down at the bench and at the desk, and as the learner sees it. */
@QuarkusTest
class EvidencePagesTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);
    private static final String LIST = "spill-response";
    private static final int STEPS = 10;

    @Inject
    School school;

    @Inject
    PersonRecord records;

    @Test
    void cr07_aPracticalIsWrittenDownStepByStepAndKeepsWhatWasTyped() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        Document menu = ines.get("/register/evidence/" + cast.learner()).page();
        String address = observe(cast, cast.learner());
        assertThat(menu.select("a[href=" + address + "]")).hasSize(1);
        Document page = ines.get(address).page();
        assertThat(page.select("fieldset.panel").size()).isEqualTo(STEPS);
        assertThat(page.select("fieldset.panel legend").first().text()).contains("Step 1", "critical");
        assertThat(page.select("fieldset.panel legend").last().text()).doesNotContain("critical");

        Map<String, String> typed = practical(page);
        typed.remove("step-cover");
        typed.put("comment", "Calm and quick.");
        Browserless.Answer missing = ines.post(address, typed);
        assertThat(missing.status()).isEqualTo(422);
        assertThat(missing.page().select("a[href=#step-cover]")).hasSize(1);
        assertThat(missing.page().select("#comment").text()).isEqualTo("Calm and quick.");
        assertThat(missing.page().select("input[name=step-stop][checked]").attr("value"))
                .isEqualTo("UNPROMPTED");
        assertThat(missing.page().select("input[name=material][checked]").attr("value"))
                .isEqualTo("STAND_IN");
        assertThat(lines(cast.learner())).isEmpty();

        typed.put("step-cover", "PROMPTED");
        Browserless.Answer done = ines.post(address, typed);
        assertThat(done.status()).isEqualTo(303);
        assertThat(done.follow().page().select(".done").text()).isEqualTo("It is on record.");
        Evidence.ObservationRecorded said =
                (Evidence.ObservationRecorded) lines(cast.learner()).get(0).said();
        assertThat(said.observer()).isEqualTo(DemoPeople.INSTRUCTOR);
        assertThat(said.steps()).hasSize(STEPS);
        assertThat(said.steps())
                .filteredOn(step -> step.step().equals("cover"))
                .extracting(StepSeen::outcome)
                .containsExactly(StepSeen.Outcome.PROMPTED);
        assertThat(said.means().how()).isEqualTo(Means.How.DEMONSTRATION);
        assertThat(said.means().readingSupport()).isTrue();
    }

    @Test
    void cr18_anObserverWithoutQualificationIsRefused() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        String address = observe(cast, cast.learner());
        Map<String, String> typed = practical(ines.get(address).page());
        typed.put("observer", cast.trainer().toString());
        Browserless.Answer refused = ines.post(address, typed);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("#observer-error").text()).contains("no qualification to observe");
        assertThat(lines(cast.learner())).isEmpty();
    }

    @Test
    void cr07_theLearnerReadsThePracticalAndSaysThatItWasSeen() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        String address = observe(cast, DemoPeople.FINTAN);
        ines.post(address, practical(ines.get(address).page()));
        Browserless fintan = SignedIn.asPerson(DemoPeople.FINTAN);
        Document mine = fintan.get("/register/mine").page();
        assertThat(mine.select("article.panel").text())
                .contains("Observer: Ines Calloway", "Stops, warns the others", "Unprompted");
        String practical = mine.select("input[name=practical]").first().attr("value");
        assertThat(SignedIn.asPerson(DemoPeople.ESME)
                        .post("/register/mine/practicals", Map.of("practical", practical))
                        .status())
                .isEqualTo(422);
        int before = mine.select("article.panel").size();
        Browserless.Answer seen = fintan.post("/register/mine/practicals", Map.of("practical", practical));
        assertThat(seen.follow().page().select("article.panel")).hasSize(before - 1);
    }

    @Test
    void cr02_theSheetIsOpenedAndReadByTheLearner() {
        Cast cast = school.cast(SOME);
        Browserless esme = SignedIn.asPerson(DemoPeople.ESME);
        String sheet = "/register/sheets/" + cast.revision();
        assertThat(esme.get("/register/mine").page().select("a[href=" + sheet + "]"))
                .hasSize(1);
        Browserless.Answer file = esme.get(sheet + "/file");
        assertThat(file.body()).isEqualTo(cast.salt().supplier() + " 1.0");
        assertThat(file.header("Content-Disposition")).startsWith("attachment");
        assertThat(esme.post(sheet + "/read").status()).isEqualTo(303);
        assertThat(lines(DemoPeople.ESME).get(0).said())
                .isInstanceOfSatisfying(Evidence.SdsRead.class, read -> assertThat(read.revision())
                        .isEqualTo(cast.revision()));
        assertThat(esme.get(sheet).page().select("main").text()).contains("You have said so");
        school.sheet(cast.lead(), cast.salt(), "2.0", Set.of(2), null);
        assertThat(esme.get(sheet).page().select("main").text()).contains("There is a newer revision");
    }

    @Test
    void cr17_everybodyReadsTheSameNotice() {
        Cast cast = school.cast(SOME);
        String sheet = "/register/sheets/" + cast.revision();
        for (UUID learner : List.of(DemoPeople.ANOUK, DemoPeople.BASTIAN)) {
            assertThat(SignedIn.asPerson(learner)
                            .get(sheet)
                            .page()
                            .select("main")
                            .text())
                    .contains("nobody will ask here", "Who expects a child or nurses one talks to their own doctor");
        }
        Browserless ines = SignedIn.as("instructor");
        for (EvidenceKind kind : EvidenceKind.values()) {
            Browserless.Answer form = ines.get(evidence(cast, kind.getId()));
            if (form.status() == 200) {
                assertThat(form.page().select("[name]").eachAttr("name"))
                        .as("%s", kind)
                        .noneMatch(name -> name.matches("(?i).*(health|pregnan|diagnos|illness|medic).*"));
            }
        }
    }

    @Test
    void whatIsWrittenDownAtTheDeskIsOnRecord() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        write(
                ines,
                cast,
                "training",
                with("substance", key(cast.salt()), "topic", "Hazards and first aid", "how", "ORAL"));
        write(
                ines,
                cast,
                "earlier-training",
                with(
                        "substance",
                        key(cast.salt()),
                        "on",
                        java.time.LocalDate.now().minusDays(40).toString(),
                        "where",
                        "Another school, certificate seen"));
        write(ines, cast, "fit-for-task", with("fit", "yes", "by", "Works doctor"));
        write(ines, cast, "fit-test", with("passed", "yes", "respirator", "Half mask, size M", "tester", "Fitter"));
        write(ines, cast, "respirator-training", with("how", "DEMONSTRATION"));
        write(ines, cast, "handled", with("scope", cast.scope().id().toString(), "task", "CLEAN"));
        write(ines, cast, "additional-training", with("asked", "", "how", "ORAL"));
        shown(ines, cast, List.of("chemical gloves", "splash goggles", "closed coat", "closed shoes"), 303);
        assertThat(lines(cast.learner()))
                .extracting(PersonRecord.RecordLine::kind)
                .contains(
                        "training-given",
                        "earlier-training",
                        "fit-for-task",
                        "fit-tested",
                        "respirator-trained",
                        "handled",
                        "delta-done",
                        "ppe-shown");
    }

    @Test
    void equipmentIsWhatThePolicyNamesAndMoreThanTheFormAsksForIsKept() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        assertThat(ines.get(evidence(cast, "equipment"))
                        .page()
                        .select("label:has(input[name=items])")
                        .eachText())
                .contains("chemical gloves", "respirator (powder only)");
        for (List<String> wrong : List.of(List.<String>of(), List.of("chemical gloves", "tin hat"))) {
            assertThat(shown(ines, cast, wrong, 422)
                            .page()
                            .select("#items-error")
                            .text())
                    .isEqualTo("Tick what was shown; asked for are chemical gloves, closed coat, closed shoes,"
                            + " splash goggles.");
        }
        assertThat(lines(cast.learner())).isEmpty();
        shown(ines, cast, List.of("chemical gloves", "respirator"), 303);
        assertThat(lines(cast.learner()).get(0).said())
                .isInstanceOfSatisfying(Evidence.PpeShown.class, shown -> assertThat(shown.items())
                        .containsExactlyInAnyOrder("chemical gloves", "respirator"));
    }

    private Browserless.Answer shown(Browserless who, Cast cast, List<String> items, int status) {
        Map<String, String> form = with("form", "DISPERSION", "how", "DEMONSTRATION");
        Browserless.Answer answer = items.isEmpty()
                ? who.post(evidence(cast, "equipment"), form)
                : who.post(evidence(cast, "equipment"), form, "items", items);
        assertThat(answer.status()).isEqualTo(status);
        return answer;
    }

    @Test
    void cr08_withoutTheMeansOrTheLanguageNothingIsWritten() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        Map<String, String> typed = with("substance", key(cast.salt()), "topic", "Hazards");
        Browserless.Answer no = ines.post(evidence(cast, "training"), typed);
        assertThat(no.status()).isEqualTo(422);
        assertThat(no.page().select("#how-error")).hasSize(1);
        typed.put("how", "ORAL");
        typed.put("language", " ");
        Browserless.Answer still = ines.post(evidence(cast, "training"), typed);
        assertThat(still.page().select("#language-error")).hasSize(1);
        assertThat(still.page().select("#topic").text()).isEqualTo("Hazards");
        assertThat(ines.post(evidence(cast, "fit-for-task"), with("by", "Works doctor"))
                        .page()
                        .select("#fit-error"))
                .hasSize(1);
        typed.put("language", "English");
        typed.put("when", "2999-01-01T10:00");
        assertThat(ines.post(evidence(cast, "training"), typed).page().select("#when-error"))
                .hasSize(1);
        typed.remove("when");
        typed.remove("trainer");
        assertThat(ines.post(evidence(cast, "training"), typed).page().select("#trainer-error"))
                .hasSize(1);
        assertThat(lines(cast.learner())).isEmpty();
    }

    @Test
    void cr16_theAgeIsTheSafetyLeadsAloneAndTheDateIsOnNoPage() {
        Cast cast = school.cast(SOME);
        Browserless ines = SignedIn.as("instructor");
        assertThat(ines.get(evidence(cast, "age")).status()).isEqualTo(404);
        assertThat(ines.post(evidence(cast, "age"), Map.of("born", "1999-02-03"))
                        .status())
                .isEqualTo(404);
        Browserless piet = SignedIn.as("safety-lead");
        assertThat(piet.post(evidence(cast, "age"), Map.of("born", "3 Feb")).status())
                .isEqualTo(422);
        write(piet, cast, "age", Map.of("born", "1999-02-03"));
        assertThat(piet.get("/register/people/" + cast.learner()).body())
                .contains("Age seen")
                .doesNotContain("1999");
        assertThat(piet.get(evidence(cast, "age-exception")).status()).isEqualTo(200);
        assertThat(piet.post(evidence(cast, "age-exception"), Map.of("through", "2030-01-01"))
                        .status())
                .isEqualTo(422);
    }

    private void write(Browserless who, Cast cast, String what, Map<String, String> form) {
        assertThat(who.get(evidence(cast, what)).status()).isEqualTo(200);
        Browserless.Answer answer = who.post(evidence(cast, what), form);
        assertThat(answer.status())
                .as(what + " " + answer.page().select(".error-summary").text())
                .isEqualTo(303);
    }

    private List<PersonRecord.RecordLine> lines(UUID person) {
        return records.of(person);
    }

    private static Map<String, String> with(String... pairs) {
        Map<String, String> form = new HashMap<>(Map.of(
                "language", "English",
                "trainer", DemoPeople.INSTRUCTOR.toString(),
                "observer", DemoPeople.INSTRUCTOR.toString()));
        for (int i = 0; i < pairs.length; i += 2) {
            form.put(pairs[i], pairs[i + 1]);
        }
        return form;
    }

    /** The form of a practical with every step done unprompted. */
    private static Map<String, String> practical(Document page) {
        Map<String, String> typed = with("material", "STAND_IN", "how", "DEMONSTRATION", "readingSupport", "yes");
        typed.put("startedAt", page.select("#startedAt").attr("value"));
        typed.put("place", page.select("#place").attr("value"));
        page.select("input[name^=step-]").forEach(input -> typed.put(input.attr("name"), "UNPROMPTED"));
        return typed;
    }

    private static String observe(Cast cast, UUID person) {
        return "/register/observe/%s/%s/%s".formatted(person, cast.scope().id(), LIST);
    }

    private static String evidence(Cast cast, String what) {
        return "/register/evidence/%s/%s".formatted(cast.learner(), what);
    }

    private static String key(Substance salt) {
        return String.join("|", salt.cas(), salt.supplier(), salt.name());
    }
}
