package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.platform.school.SchoolSettings;

/** Drafts by rule, drafts that nobody wants any more, and what no browser would send. */
@QuarkusTest
class DraftingTest {
    private static final String SKILL = "stick-marks-straight";
    private static final int LEVEL = 2;

    @Inject
    SetStore sets;

    @Inject
    WorkStore works;

    @Inject
    PartViews views;

    @Inject
    CourseContent content;

    @Inject
    SchoolSettings school;

    @Inject
    Clock clock;

    private SetDrafter ines;

    @BeforeEach
    void signIn() {
        ines = new SetDrafter(SignedIn.as("instructor"), school.zone());
    }

    @Test
    void aRuleGivesEverybodySoManyOfASkillAndLevel() {
        List<String> there = content.exercises().ofSkill(SKILL, LEVEL).stream()
                .filter(one -> !one.showsWrongWorking())
                .map(one -> one.id())
                .toList();
        UUID set = ines.draft("By rule", DemoPeople.FIRST_COHORT);
        Map<String, String> rule =
                Map.of("rule-items", "2", "rule-skill", SKILL, "rule-level", "" + LEVEL, "exercise", there.get(0));
        assertThat(ines.change(set, rule).status()).isEqualTo(303);
        assertThat(ines.change(set, Map.of("rule-items", "1", "rule-skill", SKILL, "rule-level", "0"))
                        .page()
                        .select(".error-summary a")
                        .eachAttr("href"))
                .as("a rule that overlaps")
                .containsExactly("#rule-skill");
        Document tooMany = ines.change(set, Map.of("rule-items", "20", "rule-skill", "cavity-volume"))
                .page();
        assertThat(tooMany.select(".error-summary a").eachAttr("href")).containsExactly("#rule-items");
        assertThat(tooMany.select("#rule-items").attr("value")).isEqualTo("20");
        assertThat(ines.browser
                        .get("/graded-sets/" + set + "/draft")
                        .page()
                        .select("tbody th label")
                        .eachText())
                .hasSize(2)
                .last()
                .asString()
                .startsWith("2 of ")
                .endsWith("level 2, drawn for each person");
        ines.times(set, clock.instant(), 2);
        Document preview =
                ines.browser.get("/graded-sets/" + set + "/draft/preview").page();
        assertThat(preview.select("section[aria-labelledby^=draw-]"))
                .hasSize(5)
                .allMatch(draw -> draw.select("summary").size() == 3);
        assertThat(ines.publish(set).status()).isEqualTo(303);
        Set<String> drawn = begun(set);
        assertThat(drawn).hasSize(3).contains(there.get(0)).allMatch(there::contains);
        assertThat(ines.browser
                        .get("/graded-sets/" + set)
                        .page()
                        .select(".facts")
                        .text())
                .contains("level 2, drawn for each person: 1 each");
    }

    private Set<String> begun(UUID set) {
        SetWorker celeste = new SetWorker(DemoPeople.CELESTE, works, views);
        UUID work = celeste.begin(set);
        Set<String> drawn = celeste.work(work).items().stream()
                .map(item -> item.exercise().exercise())
                .collect(Collectors.toSet());
        celeste.handIn(work);
        return drawn;
    }

    @Test
    void theCountOfPartsThatIsToldWithoutDrawingIsThatOfTheDraw() {
        assertThat(content.exercises().all())
                .isNotEmpty()
                .allMatch(one -> PartViews.count(one)
                        == content.exercises().drawer().draw(one, 1).partCount());
    }

