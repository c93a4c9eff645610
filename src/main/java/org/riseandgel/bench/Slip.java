package org.riseandgel.bench;

import java.util.Arrays;
import java.util.Optional;

/** The named mistakes that the workshop knows, each with the line that explains it. */
public enum Slip {
    POWER_OF_TEN("power-of-ten", "Wrong power of ten", "The digits are right, but the decimal mark has moved."),
    OUNCES_FOR_GRAMS("ounces-for-grams", "Ounces taken for grams", "One ounce is 28.35 g, not 1 g."),
    POUNDS_FOR_GRAMS("pounds-for-grams", "Pounds taken for grams", "One pound is 453.6 g."),
    INCHES_FOR_CENTIMETRES("inches-for-centimetres", "Inches taken for centimetres", "One inch is 2.54 cm."),
    INCHES_FOR_MILLIMETRES("inches-for-millimetres", "Inches taken for millimetres", "One inch is 25.4 mm."),
    FAHRENHEIT_FOR_CELSIUS("fahrenheit-for-celsius", "°F taken for °C", "The two scales start and step differently."),
    SCALE_WITHOUT_OFFSET(
            "scale-without-offset", "Offset of 32 left out", "°F start at 32 where °C start at 0: take 32 off first."),
    CUBIC_INCHES_FOR_MILLILITRES(
            "cubic-inches-for-millilitres", "Cubic inches taken for millilitres", "One cubic inch is 16.387 mL."),
    ONE_SIDE_FOR_CUBE(
            "one-side-for-cube",
            "One side converted instead of three",
            "An inch is 2.54 cm, but a cubic inch is 2.54 × 2.54 × 2.54 cm³."),
    SECONDS_AS_HUNDREDTHS(
            "seconds-as-hundredths",
            "Seconds written as hundredths of a minute",
            "A minute has 60 seconds: 90 s are 1.5 min, not 0.9 min."),
    FACTOR_OF_ANOTHER_UNIT(
            "factor-of-another-unit", "Factor of another unit", "That factor belongs to another unit, one row off."),
    CONVERTED_BACKWARDS("converted-backwards", "Converted the wrong way", "Multiplied where the factor divides."),
    OFFSET_AFTER_SCALE(
            "offset-after-scale", "Offset of 32 at the wrong end", "The 32 are °F: take them off, or add them, as °F."),
    MULTIPLIED_FOR_DIVIDED("multiplied-for-divided", "Multiplied instead of divided", "This step divides."),
    DIVIDED_FOR_MULTIPLIED("divided-for-multiplied", "Divided instead of multiplied", "This step multiplies."),
    PERCENT_FOR_PHP(
            "percent-for-php",
            "Percent of the total taken for php",
            "php counts on the base alone, not on the whole batch."),
    BASE_FOR_TOTAL("base-for-total", "Base taken for the whole batch", "The batch is more than its base."),
    DENSITY_LEFT_OUT(
            "density-left-out", "Density left out", "Only of a liquid of 1 g/mL does a millilitre weigh a gram."),
    DIAMETER_FOR_RADIUS("diameter-for-radius", "Diameter taken for radius", "The radius is half the diameter."),
    RADIUS_FOR_DIAMETER("radius-for-diameter", "Radius taken for diameter", "The diameter is twice the radius."),
    AREA_FOR_VOLUME("area-for-volume", "Area taken for volume", "An area becomes a volume only times a height."),
    LIQUID_HEIGHT_MULTIPLIED(
            "liquid-height-multiplied",
            "Liquid height multiplied in a tapered vessel",
            "A tapered vessel does not hold the same in every centimetre: twice the volume is not twice the height."),
    STRAIGHT_FOR_TAPERED(
            "straight-for-tapered",
            "Tapered vessel taken for straight",
            "The wall is not upright, so the bottom alone does not tell."),
    WHISK_LEFT_OUT("whisk-left-out", "Whisk left out", "The whisk stays in and lifts the level by its own volume."),
    WHISK_MULTIPLIED("whisk-multiplied", "Whisk multiplied", "Only the liquid becomes foam; the whisk stays its size."),
    TARE_LEFT_IN("tare-left-in", "Tare left in", "The empty vessel's mass must come off first."),
    RATIO_TURNED_ROUND(
            "ratio-turned-round", "Ratio turned round", "Expansion is foam over liquid, not liquid over foam."),
    GAIN_FOR_RATIO("gain-for-ratio", "Gain taken for ratio", "A ratio of 3 is three times the liquid, a gain of two."),
    OVERFILL_LEFT_OUT("overfill-left-out", "Overfill left out", "The mold needs more foam than its cavity holds."),
    BOWL_LOSS_LEFT_OUT("bowl-loss-left-out", "Bowl loss left out", "Some foam always stays in the bowl."),
    RESERVE_LEFT_OUT(
            "reserve-left-out", "Time in hand left out", "A gel time is a forecast: what is kept in hand comes off."),
    SALT_FOR_FLUORIDE("salt-for-fluoride", "Salt taken for fluoride", "Only part of the salt's mass is fluoride."),
    DISPERSION_FOR_DRY("dispersion-for-dry", "Dispersion taken for dry salt", "Only part of a dispersion is salt."),
    WATER_FOR_SALT("water-for-salt", "Water taken for salt", "The solids are the salt. What is not solids is water."),
    MASS_FOR_VOLUME(
            "mass-for-volume", "Mass taken for volume", "That is how many grams it weighs, not how many mL it fills."),
    FIRST_OUT_OVERLOOKED(
            "first-out-overlooked",
            "What runs out first overlooked",
            "The scarcest ingredient limits the whole batch."),
    WRONG_WHOLE("wrong-whole", "Percent of the wrong whole", "A percentage counts on what it was taken of."),
    SQUARE_LEFT_OUT("square-left-out", "Square left out", "Twice as thick takes four times as long, not twice."),
    DOUBLED_FOR_SQUARED(
            "doubled-for-squared", "Doubled instead of squared", "A square is a number times itself, not times two."),
    LOST_FOR_LEFT(
            "lost-for-left", "What is lost taken for what is left", "What is lost must still come off the whole."),
    DRY_LEFT_IN(
            "dry-left-in", "Dry mass left in", "The foam weighs something when it is dry, and that part is no water."),
    SCRAP_LEFT_OUT("scrap-left-out", "Scrap left out", "Pieces that are no good take material too."),
    CLOSING_LEFT_OUT("closing-left-out", "Closing left out", "Joining and pressing take their time too."),
    DIFFERENCE_FOR_RATIO(
            "difference-for-ratio",
            "Share taken off instead of divided",
            "Twice the dose takes half the time: divide by how many times the dose it is."),
    WHOLE_STEP(
            "whole-step",
            "A whole step taken for a part of it",
            "Twice as long is for 10 °C: less of a step does less."),
    DOSE_LEFT_OUT("dose-left-out", "Dose left out", "More gelling agent gels sooner, less gels later."),
    TEMPERATURE_LEFT_OUT("temperature-left-out", "Temperature left out", "Cold foam gels later, warm foam sooner."),
    COLD_FOR_WARM("cold-for-warm", "Cold and warm turned round", "Cold foam gels later, not sooner."),
    MIDDLE_FOR_EARLY(
            "middle-for-early",
            "Middle taken for the early end",
            "Half of all batches gel before the middle: plan with the early end."),
    START_FOR_END("start-for-end", "Start taken for end", "The last step takes its time too."),
    DURATIONS_ADDED(
            "durations-added",
            "Durations added up",
            "Steps that overlap or wait for each other do not add up: the end of the last one counts."),
    OVERLAP_OVERLOOKED(
            "overlap-overlooked", "Overlap overlooked", "A step that begins before another ends does not wait for it."),
    ONE_ATOM("one-atom", "One counted instead of all", "Count how many there are in one unit of the salt."),
    PURITY_LEFT_OUT("purity-left-out", "Purity left out", "Only the pure part of the product is salt."),
    AIR_CHANGE_LEFT_OUT("air-change-left-out", "Air change left out", "Fresh air carries some of the dust away."),
    SETTLED_FOR_NOW("settled-for-now", "Final level taken for now", "The air needs time to get to its final level."),
    MINUTES_FOR_HOURS("minutes-for-hours", "Minutes and hours mixed", "An hour has 60 minutes."),
    TOTAL_FOR_EIGHT(
            "total-for-eight",
            "Divided by the hours worked",
            "The average is always over 8 hours, whatever was worked."),
    TIMES_LEFT_OUT("times-left-out", "Times left out", "Each air counts by how long it was breathed."),
    PERCENT_AS_NUMBER("percent-as-number", "Percent taken as it stands", "2 % is 0.02, not 2."),
    NOT_ROUNDED("not-rounded", "Not rounded to the step", "The balance shows whole steps only: round to the nearest."),
    CUT_OFF("cut-off", "Cut off instead of rounded", "Round to the nearest step, which may be the one above."),
    HALF_STEP(
            "half-step",
            "Half a step taken for the uncertainty",
            "Half a step is how far off one reading can be. The standard uncertainty of two of them is d ÷ √6."),
    ONE_READING("one-reading", "One reading counted instead of two", "The tare is a reading too: d ÷ √6, not d ÷ √12."),
    DRY_FOR_LEFT("dry-for-left", "Share dried taken for share left", "What is gone and what is left make 100 %."),
    ROUNDED_EARLY("rounded-early", "Rounded before the last step", "Carry all figures to the end and round once.");

    private final String id;
    private final String title;
    private final String line;

    Slip(String id, String title, String line) {
        this.id = id;
        this.title = title;
        this.line = line;
    }

    /** Stable name in files and in the record of answers. */
    public String id() {
        return id;
    }

    /** The name people read. */
    public String title() {
        return title;
    }

    /** The one line that says why it goes wrong. */
    public String line() {
        return line;
    }

    /** The slip of that id. */
    public static Optional<Slip> byId(String id) {
        return Arrays.stream(values()).filter(slip -> slip.id.equals(id)).findFirst();
    }
}
