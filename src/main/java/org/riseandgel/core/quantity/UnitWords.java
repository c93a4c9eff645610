package org.riseandgel.core.quantity;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The fixed list of how units may be written. Symbols keep their case: mg and Mg are a factor of 10⁹ apart. */
final class UnitWords {
    private static final Map<Unit, String> SPELLINGS = Map.ofEntries(
            entry(Unit.GRAM, "g gram grams gramme grammes"),
            entry(Unit.MILLIGRAM, "mg milligram milligrams"),
            entry(Unit.KILOGRAM, "kg kilogram kilograms kilo kilos"),
            entry(Unit.OUNCE, "oz ounce ounces"),
            entry(Unit.POUND, "lb lbs pound pounds"),
            entry(Unit.MILLIMETRE, "mm millimetre millimetres millimeter millimeters"),
            entry(Unit.CENTIMETRE, "cm centimetre centimetres centimeter centimeters"),
            entry(Unit.METRE, "m metre metres meter meters"),
            entry(Unit.INCH, "in inch inches \" '' ′′"),
            entry(Unit.FOOT, "ft foot feet ' ′"),
            entry(Unit.SQUARE_MILLIMETRE, "mm2 sq_mm square_millimetres square_millimeters"),
            entry(Unit.SQUARE_CENTIMETRE, "cm2 sq_cm square_centimetres square_centimeters"),
            entry(Unit.SQUARE_METRE, "m2 sq_m square_metres square_meters"),
            entry(Unit.SQUARE_INCH, "in2 sq_in square_inch square_inches"),
            entry(
                    Unit.MILLILITRE,
                    "mL ml cc cm3 cu_cm millilitre millilitres milliliter milliliters cubic_centimetre"
                            + " cubic_centimetres cubic_centimeter cubic_centimeters"),
            entry(Unit.LITRE, "L l litre litres liter liters"),
            entry(Unit.CUBIC_MILLIMETRE, "mm3 cubic_millimetre cubic_millimetres cubic_millimeter cubic_millimeters"),
            entry(Unit.CUBIC_METRE, "m3 cu_m cubic_metre cubic_metres cubic_meter cubic_meters"),
            entry(Unit.CUBIC_INCH, "in3 cu_in cubic_inch cubic_inches"),
            entry(Unit.CUBIC_FOOT, "ft3 cu_ft cubic_foot cubic_feet"),
            entry(Unit.US_FLUID_OUNCE, "US_fl_oz US_fluid_ounce US_fluid_ounces"),
            entry(Unit.US_TABLESPOON, "US_tbsp US_tablespoon US_tablespoons"),
            entry(Unit.US_CUP, "US_cup US_cups"),
            entry(Unit.US_QUART, "US_qt US_quart US_quarts"),
            entry(Unit.US_GALLON, "US_gal US_gallon US_gallons"),
            entry(Unit.IMPERIAL_FLUID_OUNCE, "imp_fl_oz UK_fl_oz imperial_fluid_ounce imperial_fluid_ounces"),
            entry(Unit.IMPERIAL_GALLON, "imp_gal UK_gal imperial_gallon imperial_gallons"),
            entry(
                    Unit.GRAM_PER_MILLILITRE,
                    "g/mL g/ml g/cm3 g/cc kg/L kg/l grams_per_millilitre grams_per_milliliter"
                            + " grams_per_cubic_centimetre grams_per_cubic_centimeter"),
            entry(Unit.KILOGRAM_PER_CUBIC_METRE, "kg/m3 kilograms_per_cubic_metre kilograms_per_cubic_meter kg_per_m3"),
            entry(Unit.GRAM_PER_LITRE, "g/L g/l grams_per_litre grams_per_liter"),
            entry(Unit.MILLIGRAM_PER_CUBIC_METRE, "mg/m3 milligrams_per_cubic_metre milligrams_per_cubic_meter"),
            entry(Unit.POUND_PER_CUBIC_FOOT, "pcf lb/ft3 lbs/ft3 lb/cu_ft lbs/cu_ft pounds_per_cubic_foot"),
            entry(
                    Unit.DEGREE_CELSIUS,
                    "°C °_C C Cel deg_C degC degree_C degrees_C degree_Celsius degrees_Celsius Celsius"),
            entry(
                    Unit.DEGREE_FAHRENHEIT,
                    "°F °_F F deg_F degF degree_F degrees_F degree_Fahrenheit degrees_Fahrenheit Fahrenheit"),
            entry(Unit.KELVIN, "K kelvin kelvins"),
            entry(Unit.SECOND, "s sec secs second seconds"),
            entry(Unit.MINUTE, "min mins minute minutes"),
            entry(Unit.HOUR, "h hr hrs hour hours"),
            entry(Unit.DAY, "day days"),
            entry(Unit.ONE, "x × times :1 :_1 to_1"),
            entry(Unit.PHP, "php phr parts part parts_per_hundred"),
            entry(Unit.PERCENT, "% percent per_cent"),
            entry(Unit.CUBIC_METRE_PER_HOUR, "m3/h m3/hr cubic_metres_per_hour cubic_meters_per_hour"),
            entry(Unit.LITRE_PER_MINUTE, "L/min l/min litres_per_minute liters_per_minute"),
            entry(Unit.LITRE_PER_SECOND, "L/s l/s litres_per_second liters_per_second"),
            entry(Unit.CUBIC_FOOT_PER_MINUTE, "ft3/min cu_ft/min cfm CFM cubic_feet_per_minute"),
            entry(Unit.KILOJOULE, "kJ kilojoule kilojoules"),
            entry(Unit.WATT_HOUR, "Wh W.h watt_hour watt_hours"),
            entry(Unit.KILOWATT_HOUR, "kWh kW.h kilowatt_hour kilowatt_hours"),
            entry(Unit.MILLIMOLE, "mmol millimole millimoles"),
            entry(Unit.MOLE, "mol mole moles"),
            entry(Unit.PER_HOUR, "per_hour /h /hr an_hour ACH ach air_changes_per_hour air_change_per_hour"),
            entry(Unit.PER_MINUTE, "per_minute /min per_min a_minute"));

