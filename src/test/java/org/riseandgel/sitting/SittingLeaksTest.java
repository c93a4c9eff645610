package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.course.Check;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceNote;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.Verdict;

/** Nothing the server sends before a sitting is handed in tells an answer, a seed, or how an answer was judged. */
@QuarkusTest
class SittingLeaksTest {
    @Inject
    SittingStore store;

    @Inject
    KeptDraws draws;

    @Inject
    CourseContent content;

    @Test
    void nothingIsToldBeforeHandingIn() {
        List<Check> checks = content.current().checks();
        assertThat(checks).isNotEmpty();
        for (Check check : checks) {
            if (!check.isRecall()) {
                walk(check.id());
            }
        }
    }

    private void walk(String check) {
        Sitter sitter = Sitter.fresh(store, draws);
        UUID sitting = sitter.begin(check);
        List<Answer> seen = new ArrayList<>();
        for (StoredItem item : sitter.stored(sitting).items()) {
            seen.add(sitter.browser.get("/sittings/" + sitting + "/items/" + item.number()));
            seen.add(sitter.save(sitting, item.number(), "?"));
            Answer saved = sitter.save(sitting, item.number(), sitter.wrong(sitting, item.number()));
            assertThat(saved.status()).isEqualTo(303);
            seen.add(saved);
            seen.add(saved.follow());
        }
        for (String path :
                List.of("/checks", "/checks/" + check, "/sittings/" + sitting, "/sittings/" + sitting + "/hand-in")) {
            seen.add(sitter.browser.get(path));
        }
        StoredSitting stored = sitter.stored(sitting);
        String all = text(seen);
        assertThat(all)
                .doesNotContain(Long.toString(stored.seed()), Long.toUnsignedString(stored.seed(), 16), stored.pool());
        for (StoredItem item : stored.items()) {
            closed(item, draws.of(item), all);
        }
        sitter.handIn(sitting);
        open(stored, text(List.of(sitter.browser.get("/sittings/" + sitting))));
    }

    private static String text(List<Answer> answers) {
        StringBuilder text = new StringBuilder();
        for (Answer answer : answers) {
            text.append(answer.headerText()).append('\n').append(answer.body()).append('\n');
        }
        return text.toString().replace("&#39;", "'").replace("&quot;", "\"");
    }

    private static void closed(StoredItem item, DrawnExercise drawn, String all) {
        assertThat(all)
                .as(item.exercise())
                .doesNotContain(item.exercise(), item.version(), Long.toString(item.seed()))
                .doesNotContain(Long.toUnsignedString(item.seed(), 16));
        for (Verdict verdict : Verdict.values()) {
            if (verdict != Verdict.RIGHT) {
                assertThat(all).doesNotContain(verdict.title());
            }
        }
        if (drawn instanceof DrawnChoice choice) {
            assertThat(choice.notes(choice.right())).extracting(ChoiceNote::why).noneMatch(all::contains);
        } else {
            assertThat(found(((DrawnNumbers) drawn), all)).as(item.exercise()).isEmpty();
        }
    }

    /** The same search finds answers and reasons on the page of the result, or it would prove nothing. */
    private void open(StoredSitting sitting, String result) {
        for (StoredItem item : sitting.items()) {
            DrawnExercise drawn = draws.of(item);
            if (drawn instanceof DrawnChoice choice) {
                assertThat(choice.notes(choice.right()))
                        .extracting(ChoiceNote::why)
                        .allMatch(result::contains);
            } else {
                DrawnPart part = ((DrawnNumbers) drawn).part(0);
                assertThat(result).contains(part.part().unit().symbol());
            }
        }
    }

    /** The right number as people write it, unless it stands in the question or is too short to be told from chance. */
    private static Set<String> found(DrawnNumbers drawn, String all) {
        double expected = drawn.part(0).expected().toDouble();
        String given = drawn.story(DecimalMark.POINT) + drawn.prompt(0, DecimalMark.POINT);
        Set<String> found = new HashSet<>();
        for (DecimalMark mark : DecimalMark.values()) {
            for (int figures = 4; figures <= 8; figures++) {
                String spelled = NumberWriter.of(mark).figures(expected, figures);
                boolean telling = spelled.replaceAll("[^0-9]", "").length() >= 4 && !stands(spelled, given);
                if (telling && stands(spelled, all)) {
                    found.add(spelled);
                }
            }
        }
        return found;
    }

    private static boolean stands(String spelled, String text) {
        return Pattern.compile("(?<![0-9.,])" + Pattern.quote(spelled) + "(?![.,]?[0-9])")
                .matcher(text)
                .find();
    }
}
