package org.riseandgel.clearance.door;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** The page for the store-room door: a name, a task, and an answer that can be read from two metres. */
@Path("/door")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class DoorPages {
    private static final int UNPROCESSABLE = 422;
    private static final Choice NOBODY = new Choice("", "Choose");

    private final Door door;
    private final Viewer viewer;

    DoorPages(Door door, Viewer viewer) {
        this.door = door;
        this.viewer = viewer;
    }

    /** A place as the pages name it. */
    public record PlaceView(UUID id, String room, String what) {
        static PlaceView of(Place place) {
            return new PlaceView(place.id(), place.room(), TaskWords.of(place));
        }
    }

    /**
     * An answer as the page shows it.
     *
     * @param look the style that goes with it
     * @param next what to do about a no; null for anything else
     */
    public record TellView(String look, String icon, String headline, String doing, String next, Door.Told told) {
        static TellView of(Door.Told told) {
            String doing = TaskWords.doing(told.task());
            return switch (told.answer().status()) {
                case CLEARED -> new TellView("yes", "right", "Yes", doing, null, told);
                case SUPERVISED_ONLY -> new TellView("with", "begun", "Only supervised", doing, null, told);
                case NOT_CLEARED -> new TellView("no", "wrong", "No", doing, next(told), told);
            };
        }

        private static String next(Door.Told told) {
            return told.answer().reason() == null
                    ? null
                    : Words.next(told.answer().reason());
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance doors(List<PlaceView> places);

        static native TemplateInstance door(
                PlaceView place,
                List<Choice> people,
                List<Choice> tasks,
                String person,
                String task,
                TellView tell,
                List<Problem> problems);

        static native TemplateInstance list(PlaceView place, Register.DoorList list);

        private Templates() {}
    }

    @GET
    public TemplateInstance doors() {
        return Templates.doors(door.places().stream().map(PlaceView::of).toList());
    }

    /** The question, and the answer when person and task are given. Asking is written down and changes nothing else. */
    @GET
    @Path("/{place}")
    public Response door(@RestPath UUID place, @RestQuery String person, @RestQuery String task) {
        Place here = door.place(place).orElseThrow(NotFoundException::new);
        Set<Task> possible = door.tasks(here);
        boolean asked = person != null || task != null;
        List<Problem> problems = new ArrayList<>();
        Optional<UUID> who = asked ? person(person, problems) : Optional.empty();
        Optional<Task> what = asked ? task(task, possible, problems) : Optional.empty();
        TellView tell = who.isPresent() && what.isPresent()
                ? door.ask(viewer.getId(), who.get(), here, what.get())
                        .map(TellView::of)
                        .orElseThrow(NotFoundException::new)
                : null;
        return Response.status(problems.isEmpty() ? Response.Status.OK.getStatusCode() : UNPROCESSABLE)
                .entity(Templates.door(
                        PlaceView.of(here), people(here), tasks(possible), person, task, tell, List.copyOf(problems)))
                .build();
    }

    /** The list that hangs at the door, to print. */
    @GET
    @Path("/{place}/list")
    public TemplateInstance list(@RestPath UUID place) {
        Place here = door.place(place).orElseThrow(NotFoundException::new);
        return Templates.list(PlaceView.of(here), door.list(here.room()));
    }

    private List<Choice> people(Place place) {
        List<Choice> choices = new ArrayList<>(List.of(NOBODY));
        door.known(place).forEach(one -> choices.add(new Choice(one.id().toString(), one.name())));
        return choices;
    }

    private static List<Choice> tasks(Set<Task> possible) {
        List<Choice> choices = new ArrayList<>(List.of(NOBODY));
        possible.forEach(task -> choices.add(new Choice(TaskWords.id(task), TaskWords.of(task))));
        return choices;
    }

    private static Optional<UUID> person(String text, List<Problem> problems) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException | NullPointerException e) {
            problems.add(new Problem("person", "Choose who wants to do it."));
            return Optional.empty();
        }
    }

    private static Optional<Task> task(String text, Set<Task> possible, List<Problem> problems) {
        Optional<Task> task = TaskWords.task(text).filter(possible::contains);
        if (task.isEmpty()) {
            problems.add(new Problem("task", "Choose what is to be done."));
        }
        return task;
    }
}
