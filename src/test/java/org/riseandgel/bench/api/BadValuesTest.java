package org.riseandgel.bench.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;

/** Five hundred bad values from a seed, over all calculations: each is told with its name and a reason. */
@QuarkusTest
class BadValuesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long SEED = 20_260_731;
    private static final int CASES = 500;
    private static final List<String> JUNK = List.of(
            "abc",
            "12..5",
            "1/0",
            "--3",
            "NaN",
            "Infinity",
            "1e999",
            "0x1F",
            "\u0000",
            "12 furlongs",
            "3 g g",
            "٣",
            "½½",
            "1,2,3,4",
            "'; drop table draw; --",
            "<b>3</b>",
            "${7*7}",
            "🧪",
            "\uD800",
            "\u202e3 g",
            "9".repeat(65),
            "−",
            "3 4 5 6 g");

    private final Random chance = new Random(SEED);

    @Test
    void eachIsRefusedWithItsNameAndAReasonAndNothingBreaks() throws Exception {
        Browserless apprentice = SignedIn.as("apprentice");
        List<Calculation> all = Catalogue.standard().all();
        List<String> errors = Collections.synchronizedList(new ArrayList<>());
        Handler listener = listening(errors);
        Logger.getLogger("").addHandler(listener);
        try {
            for (int i = 0; i < CASES; i++) {
                Calculation calculation = all.get(i % all.size());
                Input input = calculation
                        .inputs()
                        .get(chance.nextInt(calculation.inputs().size()));
                ObjectNode body = JSON.createObjectNode();
                putBad(body, input);
                judge(apprentice.postJson("/api/v1/bench/" + calculation.id(), body.toString()), body, input);
            }
            assertThat(errors).isEmpty();
            Logger.getLogger("org.riseandgel.test").log(Level.SEVERE, "heard");
            assertThat(errors).as("the listener does listen").containsExactly("heard");
        } finally {
            Logger.getLogger("").removeHandler(listener);
        }
    }

    private static void judge(Answer answer, ObjectNode body, Input input) throws Exception {
        String told = body + " → " + answer;
        assertThat(answer.status()).as(told).isEqualTo(400);
        assertThat(answer.header("Content-Type")).as(told).startsWith("application/problem+json");
        JsonNode problems = JSON.readTree(answer.body()).get("errors");
        assertThat(problems).as(told).hasSize(1);
        assertThat(problems.get(0).get("field").asText()).as(told).isEqualTo(input.name());
        assertThat(problems.get(0).get("detail").asText())
                .as(told)
                .hasSizeGreaterThan(10)
                .endsWith(".");
    }

    private void putBad(ObjectNode body, Input input) {
        int way = chance.nextInt(6);
        if (way == 0) {
            putNoValue(body, input.name());
        } else if (input instanceof Input.Measured measured && way <= 2) {
            body.put(input.name(), beyond(measured));
        } else if (input instanceof Input.Measured measured && way == 3) {
            body.put(input.name(), "3 " + foreign(measured.kind()).symbol());
        } else if (!(input instanceof Input.Measured) && way <= 2) {
            // a bare number: no unit where one is needed, and no option of any choice
            body.put(input.name(), chance.nextDouble());
        } else {
            body.put(input.name(), JUNK.get(chance.nextInt(JUNK.size())));
        }
    }

    private void putNoValue(ObjectNode body, String name) {
        switch (chance.nextInt(4)) {
            case 0 -> body.putNull(name);
            case 1 -> body.put(name, chance.nextBoolean());
            case 2 -> body.putArray(name).add(3);
            default -> body.putObject(name).put("value", 3);
        }
    }

    private double beyond(Input.Measured input) {
        double width = (input.high() - input.low()) * (0.001 + chance.nextDouble());
        return chance.nextBoolean() ? input.high() + width : input.low() - width;
    }

    private Unit foreign(QuantityKind kind) {
        return kind == QuantityKind.MASS ? Unit.CENTIMETRE : Unit.GRAM;
    }

    private static Handler listening(List<String> errors) {
        return new Handler() {
            @Override
            public void publish(LogRecord logged) {
                if (logged.getLevel().intValue() >= Level.SEVERE.intValue()) {
                    errors.add(logged.getMessage());
                }
            }

            @Override
            public void flush() {
                // nothing is kept back
            }

            @Override
            public void close() {
                // nothing is open
            }
        };
    }
}
