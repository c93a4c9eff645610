package org.riseandgel.sitting;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.school.SchoolSettings;

/** Gives the invented people of the demo school some sittings on past days, drawn and marked as any sitting is. */
@ApplicationScoped
class DemoSittings {
    private static final int AFTER_PRACTICE = 300;
    private static final long FIRST_SEED = 52_001;
    private static final int SECONDS_PER_ITEM = 80;
    private static final int FIGURES = 4;
    private static final Rational FAR_OFF = Rational.of("1.37");

    private final SittingStore store;
    private final Beginnings beginnings;
    private final KeptDraws draws;
    private final CourseContent content;
    private final SchoolSettings school;
    private final Clock clock;

    DemoSittings(
            SittingStore store,
            Beginnings beginnings,
            KeptDraws draws,
            CourseContent content,
            SchoolSettings school,
            Clock clock) {
        this.store = store;
        this.beginnings = beginnings;
        this.draws = draws;
        this.content = content;
        this.school = school;
        this.clock = clock;
    }

    /** A course of the school's own may lack a check; then nobody sat it. */
    void fill(@Observes @Priority(AFTER_PRACTICE) SchoolFounded founded) {
        for (int i = 0; founded.demo() && i < DemoSitting.ALL.size(); i++) {
            DemoSitting demo = DemoSitting.ALL.get(i);
            long seed = FIRST_SEED + i;
            Instant begun = begun(demo);
            content.current()
                    .check(demo.check())
                    .flatMap(check -> beginnings.of(demo.person(), check, seed, begun))
                    .ifPresent(sitting -> sit(demo, sitting));
        }
    }

    private Instant begun(DemoSitting demo) {
        return LocalDate.ofInstant(clock.instant(), school.zone())
                .minusDays(demo.daysAgo())
                .atStartOfDay()
                .plusMinutes(demo.minute())
                .atZone(school.zone())
                .toInstant()
                .truncatedTo(ChronoUnit.MICROS);
    }

    private void sit(DemoSitting demo, StoredSitting sitting) {
        Set<Integer> wrong = wrong(demo, sitting.items());
        Instant at = sitting.startedAt();
        for (StoredItem item : sitting.items()) {
            at = at.plusSeconds(SECONDS_PER_ITEM);
            DrawnExercise drawn = draws.of(item);
            ReadAnswer answer = Marking.read(drawn, typed(drawn, !wrong.contains(item.number())), mark());
            if (!answer.isClear()) {
                throw new IllegalStateException("an answer of the demo cannot be read: " + answer.question());
            }
            store.save(demo.person(), sitting.id(), item.number(), answer, at);
        }
        Instant end = at.plusSeconds(SECONDS_PER_ITEM);
        store.hold(demo.person(), sitting.id())
                .map(open -> Marking.handedIn(open, draws::of, mark(), end))
                .ifPresent(store::handIn);
    }

    private static Set<Integer> wrong(DemoSitting demo, List<StoredItem> items) {
        Set<Integer> wrong = new HashSet<>();
        items.stream()
                .filter(item -> !(demo.passes() && item.critical()))
                .sorted(Comparator.comparing(item -> !item.critical()))
                .limit(demo.wrong())
                .forEach(item -> wrong.add(item.number()));
        return wrong;
    }

    private String typed(DrawnExercise drawn, boolean right) {
        if (drawn instanceof DrawnChoice choice) {
            return right ? choice.right() : choice.wrong();
        }
        DrawnPart part = ((DrawnNumbers) drawn).part(0);
        Unit unit = part.part().unit();
        Rational value = right ? part.expected() : part.expected().times(FAR_OFF);
        String number = NumberWriter.of(mark()).figures(value.toDouble(), FIGURES);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private DecimalMark mark() {
        return school.decimalMark();
    }
}
