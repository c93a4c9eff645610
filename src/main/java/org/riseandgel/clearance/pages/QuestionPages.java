package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.RegisterBook;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Task;

/** The questions that were asked at doors and over the network, with the answers that were given. */
@Path("/register/book/questions")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class QuestionPages {
    private static final int SHOWN = 50;

    private final RegisterBook book;
    private final People people;

    QuestionPages(RegisterBook book, People people) {
        this.book = book;
        this.people = people;
    }

    /** One question and its answer. */
    public record AskedView(
            Instant at, String asker, UUID person, String name, String room, String task, String answer) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance questions(List<AskedView> asked, long older);

        private Templates() {}
    }

    @GET
    public TemplateInstance questions(@RestQuery UUID person, @RestQuery Long before) {
        List<RegisterBook.Asked> asked = book.asked(person, before == null ? 0 : before, SHOWN + 1);
        List<RegisterBook.Asked> shown = asked.stream().limit(SHOWN).toList();
        Map<UUID, String> names = people.names(shown.stream()
                .flatMap(one -> Stream.of(one.person(), one.askedBy()))
                .filter(java.util.Objects::nonNull)
                .collect(Collectors.toSet()));
        Map<UUID, String> rooms = new HashMap<>();
        for (RegisterBook.Asked one : shown) {
            rooms.computeIfAbsent(
                    one.place(), id -> book.place(id).map(Place::room).orElse("a place that is no longer in use"));
        }
        return Templates.questions(
                shown.stream().map(one -> view(one, names, rooms)).toList(),
                asked.size() > SHOWN ? shown.get(SHOWN - 1).number() : 0);
    }

    private static AskedView view(RegisterBook.Asked one, Map<UUID, String> names, Map<UUID, String> rooms) {
        String answer = one.reason() == null
                ? Words.of(Status.valueOf(one.status()))
                : Words.of(Status.valueOf(one.status())) + ": " + Words.of(Reason.valueOf(one.reason()));
        return new AskedView(
                one.at(),
                one.askedBy() == null ? "a door or program" : names.getOrDefault(one.askedBy(), "Unknown person"),
                one.person(),
                names.getOrDefault(one.person(), "Unknown person"),
                rooms.get(one.place()),
                TaskWords.of(Task.valueOf(one.task())),
                answer);
    }
}
