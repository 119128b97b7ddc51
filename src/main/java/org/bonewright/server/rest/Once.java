package org.bonewright.server.rest;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something that is made when it is first asked for, and kept. Who asks meanwhile waits.
 *
 * @param <T> what it is
 */
final class Once<T> {

  private final Supplier<T> maker;
  private @Nullable T made;

  Once(Supplier<T> maker) {
    this.maker = maker;
  }

  synchronized T get() {
    if (made == null) {
      made = maker.get();
    }
    return made;
  }
}
