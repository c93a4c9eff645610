package org.riseandgel.bench;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** The bench: a sheet per calculation, for everybody who is signed in. What was typed stands in the address. */
@Path("/bench")
@Authenticated
public class BenchSheets {
    private static final int UNPROCESSABLE = 422;

    private final Sheets sheets;

    BenchSheets(Sheets sheets) {
        this.sheets = sheets;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance bench(List<Sheets.Shelf> shelves);

        static native TemplateInstance sheet(Sheet sheet, List<Problem> problems);

        static native TemplateInstance stick(Stick stick, boolean letter);

        private Templates() {}
    }

    @GET
    public TemplateInstance bench() {
        return Templates.bench(sheets.shelves());
    }

    @GET
    @Path("/{id}")
    public Response sheet(@RestPath String id, @Context UriInfo address) {
        return page(sheets.open(id, typed(address)).orElseThrow(NotFoundException::new));
    }

    /** The cavity from a mesh: the file comes with the form, so nothing of it can stand in the address. */
    @POST
    @Path("/cavity-from-mesh")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response mesh(@RestForm String unit, @RestForm("file") FileUpload file) throws IOException {
        try {
            boolean sent = file != null && file.size() > 0;
            return page(sheets.ofMesh(
                    unit == null ? Map.of() : Map.of(CavityFromMesh.UNIT, unit), sent ? file.uploadedFile() : null));
        } finally {
            if (file != null) {
                Files.deleteIfExists(file.uploadedFile());
            }
        }
    }

    private static Response page(Sheet sheet) {
        List<Problem> problems = sheet.problems().stream()
                .map(problem -> new Problem(problem.field(), problem.message()))
                .toList();
        return Response.status(problems.isEmpty() ? Response.Status.OK.getStatusCode() : UNPROCESSABLE)
                .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                .entity(Templates.sheet(sheet, problems))
                .build();
    }

    /** The stick at true scale; a sheet that has something to mend is shown instead. */
    @GET
    @Path("/stick-marks/stick")
    public Response stick(@RestQuery @DefaultValue("a4") String paper, @Context UriInfo address) {
        return sheets.stick(typed(address))
                .map(stick -> Response.ok(Templates.stick(stick, paper.equals("letter")))
                        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                        .build())
                .orElseGet(() -> SeeOther.page(
                        "/bench/stick-marks?" + address.getRequestUri().getRawQuery()));
    }

    private static Map<String, String> typed(UriInfo address) {
        MultivaluedMap<String, String> query = address.getQueryParameters();
        Map<String, String> typed = new HashMap<>();
        query.forEach((name, values) -> typed.put(name, values.get(0)));
        return typed;
    }
}
