package org.bonewright.measures.force;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps the latest results of something that is costly and always comes out the same: a plan and
 * its last stage build the same construct, and so does a review by local and by published limits.
 * May be used by several threads.
 */
final class Remembered<K, V> {

  private static final int MOST = 128;

  private final Map<K, V> results = new LinkedHashMap<>();
  private final Function<K, V> find;

  /**
   * Remember what a function returns.
   *
   * @param find the function; the same for the same
   */
  Remembered(Function<K, V> find) {
    this.find = find;
  }

  /** Return the result for a key, found at most once while it is remembered. */
  V of(K key) {
    synchronized (results) {
      V known = results.get(key);
      if (known != null) {
        return known;
      }
    }
    V found = find.apply(key);
    synchronized (results) {
      results.put(key, found);
      if (results.size() > MOST) {
        results.remove(results.keySet().iterator().next());
      }
    }
    return found;
  }
}
