package org.riseandgel.clearance.ledger;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;

/** Makes an event of any kind with something in every field, so that a new kind is tested without being added here. */
final class Sample {
    private int next = 1;

    /** One of every kind. */
    static List<Body> all() {
        List<Body> all = new ArrayList<>();
        for (Class<?> group : Body.class.getPermittedSubclasses()) {
            for (Class<?> kind : group.getPermittedSubclasses()) {
                all.add((Body) new Sample().of(kind));
            }
        }
        return all;
    }

    private Object of(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type item = generic.getActualTypeArguments()[0];
            Object one = of(item);
            Object other = of(item);
            return generic.getRawType() == List.class ? List.of(one, other) : new LinkedHashSet<>(List.of(other, one));
        }
        Class<?> kind = (Class<?>) type;
        next++;
        if (kind == Body.class) {
            return new Evidence.Handled(new UUID(7, next), new UUID(8, next), Task.DOSE);
        }
        if (kind == Means.class) {
            return new Means(Means.How.SITTING, new UUID(5, next), "en", true);
        }
        if (kind == Substance.class) {
            return new Substance("Sodium fluorosilicate", "16893-85-9", "Supplier A");
        }
        if (kind == UUID.class) {
            return new UUID(next, 1L << 40);
        }
        if (kind == Instant.class) {
            return Instant.parse("2027-03-04T09:15:00.123456Z").plusSeconds(next);
        }
        if (kind == LocalDate.class) {
            return LocalDate.parse("2027-03-04").plusDays(next);
        }
        if (kind == String.class) {
            return "text " + next + " “ü” \"quoted\"\n";
        }
        if (kind == boolean.class) {
            return true;
        }
        if (kind == int.class || kind == Integer.class) {
            return next;
        }
        if (kind == long.class || kind == Long.class) {
            return (long) next;
        }
        if (kind.isEnum()) {
            return kind.getEnumConstants()[next % kind.getEnumConstants().length];
        }
        return record(kind);
    }

    private Object record(Class<?> kind) {
        try {
            List<Class<?>> types = new ArrayList<>();
            List<Object> values = new ArrayList<>();
            for (RecordComponent component : kind.getRecordComponents()) {
                types.add(component.getType());
                values.add(of(component.getGenericType()));
            }
            var constructor = kind.getDeclaredConstructor(types.toArray(Class<?>[]::new));
            return constructor.newInstance(values.toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("no sample of " + kind, e);
        }
    }

    private Sample() {}

    /** For a set whose order must not matter. */
    static Set<Long> numbers(long... numbers) {
        Set<Long> set = new LinkedHashSet<>();
        for (long number : numbers) {
            set.add(number);
        }
        return set;
    }
}
