package org.riseandgel.account.office;

import static org.assertj.core.api.Assertions.assertThat;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.CountedStatements;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.People;
import org.riseandgel.account.TestPeople;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.sql.Sql;

@QuarkusTest
class OfficePagesTest {
    private static final String PEOPLE = "[aria-label='People in the list']";
    private static final UUID NOBODY = new UUID(7, 7);

    @Inject
    RosterImport rosterImport;

    @Inject
    AgroalDataSource dataSource;

    @Inject
    People people;

    @Inject
    AuditLog audit;

    @Inject
    Sql sql;

    @AfterEach
    void realTimeAndTheOfficeAtWork() {
        MutableClock.reset();
        sql.change("UPDATE person SET disabled_at = NULL WHERE id = ?", DemoPeople.OFFICE);
    }

    @Test
    void aOneTimePasswordLeadsToAnOwnOneAndThenOpensNothing() {
        TestPeople.Added person = TestPeople.add("apprentice");
        Browserless browser = Browserless.anonymous();
        browser.signIn(person.signInName(), person.oneTimePassword());
        assertThat(browser.get("/account").location()).isEqualTo("/account/password");
        assertThat(browser.post("/account/sign-ins/end-others").location()).isEqualTo("/account/password");
        assertThat(browser.get("/account/password").page().select("h1").text()).isEqualTo("Choose your own password");
        Answer weak = browser.post(
                "/account/password",
                Map.of("current", person.oneTimePassword(), "new-password", "short", "new-password-again", "short"));
        assertThat(weak.status()).isEqualTo(422);
        assertThat(weak.page().select("#new-password-error").text()).contains("at least 15");
        Answer changed = browser.post(
                "/account/password",
                Map.of(
                        "current", person.oneTimePassword(),
                        "new-password", TestPeople.PASSWORD,
                        "new-password-again", TestPeople.PASSWORD));
        assertThat(changed.location()).isEqualTo("/");
        assertThat(browser.get("/account").status()).isEqualTo(200);
        assertThat(Browserless.anonymous()
                        .signIn(person.signInName(), person.oneTimePassword())
                        .status())
                .isEqualTo(422);
    }

    @Test
    void aOneTimePasswordEndsAfterFourteenDays() {
        TestPeople.Added person = TestPeople.add("apprentice");
        MutableClock.advance(Duration.ofDays(14).minusMinutes(1));
        assertThat(Browserless.anonymous()
                        .signIn(person.signInName(), person.oneTimePassword())
                        .status())
                .isEqualTo(303);
        MutableClock.advance(Duration.ofMinutes(2));
        assertThat(Browserless.anonymous()
                        .signIn(person.signInName(), person.oneTimePassword())
                        .status())
                .isEqualTo(422);
    }

    @Test
    void aNewOneTimePasswordNeedsTheOfficesOwnPasswordAndEndsSignIns() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless browser = TestPeople.signIn(person);
        Browserless office = SignedIn.as("office");
        String path = "/office/people/" + person.id() + "/one-time-password";
        Answer refused = office.post(path, Map.of("password-for-one-time", "some other password"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(browser.get("/account").status()).isEqualTo(200);
        Answer given = office.post(path, Map.of("password-for-one-time", TestPeople.officePassword()));
        assertThat(given.status()).isEqualTo(200);
        assertThat(given.header("Cache-Control")).isEqualTo("no-store");
        assertThat(browser.get("/account").status()).isEqualTo(303);
        String oneTime = given.page().selectFirst("code").text();
        assertThat(Browserless.anonymous().signIn(person.signInName(), oneTime).status())
                .isEqualTo(303);
        assertThat(audit.about(person.id(), 10))
                .extracting(AuditLog.Entry::action)
                .contains("one-time-password-given")
                .doesNotHaveToString(oneTime);
    }

    @Test
    void changingRolesNeedsTheOfficesOwnPasswordAndEndsSignIns() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless browser = TestPeople.signIn(person);
        Browserless office = SignedIn.as("office");
        String path = "/office/people/" + person.id() + "/roles";
        assertThat(office.post(path, Map.of("role", "office")).status()).isEqualTo(422);
        assertThat(office.post(path, Map.of("password-for-roles", TestPeople.officePassword()))
                        .status())
                .as("no role at all")
                .isEqualTo(422);
        assertThat(office.post(path, Map.of("role", "king", "password-for-roles", TestPeople.officePassword()))
                        .status())
                .isEqualTo(422);
        assertThat(browser.get("/account").status()).isEqualTo(200);
        assertThat(office.post(path, Map.of("role", "instructor", "password-for-roles", TestPeople.officePassword()))
                        .status())
                .isEqualTo(303);
        assertThat(browser.get("/account").status()).isEqualTo(303);
        assertThat(people.find(UUID.fromString(person.id())).orElseThrow().roles())
                .containsExactly("instructor");
        assertThat(TestPeople.signIn(person).get("/").location()).isEqualTo("/cohorts");
    }

