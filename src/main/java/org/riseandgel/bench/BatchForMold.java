package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.mold.FoamNeeded;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/** What to weigh of each ingredient so that the foam fills one or more molds. */
public final class BatchForMold implements Calculation {
    static final String BOWL_LOSS = "bowlLoss";
    static final String PIECES = "pieces";
    static final String INTO_MOLDS = "intoMolds";
    static final String FOAM_NEEDED = "foamNeeded";

    @Override
    public String id() {
        return "batch-for-mold";
    }

    @Override
    public String title() {
        return "Batch for a mold";
    }

    @Override
    public String purpose() {
        return "What to weigh of each ingredient so that the foam fills your molds.";
    }

    @Override
    public Task task() {
        return Task.MOLD;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                BatchInputs.cavity(300),
                BatchInputs.overfill(),
                new Input.Measured(PIECES, "Pieces", "How many molds are filled from this batch.", ONE, 1, 10_000, 4.0),
                new Input.Measured(
                        BOWL_LOSS,
                        "Bowl loss",
                        "The share of the foam that stays in the bowl and on the tools. 10 % is only a start; weigh yours.",
                        PERCENT,
                        0,
                        80,
                        10.0),
                BatchInputs.expansion("How many times the liquid's volume the foam has."),
                BatchInputs.liquidDensity(),
                BatchInputs.foamingAgent(),
                BatchInputs.water(),
                BatchInputs.gellingAgent(),
                BatchInputs.readability());
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(FOAM_NEEDED, "Foam to whip", MILLILITRE, 1),
                new Result(ScaleBatch.LIQUID_VOLUME, "Liquid before whipping", MILLILITRE, 1),
                new Result(ScaleBatch.TOTAL_MASS, "Whole batch", GRAM, 0.1),
                new Result(ScaleBatch.BASE_MASS, "Base", GRAM, 0.1),
                new Result(ScaleBatch.FOAMING_MASS, "Foaming agent", GRAM, 0.1),
                new Result(ScaleBatch.WATER_MASS, "Water", GRAM, 0.1),
                new Result(ScaleBatch.GELLING_MASS, "Gelling agent, chilled, last", GRAM, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("Pieces")
                ? PIECES
                : what.equals("readability") ? ScaleBatch.READABILITY : BatchInputs.CAVITY;
    }

    @Override
    public void work(Given given, Work work) {
        FoamNeeded needed = needed(given);
        Volume foam = foam(needed, work);
        work.result(FOAM_NEEDED, foam);
        Given fromFoam = fromFoam(given, foam);
        BatchWork batch = new BatchWork(fromFoam, work);
        batch.write();
        slips(given, needed, work);
        new BatchSlips(fromFoam, work).write();
        batch.writeWeighing();
    }

    @Override
    public List<String> cautions() {
        return BatchInputs.gellingAgentCautions();
    }

    private static FoamNeeded needed(Given given) {
        return new FoamNeeded(
                given.get(BatchInputs.CAVITY, Volume.class),
                given.get(BatchInputs.OVERFILL, Concentration.class),
                WholeNumber.of(given, PIECES, "Pieces"),
                given.get(BOWL_LOSS, Concentration.class));
    }

    private static Volume foam(FoamNeeded needed, Work work) {
        Volume intoMolds = work.step(
                INTO_MOLDS,
                "Foam that goes into the molds",
                "cavity × (100 % + overfill) × pieces",
                "{} × (100 % + {}) × {}",
                needed.intoMolds(),
                MILLILITRE,
                Work.In.of(needed.cavity(), MILLILITRE),
                Work.In.of(needed.overfill(), PERCENT),
                Work.In.of(Ratio.of(needed.pieces()), ONE));
        return work.step(
                FOAM_NEEDED,
                "Foam to whip",
                "foam = into the molds ÷ (100 % − bowl loss)",
                "{} ÷ (100 % − {})",
                FoamNeeded.toWhip(intoMolds, needed.bowlLoss()),
                MILLILITRE,
                Work.In.of(intoMolds, MILLILITRE),
                Work.In.of(needed.bowlLoss(), PERCENT));
    }

    private static Given fromFoam(Given given, Volume foam) {
        return given.choosing(ScaleBatch.TARGET, ScaleBatch.FROM_FOAM).with(ScaleBatch.FOAM, foam);
    }

    private static void slips(Given given, FoamNeeded right, Work work) {
        Concentration none = Concentration.ofPercent(0);
        Volume withoutOverfill = new FoamNeeded(right.cavity(), none, right.pieces(), right.bowlLoss()).total();
        Volume intoMolds = right.intoMolds();
        everywhere(Slip.OVERFILL_LEFT_OUT, given, withoutOverfill, work);
        everywhere(Slip.BOWL_LOSS_LEFT_OUT, given, intoMolds, work);
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                FOAM_NEEDED,
                () -> Volume.ofMillilitres(
                        intoMolds.inMillilitres() * (1 - right.bowlLoss().asFraction())));
    }

    /** A wrong volume of foam goes through to every mass. */
    private static void everywhere(Slip slip, Given given, Volume foam, Work work) {
        Given wrong = fromFoam(given, foam);
        Batch batch = BatchWork.batch(wrong);
        work.slip(slip, FOAM_NEEDED, () -> foam);
        work.slip(slip, ScaleBatch.LIQUID_VOLUME, () -> batch.liquid(BatchWork.density(wrong)));
        work.slip(slip, ScaleBatch.TOTAL_MASS, batch::total);
        work.slip(slip, ScaleBatch.BASE_MASS, batch::base);
        List<Batch.Portion> portions = batch.portions();
        work.slip(slip, ScaleBatch.FOAMING_MASS, () -> portions.get(1).mass());
        work.slip(slip, ScaleBatch.WATER_MASS, () -> portions.get(2).mass());
        work.slip(slip, ScaleBatch.GELLING_MASS, () -> portions.get(3).mass());
    }
}
