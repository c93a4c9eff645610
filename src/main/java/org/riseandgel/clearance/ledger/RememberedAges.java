package org.riseandgel.clearance.ledger;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.rule.Ages;

/** Asks for an age once: who is of age on a day is so on every later one, and who is not was not on any earlier one. */
final class RememberedAges implements Ages {
    private final Ages asked;
    private final Map<UUID, LocalDate> adultOn = new HashMap<>();
    private final Map<UUID, LocalDate> minorOn = new HashMap<>();
    private final Set<UUID> unknown = new HashSet<>();

    RememberedAges(Ages asked) {
        this.asked = asked;
    }

    @Override
    public synchronized Age on(UUID person, LocalDate day) {
        if (unknown.contains(person)) {
            return Age.UNKNOWN;
        }
        if (adultOn.containsKey(person) && !day.isBefore(adultOn.get(person))) {
            return Age.ADULT;
        }
        if (minorOn.containsKey(person) && !day.isAfter(minorOn.get(person))) {
            return Age.UNDER_18;
        }
        Age age = asked.on(person, day);
        switch (age) {
            case ADULT -> adultOn.put(person, day);
            case UNDER_18 -> minorOn.put(person, day);
            case UNKNOWN -> unknown.add(person);
        }
        return age;
    }
}
