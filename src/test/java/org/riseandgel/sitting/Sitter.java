package org.riseandgel.sitting;

import java.util.Map;
import java.util.UUID;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.account.Roles;
import org.riseandgel.account.TestPeople;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;

/** Somebody at a browser who sits checks, and who, unlike a real person, can look up the right answers. */
final class Sitter {
    final UUID id;
    private final TestPeople.Added person;
    private final SittingStore store;
    private final KeptDraws draws;
    Browserless browser;

    private Sitter(TestPeople.Added person, SittingStore store, KeptDraws draws) {
        this.id = UUID.fromString(person.id());
        this.person = person;
        this.store = store;
        this.draws = draws;
        this.browser = TestPeople.signIn(person);
    }

    /** An apprentice who never sat anything. */
    static Sitter fresh(SittingStore store, KeptDraws draws) {
        return new Sitter(TestPeople.settled(Roles.APPRENTICE), store, draws);
    }

    /** Sits down at another computer, and goes on there. */
    void changeComputer() {
        browser = TestPeople.signIn(person);
    }

    /** Presses the button that begins; the answer leads to the first item. */
    UUID begin(String check) {
        Answer answer = tryToBegin(check);
        if (answer.status() != 303) {
            throw new AssertionError("not begun: " + answer);
        }
        return UUID.fromString(answer.location().split("/")[2]);
    }

    Answer tryToBegin(String check) {
        return browser.post("/checks/" + check + "/begin");
    }

    StoredSitting stored(UUID sitting) {
        return store.load(id, sitting).orElseThrow();
    }

    DrawnExercise drawn(UUID sitting, int number) {
        return draws.of(stored(sitting).item(number).orElseThrow());
    }

    /** The first item, from some number on, that asks for a number and so has a field to type into. */
    int typedFrom(UUID sitting, int first) {
        return stored(sitting).items().stream()
                .map(StoredItem::number)
                .filter(number -> number >= first && drawn(sitting, number) instanceof DrawnNumbers)
                .findFirst()
                .orElseThrow();
    }

    String right(UUID sitting, int number) {
        return drawn(sitting, number) instanceof DrawnChoice choice
                ? choice.right()
                : number(sitting, number, Rational.ONE);
    }

    String wrong(UUID sitting, int number) {
        return drawn(sitting, number) instanceof DrawnChoice choice
                ? choice.wrong()
                : number(sitting, number, Rational.of("1.37"));
    }

    private String number(UUID sitting, int number, Rational times) {
        DrawnPart asked = ((DrawnNumbers) drawn(sitting, number)).part(0);
        String digits = asked.expected().times(times).toDecimal(6).toPlainString();
        return (digits + " " + asked.part().unit().symbol()).strip();
    }

    Answer save(UUID sitting, int number, String typed) {
        return browser.post("/sittings/" + sitting + "/items/" + number, Map.of("answer", typed));
    }

    Answer handIn(UUID sitting) {
        return browser.post("/sittings/" + sitting + "/hand-in");
    }

    /** Saves the right answer to every item but the first few, to which wrong ones are saved. */
    void answerAll(UUID sitting, int wrongOnes) {
        for (StoredItem item : stored(sitting).items()) {
            int number = item.number();
            Answer saved = save(sitting, number, number <= wrongOnes ? wrong(sitting, number) : right(sitting, number));
            if (saved.status() != 303) {
                throw new AssertionError("not saved: " + saved);
            }
        }
    }

    /** A whole sitting from beginning to handing in. */
    UUID sit(String check, int wrongOnes) {
        UUID sitting = begin(check);
        answerAll(sitting, wrongOnes);
        handIn(sitting);
        return sitting;
    }
}
