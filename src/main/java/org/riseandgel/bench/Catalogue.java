package org.riseandgel.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.quantity.Unit;

/** All calculations, by id, in the order in which the bench shows them. */
public final class Catalogue {
    private final Map<String, Calculation> byId = new LinkedHashMap<>();

    public Catalogue(List<Calculation> calculations) {
        for (Calculation calculation : calculations) {
            if (byId.put(calculation.id(), calculation) != null) {
                throw new IllegalArgumentException("two calculations are named " + calculation.id());
            }
        }
    }

    /** The catalogue of this workshop. */
    public static Catalogue standard() {
        return new Catalogue(List.of(
                new ScaleBatch(),
                new BatchFromStock(),
                new DispersionDose(),
                new WeighToStep(),
                new CavityFromClay(),
                new CavityFromWater(),
                new CavityFromMesh(),
                new BatchForMold(),
                new MeasureFoam(),
                new FitBatch(),
                new MarkStick(),
                new ProfileVessel(),
                new ForecastRise(),
                new ForecastGel(),
                new RunGelClock(),
                new PlanFilling(),
                new PlanBake(),
                new WeighPiece(),
                new CompareWater(),
                new CompareThickness(),
                new ConvertShrinkage(),
                new CostPiece(),
                new CountFluoride(),
                new CountAcid(),
                new EstimateRoomAir(),
                new AverageShift(),
                new ConvertUnit()));
    }

    /** All of them, in order. */
    public List<Calculation> all() {
        return List.copyOf(byId.values());
    }

    /** The one with that id. */
    public Optional<Calculation> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * Runs a calculation: checks each input against its range, works it, and finds what the usual slips would have
     * given: a unit of an input overlooked, every value rounded before going on.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException when an input is out of its range or the inputs together
     *     make no sense; nothing is guessed
     */
    public Outcome run(Calculation calculation, Given given) {
        InputRange.check(calculation, given);
        return new Run(calculation, given).outcome();
    }

    /**
     * As {@link #run(Calculation, Given)}, with the units in which the person was shown some of the inputs: the working
     * begins by converting them, and overlooking them is a slip.
     */
    public Outcome run(Calculation calculation, Given given, Map<String, Unit> shownIn) {
        return run(calculation, given.shownIn(shownIn));
    }
}
