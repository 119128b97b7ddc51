package org.bonewright.handbook.content;

import java.util.Locale;

/** On what a limit rests, as far as the words on its evidence tell. */
enum Ground {
  MEMORY("from memory"),
  PART_MEMORY("in part from memory"),
  CONVENTION("our convention"),
  PART_CONVENTION("in part our convention"),
  NO_SOURCE("no source"),
  SEEN("told as seen in a source"),
  NOT_TOLD("not told for this limit; see the sources");

  private final String words;

  Ground(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Return the ground that the words on the evidence of a limit tell. */
  static Ground of(String evidence) {
    String told = evidence.toLowerCase(Locale.ROOT);
    boolean mixed = told.contains(";");
    if (told.contains("from memory")) {
      return mixed ? PART_MEMORY : MEMORY;
    }
    if (told.contains("no source") || told.equals("bookkeeping") || told.equals("plain reason")) {
      return NO_SOURCE;
    }
    if (told.contains("our convention") || told.contains("is ours")) {
      return mixed ? PART_CONVENTION : CONVENTION;
    }
    if (told.contains("seen in") || told.contains("as quoted")) {
      return SEEN;
    }
    return NOT_TOLD;
  }
}
