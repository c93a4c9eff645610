package org.riseandgel;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import javax.sql.DataSource;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.Leaving;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Trigger;
import org.riseandgel.course.CourseContent;

/**
 * Who may do what: every route of the program against nobody, every role, and the records of other people. A route that
 * is missing here fails the test, so none can be added without saying who may use it.
 */
@QuarkusTest
class AccessMatrixTest {
    private enum Who {
        NOBODY,
        APPRENTICE,
        INSTRUCTOR,
        SAFETY_LEAD,
        OFFICE
    }

    private static final Set<Who> PUBLIC = EnumSet.allOf(Who.class);
    private static final Set<Who> SIGNED_IN = EnumSet.complementOf(EnumSet.of(Who.NOBODY));
    private static final Set<Who> LEARNING = EnumSet.of(Who.APPRENTICE, Who.INSTRUCTOR);
    private static final Set<Who> APPRENTICES = EnumSet.of(Who.APPRENTICE);
    private static final Set<Who> SITTING = EnumSet.of(Who.APPRENTICE, Who.INSTRUCTOR, Who.SAFETY_LEAD);
    private static final Set<Who> TALKING = EnumSet.of(Who.INSTRUCTOR, Who.SAFETY_LEAD);
    private static final Set<Who> READING_SITTINGS = EnumSet.of(Who.INSTRUCTOR, Who.SAFETY_LEAD, Who.OFFICE);
    private static final Set<Who> TEACHING = EnumSet.of(Who.INSTRUCTOR, Who.OFFICE);
    private static final Set<Who> OFFICE = EnumSet.of(Who.OFFICE);
    private static final Set<Who> DECIDING = EnumSet.of(Who.INSTRUCTOR, Who.SAFETY_LEAD);
    private static final Set<Who> LEADING = EnumSet.of(Who.SAFETY_LEAD);
    private static final Set<Who> KEEPING = EnumSet.of(Who.SAFETY_LEAD, Who.OFFICE);
    private static final Set<Who> STAFF = EnumSet.of(Who.INSTRUCTOR, Who.SAFETY_LEAD, Who.OFFICE);

