package org.riseandgel.platform.table;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/**
 * A table written to a file of its own before any of it is sent, so that a table that fails half way is never sent half,
 * and its digest is known. The file goes when it has been sent.
 *
 * @param digest SHA-256 of the bytes, in Base64, as RFC 9530 writes it
 */
public record TableFile(Path path, long size, String digest) {
    /** How a table can be written. */
    public enum Format {
        CSV("csv", "text/csv;charset=UTF-8;header=present"),
        XLSX("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

        private final String ending;
        private final String mediaType;

        Format(String ending, String mediaType) {
            this.ending = ending;
            this.mediaType = mediaType;
        }

        public String mediaType() {
            return mediaType;
        }

        /** The format of files that end so. */
        public static Optional<Format> byEnding(String ending) {
            return Arrays.stream(values())
                    .filter(format -> format.ending.equals(ending))
                    .findFirst();
        }
    }

    /** Writes the table row by row. */
    public static TableFile write(Table table, Format format) throws IOException {
        Path path = Files.createTempFile("table", "." + format.ending);
        MessageDigest digest = sha256();
        try (OutputStream out = new DigestOutputStream(new BufferedOutputStream(Files.newOutputStream(path)), digest)) {
            if (format == Format.CSV) {
                CsvFile.write(table, new OutputStreamWriter(out, StandardCharsets.UTF_8));
            } else {
                XlsxFile.write(table, out);
            }
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(path);
            throw e;
        }
        return new TableFile(path, Files.size(path), Base64.getEncoder().encodeToString(digest.digest()));
    }

    /** What sends the file, piece by piece, and then removes it. */
    public StreamingOutput entity() {
        return new Content(this);
    }

    /** The content of an answer, which removes its file once it is sent. */
    record Content(TableFile file) implements StreamingOutput {
        @Override
        public void write(OutputStream out) throws IOException {
            try (InputStream in = Files.newInputStream(file.path)) {
                in.transferTo(out);
            } finally {
                file.remove();
            }
        }
    }

    /** The file as an answer to a download, named so in the visitor's folder. */
    public Response download(String name, Format format) {
        return Response.ok(entity())
                .type(format.mediaType())
                .header(HttpHeaders.CONTENT_LENGTH, size)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "." + format.ending + "\"")
                .header("Repr-Digest", "sha-256=:" + digest + ":")
                .build();
    }

    void remove() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
