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
    SALT_FOR_FLUORIDE("salt-for-fluoride", "Salt taken for fluoride", "Only part of the salt's mass is fluoride."),
    DISPERSION_FOR_DRY("dispersion-for-dry", "Dispersion taken for dry salt", "Only part of a dispersion is salt."),
    WRONG_WHOLE("wrong-whole", "Percent of the wrong whole", "A percentage counts on what it was taken of."),
    SQUARE_LEFT_OUT("square-left-out", "Square left out", "Twice as thick takes four times as long, not twice."),
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
