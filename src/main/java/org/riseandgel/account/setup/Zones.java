package org.riseandgel.account.setup;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.riseandgel.platform.web.Choice;

/** The time zones that a school can pick, by the names of the IANA time zone database. */
final class Zones {
    private static final List<String> REGIONS = List.of(
            "Africa/", "America/", "Antarctica/", "Asia/", "Atlantic/", "Australia/", "Europe/", "Indian/", "Pacific/");

    private Zones() {}

    /** All zones of places, by name, with UTC and the computer's own on top. */
    static List<Choice> all() {
        Stream<String> first = Stream.of("UTC", ZoneId.systemDefault().getId());
        Stream<String> places =
                ZoneId.getAvailableZoneIds().stream().filter(Zones::isPlace).sorted();
        return Stream.concat(first, places)
                .distinct()
                .map(id -> new Choice(id, id.replace('_', ' ')))
                .toList();
    }

    static boolean isKnown(String zone) {
        return all().stream().anyMatch(choice -> choice.value().equals(zone));
    }

    private static boolean isPlace(String id) {
        return REGIONS.stream().anyMatch(id::startsWith);
    }
}