    @Test
    void asManyPressesAtOnceAsThereMayBeSaveAndPublishOnce() throws Exception {
        UUID set = ines.draft("Pressed twice", DemoPeople.FIRST_COHORT);
        Map<String, String> form = ines.form(set);
        form.put("exercise", content.exercises().ofSkill(SKILL).get(0).id());
        form.put("rule-items", "1");
        form.put("rule-skill", "cavity-volume");
        assertThat(ines.save(set, form).status()).isEqualTo(303);
        assertThat(ines.save(set, form).status()).as("the same once more").isEqualTo(303);
        assertThat(sets.find(set).orElseThrow().lines()).hasSize(2);
        form.put("title", "Something else");
        assertThat(ines.save(set, form).status()).isEqualTo(409);

        ines.times(set, clock.instant(), 2);
        Map<String, String> seen =
                Map.of("revision", "" + sets.find(set).orElseThrow().revision());
        ines.browser.token();
        ExecutorService presses = Executors.newFixedThreadPool(4);
        try {
            Callable<Answer> press = () -> ines.browser.post("/graded-sets/" + set + "/draft/publish", seen);
            for (Future<Answer> pressed : presses.invokeAll(Collections.nCopies(4, press))) {
                assertThat(pressed.get().location()).isEqualTo("/graded-sets/" + set);
            }
        } finally {
            presses.shutdown();
        }
        assertThat(sets.pool(set)).hasSizeGreaterThan(1);
    }

    @Test
    void aDraftIsPutAwayUnlessSomebodySavedItMeanwhile() {
        UUID set = ines.draft("Not wanted", DemoPeople.FIRST_COHORT);
        String at = "/graded-sets/" + set + "/draft";
        String seen = ines.browser
                .get(at)
                .page()
                .select("form[action$=/discard] input[name=revision]")
                .attr("value");
        ines.change(set, Map.of("title", "Wanted after all"));
        Answer stale = ines.browser.post(at + "/discard", Map.of("revision", seen));
        assertThat(stale.status()).isEqualTo(409);
        assertThat(sets.find(set).orElseThrow().isDraft()).isTrue();

        String now = stale.page()
                .select("form[action$=/discard] input[name=revision]")
                .attr("value");
        assertThat(ines.browser.post(at + "/discard", Map.of("revision", now)).location())
                .isEqualTo("/graded-sets?done=discarded");
        assertThat(ines.browser.get("/graded-sets?done=discarded").page().text())
                .contains("The draft is put away")
                .doesNotContain("Wanted after all");
        assertThat(ines.browser.post(at + "/publish", Map.of("revision", now)).location())
                .isEqualTo("/graded-sets/" + set);
        assertThat(sets.find(set).orElseThrow().isPublished()).isFalse();
    }

    @Test
    void whatIsOutIsNeverPutAwayAsADraft() {
        UUID set = ines.draft("Stays out", DemoPeople.FIRST_COHORT);
        ines.change(
                set,
                Map.of("exercise", content.exercises().ofSkill(SKILL).get(0).id()));
        ines.times(set, clock.instant(), 2);
        ines.publish(set);
        ines.browser.post("/graded-sets/" + set + "/draft/discard", Map.of("revision", "4"));
        assertThat(sets.find(set).orElseThrow().isPublished()).isTrue();
    }

    @Test
    void formsThatNoBrowserSendsAreRefusedAndChangeNothing() {
        UUID set = ines.draft("Forged", DemoPeople.FIRST_COHORT);
        GradedSet before = sets.find(set).orElseThrow();
        Map<String, String> late = Map.of(
                "opens-day", "2027-01-01",
                "opens-time", "10:00",
                "closes-day", "+300000-01-01",
                "closes-time", "10:00",
                "note", "turned \u202E round");
        Answer year = ines.change(set, late);
        assertThat(year.status()).isEqualTo(422);
        assertThat(year.page().select(".error-summary a").eachAttr("href")).containsExactly("#note", "#closes-day");
        assertThat(year.page().select("#closes-day").attr("value")).isEqualTo("+300000-01-01");
        String at = "/graded-sets/" + set;
        assertThat(ines.browser.post(at + "/extension", extension("2099-01-01")).location())
                .isEqualTo(at + "/draft");
        assertThat(ines.browser
                        .post(at + "/withdraw", Map.of("withdraw-reason", "By another door"))
                        .location())
                .isEqualTo(at + "/draft");
        assertThat(ines.browser
                        .get("/people/" + DemoPeople.ANOUK + "/answers?skill=%00")
                        .status())
                .isEqualTo(400);
        assertThat(sets.find(set)).contains(before);
    }

    private static Map<String, String> extension(String day) {
        return Map.of(
                "person",
                DemoPeople.CELESTE.toString(),
                "until-day",
                day,
                "until-time",
                "10:00",
                "extension-reason",
                "was ill");
    }
}
