package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.account.People;
import org.riseandgel.clearance.ledger.EventText;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Notes;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Keeping;

/** The lines of the register as people read them, with names and free texts put back in. */
@ApplicationScoped
public class PersonRecord {
    private final Scribe scribe;
    private final Notes notes;
    private final People people;

    PersonRecord(Scribe scribe, Notes notes, People people) {
        this.scribe = scribe;
        this.notes = notes;
        this.people = people;
    }

    /**
     * One line.
     *
     * @param kind such as {@code training-given}
     * @param text all that the line says, as it stands in the register
     * @param recordedBy who wrote it down; null when the program did
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
     * The lines of the whole register, newest first.
     *
     * @param person only those about somebody; null for all
     * @param kind only those of a kind; null for all
     */
    public List<RecordLine> search(UUID person, String kind, int most, long before) {
        List<Event> events = scribe.all().events();
        return lines(
                        events,
                        event -> (person == null || event.body().subject().equals(Optional.of(person)))
                                && (kind == null || EventText.kind(event.body()).equals(kind))
                                && (before <= 0 || event.number() < before))
                .stream()
                .limit(most)
                .toList();
    }

    private List<RecordLine> lines(List<Event> events, java.util.function.Predicate<Event> which) {
        Set<UUID> corrected = new HashSet<>();
        Set<UUID> ids = new HashSet<>();
        List<Event> chosen = new ArrayList<>();
        for (Event event : events) {
            if (event.body() instanceof Keeping.Corrected correction) {
                corrected.add(correction.event());
            }
            if (which.test(event)) {
                chosen.add(event);
                ids.addAll(idsIn(event));
            }
        }
        Map<UUID, String> names = people.names(ids);
        Map<UUID, String> texts = notes.texts(ids);
        return chosen.stream()
                .sorted(Comparator.comparingLong(Event::number).reversed())
                .map(event -> line(event, names, texts, corrected.contains(event.id())))
                .toList();
    }

    private static RecordLine line(Event event, Map<UUID, String> names, Map<UUID, String> texts, boolean corrected) {
        Set<UUID> ids = idsIn(event);
        Map<UUID, String> own = new java.util.LinkedHashMap<>();
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
        Set<UUID> ids = new java.util.LinkedHashSet<>(EventText.ids(event.body()));
        if (event.recordedBy() != null) {
            ids.add(event.recordedBy());
        }
        return ids;
    }
}
