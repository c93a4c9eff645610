package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.MutableClock;
import org.riseandgel.Oracle;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Stage;

/** An apprentice goes through the first stage, day after day, until the second one opens, in a real browser on a phone. */
@QuarkusTest
@NeedsBrowser
class StagesBrowserTest {
    @TestHTTPResource
    String base;

    @Inject
    DataSource dataSource;

    @Inject
    CourseContent content;

    private Oracle oracle;

    @BeforeEach
    void prepare() {
        oracle = new Oracle(dataSource::getConnection);
    }

    @AfterEach
    void backToToday() {
        MutableClock.reset();
    }

    @Test
    void theFirstStageIsDoneOverThreeDaysAndTheSecondOneOpens() {
        Content now = content.current();
        Stage first = now.course().stages().get(0);
        Stage second = now.course().stages().get(1);
        TestPeople.Added added = TestPeople.settled("apprentice");

        try (Visitor visitor = signedIn(added)) {
            visitor.open("/course/" + second.id());
            look(visitor);
            assertThat(visitor.find("section[aria-labelledby=missing] li").count())
                    .isEqualTo(now.lessonsOf(first).size() + first.gateSkills().size());
            readAll(visitor, now.lessonsOf(first).size());
            assertThat(visitor.page().url()).endsWith("/course/" + second.id());
            assertThat(visitor.find("section[aria-labelledby=missing] li").count())
                    .isEqualTo(first.gateSkills().size());
            first.gateSkills().forEach(skill -> practise(visitor, skill, 3));
            visitor.open("/today");
            look(visitor);
            assertThat(visitor.find("section[aria-labelledby=due]").count()).isZero();
            assertThat(visitor.complaints()).isEmpty();
        }

        MutableClock.advance(Duration.ofDays(1));
        try (Visitor visitor = signedIn(added)) {
            first.gateSkills().forEach(skill -> practise(visitor, skill, 2));
            visitor.open("/course/" + second.id());
            assertThat(visitor.find("#missing").count())
                    .as("two days are too few")
                    .isEqualTo(1);
        }

        MutableClock.advance(Duration.ofDays(1));
        try (Visitor visitor = signedIn(added)) {
            visitor.open("/today");
            look(visitor);
            assertThat(visitor.find("section[aria-labelledby=due] li").count())
                    .isEqualTo(first.gateSkills().size());
            assertThat(visitor.find("#next").innerText()).isEqualTo("Mixed practice");
            new PracticeHand(visitor).press("Begin");
            assertThat(mixed(visitor)).isGreaterThanOrEqualTo(first.gateSkills().size());
            look(visitor);
            visitor.open("/today");
            assertThat(visitor.find("section[aria-labelledby=due]").count()).isZero();
            visitor.open("/course/" + second.id());
            assertThat(visitor.find("#missing").count()).as("the second stage").isZero();
            visitor.find("ol.lessons a").first().click();
            assertThat(visitor.find("article.lesson h1").count()).isEqualTo(1);
            assertThat(visitor.complaints()).isEmpty();
        }
    }

    @Test
    void thePagesOfPracticeAreFreeOfBarriersInBothThemes() {
        String exercise = content.exercises().ofSkill("weighing").get(0).id();
        for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (Visitor bastian = Visitor.onPhone(base, theme).signInAs("bastian")) {
                for (String path : List.of(
                        "/today",
                        "/practice",
                        "/practice/mixed",
                        "/practice/confidence",
                        "/practice/skills/weighing",
                        "/practice/skills/safe-handling",
                        "/practice/examples/" + exercise,
                        "/course")) {
                    bastian.open(path);
                    look(bastian);
                }
                bastian.open("/practice/mixed");
                new PracticeHand(bastian).press(theme == ColorScheme.LIGHT ? "Begin" : "Go on");
                look(bastian);
            }
            try (Visitor ines = Visitor.onPhone(base, theme).signInAs("ines")) {
                for (String path :
                        List.of("/people/" + DemoPeople.DARIUS + "/stages", "/cohorts/" + DemoPeople.FIRST_COHORT)) {
                    ines.open(path);
                    look(ines);
                }
            }
        }
    }

    private Visitor signedIn(TestPeople.Added added) {
        return Visitor.onPhone(base, ColorScheme.LIGHT).signIn(added.signInName(), TestPeople.PASSWORD);
    }

    private static void look(Visitor visitor) {
        String where = visitor.page().url();
        assertThat(visitor.barriers()).as("axe on %s", where).isEmpty();
        assertThat(visitor.scrollsSideways()).as("%s scrolls sideways", where).isFalse();
    }

    private static void readAll(Visitor visitor, int lessons) {
        visitor.open("/today");
        assertThat(visitor.find("#next").innerText()).isEqualTo("Start with a lesson");
        visitor.find("a:has-text('Read it')").first().click();
        for (int i = 0; i < lessons; i++) {
            new PracticeHand(visitor).press("Mark as read");
        }
    }

    private void practise(Visitor visitor, String skill, int draws) {
        PracticeHand hand = new PracticeHand(visitor);
        for (int i = 0; i < draws; i++) {
            visitor.open("/practice/skills/" + skill);
            hand.press("Practise");
            if (i == 0) {
                look(visitor);
            }
            hand.pastExample();
            draw(visitor);
        }
    }

    /** Answers whatever is asked of the draw, rightly. */
    private void draw(Visitor visitor) {
        PracticeHand hand = new PracticeHand(visitor);
        boolean more = true;
        while (more) {
            hand.estimate();
            int part = Integer.parseInt(visitor.find("input[name=part]").getAttribute("value")) - 1;
            String draw = visitor.draw();
            hand.fill(oracle.right(draw, part));
            hand.handIn();
            assertThat(visitor.find(".verdict-word").first().innerText())
                    .as("part %d of %s", part, draw)
                    .contains("Right");
            more = visitor.find("a:has-text('Next part')").count() > 0;
            if (more) {
                visitor.find("a:has-text('Next part')").click();
                visitor.page().waitForLoadState();
            }
        }
    }

    private int mixed(Visitor visitor) {
        PracticeHand hand = new PracticeHand(visitor);
        int items = 0;
        while (visitor.page().url().contains("/practice/draws/")) {
            assertThat(visitor.find("h1").innerText()).startsWith("Mixed practice, item ");
            draw(visitor);
            items++;
            hand.press(visitor.find("button:has-text('Next item')").count() > 0 ? "Next item" : "See how it went");
        }
        assertThat(visitor.find(".lede").innerText()).startsWith("Done for today");
        return items;
    }
}
