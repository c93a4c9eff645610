package org.riseandgel.progress;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.practice.Standings;

/** One's own progress for programs. */
@Path("/api/v1/me")
@RolesAllowed(Roles.APPRENTICE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Progress")
public class OwnProgressApi {
    private final Standings standings;
    private final Viewer viewer;

    OwnProgressApi(Standings standings, Viewer viewer) {
        this.standings = standings;
        this.viewer = viewer;
    }

    @GET
    @Path("/progress")
    @Operation(operationId = "ownProgress", summary = "Where you stand in the skills that you have begun")
    public List<ProgressApi.SkillLine> progress() {
        return standings.of(viewer.getId()).standings().values().stream()
                .map(ProgressApi.SkillLine::of)
                .toList();
    }
}
