package org.riseandgel.browser;

import com.microsoft.playwright.Locator;
import java.util.List;

/** What somebody does on the pages of a draw: sees the example, estimates, fills in, says how sure, hands in. */
final class PracticeHand {
    private final Visitor visitor;

    PracticeHand(Visitor visitor) {
        this.visitor = visitor;
    }

    /** Goes past a worked example that has to be seen first. */
    void pastExample() {
        while (visitor.page().url().contains("/practice/examples/")) {
            press("Now you, with fresh numbers");
        }
    }

    /** Makes an estimate where one is asked. */
    void estimate() {
        if (visitor.find("input[name=decade]").count() > 0) {
            visitor.find("input[name=decade]").first().check();
            press("Go on to the answer");
        }
    }

    /** Fills an answer of any kind of exercise in, and that one is fairly sure. */
    void fill(String answer) {
        put(answer);
        visitor.find("input[name=sure][value=fairly]").check();
    }

    /** Fills an answer of any kind of exercise in. */
    void put(String answer) {
        if (visitor.find("input#answer[type=text]").count() > 0) {
            visitor.find("#answer").fill(answer);
        } else {
            choose(List.of(answer.split(" ")));
        }
    }

    private void choose(List<String> places) {
        Locator selects = visitor.find("select[name=answer]");
        for (int i = 0; i < places.size(); i++) {
            if (selects.count() > 0) {
                String place = places.get(i);
                boolean match = Character.isLetter(place.charAt(place.length() - 1));
                selects.nth(i).selectOption(match ? place.replaceAll("[0-9]", "") : place);
            } else {
                visitor.find("input[name=answer][value=" + places.get(i) + "]").check();
            }
        }
    }

    /** Hands in, and once more where the answer is read back first. */
    void handIn() {
        visitor.find("form.form button.button").first().click();
        visitor.page().waitForLoadState();
        if (visitor.find("button:has-text('Hand in this answer')").count() > 0) {
            press("Hand in this answer");
        }
    }

    /** Presses the button of that name. */
    void press(String name) {
        visitor.find("button:has-text('" + name + "')").first().click();
        visitor.page().waitForLoadState();
    }
}
