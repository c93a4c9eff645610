package org.riseandgel.clearance.door;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.RegisterBook;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Trigger;

/** The door page and the same question for programs. */
@QuarkusTest
class DoorPagesTest {
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    RegisterBook book;

    @Test
    void cr23_theDoorSaysYesForTheTasksOfTheScopeAlone() {
        Cast cast = school.cleared(SOME);
        Browserless instructor = SignedIn.as("instructor");
        String door = "/door/" + Place.of(cast.scope()).id();
        assertThat(instructor
                        .get(door + "?person=" + cast.learner() + "&task=clean")
                        .page()
                        .select(".told h2")
                        .text())
                .isEqualTo("Yes");
        Browserless.Answer other = instructor.get(door + "?person=" + cast.learner() + "&task=weigh");
        assertThat(other.status()).isEqualTo(422);
        assertThat(other.page().select(".told")).isEmpty();
        Browserless.Answer stranger = instructor.get(door + "?person=" + DemoPeople.FINTAN + "&task=clean");
        assertThat(stranger.page().select(".told h2").text()).isEqualTo("No");
        assertThat(book.asked(cast.learner(), 5)).hasSize(1).first().satisfies(asked -> {
            assertThat(asked.askedBy()).isEqualTo(DemoPeople.INSTRUCTOR);
            assertThat(asked.status()).isEqualTo("CLEARED");
        });
    }

    @Test
    void aSuspensionIsSeenAtTheNextQuestion() {
        Cast cast = school.cleared(SOME);
        Browserless instructor = SignedIn.as("instructor");
        String question = "/door/" + Place.of(cast.scope()).id() + "?person=" + cast.learner() + "&task=clean";
        assertThat(instructor.get(question).page().select(".told").hasClass("yes"))
                .isTrue();
        decisions.suspend(cast.decider(), cast.learner(), cast.scope().id(), Trigger.NEAR_MISS, "Gloves off");
        Browserless.Answer after = instructor.get(question);
        assertThat(after.page().select(".told h2").text()).isEqualTo("No");
        assertThat(after.page().select(".told").text()).contains("suspended").doesNotContain("Gloves off");
        assertThat(after.page().select(".told .next").text()).isEqualTo(Words.next(Reason.SUSPENDED));
        assertThat(after.header("Cache-Control")).contains("no-store");
    }

    @Test
    void cr22_theListHasTheClearedAloneAndItsOwnTime() {
        Cast cast = school.cleared(SOME);
        Cast training = school.cast(SOME);
        Browserless lead = SignedIn.as("safety-lead");
        Document list =
                lead.get("/door/" + Place.of(cast.scope()).id() + "/list").page();
        assertThat(list.select("main .lede").text())
                .contains("Printed")
                .contains(String.valueOf(LocalDate.now().getYear()));
        assertThat(list.select("thead th").eachText())
                .as("these and nothing else")
                .containsExactly("Name", "For", "How", "Through", "Next review");
        assertThat(list.select("tbody tr")).hasSize(1);
        assertThat(list.select("tbody tr").text())
                .contains(
                        cast.scope().title(),
                        "cleared",
                        String.valueOf(LocalDate.now().getYear() + 1));
        assertThat(list.select("main").text()).doesNotContain(training.scope().title());
        Place foaming = new Place(
                new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"),
                Form.DISPERSION,
                "Foaming room");
        assertThat(lead.get("/door/" + foaming.id() + "/list")
                        .page()
                        .select("tr:has(th:contains(Ines Calloway))")
                        .text())
                .as("CR-05, in print")
                .contains("single-instructor decision");
    }

    @Test
    void cr23_programsGetTheSameAnswer() {
        Cast cast = school.cleared(SOME);
        UUID place = Place.of(cast.scope()).id();
        Browserless office = SignedIn.as("office");
        String address = "/api/v1/register/check?place=" + place + "&task=clean&person=";
        assertThat(office.get(address + cast.learner()).body())
                .contains("\"cleared\":true", "\"status\":\"cleared\"", "\"validThrough\"");
        assertThat(office.get(address + DemoPeople.FINTAN).body())
                .contains("\"cleared\":false", "\"reason\":\"NEVER_GRANTED\"");
        Browserless.Answer unknown = office.get(address + "nobody.here");
        assertThat(unknown.status()).isEqualTo(404);
        assertThat(unknown.body()).contains("Not cleared");
        Browserless.Answer unread = office.get("/api/v1/register/check?person=x&task=juggle&place=door");
        assertThat(unread.status()).isEqualTo(400);
        assertThat(unread.body()).contains("\"task\"", "\"place\"", "not cleared");
    }
}
