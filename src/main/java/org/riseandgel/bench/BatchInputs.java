package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;

/** The inputs and cautions that several calculations of a batch or a mold share. */
final class BatchInputs {
    static final String CAVITY = "cavity";
    static final String OVERFILL = "overfill";

    private BatchInputs() {}

    static Input.Measured cavity(double byDefault) {
        return new Input.Measured(
                CAVITY,
                "Cavity of one mold",
                "What one piece takes, without overfill.",
                MILLILITRE,
                1,
                100_000,
                byDefault);
    }

    static Input.Measured overfill() {
        return new Input.Measured(
                OVERFILL,
                "Overfill",
                "What is to squeeze out all round, as a share of the cavity. 20 % is only a start; your mold decides.",
                PERCENT,
                0,
                90,
                20.0);
    }

    static Input.Measured expansion(String help) {
        return new Input.Measured(ScaleBatch.EXPANSION, "Expansion ratio", help, ONE, 1, 20, 4.0);
    }

    static Input.Measured liquidDensity() {
        return new Input.Measured(
                ScaleBatch.DENSITY,
                "Density of the liquid before whipping",
                "1.02 g/mL is common practice, no source. Weigh a measured volume of yours.",
                GRAM_PER_MILLILITRE,
                0.5,
                2,
                1.02);
    }

    static Input.Measured foamingAgent() {
        return php(
                ScaleBatch.FOAMING_PHP, "Foaming agent", "15 g to 150 g of base (common practice, no source).", 10.0);
    }

    static Input.Measured water() {
        return php(ScaleBatch.WATER_PHP, "Water", "5 g to 150 g of base (common practice, no source).", 3.33);
    }

    static Input.Measured gellingAgent() {
        return php(
                ScaleBatch.GELLING_PHP,
                "Gelling agent",
                "As weighed, that is as dispersion: 10 to 12 php (common practice, no source).",
                11.0);
    }

    static Input.Measured readability() {
        return new Input.Measured(
                ScaleBatch.READABILITY, "Balance reads to", "The smallest step of its display.", GRAM, 0.001, 10, 0.1);
    }

    /** What must stand beside everything with which the gelling agent is weighed. */
    static List<String> gellingAgentCautions() {
        return List.of("The gelling agent is toxic: swallowed, breathed in, or on the skin. Read its safety data sheet"
                + " first. Weigh it only if you are cleared to.");
    }

    private static Input.Measured php(String name, String label, String help, double byDefault) {
        return new Input.Measured(name, label, help, PHP, 0, 50, byDefault);
    }
}
