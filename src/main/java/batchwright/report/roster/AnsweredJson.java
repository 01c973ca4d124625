package batchwright.report.roster;

import batchwright.answer.roster.Client;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/**
 * The clients in a file of answers. Of each only eight bytes of a digest are kept: among ten million ids, two have the same with a
 * probability of some three in a million.
 */
public final class AnsweredJson {
    private static final int FIRST_ROOM = 1024;

    private long[] digests = new long[FIRST_ROOM];
    private int size;

    private AnsweredJson() {}

    /** @param lines of {@link RosterJson}; one that is cut off counts for nothing */
    public static AnsweredJson in(BufferedReader lines) throws IOException {
        var answered = new AnsweredJson();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Json.read(line).ifPresent(answered::add);
        }
        answered.digests = Arrays.copyOf(answered.digests, answered.size);
        Arrays.sort(answered.digests);
        return answered;
    }

    private void add(JsonNode line) {
        if (size == digests.length) {
            digests = Arrays.copyOf(digests, 2 * size);
        }
        digests[size] = line.path("client").isTextual()
                ? ofId(line.path("client").asText())
                : ofLine(line.path("line").asLong());
        size++;
    }

    /** A line that cannot be read has no id; it is known by its number. */
    public boolean has(Client client) {
        long digest = client.wrong().isPresent() ? ofLine(client.line()) : ofId(client.id());
        return Arrays.binarySearch(digests, digest) >= 0;
    }

    private static long ofId(String id) {
        return digest("id " + id);
    }

    private static long ofLine(long line) {
        return digest("line " + line);
    }

    private static long digest(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(digest).getLong();
        } catch (NoSuchAlgorithmException neverSo) {
            throw new IllegalStateException(neverSo);
        }
    }
}
