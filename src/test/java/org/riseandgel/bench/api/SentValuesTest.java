package org.riseandgel.bench.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.bench.Attempt;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Unit;

class SentValuesTest {
    private final Calculation foam = Catalogue.standard().find("foam-density").orElseThrow();

    @Test
    void aNumberMeansTheSameWhateverMarkTheSchoolWrites() {
        for (DecimalMark mark : DecimalMark.values()) {
            SentValues sent =
                    read("{\"fullCup\": 1.234e1, \"emptyCup\": 1.125}", mark).orElseThrow();
            Attempt attempt = Attempt.at(Catalogue.standard(), foam, sent.typed(), mark);
            assertThat(attempt.problems()).as(mark.name()).isEmpty();
            assertThat(attempt.given().orElseThrow().quantities().get("fullCup").in(Unit.GRAM))
                    .isEqualTo(12.34);
            assertThat(attempt.given()
                            .orElseThrow()
                            .quantities()
                            .get("emptyCup")
                            .in(Unit.GRAM))
                    .isEqualTo(1.125);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "[]",
                "3",
                "null",
                "\"x\"",
                "{",
                "{\"fullCup\": }",
                "{} {}",
                "{\"a\":1,\"a\":2}",
                "{'a':1}",
                "{\"fullCup\": NaN}",
                "\u0000"
            })
    void whatIsNoJsonObjectIsNotRead(String body) {
        assertThat(read(body, DecimalMark.POINT)).isEmpty();
    }

    @Test
    void bytesThatAreNoTextAreNotRead() {
        byte[] body = {'{', '"', (byte) 0xff, (byte) 0xc0, '"', ':', '1', '}'};
        assertThat(SentValues.read(body, foam, DecimalMark.POINT)).isEmpty();
    }

    @Test
    void aHugePowerStaysShort() {
        SentValues sent = read("{\"fullCup\": 1e999999999, \"emptyCup\": 1e-999999999}", DecimalMark.POINT)
                .orElseThrow();
        assertThat(sent.typed().values()).allMatch(typed -> typed.length() < 20);
    }

    @Test
    void otherNamesAndOtherKindsOfValueAreToldEach() {
        SentValues sent = read("{\"fulCup\": 3, \"fullCup\": null, \"emptyCup\": [1]}", DecimalMark.POINT)
                .orElseThrow();
        assertThat(sent.errors()).extracting("field").containsExactly("fulCup", "fullCup", "emptyCup");
        assertThat(sent.errors().get(0).detail()).contains("fullCup, ");
    }

    private Optional<SentValues> read(String body, DecimalMark mark) {
        return SentValues.read(body.getBytes(StandardCharsets.UTF_8), foam, mark);
    }
}