    private static final Place DOOR = new Place(
            new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"), Form.DISPERSION, "Foaming room");

    private static final String AT_THE_BENCH = "gelling-dose-bench-cup";

    private static final UUID OTHER_COHORT = UUID.fromString("00000000-0000-4000-8000-0000000f0002");

    private static final String MENDED = "stick-marks-straight-beaker";

    /** Route → who may. */
    private static final Map<String, Set<Who>> MATRIX = new LinkedHashMap<>();

    static {
        MATRIX.put("GET /", PUBLIC);
        MATRIX.put("GET /sign-in", PUBLIC);
        MATRIX.put("POST /sign-in", PUBLIC);
        MATRIX.put("GET /welcome", PUBLIC);
        MATRIX.put("GET /set-up", PUBLIC);
        MATRIX.put("POST /set-up", PUBLIC);
        MATRIX.put("POST /set-up/demo", PUBLIC);

        MATRIX.put("POST /sign-out", PUBLIC);
        MATRIX.put("GET /account", SIGNED_IN);
        MATRIX.put("GET /account/still-here", SIGNED_IN);
        MATRIX.put("POST /account/sign-ins/{id}/end", SIGNED_IN);
        MATRIX.put("POST /account/sign-ins/end-others", SIGNED_IN);
        MATRIX.put("GET /account/password", SIGNED_IN);
        MATRIX.put("POST /account/password", SIGNED_IN);

        MATRIX.put("GET /account/tokens", SIGNED_IN);
        MATRIX.put("POST /account/tokens", SIGNED_IN);
        MATRIX.put("GET /account/tokens/{id}", SIGNED_IN);
        MATRIX.put("POST /account/tokens/{id}/end", SIGNED_IN);
        MATRIX.put("GET /account/calendar", SIGNED_IN);
        MATRIX.put("POST /account/calendar", SIGNED_IN);
        MATRIX.put("POST /account/calendar/end", SIGNED_IN);
        MATRIX.put("GET /calendar/{secret}.ics", PUBLIC);

        MATRIX.put("GET /course", SIGNED_IN);
        MATRIX.put("GET /course/{stage}", SIGNED_IN);
        MATRIX.put("GET /course/{stage}/{lesson}", SIGNED_IN);
        MATRIX.put("POST /course/{stage}/{lesson}/{kind}", SIGNED_IN);
        MATRIX.put("POST /course/{stage}/{lesson}/read", APPRENTICES);
        MATRIX.put("POST /course/{stage}/{lesson}/place", SIGNED_IN);
        MATRIX.put("GET /course/problems", TEACHING);
        MATRIX.put("GET /exercises", TEACHING);
        MATRIX.put("GET /exercises/{exercise}", TEACHING);
        MATRIX.put("GET /course/glossary", SIGNED_IN);
        MATRIX.put("GET /course/search", SIGNED_IN);
        MATRIX.put("GET /bench", SIGNED_IN);
        MATRIX.put("GET /bench/{id}", SIGNED_IN);
        MATRIX.put("GET /bench/stick-marks/stick", SIGNED_IN);
        MATRIX.put("POST /bench/cavity-from-mesh", SIGNED_IN);

        MATRIX.put("GET /api/v1/bench", SIGNED_IN);
        MATRIX.put("GET /api/v1/bench/{id}", SIGNED_IN);
        MATRIX.put("POST /api/v1/bench/{id}", SIGNED_IN);

        MATRIX.put("GET /today", APPRENTICES);
        MATRIX.put("GET /practice", LEARNING);
        MATRIX.put("POST /practice/{skill}/draw", LEARNING);
        MATRIX.put("GET /practice/answers", LEARNING);
        MATRIX.put("GET /practice/draws/{draw}", LEARNING);
        MATRIX.put("POST /practice/draws/{draw}/read", LEARNING);
        MATRIX.put("POST /practice/draws/{draw}/hint", LEARNING);
        MATRIX.put("POST /practice/draws/{draw}/answer", LEARNING);
        MATRIX.put("POST /practice/draws/{draw}/estimate", LEARNING);
        MATRIX.put("POST /practice/draws/{draw}/looked-at", LEARNING);
        MATRIX.put("GET /practice/skills/{skill}", LEARNING);
        MATRIX.put("GET /practice/confidence", LEARNING);
        MATRIX.put("GET /practice/mixed", LEARNING);
        MATRIX.put("POST /practice/mixed", LEARNING);
        MATRIX.put("GET /practice/at-the-bench/{exercise}", LEARNING);
        MATRIX.put("POST /practice/at-the-bench/{exercise}/begin", LEARNING);
        MATRIX.put("GET /practice/examples/{exercise}", LEARNING);
        MATRIX.put("POST /practice/examples/{exercise}/look-up", LEARNING);
        MATRIX.put("POST /practice/examples/{exercise}/seen", LEARNING);
        MATRIX.put("GET /simulations", LEARNING);
        MATRIX.put("GET /simulations/{simulation}", LEARNING);
        MATRIX.put("POST /simulations/{simulation}/begin", LEARNING);
        MATRIX.put("GET /simulations/runs/{run}", LEARNING);
        MATRIX.put("POST /simulations/runs/{run}/choose", LEARNING);
        MATRIX.put("POST /simulations/runs/{run}/go-on", LEARNING);

        MATRIX.put("GET /set-work", APPRENTICES);
        MATRIX.put("GET /set-work/{set}", APPRENTICES);
        MATRIX.put("POST /set-work/{set}/begin", APPRENTICES);
        MATRIX.put("GET /set-work/tries/{work}", APPRENTICES);
        MATRIX.put("POST /set-work/tries/{work}/hand-in", APPRENTICES);
        MATRIX.put("GET /set-work/tries/{work}/items/{number}", APPRENTICES);
        MATRIX.put("POST /set-work/tries/{work}/items/{number}", APPRENTICES);
        MATRIX.put("POST /set-work/tries/{work}/items/{number}/read", APPRENTICES);
        MATRIX.put("GET /api/v1/cohorts/{cohort}/graded-sets", TEACHING);
        MATRIX.put("GET /api/v1/cohorts/{cohort}/graded-sets/{set}", TEACHING);
        MATRIX.put("GET /api/v1/cohorts/{cohort}/results", TEACHING);
        MATRIX.put("GET /graded-sets", TEACHING);
        MATRIX.put("POST /graded-sets", TEACHING);
        MATRIX.put("GET /graded-sets/new", TEACHING);
        MATRIX.put("GET /graded-sets/{set}", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/extension", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/copy", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/withdraw", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/export/{table}.{format}", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/items", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/judge-again", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/judge-again/exercises/{exercise}", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/judge-again/exercises/{exercise}", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/judge-again/jobs/{job}", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/judge-again/jobs/{job}/progress", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/judge-again/jobs/{job}/undo", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/works/{work}", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/works/{work}/items/{number}/parts/{part}", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/works/{work}/items/{number}/parts/{part}", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/draft", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/draft", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/draft/lines/{line}", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/draft/lines/{line}", TEACHING);
        MATRIX.put("GET /graded-sets/{set}/draft/preview", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/draft/publish", TEACHING);
        MATRIX.put("POST /graded-sets/{set}/draft/discard", TEACHING);
        MATRIX.put("GET /checks", SITTING);
        MATRIX.put("GET /checks/{check}", SITTING);
        MATRIX.put("POST /checks/{check}/begin", SITTING);
        MATRIX.put("GET /sittings/{sitting}", SITTING);
        MATRIX.put("GET /sittings/{sitting}/items/next", SITTING);
        MATRIX.put("GET /sittings/{sitting}/items/{number}", SITTING);
        MATRIX.put("POST /sittings/{sitting}/items/{number}", SITTING);
        MATRIX.put("GET /sittings/{sitting}/hand-in", SITTING);
        MATRIX.put("POST /sittings/{sitting}/hand-in", SITTING);
        MATRIX.put("GET /people/{person}/sittings", READING_SITTINGS);
        MATRIX.put("GET /people/{person}/sittings/{sitting}", READING_SITTINGS);
        MATRIX.put("POST /people/{person}/sittings/talk", TALKING);

        MATRIX.put("GET /register", STAFF);
        MATRIX.put("GET /register/mine", SIGNED_IN);
        MATRIX.put("GET /register/mine/lines", SIGNED_IN);
        MATRIX.put("POST /register/mine/appeals", SIGNED_IN);
        MATRIX.put("GET /register/people", STAFF);
        MATRIX.put("GET /register/people/{person}", STAFF);
        MATRIX.put("GET /register/people/{person}/{scope}", STAFF);
        MATRIX.put("POST /register/mine/practicals", SIGNED_IN);
        MATRIX.put("GET /register/sheets/{revision}", SIGNED_IN);
        MATRIX.put("GET /register/sheets/{revision}/file", SIGNED_IN);
        MATRIX.put("POST /register/sheets/{revision}/read", SIGNED_IN);
        MATRIX.put("GET /register/settings", STAFF);
        MATRIX.put("POST /register/settings/policy", LEADING);
        MATRIX.put("GET /register/settings/scopes", LEADING);
        MATRIX.put("POST /register/settings/scopes", LEADING);
        MATRIX.put("POST /register/settings/scopes/close", LEADING);
        MATRIX.put("GET /register/settings/sheets", STAFF);
        MATRIX.put("POST /register/settings/sheets", LEADING);
        MATRIX.put("GET /register/settings/people", STAFF);
        MATRIX.put("POST /register/settings/people/give", KEEPING);
        MATRIX.put("POST /register/settings/people/end", DECIDING);
        MATRIX.put("POST /register/settings/people/training", DECIDING);
        MATRIX.put("GET /register/standings.{format}", STAFF);
        MATRIX.put("GET /register/book", STAFF);
        MATRIX.put("POST /register/book/export", KEEPING);
        MATRIX.put("GET /register/book/check", STAFF);
        MATRIX.put("POST /register/book/check/now", STAFF);
        MATRIX.put("POST /register/book/check/file", STAFF);
        MATRIX.put("GET /register/book/questions", STAFF);
        MATRIX.put("GET /register/waiting", DECIDING);
        MATRIX.put("GET /register/appeals/{appeal}", DECIDING);
        MATRIX.put("POST /register/appeals/{appeal}", DECIDING);
        MATRIX.put("GET /register/corrections/{line}", DECIDING);
        MATRIX.put("POST /register/corrections/{line}", DECIDING);
        MATRIX.put("POST /register/corrections/{line}/confirm", DECIDING);
        MATRIX.put("POST /register/corrections/{line}/decline", DECIDING);
        MATRIX.put("GET /register/leavers", KEEPING);
        MATRIX.put("POST /register/leavers", KEEPING);
        MATRIX.put("POST /register/leavers/purge", LEADING);
        MATRIX.put("GET /register/leavers/{person}", KEEPING);
        MATRIX.put("POST /register/leavers/{person}/anonymise", KEEPING);
        MATRIX.put("POST /register/leavers/{person}/hold", LEADING);
        MATRIX.put("GET /register/evidence/{person}", DECIDING);
        MATRIX.put("GET /register/evidence/{person}/{what}", DECIDING);
        MATRIX.put("POST /register/evidence/{person}/{what}", DECIDING);
        MATRIX.put("GET /register/observe/{person}/{scope}/{checklist}", DECIDING);
        MATRIX.put("POST /register/observe/{person}/{scope}/{checklist}", DECIDING);
        MATRIX.put("POST /register/people/{person}/suspend", DECIDING);
        MATRIX.put("POST /register/people/{person}/{scope}/grant", DECIDING);
        MATRIX.put("POST /register/people/{person}/{scope}/reinstate", DECIDING);
        MATRIX.put("POST /register/people/{person}/{scope}/suspend", DECIDING);
        MATRIX.put("POST /register/people/{person}/{scope}/withdraw", DECIDING);
        MATRIX.put("GET /register/paper", SIGNED_IN);
        MATRIX.put("GET /register/paper/{form}", SIGNED_IN);
        MATRIX.put("GET /register/paper/practicals/{checklist}", SIGNED_IN);
        MATRIX.put("GET /door", STAFF);
        MATRIX.put("GET /door/{place}", STAFF);
        MATRIX.put("GET /door/{place}/list", STAFF);
        MATRIX.put("GET /api/v1/register/check", STAFF);

        MATRIX.put("GET /cohorts", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}/progress.{format}", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}/history", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}/effect", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}/results", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}/results/export.{format}", TEACHING);
        MATRIX.put("GET /people/{person}/progress", TEACHING);
        MATRIX.put("POST /people/{person}/progress/words", TEACHING);
        MATRIX.put("GET /api/v1/cohorts", TEACHING);
        MATRIX.put("GET /api/v1/cohorts/{cohort}/progress", TEACHING);
        MATRIX.put("GET /api/v1/me/progress", APPRENTICES);
        MATRIX.put("GET /people/{person}/answers", TEACHING);
        MATRIX.put("GET /people/{person}/answers/{draw}/{part}", TEACHING);
        MATRIX.put("GET /people/{person}/stages", EnumSet.of(Who.INSTRUCTOR));
        MATRIX.put("POST /people/{person}/stages", EnumSet.of(Who.INSTRUCTOR));

        for (String route : List.of(
                "GET /office/people",
                "GET /office/people/new",
                "POST /office/people/new",
                "GET /office/people/import",
                "POST /office/people/import",
                "POST /office/people/import/confirm",
                "GET /office/people/{id}",
                "POST /office/people/{id}/disable",
                "POST /office/people/{id}/enable",
                "POST /office/people/{id}/one-time-password",
                "POST /office/people/{id}/roles",
                "GET /office/cohorts",
                "POST /office/cohorts",
                "GET /office/cohorts/{id}",
                "POST /office/cohorts/{id}/close",
                "POST /office/cohorts/{id}/open",
                "POST /office/cohorts/{id}/members",
                "POST /office/cohorts/{id}/members/remove",
                "GET /office/old-answers",
                "POST /office/old-answers",
                "GET /office/demo",
                "POST /office/demo/erase")) {
            MATRIX.put(route, OFFICE);
        }
    }

