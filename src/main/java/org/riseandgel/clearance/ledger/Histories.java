package org.riseandgel.clearance.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.riseandgel.clearance.rule.Ages;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.History;
import org.riseandgel.clearance.rule.Keeping;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Makes of the lines what the rule works on. A line that is not sealed rightly, cannot be read, or was erased without
 * another line saying so, makes the whole unreadable, and then the rule clears nobody.
 */
@ApplicationScoped
public class Histories {
    private static final Logger LOG = Logger.getLogger(Histories.class);

    private final Ledger ledger;
    private final BirthDates births;
    private final SchoolSettings school;

    Histories(Ledger ledger, BirthDates births, SchoolSettings school) {
        this.ledger = ledger;
        this.births = births;
        this.school = school;
    }

    /**
     * What the rule needs to know of some people.
     *
     * @param events all the lines that were read, in order
     * @param people everybody whose lines are among them
     */
    public record Known(History history, List<Event> events, Set<UUID> people) {}

    /** Everything, as it was known at an instant. */
    public Known all(Instant known) {
        List<Line> lines = until(ledger.all(), known);
        return known(lines, new HashSet<>(), births.known(known), List.of());
    }

    /** Everything about some people and about everybody whose own lines matter to theirs, as known at an instant. */
    public Known of(Collection<UUID> people, Instant known) {
        return of(people, known, List.of());
    }

    /** The same with lines that are not written yet at the end, to see what would follow from them. */
    public Known of(Collection<UUID> people, Instant known, List<Event> supposed) {
        List<Line> lines = new ArrayList<>(until(ledger.general(), known));
        Set<UUID> named = new HashSet<>();
        Set<UUID> next = new HashSet<>(people);
        lines.forEach(line -> next.addAll(named(line)));
        // A correction is only understood beside the line that it corrects.
        ledger.lines(corrected(lines)).forEach(line -> next.addAll(named(line)));
        while (!next.isEmpty()) {
            named.addAll(next);
            List<Line> more = until(ledger.about(next), known);
            lines.addAll(more);
            next.clear();
            more.forEach(line -> next.addAll(named(line)));
            next.removeAll(named);
        }
        return known(lines, named, births.known(known), supposed);
    }

    private Known known(List<Line> lines, Set<UUID> people, Ages ages, List<Event> supposed) {
        List<Event> events = new ArrayList<>();
        Set<Long> erased = new HashSet<>();
        Set<Long> listed = new HashSet<>();
        boolean sound = true;
        for (Line line : lines.stream()
                .sorted((a, b) -> Long.compare(a.number(), b.number()))
                .toList()) {
            Optional<Event> event = line.isPurged() ? Optional.empty() : event(line);
            sound &= line.isPurged() || event.isPresent();
            event.ifPresent(events::add);
            if (line.isPurged()) {
                erased.add(line.number());
            }
            if (event.isPresent() && event.get().body() instanceof Keeping.Purged purged) {
                listed.addAll(purged.numbers());
            }
        }
        sound &= listed.containsAll(erased);
        events.addAll(supposed);
        History history = sound ? History.of(events, school.zone(), ages) : History.unreadable(school.zone());
        return new Known(history, List.copyOf(events), Set.copyOf(people));
    }

    private static Set<UUID> corrected(List<Line> lines) {
        Set<UUID> corrected = new HashSet<>();
        lines.stream()
                .filter(line -> !line.isPurged())
                .flatMap(line -> event(line).stream())
                .forEach(event -> {
                    if (event.body() instanceof Keeping.Corrected correction) {
                        corrected.add(correction.event());
                    }
                });
        return corrected;
    }

    /** The event on a line, if the line is sealed rightly and can be read. */
    public static Optional<Event> event(Line line) {
        Optional<String> problem = Seal.problem(line);
        if (problem.isPresent()) {
            LOG.errorf("The register cannot be trusted: line %d: %s.", line.number(), problem.get());
            return Optional.empty();
        }
        try {
            EventText.Content content = EventText.read(line.content());
            return Optional.of(new Event(
                    line.number(), line.id(), content.effective(), line.recorded(), content.by(), content.said()));
        } catch (IllegalArgumentException e) {
            LOG.errorf(e, "The register cannot be read: line %d.", line.number());
            return Optional.empty();
        }
    }

    /** The events on those of the lines that are there and can be read. */
    public static List<Event> events(List<Line> lines) {
        return lines.stream()
                .filter(line -> !line.isPurged())
                .flatMap(line -> event(line).stream())
                .toList();
    }

    private static Set<UUID> named(Line line) {
        if (line.isPurged()) {
            return Set.of();
        }
        try {
            return Parties.of(EventText.read(line.content()).said());
        } catch (IllegalArgumentException e) {
            return Set.of();
        }
    }

    private static List<Line> until(List<Line> lines, Instant known) {
        return lines.stream().filter(line -> !line.recorded().isAfter(known)).toList();
    }
}
