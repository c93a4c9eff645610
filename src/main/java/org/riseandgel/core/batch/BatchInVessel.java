package org.riseandgel.core.batch;

import java.util.List;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.StickMarks;
import org.riseandgel.core.vessel.Vessel;

/**
 * How a batch stands in the vessel it is whipped in.
 *
 * @param liquid the liquid before whipping
 * @param liquidLevel where it stands above the floor
 * @param foam the foam after whipping
 * @param foamLevel where it stands above the floor
 * @param freeboard from the foam to the rim
 * @param largestRatio at which the foam would reach the rim
 */
public record BatchInVessel(
        Volume liquid, Length liquidLevel, Volume foam, Length foamLevel, Length freeboard, Ratio largestRatio) {

    /**
     * Levels by the vessel's own inverse: of liquid + displaced, and of liquid × expansion + displaced.
     *
     * @param density of the liquid
     * @param expansion the ratio to whip to, 1 or more
     * @param displaced what a whisk that stays in displaces; zero when it is taken out to read
     * @throws OutOfRangeException when the liquid or the foam does not fit, naming the largest ratio that does
     */
    public static BatchInVessel of(Batch batch, Density density, Ratio expansion, Vessel vessel, Volume displaced) {
        Volume liquid = batch.liquid(density);
        StickMarks marks = StickMarks.of(vessel, liquid, List.of(Ratio.of(1), expansion), displaced);
        Length foamLevel = marks.marks().get(1).height();
        return new BatchInVessel(
                liquid,
                marks.marks().get(0).height(),
                batch.foam(density, expansion),
                foamLevel,
                Length.ofMillimetres(Math.max(0, vessel.depth().inMillimetres() - foamLevel.inMillimetres())),
                StickMarks.largestRatio(vessel, liquid, displaced));
    }
}
