package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Practising on fresh numbers. Whoever learns practises; whoever teaches may try what the others are asked. */
@Path("/practice")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class PracticePages {
    private static final int LONGEST_KEPT = 200;

    private final Practice practice;
    private final SkillLists skills;
    private final AnswerHistory history;
    private final Viewer viewer;

    PracticePages(Practice practice, SkillLists skills, AnswerHistory history, Viewer viewer) {
        this.practice = practice;
        this.skills = skills;
        this.history = history;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance skills(List<SkillLists.StageSkills> stages);

        static native TemplateInstance draw(DrawView draw, String typed, ReadBack echo, List<Problem> problems);

        static native TemplateInstance verdict(DrawView draw, Answered answered);

        static native TemplateInstance readBack(ReadBack echo);

        static native TemplateInstance answers(
                AnswerHistory.Page history,
                int page,
                String skill,
                List<SkillLists.Choice> choices,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance skills() {
        return Templates.skills(skills.of(viewer.getId()));
    }

    @POST
    @Path("/{skill}/draw")
    public Response draw(@RestPath String skill, @RestForm @DefaultValue("") String level) {
        return practice.startDraw(viewer.getId(), skill, level(level))
                .map(draw -> SeeOther.page(address(draw)))
                .orElseThrow(NotFoundException::new);
    }

    /** The part that is asked now, or the verdict on an answered part. */
    @GET
    @Path("/draws/{draw}")
    public TemplateInstance draw(
            @RestPath UUID draw, @RestQuery Integer part, @RestQuery @DefaultValue("") String typed) {
        DrawView view = view(draw);
        int shown = part == null ? view.answered().size() - 1 : part - 1;
        if (part == null && !view.isFinished()) {
            return Templates.draw(view, typed, null, List.of());
        }
        return Optional.ofNullable(view.answered(shown))
                .map(answered -> Templates.verdict(view, answered))
                .orElseThrow(NotFoundException::new);
    }

    /** What a typed answer is read as, while it is being typed: a piece of the page. */
    @POST
    @Path("/draws/{draw}/read")
    public TemplateInstance read(
            @RestPath UUID draw, @RestForm @DefaultValue("0") int part, @RestForm @DefaultValue("") String answer) {
        return practice.read(viewer.getId(), draw, part - 1, answer)
                .map(Templates::readBack)
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("/draws/{draw}/hint")
    public Response hint(@RestPath UUID draw, @RestForm List<String> answer) {
        view(draw);
        practice.showHint(viewer.getId(), draw);
        String typed = String.join(" ", answer);
        String kept = typed.isBlank() || typed.length() > LONGEST_KEPT
                ? ""
                : "?typed=" + URLEncoder.encode(typed, StandardCharsets.UTF_8);
        return SeeOther.page(address(draw) + kept);
    }

    /** Hands an answer in, once the person has seen what it is read as. */
    @POST
    @Path("/draws/{draw}/answer")
    public Response answer(
            @RestPath UUID draw,
            @RestForm @DefaultValue("0") int part,
            @RestForm List<String> answer,
            @RestForm @DefaultValue("") String echoed,
            @RestForm @DefaultValue("") String change) {
        String typed = String.join(" ", answer);
        if (!change.isEmpty()) {
            return page(200, Templates.draw(view(draw), typed, null, List.of()));
        }
        Optional<ReadBack> unseen = echoed.equals(typed)
                ? Optional.empty()
                : practice.read(viewer.getId(), draw, part - 1, typed).filter(ReadBack::isToBeSeen);
        if (unseen.isPresent()) {
            return page(200, Templates.draw(view(draw), typed, unseen.get(), List.of()));
        }
        Handed handed = practice.answer(viewer.getId(), draw, part - 1, typed).orElseThrow(NotFoundException::new);
        return told(draw, typed, handed);
    }

    private Response told(UUID draw, String answer, Handed handed) {
        if (handed instanceof Handed.AskAgain again) {
            List<Problem> problems = List.of(new Problem("answer", again.question()));
            return page(422, Templates.draw(view(draw), answer, null, problems));
        }
        return SeeOther.page(
                handed instanceof Handed.Stored stored
                        ? address(draw) + "?part=" + (stored.part() + 1)
                        : address(draw));
    }

    /** One's own answers. */
    @GET
    @Path("/answers")
    public TemplateInstance answers(@RestQuery @DefaultValue("1") int page, @RestQuery @DefaultValue("") String skill) {
        int asked = Math.max(1, page);
        AnswerHistory.Page found = history.of(viewer.getId(), Optional.of(skill).filter(one -> !one.isEmpty()), asked);
        return Templates.answers(found, asked, skill, skills.choices(), List.of());
    }

    private DrawView view(UUID draw) {
        return practice.view(viewer.getId(), draw).orElseThrow(NotFoundException::new);
    }

    private static OptionalInt level(String typed) {
        return switch (typed) {
            case "" -> OptionalInt.empty();
            case "1", "2", "3" -> OptionalInt.of(Integer.parseInt(typed));
            default -> throw new NotFoundException();
        };
    }

    private static String address(UUID draw) {
        return "/practice/draws/" + draw;
    }

    private static Response page(int status, TemplateInstance template) {
        return Response.status(status).entity(template).build();
    }
}
