package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.riseandgel.account.People;
import org.riseandgel.clearance.ledger.EventText;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.ledger.Line;
import org.riseandgel.clearance.ledger.Notes;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Keeping;

/** The lines of the register as people read them, with names and free texts put back in. */
@ApplicationScoped
public class PersonRecord {
    /** The kind of a line whose content was erased after the school's years. */
    public static final String ERASED = "erased";

    /** The kind of a line that does not match its hashes or cannot be read. */
    public static final String UNREADABLE = "unreadable";

    private final Scribe scribe;
    private final Ledger ledger;
    private final Notes notes;
    private final People people;

    PersonRecord(Scribe scribe, Ledger ledger, Notes notes, People people) {
        this.scribe = scribe;
        this.ledger = ledger;
        this.notes = notes;
        this.people = people;
    }

    /**
     * One line.
     *
     * @param kind such as {@code training-given}
     * @param text all that the line says, as it stands in the register
     * @param recordedBy who wrote it down; null when the program did
     * @param said what it says; null when it was erased or cannot be read
     * @param names the people whom the line names
     * @param notes the free texts of the line that are still there
     * @param corrected whether a later line corrects it
     * @param singleInstructor whether it is a single-instructor decision
     */
    public record RecordLine(
            long number,
            UUID id,
            String kind,
            Instant effective,
            Instant recorded,
            UUID recordedBy,
            Body said,
            String text,
            Map<UUID, String> names,
            List<String> notes,
            boolean corrected,
            boolean singleInstructor) {}

    /** Everything about one person, newest first: also the corrections of it. */
    public List<RecordLine> of(UUID person) {
        Histories.Known known = scribe.known(person);
        Set<UUID> own = new HashSet<>();
        known.events().stream()
                .filter(event -> event.body().subject().equals(Optional.of(person)))
                .forEach(event -> own.add(event.id()));
        return lines(
                known.events(),
                event -> own.contains(event.id())
                        || event.body() instanceof Keeping.Corrected corrected && own.contains(corrected.event()));
    }

    /**
     * The lines of the whole register, newest first; also those that were erased or cannot be read.
     *
     * @param sought which ones
     * @param most no more than so many
     */
    public List<RecordLine> search(Ledger.Sought sought, int most) {
        List<Line> lines = ledger.search(sought, most);
        Map<UUID, Event> events = new LinkedHashMap<>();
        Histories.events(lines).forEach(event -> events.put(event.id(), event));
        Map<UUID, RecordLine> read = views(events.values(), ledger.correctedAmong(events.keySet())).stream()
                .collect(Collectors.toMap(RecordLine::id, view -> view));
        return lines.stream()
                .map(line -> read.getOrDefault(line.id(), unread(line)))
                .toList();
    }

    /** The lines of one kind about somebody, or about everybody with null. */
    public List<RecordLine> search(UUID person, String kind, int most, long before) {
        return search(
                new Ledger.Sought(
                        person == null ? null : Set.of(person), null, kind, null, null, null, Math.max(0, before)),
                most);
    }

    /** The line with this id. */
    public Optional<RecordLine> line(UUID id) {
        return views(Histories.events(ledger.lines(Set.of(id))), ledger.correctedAmong(Set.of(id))).stream()
                .findFirst();
    }

    private List<RecordLine> lines(List<Event> events, Predicate<Event> which) {
        Set<UUID> corrected = new HashSet<>();
        events.stream()
                .map(Event::body)
                .filter(Keeping.Corrected.class::isInstance)
                .forEach(said -> corrected.add(((Keeping.Corrected) said).event()));
        return views(events.stream().filter(which).toList(), corrected);
    }

    private List<RecordLine> views(Collection<Event> events, Set<UUID> corrected) {
        Set<UUID> ids = new HashSet<>();
        events.forEach(event -> ids.addAll(idsIn(event)));
        Map<UUID, String> names = people.names(ids);
        Map<UUID, String> texts = notes.texts(ids);
        return events.stream()
                .sorted(Comparator.comparingLong(Event::number).reversed())
                .map(event -> line(event, names, texts, corrected.contains(event.id())))
                .toList();
    }

    /** A line whose content is not there any more, or does not match its hashes. */
    private static RecordLine unread(Line line) {
        return new RecordLine(
                line.number(),
                line.id(),
                line.isPurged() ? ERASED : UNREADABLE,
                line.recorded(),
                line.recorded(),
                null,
                null,
                "",
                Map.of(),
                List.of(),
                false,
                false);
    }

    private static RecordLine line(Event event, Map<UUID, String> names, Map<UUID, String> texts, boolean corrected) {
        Set<UUID> ids = idsIn(event);
        Map<UUID, String> own = new LinkedHashMap<>();
        List<String> words = new ArrayList<>();
        for (UUID id : ids) {
            if (names.containsKey(id)) {
                own.put(id, names.get(id));
            }
            if (texts.containsKey(id)) {
                words.add(texts.get(id));
            }
        }
        return new RecordLine(
                event.number(),
                event.id(),
                EventText.kind(event.body()),
                event.effective(),
                event.recorded(),
                event.recordedBy(),
                event.body(),
                EventText.canonical(event.body()),
                own,
                words,
                corrected,
                isSingle(event.body()));
    }

    private static boolean isSingle(Body said) {
        return said instanceof Decision.Granted granted && granted.countersigner() != null
                || said instanceof Decision.Reinstated reinstated && reinstated.countersigner() != null;
    }

    /** Every id that stands in a line: of people, notes and other lines. */
    private static Set<UUID> idsIn(Event event) {
        Set<UUID> ids = new LinkedHashSet<>(EventText.ids(event.body()));
        if (event.recordedBy() != null) {
            ids.add(event.recordedBy());
        }
        return ids;
    }
}
