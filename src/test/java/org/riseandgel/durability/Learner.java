package org.riseandgel.durability;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.atomic.AtomicLong;
import org.jsoup.nodes.Element;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.Oracle;

/** Somebody who practises without pause until the server is gone, and remembers each answer the server said it has. */
final class Learner implements Runnable {
    private static final List<String> SKILLS =
            List.of("expansion", "stick-marks-straight", "stick-marks-tapered", "weighing");

    /** A skill of the first stage, for those to whom the others are not open yet. */
    private static final String OPEN_TO_ALL = "safe-handling";

    private final Browserless browser;
    private final Oracle oracle;
    private final Queue<Acknowledged> acknowledged;
    private final AtomicLong turns = new AtomicLong();

    /** An answer the server has acknowledged, and whether it was meant to be right. */
    record Acknowledged(String draw, int part, String typed, boolean right) {}

    Learner(Browserless browser, Oracle oracle, Queue<Acknowledged> acknowledged) {
        this.browser = browser;
        this.oracle = oracle;
        this.acknowledged = acknowledged;
    }

    @Override
    public void run() {
        try {
            while (true) {
                practise(SKILLS.get((int) (turns.get() % SKILLS.size())));
            }
        } catch (UncheckedIOException | Oracle.Gone e) {
            // The server has been killed under us, as it should be.
        }
    }

    private void practise(String skill) {
        Answer drawn = browser.post("/practice/" + skill + "/draw");
        if (drawn.location().startsWith("/course/")) {
            drawn = browser.post("/practice/" + OPEN_TO_ALL + "/draw");
        }
        while (drawn.location().startsWith("/practice/examples/")) {
            drawn = browser.post(drawn.location() + "/seen");
        }
        if (drawn.status() != 303) {
            throw new IllegalStateException("no draw: " + drawn);
        }
        String address = drawn.location();
        Element part = browser.get(address).page().selectFirst("input[name=part]");
        while (part != null) {
            answer(address, Integer.parseInt(part.attr("value")));
            part = browser.get(address).page().selectFirst("input[name=part]");
        }
    }

    private void answer(String address, int part) {
        String draw = address.substring(address.lastIndexOf('/') + 1);
        boolean right = turns.getAndIncrement() % 3 != 0;
        String typed = right ? oracle.right(draw, part - 1) : oracle.wrong(draw, part - 1);
        Answer told = browser.post(
                address + "/answer",
                Map.of("part", Integer.toString(part), "answer", typed, "echoed", typed, "sure", "fairly"));
        if (told.status() != 303) {
            throw new IllegalStateException("“%s” was not taken: %s".formatted(typed, told));
        }
        acknowledged.add(new Acknowledged(draw, part - 1, typed, right));
    }
}
