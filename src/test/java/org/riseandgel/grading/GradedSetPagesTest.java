package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.StringReader;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceTemplate;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/** Graded sets from draft to closed, as those who set them and those who work them meet them. */
@QuarkusTest
class GradedSetPagesTest {
    @Inject
    WorkStore works;

    @Inject
    SetStore sets;

    @Inject
    PartViews views;

    @Inject
    CourseContent content;

    @Inject
    SchoolSettings school;

    @Inject
    Clock clock;

    @Inject
    Sql sql;

    private SetDrafter ines;
    private SetWorker anouk;
    private SetWorker bastian;

    @BeforeEach
    void signIn() {
        ines = new SetDrafter(SignedIn.as("instructor"), school.zone());
        anouk = new SetWorker(DemoPeople.ANOUK, works, views);
        bastian = new SetWorker(DemoPeople.BASTIAN, works, views);
    }

    @AfterEach
    void reset() {
        MutableClock.reset();
    }

    private ExerciseTemplate bare() {
        return content.exercises().all().stream()
                .filter(NumericTemplate.class::isInstance)
                .filter(one ->
                        one.level() == 2 && ((NumericTemplate) one).parts().size() == 1)
                .findFirst()
                .orElseThrow();
    }

    private ExerciseTemplate steps() {
        return content.exercises().all().stream()
                .filter(NumericTemplate.class::isInstance)
                .filter(one -> ((NumericTemplate) one).parts().size() > 1)
                .findFirst()
                .orElseThrow();
    }

