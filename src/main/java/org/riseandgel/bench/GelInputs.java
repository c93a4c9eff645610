package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.DEGREE_CELSIUS;
import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.gel.GelModel;
import org.riseandgel.core.gel.GelPrior;
import org.riseandgel.core.gel.GelRecord;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

/** What every calculation around gelling asks first, and the forecast from it. */
final class GelInputs {
    static final String DOSE = "dose";
    static final String TEMPERATURE = "temperature";
    static final String CHANCE = "chance";
    static final String RECORDS = "records";
    static final String CAUTION =
            "The gelling agent is toxic: swallowed, breathed in, or on the skin. Read the supplier's"
                    + " safety data sheet first; that sheet, local rules and your school decide. Handle it only if you are cleared to.";

    private GelInputs() {}

    static Input dose() {
        return new Input.Measured(
                DOSE,
                "Dose of gelling agent",
                "As weighed, that is as dispersion: 10 to 12 php (common practice, no source).",
                PHP,
                1,
                50,
                11.0);
    }

    static Input temperature() {
        return new Input.Measured(
                TEMPERATURE,
                "Temperature of the foam",
                "In the foam, not in the room. 21 °C is a usual workshop.",
                DEGREE_CELSIUS,
                0,
                50,
                21.0);
    }

    static Input chance() {
        return new Input.Measured(
                CHANCE,
                "Chance that the gel falls between early and late",
                "90 % leaves one batch in twenty that gels before the early end.",
                PERCENT,
                50,
                99,
                90.0);
    }

    static Input records() {
        return new Input.Readings(
                RECORDS,
                "Your own gels, if you have some",
                "A batch to a line: dose; temperature; time to the gel, as in 11 php; 20 °C; 13 min. May be empty.",
                List.of(
                        new Input.Column("dose", PHP, 1, 50),
                        new Input.Column("temperature", DEGREE_CELSIUS, 0, 50),
                        new Input.Column("gel time", MINUTE, 0.2, 1440)),
                List.of());
    }

    /** The usual belief and what the records have taught. */
    static GelModel model(Given given) {
        return GelModel.learned(
                GelPrior.usual(),
                given.rows(RECORDS).stream()
                        .map(row -> new GelRecord(
                                row.get(0, Php.class), row.get(1, Temperature.class), row.get(2, TimeSpan.class)))
                        .toList());
    }

    static GelForecast forecast(Given given) {
        return model(given)
                .forecast(
                        given.get(DOSE, Php.class),
                        given.get(TEMPERATURE, Temperature.class),
                        given.get(CHANCE, Concentration.class).asFraction());
    }
}
