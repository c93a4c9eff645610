package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Puts things in an order by chance. */
public final class Shuffle {
    private Shuffle() {}

    /**
     * The same things in an order that follows from the generator's state, every order as likely as any other. Source of
     * the way: Fisher and Yates, "Statistical Tables", as Durstenfeld wrote it for computers, 1964.
     */
    public static <T> List<T> of(List<T> things, SplitMix chance) {
        List<T> order = new ArrayList<>(things);
        for (int last = order.size() - 1; last > 0; last--) {
            Collections.swap(order, last, chance.below(last + 1));
        }
        return order;
    }
}
