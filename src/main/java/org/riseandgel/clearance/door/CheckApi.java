package org.riseandgel.clearance.door;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.Words;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.web.ApiProblem;

/** The question at the door, for programs. Whatever is not a clear yes is a no. */
@Path("/api/v1/register/check")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Register", description = "Who is cleared to handle the salt.")
public class CheckApi {
    private static final int BAD_REQUEST = 400;
    private static final int NOT_FOUND = 404;

    private final Door door;
    private final Viewer viewer;

    CheckApi(Door door, Viewer viewer) {
        this.door = door;
        this.viewer = viewer;
    }

    /**
     * The answer.
     *
     * @param cleared true only for a clear yes; supervised only is no yes
     * @param status the answer in words: cleared, supervised only, not cleared
     * @param reason the first reason against it; left out when there is none
     * @param holdsUntil the instant from which the answer is worse if nothing happens; no later than this may it be kept
     */
    @Schema(name = "ClearanceAnswer", description = "Whether a person may do a task in a place at this instant.")
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record AnswerView(
            boolean cleared,
            String status,
            String reason,
            String words,
            UUID person,
            String task,
            UUID place,
            String room,
            LocalDate validThrough,
            Instant holdsUntil,
            UUID supervisor,
            boolean singleInstructor,
            Instant at) {
        static AnswerView of(Door.Told told) {
            return new AnswerView(
                    told.answer().status() == Status.CLEARED,
                    Words.of(told.answer().status()),
                    told.answer().reason() == null
                            ? null
                            : told.answer().reason().name(),
                    told.answer().words(),
                    told.person().id(),
                    TaskWords.id(told.task()),
                    told.place().id(),
                    told.place().room(),
                    told.answer().validThrough(),
                    told.answer().holdsUntil(),
                    told.answer().supervisor(),
                    told.answer().singleInstructor(),
                    told.answer().at());
        }
    }

    @GET
    @Operation(
            operationId = "checkClearance",
            summary = "May this person do this task in this place now?",
            description = "Asked and written down. An answer holds for its instant: ask again each time. Whoever gets"
                    + " anything but 200 with cleared true has no yes.")
    @APIResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = AnswerView.class)))
    @APIResponse(
            responseCode = "400",
            description = "A value is missing or cannot be read.",
            content = @Content(mediaType = ApiProblem.MEDIA_TYPE, schema = @Schema(implementation = ApiProblem.class)))
    @APIResponse(
            responseCode = "404",
            description = "The school knows no such person: not cleared.",
            content = @Content(mediaType = ApiProblem.MEDIA_TYPE, schema = @Schema(implementation = ApiProblem.class)))
    public Response check(
            @Parameter(description = "The person's id or sign-in name.", required = true) @RestQuery String person,
            @Parameter(description = "store, weigh, disperse, dose, clean, spill or waste.", required = true) @RestQuery
                    String task,
            @Parameter(description = "The id of the place, as in the address of its door page.", required = true)
                    @RestQuery
                    String place) {
        List<ApiProblem.FieldError> errors = new ArrayList<>();
        Optional<Task> what = TaskWords.task(task);
        if (what.isEmpty()) {
            errors.add(error("task", "Must be one of %s.".formatted(tasks())));
        }
        Optional<Place> where = place(place);
        if (where.isEmpty()) {
            errors.add(error("place", "Must be the id of a place, as in the address of its door page."));
        }
        if (person == null || person.isBlank()) {
            errors.add(error("person", "Must be the id or the sign-in name of a person."));
        }
        if (!errors.isEmpty()) {
            return ApiProblem.of(BAD_REQUEST, "The question cannot be read; not cleared.", errors)
                    .response();
        }
        return door.person(person)
                .map(PersonView::id)
                .flatMap(id -> door.ask(viewer.getId(), id, where.get(), what.get()))
                .map(told -> Response.ok(AnswerView.of(told)).build())
                .orElseGet(() -> ApiProblem.of(
                                NOT_FOUND, "Not cleared.", "The school knows nobody of that id or sign-in name.")
                        .response());
    }

    private Optional<Place> place(String text) {
        try {
            return door.place(UUID.fromString(text));
        } catch (IllegalArgumentException | NullPointerException e) {
            return Optional.empty();
        }
    }

    private static String tasks() {
        return Arrays.stream(Task.values()).map(TaskWords::id).collect(Collectors.joining(", "));
    }

    private static ApiProblem.FieldError error(String field, String detail) {
        return new ApiProblem.FieldError(field, detail);
    }
}
