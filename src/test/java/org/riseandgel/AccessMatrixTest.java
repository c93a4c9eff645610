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
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Substance;

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
    private static final Set<Who> STAFF = EnumSet.of(Who.INSTRUCTOR, Who.SAFETY_LEAD, Who.OFFICE);

    private static final Place DOOR = new Place(
            new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"), Form.DISPERSION, "Foaming room");

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
        MATRIX.put("GET /practice/examples/{exercise}", LEARNING);
        MATRIX.put("POST /practice/examples/{exercise}/look-up", LEARNING);
        MATRIX.put("POST /practice/examples/{exercise}/seen", LEARNING);

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
        MATRIX.put("GET /register/people/{person}", STAFF);
        MATRIX.put("GET /register/people/{person}/{scope}", STAFF);
        MATRIX.put("POST /register/mine/practicals", SIGNED_IN);
        MATRIX.put("GET /register/sheets/{revision}", SIGNED_IN);
        MATRIX.put("GET /register/sheets/{revision}/file", SIGNED_IN);
        MATRIX.put("POST /register/sheets/{revision}/read", SIGNED_IN);
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
        MATRIX.put("GET /door", STAFF);
        MATRIX.put("GET /door/{place}", STAFF);
        MATRIX.put("GET /door/{place}/list", STAFF);
        MATRIX.put("GET /api/v1/register/check", STAFF);

        MATRIX.put("GET /cohorts", TEACHING);
        MATRIX.put("GET /cohorts/{cohort}", TEACHING);
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
                "POST /office/cohorts/{id}/members",
                "POST /office/cohorts/{id}/members/remove",
                "GET /office/demo",
                "POST /office/demo/erase")) {
            MATRIX.put(route, OFFICE);
        }
    }

    @Inject
    DataSource dataSource;

    private final Map<String, String> values = new HashMap<>();

    @BeforeEach
    void chooseRecords() {
        values.put("{stage}", "04-whipping");
        values.put("{lesson}", "01-narrow-containers");
        values.put("{kind}", "self-check");
        values.put("{exercise}", "stick-marks-straight-beaker");
        values.put("{skill}", "weighing");
        values.put("{exercise}", one("SELECT exercise_id FROM draw WHERE skill = 'weighing' ORDER BY 1 LIMIT 1"));
        values.put("{cohort}", one("SELECT cohort_id::text FROM cohort_member WHERE part = 'teaches' LIMIT 1"));
        values.put(
                "{member}",
                one("SELECT person_id::text FROM cohort_member WHERE part = 'learns' AND left_at IS NULL AND"
                        + " cohort_id = '"
                        + values.get("{cohort}") + "' ORDER BY 1 DESC LIMIT 1"));
        values.put("{person}", DemoPeople.BASTIAN.toString());
        values.put("{part}", "1");
        values.put("{check}", "whipping-check");
        values.put("{number}", "1");
        values.put("{secret}", "a".repeat(43));
        values.put("{scope}", "00000000-0000-4000-8000-0000000000c9");
        values.put("{place}", DOOR.id().toString());
        values.put("{what}", "training");
        values.put("{checklist}", "spill-response");
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
            problems.assertThat(answer.status()).as(told).isIn(200, 204, 303, 422);
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
        boolean withFile = route.contains("/import") || route.endsWith("-mesh");
        return withFile ? visitor.postMultipart(path, fields) : visitor.post(path, fields);
    }

    private static Browserless visitor(Who who) {
        return who == Who.NOBODY ? Browserless.anonymous() : SignedIn.as(role(who));
    }

    private static String role(Who who) {
        return who.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
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
