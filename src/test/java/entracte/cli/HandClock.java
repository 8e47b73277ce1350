package entracte.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

/** A clock that somebody moves by hand: eight in the evening at first. */
final class HandClock extends Clock {
  private final AtomicLong millis =
      new AtomicLong(Instant.parse("2026-03-01T20:00:00Z").toEpochMilli());

  void pass(long more) {
    millis.addAndGet(more);
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Instant instant() {
    return Instant.ofEpochMilli(millis.get());
  }
}
