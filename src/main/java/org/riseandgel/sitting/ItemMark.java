package org.riseandgel.sitting;

/**
 * How an item was judged.
 *
 * @param verdict name of a verdict, or {@link StoredItem#LEFT_OPEN}
 * @param slip the slip that was recognised; null when none was
 * @param expected the right answer as it is shown
 */
record ItemMark(String verdict, String slip, String expected) {
    static ItemMark leftOpen(String expected) {
        return new ItemMark(StoredItem.LEFT_OPEN, null, expected);
    }
}