    @Inject
    DataSource dataSource;

    @Inject
    CourseContent content;

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    Leaving leaving;

    private UUID leaver;
    private String appeal;

    private final Map<String, String> values = new HashMap<>();

    @BeforeEach
    void chooseRecords() {
        values.put("{stage}", "04-whipping");
        values.put("{lesson}", "01-narrow-containers");
        values.put("{kind}", "self-check");
        values.put("{skill}", "weighing");
        values.put("{exercise}", one("SELECT exercise_id FROM draw WHERE skill = 'weighing' ORDER BY 1 LIMIT 1"));
        values.put(
                "{work}",
                one("SELECT id::text FROM graded_work WHERE person_id = '" + DemoPeople.ANOUK
                        + "' ORDER BY handed_in_at NULLS FIRST, begun_at LIMIT 1"));
        values.put("{set}", one("SELECT set_id::text FROM graded_work WHERE id = '" + values.get("{work}") + "'"));
        values.put("{cohort}", one("SELECT cohort_id::text FROM graded_set WHERE id = '" + values.get("{set}") + "'"));
        values.put(
                "{member}",
                one(
                        "SELECT person_id::text FROM cohort_member WHERE part = 'learns' AND left_at IS NULL AND cohort_id = '"
                                + values.get("{cohort}") + "' ORDER BY 1 DESC LIMIT 1"));
        values.put("{person}", DemoPeople.BASTIAN.toString());
        values.put("{number}", "1");
        values.put("{table}", "results");
        values.put("{format}", "csv");
        values.put("{part}", "1");
        values.put("{check}", "whipping-check");
        values.put("{simulation}", "spill");
        values.put("{secret}", "a".repeat(43));
        values.put("{scope}", "00000000-0000-4000-8000-0000000000c9");
        values.put("{place}", DOOR.id().toString());
        values.put("{what}", "training");
        values.put("{checklist}", "spill-response");
        values.put("{form}", "suspension");
        values.put("{revision}", "00000000-0000-4000-8000-0000000000d3");
    }

