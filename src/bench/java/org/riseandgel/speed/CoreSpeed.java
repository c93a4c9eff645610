package org.riseandgel.speed;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Formula;
import org.riseandgel.core.batch.WeighingPlan;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.gel.GelModel;
import org.riseandgel.core.gel.GelPrior;
import org.riseandgel.core.gel.GelRecord;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.TaperedVessel;

/** What the workshop computes all day: a batch to weigh, a mark on a tapered cup, a gel forecast. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class CoreSpeed {
    private static final int RECORDS = 200;
    private static final long SEED = 17;
    private static final Php DOSE = Php.ofPartsPerHundred(11);
    private static final Temperature ROOM = Temperature.ofCelsius(21);

    private final Formula formula = Formula.usual();
    private final Mass total = Mass.ofGrams(740);
    private final Mass readability = Mass.ofGrams(0.1);
    private final TaperedVessel cup =
            new TaperedVessel(Length.ofMillimetres(75), Length.ofMillimetres(120), Length.ofMillimetres(180));
    private final Volume foam = Volume.ofMillilitres(720);
    private final List<GelRecord> records = records();
    private final GelModel learned = GelModel.learned(GelPrior.usual(), records);

    /** From the total to what each ingredient's balance must show. */
    @Benchmark
    public WeighingPlan batchPlan() {
        return Batch.ofTotal(formula, total).weighing(readability, true);
    }

    /** The height of a volume in a cup that opens out. */
    @Benchmark
    public Length taperedMark() {
        return cup.heightOf(foam);
    }

    /** The way there and back, as a yardstick for the mark: the volume at a height. */
    @Benchmark
    public Volume taperedVolume() {
        return cup.volumeAt(cup.depth());
    }

    /** Learning from 200 records, and one forecast. */
    @Benchmark
    public GelForecast gelForecastFrom200Records() {
        return GelModel.learned(GelPrior.usual(), records).forecast(DOSE, ROOM, 0.9);
    }

    /** One more forecast from what has been learned. */
    @Benchmark
    public GelForecast gelForecastOnceLearned() {
        return learned.forecast(DOSE, ROOM, 0.9);
    }

    private static List<GelRecord> records() {
        Random chance = new Random(SEED);
        return IntStream.range(0, RECORDS)
                .mapToObj(i -> new GelRecord(
                        Php.ofPartsPerHundred(10 + 2 * chance.nextDouble()),
                        Temperature.ofCelsius(18 + 8 * chance.nextDouble()),
                        TimeSpan.ofMinutes(12.5 * StrictMath.exp(0.1 * chance.nextGaussian()))))
                .toList();
    }
}
