package org.riseandgel.clearance.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The blank forms besides the practicals, each with where it is entered once it comes back. */
public enum PaperForm {
    TRAINING(
            "Training given",
            "The trainer, or another instructor, enters it in the register: the learner, Training given."),
    EQUIPMENT(
            "Protective equipment shown",
            "The observer, or another instructor, enters it in the register: the learner, Protective equipment shown."),
    SHEET_READ(
            "Safety data sheet read",
            "The learner enters it: Clearance, Safety data sheets, I have read this sheet. Nobody else can."),
    RESPIRATOR(
            "Respirator: fit test and training",
            "An instructor enters it in the register: the learner, Fit test and Training on the respirator."),
    DECISION(
            "Grant, renewal or reinstatement",
            "The decider enters it in the register: the learner, Decide. It holds from that moment, not from the day on the"
                    + " paper, and only if the register finds every precondition met."),
    SUSPENSION(
            "Suspension notice",
            "It holds as soon as it is signed. Strike the name off the list at the door, then enter it in the register: the"
                    + " learner, Suspend at once, with the moment at which it was signed."),
    APPEAL(
            "Appeal",
            "The learner enters it: Clearance, You do not agree with a decision. Somebody who was not in the decision"
                    + " decides it.");

    private final String title;
    private final String entered;

    PaperForm(String title, String entered) {
        this.title = title;
        this.entered = entered;
    }

    public String getTitle() {
        return title;
    }

    /** Who enters it where. */
    public String getEntered() {
        return entered;
    }

    /** Its name in an address. */
    public String getId() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<PaperForm> find(String id) {
        return Arrays.stream(values()).filter(form -> form.getId().equals(id)).findFirst();
    }

    static List<PaperForm> all() {
        return List.of(values());
    }
}