    @AfterEach
    void putTheMemberBack() {
        run("UPDATE cohort_member SET left_at = NULL WHERE part = 'learns' AND cohort_id = '" + values.get("{cohort}")
                + "' AND person_id = '" + values.get("{member}") + "'");
        run("UPDATE person SET disabled_at = NULL");
    }

    @Test
    void everyRouteIsInTheMatrix() {
        assertThat(routesOfTheProgram()).isEqualTo(new TreeSet<>(MATRIX.keySet()));
    }

    @Test
    void everyRoleAgainstEveryRoute() {
        SoftAssertions problems = new SoftAssertions();
        for (Who who : Who.values()) {
            Browserless visitor = visitor(who);
            values.put("{draw}", who == Who.NOBODY ? anyDraw() : drawFor(who, visitor));
            values.put("{sitting}", sittingFor(who, visitor));
            values.put("{run}", runFor(who, visitor));
            for (Map.Entry<String, Set<Who>> rule : MATRIX.entrySet()) {
                Answer answer = call(who, visitor, rule.getKey());
                judge(problems, who, rule.getKey(), rule.getValue().contains(who), answer);
                if (rule.getKey().equals("POST /sign-out") && who != Who.NOBODY) {
                    visitor = visitor(who);
                }
            }
        }
        problems.assertAll();
    }

