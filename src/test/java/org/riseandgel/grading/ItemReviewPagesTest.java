package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.StringReader;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceTemplate;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/**
 * The published teaching table of {@link ItemReviewTest} once more, worked through by ten people: what they hand in is
 * stored and judged, and page and table say what is printed there.
 */
@QuarkusTest
class ItemReviewPagesTest {
    private static final List<String> TEACHING = List.of(
            "1111110110",
            "1011011101",
            "1111011001",
            "0010001000",
            "0000010010",
            "1110111111",
            "1101110111",
            "1111111101",
            "0101111101",
            "1101101110");
    private static final double[] FACILITY = {.7, .7, .6, .7, .6, .8, .7, .7, .5, .6};
    private static final double[] ITEM_REST = {
        0.705889, 0.705889, 0, 0.473589, 0.583874, 0.286147, -0.027445, 0.705889, -0.123613, 0.475867
    };

    @Inject
    SetStore sets;

    @Inject
    WorkStore works;

    @Inject
    WorkDesk desk;

    @Inject
    PartViews views;

    @Inject
    PublishCheck check;

    @Inject
    CourseContent content;

    @Inject
    SchoolSettings school;

    @Inject
    Clock clock;

    @Inject
    Sql sql;

    @Test
    void tenPeopleHandInWhatThePublishedTableSays() throws IOException {
        SetDrafter ines = new SetDrafter(SignedIn.as("instructor"), school.zone());
        UUID cohort = cohort();
        UUID set = draft(cohort, exercises(), clock.instant());
        assertThat(ines.publish(set).location()).isEqualTo("/graded-sets/" + set);
        List<UUID> handedIn = new ArrayList<>();
        for (String row : TEACHING) {
            if (handedIn.size() == 9) {
                assertThat(row(ines, set, 0).get("People")).isEqualTo("9");
                assertThat(row(ines, set, 0).get("Facility")).isEmpty();
            }
            handedIn.add(handIn(set, learner(cohort), row));
        }

        for (int item = 0; item < FACILITY.length; item++) {
            CSVRecord row = row(ines, set, item);
            assertThat(row.get("People")).isEqualTo("10");
            assertThat(number(row, "Facility")).as("item %d", item).isCloseTo(FACILITY[item], within(1e-9));
            assertThat(number(row, "Discrimination")).as("item %d", item).isCloseTo(ITEM_REST[item], within(5.1e-5));
        }
        CSVRecord half = row(ines, set, 8);
        assertThat(number(half, "Facility 95 % from")).isCloseTo(0.236593, within(5.1e-5));
        assertThat(number(half, "Facility 95 % to")).isCloseTo(0.763407, within(5.1e-5));
        assertThat(half.get("Wrong answers")).isEqualTo("5");
        Document page = ines.browser.get("/graded-sets/" + set + "/items").page();
        assertThat(page.select("tbody tr").get(8).text()).contains("50 % (95 %: 24 to 76 %)", "−0.12");

        String mark = "/graded-sets/" + set + "/works/" + handedIn.get(0) + "/items/1/parts/1";
        assertThat(SetDrafter.correct(ines.browser, mark, "50", "Copied").status())
                .isEqualTo(303);
        CSVRecord markedDown = row(ines, set, 0);
        assertThat(number(markedDown, "Facility")).isCloseTo(0.6, within(1e-9));
        assertThat(markedDown.get("Wrong answers")).isEqualTo("4");
        assertThat(markedDown.get("Slips"))
                .as("who is marked down made no slip")
                .doesNotContainIgnoringCase("right");
    }

