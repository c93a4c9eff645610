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
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;
import org.riseandgel.sitting.Sittings;

/** Practising on fresh numbers. Whoever learns practises; whoever teaches may try what the others are asked. */
@Path("/practice")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class PracticePages {
    private final Practice practice;
    private final SkillLists skills;
    private final AnswerHistory history;
    private final Calibrations calibrations;
    private final Sittings sittings;
    private final Viewer viewer;

    PracticePages(
            Practice practice,
            SkillLists skills,
            AnswerHistory history,
            Calibrations calibrations,
            Sittings sittings,
            Viewer viewer) {
        this.practice = practice;
        this.skills = skills;
        this.history = history;
        this.calibrations = calibrations;
        this.sittings = sittings;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance skills(List<SkillLists.StageSkills> stages);

        static native TemplateInstance answers(
                AnswerHistory.Page history,
                int page,
                String skill,
                List<SkillLists.Choice> choices,
                boolean someWait,
                List<Problem> problems);

        static native TemplateInstance confidence(CalibrationChart chart);

        private Templates() {}
    }

    @GET
    public TemplateInstance skills() {
        return Templates.skills(skills.of(viewer.getId()));
    }

    /** Begins a draw at the rung that is offered, or at a level of one's own choice. */
    @POST
    @Path("/{skill}/draw")
    public Response draw(@RestPath String skill, @RestForm @DefaultValue("") String level) {
        return practice.startDraw(viewer.getId(), skill, level(level))
                .map(begin -> SeeOther.page(begin.address()))
                .orElseThrow(NotFoundException::new);
    }

    /** One's own answers. */
    @GET
    @Path("/answers")
    public TemplateInstance answers(@RestQuery @DefaultValue("1") int page, @RestQuery @DefaultValue("") String skill) {
        int asked = Math.max(1, page);
        AnswerHistory.Page found =
                history.own(viewer.getId(), Optional.of(skill).filter(one -> !one.isEmpty()), asked);
        boolean someWait = !sittings.askedNow(viewer.getId()).isEmpty();
        return Templates.answers(found, asked, skill, skills.choices(), someWait, List.of());
    }

    /** How often one was right with each word of confidence. */
    @GET
    @Path("/confidence")
    public TemplateInstance confidence() {
        return Templates.confidence(CalibrationChart.of(calibrations.of(viewer.getId())));
    }

    private static OptionalInt level(String typed) {
        return switch (typed) {
            case "" -> OptionalInt.empty();
            case "1", "2", "3" -> OptionalInt.of(Integer.parseInt(typed));
            default -> throw new NotFoundException();
        };
    }
}
