package org.riseandgel.account.setup;

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
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.account.Roles;
import org.riseandgel.account.signin.SignIns;
import org.riseandgel.platform.web.House;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Erasing the demo school, so that the real one can be set up. */
@Path("/office/demo")
@RolesAllowed(Roles.OFFICE)
public class DemoResource {
    private final Founding founding;
    private final SignIns signIns;
    private final SetUpKey key;
    private final House house;

    DemoResource(Founding founding, SignIns signIns, SetUpKey key, House house) {
        this.founding = founding;
        this.signIns = signIns;
        this.key = key;
        this.house = house;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance demo(List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance demo() {
        onlyInDemo();
        return Templates.demo(List.of());
    }

    @POST
    @Path("erase")
    public Response erase(@RestForm @DefaultValue("") String sure) {
        onlyInDemo();
        if (!sure.equals("yes")) {
            Problem unsure =
                    new Problem("sure", "Tick the box to say that everything in the demo school may be erased.");
            return Response.status(422).entity(Templates.demo(List.of(unsure))).build();
        }
        founding.eraseDemo();
        signIns.forgetAll();
        key.make();
        return SeeOther.page("/welcome?done=erased");
    }

    private void onlyInDemo() {
        if (!house.isDemo()) {
            throw new NotFoundException();
        }
    }
}