    @Test
    void anAddressThatNothingAnswersIsNotFoundForEverybody() {
        for (Who who : Who.values()) {
            assertThat(visitor(who).get("/no-such-page").status())
                    .as(who.name())
                    .isEqualTo(404);
        }
    }

    @Test
    void anotherPersonsDrawIsNotFound() {
        Browserless owner = SignedIn.asPerson(DemoPeople.ANOUK);
        String address =
                owner.post("/practice/weighing/draw", Map.of("level", "2")).location();
        assertThat(owner.get(address).status()).isEqualTo(200);
        Browserless stranger = SignedIn.asPerson(DemoPeople.BASTIAN);
        assertThat(stranger.get(address).status()).isEqualTo(404);
        for (String act : List.of("/read", "/hint", "/answer", "/estimate", "/looked-at")) {
            Answer answer = stranger.post(
                    address + act,
                    Map.of("part", "1", "answer", "12 g", "echoed", "12 g", "sure", "guess", "decade", "1"));
            assertThat(answer.status()).as(act).isEqualTo(404);
        }
        assertThat(SignedIn.as("instructor").get(address).status()).isEqualTo(404);
        assertThat(SignedIn.as("office").get(address).status()).isEqualTo(404);
    }

    @Test
    void aCohortOneDoesNotTeachIsNotFoundAndNeitherAreItsPeople() {
        String foreign = UUID.randomUUID().toString();
        run("INSERT INTO cohort (id, name, created_at) VALUES ('" + foreign + "', 'Foreign " + foreign + "', now())");
        Browserless instructor = SignedIn.as("instructor");
        assertThat(instructor.get("/cohorts/" + foreign).status()).isEqualTo(404);
        assertThat(instructor.get("/people/" + DemoPeople.OFFICE + "/answers").status())
                .isEqualTo(404);
        assertThat(instructor.get("/people/" + UUID.randomUUID() + "/answers").status())
                .isEqualTo(404);
        assertThat(SignedIn.as("office").get("/cohorts/" + foreign).status()).isEqualTo(200);
    }

    /**
     * An instructor of another cohort against every route that shows or changes the graded sets, results, items or
     * progress of a cohort or of its people: pages, forms, exports and API. None of it is there.
     */
    @Test
    void anInstructorOfAnotherCohortFindsNoneOfItAnywhere() {
        Browserless stranger = anInstructorOfAnotherCohort();
        String before = written();
        SoftAssertions problems = new SoftAssertions();
        List<String> routes =
                MATRIX.keySet().stream().filter(AccessMatrixTest::isOfACohort).toList();
        assertThat(routes).hasSizeGreaterThan(30);
        for (String route : routes) {
            Answer answer = call(Who.INSTRUCTOR, stranger, route);
            problems.assertThat(answer.status()).as(route).isEqualTo(404);
        }
        for (String table : List.of("results", "answers", "items")) {
            for (String format : List.of("csv", "xlsx")) {
                String path = "/graded-sets/" + values.get("{set}") + "/export/" + table + "." + format;
                problems.assertThat(stranger.get(path).status()).as(path).isEqualTo(404);
            }
        }
        for (String list : List.of("/graded-sets", "/cohorts", "/api/v1/cohorts")) {
            problems.assertThat(stranger.get(list).body())
                    .as(list)
                    .doesNotContain(values.get("{set}"))
                    .doesNotContain(values.get("{cohort}"));
        }
        Answer copied = stranger.post(
                "/graded-sets",
                Map.of("title", "Taken along", "cohort", OTHER_COHORT.toString(), "from", values.get("{set}")));
        problems.assertThat(copied.status()).as("lines of a set elsewhere").isEqualTo(404);
        problems.assertThat(stranger.post("/graded-sets", Map.of("title", "None", "from", "nonsense"))
                        .status())
                .isEqualTo(404);
        problems.assertThat(written()).as("what is written down").isEqualTo(before);
        problems.assertAll();
    }

