package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Formula;
import org.riseandgel.core.batch.Stock;
import org.riseandgel.core.quantity.Mass;

/** The largest batch that what is on the shelf allows. */
public final class BatchFromStock implements Calculation {
    static final String BASE = "baseStock";
    static final String FOAMING = "foamingAgentStock";
    static final String WATER = "waterStock";
    static final String GELLING = "gellingAgentStock";
    static final String RUNS_OUT = "runsOut";
    /** The fields in the order of the formula's rows. */
    private static final List<String> STOCKS = List.of(BASE, FOAMING, WATER, GELLING);

    @Override
    public String id() {
        return "batch-from-stock";
    }

    @Override
    public String title() {
        return "Batch from what is there";
    }

    @Override
    public String purpose() {
        return "The largest batch that your shelf allows, and what runs out first.";
    }

    @Override
    public Task task() {
        return Task.WEIGHING_OUT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                stock(BASE, "Base in stock", "What is left of it, without the container.", 1000),
                stock(FOAMING, "Foaming agent in stock", "The same, weighed without the container.", 90),
                stock(WATER, "Water in stock", "Water for the batch; 1 mL weighs 1 g.", 500),
                stock(
                        GELLING,
                        "Gelling agent in stock",
                        "As the label and your record say. Do not weigh it just to know what is left.",
                        80),
                BatchInputs.foamingAgent(),
                BatchInputs.water(),
                BatchInputs.gellingAgent(),
                BatchInputs.liquidDensity(),
                BatchInputs.readability());
    }

    @Override
    public List<Finding> findings() {
        return List.of(new Finding(RUNS_OUT, "Runs out first"));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(ScaleBatch.BASE_MASS, "Base", GRAM, 0.1),
                new Result(ScaleBatch.FOAMING_MASS, "Foaming agent", GRAM, 0.1),
                new Result(ScaleBatch.WATER_MASS, "Water", GRAM, 0.1),
                new Result(ScaleBatch.GELLING_MASS, "Gelling agent, chilled, last", GRAM, 0.1),
                new Result(ScaleBatch.TOTAL_MASS, "Whole batch", GRAM, 0.1),
                new Result(ScaleBatch.LIQUID_VOLUME, "Liquid before whipping", MILLILITRE, 1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("readability") ? ScaleBatch.READABILITY : BASE;
    }

    @Override
    public void work(Given given, Work work) {
        Formula formula = BatchWork.formula(given);
        Stock.Most most = stock(given, formula).most(formula);
        work.finding(RUNS_OUT, String.join(", ", most.limiting()));
        Given fromBase = given.choosing(ScaleBatch.TARGET, ScaleBatch.FROM_BASE)
                .with(ScaleBatch.BASE, largestBase(given, formula, work));
        BatchWork batch = new BatchWork(fromBase, work);
        batch.write();
        slips(given, formula, most, work);
        new BatchSlips(fromBase, work).write();
        batch.writeWeighing();
    }

    @Override
    public List<String> cautions() {
        return BatchInputs.gellingAgentCautions();
    }

    private static Stock stock(Given given, Formula formula) {
        Map<String, Mass> masses = new LinkedHashMap<>();
        for (int row = 0; row < STOCKS.size(); row++) {
            masses.put(formula.rows().get(row).ingredient(), given.get(STOCKS.get(row), Mass.class));
        }
        return new Stock(masses);
    }

    /** The base that each ingredient would do for; the smallest decides. An ingredient without parts limits nothing. */
    private static Mass largestBase(Given given, Formula formula, Work work) {
        List<Mass> bases = new ArrayList<>();
        for (int at = 0; at < STOCKS.size(); at++) {
            Formula.Row row = formula.rows().get(at);
            if (row.php().inPartsPerHundred() > 0) {
                Mass there = given.get(STOCKS.get(at), Mass.class);
                bases.add(work.step(
                        STOCKS.get(at) + "Base",
                        row.ingredient() + ": the base that it does for",
                        "base = stock ÷ (php ÷ 100)",
                        "{} ÷ ({} ÷ 100)",
                        Batch.baseFor(there, row.php()),
                        GRAM,
                        Work.In.of(there, GRAM),
                        Work.In.of(row.php(), PHP)));
            }
        }
        return bases.stream()
                .min((one, other) -> Double.compare(one.inGrams(), other.inGrams()))
                .orElseThrow();
    }

    private static void slips(Given given, Formula formula, Stock.Most most, Work work) {
        Mass wholeStock = given.get(BASE, Mass.class);
        work.slip(Slip.FIRST_OUT_OVERLOOKED, ScaleBatch.BASE_MASS, () -> wholeStock);
        work.slip(Slip.FIRST_OUT_OVERLOOKED, ScaleBatch.TOTAL_MASS, () -> Batch.ofBase(formula, wholeStock)
                .total());
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                ScaleBatch.BASE_MASS,
                () -> Batch.portionOf(
                        limitingStock(given, formula, most),
                        formula.row(first(most)).php()));
    }

    private static Mass limitingStock(Given given, Formula formula, Stock.Most most) {
        return stock(given, formula).masses().get(first(most));
    }

    private static String first(Stock.Most most) {
        return most.limiting().get(0);
    }

    private static Input.Measured stock(String name, String label, String help, double byDefault) {
        return new Input.Measured(name, label, help, GRAM, 0.1, 1_000_000, byDefault);
    }
}
