package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceNote;
import org.riseandgel.exercise.ChoiceTemplate;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.WrongAnswer;

/** No response gives away, before an answer is stored, what the answer is or how it could be worked back. */
@QuarkusTest
class NothingLeaksTest {
    private static final int SEEDS = 1;

    /**
     * Numbers that stand on these pages whatever is asked: an example answer, minutes until the sign-in ends, a
     * delay; and the status among the headers.
     */
    private static final String OF_EVERY_PAGE = " 12 30 400 200 ";

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    Learner darius;

    @BeforeEach
    void signIn() {
        darius = new Learner(DemoPeople.DARIUS, store, drawings);
    }

    @Test
    void noResponseTellsTheAnswerBeforeItIsStored() {
        int parts = 0;
        int choices = 0;
        for (ExerciseTemplate template : content.exercises().all()) {
            for (int seed = 0; seed < SEEDS; seed++) {
                if (template instanceof ChoiceTemplate) {
                    walkThroughChoice(template, seed);
                    choices++;
                } else {
                    parts += walkThrough(template, seed);
                }
            }
        }
        assertThat(choices).isGreaterThanOrEqualTo(4 * SEEDS);
        assertThat(parts + choices)
                .isGreaterThan(SEEDS * content.exercises().all().size());
    }

    /** The check itself finds what it looks for: once the answer is stored, the page says it. */
    @Test
    void theSameSearchFindsTheAnswerOnceItIsStored() {
        ExerciseTemplate beaker =
                content.exercises().find("stick-marks-straight-beaker").orElseThrow();
        UUID draw = darius.drawOf(beaker, 0x9E37_79B9_7F4A_7C15L);
        DrawnNumbers drawn = (DrawnNumbers) darius.drawn(draw);
        Browserless.Answer verdict = darius.answer(draw, 0, "1 mm").follow();
        assertThat(found(spellings(drawn.part(0), drawn, 2), cleaned(verdict, draw)))
                .isNotEmpty();
    }

    private int walkThrough(ExerciseTemplate template, long seed) {
        UUID draw = darius.drawOf(template, 0x9E37_79B9_7F4A_7C15L * (seed + 1));
        DrawnNumbers drawn = (DrawnNumbers) darius.drawn(draw);
        String address = "/practice/draws/" + draw;
        closed(darius.browser.get("/practice"), draw, drawn, 0, false);
        closed(darius.browser.get("/today"), draw, drawn, 0, false);
        for (int part = 0; part < drawn.parts().size(); part++) {
            Map<String, String> guess = Map.of("part", "" + (part + 1), "answer", darius.inUnit(draw, Rational.of(1)));
            closed(darius.page(draw), draw, drawn, part, false);
            closed(darius.browser.post(address + "/read", guess), draw, drawn, part, false);
            closed(darius.browser.post(address + "/answer", guess), draw, drawn, part, false);
            closed(darius.answer(draw, part, "no number"), draw, drawn, part, false);
            closed(darius.browser.get(address + "?part=" + (part + 1)), draw, drawn, part, false);
            Browserless.Answer stored = darius.answer(draw, part, darius.right(draw));
            closed(stored, draw, drawn, part + 1, true);
            closed(stored.follow(), draw, drawn, part + 1, true);
        }
        return drawn.parts().size();
    }

    /** Which option is right stands nowhere as such; what would tell it are the reasons, and those come later. */
    private void walkThroughChoice(ExerciseTemplate template, long seed) {
        UUID draw = darius.drawOf(template, 0x9E37_79B9_7F4A_7C15L * (seed + 1));
        DrawnChoice drawn = (DrawnChoice) darius.drawn(draw);
        String address = "/practice/draws/" + draw;
        Map<String, String> guess = Map.of("part", "1", "answer", drawn.right());
        closed(darius.browser.get("/practice"), draw, drawn);
        closed(darius.browser.get("/today"), draw, drawn);
        closed(darius.page(draw), draw, drawn);
        closed(darius.browser.post(address + "/read", guess), draw, drawn);
        closed(darius.answer(draw, 0, "?"), draw, drawn);
        closed(darius.browser.get(address + "?part=1"), draw, drawn);
        Browserless.Answer stored = darius.answer(draw, 0, drawn.right());
        closed(stored, draw, drawn);
        String verdict = cleaned(stored.follow(), draw);
        assertThat(verdict).doesNotContain(Long.toString(drawn.seed()));
        assertThat(drawn.notes(drawn.right())).allMatch(note -> verdict.contains(note.why()));
    }

