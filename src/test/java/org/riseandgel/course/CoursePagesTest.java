package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;

/** The pages of the course with the real lessons, over HTTP. */
@QuarkusTest
class CoursePagesTest {
    private static final String FIRST = "/course/04-whipping/01-narrow-containers";
    private static final String SECOND = "/course/04-whipping/02-expansion-and-density";

    @Inject
    CourseContent content;

    @ParameterizedTest
    @ValueSource(strings = {"apprentice", "instructor", "safety-lead", "office"})
    void everyRoleReadsTheCourse(String role) {
        Browserless person = SignedIn.as(role);
        Document course = person.get("/course").page();
        assertThat(course.select("li.stage")).hasSize(9);
        assertThat(course.select("li.stage.unwritten"))
                .allSatisfy(stage -> assertThat(stage.text()).contains("Not written yet."));
        assertThat(course.select("li.stage:not(.unwritten)").eachAttr("id"))
                .isEqualTo(content.current().course().stages().stream()
                        .filter(stage -> !stage.lessons().isEmpty())
                        .map(Stage::id)
                        .toList())
                .contains("04-whipping");
        assertThat(person.get(FIRST).status()).isEqualTo(200);
    }

    @Test
    void whoIsNotSignedInIsAskedToSignIn() {
        assertThat(Browserless.anonymous().get("/course").status()).isEqualTo(303);
        assertThat(Browserless.anonymous().get(FIRST).location()).startsWith("/sign-in?next=");
    }

    @Test
    void everyLessonOpensAndIsWhole() {
        Browserless person = SignedIn.as("apprentice");
        for (Lesson lesson : content.current().lessons().values()) {
            Answer answer = person.get(lesson.key().address());
            assertThat(answer.status()).as(lesson.key().id()).isEqualTo(200);
            Document page = answer.page();
            assertThat(page.select("h1").eachText()).containsExactly(lesson.title());
            assertThat(page.select("figure svg[role=img]")).isNotEmpty();
            assertThat(page.select("section.worked ol.working")).isNotEmpty();
            assertThat(page.select(".objectives li"))
                    .hasSize(lesson.objectives().size());
            assertThat(page.select(".sources li").eachText()).isEqualTo(lesson.sources());
            assertThat(page.select(".self-check fieldset"))
                    .hasSize(lesson.selfCheck().size());
            assertThat(page.select("[style], style, script:not([src])")).isEmpty();
            assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
            assertThat(page.select("a[href^=#]").eachAttr("href"))
                    .allSatisfy(anchor -> assertThat(page.getElementById(anchor.substring(1)))
                            .as(anchor)
                            .isNotNull());
        }
    }

    @Test
    void theAnswersAreNotOnTheLessonPage() {
        String body = SignedIn.as("apprentice")
                .get(FIRST)
                .page()
                .select(".self-check")
                .html();
        Lesson lesson = content.lesson("04-whipping", "01-narrow-containers").orElseThrow();
        assertThat(lesson.selfCheck().stream().flatMap(question -> question.options().stream()))
                .allSatisfy(option -> assertThat(body).doesNotContain(option.why()));
    }

    @Test
    void anUnknownLessonIsNotFound() {
        Browserless person = SignedIn.as("apprentice");
        assertThat(person.get("/course/04-whipping/99-nothing").status()).isEqualTo(404);
        assertThat(person.get("/course/05-gelling/01-narrow-containers").status())
                .isEqualTo(404);
        assertThat(person.post("/course/04-whipping/99-nothing/self-check").status())
                .isEqualTo(404);
        assertThat(person.post("/course/04-whipping/99-nothing/read").status()).isEqualTo(404);
        assertThat(person.post(FIRST + "/recall").status()).isEqualTo(404);
        assertThat(person.post(FIRST + "/anything").status()).isEqualTo(404);
    }

    @Test
    void rightAnswersAreToldInWords() {
        Document page = answered(true).page();
        assertThat(page.select(".verdict.is-right")).hasSameSizeAs(questions());
        assertThat(page.select(".verdict-word").eachText()).containsOnly("Right");
        assertThat(page.select(".verdict-word svg use").eachAttr("href")).containsOnly("/img/icons.svg#right");
        assertThat(page.select(".lede").text())
                .isEqualTo("%d of %d right."
                        .formatted(questions().size(), questions().size()));
    }

