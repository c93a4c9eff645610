package org.riseandgel.clearance.door;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterCheck;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Task;

/** What is behind which door, whom one may ask about there, and the answer with the names that belong to it. */
@ApplicationScoped
public class Door {
    private static final Comparator<Place> BY_ROOM = Comparator.comparing(Place::room)
            .thenComparing(place -> place.substance().name())
            .thenComparing(Place::form);

    private final Register register;
    private final RegisterCheck check;
    private final People people;

    Door(Register register, RegisterCheck check, People people) {
        this.register = register;
        this.check = check;
        this.people = people;
    }

    /** Somebody about whom one may ask. */
    public record Named(UUID id, String name) {}

    /**
     * The answer about somebody at a door.
     *
     * @param supervisor the name of whoever has to be there; null unless supervised only
     */
    public record Told(
            PersonView person, Place place, Task task, RegisterCheck.CheckAnswer answer, String supervisor) {}

    /** The places that scopes in use have, by room. */
    @Transactional
    public List<Place> places() {
        return register.scopes().stream()
                .map(Place::of)
                .distinct()
                .sorted(BY_ROOM)
                .toList();
    }

    /** The tasks that somebody can be cleared for in a place; empty when there is no such place. */
    @Transactional
    public Set<Task> tasks(Place place) {
        Set<Task> tasks = EnumSet.noneOf(Task.class);
        register.scopes().stream()
                .filter(scope -> Place.of(scope).equals(place))
                .map(Scope::tasks)
                .forEach(tasks::addAll);
        return tasks;
    }

    /** Everybody about whom something is on record for a place, by name. Whoever is not among them is not cleared. */
    @Transactional
    public List<Named> known(Place place) {
        Set<Named> named = register.board(null, null).rows().stream()
                .filter(row -> Place.of(row.scope()).equals(place))
                .map(row -> new Named(row.person(), row.name()))
                .collect(Collectors.toCollection(() -> new TreeSet<>(
                        Comparator.comparing((Named one) -> one.name().toLowerCase(java.util.Locale.ROOT))
                                .thenComparing(Named::id))));
        return List.copyOf(named);
    }

    /** The place with this id. */
    @Transactional
    public Optional<Place> place(UUID id) {
        return places().stream().filter(place -> place.id().equals(id)).findFirst();
    }

    /** Asks, which is written down. Empty when the school does not know the person. */
    @Transactional
    public Optional<Told> ask(UUID asking, UUID person, Place place, Task task) {
        return people.find(person).map(found -> {
            RegisterCheck.CheckAnswer answer = check.ask(asking, person, place, task);
            String supervisor = answer.supervisor() == null
                    ? null
                    : people.find(answer.supervisor())
                            .map(PersonView::displayName)
                            .orElse("the named supervisor");
            return new Told(found, place, task, answer, supervisor);
        });
    }

    /** The person with this id or sign-in name. */
    @Transactional
    public Optional<PersonView> person(String idOrName) {
        try {
            return people.find(UUID.fromString(idOrName));
        } catch (IllegalArgumentException e) {
            return people.withSignInName(idOrName);
        }
    }

    /** Who may handle the salt in a room today. */
    @Transactional
    public Register.DoorList list(String room) {
        return register.doorList(room);
    }
}
