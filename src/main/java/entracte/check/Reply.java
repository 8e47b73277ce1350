package entracte.check;

import java.util.Optional;

/** What a kind answers to something asked of it: what it has, or why it will not do. */
record Reply<T>(Optional<T> found, Optional<Lack> lack) {
  static <T> Reply<T> found(T what) {
    return new Reply<>(Optional.of(what), Optional.empty());
  }

  static <T> Reply<T> lacking(Lack why) {
    return new Reply<>(Optional.empty(), Optional.of(why));
  }
}
