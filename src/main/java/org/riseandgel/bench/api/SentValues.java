package org.riseandgel.bench.api;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.web.ApiProblem;

/**
 * The values in the body of a request, as if somebody had typed them: a text stays as it is, and a number is written
 * with the school's decimal mark and so is in the input's own unit.
 */
record SentValues(Map<String, String> typed, List<ApiProblem.FieldError> errors) {
    private static final ObjectReader JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build()
            .reader();

    /** Reads the body; empty when it is no JSON object. */
    static Optional<SentValues> read(byte[] body, Calculation calculation, DecimalMark mark) {
        try {
            JsonNode sent = JSON.readTree(body);
            return sent != null && sent.isObject() ? Optional.of(of(sent, calculation, mark)) : Optional.empty();
        } catch (IOException malformed) {
            return Optional.empty();
        }
    }

    private static SentValues of(JsonNode sent, Calculation calculation, DecimalMark mark) {
        List<String> names = calculation.inputs().stream().map(Input::name).toList();
        Map<String, String> typed = new LinkedHashMap<>();
        List<ApiProblem.FieldError> errors = new ArrayList<>();
        sent.properties().forEach(value -> {
            JsonNode node = value.getValue();
            if (!names.contains(value.getKey())) {
                errors.add(new ApiProblem.FieldError(
                        value.getKey(), "There is no such input. The inputs are " + String.join(", ", names) + "."));
            } else if (isMesh(calculation, value.getKey())) {
                errors.add(new ApiProblem.FieldError(
                        value.getKey(), "A mesh can only be sent with the form of the sheet; leave it out here."));
            } else if (node.isTextual()) {
                typed.put(value.getKey(), node.textValue());
            } else if (node.isNumber()) {
                // never written out in full, which 1e999999999 would turn into a gigabyte of zeros
                typed.put(value.getKey(), node.decimalValue().toString().replace('.', mark.mark()));
            } else {
                errors.add(new ApiProblem.FieldError(
                        value.getKey(), "Send a text such as \"250 mL\", or a number in the input's own unit."));
            }
        });
        return new SentValues(typed, errors);
    }

    private static boolean isMesh(Calculation calculation, String name) {
        return calculation.inputs().stream()
                .anyMatch(input -> input instanceof Input.Mesh && input.name().equals(name));
    }
}
