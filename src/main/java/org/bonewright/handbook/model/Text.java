package org.bonewright.handbook.model;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A text with links.
 *
 * @param runs its stretches, in order
 */
public record Text(List<Run> runs) {

  public Text {
    runs = List.copyOf(runs);
  }

  /** Return a text without marks. */
  public static Text of(String words) {
    return new Text(List.of(new Run.Plain(words)));
  }

  /** Return a text that as a whole leads to another place. */
  public static Text link(String words, Target target) {
    return new Text(List.of(new Run.Link(words, target)));
  }

  /** Return a weighty text. */
  public static Text strong(String words) {
    return new Text(List.of(new Run.Strong(words)));
  }

  /** Return texts with something between each two. */
  public static Text joined(List<Text> texts, String between) {
    List<Run> runs = new ArrayList<>();
    for (Iterator<Text> each = texts.iterator(); each.hasNext(); ) {
      runs.addAll(each.next().runs());
      if (each.hasNext()) {
        runs.add(new Run.Plain(between));
      }
    }
    return new Text(runs);
  }

  /** Return this text with another behind it. */
  public Text and(Text other) {
    List<Run> all = new ArrayList<>(runs);
    all.addAll(other.runs());
    return new Text(all);
  }

  /** Return this text with words behind it. */
  public Text and(String words) {
    return and(of(words));
  }

  /** Return the words, without any marks. */
  public String words() {
    return runs.stream().map(Run::words).collect(Collectors.joining());
  }
}
