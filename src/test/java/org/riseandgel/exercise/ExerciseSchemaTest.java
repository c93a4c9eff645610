package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The JSON Schema of exercise files against a validator that is not ours: it takes what the loader takes, and refuses
 * broken files as far as their shape tells that they are broken.
 */
class ExerciseSchemaTest {
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final JsonSchema SCHEMA = schema();

    /** Mistakes of the samples that only the meaning of the words, or other files, can tell. */
    private static final Set<String> OF_MEANING = Set.of(
            "wrong id",
            "wrong folder",
            "unknown skill",
            "unknown unit",
            "number too long",
            "inverted range",
            "step that misses the end",
            "a choice twice",
            "unknown calculation",
            "unknown input",
            "missing input",
            "undrawn input",
            "input of another kind",
            "input out of range",
            "unknown option",
            "chosen though measured",
            "measured though chosen",
            "result of a later work",
            "unknown result",
            "asks for a drawn value",
            "unknown step",
            "unit of another kind",
            "step of another kind",
            "tolerance finer than the stick",
            "condition nobody can meet",
            "condition in another kind",
            "slip that is always looked for",
            "slip that cannot happen",
            "unknown name in a text",
            "lonely brace",
            "unknown name in a hint",
            "drawn but never used",
            "drawn but never told",
            "given step that is none",
            "given step not in the working",
            "given step that tells the answer",
            "never possible",
            "condition never met",
            "tolerance that blurs every slip",
            "an unknown objective",
            "an option twice",
            "all of the above",
            "more shown than there are",
            "a tie to itself",
            "a tie over a step between",
            "a tie to no step",
            "all steps tied",
            "a step twice",
            "no such figure",
            "an entry of others that belongs to something",
            "a left side twice",
            "too few right sides",
            // Other readers of YAML take yes for true.
            "right that is no flag",
            // What makes a text no YAML at all leaves nothing to look at.
            "not yaml",
            "a name twice",
            "an alias",
            "a tag");

    @ParameterizedTest
    @MethodSource("files")
    void everyExerciseHasTheShape(Path file) throws IOException {
        assertThat(faults(Files.readString(file))).isEmpty();
    }

    @Test
    void theSamplesHaveTheShape() {
        for (String sample : Samples.ALL) {
            assertThat(faults(Samples.file(sample).text())).as(sample).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.riseandgel.exercise.BrokenTemplatesTest#mistakes")
    void refusesABrokenNumericExercise(String mistake, String right, String wrong, String report) {
        refused(mistake, Samples.file(Samples.BEAKER).text().replace(right, wrong));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.riseandgel.exercise.BrokenChoicesTest#mistakes")
    void refusesABrokenChoice(String mistake, String good, String right, String wrong, String report) {
        refused(mistake, good.replace(right, wrong));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "7", "{}", "{ kind: numeric }", "{ kind: match, id: a }"})
    void refusesWhatIsNoExercise(String text) {
        assertThat(faults(text)).isNotEmpty();
    }

    private static void refused(String mistake, String text) {
        if (!OF_MEANING.contains(mistake)) {
            assertThat(faults(text)).as(mistake).isNotEmpty();
        }
    }

    static List<Path> files() throws IOException {
        try (Stream<Path> paths = Files.walk(Path.of("exercises"))) {
            return paths.filter(path -> path.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static Set<ValidationMessage> faults(String text) {
        try {
            JsonNode node = YAML.readTree(text);
            return SCHEMA.validate(node);
        } catch (IOException noYaml) {
            throw new UncheckedIOException(noYaml);
        }
    }

    private static JsonSchema schema() {
        try (InputStream in = ExerciseSchemaTest.class.getResourceAsStream("/schema/exercise.schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
