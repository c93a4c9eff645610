package org.riseandgel.clearance;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Task;

/** Tasks, forms and places as people read and addresses write them. */
public final class TaskWords {
    private TaskWords() {}

    /** Its name in an address. */
    public static String id(Task task) {
        return task.name().toLowerCase(Locale.ROOT);
    }

    /** The task of that name. */
    public static Optional<Task> task(String id) {
        return Arrays.stream(Task.values()).filter(task -> id(task).equals(id)).findFirst();
    }

    /** Its name in a list. */
    public static String of(Task task) {
        return switch (task) {
            case STORE -> "Store";
            case WEIGH -> "Weigh";
            case DISPERSE -> "Disperse";
            case DOSE -> "Dose";
            case CLEAN -> "Clean up";
            case SPILL -> "Deal with a spill";
            case WASTE -> "Pack waste";
        };
    }

    /** What somebody does, behind “may”. */
    public static String doing(Task task) {
        return switch (task) {
            case STORE -> "put it in and take it out of store";
            case WEIGH -> "weigh it";
            case DISPERSE -> "disperse it";
            case DOSE -> "dose it into a batch";
            case CLEAN -> "clean up after it";
            case SPILL -> "deal with a spill of it";
            case WASTE -> "pack its waste";
        };
    }

    /** The word for a form. */
    public static String of(Form form) {
        return switch (form) {
            case POWDER -> "powder";
            case DISPERSION -> "ready dispersion";
        };
    }

    /** What is handled in a place. */
    public static String of(Place place) {
        return "%s, %s, from %s"
                .formatted(
                        place.substance().name(),
                        of(place.form()),
                        place.substance().supplier());
    }
}
