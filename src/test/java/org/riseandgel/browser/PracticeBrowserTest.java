package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Oracle;

/** Practice as an apprentice meets it, and what the instructor then sees, in a real browser. */
@QuarkusTest
@NeedsBrowser
class PracticeBrowserTest {
    @TestHTTPResource
    String base;

    @Inject
    DataSource dataSource;

    private Oracle oracle;
    private Visitor visitor;
    private PracticeHand hand;

    @BeforeEach
    void open() {
        oracle = new Oracle(dataSource::getConnection);
        visitor = Visitor.at(base);
        hand = new PracticeHand(visitor);
    }

    @AfterEach
    void close() {
        assertThat(visitor.complaints()).as("errors in the browser").isEmpty();
        visitor.close();
    }

    @Test
    void aRightAnswerIsReadBackAndGradedWithItsWorking() {
        visitor.signInAs("anouk");
        startDraw("stick-marks-straight", 2);
        String draw = visitor.draw();
        String typed = oracle.right(draw, 0);
        type(typed);
        visitor.find("#echo strong").waitFor();
        handIn();
        assertThat(verdict()).contains("Right");
        assertThat(visitor.find(".working li").count())
                .as("steps of the working")
                .isPositive();
        assertThat(storedVerdicts(draw)).isEqualTo("RIGHT");
    }

    @Test
    void aSlipIsNamedWithItsLineAndTheRightValue() {
        visitor.signInAs("bastian");
        startDraw("stick-marks-straight", 2);
        Oracle.SlipTyped made = oracle.slip(visitor.draw(), 0);
        type(made.typed());
        visitor.find("#echo strong").waitFor();
        handIn();
        assertThat(verdict()).contains(made.slip().title());
        assertThat(storedVerdicts(visitor.draw())).isEqualTo("SLIP");
        picture();
    }

    @Test
    void anAmbiguousNumberIsAskedAgainAndCostsNothing() {
        visitor.signInAs("celeste");
        startDraw("stick-marks-straight", 2);
        String draw = visitor.draw();
        type("1,234 mm");
        visitor.find("#echo:has-text(\"1234\")").waitFor();
        handIn();
        assertThat(visitor.page().title()).startsWith("Error:");
        assertThat(visitor.find(".error-summary a").innerText()).contains("1,234");
        assertThat(visitor.find("#answer").inputValue()).isEqualTo("1,234 mm");
        assertThat(storedVerdicts(draw)).isEmpty();
        visitor.find(".error-summary a").click();
        assertThat((String) visitor.page().evaluate("document.activeElement.id"))
                .isEqualTo("answer");
    }

    @Test
    void aDoubleClickAndTheBackButtonLeaveOneVerdict() {
        visitor.signInAs("darius");
        startDraw("stick-marks-straight", 2);
        String draw = visitor.draw();
        type(oracle.wrong(draw, 0));
        visitor.find("#echo strong").waitFor();
        visitor.find("form.form button.button").first().dblclick();
        visitor.find(".verdict").waitFor();
        String first = storedVerdicts(draw);
        visitor.page().goBack();
        visitor.page().waitForLoadState();
        if (visitor.find("#answer").count() > 0) {
            type(oracle.right(draw, 0));
            visitor.find("form.form button.button").first().click();
            visitor.page().waitForLoadState();
        }
        assertThat(storedVerdicts(draw)).isEqualTo(first).isEqualTo("WRONG");
    }

    @Test
    void practiceWorksWithoutScript() {
        try (Visitor plain = Visitor.withoutScript(base).signInAs("esme")) {
            plain.open("/practice");
            PracticeHand plainHand = new PracticeHand(plain);
            plain.find("form[action='/practice/expansion/draw'] button").first().click();
            plainHand.pastExample();
            plainHand.estimate();
            String draw = plain.draw();
            String typed = oracle.right(draw, 0);
            plainHand.fill(typed);
            plain.find("form.form button.button").first().click();
            assertThat(plain.find("#echo").innerText()).contains("We read");
            assertThat(storedVerdicts(draw))
                    .as("nothing counts before it was read back")
                    .isEmpty();
            plain.find("button:has-text('Hand in this answer')").click();
            assertThat(plain.find(".verdict-word").innerText()).contains("Right");
            assertThat(storedVerdicts(draw)).startsWith("RIGHT");
        }
    }

    @Test
    void theInstructorSeesWhatWasTypedReadAndMeant() {
        visitor.signInAs("esme");
        startDraw("stick-marks-straight", 2);
        String typed = oracle.wrong(visitor.draw(), 0);
        type(typed);
        visitor.find("#echo strong").waitFor();
        handIn();
        assertThat(verdict()).isNotBlank();
        try (Visitor instructor = Visitor.at(base).signInAs("ines")) {
            instructor.open("/cohorts");
            Locator cohorts = instructor.find("main a[href^='/cohorts/']");
            int count = cohorts.count();
            for (int i = 0; i < count; i++) {
                instructor.open("/cohorts");
                instructor.find("main a[href^='/cohorts/']").nth(i).click();
                if (instructor.find("a:has-text('Esme Tarrant')").count() > 0) {
                    instructor.find("a:has-text('Esme Tarrant')").first().click();
                    instructor.find("a:has-text('All answers')").click();
                    break;
                }
            }
            assertThat(instructor.find("main").innerText())
                    .contains("Esme Tarrant")
                    .contains(typed);
        }
    }

    /** The picture in the README is made by this test: -Dpicture.file=docs/practice.png */
    private void picture() {
        String file = System.getProperty("picture.file");
        if (file != null) {
            visitor.page().setViewportSize(1180, 1180);
            visitor.page().screenshot(new Page.ScreenshotOptions().setPath(Path.of(file)));
        }
    }

    /** Comes to a draw that asks for a number; what asks for a choice on the way is answered. */
    private void startDraw(String skill, int level) {
        press(skill, level);
        while (visitor.find("input[type=text]#answer").count() == 0) {
            hand.fill(oracle.right(visitor.draw(), 0));
            hand.handIn();
            press(skill, level);
        }
    }

    private void press(String skill, int level) {
        visitor.open("/practice");
        visitor.page()
                .evaluate(
                        "([skill, level]) => { const f ="
                                + " document.querySelector(`form[action='/practice/${skill}/draw']`); const i ="
                                + " document.createElement('input'); i.type = 'hidden'; i.name = 'level'; i.value = level;"
                                + " f.querySelectorAll('[name=level]').forEach(e => e.remove()); f.append(i); f.submit();"
                                + " }",
                        new Object[] {skill, level});
        visitor.page().waitForURL("**/practice/**/*");
        hand.pastExample();
        hand.estimate();
    }

    private void type(String answer) {
        visitor.find("#answer").click();
        visitor.find("#answer").fill("");
        visitor.find("#answer").pressSequentially(answer);
        visitor.find("input[name=sure][value=fairly]").check();
    }

    private void handIn() {
        visitor.find("form.form button.button").first().click();
        visitor.page().waitForLoadState();
    }

    private String verdict() {
        visitor.find(".verdict-word").first().waitFor();
        return visitor.find(".verdict-word").first().innerText();
    }

    private String storedVerdicts(String draw) {
        String sql = "SELECT coalesce(string_agg(verdict, ',' ORDER BY part), '') FROM answer WHERE draw_id = ?::uuid";
        try (Connection connection = dataSource.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, draw);
            ResultSet row = select.executeQuery();
            row.next();
            return row.getString(1);
        } catch (java.sql.SQLException e) {
            throw new AssertionError(e);
        }
    }
}
