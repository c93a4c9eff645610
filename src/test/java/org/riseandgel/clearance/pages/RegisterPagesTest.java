package org.riseandgel.clearance.pages;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.EvidenceDesk;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.RegisterCheck;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Trigger;
import org.riseandgel.platform.school.SchoolSettings;

/** The register as its people see it and decide in it. */
@QuarkusTest
class RegisterPagesTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    EvidenceDesk evidence;

    @Inject
    RegisterCheck check;

    @Inject
    PersonRecord records;

    @Inject
    SchoolSettings settings;

    @AfterEach
    void realTime() {
        MutableClock.reset();
    }

    @Test
    void somebodyWithoutALineIsFoundAndHasAPageToBeginOn() {
        UUID fresh = school.person("apprentice");
        String name = "Person " + fresh.toString().substring(0, 6);
        Browserless lead = SignedIn.as("safety-lead");
        assertThat(lead.get("/register").page().select("table.board").text()).doesNotContain(name);
        assertThat(lead.get("/register").page().select("form[action=/register/people] #name"))
                .hasSize(1);
        Element found = lead.get("/register/people?name="
                        + java.net.URLEncoder.encode(name.substring(1), java.nio.charset.StandardCharsets.UTF_8))
                .page()
                .selectFirst("main li.panel a");
        assertThat(found.text()).isEqualTo(name);
        Document page = lead.get(found.attr("href")).page();
        assertThat(page.select("main").text()).contains("Not cleared for anything");
        assertThat(page.select("a[href=/register/evidence/" + fresh + "]")).hasSize(1);
        assertThat(lead.get("/register/people?name=nobody%25here").page().text())
                .contains("Nobody in this school has that");
        assertThat(SignedIn.as("apprentice").get("/register/people").status()).isEqualTo(404);
    }

    @Test
    void cr02_theDecisionPageShowsEachPreconditionAndARefusalGoesOnRecord() {
        Cast cast = school.cast(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        Document page = lead.get(decision(cast)).page();
        assertThat(page.select(".needs dt").eachText())
                .contains("Age", "Training", "Knowledge check", "Observed practical", "Protective equipment shown");
        assertThat(page.select(".needs dd").text()).contains("Missing.");
        Browserless.Answer refused = lead.post(decision(cast) + "/grant", SignedIn.passwordOf("safety-lead"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select(".error-summary").text()).contains("Not every precondition is met");
        assertThat(status(cast)).isEqualTo(Status.NOT_CLEARED);
        assertThat(lead.get(person(cast)).page().select("h3").eachText()).contains("Grant refused");
    }

    @Test
    void whenEveryPreconditionIsMetTheDeciderGrantsAndTheEvidenceIsNamed() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        Browserless lead = SignedIn.as("safety-lead");
        Document page = lead.get(decision(cast)).page();
        assertThat(page.select(".needs dd").text()).doesNotContain("Missing.");
        assertThat(page.select(".needs dd a[href*=#line-]")).isNotEmpty();
        for (Map<String, String> wrong : List.of(Map.<String, String>of(), Map.of("password", "a guess of mine"))) {
            Browserless.Answer tablet = lead.post(decision(cast) + "/grant", wrong);
            assertThat(tablet.status()).as("a tablet that is still signed in").isEqualTo(422);
            assertThat(tablet.page().select("#password-error")).hasSize(1);
            assertThat(status(cast)).isEqualTo(Status.NOT_CLEARED);
        }
        assertThat(lead.get(person(cast)).page().select("h3").eachText()).doesNotContain("Grant refused");
        Browserless.Answer granted = lead.post(decision(cast) + "/grant", SignedIn.passwordOf("safety-lead"));
        assertThat(granted.status()).isEqualTo(303);
        assertThat(granted.follow().page().select(".done").text()).isEqualTo("Cleared.");
        assertThat(status(cast)).isEqualTo(Status.CLEARED);
        Document board = lead.get("/register").page();
        assertThat(board.select("a[href=" + person(cast) + "]")).isNotEmpty();
        assertThat(board.text())
                .contains("cleared by")
                .doesNotContain("certified")
                .doesNotContain("licensed to");
    }

    @Test
    void cr06_oneInstructorSuspendsAtOnceAndNobodyGrantsBackAlone() {
        Cast cast = school.cleared(SOME);
        Browserless instructor = SignedIn.as("instructor");
        Browserless.Answer empty = instructor.post(person(cast) + "/suspend", Map.of("reason", "Gloves off"));
        assertThat(empty.status()).isEqualTo(422);
        assertThat(empty.page().select("#reason").attr("value")).isEqualTo("Gloves off");
        assertThat(empty.page().select("#trigger-error")).isNotEmpty();
        assertThat(status(cast)).isEqualTo(Status.CLEARED);
        Browserless.Answer done =
                instructor.post(person(cast) + "/suspend", Map.of("trigger", "NEAR_MISS", "reason", "Gloves off"));
        assertThat(done.follow().page().select(".done").text()).contains("Suspended");
        assertThat(status(cast)).isEqualTo(Status.NOT_CLEARED);
        Document page = instructor.get(decision(cast)).page();
        assertThat(page.select("#needs").text()).isEqualTo("What reinstating needs");
        assertThat(page.select("form[action$=/grant]")).isEmpty();
        Browserless.Answer back = instructor.post(decision(cast) + "/reinstate", why("instructor", "Seen again"));
        assertThat(back.status()).isEqualTo(422);
        assertThat(back.page().select("#password-error")).isEmpty();
        assertThat(status(cast)).isEqualTo(Status.NOT_CLEARED);
    }

    @Test
    void cr06_givingBackTakesAnObserverAndAnotherWhoDecides() {
        Cast cast = school.cleared(SOME);
        decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.UNSAFE_ACT, "Gloves off");
        Browserless lead = SignedIn.as("safety-lead");
        Map<String, String> why = why("safety-lead", "Shown again, without a word from anybody");
        assertThat(lead.post(decision(cast) + "/reinstate", why)
                        .page()
                        .select(".needs dd")
                        .text())
                .as("nobody has watched since")
                .contains("Missing.");
        Browserless ines = SignedIn.as("instructor");
        school.qualify(DemoPeople.INSTRUCTOR, Act.DECIDE);
        watched(ines, cast);
        assertThat(atTheDoor(ines, cast)).as("watched, and nothing decided").isEqualTo("No");
        Browserless.Answer same = ines.post(decision(cast) + "/reinstate", why("instructor", "Shown again"));
        assertThat(same.status()).as("who watched does not decide").isEqualTo(422);
        assertThat(missing(same.page())).containsExactly("Decider took no part");
        assertThat(atTheDoor(ines, cast)).isEqualTo("No");
        Browserless.Answer silent = lead.post(decision(cast) + "/reinstate", why("safety-lead", " "));
        assertThat(silent.page().select("#reason-error")).hasSize(1);
        assertThat(atTheDoor(ines, cast)).isEqualTo("No");
        assertThat(lead.post(decision(cast) + "/reinstate", Map.of("reason", "Shown again"))
                        .page()
                        .select("#password-error"))
                .hasSize(1);
        assertThat(atTheDoor(ines, cast)).isEqualTo("No");
        Browserless.Answer back = lead.post(decision(cast) + "/reinstate", why);
        assertThat(back.follow().page().select(".done").text()).isEqualTo("Reinstated.");
        assertThat(atTheDoor(ines, cast)).isEqualTo("Yes");
        assertThat(lead.get(person(cast)).page().select("h3").first().text()).isEqualTo("Reinstated");
    }

    private static List<String> missing(Document decision) {
        return decision.select(".needs dt:has(+ dd:contains(Missing.))").eachText();
    }

    private static String atTheDoor(Browserless who, Cast cast) {
        return who.get("/door/" + Place.of(cast.scope()).id() + "?person=" + cast.learner() + "&task=clean")
                .page()
                .select(".told h2")
                .text();
    }

    /** Every practical of the scope once more through the pages, and the learner has seen them. */
    private void watched(Browserless observer, Cast cast) {
        String before =
                "/register/observe/" + cast.learner() + "/" + cast.scope().id() + "/";
        for (Element link :
                observer.get("/register/evidence/" + cast.learner()).page().select("a[href^=" + before + "]")) {
            Document page = observer.get(link.attr("href")).page();
            Map<String, String> typed = new HashMap<>(Map.of(
                    "observer", DemoPeople.INSTRUCTOR.toString(),
                    "startedAt", LocalDateTime.now(settings.zone()).toString(),
                    "place", "Bench 2",
                    "material", "STAND_IN",
                    "how", "DEMONSTRATION",
                    "language", "English"));
            page.select("input[name^=step-]").forEach(step -> typed.put(step.attr("name"), "UNPROMPTED"));
            Browserless.Answer written = observer.post(link.attr("href"), typed);
            assertThat(written.status()).as(written.toString()).isEqualTo(303);
        }
        records.of(cast.learner()).stream()
                .filter(line -> line.said() instanceof Evidence.ObservationRecorded seen
                        && seen.observer().equals(DemoPeople.INSTRUCTOR))
                .forEach(line -> evidence.acknowledge(cast.learner(), line.id()));
    }

    @Test
    void cr10_everyPageSaysThatNobodyIsClearedWhileTheClockIsBehind() {
        Cast cast = school.cleared(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        String list = "/door/" + Place.of(cast.scope()).id() + "/list";
        assertThat(atTheDoor(lead, cast)).isEqualTo("Yes");
        assertThat(lead.get(list).page().select("tbody tr")).hasSize(1);
        MutableClock.advance(Duration.ofMinutes(-5));
        assertThat(atTheDoor(lead, cast)).isEqualTo("No");
        assertThat(lead.get(list).page().select("tbody tr")).isEmpty();
        Document board = lead.get("/register").page();
        assertThat(board.select("main").text())
                .contains("The register cannot be read", "clock is behind the newest line")
                .doesNotContain("No scope yet");
        assertThat(board.select("main a[href^=/register/people/]")).isEmpty();
        assertThat(lead.get(person(cast)).page().select("section:has(#now)").text())
                .contains("not cleared", "cannot be read now");
        MutableClock.reset();
        assertThat(atTheDoor(lead, cast)).isEqualTo("Yes");
    }

    @Test
    void cr26_aSuspensionThatWasSignedOnPaperHoldsFromThen() {
        Cast cast = school.cleared(SOME);
        Browserless instructor = SignedIn.as("instructor");
        LocalDateTime signed =
                LocalDateTime.now(settings.zone()).minusMinutes(20).truncatedTo(ChronoUnit.MINUTES);
        Map<String, String> notice =
                Map.of("trigger", "UNSAFE_ACT", "reason", "No goggles", "since", "2999-01-01T10:00");
        Browserless.Answer early = instructor.post(person(cast) + "/suspend", notice);
        assertThat(early.status()).isEqualTo(422);
        assertThat(early.page().select("#since-error").text()).contains("has passed");
        assertThat(early.page().select("#since").attr("value")).isEqualTo("2999-01-01T10:00");
        assertThat(status(cast)).isEqualTo(Status.CLEARED);
        instructor.post(
                decision(cast) + "/suspend",
                Map.of("trigger", "UNSAFE_ACT", "reason", "No goggles", "since", signed.toString()));
        assertThat(status(cast)).isEqualTo(Status.NOT_CLEARED);
        assertThat(records.of(cast.learner()).get(0).effective())
                .isEqualTo(signed.atZone(settings.zone()).toInstant());
    }

    @Test
    void theOfficeReadsButDoesNotDecide() {
        Cast cast = school.cleared(SOME);
        Browserless office = SignedIn.as("office");
        assertThat(office.get(person(cast)).page().select("form[action$=/suspend]"))
                .isEmpty();
        assertThat(office.post(person(cast) + "/suspend", Map.of("trigger", "OTHER", "reason", "x"))
                        .status())
                .isEqualTo(404);
        assertThat(status(cast)).isEqualTo(Status.CLEARED);
    }

    @Test
    void cr15_theBoardOfAPastMomentDoesNotKnowWhatCameLater() {
        Browserless lead = SignedIn.as("safety-lead");
        Document past =
                lead.get("/register?at=2001-01-01T00:00&known=2001-01-01T00:00").page();
        assertThat(past.text()).contains("This is not now.");
        assertThat(past.select("main a[href^=/register/people/]")).isEmpty();
        Browserless.Answer future = lead.get("/register?at=2999-01-01T00:00");
        assertThat(future.status()).isEqualTo(422);
        Browserless.Answer odd = lead.get("/register?at=yesterday");
        assertThat(odd.status()).isEqualTo(422);
        assertThat(odd.page().select("#at-error").text()).contains("2026-05-03T14:30");
    }

    @Test
    void cr05_theBoardLeavesAsATableWithEveryMarkAndItsMoment() {
        Browserless office = SignedIn.as("office");
        String address =
                office.get("/register").page().select("a[download]").first().attr("href");
        String table = office.get(address).body();
        assertThat(table.lines().filter(line -> line.contains("Ines Calloway") && line.contains("Foaming room")))
                .singleElement()
                .satisfies(line -> assertThat(line).contains(",cleared,", "single-instructor decision"));
        assertThat(table.lines().filter(line -> line.contains("Celeste Marrow") && line.contains("Foaming room")))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("not cleared", "suspended"));
        Document past = office.get("/register?at=2001-01-01T00:00&known=2001-01-01T00:00")
                .page();
        String then =
                office.get(past.select("a[download]").first().attr("href")).body();
        assertThat(then.lines()).hasSize(1);
        assertThat(office.get("/register")
                        .page()
                        .select("tr:has(th:contains(Ines Calloway))")
                        .text())
                .as("and it is marked on the page")
                .contains("single-instructor decision");
        assertThat(office.get("/register/people/" + DemoPeople.INSTRUCTOR)
                        .page()
                        .select("section:has(#now)")
                        .text())
                .containsIgnoringCase("single-instructor decision");
        assertThat(office.get("/register/standings.csv?at=yesterday").status()).isBetween(400, 422);
        assertThat(office.get("/register/standings.pdf").status()).isEqualTo(404);
    }

    @Test
    void cr21_everybodyReadsTheOwnRecordTakesItAlongAndMayAppeal() {
        Browserless celeste = SignedIn.asPerson(DemoPeople.CELESTE);
        Document mine = celeste.get("/register/mine").page();
        assertThat(mine.select("h3").eachText()).contains("Suspended", "Granted", "Training given");
        assertThat(mine.text()).contains(Words.next(Reason.SUSPENDED), Words.next(Reason.NEVER_GRANTED));
        Browserless.Answer file = celeste.get("/register/mine/lines");
        assertThat(file.header("Content-Disposition")).contains("own-record.jsonl");
        assertThat(file.body().lines()).isNotEmpty().allMatch(line -> line.startsWith("{") && line.endsWith("}"));
        assertThat(file.body())
                .contains("\"type\":\"granted\"", "Gloves off before the bottle was closed", "Ines Calloway");
        String decision = mine.select("#against option").first().attr("value");
        Browserless.Answer empty = celeste.post("/register/mine/appeals", Map.of("against", decision, "reason", ""));
        assertThat(empty.status()).isEqualTo(422);
        Browserless.Answer appealed = celeste.post(
                "/register/mine/appeals", Map.of("against", decision, "reason", "The bottle was closed already."));
        assertThat(appealed.status()).isEqualTo(303);
        assertThat(appealed.follow().page().text()).contains("The bottle was closed already.");
        Browserless.Answer twice =
                celeste.post("/register/mine/appeals", Map.of("against", decision, "reason", "Pressed twice"));
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.page().select("#against-error")).hasSize(1);
        assertThat(celeste.post(
                                "/register/mine/appeals",
                                Map.of("against", UUID.randomUUID().toString(), "reason", "x"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void anApprenticeSeesNobodyElsesRecord() {
        Browserless apprentice = SignedIn.asPerson(DemoPeople.ANOUK);
        assertThat(apprentice.get("/register/people/" + DemoPeople.BASTIAN).status())
                .isEqualTo(404);
        assertThat(apprentice.get("/register").status()).isEqualTo(404);
        assertThat(apprentice.get("/register/mine").page().text()).doesNotContain("Bastian");
    }

    @Test
    void aSuspensionInOneScopeAndAWithdrawalAreShown() {
        Cast cast = school.cleared(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        Document empty =
                lead.post(decision(cast) + "/withdraw", Map.of("cause", "yes")).page();
        assertThat(empty.select(".error-summary a").eachAttr("href")).containsExactly("#withdraw-reason");
        assertThat(empty.select("#withdraw-reason[aria-invalid=true]")).hasSize(1);
        assertThat(empty.select("input[name=cause][checked]")).hasSize(1);
        lead.post(decision(cast) + "/withdraw", Map.of("withdraw-reason", "Left the bench"));
        assertThat(status(cast)).isEqualTo(Status.NOT_CLEARED);
        assertThat(lead.get(decision(cast))
                        .page()
                        .select("#now")
                        .parents()
                        .first()
                        .text())
                .contains("withdrawn");
        decisions.suspend(cast.trainer(), cast.learner(), cast.scope().id(), Trigger.OTHER, "To be sure");
        assertThat(lead.get(person(cast)).page().select("h3").eachText()).contains("Withdrawn", "Suspended");
    }

    private static Map<String, String> why(String role, String reason) {
        Map<String, String> all = new java.util.HashMap<>(SignedIn.passwordOf(role));
        all.put("reason", reason);
        return all;
    }

    private Status status(Cast cast) {
        return check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN).status();
    }

    private static String person(Cast cast) {
        return "/register/people/" + cast.learner();
    }

    private static String decision(Cast cast) {
        return person(cast) + "/" + cast.scope().id();
    }
}
