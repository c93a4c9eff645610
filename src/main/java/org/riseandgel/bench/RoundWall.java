package org.riseandgel.bench;

import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.Frustum;

/**
 * The wall of a round vessel as somebody takes it to be, rightly or not: it goes on above the rim, since a slip on paper
 * knows no rim either.
 */
record RoundWall(Length floorRadius, Length rimRadius, Length depth) {
    Length heightOf(Volume volume) {
        return Frustum.height(volume, floorRadius, Frustum.levelRadius(floorRadius, rimRadius, depth, volume));
    }

    Volume capacity() {
        return Frustum.volume(floorRadius, rimRadius, depth);
    }

    RoundWall scaled(double factor) {
        return new RoundWall(
                Length.ofMillimetres(factor * floorRadius.inMillimetres()),
                Length.ofMillimetres(factor * rimRadius.inMillimetres()),
                depth);
    }

    RoundWall uprightOnFloor() {
        return new RoundWall(floorRadius, floorRadius, depth);
    }
}
