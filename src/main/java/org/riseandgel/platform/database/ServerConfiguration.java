package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.file.Path;
import org.riseandgel.platform.files.OwnerOnly;

/** The two files that tell the server how to run, written anew before each start. */
final class ServerConfiguration {
    private static final String SETTINGS =
            """
            # Written by Rise and Gel at every start; changes made here are lost.

            # A committed row is on the disk before the answer leaves.
            fsync = on
            synchronous_commit = on
            full_page_writes = on

            # Reached from this computer only, with a password only.
            listen_addresses = '127.0.0.1'
            port = %d
            unix_socket_directories = ''
            password_encryption = 'scram-sha-256'
            allow_alter_system = off

            max_connections = 40
            shared_buffers = 128MB
            jit = off

            logging_collector = on
            log_directory = %s
            log_filename = 'postgres-%%Y-%%m-%%d_%%H%%M%%S.log'
            log_file_mode = 0600
            log_rotation_size = 10MB
            log_rotation_age = 7d
            log_line_prefix = '%%m [%%p] %%u@%%d '
            log_timezone = 'UTC'
            timezone = 'UTC'
            datestyle = 'iso, ymd'
            lc_messages = 'C'
            lc_monetary = 'C'
            lc_numeric = 'C'
            lc_time = 'C'
            """;

    private static final String ACCESS =
            """
            # Written by Rise and Gel at every start; changes made here are lost.
            # TYPE  DATABASE  USER  ADDRESS       METHOD
            host    all       all   127.0.0.1/32  scram-sha-256
            """;

    private ServerConfiguration() {}

    static void write(Path cluster, Path logs, int port) throws IOException {
        OwnerOnly.write(cluster.resolve("postgresql.conf"), SETTINGS.formatted(port, quoted(logs)));
        OwnerOnly.write(cluster.resolve("pg_hba.conf"), ACCESS);
    }

    private static String quoted(Path path) {
        String text = path.toString().replace('\\', '/');
        return "'" + text.replace("'", "''") + "'";
    }
}
