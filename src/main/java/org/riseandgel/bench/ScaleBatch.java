package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;

import java.util.List;
import org.riseandgel.core.quantity.Unit;

/** What to weigh of each ingredient, from the base, the whole batch, the liquid or the foam that is wanted. */
public final class ScaleBatch implements Calculation {
    static final String TARGET = "target";
    static final String FROM_BASE = "base";
    static final String FROM_TOTAL = "total";
    static final String FROM_LIQUID = "liquid";
    static final String FROM_FOAM = "foam";
    static final String BASE = "base";
    static final String TOTAL = "total";
    static final String LIQUID = "liquid";
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
    public Task task() {
        return Task.WEIGHING_OUT;
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
                                new Input.Option(FROM_LIQUID, "the liquid I want to whip"),
                                new Input.Option(FROM_FOAM, "the foam I need"))),
                amount(BASE, "Base", "150 g is a usual small batch (common practice, no source).", GRAM, 150.0),
                amount(TOTAL, "Whole batch", "All ingredients together.", GRAM, 200.0),
                amount(LIQUID, "Liquid before whipping", "What goes into the vessel.", MILLILITRE, 200.0),
                amount(FOAM, "Foam", "What the mold takes, overfill included.", MILLILITRE, 800.0),
                BatchInputs.expansion(
                        "How many times the liquid's volume the foam has. Used when you start from the foam."),
                BatchInputs.liquidDensity(),
                BatchInputs.foamingAgent(),
                BatchInputs.water(),
                BatchInputs.gellingAgent(),
                BatchInputs.readability());
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
    public boolean uses(String input, Given given) {
        return switch (input) {
            case BASE, TOTAL, LIQUID -> given.choice(TARGET).equals(input);
            case FOAM, EXPANSION -> given.choice(TARGET).equals(FROM_FOAM);
            default -> true;
        };
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
        return BatchInputs.gellingAgentCautions();
    }

    private static Input.Measured amount(String name, String label, String help, Unit unit, double byDefault) {
        return new Input.Measured(name, label, help, unit, 1, 100_000, byDefault);
    }

    private static Result grams(String name, String label) {
        return new Result(name, label, GRAM, 0.1);
    }
}
