package org.riseandgel.practice;

import java.util.List;
import org.riseandgel.platform.web.Problem;

/** What became of an answer that was handed in. */
public sealed interface Handed {
    /** It is stored, now or since an earlier press; the part's verdict can be seen. */
    record Stored(int part) implements Handed {}

    /** It could not be read, lacks its unit, or how sure it is: asked again in plain words, nothing is stored. */
    record AskAgain(List<Problem> problems) implements Handed {
        public AskAgain {
            problems = List.copyOf(problems);
        }
    }

    /** Another part has to be answered first; nothing is stored. */
    record NotYet() implements Handed {}
}
