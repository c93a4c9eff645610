package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.CUBIC_METRE_PER_HOUR;
import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM_PER_CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PER_HOUR;

import java.util.function.DoubleSupplier;
import org.riseandgel.core.air.SaltInAir;
import org.riseandgel.core.air.SaltMass;
import org.riseandgel.core.air.SaltRelease;
import org.riseandgel.core.air.Shift;
import org.riseandgel.core.air.WellMixedRoom;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Flow;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Rate;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

/** The steps from a release of dust to the air of a room, as fluoride against the limit. */
final class RoomAirWork {
    private static final double MINUTES_PER_HOUR = 60;

    private final Given given;
    private final Work work;
    private final Mass dust;
    private final TimeSpan over;
    private final Volume room;
    private final TimeSpan time;

    RoomAirWork(Given given, Work work) {
        this.given = given;
        this.work = work;
        dust = given.get(EstimateRoomAir.DUST, Mass.class);
        over = given.get(EstimateRoomAir.OVER, TimeSpan.class);
        room = given.get(EstimateRoomAir.ROOM, Volume.class);
        time = given.get(EstimateRoomAir.TIME, TimeSpan.class);
    }

    void write() {
        Rate changes = changes();
        Density salt = changes.perHour() > 0 ? aired(changes) : unaired();
        Concentration share = SaltInputs.fluorideShare(SaltInputs.molarMass(SaltInputs.salt(given), work), work);
        Density fluoride = SaltInputs.asFluoride(EstimateRoomAir.FLUORIDE_AIR, salt, share, work);
        Ratio ofLimit = SaltInputs.shareOfLimit(fluoride, work);
        work.result(EstimateRoomAir.SALT_AIR, salt);
        work.result(EstimateRoomAir.FLUORIDE_AIR, fluoride);
        work.result(SaltInputs.SHARE_OF_LIMIT, ofLimit);
        work.finding(
                EstimateRoomAir.AGAINST_LIMIT,
                ofLimit.asNumber() > 1
                        ? "Above the limit, on paper already: never work like that."
                        : "Below the limit on paper, which clears nobody.");
        slips(changes.perHour(), share.asFraction());
    }

    private Rate changes() {
        if (given.choice(EstimateRoomAir.VENTILATION).equals(EstimateRoomAir.BY_CHANGES)) {
            return given.get(EstimateRoomAir.CHANGES, Rate.class);
        }
        Flow flow = given.get(EstimateRoomAir.FLOW, Flow.class);
        return work.step(
                EstimateRoomAir.CHANGES,
                "Air changes",
                "λ = flow ÷ volume",
                "{} ÷ {}",
                Rate.ofPerHour(WellMixedRoom.withFlow(room, flow.inCubicMetresPerHour())
                        .airChangesPerHour()),
                PER_HOUR,
                Work.In.of(flow, CUBIC_METRE_PER_HOUR),
                Work.In.of(room, CUBIC_METRE));
    }

    private Density aired(Rate changes) {
        Density settled = work.step(
                "settled",
                "What the air tends to",
                "dust ÷ its time ÷ volume ÷ λ",
                "{} ÷ {} ÷ {} ÷ {}",
                air(room(changes.perHour()).settled(release())),
                MILLIGRAM_PER_CUBIC_METRE,
                Work.In.of(dust, MILLIGRAM),
                Work.In.of(over, HOUR),
                Work.In.of(room, CUBIC_METRE),
                Work.In.of(changes, PER_HOUR));
        Ratio reached = work.step(
                "reached",
                "How far it has come on the way",
                "1 − e^(−λ × t)",
                "1 − e^(−{} × {})",
                Ratio.of(-StrictMath.expm1(-changes.perHour() * time.inHours())),
                ONE,
                Work.In.of(changes, PER_HOUR),
                Work.In.of(time, HOUR));
        return work.step(
                EstimateRoomAir.SALT_AIR,
                "Salt in the air now",
                "C = what it tends to × how far it has come",
                "{} × {}",
                SaltInputs.inAir(SaltInputs.milligrams(settled) * reached.asNumber()),
                MILLIGRAM_PER_CUBIC_METRE,
                SaltInputs.in(settled),
                Work.In.of(reached, ONE));
    }

    private Density unaired() {
        return work.step(
                EstimateRoomAir.SALT_AIR,
                "Salt in the air now: all of it is still there",
                "C = dust ÷ its time × t ÷ volume",
                "{} ÷ {} × {} ÷ {}",
                air(now(0)),
                MILLIGRAM_PER_CUBIC_METRE,
                Work.In.of(dust, MILLIGRAM),
                Work.In.of(over, HOUR),
                Work.In.of(time, HOUR),
                Work.In.of(room, CUBIC_METRE));
    }

    private void slips(double changes, double share) {
        double now = now(changes).inMilligramsPerCubicMetre();
        both(Slip.AIR_CHANGE_LEFT_OUT, share, () -> now(0).inMilligramsPerCubicMetre());
        both(Slip.SETTLED_FOR_NOW, share, () -> room(changes).settled(release()).inMilligramsPerCubicMetre());
        both(Slip.MINUTES_FOR_HOURS, share, () -> now / MINUTES_PER_HOUR);
        air(Slip.SALT_FOR_FLUORIDE, EstimateRoomAir.FLUORIDE_AIR, () -> now);
        air(Slip.DIVIDED_FOR_MULTIPLIED, EstimateRoomAir.FLUORIDE_AIR, () -> now / share);
        double limit = Shift.LIMIT.inMilligramsPerCubicMetre();
        work.slip(Slip.SALT_FOR_FLUORIDE, SaltInputs.SHARE_OF_LIMIT, () -> Ratio.of(now / limit));
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                SaltInputs.SHARE_OF_LIMIT,
                () -> Ratio.of(limit / now / share),
                "What is in the air stands above the limit.");
    }

    private void both(Slip slip, double share, DoubleSupplier salt) {
        air(slip, EstimateRoomAir.SALT_AIR, salt);
        air(slip, EstimateRoomAir.FLUORIDE_AIR, () -> salt.getAsDouble() * share);
    }

    private void air(Slip slip, String result, DoubleSupplier milligrams) {
        work.slip(slip, result, () -> SaltInputs.inAir(milligrams.getAsDouble()));
    }

    private SaltInAir now(double changes) {
        return room(changes).after(time, SaltInAir.ofMilligramsPerCubicMetre(0), release());
    }

    private WellMixedRoom room(double changes) {
        return new WellMixedRoom(room, changes);
    }

    private SaltRelease release() {
        return new SaltRelease(SaltMass.ofGrams(dust.inGrams()), over);
    }

    private static Density air(SaltInAir salt) {
        return SaltInputs.inAir(salt.inMilligramsPerCubicMetre());
    }
}
