package org.riseandgel.practice;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.LessonsRead;
import org.riseandgel.course.Skill;
import org.riseandgel.course.Stage;
import org.riseandgel.course.StageGate;
import org.riseandgel.course.StageGates;
import org.riseandgel.platform.audit.AuditLog;

/** Which stages are open to whom, and opening one by hand. Gates are for apprentices; to others every stage is open. */
@ApplicationScoped
public class StageDoors implements StageGates {
    private static final int DOORS_KEPT = 50_000;
    private static final Duration KEPT_FOR = Duration.ofMinutes(10);

    private final CourseContent content;
    private final Standings standings;
    private final LessonsRead lessonsRead;
    private final StageOpenedRepository opened;
    private final People people;
    private final AuditLog audit;
    private final SchoolDay day;

    /** What is open stays open, so that it may be remembered; what is shut is looked up each time. */
    private final Cache<Door, Boolean> open = Caffeine.newBuilder()
            .maximumSize(DOORS_KEPT)
            .expireAfterWrite(KEPT_FOR)
            .build();

    StageDoors(
            CourseContent content,
            Standings standings,
            LessonsRead lessonsRead,
            StageOpenedRepository opened,
            People people,
            AuditLog audit,
            SchoolDay day) {
        this.content = content;
        this.standings = standings;
        this.lessonsRead = lessonsRead;
        this.opened = opened;
        this.people = people;
        this.audit = audit;
        this.day = day;
    }

    private record Door(UUID person, String stage) {}

    /** Who opened a stage by hand, why and when. */
    public record ByHand(UUID by, String reason, Instant at) {}

    @Override
    public Map<String, StageGate> of(UUID person) {
        return gates(content.current(), standings.of(person), lessonsRead.by(person));
    }

    @Override
    public boolean isOpen(UUID person, String stage) {
        Door door = new Door(person, stage);
        if (open.getIfPresent(door) != null) {
            return true;
        }
        StageGate gate = of(person).get(stage);
        boolean isOpen = gate == null || gate.open();
        if (isOpen) {
            open.put(door, true);
        }
        return isOpen;
    }

    static Map<String, StageGate> gates(Content now, Standings.Begun begun, Set<String> read) {
        Set<String> mastered = begun.standings().values().stream()
                .filter(standing -> standing.masteredOn() != null)
                .map(StandingView::skill)
                .collect(Collectors.toSet());
        return Gates.of(now, new Gates.Progress(read, begun.standings().keySet(), mastered, begun.openedByHand()));
    }

    /** The stage that keeps the skill shut to an apprentice; empty when it is open or the person learns nothing. */
    Optional<String> shutTo(UUID person, String skill) {
        return content.course()
                .skill(skill)
                .map(Skill::stage)
                .filter(stage -> !isOpen(person, stage))
                .filter(stage -> people.find(person).map(StageDoors::isLearner).orElse(true));
    }

    private static boolean isLearner(PersonView person) {
        return person.roles().contains(Roles.APPRENTICE) && !person.roles().contains(Roles.INSTRUCTOR);
    }

    /**
     * A stage with its gate.
     *
     * @param byHand who opened it by hand and why; null when nobody did
     * @param by the name of that person; empty when nobody did
     */
    public record DoorLine(int number, String title, StageGate gate, ByHand byHand, String by) {}

    /** All stages with their gates for one person. */
    public List<DoorLine> lines(UUID person) {
        Map<String, StageGate> gates = of(person);
        Map<String, ByHand> byHand = new LinkedHashMap<>();
        opened.of(person).forEach(row -> byHand.put(row.stage(), row.view()));
        return content.course().stages().stream()
                .map(stage -> line(stage, gates.get(stage.id()), byHand.get(stage.id())))
                .toList();
    }

    private DoorLine line(Stage stage, StageGate gate, ByHand byHand) {
        String by = byHand == null
                ? ""
                : people.find(byHand.by()).map(PersonView::displayName).orElse("");
        return new DoorLine(stage.number(), stage.title(), gate, byHand, by);
    }

    /** The stages that are not open to a person who learns; none for others. */
    Set<String> shut(UUID person, Standings.Begun begun) {
        if (!people.find(person).map(StageDoors::isLearner).orElse(true)) {
            return Set.of();
        }
        return gates(content.current(), begun, lessonsRead.by(person)).values().stream()
                .filter(gate -> !gate.open())
                .map(StageGate::stage)
                .collect(Collectors.toSet());
    }

    /** Opens a stage to a person, with its reason on record; the first time counts. */
    @Transactional
    public void open(UUID person, String stage, UUID by, String reason) {
        if (opened.add(person, stage, by, reason, day.now())) {
            audit.note(by, "stage-opened", person.toString(), stage + ": " + reason);
        }
    }
}
