package org.riseandgel.clearance.pages;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.People;
import org.riseandgel.account.feed.NoticeSource;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterBook;
import org.riseandgel.clearance.RegisterCheck;
import org.riseandgel.clearance.Reminders;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.SettingsDesk;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.rule.DeltaKind;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Trigger;
import org.riseandgel.platform.sql.Sql;

/** The book through its pages: looked through, taken along, checked, corrected; appeals and leavers. */
@QuarkusTest
class BookPagesTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    RegisterCheck check;

    @Inject
    RegisterBook book;

    @Inject
    PersonRecord records;

    @Inject
    People people;

    @Inject
    Ledger ledger;

    @Inject
    Reminders reminders;

    @Inject
    RecordNotices notices;

    @Inject
    Register register;

    @Inject
    SettingsDesk settings;

    @Inject
    Sql sql;

    @Test
    void cr13_theBookIsLookedThroughByPersonKindWordsAndDay() {
        Cast cast = school.cleared(SOME);
        String words = "Lid left open " + UUID.randomUUID();
        decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.NEAR_MISS, words);
        Browserless office = SignedIn.as("office");
        String about = "/register/book?about=" + signInName(cast.learner());
        assertThat(kinds(office.get(about).page())).startsWith("Suspended", "Granted");
        assertThat(kinds(office.get(about + "&kind=training-given").page())).containsExactly("Training given");
        assertThat(kinds(office.get("/register/book?words=" + words.replace(" ", "+"))
                        .page()))
                .containsExactly("Suspended");
        assertThat(kinds(office.get("/register/book?words=100%25").page())).isEmpty();
        assertThat(kinds(office.get("/register/book?by=" + signInName(cast.trainer()))
                        .page()))
                .containsExactly("Suspended");
        assertThat(kinds(office.get(about + "&until=2001-01-01").page())).isEmpty();
        assertThat(kinds(office.get(about + "&from=" + LocalDate.now()).page())).contains("Granted");
        Browserless.Answer odd = office.get("/register/book?from=yesterday&about=nobody-at-all");
        assertThat(odd.status()).isEqualTo(422);
        assertThat(odd.page().select("#about-error")).hasSize(1);
        assertThat(odd.page().select("#from").attr("value")).isEqualTo("yesterday");
    }

    @Test
    void theBookGoesOnWhereAPageEnds() {
        Browserless office = SignedIn.as("office");
        Document first = office.get("/register/book").page();
        Document second =
                office.get(first.select("nav[aria-label=Pages] a").attr("href")).page();
        assertThat(numbers(second).get(0))
                .isEqualTo(numbers(first).get(numbers(first).size() - 1) - 1);
    }

    @Test
    void cr14_anExportIsCheckedOnThePageAndAFlippedByteNamesItsRow() {
        assertThat(SignedIn.as("instructor").post("/register/book/export").status())
                .isEqualTo(404);
        Browserless office = SignedIn.as("office");
        Browserless.Answer export = office.post("/register/book/export");
        byte[] bytes = export.body().getBytes(StandardCharsets.UTF_8);
        assertThat(export.header("Content-Disposition")).contains("register.jsonl");
        String digest = java.util.Base64.getEncoder()
                .encodeToString(java.util.HexFormat.of().parseHex(Seal.of(bytes)));
        assertThat(export.header("Repr-Digest")).isEqualTo("sha-256=:" + digest + ":");
        assertThat(sql.any(
                        "SELECT 1 FROM audit_entry WHERE action = 'register-exported' AND detail LIKE ?",
                        "%" + Seal.of(bytes) + "%"))
                .isTrue();
        Document sound = checked(office, bytes);
        assertThat(sound.select("#report").text()).endsWith(": sound");
        assertThat(sound.select("main").text()).contains(Seal.of(bytes));
        byte[] flipped = bytes.clone();
        int place = export.body().indexOf("\"content\":", export.body().indexOf("\"number\":7,")) + 40;
        flipped[place] ^= 1;
        Document found = checked(office, flipped);
        assertThat(found.select("#report").text()).endsWith(": not sound");
        assertThat(found.select("main").text()).contains("Line 7:").doesNotContain("Line 8:");
        assertThat(office.postMultipart("/register/book/check/file", Map.of()).status())
                .isEqualTo(422);
        Document own = office.post("/register/book/check/now").page();
        assertThat(own.select("#report").text()).endsWith(": sound");
        assertThat(own.select("code.hash").first().text())
                .isEqualTo(ledger.head().hash());
    }

    @Test
    void cr13_aCorrectionTakesTwoPeopleWhoAreBothSignedIn() {
        Cast cast = school.cleared(SOME);
        UUID training = line(cast, "training-given");
        String page = "/register/corrections/" + training;
        Browserless ines = SignedIn.as("instructor");
        assertThat(ines.get("/register/people/" + cast.learner()).page().select("a[href=" + page + "]"))
                .hasSize(1);
        assertThat(ines.post(page, Map.of("reason", "Never took place")).page().select("#what-error"))
                .hasSize(1);
        assertThat(ines.post(page, Map.of("what", "never", "reason", "")).page().select("#reason-error"))
                .hasSize(1);
        assertThat(ines.post(page, Map.of("what", "moved", "when", "2999-01-01T10:00", "reason", "x"))
                        .page()
                        .select("#when-error"))
                .hasSize(1);
        assertThat(ines.post(page, Map.of("what", "never", "reason", "Never took place"))
                        .status())
                .isEqualTo(303);
        assertThat(status(cast)).as("one alone changes nothing").isEqualTo(Status.CLEARED);
        Browserless.Answer alone = ines.post(page + "/confirm");
        assertThat(alone.status()).isEqualTo(422);
        assertThat(alone.page().select(".error-summary").text()).contains("takes two people");
        Browserless piet = SignedIn.as("safety-lead");
        assertThat(piet.get("/register/waiting").page().select("a[href=" + page + "]"))
                .hasSize(1);
        assertThat(piet.get(page).page().text()).contains("Never took place");
        assertThat(piet.post(page + "/confirm").status()).isEqualTo(303);
        assertThat(check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                        .reason())
                .isEqualTo(Reason.EVIDENCE_FELL);
        assertThat(piet.get("/register/waiting").page().select("a[href=" + page + "]"))
                .isEmpty();
        assertThat(piet.get("/register/book?about=" + signInName(cast.learner()))
                        .page()
                        .text())
                .contains("corrected by a later line");
        assertThat(piet.post(page + "/confirm").status())
                .as("nothing waits any more")
                .isEqualTo(422);
        assertThat(book.verify().findings()).isEmpty();
    }

    @Test
    void aCorrectionIsDeclinedOrMovesTheTimeAndWhatTakesAwayIsNotCorrected() {
        Cast cast = school.cleared(SOME);
        UUID training = line(cast, "training-given");
        String page = "/register/corrections/" + training;
        Browserless ines = SignedIn.as("instructor");
        Browserless piet = SignedIn.as("safety-lead");
        Map<String, String> moved =
                Map.of("what", "moved", "when", "2001-02-03T10:00", "reason", "The paper bears another day");
        ines.post(page, moved);
        assertThat(piet.post(page + "/decline", Map.of("reason", "")).status()).isEqualTo(422);
        assertThat(piet.post(page + "/decline", Map.of("reason", "The paper is right"))
                        .status())
                .isEqualTo(303);
        assertThat(status(cast)).isEqualTo(Status.CLEARED);
        ines.post(page, moved);
        assertThat(piet.post(page + "/confirm").status()).isEqualTo(303);
        assertThat(check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                        .reason())
                .as("a training of that year carries nothing")
                .isEqualTo(Reason.EVIDENCE_FELL);
        UUID suspended = decisions.suspend(cast.trainer(), cast.learner(), null, Trigger.OTHER, "A doubt");
        String taken = "/register/corrections/" + suspended;
        assertThat(piet.get(taken).page().select("main form")).isEmpty();
        assertThat(piet.post(taken, Map.of("what", "never", "reason", "Was nothing"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void cr21_anAppealIsDecidedByWhoWasNotInIt() {
        Cast cast = school.cast(SOME);
        UUID suspended = decisions.suspend(DemoPeople.SAFETY_LEAD, cast.learner(), null, Trigger.OTHER, "A doubt");
        UUID appeal = decisions.appeal(cast.learner(), suspended, "It was by the sheet");
        String page = "/register/appeals/" + appeal;
        Browserless piet = SignedIn.as("safety-lead");
        assertThat(piet.get("/register")
                        .page()
                        .select("a[href=/register/waiting]")
                        .text())
                .matches("Waiting for a second person: [1-9][0-9]*");
        Map<String, String> form = new HashMap<>(Map.of("upheld", "yes", "reason", "The sheet says so"));
        assertThat(piet.post(page, form).page().select(".error-summary").text()).contains("not in the first decision");
        Browserless ines = SignedIn.as("instructor");
        assertThat(ines.get("/register/waiting").page().select("a[href=" + page + "]"))
                .hasSize(1);
        assertThat(ines.get(page).page().text()).contains("It was by the sheet", "A doubt");
        assertThat(ines.post(page, Map.of("reason", "The sheet says so")).page().select("#upheld-error"))
                .hasSize(1);
        assertThat(ines.post(page, form).status()).isEqualTo(303);
        assertThat(ines.get(page).status()).as("decided").isEqualTo(404);
        assertThat(kinds(ines.get("/register/people/" + cast.learner()).page()))
                .startsWith("Appeal decided", "Appeal lodged", "Suspended");
    }

    @Test
    void cr24_aLeaverIsAnonymisedAndChainAndCountsStay() {
        Cast cast = school.cleared(SOME);
        UUID learner = cast.learner();
        String name = people.find(learner).orElseThrow().displayName();
        String words = "Steady hands " + UUID.randomUUID();
        decisions.suspend(cast.trainer(), learner, null, Trigger.OTHER, words);
        String signInName = signInName(learner);
        note("person-added", learner, signInName + " [apprentice]");
        note("cohort-joined", UUID.randomUUID(), "learns a" + signInName + ", " + signInName + ", " + signInName + "b");
        talk(learner, cast.trainer(), words);
        Browserless piet = SignedIn.as("safety-lead");
        assertThat(piet.post("/register/leavers", Map.of("person", signInName(learner), "on", "2999-01-01"))
                        .page()
                        .select("#on-error"))
                .hasSize(1);
        assertThat(piet.post(
                                "/register/leavers",
                                Map.of(
                                        "person",
                                        signInName(learner),
                                        "on",
                                        LocalDate.now().toString()))
                        .status())
                .isEqualTo(303);
        String page = "/register/leavers/" + learner;
        assertThat(piet.get("/register/leavers")
                        .page()
                        .select("a[href=" + page + "]")
                        .text())
                .isEqualTo(name);
        piet.post(page + "/hold", Map.of("on", "yes", "reason", "A court asks"));
        assertThat(piet.post(page + "/anonymise", Map.of("sure", "yes"))
                        .page()
                        .select(".error-summary")
                        .text())
                .contains("legal hold");
        piet.post(page + "/hold", Map.of("on", "no", "reason", "It asks no more"));
        Browserless office = SignedIn.as("office");
        assertThat(office.post(page + "/hold", Map.of("on", "yes", "reason", "x"))
                        .status())
                .isEqualTo(404);
        assertThat(office.post(page + "/anonymise").page().select("#sure-error"))
                .hasSize(1);
        List<String> before = counts(learner);
        assertThat(office.post(page + "/anonymise", Map.of("sure", "yes")).status())
                .isEqualTo(303);
        assertThat(counts(learner)).as("nothing is counted otherwise").isEqualTo(before);
        Document leavers = office.get("/register/leavers").page();
        assertThat(leavers.select("a[href=" + page + "]").text()).startsWith("Former member");
        assertThat(office.get("/register/people/" + learner).page().text())
                .doesNotContain(name)
                .doesNotContain(words);
        assertThat(kinds(office.get("/register/book?words=" + words.replace(" ", "+"))
                        .page()))
                .isEmpty();
        assertThat(sql.any("SELECT 1 FROM sitting_talk WHERE words = ?", words)).isFalse();
        String mark = "left-" + learner.toString().replace("-", "").substring(20);
        assertThat(sql.list(
                        "SELECT detail FROM audit_entry WHERE detail LIKE ? OR detail LIKE ? ORDER BY action",
                        row -> row.text("detail"),
                        "%" + signInName + "%",
                        "%" + mark + "%"))
                .as("names of others that only look alike stay")
                .containsExactly(
                        "learns a" + signInName + ", " + mark + ", " + signInName + "b", mark + " [apprentice]");
        assertThat(book.verify().findings()).isEmpty();
        assertThat(piet.post("/register/leavers/purge", Map.of("sure", "yes"))
                        .page()
                        .select("#password-error"))
                .hasSize(1);
        assertThat(piet.post(
                                "/register/leavers/purge",
                                Map.of(
                                        "sure",
                                        "yes",
                                        "password",
                                        SignedIn.passwordOf("safety-lead").get("password")))
                        .page()
                        .select(".error-summary")
                        .text())
                .contains("Nobody");
        assertThat(leavers.select(".lede").text()).contains("kept for 6 years");
    }

    @Test
    void cr25_whatEndsSoonIsToldOnTheFirstPageAndInCalendars() {
        Browserless bastian = SignedIn.asPerson(DemoPeople.BASTIAN);
        assertThat(bastian.get("/today")
                        .page()
                        .select("main section:has(#notices)")
                        .text())
                .contains("Your clearance for", "ends in ", "fresh practical")
                .doesNotContain("you may not do this work");
        assertThat(SignedIn.asPerson(DemoPeople.ANOUK).get("/today").page().select("#notices"))
                .isEmpty();
        Document made = SignedIn.as("safety-lead").post("/account/calendar").page();
        String address = made.select("main").text().replaceAll("(?s).*(/calendar/[A-Za-z0-9_-]+\\.ics).*", "$1");
        assertThat(Browserless.anonymous().get(address).body())
                .contains("SUMMARY:In 60 days: ", "of the school end")
                .doesNotContain("Bastian");
    }

    @Test
    void cr12_anAskedTrainingIsToldWithItsDayBeforeItIsOverdue() {
        Cast cast = school.cleared(SOME);
        assertThat(reminders.noticesFor(cast.learner())).isEmpty();
        LocalDate due = LocalDate.now().plusDays(5);
        settings.askDelta(cast.lead(), cast.learner(), cast.scope().id(), DeltaKind.NEW_PPE, due, "New gloves");
        assertThat(reminders.noticesFor(cast.learner())).singleElement().satisfies(notice -> {
            assertThat(notice.text()).contains("you will not be cleared", "additional training");
            assertThat(notice.pressing()).isTrue();
        });
        assertThat(reminders.eventsFor(cast.learner()))
                .filteredOn(event -> event.day().equals(Optional.of(due)))
                .singleElement()
                .satisfies(event -> assertThat(event.title()).startsWith("Last day: "));
    }

    @Test
    void whatWaitsForTheLearnerAloneIsToldOnTheFirstPage() {
        Cast cast = school.cast(SOME);
        assertThat(notices.noticesFor(cast.learner())).isEmpty();
        school.training(cast, cast.trainer());
        assertThat(notices.noticesFor(cast.learner()))
                .extracting(NoticeSource.Notice::address)
                .containsExactly("/register/sheets/" + cast.revision());
        school.evidence(cast);
        assertThat(notices.noticesFor(cast.learner())).isEmpty();
        school.practical(
                cast,
                register.policy().orElseThrow().checklistsFor(cast.scope()).get(0),
                StepSeen.Outcome.PROMPTED);
        assertThat(notices.noticesFor(cast.learner())).singleElement().satisfies(notice -> assertThat(notice.text())
                .contains("a practical of yours"));
    }

    @Test
    void cr23_theQuestionsAtDoorsAreReadAgain() {
        Cast cast = school.cleared(SOME);
        check.ask(cast.trainer(), cast.learner(), Place.of(cast.scope()), Task.WEIGH);
        Document page = SignedIn.as("office")
                .get("/register/book/questions?person=" + cast.learner())
                .page();
        assertThat(page.select("tbody tr")).hasSize(1);
        assertThat(page.select("tbody tr").text()).contains(cast.scope().room(), "not cleared");
    }

    private void note(String action, UUID subject, String detail) {
        sql.change(
                "INSERT INTO audit_entry (id, at, action, subject, detail) VALUES (?, now(), ?, ?, ?)",
                UUID.randomUUID(),
                action,
                subject.toString(),
                detail);
    }

    private void talk(UUID person, UUID by, String words) {
        sql.change(
                """
                INSERT INTO sitting_talk (id, person_id, check_id, noted_by, noted_at, words)
                VALUES (?, ?, 'whipping-check', ?, now(), ?)""",
                UUID.randomUUID(),
                person,
                by,
                words);
    }

    private List<String> counts(UUID person) {
        return sql.list(
                """
                SELECT 'line ' || coalesce(kind, '') || ' ' || count(*) AS told FROM register_event
                WHERE person_id = ? AND kind <> 'anonymised' GROUP BY kind ORDER BY 1""",
                row -> row.text("told"),
                person);
    }

    private Document checked(Browserless who, byte[] bytes) {
        return who.postMultipart("/register/book/check/file", Map.of(), "register.jsonl", bytes)
                .page();
    }

    private UUID line(Cast cast, String kind) {
        return records.search(cast.learner(), kind, 1, 0).get(0).id();
    }

    private Status status(Cast cast) {
        return check.look(cast.learner(), Place.of(cast.scope()), Task.CLEAN).status();
    }

    private String signInName(UUID person) {
        return people.find(person).orElseThrow().signInName();
    }

    private static List<String> kinds(Document page) {
        return page.select("ol li h3").eachText().stream()
                .map(text -> text.replace(" (corrected by a later line)", ""))
                .toList();
    }

    private static List<Long> numbers(Document page) {
        return page.select("ol li[id^=line-]").stream()
                .map(line -> Long.valueOf(line.id().substring(5)))
                .toList();
    }
}
