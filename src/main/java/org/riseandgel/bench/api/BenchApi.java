package org.riseandgel.bench.api;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.bench.Attempt;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.QuantityText;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.ApiProblem;

/** The bench for programs: the same calculations, read and refused in the same words as on the sheets. */
@Path(BenchApi.ADDRESS)
@Authenticated
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Bench", description = "The calculations of the bench sheets.")
public class BenchApi {
    static final String ADDRESS = "/api/v1/bench";

    private static final int MOST_BYTES = 64 * 1024;
    private static final int BAD_REQUEST = 400;
    private static final int TOO_LARGE = 413;

    private final Catalogue catalogue = Catalogue.standard();
    private final SchoolSettings settings;

    BenchApi(SchoolSettings settings) {
        this.settings = settings;
    }

    @GET
    @Operation(operationId = "calculations", summary = "All calculations, in the order of the bench")
    public List<CalculationLine> all() {
        return catalogue.all().stream().map(CalculationLine::of).toList();
    }

    @GET
    @Path("/{id}")
    @Operation(operationId = "calculation", summary = "What a calculation needs and what it gives")
    @APIResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = CalculationView.class)))
    @APIResponse(
            responseCode = "404",
            description = "There is no calculation of that id.",
            content = @Content(mediaType = ApiProblem.MEDIA_TYPE, schema = @Schema(implementation = ApiProblem.class)))
    public CalculationView one(@Parameter(example = "stick-marks") @RestPath String id) {
        return CalculationView.of(known(id));
    }

    /** Works a calculation. It changes nothing; it is a POST because values may be many and long. */
    @POST
    @Path("/{id}")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "work", summary = "Works a calculation with the values sent, and defaults for the rest")
    @RequestBody(
            required = true,
            content =
                    @Content(
                            mediaType = MediaType.APPLICATION_JSON,
                            schema = @Schema(type = SchemaType.OBJECT, ref = "SentValues")))
    @APIResponse(
            responseCode = "200",
            description = "What came out, with the working.",
            content = @Content(schema = @Schema(implementation = WorkedView.class)))
    @APIResponse(
            responseCode = "400",
            description = "Values that cannot be used, each with its name and the reason; or no JSON object.",
            content = @Content(mediaType = ApiProblem.MEDIA_TYPE, schema = @Schema(implementation = ApiProblem.class)))
    @APIResponse(
            responseCode = "404",
            description = "There is no calculation of that id.",
            content = @Content(mediaType = ApiProblem.MEDIA_TYPE, schema = @Schema(implementation = ApiProblem.class)))
    @APIResponse(responseCode = "413", description = "The body is longer than 64 KB.")
    @APIResponse(responseCode = "415", description = "The body is no application/json.")
    public Response work(@Parameter(example = "stick-marks") @RestPath String id, byte[] body) {
        Calculation calculation = known(id);
        if (body.length > MOST_BYTES) {
            return ApiProblem.of(TOO_LARGE, "The body is too long.", "Send at most 64 KB.")
                    .response();
        }
        DecimalMark mark = settings.decimalMark();
        return SentValues.read(body, calculation, mark)
                .map(sent -> worked(calculation, sent, mark))
                .orElseGet(BenchApi::noObject);
    }

    private Response worked(Calculation calculation, SentValues sent, DecimalMark mark) {
        if (!sent.errors().isEmpty()) {
            return refused(sent.errors());
        }
        Attempt attempt = Attempt.at(catalogue, calculation, sent.typed(), mark);
        if (attempt.outcome().isEmpty()) {
            return refused(attempt.problems().stream()
                    .map(problem -> new ApiProblem.FieldError(
                            problem.field() == null ? "" : problem.field(), problem.message()))
                    .toList());
        }
        return Response.ok(WorkedView.of(calculation, attempt.outcome().get(), QuantityText.of(mark)))
                .type(MediaType.APPLICATION_JSON)
                .build();
    }

    private Calculation known(String id) {
        return catalogue.find(id).orElseThrow(NotFoundException::new);
    }

    private static Response refused(List<ApiProblem.FieldError> errors) {
        return ApiProblem.of(BAD_REQUEST, "Some values cannot be used.", errors).response();
    }

    private static Response noObject() {
        return ApiProblem.of(
                        BAD_REQUEST,
                        "The body is no JSON object.",
                        "Send one object with the name of each input and its value, each name once.")
                .response();
    }
}
