package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.CountedStatements;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/** How often the database is asked, and that looking changes nothing in it. */
@QuarkusTest
class StatementsTest {
    private static final Pattern SIGN_IN_TABLE = Pattern.compile("\\bsign_in\\b");

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    AgroalDataSource dataSource;

    @Inject
    Sql sql;

    Learner celeste;
    ExerciseTemplate beaker;

    @BeforeEach
    void signIn() {
        celeste = new Learner(DemoPeople.CELESTE, store, drawings);
        celeste.browser.token();
        beaker = content.exercises().find("stick-marks-straight-beaker").orElseThrow();
    }

    @Test
    void anAnswerIsOneStatementThatReadsAndOneThatStores() {
        UUID draw = celeste.drawOf(beaker, 11);
        String right = celeste.right(draw);
        celeste.page(draw);
        CountedStatements counted = CountedStatements.of(dataSource);

        assertThat(celeste.answer(draw, 0, right).status()).isEqualTo(303);

        List<String> taken = ofFeatures(counted);
        assertThat(taken).hasSize(2);
        assertThat(taken.get(0)).startsWith("SELECT d.id");
        assertThat(taken.get(1)).startsWith("WITH moved AS");
    }

    @Test
    void anAnswerThatIsAskedAgainStoresNothing() {
        UUID draw = celeste.drawOf(beaker, 12);
        celeste.page(draw);
        CountedStatements counted = CountedStatements.of(dataSource);
        assertThat(celeste.answer(draw, 0, "12").status()).isEqualTo(422);
        assertThat(ofFeatures(counted)).isNotEmpty().allMatch(statement -> statement.startsWith("SELECT"));
    }

    @Test
    void theFirstPageAsksThreeTimesAndTheRegisterWhetherAnythingIsNew() {
        celeste.browser.get("/today");
        CountedStatements counted = CountedStatements.of(dataSource);

        assertThat(celeste.browser.get("/today").status()).isEqualTo(200);
        List<String> asked = ofFeatures(counted);
        assertThat(asked).hasSizeLessThanOrEqualTo(4);
        assertThat(asked.stream().filter(statement -> statement.contains("FROM register_event")))
                .hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void aBoardAsksThreeTimes() {
        Browserless ines = SignedIn.as("instructor");
        ines.get("/cohorts");
        CountedStatements counted = CountedStatements.of(dataSource);

        Answer page = ines.get("/cohorts/" + DemoPeople.FIRST_COHORT);
        List<String> board = ofFeatures(counted);
        assertThat(page.page().select("section[aria-labelledby=words] li"))
                .as("also where words are needed")
                .isNotEmpty();
        assertThat(board).hasSize(3);
        assertThat(board).noneMatch(statement -> statement.contains("FROM answer"));
    }

    @Test
    void lookingChangesNothing() {
        UUID draw = celeste.drawOf(beaker, 13);
        UUID done = celeste.freshDraw("weighing", 2);
        celeste.finish(done);
        Browserless ines = SignedIn.as("instructor");
        Map<String, String> before = rows();
        for (String path : List.of(
                "/today",
                "/practice",
                "/practice/draws/" + draw,
                "/practice/draws/" + draw + "?typed=5",
                "/practice/draws/" + done + "?part=1",
                "/practice/mixed",
                "/practice/confidence",
                "/practice/skills/weighing",
                "/practice/examples/" + beaker.id(),
                "/course",
                "/course/04-whipping",
                "/practice/answers",
                "/practice/answers?skill=weighing")) {
            assertThat(celeste.browser.get(path).status()).as(path).isEqualTo(200);
        }
        for (String path : List.of(
                "/practice",
                "/cohorts",
                "/cohorts/" + DemoPeople.FIRST_COHORT,
                "/people/" + DemoPeople.CELESTE + "/stages",
                "/people/" + DemoPeople.CELESTE + "/answers",
                "/people/" + DemoPeople.CELESTE + "/answers/" + done + "/1")) {
            assertThat(ines.get(path).status()).as(path).isEqualTo(200);
        }
        assertThat(rows()).isEqualTo(before);
    }

    /** What signing in writes once a minute belongs to no feature. */
    private static List<String> ofFeatures(CountedStatements counted) {
        return counted.taken().stream()
                .filter(statement -> !SIGN_IN_TABLE.matcher(statement).find()
                        && !statement.toLowerCase(Locale.ROOT).contains("from school"))
                .toList();
    }

    private Map<String, String> rows() {
        Map<String, String> rows = new TreeMap<>();
        for (String table : List.of(
                "exercise_version",
                "draw",
                "answer",
                "skill_standing",
                "exercise_standing",
                "practice_session",
                "worked_example_seen",
                "stage_opened",
                "lesson_read")) {
            rows.put(
                    table,
                    sql.first(
                                    "SELECT count(*) || ' ' || coalesce(md5(string_agg(t::text, '|' ORDER BY"
                                            + " t::text)), '') AS rows FROM " + table + " t",
                                    row -> row.text("rows"))
                            .orElseThrow());
        }
        return rows;
    }
}