    private static final Map<String, Unit> KNOWN = known();
    private static final Map<String, String> SUGGESTED = suggested();
    private static final Map<String, List<Meaning>> AMBIGUOUS = ambiguous();

    private UnitWords() {}

    /** One of the things an ambiguous unit can mean: so many of a unit that is not ambiguous. */
    record Meaning(Rational count, Unit unit) {}

    /** The meanings of a unit as typed, one if it is known, more if it is ambiguous; anything else is refused. */
    static List<Meaning> meanings(String typed) {
        String word = normal(typed);
        Unit unit = KNOWN.get(word);
        if (unit != null) {
            return List.of(new Meaning(Rational.ONE, unit));
        }
        List<Meaning> meanings = AMBIGUOUS.get(word);
        if (meanings == null) {
            throw isWord(word) ? unknown(word) : notAUnit(word);
        }
        return meanings;
    }

    static boolean isInch(String typed) {
        return KNOWN.get(normal(typed)) == Unit.INCH;
    }

    /** A letter that a unit may be written with; no class of the platform, since those change from release to release. */
    static boolean isLetter(char sign) {
        return sign >= 'a' && sign <= 'z'
                || sign >= 'A' && sign <= 'Z'
                || sign == 'µ'
                || sign >= 'À' && sign <= 'ɏ' && sign != '×' && sign != '÷'
                || sign >= 'Ͱ' && sign <= 'ӿ';
    }

    /** One space between words, none around a slash, no point after an abbreviation, and m3 for m³ and m^3. */
    private static String normal(String typed) {
        StringBuilder word = new StringBuilder(typed.length());
        for (int at = 0; at < typed.length(); at++) {
            char sign = typed.charAt(at);
            char next = at + 1 < typed.length() ? typed.charAt(at + 1) : ' ';
            char last = word.length() == 0 ? ' ' : word.charAt(word.length() - 1);
            boolean caret = sign == '^' && (next == '2' || next == '3') && isLetter(last);
            boolean point = sign == '.' && next == ' ' && isLetter(last);
            boolean space = sign == ' ' && (last == ' ' || last == '/' || next == ' ' || next == '/');
            if (!caret && !point && !space) {
                word.append(sign == '²' ? '2' : sign == '³' ? '3' : sign);
            }
        }
        return word.toString();
    }

