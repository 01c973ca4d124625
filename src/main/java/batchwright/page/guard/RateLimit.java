package batchwright.page.guard;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** So many requests at once and so many a second from one address, no more. It remembers a limited number of addresses. */
public final class RateLimit {
    private static final int MOST_ADDRESSES = 1000;
    private static final double NANOS = 1e9;

    private final double atOnce;
    private final double aSecond;
    private final LongSupplier nanos;
    private final Map<String, Left> byAddress = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Left> eldest) {
            return size() > MOST_ADDRESSES;
        }
    };

    private record Left(double requests, long at) {}

    public RateLimit(int atOnce, int aSecond, LongSupplier nanos) {
        this.atOnce = atOnce;
        this.aSecond = aSecond;
        this.nanos = nanos;
    }

    /** Takes one, if there is one left. */
    synchronized boolean allows(String address) {
        long now = nanos.getAsLong();
        Left before = byAddress.getOrDefault(address, new Left(atOnce, now));
        double left = Math.min(atOnce, before.requests() + (now - before.at()) / NANOS * aSecond);
        boolean allowed = left >= 1;
        byAddress.put(address, new Left(allowed ? left - 1 : left, now));
        return allowed;
    }
}
