package org.riseandgel;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

@QuarkusMain
public final class RiseAndGel {
    private RiseAndGel() {}

    public static void main(String... args) {
        Quarkus.run(args);
    }
}