    private static boolean isOfACohort(String route) {
        String path = route.substring(route.indexOf(' ') + 1);
        return path.startsWith("/graded-sets/{")
                || path.startsWith("/cohorts/{")
                || path.startsWith("/api/v1/cohorts/{")
                || path.startsWith("/people/{person}/") && !path.contains("/sittings");
    }

    private Browserless anInstructorOfAnotherCohort() {
        TestPeople.Added added = TestPeople.settled("instructor");
        run("INSERT INTO cohort (id, name, created_at) VALUES ('" + OTHER_COHORT
                + "', 'Of another instructor', now()) ON CONFLICT DO NOTHING");
        run("INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES ('" + UUID.randomUUID()
                + "', '" + OTHER_COHORT + "', '" + added.id() + "', 'teaches', now())");
        return TestPeople.signIn(added);
    }

    /** How much has been written down about marks, times, words and stages. */
    private String written() {
        return one("SELECT concat_ws(' ', (SELECT count(*) FROM graded_extension), (SELECT count(*) FROM"
                + " graded_mark_change), (SELECT count(*) FROM word_given), (SELECT count(*) FROM stage_opened),"
                + " (SELECT count(*) FROM graded_set WHERE state = 'WITHDRAWN'))");
    }

    @Test
    void nobodyEndsAnotherPersonsSignIn() {
        SignedIn.asPerson(DemoPeople.ESME);
        String foreign = one("SELECT public_id::text FROM sign_in WHERE person_id = '" + DemoPeople.ESME
                + "' AND ended_at IS NULL LIMIT 1");
        assertThat(SignedIn.asPerson(DemoPeople.ANOUK)
                        .post("/account/sign-ins/" + foreign + "/end")
                        .status())
                .isEqualTo(404);
        assertThat(one("SELECT (ended_at IS NULL)::text FROM sign_in WHERE public_id = '" + foreign + "'"))
                .isEqualTo("true");
    }

    private void judge(SoftAssertions problems, Who who, String route, boolean may, Answer answer) {
        String told = who + " " + route + " → " + answer.status() + " " + answer.location();
        if (may && MATRIX.get(route) == PUBLIC) {
            problems.assertThat(answer.status()).as(told).isIn(200, 303, 404, 422);
        } else if (may) {
            problems.assertThat(answer.status()).as(told).isIn(200, 204, 303, 409, 422);
            problems.assertThat(answer.location()).as(told).doesNotStartWith("/sign-in?next");
        } else if (who == Who.NOBODY && route.startsWith("GET") && !route.contains(" /api/")) {
            problems.assertThat(answer.status()).as(told).isEqualTo(303);
            problems.assertThat(answer.location()).as(told).startsWith("/sign-in");
        } else if (who == Who.NOBODY) {
            problems.assertThat(answer.status()).as(told).isEqualTo(401);
        } else {
            problems.assertThat(answer.status()).as(told).isEqualTo(404);
        }
    }

    private Answer call(Who who, Browserless visitor, String route) {
        String path = route.substring(route.indexOf(' ') + 1);
        if (path.startsWith("/office/people/{id}")) {
            path = path.replace("{id}", DemoPeople.FINTAN.toString());
        } else if (path.startsWith("/office/cohorts/{id}")) {
            path = path.replace("{id}", values.get("{cohort}"));
        } else if (path.startsWith("/account/sign-ins/{id}")) {
            path = path.replace("{id}", who == Who.NOBODY ? UUID.randomUUID().toString() : spareSignIn(who));
        } else if (path.startsWith("/account/tokens/{id}")) {
            path = path.replace("{id}", who == Who.NOBODY ? UUID.randomUUID().toString() : ownToken(who));
        } else if (path.equals("/api/v1/register/check")) {
            path += "?task=clean&person=" + DemoPeople.BASTIAN + "&place=" + DOOR.id();
        } else if (path.startsWith("/bench/{id}") || path.startsWith("/api/v1/bench/{id}")) {
            path = path.replace("{id}", "foam-density");
        } else if (path.endsWith("/answers/{draw}/{part}")) {
            path = "/people/" + ownerOfAnAnswer() + "/answers/" + answeredDraw() + "/" + answeredPart();
        } else if (path.endsWith("/sittings/{sitting}") && path.startsWith("/people")) {
            path = "/people/" + DemoPeople.DARIUS + "/sittings/" + handedIn(DemoPeople.DARIUS);
        }
        if (path.startsWith("/register/")) {
            path = path.replace("/leavers/{person}", "/leavers/" + somebodyWhoLeft())
                    .replace("{appeal}", anAppeal())
                    .replace("{line}", one("SELECT id::text FROM register_event WHERE kind = 'granted' LIMIT 1"));
        }
        path = path.replace("/at-the-bench/{exercise}", "/at-the-bench/" + AT_THE_BENCH);
        if (path.contains("/judge-again/")) {
            String job = mendedJob();
            path = path.replace("{job}", job)
                    .replace("{set}", one("SELECT set_id::text FROM graded_regrade WHERE id = '" + job + "'"))
                    .replace("{exercise}", MENDED);
        }
        if (path.contains("/draft/lines/")) {
            String line = narrowableLine();
            path = path.replace("{line}", line)
                    .replace("{set}", one("SELECT set_id::text FROM graded_line WHERE id = '" + line + "'"));
        }
        for (Map.Entry<String, String> value : values.entrySet()) {
            path = path.replace(value.getKey(), value.getValue());
        }
        if (route.startsWith("GET")) {
            return visitor.get(path);
        }
        if (path.startsWith("/api/")) {
            return visitor.postJson(path, "{}");
        }
        Map<String, String> fields =
                Map.of("part", path.contains("/office/") ? "learns" : "1", "person", values.get("{member}"));
        boolean withFile = route.contains("/import")
                || route.endsWith("-mesh")
                || route.endsWith("POST /register/settings/sheets")
                || route.endsWith("/register/book/check/file");
        return withFile ? visitor.postMultipart(path, fields) : visitor.post(path, fields);
    }

