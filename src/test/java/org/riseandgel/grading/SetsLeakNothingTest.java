package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceNote;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * What the server sends to somebody who works a set has neither seeds, right answers nor reasons in it, in headers and
 * bodies as they come, before the set's policy tells them.
 */
@QuarkusTest
class SetsLeakNothingTest {
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

    @Test
    void beforeClosingNothingIsTold() {
        SetDrafter ines = new SetDrafter(SignedIn.as("instructor"), school.zone());
        UUID set = ines.draft("Nothing leaks", DemoPeople.FIRST_COHORT);
        content.exercises().all().stream().limit(12).forEach(one -> ines.change(set, Map.of("exercise", one.id())));
        ines.change(set, Map.of("feedback", Policy.CLOSING.name()));
        ines.times(set, clock.instant(), 2);
        ines.publish(set);
        SetWorker darius = new SetWorker(DemoPeople.DARIUS, works, views);
        UUID work = darius.begin(set);
        for (Work.Item item : darius.work(work).items()) {
            DrawnExercise drawn = views.drawn(item);
            String at = "/set-work/tries/" + work;
            String page = at + "/items/" + item.number();
            for (int part = 0; part < drawn.partCount(); part++) {
                Map<String, String> guess = Map.of("part", "" + (part + 1), "answer", "1 g");
                closed(darius.browser.get(page), drawn, "");
                closed(darius.browser.post(page + "/read", guess), drawn, "");
                closed(darius.browser.post(page, guess), drawn, "");
                closed(darius.answer(work, item.number(), part, "nothing"), drawn, "");
                String right = darius.right(work, item.number(), part);
                Answer kept = darius.answer(work, item.number(), part, right);
                assertThat(kept.status()).isEqualTo(303);
                closed(kept, drawn, right);
            }
            closed(darius.browser.get(at), drawn, "");
        }
        darius.handIn(work);
        for (Work.Item item : darius.work(work).items()) {
            assertThat(darius.browser
                            .get("/set-work/tries/" + work + "/items/" + item.number())
                            .page()
                            .select(".verdict, .working, .choice-notes"))
                    .as(item.toString())
                    .isEmpty();
        }
    }

    /** The search itself finds what it looks for: where results are told at once, the answer is there. */
    @Test
    void theSameSearchFindsTheAnswerOnceItIsTold() {
        SetDrafter ines = new SetDrafter(SignedIn.as("instructor"), school.zone());
        UUID set = ines.draft("It is told", DemoPeople.FIRST_COHORT);
        content.exercises().all().stream()
                .filter(one -> one instanceof NumericTemplate numeric
                        && numeric.parts().size() == 1)
                .limit(8)
                .forEach(one -> ines.change(set, Map.of("exercise", one.id())));
        ines.times(set, clock.instant(), 2);
        ines.publish(set);
        SetWorker darius = new SetWorker(DemoPeople.DARIUS, works, views);
        UUID work = darius.begin(set);
        List<String> found = new ArrayList<>();
        for (Work.Item item : darius.work(work).items()) {
            DrawnNumbers drawn = (DrawnNumbers) views.drawn(item);
            Answer told = darius.answer(work, item.number(), 0, darius.wrong(work, item.number(), 0))
                    .follow();
            found.addAll(found(spellings(drawn.part(0), drawn), told.body()));
        }
        assertThat(found).as("some of eight answers are no round numbers").isNotEmpty();
    }

    private static void closed(Answer answer, DrawnExercise drawn, String typed) {
        String text = (answer.headerText() + answer.body())
                .replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "")
                .replace("&#39;", "'")
                .replace("delay:400ms", "")
                // What a number looks like is said to everybody, whatever the answer.
                .replace("like 12.5", "")
                .replaceAll("(?s)<a class=\"wordmark\".*?</a>", "")
                .replaceAll("value=\"[A-Za-z0-9_-]{40,}\"", "")
                .replaceAll(
                        ":status=\\[[^]]*]|date=\\[[^]]*]|content-length=\\[[^]]*]|[0-9]+ [A-Z][a-z]+ [0-9]{4}, [0-9:]{5}",
                        "");
        String about = drawn + " of " + answer;
        assertThat(text).as(about).doesNotContain(Long.toString(drawn.seed()), Long.toUnsignedString(drawn.seed(), 16));
        if (drawn instanceof DrawnChoice choice) {
            assertThat(choice.notes(choice.right()))
                    .as(about)
                    .extracting(ChoiceNote::why)
                    .noneMatch(text::contains);
        } else if (typed.isEmpty() && !text.contains("You wrote")) {
            for (DrawnPart part : ((DrawnNumbers) drawn).parts()) {
                assertThat(found(spellings(part, (DrawnNumbers) drawn), text))
                        .as(about)
                        .isEmpty();
            }
        }
    }

    private static List<String> found(Set<String> spellings, String text) {
        return spellings.stream()
                .filter(spelling -> Pattern.compile("(?<![0-9.,])" + Pattern.quote(spelling) + "(?![.,]?[0-9])")
                        .matcher(text)
                        .find())
                .toList();
    }

    /** The right answer with three to eight figures, but not such as stand in the exercise's own words. */
    private static Set<String> spellings(DrawnPart part, DrawnNumbers drawn) {
        String given = drawn.template().file().text() + drawn.story(DecimalMark.POINT);
        Set<String> spellings = new LinkedHashSet<>();
        for (int figures = 3; figures <= 8; figures++) {
            String spelling =
                    NumberWriter.of(DecimalMark.POINT).figures(part.expected().toDouble(), figures);
            if (spelling.replaceAll("[^0-9]", "").replaceAll("^0+", "").length() >= 3 && !given.contains(spelling)) {
                spellings.add(spelling);
            }
        }
        return spellings;
    }
}
