package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.quantity.Unit;

/** What to weigh of each ingredient, from the base, the whole batch or the foam that is wanted. */
public final class ScaleBatch implements Calculation {
    static final String TARGET = "target";
    static final String FROM_BASE = "base";
    static final String FROM_TOTAL = "total";
    static final String FROM_FOAM = "foam";
    static final String BASE = "base";
    static final String TOTAL = "total";
    static final String FOAM = "foam";
    static final String EXPANSION = "expansion";
    static final String DENSITY = "liquidDensity";
    static final String FOAMING_PHP = "foamingAgentPhp";
    static final String WATER_PHP = "waterPhp";
    static final String GELLING_PHP = "gellingAgentPhp";
    static final String READABILITY = "readability";
    static final String BASE_MASS = "baseMass";
    static final String FOAMING_MASS = "foamingAgentMass";
    static final String WATER_MASS = "waterMass";
    static final String GELLING_MASS = "gellingAgentMass";
    static final String TOTAL_MASS = "totalMass";
    static final String LIQUID_VOLUME = "liquidVolume";

    @Override
    public String id() {
        return "scale-batch";
    }

    @Override
    public String title() {
        return "Batch";
    }

    @Override
    public String purpose() {
        return "What to weigh of each ingredient for the amount that you need.";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Choice(
                        TARGET,
                        "Start from",
                        "Only the amount that belongs to your choice is used.",
                        List.of(
                                new Input.Option(FROM_BASE, "the base I want to use"),
                                new Input.Option(FROM_TOTAL, "what the whole batch shall weigh"),
                                new Input.Option(FROM_FOAM, "the foam I need"))),
                amount(BASE, "Base", "150 g is a usual small batch (common practice, no source).", GRAM, 150.0),
                amount(TOTAL, "Whole batch", "All ingredients together.", GRAM, 200.0),
                amount(FOAM, "Foam", "What the mold takes, overfill included.", MILLILITRE, 800.0),
                new Input.Measured(
                        EXPANSION,
                        "Expansion ratio",
                        "How many times the liquid's volume the foam has. Used when you start from the foam.",
                        ONE,
                        1,
                        20,
                        4.0),
                new Input.Measured(
                        DENSITY,
                        "Density of the liquid before whipping",
                        "1.02 g/mL is common practice, no source. Weigh a measured volume of yours.",
                        GRAM_PER_MILLILITRE,
                        0.5,
                        2,
                        1.02),
                php(FOAMING_PHP, "Foaming agent", "15 g to 150 g of base (common practice, no source).", 10.0),
                php(WATER_PHP, "Water", "5 g to 150 g of base (common practice, no source).", 3.33),
                php(GELLING_PHP, "Gelling agent", "10 to 12 php (common practice, no source).", 11.0),
                new Input.Measured(
                        READABILITY, "Balance reads to", "The smallest step of its display.", GRAM, 0.001, 10, 0.1));
    }

    @Override
    public List<Result> results() {
        return List.of(
                grams(BASE_MASS, "Base"),
                grams(FOAMING_MASS, "Foaming agent"),
                grams(WATER_MASS, "Water"),
                grams(GELLING_MASS, "Gelling agent, chilled, last"),
                grams(TOTAL_MASS, "Whole batch"),
                new Result(LIQUID_VOLUME, "Liquid before whipping", MILLILITRE, 1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("readability") ? READABILITY : TARGET;
    }

    @Override
    public void work(Given given, Work work) {
        BatchWork batch = new BatchWork(given, work);
        batch.write();
        new BatchSlips(given, work).write();
        batch.writeWeighing();
    }

    @Override
    public List<String> cautions() {
        return List.of("The gelling agent is toxic: swallowed, breathed in, or on the skin. Read its safety data sheet"
                + " first. Weigh it only if you are cleared to.");
    }

    private static Input.Measured amount(String name, String label, String help, Unit unit, double byDefault) {
        return new Input.Measured(name, label, help, unit, 1, 100_000, byDefault);
    }

    private static Input.Measured php(String name, String label, String help, double byDefault) {
        return new Input.Measured(name, label, help, PHP, 0, 50, byDefault);
    }

    private static Result grams(String name, String label) {
        return new Result(name, label, GRAM, 0.1);
    }
}
