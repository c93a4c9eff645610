package org.riseandgel.practice;

/** What became of an answer that was handed in. */
public sealed interface Handed {
    /** It is stored, now or since an earlier press; the part's verdict can be seen. */
    record Stored(int part) implements Handed {}

    /** It could not be read or lacks its unit: asked again in plain words, nothing is stored and no try is used. */
    record AskAgain(String question) implements Handed {}

    /** Another part has to be answered first; nothing is stored. */
    record NotYet() implements Handed {}
}
