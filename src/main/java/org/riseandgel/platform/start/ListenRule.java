package org.riseandgel.platform.start;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Map;

/**
 * Decides whether the program may listen where the settings want it to: on this computer always, on
 * the network only encrypted, and with the demo school never.
 */
public final class ListenRule {
    private static final String PLAIN = "quarkus.http.insecure-requests";
    private static final List<String> CERTIFICATES = List.of(
            "quarkus.http.tls-configuration-name",
            "quarkus.http.ssl.certificate.files",
            "quarkus.http.ssl.certificate.key-store-file",
            "quarkus.tls.key-store.p12.path",
            "quarkus.tls.key-store.jks.path",
            "quarkus.tls.key-store.pem.0.cert");

    private ListenRule() {}

    /**
     * Checks the settings and gives what has to be added to them.
     *
     * @throws StartFailure when the program would be reachable from other computers without protection
     */
    public static Map<String, String> check(EarlySettings settings) {
        String host = settings.text("quarkus.http.host").orElse("127.0.0.1");
        if (isThisComputer(host)) {
            return Map.of();
        }
        if (settings.yes("riseandgel.demo")) {
            throw StartFailure.because("The demo school is shown on this computer only. Set quarkus.http.host back to"
                    + " 127.0.0.1, or start without riseandgel.demo.");
        }
        if (settings.yes("riseandgel.tls-at-proxy")) {
            return Map.of();
        }
        return checkCertificate(settings, host);
    }

    private static Map<String, String> checkCertificate(EarlySettings settings, String host) {
        if (CERTIFICATES.stream().noneMatch(name -> settings.text(name).isPresent())) {
            throw StartFailure.because("quarkus.http.host is " + host + ", so other computers could read along."
                    + " Give a certificate (quarkus.tls.key-store…), or say riseandgel.tls-at-proxy=true when a proxy"
                    + " encrypts, or set quarkus.http.host back to 127.0.0.1.");
        }
        if (settings.text(PLAIN).orElse("redirect").equalsIgnoreCase("enabled")) {
            throw StartFailure.because("There is a certificate, but " + PLAIN
                    + "=enabled would answer without it too. Set it to redirect or disabled.");
        }
        return settings.text(PLAIN).isPresent() ? Map.of() : Map.of(PLAIN, "redirect");
    }

    private static boolean isThisComputer(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            throw StartFailure.because("quarkus.http.host is " + host + ", and there is no computer of that name.", e);
        }
    }
}
