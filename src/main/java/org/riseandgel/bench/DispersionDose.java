package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.quantity.Php;

/** The dose of a gelling agent that comes stirred into water: as weighed, as dry salt, and the water that it brings. */
public final class DispersionDose implements Calculation {
    static final String BASE = "base";
    static final String COUNTED = "counted";
    static final String DRY = "dry";
    static final String AS_IT_COMES = "dispersion";
    static final String DRY_DOSE = "dryDose";
    static final String DISPERSION_DOSE = "dispersionDose";
    static final String SOLIDS = "solids";
    static final String DRY_MASS = "dryMass";
    static final String DRY_PHP = "dryPhp";
    static final String DISPERSION_MASS = "dispersionMass";
    static final String WATER_MASS = "waterBrought";
    static final String DISPERSION_PHP = "dispersionPhp";

    @Override
    public String id() {
        return "dispersion-dose";
    }

    @Override
    public String title() {
        return "Dispersion dose";
    }

    @Override
    public String purpose() {
        return "How much dispersion to weigh for a dose of gelling agent, how much dry salt that is, and the water it brings.";
    }

    @Override
    public Task task() {
        return Task.WEIGHING_OUT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(BASE, "Base", "The base in the batch, without the rest.", GRAM, 1, 100_000, 150.0),
                new Input.Choice(
                        COUNTED,
                        "The dose is counted",
                        "As the supplier's sheet says. Only the dose that belongs to your choice is used.",
                        List.of(
                                new Input.Option(DRY, "as dry salt"),
                                new Input.Option(AS_IT_COMES, "as the dispersion that is weighed"))),
                dose(
                        DRY_DOSE,
                        "Dose of dry salt",
                        "Take the supplier's sheet. 11 php of a 40 % dispersion are 4.4 php dry.",
                        4.4),
                dose(
                        DISPERSION_DOSE,
                        "Dose of dispersion",
                        "10 to 12 php as weighed (common practice, no source); the supplier's sheet goes first.",
                        11.0),
                new Input.Measured(
                        SOLIDS,
                        "Solids in the dispersion",
                        "The share of dry salt by mass. Read it from the label of yours; 40 % is only an example.",
                        PERCENT,
                        1,
                        99,
                        40.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(DISPERSION_MASS, "Dispersion to weigh", GRAM, 0.1),
                new Result(DRY_MASS, "Dry salt in it", GRAM, 0.1),
                new Result(WATER_MASS, "Water it brings", GRAM, 0.1),
                new Result(DISPERSION_PHP, "Dose counted as dispersion", PHP, 0.1),
                new Result(DRY_PHP, "Dose counted as dry salt", PHP, 0.1));
    }

    @Override
    public boolean uses(String input, Given given) {
        return switch (input) {
            case DRY_DOSE -> given.choice(COUNTED).equals(DRY);
            case DISPERSION_DOSE -> given.choice(COUNTED).equals(AS_IT_COMES);
            default -> true;
        };
    }

    @Override
    public String inputAt(String what) {
        return SOLIDS;
    }

    @Override
    public void work(Given given, Work work) {
        if (given.choice(COUNTED).equals(DRY)) {
            new DispersionWork(given, work).fromDry(given.get(DRY_DOSE, Php.class));
        } else {
            new DispersionWork(given, work).fromDispersion(given.get(DISPERSION_DOSE, Php.class));
        }
    }

    @Override
    public List<String> cautions() {
        return BatchInputs.gellingAgentCautions();
    }

    private static Input.Measured dose(String name, String label, String help, double byDefault) {
        return new Input.Measured(name, label, help, PHP, 0.1, 50, byDefault);
    }
}
