package org.riseandgel.sitting;

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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.course.Check;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** The checks there are, for all who may sit them: whoever learns, teaches, or looks after safety. */
@Path("/checks")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class CheckPages {
    private final Checks checks;
    private final SittingDesk desk;
    private final WaitingChecks waiting;
    private final Viewer viewer;

    CheckPages(Checks checks, SittingDesk desk, WaitingChecks waiting, Viewer viewer) {
        this.checks = checks;
        this.desk = desk;
        this.waiting = waiting;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance checks(List<Checks.Sheet> sheets, boolean practiceWaits);

        static native TemplateInstance check(Checks.Sheet sheet, List<Problem> problems);

        private Templates() {}
    }

    /** The checks; to somebody who wanted to practise what an open one asks, it is said why that waits. */
    @GET
    public TemplateInstance checks(@RestQuery @DefaultValue("") String waits) {
        return Templates.checks(checks.of(viewer.getId()), waits.equals("practice"));
    }

    @GET
    @Path("/{check}")
    public TemplateInstance check(@RestPath String check) {
        return Templates.check(sheet(check), List.of());
    }

    /** Begins a sitting, or goes on with the open one. */
    @POST
    @Path("/{check}/begin")
    public Response begin(@RestPath String check) {
        Check found = checks.find(check).orElseThrow(NotFoundException::new);
        Optional<UUID> begun = desk.begin(viewer.getId(), found);
        waiting.forget(viewer.getId());
        return begun.map(sitting -> SeeOther.page("/sittings/" + sitting + "/items/next"))
                .orElseGet(() -> notNow(sheet(check)));
    }

    private static Response notNow(Checks.Sheet sheet) {
        return Response.status(422)
                .entity(Templates.check(sheet, List.of(new Problem("begin", sheet.waiting()))))
                .build();
    }

    private Checks.Sheet sheet(String check) {
        return checks.of(viewer.getId(), check).orElseThrow(NotFoundException::new);
    }
}
