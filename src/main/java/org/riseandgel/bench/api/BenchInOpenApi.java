package org.riseandgel.bench.api;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.examples.Example;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;

/** Puts into the OpenAPI document what the catalogue knows: ids, the names of the inputs, examples. Pages stay out. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class BenchInOpenApi implements OASFilter {
    private static final String WORK = BenchApi.ADDRESS + "/{id}";

    private final Catalogue catalogue = Catalogue.standard();

    @Override
    public void filterOpenAPI(OpenAPI document) {
        List.copyOf(document.getPaths().getPathItems().keySet()).stream()
                .filter(path -> !path.startsWith("/api/v1/"))
                .forEach(document.getPaths()::removePathItem);
        document.getComponents().addSchema("SentValues", values());
        document.getPaths().getPathItem(WORK).getPOST().setDescription(inputs());
        MediaType body = document.getPaths()
                .getPathItem(WORK)
                .getPOST()
                .getRequestBody()
                .getContent()
                .getMediaType("application/json");
        body.setExamples(examples());
    }

    private static Schema values() {
        Schema value = OASFactory.createSchema()
                .anyOf(List.of(
                        OASFactory.createSchema().addType(Schema.SchemaType.STRING),
                        OASFactory.createSchema().addType(Schema.SchemaType.NUMBER)));
        return OASFactory.createSchema()
                .addType(Schema.SchemaType.OBJECT)
                .description("The name of each input and its value: text as one would type it on the sheet, in the"
                        + " school's decimal mark and any unit of the kind (\"250 mL\", \"4 3/4 in\"), or a number in"
                        + " the input's own unit. What is left out takes its default.")
                .additionalPropertiesSchema(value);
    }

    private String inputs() {
        return "The X-Form-Token header carries the token of any form of this server, as every changing request"
                + " does. The inputs of each calculation:\n\n"
                + catalogue.all().stream()
                        .map(calculation -> "* `" + calculation.id() + "`: " + names(calculation))
                        .collect(Collectors.joining("\n"));
    }

    private static String names(Calculation calculation) {
        return calculation.inputs().stream().map(BenchInOpenApi::name).collect(Collectors.joining(", "));
    }

    private static String name(Input input) {
        InputView view = InputView.of(input);
        String unit = view.unit() == null || view.unit().equals("1") ? "" : " (" + view.unit() + ")";
        return "`" + view.name() + "`" + unit;
    }

    private Map<String, Example> examples() {
        Map<String, Example> examples = new LinkedHashMap<>();
        for (Calculation calculation : catalogue.all()) {
            Map<String, Object> values = new LinkedHashMap<>();
            calculation.inputs().stream()
                    .map(InputView::of)
                    .filter(view -> view.byDefault() != null)
                    .forEach(view -> values.put(view.name(), view.byDefault()));
            examples.put(
                    calculation.id(),
                    OASFactory.createExample().summary(calculation.title()).value(values));
        }
        return examples;
    }
}
