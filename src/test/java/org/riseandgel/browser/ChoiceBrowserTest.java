package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Oracle;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;

/** Exercises without numbers on a phone, in both themes, with the keyboard alone, and without a script. */
@QuarkusTest
@NeedsBrowser
class ChoiceBrowserTest {
    private static final String ORDER = "process-order-gel-to-oven";
    private static final String PICTURES = System.getProperty("picture.folder", "");

    @TestHTTPResource
    String base;

    @Inject
    DataSource dataSource;

    @Inject
    CourseContent content;

    @ParameterizedTest
    @ValueSource(
            strings = {"process-order-test-pile", "fault-finding-coarse-cells", ORDER, "fault-finding-four-pieces"})
    void isReadAndAnsweredOnAPhone(String exercise) throws SQLException {
        Oracle oracle = new Oracle(dataSource::getConnection);
        for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            UUID draw = draw(exercise, 41 + theme.ordinal());
            try (Visitor visitor = Visitor.onPhone(base, theme).signInAs("fintan")) {
                visitor.open("/practice/draws/" + draw);
                look(visitor, exercise + "-" + theme);
                new PracticeHand(visitor)
                        .fill(theme == ColorScheme.LIGHT ? oracle.right("" + draw, 0) : oracle.wrong("" + draw, 0));
                visitor.find("form.form button[type=submit]").first().click();
                visitor.find(".verdict").waitFor();
                assertThat(visitor.find(".verdict-word").innerText())
                        .startsWith(theme == ColorScheme.LIGHT ? "Right" : "Not right");
                look(visitor, exercise + "-verdict-" + theme);
                assertThat(visitor.complaints()).isEmpty();
            }
        }
    }

    @Test
    void theKeyboardAloneIsEnough() throws SQLException {
        UUID draw = draw(ORDER, 51);
        String right = new Oracle(dataSource::getConnection).right("" + draw, 0);
        try (Visitor visitor = Visitor.at(base).signInAs("fintan")) {
            visitor.open("/practice/draws/" + draw);
            visitor.find("#answer").focus();
            for (String number : right.split(" ")) {
                visitor.page().keyboard().press(number);
                visitor.page().keyboard().press("Tab");
            }
            visitor.page().keyboard().press("Space");
            visitor.page().keyboard().press("Enter");
            visitor.find(".verdict.is-right").waitFor();
        }
    }

    @Test
    void noScriptIsNeededAndWhatIsIncompleteIsKept() throws SQLException {
        UUID draw = draw(ORDER, 61);
        try (Visitor visitor = Visitor.withoutScript(base).signInAs("fintan")) {
            visitor.open("/practice/draws/" + draw);
            visitor.find("#answer").selectOption("3");
            visitor.find("input[name=sure][value=fairly]").check();
            visitor.find("form.form button[type=submit]").first().click();
            assertThat(visitor.find(".error-summary a").innerText()).startsWith("Give step b a number");
            assertThat(visitor.find("#answer").inputValue()).isEqualTo("3");
        }
    }

    private static void look(Visitor visitor, String name) {
        assertThat(visitor.barriers()).as(name).isEmpty();
        assertThat(visitor.scrollsSideways()).as("%s scrolls sideways", name).isFalse();
        assertThat(
                        (List<?>)
                                visitor.page()
                                        .evaluate(
                                                """
                                () => [...document.querySelectorAll('main button, main select, main .choice, main summary')]
                                  .filter(e => e.offsetParent !== null)
                                  .map(e => [e.outerHTML.slice(0, 80), e.getBoundingClientRect().height])
                                  .filter(([e, height]) => height < 43.5)"""))
                .as("small targets of %s", name)
                .isEmpty();
        if (!PICTURES.isEmpty()) {
            visitor.page()
                    .screenshot(new com.microsoft.playwright.Page.ScreenshotOptions()
                            .setFullPage(true)
                            .setPath(Path.of(PICTURES, name + ".png")));
        }
    }

    /** A draw of one exercise, as if chance had chosen it. */
    private UUID draw(String exercise, long seed) throws SQLException {
        ExerciseTemplate template = content.exercises().find(exercise).orElseThrow();
        long good = content.exercises().drawer().draw(template, seed).seed();
        UUID draw = UUID.randomUUID();
        try (Connection connection = dataSource.getConnection()) {
            run(
                    connection,
                    "UPDATE draw SET finished_at = now() WHERE finished_at IS NULL AND person_id = ?",
                    DemoPeople.FINTAN);
            run(
                    connection,
                    "INSERT INTO exercise_version (exercise_id, version, source_text, first_used)"
                            + " VALUES (?, ?, ?, now()) ON CONFLICT DO NOTHING",
                    template.id(),
                    template.version(),
                    template.file().text());
            run(
                    connection,
                    "INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at)"
                            + " VALUES (?, ?, ?, ?, ?, ?, ?, now())",
                    draw,
                    DemoPeople.FINTAN,
                    template.id(),
                    template.version(),
                    template.skill(),
                    template.level(),
                    good);
        }
        return draw;
    }

    private static void run(Connection connection, String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.executeUpdate();
        }
    }
}
