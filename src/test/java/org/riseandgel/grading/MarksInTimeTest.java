package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.UUID;
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
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;

/** Marks of answers that are changed afterwards, and more time for those who have read the answers. */
@QuarkusTest
class MarksInTimeTest {
    private static final String SKILL = "stick-marks-straight";

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

    @Inject
    Corrections corrections;

    private SetDrafter ines;
    private SetWorker celeste;

    @BeforeEach
    void signIn() {
        ines = new SetDrafter(SignedIn.as("instructor"), school.zone());
        celeste = new SetWorker(DemoPeople.CELESTE, works, views);
    }

    @AfterEach
    void reset() {
        MutableClock.reset();
    }

    /** Two exercises with one number each; closing in two hours. */
    private UUID published(String title, Policy feedback) {
        UUID set = ines.draft(title, DemoPeople.FIRST_COHORT);
        content.exercises().ofSkill(SKILL).stream()
                .filter(one -> one instanceof NumericTemplate numeric
                        && numeric.parts().size() == 1)
                .limit(2)
                .forEach(one -> ines.change(set, Map.of("exercise", one.id())));
        ines.change(set, Map.of("feedback", feedback.name()));
        ines.times(set, clock.instant(), 2);
        assertThat(ines.publish(set).location()).isEqualTo("/graded-sets/" + set);
        return set;
    }

    @Test
    void aCorrectionIsForTheAnswerThatWasSeenAndForNoLaterOne() {
        UUID set = published("Changed meanwhile", Policy.CLOSING);
        UUID work = celeste.begin(set);
        String mark = "/graded-sets/" + set + "/works/" + work + "/items/1/parts/1";
        celeste.answer(work, 1, 0, celeste.wrong(work, 1, 0));
        String seen = ines.browser.get(mark).page().select("input[name=seen]").attr("value");
        celeste.answer(work, 1, 0, "1 mm");
        Answer stale = ines.browser.post(mark, Map.of("seen", seen, "credit", "100", "reason", "The way was right"));
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.page().text()).contains("Not corrected").contains("1 mm");
        assertThat(stale.page().select("#reason").text()).isEqualTo("The way was right");
        assertThat(credit(work)).isZero();

        assertThat(SetDrafter.correct(ines.browser, mark, "50", "Half of it").status())
                .isEqualTo(303);
        assertThat(credit(work)).isEqualTo(50);
        Answer second = ines.browser.post(
                mark,
                Map.of(
                        "seen",
                        stale.page().select("input[name=seen]").attr("value"),
                        "credit",
                        "0",
                        "reason",
                        "By another who looked at the same time"));
        assertThat(second.status()).isEqualTo(409);
        assertThat(credit(work)).isEqualTo(50);

        celeste.answer(work, 1, 0, celeste.right(work, 1, 0));
        assertThat(credit(work)).as("its own verdict").isEqualTo(100);
        assertThat(ines.browser.get(mark).page().text())
                .contains("Corrected by hand: counts 50 %, for an answer that was changed since");
    }

    @Test
    void nobodyCorrectsTheirOwnWork() {
        UUID set = published("Own work", Policy.EACH);
        UUID work = celeste.begin(set);
        String seen = celeste.work(work).item(1).orElseThrow().seen(0);
        Corrections.Correction all = new Corrections.Correction(seen, "100", "I know better");
        assertThat(corrections.correct(work, 1, 0, all, DemoPeople.CELESTE)).isEqualTo(Corrections.Done.OWN);
        assertThat(credit(work)).isZero();
        assertThat(corrections.correct(work, 1, 0, all, DemoPeople.OFFICE)).isEqualTo(Corrections.Done.KEPT);
        assertThat(corrections.correct(work, 1, 0, all, DemoPeople.OFFICE))
                .as("a second press")
                .isEqualTo(Corrections.Done.KEPT);
        assertThat(works.history(work, 1, 0)).hasSize(1);
        assertThat(corrections.correct(work, 1, 0, all, DemoPeople.INSTRUCTOR)).isEqualTo(Corrections.Done.MOVED);
        assertThat(credit(work)).isEqualTo(100);
    }

    private int credit(UUID work) {
        return celeste.work(work).item(1).orElseThrow().credit(0);
    }

    @Test
    void whoeverHasReadTheAnswersGoesOnWithFreshNumbers() {
        UUID set = published("More time afterwards", Policy.EACH);
        UUID work = celeste.begin(set);
        celeste.answer(work, 1, 0, celeste.right(work, 1, 0));
        String calendar = celeste.browser
                .post("/account/calendar")
                .page()
                .selectFirst("code.secret")
                .text()
                .replaceFirst("^https?://[^/]+", "");
        MutableClock.advance(Duration.ofHours(3));
        SetWorker late = new SetWorker(DemoPeople.CELESTE, works, views);
        assertThat(late.browser
                        .get("/set-work/tries/" + work + "/items/2")
                        .page()
                        .text())
                .as("told since it closed")
                .contains("Right answer");
        Browserless ines2 = SignedIn.as("instructor");
        Answer past = ines2.post("/graded-sets/" + set + "/extension", more(clock.instant()));
        assertThat(past.page().select(".error-summary").text()).contains("This moment is past");
        assertThat(ines2.post(
                                "/graded-sets/" + set + "/extension",
                                more(clock.instant().plus(Duration.ofHours(20))))
                        .status())
                .isEqualTo(303);
        assertThat(ines2.get("/graded-sets/" + set).page().text()).contains("one more try with fresh numbers");

        assertThat(late.answer(work, 2, 0, late.right(work, 2, 0)).status()).isEqualTo(409);
        assertThat(Browserless.anonymous().get(calendar).body()).contains("graded-set-" + set);
        UUID fresh = late.begin(set);
        assertThat(fresh).isNotEqualTo(work);
        assertThat(((DrawnNumbers) late.drawn(fresh, 2)).values())
                .isNotEqualTo(((DrawnNumbers) late.drawn(work, 2)).values());
        late.answerAll(fresh, 0);
        late.handIn(fresh);
        Document results = ines2.get("/graded-sets/" + set).page();
        assertThat(results.select("table.board tbody tr").eachText())
                .anyMatch(row -> row.startsWith("Celeste Marrow Try 2 of Celeste Marrow counts")
                        && row.contains("2 of 2 points"));
        Answer done = ines2.post(
                "/graded-sets/" + set + "/extension", more(clock.instant().plus(Duration.ofDays(2))));
        assertThat(done.status()).isEqualTo(422);
        assertThat(done.page().select("#person-error").text())
                .isEqualTo("Celeste Marrow has handed in every try; more time changes nothing.");
        assertThat(sets.extensions(set)).hasSize(1);
    }

    private Map<String, String> more(Instant until) {
        LocalDateTime local = LocalDateTime.ofInstant(until, school.zone());
        return Map.of(
                "person", DemoPeople.CELESTE.toString(),
                "until-day", local.toLocalDate().toString(),
                "until-time", SchoolMoments.shown(local.toLocalTime()),
                "extension-reason", "was ill");
    }
}