    private static boolean isWord(String word) {
        boolean letters = isLetter(word.charAt(0)) || word.charAt(0) == '°';
        for (int at = 1; at < word.length() && letters; at++) {
            letters = isWordSign(word, at);
        }
        return letters;
    }

    private static boolean isWordSign(String word, int at) {
        char sign = word.charAt(at);
        if (sign == '2' || sign == '3') {
            boolean ends = at + 1 == word.length() || word.charAt(at + 1) == '/';
            return ends && isLetter(word.charAt(at - 1));
        }
        return isLetter(sign) || sign == ' ' || sign == '/';
    }

    private static Refused unknown(String word) {
        String known = SUGGESTED.get(lower(word));
        String advice = known == null ? "Write one like g, mL, cm or min." : "Did you mean “" + known + "”?";
        return Refused.as(ReadingOutcome.UNKNOWN_UNIT, "“" + word + "” is not a unit we know. " + advice);
    }

    private static Refused notAUnit(String word) {
        if (word.equals("-") || word.equals("+")) {
            return Refused.malformed("{typed} has its sign at the end. Write it in front, like -12{mark}5.");
        }
        boolean range = word.charAt(0) == '-';
        boolean digits = word.chars().anyMatch(sign -> Cursor.isDigit((char) sign));
        if (range && digits) {
            return Refused.malformed("{typed} looks like a range. Write one number, like 12{mark}5.");
        }
        return Refused.malformed(
                digits
                        ? "There is more than one number in {typed}. Write one number and its unit, like 12{mark}5 g."
                        : "“" + word + "” after the number is not a unit. Write one number and its unit,"
                                + " like 12{mark}5 g.");
    }

    private static Map<String, Unit> known() {
        Map<String, Unit> known = new HashMap<>();
        SPELLINGS.forEach((unit, spellings) -> {
            for (String spelling : spellings.split(" ")) {
                known.put(spelling.replace('_', ' '), unit);
            }
        });
        return Map.copyOf(known);
    }

    private static Map<String, String> suggested() {
        Map<String, String> suggested = new HashMap<>();
        KNOWN.forEach((word, unit) -> suggested.merge(lower(word), word, UnitWords::shorter));
        return Map.copyOf(suggested);
    }

    /** The spelling to suggest of two that differ in case only; never left to the order of a hash table. */
    private static String shorter(String one, String other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    private static Map<String, List<Meaning>> ambiguous() {
        Map<String, List<Meaning>> ambiguous = new HashMap<>();
        put(ambiguous, "MG Mg", one(Unit.MILLIGRAM), many("1000", Unit.KILOGRAM));
        put(ambiguous, "ML Ml", one(Unit.MILLILITRE), many("1000000", Unit.LITRE));
        put(ambiguous, "G", one(Unit.GRAM), one(Unit.US_GALLON));
        put(ambiguous, "fl_oz floz fluid_ounce fluid_ounces", one(Unit.US_FLUID_OUNCE), one(Unit.IMPERIAL_FLUID_OUNCE));
        put(ambiguous, "gal gals gallon gallons", one(Unit.US_GALLON), one(Unit.IMPERIAL_GALLON));
        put(ambiguous, "cup cups", one(Unit.US_CUP), many("250", Unit.MILLILITRE));
        put(ambiguous, "qt quart quarts", one(Unit.US_QUART), many("1136.5225", Unit.MILLILITRE));
        put(ambiguous, "tbsp tablespoon tablespoons", one(Unit.US_TABLESPOON), many("15", Unit.MILLILITRE));
        put(ambiguous, "° deg degree degrees", one(Unit.DEGREE_CELSIUS), one(Unit.DEGREE_FAHRENHEIT));
        return Map.copyOf(ambiguous);
    }

    private static void put(Map<String, List<Meaning>> ambiguous, String words, Meaning one, Meaning other) {
        for (String word : words.split(" ")) {
            ambiguous.put(word.replace('_', ' '), List.of(one, other));
        }
    }

    private static Meaning one(Unit unit) {
        return new Meaning(Rational.ONE, unit);
    }

    private static Meaning many(String count, Unit unit) {
        return new Meaning(Rational.of(count), unit);
    }
}
