package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.BatchInVessel;
import org.riseandgel.core.batch.Formula;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/** How a batch stands in the vessel that it is whipped in. */
public final class FitBatch implements Calculation {
    @Override
    public String id() {
        return "batch-in-vessel";
    }

    @Override
    public String title() {
        return "Batch in its vessel";
    }

    @Override
    public String purpose() {
        return "How high a batch stands before and after whipping, and whether it stays below the rim.";
    }

    @Override
    public Task task() {
        return Task.WHIPPING;
    }

    @Override
    public List<Input> inputs() {
        Input.Measured total = new Input.Measured(
                ScaleBatch.TOTAL, "Whole batch", "All ingredients together.", GRAM, 1, 100_000, 400.0);
        return Stream.concat(
                        Stream.of(total, BatchInputs.liquidDensity()),
                        new MarkStick()
                                .inputs().stream().filter(input -> !input.name().equals(MarkStick.CHARGE)))
                .toList();
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(ScaleBatch.LIQUID_VOLUME, "Liquid before whipping", MILLILITRE, 1),
                new Result(MarkStick.LIQUID_HEIGHT, "The liquid stands at", CENTIMETRE, 0.1),
                new Result(MarkStick.MARK_HEIGHT, "The foam will stand at", CENTIMETRE, 0.1),
                new Result(MarkStick.FREEBOARD, "Room left below the rim", CENTIMETRE, 0.1),
                new Result(MarkStick.LARGEST_RATIO, "Largest ratio that fits below the rim", ONE, 0.01));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("ratio") ? MarkStick.RATIO : ScaleBatch.TOTAL;
    }

    @Override
    public boolean uses(String input, Given given) {
        return new MarkStick().uses(input, given);
    }

    @Override
    public void work(Given given, Work work) {
        Mass total = given.get(ScaleBatch.TOTAL, Mass.class);
        Density density = BatchWork.density(given);
        refuseWhatDoesNotFit(given, total, density);
        Volume liquid = work.step(
                ScaleBatch.LIQUID_VOLUME,
                "Liquid before whipping",
                "V = total ÷ density",
                "{} ÷ {}",
                Batch.volumeOf(total, density),
                MILLILITRE,
                Work.In.of(total, GRAM),
                Work.In.of(density, GRAM_PER_MILLILITRE));
        work.result(ScaleBatch.LIQUID_VOLUME, liquid);
        Given poured = given.with(MarkStick.CHARGE, liquid);
        StickWork stick = new StickWork(poured, work);
        if (MarkStick.isTapered(poured)) {
            stick.workTapered();
        } else {
            stick.workStraight();
        }
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                ScaleBatch.LIQUID_VOLUME,
                () -> Volume.ofMillilitres(total.inGrams() * density.inGramsPerMillilitre()));
        work.slip(Slip.DENSITY_LEFT_OUT, ScaleBatch.LIQUID_VOLUME, () -> Volume.ofMillilitres(total.inGrams()));
        new StickSlips(poured, work).write();
        work.note("All heights are from the inside floor. Leave a hand's breadth below the rim, or it splashes.");
    }

    @Override
    public Optional<String> drawing(Given given, Outcome outcome, QuantityText text) {
        Volume liquid = (Volume) outcome.results().get(ScaleBatch.LIQUID_VOLUME);
        return Optional.of(new VesselDrawing(given.with(MarkStick.CHARGE, liquid), outcome, text).svg());
    }

    /** The core names the largest ratio that fits; which ingredients the batch is made of is of no account to its level. */
    private static void refuseWhatDoesNotFit(Given given, Mass total, Density density) {
        BatchInVessel.of(
                Batch.ofTotal(Formula.usual(), total),
                density,
                given.get(MarkStick.RATIO, Ratio.class),
                MarkStick.vessel(given),
                given.get(MarkStick.WHISK, Volume.class));
    }
}