    @Test
    void theLastOfficeAccountStays() {
        Browserless office = SignedIn.as("office");
        List<UUID> others = sql.list(
                "SELECT person_id FROM person_role WHERE role = 'office' AND person_id <> ?",
                row -> row.uuid("person_id"),
                DemoPeople.OFFICE);
        others.forEach(id -> office.post("/office/people/" + id + "/disable"));
        String own = "/office/people/" + DemoPeople.OFFICE;
        Answer disabled = office.post(own + "/disable");
        assertThat(disabled.status()).isEqualTo(422);
        assertThat(disabled.page().text()).contains("only office account");
        Answer role = office.post(
                own + "/roles", Map.of("role", "instructor", "password-for-roles", TestPeople.officePassword()));
        assertThat(role.status()).isEqualTo(422);
        assertThat(office.get("/office/people").status()).isEqualTo(200);
        TestPeople.Added second = TestPeople.settled("office");
        assertThat(TestPeople.signIn(second)
                        .post("/office/people/" + second.id() + "/disable")
                        .status())
                .as("two there are")
                .isEqualTo(303);
    }

    @Test
    void aPersonIsAddedOnlyWhenEverythingIsRight() {
        Browserless office = SignedIn.as("office");
        Map<String, String> taken =
                Map.of("name", "Somebody", "sign-in-name", "anouk", "role", "apprentice", "password", "whatever");
        Answer answer = office.post("/office/people/new", taken);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.page().select("#sign-in-name-error").text()).contains("is taken");
        assertThat(answer.page().select("#name").val()).isEqualTo("Somebody");
        assertThat(answer.page().select("#role-apprentice").hasAttr("checked")).isTrue();
        Answer empty = office.post("/office/people/new");
        assertThat(empty.page().select(".error-summary a").eachAttr("href"))
                .containsExactly("#name", "#sign-in-name", "#role-apprentice");
        Answer cohort = office.post(
                "/office/people/new",
                Map.of("name", "S", "sign-in-name", "so.me", "role", "office", "cohort", NOBODY.toString()));
        assertThat(cohort.page().select("#cohort-error").text()).contains("Pick a cohort");
    }

    @Test
    void textThatLooksLikeMarkupIsOnlyText() {
        Browserless office = SignedIn.as("office");
        String name = "<img src=x onerror=alert(1)>";
        Answer answer = office.post(
                "/office/people/new",
                Map.of(
                        "name",
                        name,
                        "sign-in-name",
                        "markup" + System.nanoTime() % 1_000_000,
                        "role",
                        "apprentice",
                        "password",
                        TestPeople.officePassword()));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.page().select("h1").text()).contains(name);
        assertThat(office.get("/office/people?q=%3Cimg").page().select("main img"))
                .isEmpty();
    }

    @Test
    void peopleAreFoundByPartOfTheirName() {
        Browserless office = SignedIn.as("office");
        assertThat(names(office.get("/office/people?q=QUILL"))).containsExactly("Bastian Quill");
        assertThat(names(office.get("/office/people?q=%25"))).isEmpty();
        assertThat(office.get("/office/people?q=nobodyhere").page().select(".empty"))
                .isNotEmpty();
        assertThat(names(office.get("/office/people?role=safety-lead"))).contains("Piet Hargrove");
        assertThat(office.get("/office/people?q=a%00b&role=king&state=x").status())
                .isEqualTo(200);
    }

    @Test
    void cohortsAreFilledAndEmptiedAndTeachingFollows() {
        Browserless office = SignedIn.as("office");
        String path = office.post("/office/cohorts", Map.of("name", "Test cohort " + System.nanoTime()))
                .location()
                .replaceFirst("\\?.*", "");
        UUID cohort = UUID.fromString(path.substring("/office/cohorts/".length()));
        assertThat(office.get(path).page().select(".empty")).isNotEmpty();
        Answer wrong = office.post(path + "/members", Map.of("names", "anouk nobody.here", "part", "learns"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.page().select("#names").val()).isEqualTo("anouk nobody.here");
        assertThat(office.post(path + "/members", Map.of("names", "ines", "part", "learns"))
                        .status())
                .isEqualTo(422);
        assertThat(people.learnersOf(cohort)).isEmpty();
        TestPeople.Added teacher = TestPeople.add("instructor");
        UUID instructor = UUID.fromString(teacher.id());
        assertThat(office.post(path + "/members", Map.of("names", "esme, Fintan", "part", "learns"))
                        .status())
                .isEqualTo(303);
        assertThat(office.post(path + "/members", Map.of("names", teacher.signInName(), "part", "teaches"))
                        .status())
                .isEqualTo(303);
        assertThat(people.learnersOf(cohort)).extracting(p -> p.signInName()).containsExactly("esme", "fintan");
        assertThat(people.cohort(cohort).orElseThrow().learners()).isEqualTo(2);
        assertThat(people.cohortsTaughtBy(instructor)).extracting(c -> c.id()).containsExactly(cohort);
        assertThat(people.teaches(instructor, DemoPeople.ESME)).isTrue();
        assertThat(people.teaches(instructor, DemoPeople.ANOUK)).isFalse();
        Map<String, String> leave = Map.of("person", DemoPeople.ESME.toString(), "part", "learns");
        assertThat(office.post(path + "/members/remove", leave).status()).isEqualTo(303);
        assertThat(office.post(path + "/members/remove", leave).status()).isEqualTo(404);
        assertThat(people.teaches(instructor, DemoPeople.ESME)).isFalse();
        assertThat(office.post("/office/cohorts", Map.of("name", "AUTUMN evening group"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void aListIsShownFirstAndTakenInWhenConfirmed() {
        Browserless office = SignedIn.as("office");
        String stamp = Long.toString(System.nanoTime(), 36);
        String list = "name,sign-in name,role,cohort\nMara Lind,mara" + stamp + ",apprentice,Group " + stamp
                + "\nJoris Vale,joris" + stamp + ",instructor,group " + stamp + "\n";
        Answer preview = office.postMultipart("/office/people/import", Map.of("text", list));
        assertThat(preview.status()).as(preview.toString()).isEqualTo(200);
        assertThat(preview.page().select(PEOPLE + " tbody tr")).hasSize(2);
        assertThat(preview.page().text()).contains("These cohorts will be made: Group " + stamp);
        assertThat(exists("mara" + stamp)).isFalse();
        String carried = preview.page().selectFirst("textarea[name=text]").wholeText();
        assertThat(office.postMultipart("/office/people/import/confirm", Map.of("text", carried, "password", "no"))
                        .status())
                .isEqualTo(422);
        assertThat(exists("mara" + stamp)).isFalse();
        Answer slips = office.postMultipart(
                "/office/people/import/confirm", Map.of("text", carried, "password", TestPeople.officePassword()));
        assertThat(slips.status()).isEqualTo(200);
        assertThat(slips.page().select("code")).hasSize(2);
        String oneTime = slips.page().select("code").first().text();
        assertThat(Browserless.anonymous().signIn("mara" + stamp, oneTime).status())
                .isEqualTo(303);
        UUID cohort = people.allCohorts().stream()
                .filter(c -> c.name().equals("Group " + stamp))
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(people.learnersOf(cohort)).hasSize(1);
        Answer again = office.postMultipart("/office/people/import", Map.of("text", carried));
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.page().select(".error-summary li").eachText())
                .anyMatch(m -> m.startsWith("Line 2: ") && m.contains("is taken"));
    }

    @Test
    void aListThatIsConfirmedTwiceAtOnceIsTakenInOnce() throws Exception {
        String stamp = Long.toString(System.nanoTime(), 36);
        String list = "name,sign-in name,role,cohort\nTwice,twice" + stamp + ",apprentice,Twice " + stamp + "\n";
        Browserless office = SignedIn.as("office");
        office.get("/office/people/import");
        Browserless other = SignedIn.as("office");
        other.get("/office/people/import");
        Map<String, String> fields = Map.of("text", list, "password", TestPeople.officePassword());
        ExecutorService tabs = Executors.newFixedThreadPool(2);
        List<Answer> answers = new ArrayList<>();
        for (Future<Answer> one : tabs.invokeAll(List.<Callable<Answer>>of(
                () -> office.postMultipart("/office/people/import/confirm", fields),
                () -> other.postMultipart("/office/people/import/confirm", fields)))) {
            answers.add(one.get());
        }
        tabs.shutdown();
        assertThat(answers.stream().map(Answer::status)).containsExactlyInAnyOrder(200, 422);
        assertThat(answers.stream()
                        .filter(answer -> answer.status() == 422)
                        .map(answer -> answer.page().select(".error-summary li").text()))
                .allMatch(told -> told.startsWith("Line 2: ") && told.contains("is taken"));
        assertThat(exists("twice" + stamp)).isTrue();
    }

    /** Ten thousand people of forty cohorts: shown first, then taken in with a bounded number of statements. */
    @Test
    @TestTransaction
    void tenThousandPeopleAreTakenInAtOnce() {
        StringBuilder list = new StringBuilder("name,sign-in name,role,cohort\n");
        for (int i = 0; i < RosterReader.MOST_PEOPLE; i++) {
            list.append("Person Number ")
                    .append(i)
                    .append(",many.")
                    .append(i)
                    .append(",apprentice,Many ")
                    .append(i % 40)
                    .append('\n');
        }
        Answer preview = SignedIn.as("office").postMultipart("/office/people/import", Map.of("text", list.toString()));
        assertThat(preview.page().select("h1").text()).isEqualTo("Preview: 10000 people");
        assertThat(preview.page().select(PEOPLE + " tbody tr")).hasSize(500);
        assertThat(preview.page().text()).contains("And 9500 more, read to the end and without a fault.");
        assertThat(exists("many.9999")).isFalse();

        Roster roster = rosterImport.read(
                preview.page().selectFirst("textarea[name=text]").wholeText());
        CountedStatements counted = CountedStatements.of(dataSource);
        assertThat(rosterImport.take(roster, DemoPeople.OFFICE)).hasSize(10_000);
        assertThat(counted.taken().stream()
                        .filter(one -> one.toLowerCase(Locale.ROOT).contains("cohort_member")))
                .as("one statement lets everybody join")
                .hasSize(1);
        assertThat(sql.first(
                        """
                        SELECT count(*)::int AS people, count(DISTINCT m.cohort_id)::int AS cohorts
                        FROM person p JOIN cohort_member m ON m.person_id = p.id JOIN person_role r ON r.person_id = p.id
                        WHERE p.sign_in_name LIKE 'many.%' AND m.part = 'learns' AND r.role = 'apprentice'""",
                        row -> row.number("people") + " in " + row.number("cohorts")))
                .contains("10000 in 40");
    }

    @Test
    void aListForACohortThatIsClosedIsRefused() {
        Browserless office = SignedIn.as("office");
        String name = "Closed " + Long.toString(System.nanoTime(), 36);
        String at =
                office.post("/office/cohorts", Map.of("name", name)).location().replaceAll("\\?.*", "");
        assertThat(office.post(at + "/close").status()).isEqualTo(303);
        String list =
                "name,sign-in name,role,cohort\nMara,closed.mara,apprentice," + name.toUpperCase(Locale.ROOT) + "\n";
        Answer refused = office.postMultipart("/office/people/import", Map.of("text", list));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select(".error-summary li").text())
                .contains("Line 2: ")
                .contains("is closed");
        assertThat(office.post(at + "/members", Map.of("names", "esme", "part", "learns"))
                        .status())
                .isEqualTo(422);
        assertThat(office.get("/office/cohorts")
                        .page()
                        .select("[aria-label='Closed cohorts']")
                        .text())
                .contains(name);
        assertThat(office.post(at + "/open").status()).isEqualTo(303);
        assertThat(office.postMultipart("/office/people/import", Map.of("text", list))
                        .status())
                .isEqualTo(200);
    }

    @Test
    void aListMayComeAsAFile() {
        Browserless office = SignedIn.as("office");
        byte[] good = "\uFEFFname;sign-in name;role;cohort\r\nMära;a.file.person;apprentice;\r\n"
                .getBytes(StandardCharsets.UTF_8);
        Answer preview = office.postMultipart("/office/people/import", Map.of("text", ""), "list.csv", good);
        assertThat(preview.page().select(PEOPLE + " tbody th").text()).isEqualTo("Mära");
        byte[] latin =
                "name;sign-in name;role;cohort\nM\u00e4ra;mara;apprentice;\n".getBytes(StandardCharsets.ISO_8859_1);
        Answer refused = office.postMultipart("/office/people/import", Map.of("text", ""), "list.csv", latin);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select(".error-summary").text()).contains("not UTF-8");
        Answer large = office.postMultipart("/office/people/import", Map.of("text", ""), "l.csv", new byte[2_000_001]);
        assertThat(large.status()).isEqualTo(422);
        assertThat(large.page().select(".error-summary").text()).contains("larger than 2 MB");
        assertThat(office.postMultipart("/office/people/import", Map.of("text", ""))
                        .status())
                .isEqualTo(422);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/office/people/new",
                "/office/people/import",
                "/office/people/import/confirm",
                "/office/people/00000000-0000-4000-8000-00000000000b/disable",
                "/office/people/00000000-0000-4000-8000-00000000000b/enable",
                "/office/people/00000000-0000-4000-8000-00000000000b/one-time-password",
                "/office/people/00000000-0000-4000-8000-00000000000b/roles",
                "/office/cohorts",
                "/office/cohorts/00000000-0000-4000-8000-000000000065/members",
                "/office/cohorts/00000000-0000-4000-8000-000000000065/members/remove",
                "/office/demo/erase",
                "/account/password",
                "/account/sign-ins/end-others",
                "/sign-out"
            })
    void withoutATokenOrFromElsewhereNothingChanges(String path) {
        Browserless office = SignedIn.as("office");
        String before = fingerprint();
        Map<String, String> fields = Map.of(
                "name", "X",
                "sign-in-name", "token.less",
                "role", "office",
                "password", TestPeople.officePassword(),
                "person", DemoPeople.ANOUK.toString(),
                "names", "anouk",
                "sure", "yes");
        assertThat(office.postWithoutToken(path, fields).status()).isBetween(400, 415);
        assertThat(office.postFrom("https://elsewhere.example", path, fields).status())
                .isIn(403, 415);
        assertThat(fingerprint()).isEqualTo(before);
        assertThat(office.get("/account").status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/office/people",
                "/office/people/new",
                "/office/people/import",
                "/office/people/00000000-0000-4000-8000-00000000000b",
                "/office/cohorts",
                "/office/cohorts/00000000-0000-4000-8000-000000000065",
                "/office/demo"
            })
    void onlyTheOfficeSeesTheOfficesPages(String path) {
        assertThat(SignedIn.as("office").get(path).status()).isEqualTo(200);
        for (String role : new String[] {"apprentice", "instructor", "safety-lead"}) {
            assertThat(SignedIn.as(role).get(path).status()).as(role).isEqualTo(404);
        }
        assertThat(Browserless.anonymous().get(path).location()).startsWith("/sign-in?next=");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/office/people/", "/office/cohorts/"})
    void whoeverIsNotThereIsNotFound(String path) {
        assertThat(SignedIn.as("office").get(path + NOBODY).status()).isEqualTo(404);
        assertThat(SignedIn.as("office").get(path + "not-an-id").status()).isEqualTo(404);
    }

    private static List<String> names(Answer page) {
        return page.page().select("tbody th").eachText();
    }

    private boolean exists(String signInName) {
        return sql.any("SELECT 1 FROM person WHERE sign_in_name = ?", signInName);
    }

    private String fingerprint() {
        return sql.first(
                        """
                        SELECT (SELECT md5(string_agg(p::text, ',' ORDER BY p.id)) FROM person p)
                            || (SELECT md5(string_agg(r::text, ',' ORDER BY r.person_id, r.role)) FROM person_role r)
                            || (SELECT md5(string_agg(m::text, ',' ORDER BY m.id)) FROM cohort_member m)
                            || (SELECT count(*) FROM cohort) || (SELECT count(*) FROM school)
                            || (SELECT count(*) FROM sign_in WHERE end_reason = 'signed-out') AS all_of_it
                        """,
                        row -> row.text("all_of_it"))
                .orElseThrow();
    }
}
