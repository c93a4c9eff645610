package org.riseandgel.account.feed;

import java.util.List;
import java.util.UUID;

/** A feature that has something to tell a person on the first page; whoever implements this is asked each time. */
public interface NoticeSource {
    /**
     * Something to know today.
     *
     * @param text one or two sentences
     * @param address where it is dealt with
     * @param link the words of the link
     * @param pressing whether it stands out from the others
     */
    record Notice(String text, String address, String link, boolean pressing) {}

    /** What there is to tell this person, the most pressing first. */
    List<Notice> noticesFor(UUID person);
}
