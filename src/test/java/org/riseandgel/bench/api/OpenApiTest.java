package org.riseandgel.bench.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PATCH;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;

/** The description of the API tells all of it and nothing else. */
@QuarkusTest
class OpenApiTest {
    private static final String DOCUMENT = "/api/v1/openapi";
    private static final List<Class<? extends Annotation>> METHODS =
            List.of(GET.class, POST.class, PUT.class, PATCH.class, DELETE.class);

    @Test
    void everyEndpointOfTheApiIsInItAndNoPage() throws Exception {
        Set<String> told = new TreeSet<>();
        document().get("paths").properties().forEach(path -> path.getValue()
                .fieldNames()
                .forEachRemaining(method -> told.add(method.toUpperCase(java.util.Locale.ROOT) + " " + path.getKey())));
        assertThat(endpoints()).contains("POST /api/v1/bench/{id}").isEqualTo(told);
    }

    @Test
    void everyInputOfEveryCalculationIsNamedAndExampled() throws Exception {
        JsonNode work = document().at("/paths/~1api~1v1~1bench~1{id}/post");
        JsonNode examples = work.at("/requestBody/content/application~1json/examples");
        for (Calculation calculation : Catalogue.standard().all()) {
            String line = work.get("description")
                    .asText()
                    .lines()
                    .filter(l -> l.contains("`" + calculation.id() + "`:"))
                    .findFirst()
                    .orElseThrow();
            for (Input input : calculation.inputs()) {
                assertThat(line).contains("`" + input.name() + "`");
            }
            assertThat(examples.has(calculation.id())).as(calculation.id()).isTrue();
        }
    }

    @Test
    void everyExampleWorks() throws Exception {
        JsonNode examples =
                document().at("/paths/~1api~1v1~1bench~1{id}/post/requestBody/content/application~1json/examples");
        Browserless apprentice = SignedIn.as("apprentice");
        for (Calculation calculation : Catalogue.standard().all()) {
            String body = examples.get(calculation.id()).get("value").toString();
            Answer answer = apprentice.postJson("/api/v1/bench/" + calculation.id(), body);
            assertThat(answer.status()).as(answer.toString()).isEqualTo(200);
        }
    }

    @Test
    void everySchemaThatIsMentionedIsThere() throws Exception {
        JsonNode document = document();
        JsonNode schemas = document.at("/components/schemas");
        assertThat(schemas.has("Problem")).isTrue();
        assertThat(document.findValuesAsText("$ref")).isNotEmpty().allSatisfy(ref -> assertThat(
                        schemas.has(ref.replace("#/components/schemas/", "")))
                .as(ref)
                .isTrue());
    }

    @Test
    void itIsForThoseSignedInAndHasNoPageOfItsOwn() {
        assertThat(Browserless.anonymous().get(DOCUMENT).status()).isEqualTo(401);
        assertThat(SignedIn.as("office").get("/q/swagger-ui/").status()).isEqualTo(404);
    }

    private static JsonNode document() throws Exception {
        Answer answer = SignedIn.as("apprentice").get(DOCUMENT + "?format=json");
        assertThat(answer.status()).isEqualTo(200);
        return new ObjectMapper().readTree(answer.body());
    }

    private static Set<String> endpoints() {
        Set<String> endpoints = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.riseandgel")) {
            type.tryGetAnnotationOfType(Path.class)
                    .ifPresent(root -> type.getMethods().forEach(method -> add(endpoints, root.value(), method)));
        }
        endpoints.removeIf(endpoint -> !endpoint.contains(" /api/v1/"));
        return endpoints;
    }

    private static void add(Set<String> endpoints, String root, JavaMethod method) {
        String path = root
                + method.tryGetAnnotationOfType(Path.class).map(Path::value).orElse("");
        METHODS.stream()
                .filter(method::isAnnotatedWith)
                .forEach(kind -> endpoints.add(kind.getSimpleName() + " " + path));
    }
}
