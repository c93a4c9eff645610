package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.Appeals;
import org.riseandgel.clearance.CorrectionDesk;
import org.riseandgel.clearance.PersonRecord;

/** What in the register waits for a second person: appeals and corrections. */
@Path("/register/waiting")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class WaitingPage {
    private final Appeals appeals;
    private final CorrectionDesk desk;
    private final PersonRecord records;

    WaitingPage(Appeals appeals, CorrectionDesk desk, PersonRecord records) {
        this.appeals = appeals;
        this.desk = desk;
        this.records = records;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance waiting(List<AppealView> appeals, List<WaitingView> corrections, String done);

        private Templates() {}
    }

    @GET
    public TemplateInstance waiting(@RestQuery @DefaultValue("") String done) {
        return Templates.waiting(
                appeals.open().stream().map(one -> AppealView.of(one, records)).toList(),
                desk.open().stream()
                        .flatMap(one -> records
                                .line(one.said().event())
                                .map(LineView::of)
                                .flatMap(line -> records.line(one.id()).map(asked -> WaitingView.of(asked, line)))
                                .stream())
                        .toList(),
                done);
    }
}
