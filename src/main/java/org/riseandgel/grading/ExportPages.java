package org.riseandgel.grading;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.table.Table;
import org.riseandgel.platform.table.TableFile;

/** Results of a set as CSV (RFC 4180) and as a sheet of Office Open XML. Each download is noted. */
@Path("/graded-sets/{set}/export")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class ExportPages {
    private final GradingAccess access;
    private final Exports exports;
    private final AuditLog audit;
    private final Viewer viewer;

    ExportPages(GradingAccess access, Exports exports, AuditLog audit, Viewer viewer) {
        this.access = access;
        this.exports = exports;
        this.audit = audit;
        this.viewer = viewer;
    }

    @GET
    @Path("/{table}.{format}")
    public Response export(@RestPath UUID set, @RestPath String table, @RestPath String format) throws IOException {
        GradedSet found = access.set(set)
                .map(GradingAccess.Seen::set)
                .filter(one -> !one.isDraft())
                .orElseThrow(NotFoundException::new);
        TableFile.Format wanted = TableFile.Format.byEnding(format).orElseThrow(NotFoundException::new);
        TableFile file = TableFile.write(table(table, found), wanted);
        audit.note(viewer.getId(), "graded-set-exported", set.toString(), table + "." + format + " " + file.digest());
        return file.download("graded-set-" + table, wanted);
    }

    private Table table(String name, GradedSet set) {
        return switch (name) {
            case "results" -> exports.results(set);
            case "answers" -> exports.answers(set);
            case "items" -> exports.items(set);
            default -> throw new NotFoundException();
        };
    }
}