    @Test
    void wrongAnswersAreExplainedWithTheRightOne() {
        Answer answer = answered(false);
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.page().title()).doesNotStartWith("Error");
        List<Element> verdicts = answer.page().select(".verdict.is-wrong");
        assertThat(verdicts).hasSameSizeAs(questions());
        for (int i = 0; i < verdicts.size(); i++) {
            Question question = questions().get(i);
            Question.Option chosen = wrong(question);
            assertThat(verdicts.get(i).text())
                    .contains(
                            "Not right",
                            chosen.text(),
                            chosen.why(),
                            question.right().text(),
                            question.right().why());
        }
    }

    @Test
    void aQuestionWithoutAnswerIsAskedAgainAndTheRestIsKept() {
        Answer answer = SignedIn.as("apprentice").post(FIRST + "/self-check", Map.of("self-check-1", "2"));
        assertThat(answer.status()).isEqualTo(422);
        Document page = answer.page();
        assertThat(page.title()).startsWith("Error: ");
        assertThat(page.select("input#self-check-1-2[checked]")).hasSize(1);
        assertThat(page.select("input[checked]")).hasSize(1);
        assertThat(page.select(".error-summary a").eachAttr("href"))
                .hasSize(questions().size() - 1)
                .contains("#self-check-2")
                .allSatisfy(anchor -> assertThat(
                                page.getElementById(anchor.substring(1)).tagName())
                        .isEqualTo("input"));
        assertThat(page.select("fieldset.has-error .field-error").eachText())
                .contains("Question 2 has no answer yet. Choose one of its answers.");
        for (Element fieldset : page.select("fieldset.has-error")) {
            assertThat(page.getElementById(fieldset.attr("aria-describedby"))).isNotNull();
        }
    }

    @Test
    void anAnswerThatWasNotOfferedIsNoAnswer() {
        Map<String, String> form = new LinkedHashMap<>(form(true));
        form.put("self-check-1", "5");
        assertThat(SignedIn.as("apprentice").post(FIRST + "/self-check", form).status())
                .isEqualTo(422);
    }

    @Test
    void readingIsNotedOnceAndLeadsOn() {
        Browserless reader = SignedIn.as("apprentice");
        Answer marked = reader.post(FIRST + "/read");
        assertThat(marked.status()).isEqualTo(303);
        assertThat(marked.location()).isEqualTo(SECOND);
        assertThat(reader.post(FIRST + "/read").status()).isEqualTo(303);
        assertThat(reader.get(FIRST).page().text()).contains("You have read this.");
        assertThat(reader.get(FIRST).page().select("form[action$=/read]")).isEmpty();
        Element first = reader.get("/course").page().selectFirst(".lessons li");
        assertThat(first.select(".state").text()).isEqualTo("read");
    }

    @Test
    void onlyApprenticesMarkLessonsAsRead() {
        Browserless instructor = SignedIn.as("instructor");
        assertThat(instructor.post(FIRST + "/read").status()).isEqualTo(404);
        assertThat(instructor.get(FIRST).page().select("form[action$=/read]")).isEmpty();
    }

    @Test
    void formsWithoutTokenAreRefused() {
        Browserless apprentice = SignedIn.as("apprentice");
        assertThat(apprentice
                        .postWithoutToken(SECOND + "/read", Map.of("done", "yes"))
                        .status())
                .isEqualTo(400);
        assertThat(apprentice
                        .postWithoutToken(FIRST + "/self-check", form(true))
                        .status())
                .isEqualTo(400);
    }

    @Test
    void problemsAreForThoseWhoCanMendThem() {
        assertThat(SignedIn.as("instructor").get("/course/problems").page().text())
                .contains("No problems.");
        assertThat(SignedIn.as("office").get("/course/problems").status()).isEqualTo(200);
        assertThat(SignedIn.as("apprentice").get("/course/problems").status()).isEqualTo(404);
        assertThat(SignedIn.as("safety-lead").get("/course/problems").status()).isEqualTo(404);
    }

    private Answer answered(boolean right) {
        return SignedIn.as("apprentice").post(FIRST + "/self-check", form(right));
    }

    private Map<String, String> form(boolean right) {
        Map<String, String> form = new LinkedHashMap<>();
        for (Question question : questions()) {
            Question.Option option = right ? question.right() : wrong(question);
            form.put(
                    "self-check-" + (form.size() + 1),
                    String.valueOf(question.options().indexOf(option) + 1));
        }
        return form;
    }

    private static Question.Option wrong(Question question) {
        return question.options().stream()
                .filter(option -> !option.right())
                .findFirst()
                .orElseThrow();
    }

    private List<Question> questions() {
        return content.lesson("04-whipping", "01-narrow-containers")
                .orElseThrow()
                .selfCheck();
    }
}
