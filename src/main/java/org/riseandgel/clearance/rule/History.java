package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * The register as it was known at some instant, corrections applied. Built from all events recorded up to then; asks no
 * clock. Facts come in the order in which they happened, and in the order of the register where that is the same.
 */
public final class History {
    private static final Comparator<Fact<?>> AS_HAPPENED =
            Comparator.<Fact<?>, Instant>comparing(Fact::effective).thenComparingLong(Fact::number);

    private final List<Event> events;
    private final Days days;
    private final Ages ages;
    private final boolean trusted;
    private final boolean readable;
    private final Map<UUID, Fact<?>> byId = new HashMap<>();
    private final Map<UUID, List<Fact<?>>> byPerson = new HashMap<>();
    private final List<Fact<?>> aboutNobody = new ArrayList<>();
    private final Map<UUID, Scope> scopes = new HashMap<>();

    private History(List<Event> events, Days days, Ages ages, boolean trusted) {
        this.events = events;
        this.days = days;
        this.ages = ages;
        Corrections corrections = Corrections.of(events);
        this.trusted = trusted;
        this.readable = trusted && corrections.areSound();
        corrections.facts().stream().sorted(AS_HAPPENED).forEach(this::keep);
    }

    /**
     * The whole register.
     *
     * @param events in any order
     * @param zone the school's time zone
     * @param ages what is known of ages
     */
    public static History of(Collection<Event> events, ZoneId zone, Ages ages) {
        return new History(List.copyOf(events), new Days(zone), ages, true);
    }

    /** A register that could not be read: nobody is cleared and nothing can be decided. */
    public static History unreadable(ZoneId zone) {
        return new History(List.of(), new Days(zone), Ages.unknown(), false);
    }

    /** What was known at an instant: everything recorded until then. */
    public History knownAt(Instant known) {
        List<Event> then =
                events.stream().filter(e -> !e.recorded().isAfter(known)).toList();
        return new History(then, days, ages, trusted);
    }

    /** False when the events contradict each other; then nobody is cleared. */
    public boolean isReadable() {
        return readable;
    }

    public Days days() {
        return days;
    }

    /** Everybody the register says something about. */
    public List<UUID> people() {
        return byPerson.keySet().stream().sorted().toList();
    }

    /** Facts of one kind about one person that have happened by an instant. */
    public <T extends Body> List<Fact<T>> about(UUID person, Class<T> kind, Instant at) {
        return ofKind(byPerson.getOrDefault(person, List.of()), kind, at);
    }

    /** Facts of one kind that concern nobody alone and have happened by an instant. */
    public <T extends Body> List<Fact<T>> general(Class<T> kind, Instant at) {
        return ofKind(aboutNobody, kind, at);
    }

    /** The fact with this id, if it still stands. */
    public Optional<Fact<?>> fact(UUID id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The scope with this id, open or closed. */
    public Optional<Scope> scope(UUID id) {
        return Optional.ofNullable(scopes.get(id));
    }

    /** The scopes defined by then and not closed, in the order of their definition. */
    public List<Scope> openScopes(Instant at) {
        List<UUID> closed = general(Setting.ScopeClosed.class, at).stream()
                .map(f -> f.body().scope())
                .toList();
        return general(Setting.ScopeDefined.class, at).stream()
                .map(f -> f.body().scope())
                .filter(scope -> !closed.contains(scope.id()))
                .toList();
    }

    /** The policy in force. */
    public Optional<Policy> policy(Instant at) {
        return last(general(Setting.PolicyInForce.class, at)).map(f -> f.body().policy());
    }

    /** The newest revision of the safety data sheet of a substance. */
    public Optional<Fact<Setting.SdsFiled>> sheet(Substance substance, Instant at) {
        return last(general(Setting.SdsFiled.class, at).stream()
                .filter(f -> f.body().substance().equals(substance))
                .toList());
    }

    /** The newest grant of a person in a scope. */
    public Optional<Fact<Decision.Granted>> grant(UUID person, UUID scope, Instant at) {
        return last(about(person, Decision.Granted.class, at).stream()
                .filter(f -> f.body().scope().equals(scope))
                .toList());
    }

    /** Whether what was said of a scope, or of everything when it is null, concerns a question. */
    boolean concerns(UUID scope, Question question) {
        return scope == null || !scopes.containsKey(scope) || scopes.get(scope).touches(question);
    }

    Ages.Age age(UUID person, Instant at) {
        return ages.on(person, days.of(at));
    }

    Ages ages() {
        return ages;
    }

    static <T> Optional<T> last(List<T> list) {
        return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
    }

    private void keep(Fact<?> fact) {
        byId.put(fact.id(), fact);
        fact.body()
                .subject()
                .map(person -> byPerson.computeIfAbsent(person, p -> new ArrayList<>()))
                .orElse(aboutNobody)
                .add(fact);
        if (fact.body() instanceof Setting.ScopeDefined defined) {
            scopes.put(defined.scope().id(), defined.scope());
        }
    }

    private static <T extends Body> List<Fact<T>> ofKind(List<Fact<?>> facts, Class<T> kind, Instant at) {
        List<Fact<T>> found = new ArrayList<>();
        for (Fact<?> fact : facts) {
            if (kind.isInstance(fact.body()) && !fact.effective().isAfter(at)) {
                found.add(new Fact<>(fact.number(), fact.id(), fact.effective(), kind.cast(fact.body())));
            }
        }
        return found;
    }
}