    private static void closed(Browserless.Answer answer, UUID draw, DrawnChoice drawn) {
        String text = cleaned(answer, draw);
        long seed = drawn.seed();
        String about = drawn + " of " + answer;
        assertThat(text)
                .as(about)
                .doesNotContain(Long.toString(seed), Long.toUnsignedString(seed), Long.toUnsignedString(seed, 16));
        assertThat(answer.page().select("[name=answer][checked], [name=answer] [selected]"))
                .as(about)
                .isEmpty();
        assertThat(drawn.notes(drawn.right()))
                .as(about)
                .extracting(ChoiceNote::why)
                .noneMatch(text::contains);
        assertThat(drawn.slip(drawn.wrong()).filter(text::contains)).as(about).isEmpty();
    }

    /** What is still closed from this part on is not in the answer of the server. */
    private static void closed(
            Browserless.Answer answer, UUID draw, DrawnNumbers drawn, int from, boolean verdictShown) {
        String text = cleaned(answer, draw);
        String about = drawn + " part " + from + " of " + answer;
        long seed = drawn.seed();
        assertThat(text)
                .as(about)
                .doesNotContain(Long.toString(seed), Long.toUnsignedString(seed), Long.toUnsignedString(seed, 16));
        // The working of an earlier part is full of numbers; two figures in common say nothing there.
        int fewest = from == 0 ? 2 : 3;
        // 389 g of water are 389 mL: what was the answer to an earlier part may be read.
        Set<String> open = new LinkedHashSet<>();
        drawn.parts().subList(0, from).forEach(part -> open.addAll(spellings(part, drawn, fewest)));
        for (int part = from; part < drawn.parts().size(); part++) {
            Set<String> closed = spellings(drawn.part(part), drawn, fewest);
            closed.removeAll(open);
            assertThat(found(closed, text)).as(about).isEmpty();
            if (part > from || verdictShown) {
                assertThat(text).as(about).doesNotContain(drawn.prompt(part, DecimalMark.POINT));
            }
            if (!verdictShown && from == 0) {
                noSlip(text, drawn, drawn.part(part));
            }
        }
    }

    private static void noSlip(String text, DrawnNumbers drawn, DrawnPart part) {
        for (WrongAnswer wrong : part.wrongAnswers()) {
            assertThat(text).doesNotContain(wrong.slip().title(), wrong.slip().id());
            if (!drawn.template().file().text().contains(wrong.line())) {
                assertThat(text).doesNotContain(wrong.line());
            }
        }
    }

    /**
     * The answer of the server without what could look like anything: ids, tokens, dates, the drawn mark of the
     * masthead, and counts of other pages.
     */
    private static String cleaned(Browserless.Answer answer, UUID draw) {
        return (answer.headerText() + "\n" + answer.body())
                .replace(draw.toString(), "")
                .replaceAll("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f-]{22}", "")
                .replace("&#39;", "'")
                .replace("&quot;", "\"")
                .replaceAll("(?s)<a class=\"wordmark\".*?</a>", "")
                .replaceAll(
                        "[0-9]+ minutes|[0-9]+ of [0-9]+|[0-9]+ days?|[0-9]+ [A-Z][a-z]+ [0-9]{4}(, [0-9:]{5})?", "")
                .replaceAll("value=\"[A-Za-z0-9_-]{40,}\"", "")
                .replaceAll(":status=\\[[^]]*]|date=\\[[^]]*]|last-modified=\\[[^]]*]|content-length=\\[[^]]*]", "");
    }

    private static List<String> found(Set<String> spellings, String text) {
        return spellings.stream()
                .filter(text::contains)
                .filter(spelling -> Pattern.compile("(?<![0-9.,])" + Pattern.quote(spelling) + "(?![.,]?[0-9])")
                        .matcher(text)
                        .find())
                .toList();
    }

    /** The right answer in many ways to write it, but not such as stand in the exercise's own words or are one digit. */
    private static Set<String> spellings(DrawnPart part, DrawnNumbers drawn, int fewest) {
        Set<String> spellings = new LinkedHashSet<>();
        Unit asked = part.part().unit();
        Rational base = asked.toBase(part.expected());
        for (Unit unit : Unit.values()) {
            if (unit.kind() == asked.kind() && (unit == asked || unit.factor().compareTo(Rational.of(1, 100)) > 0)) {
                add(spellings, unit.fromBase(base), unit == asked ? fewest : 4);
            }
        }
        String given = OF_EVERY_PAGE
                + drawn.template().file().text()
                + drawn.story(DecimalMark.POINT)
                + drawn.prompt(0, DecimalMark.POINT);
        return spellings.stream()
                .filter(spelling ->
                        spelling.replaceAll("[^0-9]", "").replaceAll("^0+", "").length() >= fewest)
                .filter(spelling -> found(Set.of(spelling), given).isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static void add(Set<String> spellings, Rational value, int fewestFigures) {
        for (DecimalMark mark : DecimalMark.values()) {
            NumberWriter writer = NumberWriter.of(mark);
            for (int figures = fewestFigures; figures <= 8; figures++) {
                spellings.add(writer.figures(value.toDouble(), figures));
            }
        }
        spellings.add(Double.toString(value.toDouble()));
    }
}