    private static Browserless visitor(Who who) {
        return who == Who.NOBODY ? Browserless.anonymous() : SignedIn.as(role(who));
    }

    private static String role(Who who) {
        return who.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** Somebody who left and about whom an appeal waits; made once. */
    private String somebodyWhoLeft() {
        if (leaver == null) {
            leaver = school.person("apprentice");
            UUID suspended = decisions.suspend(DemoPeople.INSTRUCTOR, leaver, null, Trigger.OTHER, "For the matrix");
            appeal = decisions.appeal(leaver, suspended, "For the matrix").toString();
            leaving.end(DemoPeople.SAFETY_LEAD, leaver, LocalDate.of(2026, 1, 1));
        }
        return leaver.toString();
    }

    private String anAppeal() {
        somebodyWhoLeft();
        return appeal;
    }

    /** A draw of this person's own, where the role may draw; somebody's otherwise. */
    private String drawFor(Who who, Browserless visitor) {
        Answer drawn = visitor.post("/practice/weighing/draw", Map.of("level", "2"));
        return LEARNING.contains(who) ? drawn.location().replaceAll(".*/", "").replaceAll("\\?.*", "") : anyDraw();
    }

    private String anyDraw() {
        return one("SELECT id::text FROM draw LIMIT 1");
    }

    /** A sitting of this person's own, where the role may sit; somebody's otherwise. */
    private String sittingFor(Who who, Browserless visitor) {
        return SITTING.contains(who)
                ? visitor.post("/checks/whipping-check/begin").location().split("/")[2]
                : handedIn(DemoPeople.DARIUS);
    }

    /** A run of this person's own, where the role may play; somebody's otherwise. */
    private String runFor(Who who, Browserless visitor) {
        return LEARNING.contains(who)
                ? visitor.post("/simulations/weigh-out/begin").location().replaceAll(".*/", "")
                : one("SELECT id::text FROM simulation_run LIMIT 1");
    }

    private String handedIn(UUID person) {
        return one("SELECT id::text FROM sitting WHERE handed_in_at IS NOT NULL AND person_id = '" + person
                + "' ORDER BY started_at LIMIT 1");
    }

    private String answeredDraw() {
        return one("SELECT draw_id::text FROM answer WHERE person_id = '" + ownerOfAnAnswer()
                + "' ORDER BY draw_id, part LIMIT 1");
    }

    private String answeredPart() {
        return one("SELECT (part + 1)::text FROM answer WHERE person_id = '" + ownerOfAnAnswer()
                + "' ORDER BY draw_id, part LIMIT 1");
    }

    /** Somebody whom the demo's instructor teaches and who has answered. */
    private String ownerOfAnAnswer() {
        return one("SELECT a.person_id::text FROM answer a JOIN cohort_member m ON m.person_id = a.person_id"
                + " AND m.part = 'learns' AND m.left_at IS NULL ORDER BY 1 LIMIT 1");
    }

    private String spareSignIn(Who who) {
        Browserless spare = visitor(who);
        assertThat(spare.get("/account").status()).isEqualTo(200);
        return one("SELECT s.public_id::text FROM sign_in s JOIN person_role r USING (person_id) WHERE r.role = '"
                + role(who) + "' AND s.ended_at IS NULL AND s.person_id = '" + firstOf(who)
                + "' ORDER BY s.created_at DESC, s.public_id LIMIT 1");
    }

    /** A token of this person's own. */
    private String ownToken(Who who) {
        String id = UUID.randomUUID().toString();
        run("INSERT INTO access_token (id, id_hash, person_id, name, scopes, created_at, ends_at) VALUES ('" + id
                + "', '" + id + "', '" + firstOf(who) + "', 'spare', '{bench}', now(), now() + interval '1 day')");
        return id;
    }

    /** A finished job of a set that went out with an older text of an exercise. */
    private String mendedJob() {
        String set = UUID.randomUUID().toString();
        String line = UUID.randomUUID().toString();
        String job = UUID.randomUUID().toString();
        String by = "'" + DemoPeople.INSTRUCTOR + "'";
        run(
                "INSERT INTO graded_set (id, cohort_id, title, tries, feedback, created_by, created_at, changed_by, changed_at)"
                        + " VALUES ('" + set + "', '" + values.get("{cohort}") + "', 'Spare', 1, 'EACH', " + by
                        + ", now(), " + by
                        + ", now())");
        run("INSERT INTO graded_line (id, set_id, place, exercise_id, items, weight) VALUES ('" + line + "', '" + set
                + "', 1, '" + MENDED + "', 1, 1)");
        run("INSERT INTO exercise_version (exercise_id, version, source_text, first_used) VALUES ('" + MENDED
                + "', 'older', '"
                + content.exercises().find(MENDED).orElseThrow().file().text().replace("'", "''")
                + "', now()) ON CONFLICT DO NOTHING");
        run("INSERT INTO graded_pool (line_id, exercise_id, version, skill) VALUES ('" + line + "', '" + MENDED
                + "', 'older', 'stick-marks-straight')");
        run("UPDATE graded_set SET state = 'PUBLISHED', opens_local = now(), closes_local = now() + interval '1 day',"
                + " zone = 'UTC', opens_at = now(), closes_at = now() + interval '1 day', published_by = " + by
                + ", published_at = now() WHERE id = '" + set + "'");
        run("INSERT INTO graded_regrade (id, set_id, exercise_id, version, state, reason, started_by, started_at,"
                + " finished_at) VALUES ('" + job + "', '" + set + "', '" + MENDED + "', 'older', 'DONE', 'spare', "
                + by
                + ", now(), now())");
        return job;
    }

    /** A line of a draft whose exercise has numbers. */
    private String narrowableLine() {
        String set = UUID.randomUUID().toString();
        String line = UUID.randomUUID().toString();
        run(
                "INSERT INTO graded_set (id, cohort_id, title, tries, feedback, created_by, created_at, changed_by, changed_at)"
                        + " VALUES ('" + set + "', '" + values.get("{cohort}") + "', 'Spare', 1, 'EACH', '"
                        + DemoPeople.INSTRUCTOR + "', now(), '" + DemoPeople.INSTRUCTOR + "', now())");
        run("INSERT INTO graded_line (id, set_id, place, exercise_id, items, weight) VALUES ('" + line + "', '" + set
                + "', 1, 'stick-marks-straight-beaker', 1, 1)");
        return line;
    }

    private static UUID firstOf(Who who) {
        return DemoPeople.ALL.stream()
                .filter(person -> person.role().equals(role(who)))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private String one(String sql) {
        try (Connection connection = dataSource.getConnection();
                PreparedStatement select = connection.prepareStatement(sql);
                ResultSet row = select.executeQuery()) {
            assertThat(row.next()).as(sql).isTrue();
            return row.getString(1);
        } catch (SQLException e) {
            throw new AssertionError(sql, e);
        }
    }

    private void run(String sql) {
        try (Connection connection = dataSource.getConnection();
                PreparedStatement change = connection.prepareStatement(sql)) {
            change.executeUpdate();
        } catch (SQLException e) {
            throw new AssertionError(sql, e);
        }
    }

    private static Set<String> routesOfTheProgram() {
        Set<String> routes = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.riseandgel")) {
            type.tryGetAnnotationOfType(Path.class)
                    .ifPresent(root -> type.getMethods().forEach(method -> addRoute(routes, root.value(), method)));
        }
        return routes;
    }

    private static void addRoute(Set<String> routes, String root, JavaMethod method) {
        String path = (root + "/"
                        + method.tryGetAnnotationOfType(Path.class)
                                .map(Path::value)
                                .orElse(""))
                .replaceAll("\\{(\\w+):[^}]*}", "{$1}")
                .replaceAll("/+", "/")
                .replaceAll("(.)/$", "$1");
        if (method.isAnnotatedWith(GET.class)) {
            routes.add("GET " + path);
        }
        if (method.isAnnotatedWith(POST.class)) {
            routes.add("POST " + path);
        }
    }
}