    @Test
    void aTimeThatTheClocksSkipIsFoundAtPublishingToo() {
        Instant before = Instant.parse("2027-01-01T00:00:00Z");
        GradedSet draft = set(
                DemoPeople.FIRST_COHORT,
                LocalDateTime.parse("2027-03-28T02:30"),
                LocalDateTime.parse("2027-03-29T02:30"),
                List.of());
        assertThat(check.problems(draft, ZoneId.of("Europe/Berlin"), before))
                .anyMatch(problem -> problem.field().equals("opens-time")
                        && problem.message().contains("does not exist"))
                .noneMatch(problem -> problem.field().equals("closes-time"));
        assertThat(check.problems(draft, ZoneId.of("UTC"), before))
                .noneMatch(problem -> problem.field().endsWith("-time"));
    }

    /** Ten exercises of one part: half of them numbers, half choices. */
    private List<ExerciseTemplate> exercises() {
        Stream<ExerciseTemplate> numbers = content.exercises().all().stream()
                .filter(NumericTemplate.class::isInstance)
                .filter(one ->
                        one.level() == 2 && ((NumericTemplate) one).parts().size() == 1)
                .limit(5);
        Stream<ExerciseTemplate> choices = content.exercises().all().stream()
                .filter(ChoiceTemplate.class::isInstance)
                .limit(5);
        return Stream.concat(numbers, choices).toList();
    }

    private UUID draft(UUID cohort, List<ExerciseTemplate> exercises, Instant now) {
        List<Line> lines = new ArrayList<>();
        for (ExerciseTemplate one : exercises) {
            lines.add(Line.exercise(UUID.randomUUID(), lines.size() + 1, one.id(), 1, ""));
        }
        LocalDateTime local = LocalDateTime.ofInstant(now.truncatedTo(ChronoUnit.HOURS), school.zone());
        GradedSet draft = set(cohort, local.minusDays(2), local.plusDays(2), lines);
        sets.add(draft, DemoPeople.INSTRUCTOR, now.truncatedTo(ChronoUnit.MICROS));
        return draft.id();
    }

    private static GradedSet set(UUID cohort, LocalDateTime opens, LocalDateTime closes, List<Line> lines) {
        return new GradedSet(
                UUID.randomUUID(),
                cohort,
                "Of a teaching table",
                "",
                SetState.DRAFT,
                1,
                1,
                Policy.EACH,
                opens,
                closes,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                lines);
    }

    private UUID cohort() {
        UUID cohort = UUID.randomUUID();
        sql.change("INSERT INTO cohort (id, name, created_at) VALUES (?, ?, now())", cohort, "Table " + cohort);
        join(cohort, DemoPeople.INSTRUCTOR, "teaches");
        return cohort;
    }

    private UUID learner(UUID cohort) {
        UUID person = UUID.randomUUID();
        sql.change(
                """
                INSERT INTO person (id, sign_in_name, display_name, password_hash, created_at)
                VALUES (?, ?, 'Of the Table', 'none', now())""",
                person,
                "t" + person.toString().substring(0, 8));
        join(cohort, person, "learns");
        return person;
    }

    private void join(UUID cohort, UUID person, String part) {
        sql.change(
                "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, ?, now())",
                UUID.randomUUID(),
                cohort,
                person,
                part);
    }

    private UUID handIn(UUID set, UUID person, String row) {
        GradedSet out = sets.find(set).orElseThrow();
        UUID work = desk.begin(person, out).orElseThrow();
        for (Work.Item item : works.find(work).orElseThrow().items()) {
            DrawnExercise drawn = views.drawn(item);
            String typed = row.charAt(item.number() - 1) == '1' ? SetWorker.right(drawn, 0) : SetWorker.wrong(drawn, 0);
            assertThat(desk.answer(works.find(work).orElseThrow(), out, item, 0, typed))
                    .isInstanceOf(WorkDesk.Handed.Stored.class);
        }
        assertThat(desk.handIn(works.find(work).orElseThrow())).isTrue();
        return work;
    }

    private static CSVRecord row(SetDrafter ines, UUID set, int item) throws IOException {
        String table =
                ines.browser.get("/graded-sets/" + set + "/export/items.csv").body();
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .build()
                .parse(new StringReader(table))
                .getRecords()
                .get(item);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
