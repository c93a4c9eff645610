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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** One draw: its open part, the estimate before it, its answer, and the verdict on what was answered. */
@Path("/practice/draws")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class DrawPages {
    private static final int UNPROCESSABLE = 422;
    private static final int LONGEST_KEPT = 200;

    private final Practice practice;
    private final Viewer viewer;

    DrawPages(Practice practice, Viewer viewer) {
        this.practice = practice;
        this.viewer = viewer;
    }

    /** What somebody has filled in and not handed in yet. */
    public record Typed(String answer, String sure) {
        static final Typed NOTHING = new Typed("", "");
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance draw(DrawView draw, Typed typed, ReadBack echo, List<Problem> problems);

        static native TemplateInstance verdict(DrawView draw, Answered answered);

        static native TemplateInstance readBack(ReadBack echo);

        private Templates() {}
    }

    /** The part that is asked now, or the verdict on an answered part. */
    @GET
    @Path("/{draw}")
    public TemplateInstance draw(
            @RestPath UUID draw,
            @RestQuery Integer part,
            @RestQuery @DefaultValue("") String typed,
            @RestQuery @DefaultValue("") String sure) {
        DrawView view = view(draw);
        int shown = part == null ? view.answered().size() - 1 : part - 1;
        if (part == null && !view.isFinished()) {
            return Templates.draw(view, new Typed(typed, sure), null, List.of());
        }
        return Optional.ofNullable(view.answered(shown))
                .map(answered -> Templates.verdict(view, answered))
                .orElseThrow(NotFoundException::new);
    }

    /** What a typed answer is read as, while it is being typed: a piece of the page. */
    @POST
    @Path("/{draw}/read")
    public TemplateInstance read(
            @RestPath UUID draw, @RestForm @DefaultValue("0") int part, @RestForm @DefaultValue("") String answer) {
        return practice.read(viewer.getId(), draw, part - 1, answer)
                .map(Templates::readBack)
                .orElseThrow(NotFoundException::new);
    }

    /** Keeps the decade that was chosen before reckoning. */
    @POST
    @Path("/{draw}/estimate")
    public Response estimate(@RestPath UUID draw, @RestForm @DefaultValue("") String decade) {
        DrawView view = view(draw);
        Optional<Integer> exponent = exponent(decade);
        boolean kept = exponent.flatMap(one -> practice.estimate(viewer.getId(), draw, one))
                .orElse(false);
        if (!kept && !view.isFinished() && !view.open().decades().isEmpty()) {
            Problem problem = new Problem("decade", "Choose the range that the answer should lie in; a guess will do.");
            return page(UNPROCESSABLE, Templates.draw(view, Typed.NOTHING, null, List.of(problem)));
        }
        return SeeOther.page(address(draw));
    }

    @POST
    @Path("/{draw}/hint")
    public Response hint(@RestPath UUID draw, @RestForm List<String> answer, @RestForm @DefaultValue("") String sure) {
        view(draw);
        practice.showHint(viewer.getId(), draw);
        String typed = String.join(" ", answer);
        boolean keeps = !typed.isBlank() && typed.length() <= LONGEST_KEPT && sure.length() <= LONGEST_KEPT;
        return SeeOther.page(address(draw) + (keeps ? "?typed=" + encoded(typed) + "&sure=" + encoded(sure) : ""));
    }

    /** Hands an answer in, once the person has seen what it is read as. */
    @POST
    @Path("/{draw}/answer")
    public Response answer(
            @RestPath UUID draw,
            @RestForm @DefaultValue("0") int part,
            @RestForm List<String> answer,
            @RestForm @DefaultValue("") String sure,
            @RestForm @DefaultValue("") String echoed,
            @RestForm @DefaultValue("") String change) {
        Typed typed = new Typed(String.join(" ", answer), sure);
        if (!change.isEmpty()) {
            return page(200, Templates.draw(view(draw), typed, null, List.of()));
        }
        Optional<Confidence> confidence = Confidence.byCode(sure);
        Optional<ReadBack> unseen = echoed.equals(typed.answer) || confidence.isEmpty()
                ? Optional.empty()
                : practice.read(viewer.getId(), draw, part - 1, typed.answer).filter(ReadBack::isToBeSeen);
        if (unseen.isPresent()) {
            return page(200, Templates.draw(view(draw), typed, unseen.get(), List.of()));
        }
        return practice.answer(viewer.getId(), draw, part - 1, typed.answer, confidence)
                .map(handed -> told(draw, typed, handed))
                .orElseThrow(NotFoundException::new);
    }

    private Response told(UUID draw, Typed typed, Handed handed) {
        if (handed instanceof Handed.AskAgain again) {
            return page(UNPROCESSABLE, Templates.draw(view(draw), typed, null, again.problems()));
        }
        return SeeOther.page(
                handed instanceof Handed.Stored stored
                        ? address(draw) + "?part=" + (stored.part() + 1)
                        : address(draw));
    }

    /** Notes that the explanation of an answer that was sure and wrong was looked at. */
    @POST
    @Path("/{draw}/looked-at")
    public Response lookedAt(@RestPath UUID draw) {
        DrawView view = view(draw);
        practice.lookedAt(viewer.getId(), draw);
        return SeeOther.page(view.isFinished() ? "/today" : address(draw));
    }

    private DrawView view(UUID draw) {
        return practice.view(viewer.getId(), draw).orElseThrow(NotFoundException::new);
    }

    private static Optional<Integer> exponent(String decade) {
        return decade.matches("-?[0-9]{1,2}") ? Optional.of(Integer.valueOf(decade)) : Optional.empty();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    static String address(UUID draw) {
        return "/practice/draws/" + draw;
    }

    private static Response page(int status, TemplateInstance template) {
        return Response.status(status).entity(template).build();
    }
}
