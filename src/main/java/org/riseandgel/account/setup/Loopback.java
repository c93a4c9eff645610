package org.riseandgel.account.setup;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Tells the addresses that only this computer itself can reach. */
final class Loopback {
    private Loopback() {}

    /** Whether the host is this computer alone; a name that nobody knows is not. */
    static boolean is(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
