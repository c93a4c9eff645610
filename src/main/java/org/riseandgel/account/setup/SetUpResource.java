package org.riseandgel.account.setup;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Setting the school up, once, with the key from the console. */
@Path("/set-up")
@PermitAll
public class SetUpResource {
    private final Founding founding;
    private final SetUpKey key;

    SetUpResource(Founding founding, SetUpKey key) {
        this.founding = founding;
        this.key = key;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance setUp(
                SetUpForm form, List<Choice> zones, boolean mayBeDemo, List<Problem> problems);

        static native TemplateInstance wrongKey();

        private Templates() {}
    }

    @GET
    public Response setUp(@RestQuery("key") @DefaultValue("") String tried) {
        return isOpen(tried) ? page(200, SetUpForm.empty(tried), List.of()) : wrongKey();
    }

    @POST
    public Response found(@BeanParam SetUpForm sent) {
        SetUpForm form = sent.whole();
        if (!isOpen(form.key)) {
            return wrongKey();
        }
        List<Problem> problems = form.problems();
        if (!problems.isEmpty()) {
            return page(422, form, problems);
        }
        founding.found(form.toSchool(), form.toFirstAccount());
        key.kill();
        return SeeOther.page("/sign-in?done=founded");
    }

    @POST
    @Path("demo")
    public Response foundDemo(@RestForm("key") @DefaultValue("") String tried) {
        if (!isOpen(tried)) {
            return wrongKey();
        }
        if (!founding.mayBeDemo()) {
            Problem loopbackOnly = new Problem(
                    "",
                    "The demo school is shown on this computer only, and this program also listens to others. Set"
                            + " quarkus.http.host to 127.0.0.1 and start again.");
            return page(422, SetUpForm.empty(tried), List.of(loopbackOnly));
        }
        founding.foundDemo();
        key.kill();
        return SeeOther.page("/sign-in?done=demo");
    }

    private boolean isOpen(String tried) {
        return key.opens(tried) && !founding.isFounded();
    }

    private Response page(int status, SetUpForm form, List<Problem> problems) {
        return Response.status(status)
                .entity(Templates.setUp(form, Zones.all(), founding.mayBeDemo(), problems))
                .build();
    }

    private static Response wrongKey() {
        return Response.status(404).entity(Templates.wrongKey()).build();
    }
}