    private ExerciseTemplate choice() {
        return content.exercises().all().stream()
                .filter(ChoiceTemplate.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    /** The learners of a set are not all cleared; practice asks the register, a set would have them do it all the same. */
    @Test
    void whatIsDoneAtTheBenchWithTheSaltIsNeverSetForMarks() {
        String cup = "gelling-dose-bench-cup";
        assertThat(content.exercises().find(cup).orElseThrow().atBench()).isPresent();
        UUID set = ines.draft("At the bench", DemoPeople.FIRST_COHORT);
        assertThat(ines.browser.get("/graded-sets/" + set + "/draft").page().select("option[value=" + cup + "]"))
                .isEmpty();
        Answer byName = ines.change(set, Map.of("exercise", cup));
        assertThat(byName.status()).isEqualTo(422);
        assertThat(byName.page().select("#exercise-error").text()).contains("at the bench with the salt");
        assertThat(sets.find(set).orElseThrow().lines()).isEmpty();

        // A draft of the days before its author marked the exercise.
        assertThat(ines.change(set, Map.of("exercise", bare().id())).status()).isEqualTo(303);
        sql.change("DELETE FROM graded_line WHERE set_id = ?", set);
        sql.change(
                "INSERT INTO graded_line (id, set_id, place, exercise_id, items, weight, ranges)"
                        + " VALUES (gen_random_uuid(), ?, 1, ?, 1, 1, '')",
                set,
                cup);
        assertThat(ines.times(set, clock.instant(), 2).status()).isEqualTo(303);
        String revision = String.valueOf(sets.find(set).orElseThrow().revision());
        Answer out = ines.browser.post("/graded-sets/" + set + "/draft/publish", Map.of("revision", revision));
        assertThat(out.status()).as(out.toString()).isEqualTo(422);
        assertThat(out.page().select("main").text()).contains("at the bench with the salt");
        assertThat(sets.find(set).orElseThrow().isDraft()).isTrue();
    }

    /** A published set of three items: a bare number, one with steps, a choice; it closes in two hours. */
    private UUID published(String title, Policy feedback, int tries) {
        UUID set = ines.draft(title, DemoPeople.FIRST_COHORT);
        for (ExerciseTemplate one : List.of(bare(), steps(), choice())) {
            assertThat(ines.change(set, Map.of("exercise", one.id())).status()).isEqualTo(303);
        }
        assertThat(ines.change(set, Map.of("feedback", feedback.name(), "tries", "" + tries))
                        .status())
                .isEqualTo(303);
        assertThat(ines.times(set, clock.instant(), 2).status()).isEqualTo(303);
        Answer out = ines.publish(set);
        assertThat(out.location()).as(out.toString()).isEqualTo("/graded-sets/" + set);
        return set;
    }

    @Test
    void aSetGoesFromDraftToResultsAndAMarkIsCorrected() throws IOException {
        UUID set = published("Whole way", Policy.EACH, 1);
        assertThat(anouk.browser.get("/set-work").body()).contains("Whole way");
        UUID first = anouk.begin(set);
        UUID second = bastian.begin(set);
        assertThat(((DrawnNumbers) anouk.drawn(first, 1)).values())
                .isNotEqualTo(((DrawnNumbers) bastian.drawn(second, 1)).values());

        Answer unseen = anouk.post(first, 1, 0, anouk.right(first, 1, 0), "");
        assertThat(unseen.status()).isEqualTo(200);
        assertThat(unseen.page().select("#echo strong").text()).isNotEmpty();
        assertThat(anouk.work(first).item(1).orElseThrow().answers()).isEmpty();
        Answer noUnit = anouk.answer(first, 1, 0, "about twelve");
        assertThat(noUnit.status()).isEqualTo(422);
        assertThat(noUnit.page().select("#answer").attr("value")).isEqualTo("about twelve");

        anouk.answerAll(first, 0);
        bastian.answerAll(second, 1);
        Document told =
                bastian.browser.get("/set-work/tries/" + second + "/items/1").page();
        assertThat(told.select(".verdict-word").text()).contains("Not right");
        assertThat(told.select(".working li")).isNotEmpty();
        assertThat(anouk.handIn(first).status()).isEqualTo(303);
        assertThat(bastian.handIn(second).status()).isEqualTo(303);
        assertThat(anouk.browser.get("/set-work/" + set).page().select(".facts").text())
                .contains("Your result 3 of 3 points");

        Document results = ines.browser.get("/graded-sets/" + set).page();
        assertThat(results.select("table.board tbody tr").eachText())
                .anyMatch(row -> row.startsWith("Anouk Sorrel") && row.endsWith("3 of 3 points 100.0 %"))
                .anyMatch(row -> row.startsWith("Bastian Quill") && row.endsWith("2 of 3 points 66.7 %"));

        String mark = "/graded-sets/" + set + "/works/" + second + "/items/1/parts/1";
        Document opened = ines.browser.get(mark).page();
        assertThat(opened.select(".facts").text()).contains("Written", "Read as", "Right answer", "Counts 0 %", "Time");
        assertThat(opened.select(".working li")).isNotEmpty();
        Answer refused = ines.browser.post(mark, Map.of("credit", "120", "reason", ""));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select(".error-summary li")).hasSize(2);
        assertThat(refused.page().select("#credit").attr("value")).isEqualTo("120");
        Answer corrected = SetDrafter.correct(ines.browser, mark, "50", "=The way was right");
        assertThat(corrected.status()).isEqualTo(303);
        assertThat(ines.browser.get(mark).body()).contains("Corrected by hand: counts 50 %");
        Document seen =
                bastian.browser.get("/set-work/tries/" + second + "/items/1").page();
        assertThat(seen.select(".facts").text()).contains("Counts 50 %").contains("=The way was right");
        assertThat(bastian.browser.get("/set-work/" + set).body()).contains("2.5 of 3 points");

        exportsSay(set, second);
    }

    private void exportsSay(UUID set, UUID second) throws IOException {
        Answer csv = ines.browser.get("/graded-sets/" + set + "/export/results.csv");
        assertThat(csv.header("Content-Disposition")).contains("attachment");
        assertThat(csv.header("Repr-Digest")).startsWith("sha-256=:");
        List<CSVRecord> rows = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .build()
                .parse(new StringReader(csv.body()))
                .getRecords();
        CSVRecord bastians = rows.stream()
                .filter(row -> row.get("Sign-in name").equals("bastian"))
                .findFirst()
                .orElseThrow();
        assertThat(bastians.get("Item 1")).isEqualTo("0.5");
        assertThat(bastians.get("Points")).isEqualTo("2.5");
        assertThat(bastians.get("Out of")).isEqualTo("3");
        assertThat(bastians.get("Percent")).isEqualTo("83.3");
        assertThat(rows.stream().filter(row -> row.get("Sign-in name").equals("celeste")))
                .singleElement()
                .matches(row -> row.get("Points").isEmpty());

        String answers =
                ines.browser.get("/graded-sets/" + set + "/export/answers.csv").body();
        assertThat(answers).contains("'=The way was right").doesNotContain(",=The");
        assertThat(works.find(second)).isPresent();
    }

    @Test
    void whereResultsWaitNothingIsToldAndAnswersCanBeChanged() {
        UUID set = published("Later", Policy.CLOSING, 1);
        UUID work = anouk.begin(set);
        String page = "/set-work/tries/" + work + "/items/1";
        assertThat(anouk.answer(work, 1, 0, anouk.wrong(work, 1, 0)).status()).isEqualTo(303);
        Document kept = anouk.browser.get(page).page();
        assertThat(kept.select(".verdict, .working")).isEmpty();
        assertThat(kept.text()).doesNotContain("Not right").doesNotContain("Right answer");
        assertThat(anouk.browser.get("/set-work/tries/" + work).body()).doesNotContain("Points so far");
        assertThat(anouk.answer(work, 1, 0, anouk.right(work, 1, 0)).status()).isEqualTo(303);
        assertThat(anouk.work(work).item(1).orElseThrow().answers())
                .singleElement()
                .matches(answer -> answer.isRight() && answer.saves() == 2);
        anouk.handIn(work);
        assertThat(anouk.answer(work, 1, 0, "1 g").status()).isIn(409, 422);
        assertThat(anouk.browser.get(page).page().select(".verdict")).isEmpty();
        assertThat(anouk.browser.get("/set-work/" + set).page().text()).doesNotContain("Your result");

        MutableClock.advance(Duration.ofHours(3));
        assertThat(SignedIn.asPerson(DemoPeople.ANOUK)
                        .get(page)
                        .page()
                        .select(".verdict-word")
                        .text())
                .contains("Right");
        assertThat(SignedIn.asPerson(DemoPeople.ANOUK)
                        .get("/set-work/" + set)
                        .page()
                        .text())
                .contains("Your result");
    }

    @Test
    void afterClosingNothingIsKeptButWithAnExtensionItIs() {
        UUID set = published("Closing", Policy.EACH, 1);
        UUID first = anouk.begin(set);
        UUID second = bastian.begin(set);
        assertThat(anouk.answer(first, 1, 0, anouk.right(first, 1, 0)).status()).isEqualTo(303);
        LocalDateTime until = LocalDateTime.ofInstant(
                clock.instant().plus(30, ChronoUnit.HOURS).truncatedTo(ChronoUnit.MINUTES), school.zone());
        Answer noReason = ines.browser.post(
                "/graded-sets/" + set + "/extension",
                Map.of("person", DemoPeople.BASTIAN.toString(), "until-day", "soon", "until-time", "20:00"));
        assertThat(noReason.status()).isEqualTo(422);
        assertThat(noReason.page().select("#until-day").attr("value")).isEqualTo("soon");
        Answer given = ines.browser.post(
                "/graded-sets/" + set + "/extension",
                Map.of(
                        "person", DemoPeople.BASTIAN.toString(),
                        "until-day", until.toLocalDate().toString(),
                        "until-time", SchoolMoments.shown(until.toLocalTime()),
                        "extension-reason", "was ill"));
        assertThat(given.status()).as(given.toString()).isEqualTo(303);

        MutableClock.advance(Duration.ofHours(3));
        SetWorker late = new SetWorker(DemoPeople.ANOUK, works, views);
        Answer tooLate = late.answer(first, 3, 0, late.right(first, 3, 0));
        assertThat(tooLate.status()).isEqualTo(409);
        assertThat(tooLate.page().text()).contains("This answer was not kept", "The set closed on");
        assertThat(late.handIn(first).status()).isEqualTo(409);
        assertThat(late.work(first).items().stream()
                        .mapToInt(item -> item.answers().size())
                        .sum())
                .isEqualTo(1);
        SetWorker ill = new SetWorker(DemoPeople.BASTIAN, works, views);
        assertThat(ill.answer(second, 1, 0, ill.right(second, 1, 0)).status()).isEqualTo(303);
        assertThat(ill.handIn(second).status()).isEqualTo(303);
        Document results = SignedIn.as("instructor").get("/graded-sets/" + set).page();
        assertThat(results.select("table.board tbody tr").eachText())
                .anyMatch(row ->
                        row.startsWith("Anouk Sorrel") && row.contains("not handed in") && row.contains("1 of 3"));
        assertThat(results.text()).contains("Bastian Quill: until").contains("was ill");
    }

    @Test
    void triesAreUsedUpAndTheBestOneCounts() {
        UUID set = published("Twice", Policy.EACH, 2);
        UUID first = anouk.begin(set);
        assertThat(anouk.begin(set)).isEqualTo(first);
        anouk.answerAll(first, 1);
        anouk.handIn(first);
        UUID second = anouk.begin(set);
        assertThat(second).isNotEqualTo(first);
        assertThat(anouk.work(second).item(1).orElseThrow().seed())
                .isNotEqualTo(anouk.work(first).item(1).orElseThrow().seed());
        anouk.handIn(second);
        assertThat(anouk.browser.post("/set-work/" + set + "/begin").location()).isEqualTo("/set-work/" + set);
        assertThat(anouk.browser.get("/set-work/" + set).page().text()).contains("Your result 2 of 3 points");
    }

    @Test
    void manyPressesAtOnceBeginOneTryAndStoreOneAnswer() throws Exception {
        UUID set = published("At once", Policy.EACH, 3);
        List<SetWorker> tabs = tabs(6);
        List<Answer> begun = atOnce(tabs, tab -> tab.browser.post("/set-work/" + set + "/begin"));
        assertThat(begun.stream().map(Answer::location).distinct()).hasSize(1);
        UUID work = anouk.begin(set);
        assertThat(works.of(set, DemoPeople.ANOUK)).hasSize(1);
        String right = anouk.right(work, 1, 0);
        String wrong = anouk.wrong(work, 1, 0);
        List<Answer> handed = atOnce(tabs, tab -> tab.answer(work, 1, 0, tabs.indexOf(tab) % 2 == 0 ? right : wrong));
        assertThat(handed).allMatch(answer -> answer.status() == 303);
        assertThat(anouk.work(work).item(1).orElseThrow().answers())
                .singleElement()
                .matches(answer -> answer.saves() == 1);
    }

    @Test
    void answersThatComeWhileTheSetClosesAreKeptBeforeItOrRefused() throws Exception {
        UUID set = published("Closing meanwhile", Policy.CLOSING, 1);
        UUID work = anouk.begin(set);
        String right = anouk.right(work, 1, 0);
        Instant closes = sets.find(set).orElseThrow().closesAt();
        MutableClock.moveTo(closes.minus(Duration.ofMinutes(5)));
        List<SetWorker> tabs = tabs(6);
        ExecutorService other = Executors.newSingleThreadExecutor();
        Future<?> closed = other.submit(() -> MutableClock.advance(Duration.ofMinutes(10)));
        List<Answer> answers = atOnce(tabs, tab -> tab.answer(work, 1, 0, right));
        closed.get();
        other.shutdown();
        assertThat(answers).allMatch(answer -> answer.status() == 303 || answer.status() == 409);
        long kept = answers.stream().filter(answer -> answer.status() == 303).count();
        Optional<ItemAnswer> stored = anouk.work(work).item(1).orElseThrow().answer(0);
        assertThat((long) stored.map(ItemAnswer::saves).orElse(0)).isEqualTo(kept);
        assertThat(stored.map(ItemAnswer::answeredAt).filter(at -> !at.isBefore(closes)))
                .isEmpty();
        assertThat(tabs.get(0).answer(work, 1, 0, right).status()).isEqualTo(409);
    }

    @Test
    void theResultsOfACohortStandBySetAndStayWithIt() {
        UUID set = published("=2+2 of a cohort", Policy.EACH, 1);
        UUID work = anouk.begin(set);
        anouk.answerAll(work, 0);
        anouk.handIn(work);
        String at = "/cohorts/" + DemoPeople.FIRST_COHORT + "/results";
        Document page = ines.browser.get(at).page();
        assertThat(page.select("thead a").eachAttr("href")).contains("/graded-sets/" + set);
        assertThat(page.select("a[href=/graded-sets/" + set + "/works/" + work + "]")
                        .text())
                .isEqualTo("3 of 3 points");
        String csv = ines.browser.get(at + "/export.csv").body();
        assertThat(csv.lines())
                .anyMatch(line -> line.startsWith("Anouk Sorrel,anouk,yes,'=2+2 of a cohort,Open,")
                        && line.endsWith(",1,yes,3,3,100.0"))
                .anyMatch(line -> line.startsWith("Celeste Marrow,celeste,yes,'=2+2 of a cohort,Open,")
                        && line.endsWith(",0,no,,,"));
        assertThat(ines.browser.get(at + "/export.xlsx").status()).isEqualTo(200);
        assertThat(ines.browser.get(at + "/export.doc").status()).isEqualTo(404);

        sql.change(
                "UPDATE cohort_member SET left_at = now() WHERE cohort_id = ? AND person_id = ? AND left_at IS NULL",
                DemoPeople.FIRST_COHORT,
                DemoPeople.ANOUK);
        try {
            assertThat(ines.browser.get(at).page().select("tbody tr").eachText())
                    .anyMatch(row -> row.startsWith("Anouk Sorrel left the cohort") && row.contains("3 of 3 points"));
            String inTheList = ines.browser
                    .get("/graded-sets")
                    .page()
                    .select("tr:has(a[href=/graded-sets/" + set + "]) td:last-child")
                    .text();
            assertThat(inTheList).startsWith("1 of ");
            assertThat(ines.browser
                            .get("/graded-sets/" + set)
                            .page()
                            .select(".facts dd")
                            .last()
                            .text())
                    .as("who left is counted in both")
                    .isEqualTo(inTheList);
            String other = "/cohorts/" + DemoPeople.SECOND_COHORT + "/results";
            assertThat(SignedIn.as("office").get(other).body()).doesNotContain("Anouk Sorrel");
        } finally {
            sql.change(
                    "UPDATE cohort_member SET left_at = NULL WHERE cohort_id = ? AND person_id = ? AND part = 'learns'",
                    DemoPeople.FIRST_COHORT,
                    DemoPeople.ANOUK);
        }
    }

    @Test
    void answersThatComeWhileTheSetIsWithdrawnAreKeptBeforeItOrRefused() throws Exception {
        UUID set = published("Withdrawn", Policy.CLOSING, 1);
        UUID work = anouk.begin(set);
        String right = anouk.right(work, 1, 0);
        List<SetWorker> tabs = tabs(6);
        ExecutorService other = Executors.newSingleThreadExecutor();
        Future<Answer> withdrawn = other.submit(() -> ines.browser.post(
                "/graded-sets/" + set + "/withdraw", Map.of("withdraw-reason", "A drawing was wrong")));
        List<Answer> answers = atOnce(tabs, tab -> tab.answer(work, 1, 0, right));
        assertThat(withdrawn.get().status()).isEqualTo(303);
        other.shutdown();
        long kept = answers.stream().filter(answer -> answer.status() == 303).count();
        assertThat(answers).allMatch(answer -> answer.status() == 303 || answer.status() == 409);
        int saves = anouk.work(work)
                .item(1)
                .orElseThrow()
                .answer(0)
                .map(ItemAnswer::saves)
                .orElse(0);
        assertThat((long) saves).isEqualTo(kept);
        assertThat(anouk.answer(work, 1, 0, right).status()).isEqualTo(409);
        assertThat(anouk.browser.get("/set-work/" + set).body()).contains("A drawing was wrong", "do not count");
        assertThat(anouk.handIn(work).page().text())
                .contains("A drawing was wrong Nothing of it counts")
                .doesNotContain("until then counts")
                .doesNotContain("kept before counts")
                .doesNotContain("Points");
        assertThat(anouk.browser.post("/set-work/" + set + "/begin").location()).isEqualTo("/set-work/" + set);
    }

    @Test
    void ofTwoWhoEditTheSecondKeepsTheirTextAndSeesTheOther() {
        UUID set = ines.draft("Two at once", DemoPeople.FIRST_COHORT);
        Map<String, String> mine = ines.form(set);
        assertThat(ines.change(set, Map.of("title", "Theirs", "exercise", bare().id()))
                        .status())
                .isEqualTo(303);
        mine.put("title", "Mine");
        mine.put("note", "My note");
        Answer moved = ines.save(set, mine);
        assertThat(moved.status()).isEqualTo(409);
        Document page = moved.page();
        assertThat(page.select("#title").attr("value")).isEqualTo("Mine");
        assertThat(page.select("section[aria-labelledby=moved] tr").eachText())
                .contains("Title Mine Theirs", "Note My note");
        assertThat(page.select("input[name=line]")).hasSize(1);
        assertThat(sets.find(set).orElseThrow().title()).isEqualTo("Theirs");
        mine.put("revision", page.select("input[name=revision]").attr("value"));
        assertThat(ines.save(set, mine).status()).isEqualTo(303);
        GradedSet now = sets.find(set).orElseThrow();
        assertThat(now.title()).isEqualTo("Mine");
        assertThat(now.lines()).hasSize(1);
    }

    @Test
    void whatIsEditedWhileSomebodyPublishesIsKeptForANewDraft() {
        UUID set = ines.draft("Out", DemoPeople.FIRST_COHORT);
        ines.change(set, Map.of("exercise", bare().id()));
        ines.times(set, clock.instant(), 2);
        Map<String, String> mine = ines.form(set);
        assertThat(ines.publish(set).status()).isEqualTo(303);
        mine.put("title", "Still typing");
        Answer moved = ines.save(set, mine);
        assertThat(moved.status()).isEqualTo(409);
        assertThat(moved.page().select("#title").attr("value")).isEqualTo("Still typing");
        assertThat(sets.find(set).orElseThrow().title()).isEqualTo("Out");
        mine.put("from", set.toString());
        Answer copied = ines.browser.post("/graded-sets", mine);
        assertThat(copied.status()).isEqualTo(303);
        GradedSet copy =
                sets.find(UUID.fromString(copied.location().split("/")[2])).orElseThrow();
        assertThat(copy.title()).isEqualTo("Still typing");
        assertThat(copy.lines()).hasSize(1);
        assertThat(copy.isDraft()).isTrue();
        assertThat(ines.browser
                        .post("/graded-sets/" + set + "/draft/publish", Map.of("revision", "1"))
                        .location())
                .isEqualTo("/graded-sets/" + set);
    }

    @Test
    void aDraftThatIsNotReadySaysWhatIsMissing() {
        UUID set = ines.draft("Empty", DemoPeople.FIRST_COHORT);
        Document preview =
                ines.browser.get("/graded-sets/" + set + "/draft/preview").page();
        assertThat(preview.select("section[aria-labelledby=to-mend] li")).hasSize(3);
        Answer refused = ines.browser.post("/graded-sets/" + set + "/draft/publish", Map.of("revision", "1"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(sets.find(set).orElseThrow().isDraft()).isTrue();

        Answer faults = ines.change(
                set,
                Map.of(
                        "title", " ",
                        "opens-day", "2027-02-30",
                        "opens-time", "9",
                        "tries", "0",
                        "rule-items", "20",
                        "rule-skill", "weighing",
                        "cohort", UUID.randomUUID().toString()));
        assertThat(faults.status()).isEqualTo(422);
        assertThat(faults.page().select(".error-summary a").eachAttr("href"))
                .contains("#title", "#cohort", "#opens-day", "#opens-time", "#tries", "#rule-items");
        assertThat(faults.page().select("#opens-day").attr("value")).isEqualTo("2027-02-30");
        assertThat(faults.page().title()).startsWith("Error:");
    }

    @Test
    void narrowerRangesHoldForEveryDraw() {
        UUID set = ines.draft("Narrow", DemoPeople.FIRST_COHORT);
        NumericTemplate template = (NumericTemplate) bare();
        ines.change(set, Map.of("exercise", template.id()));
        Line line = sets.find(set).orElseThrow().lines().get(0);
        String page = "/graded-sets/" + set + "/draft/lines/" + line.id();
        Document form = ines.browser.get(page).page();
        String revision = form.select("input[name=revision]").attr("value");
        Answer nonsense = ines.browser.post(page, Map.of("revision", revision, "from", "x", "to", "2"));
        assertThat(nonsense.status()).isEqualTo(422);
        assertThat(form.select("input[name=from]")).isNotEmpty();
        Answer stale = ines.browser.post(page, Map.of("revision", "1", "from", "1", "to", "2"));
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.page().select("input[name=from]").first().attr("value"))
                .isEqualTo("1");
    }

    @Test
    void aMendedExerciseChangesNothingThatIsOut() {
        UUID set = published("Frozen", Policy.EACH, 1);
        List<SetStore.Frozen> pool = sets.pool(set);
        assertThat(pool).hasSize(3);
        assertThat(pool)
                .allMatch(one -> sql.any(
                        "SELECT 1 FROM exercise_version WHERE exercise_id = ? AND version = ?",
                        one.exercise(),
                        one.version()));
        Line line = sets.find(set).orElseThrow().lines().get(0);
        assertThat(refusedByTheDatabase("UPDATE graded_line SET weight = 9 WHERE id = '" + line.id() + "'"))
                .isTrue();
    }

    private boolean refusedByTheDatabase(String change) {
        try {
            sql.change(change);
            return false;
        } catch (IllegalStateException refused) {
            return true;
        }
    }

    @Test
    void otherPeoplesSetsAndTriesAreNotThere() {
        UUID set = published("Private", Policy.EACH, 1);
        UUID work = anouk.begin(set);
        for (String path : List.of("/set-work/tries/" + work, "/set-work/tries/" + work + "/items/1")) {
            assertThat(bastian.browser.get(path).status()).as(path).isEqualTo(404);
        }
        assertThat(bastian.answer(work, 1, 0, "1 g").status()).isEqualTo(404);
        assertThat(bastian.handIn(work).status()).isEqualTo(404);
        Browserless esme = SignedIn.asPerson(DemoPeople.ESME);
        assertThat(esme.get("/set-work/" + set).status()).isEqualTo(404);
        assertThat(esme.post("/set-work/" + set + "/begin").status()).isEqualTo(404);
        assertThat(esme.get("/set-work").body()).doesNotContain("Private");
        UUID draft = ines.draft("Not out", DemoPeople.FIRST_COHORT);
        assertThat(anouk.browser.get("/set-work/" + draft).status()).isEqualTo(404);
    }

    @Test
    void anInstructorOfAnotherCohortFindsNothingOfIt() {
        UUID set = published("Elsewhere", Policy.EACH, 1);
        UUID work = anouk.begin(set);
        UUID draft = ines.draft("Elsewhere too", DemoPeople.FIRST_COHORT);
        UUID cohort = UUID.randomUUID();
        sql.change("INSERT INTO cohort (id, name, created_at) VALUES (?, ?, now())", cohort, "Foreign " + cohort);
        sql.change("UPDATE graded_set SET cohort_id = ? WHERE id IN (?, ?)", cohort, set, draft);
        String at = "/graded-sets/" + set;
        for (String path : List.of(
                at,
                at + "/draft",
                at + "/draft/preview",
                at + "/works/" + work,
                at + "/works/" + work + "/items/1/parts/1",
                at + "/export/results.csv",
                at + "/export/results.xlsx",
                at + "/export/answers.csv",
                "/graded-sets/" + draft + "/draft")) {
            assertThat(ines.browser.get(path).status()).as(path).isEqualTo(404);
        }
        for (String path : List.of(
                at + "/extension",
                at + "/withdraw",
                at + "/copy",
                at + "/works/" + work + "/items/1/parts/1",
                "/graded-sets/" + draft + "/draft",
                "/graded-sets/" + draft + "/draft/publish")) {
            assertThat(ines.browser.post(path).status()).as(path).isEqualTo(404);
        }
        assertThat(SignedIn.as("office").get(at).status()).isEqualTo(200);
        assertThat(ines.browser.get("/graded-sets").body()).doesNotContain("Elsewhere");
    }

    @Test
    void aCohortThatIsClosedKeepsItsSetsForTheOffice() {
        UUID set = published("Of a closed cohort", Policy.EACH, 2);
        UUID work = anouk.begin(set);
        Browserless office = SignedIn.as("office");
        String cohort = office.post("/office/cohorts", Map.of("name", "Closed " + set))
                .location()
                .replaceAll("\\?.*", "");
        UUID id = UUID.fromString(cohort.substring("/office/cohorts/".length()));
        assertThat(office.post(cohort + "/members", Map.of("names", "ines", "part", "teaches"))
                        .status())
                .isEqualTo(303);
        sql.change("UPDATE graded_set SET cohort_id = ? WHERE id = ?", id, set);
        assertThat(ines.browser.get("/graded-sets/" + set).status()).isEqualTo(200);
        assertThat(office.post(cohort + "/close").status()).isEqualTo(303);
        for (String path : List.of("/graded-sets/" + set, "/cohorts/" + id, "/cohorts/" + id + "/results")) {
            assertThat(ines.browser.get(path).status()).as(path).isEqualTo(404);
            assertThat(office.get(path).status()).as(path).isEqualTo(200);
        }
        assertThat(refusedByTheDatabase("DELETE FROM cohort WHERE id = '" + id + "'"))
                .isTrue();
        assertThat(SignedIn.as("office").get("/graded-sets/" + set).page().text())
                .contains("Anouk Sorrel");
        assertThat(anouk.browser.get("/set-work/" + set).status()).isEqualTo(200);
        assertThat(anouk.answer(work, 1, 0, anouk.right(work, 1, 0)).status()).isEqualTo(303);
        assertThat(bastian.browser.get("/set-work/" + set).status()).isEqualTo(404);
    }

    @Test
    void aProgramReadsResultsWithATokenOfItsScopeAndOnlyThose() {
        UUID set = published("For programs", Policy.EACH, 1);
        UUID work = anouk.begin(set);
        anouk.answerAll(work, 0);
        anouk.handIn(work);
        String token = token("cohort-progress");
        String at = "/api/v1/cohorts/" + DemoPeople.FIRST_COHORT + "/graded-sets";
        Browserless program = Browserless.anonymous();
        assertThat(program.getWithToken(at, token).body()).contains("\"title\":\"For programs\"");
        assertThat(program.getWithToken(at + "/" + set, token).body())
                .contains("\"signInName\":\"anouk\"", "\"points\":3", "\"percent\":100.0");
        String all = "/api/v1/cohorts/" + DemoPeople.FIRST_COHORT + "/results";
        assertThat(program.getWithToken(all, token).body())
                .contains("\"id\":\"" + set + "\",\"title\":\"For programs\"")
                .contains("{\"set\":\"" + set
                        + "\",\"tries\":1,\"handedIn\":true,\"points\":3,\"outOf\":3,\"percent\":100.0}")
                .contains("{\"set\":\"" + set
                        + "\",\"tries\":0,\"handedIn\":false,\"points\":null,\"outOf\":null,\"percent\":null}");
        assertThat(program.getWithToken(all, token("bench")).status()).isEqualTo(403);
        assertThat(program.getWithToken(at, token("bench")).status()).isEqualTo(403);
        assertThat(program.getWithToken("/graded-sets/" + set, token).location())
                .startsWith("/sign-in");
        String other = "/api/v1/cohorts/" + DemoPeople.SECOND_COHORT + "/graded-sets/" + set;
        assertThat(program.getWithToken(other, token).status()).isEqualTo(404);
        UUID cohort = UUID.randomUUID();
        sql.change("INSERT INTO cohort (id, name, created_at) VALUES (?, ?, now())", cohort, "Foreign " + cohort);
        sql.change("UPDATE graded_set SET cohort_id = ? WHERE id = ?", cohort, set);
        String foreign = "/api/v1/cohorts/" + cohort + "/graded-sets";
        assertThat(program.getWithToken(foreign, token).status()).isEqualTo(404);
        assertThat(program.getWithToken("/api/v1/cohorts/" + cohort + "/results", token)
                        .status())
                .isEqualTo(404);
        assertThat(program.getWithToken(foreign + "/" + set, token).status()).isEqualTo(404);
    }

    private String token(String scope) {
        String password = DemoPeople.ALL.stream()
                .filter(person -> person.id().equals(DemoPeople.INSTRUCTOR))
                .findFirst()
                .orElseThrow()
                .password();
        return ines.browser
                .post("/account/tokens", Map.of("name", scope, "scope", scope, "days", "30", "password", password))
                .page()
                .selectFirst("code.secret")
                .text();
    }

    @Test
    void theClosingIsInTheCalendarUntilTheSetIsHandedIn() {
        UUID set = published("In the calendar", Policy.EACH, 1);
        String address = anouk.browser
                .post("/account/calendar")
                .page()
                .selectFirst("code.secret")
                .text()
                .replaceFirst("^https?://[^/]+", "");
        assertThat(Browserless.anonymous().get(address).body()).contains("graded-set-" + set);
        UUID work = anouk.begin(set);
        anouk.handIn(work);
        assertThat(Browserless.anonymous().get(address).body()).doesNotContain("graded-set-" + set);
    }

    /** The same apprentice in so many tabs, each with a sign-in of its own. */
    private List<SetWorker> tabs(int many) {
        List<SetWorker> tabs = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            SetWorker tab = new SetWorker(DemoPeople.ANOUK, works, views);
            tab.browser.token();
            tabs.add(tab);
        }
        return tabs;
    }

    private static List<Answer> atOnce(List<SetWorker> tabs, Function<SetWorker, Answer> act) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(tabs.size());
        try {
            List<Callable<Answer>> acts = new ArrayList<>();
            tabs.forEach(tab -> acts.add(() -> act.apply(tab)));
            List<Answer> answers = new ArrayList<>();
            for (Future<Answer> done : pool.invokeAll(acts)) {
                answers.add(done.get());
            }
            return answers;
        } finally {
            pool.shutdown();
        }
    }
}
