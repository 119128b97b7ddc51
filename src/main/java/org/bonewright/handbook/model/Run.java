package org.bonewright.handbook.model;

/** A stretch of a text. */
public sealed interface Run {

  /** Return the words, without any marks. */
  String words();

  /** Words and nothing else. */
  record Plain(String words) implements Run {}

  /** Words that are weightier than those beside them. */
  record Strong(String words) implements Run {}

  /** Words that lead to another place. */
  record Link(String words, Target target) implements Run {}

  /** The first use of a term on a page; it leads to the glossary. */
  record Term(String words, Target target) implements Run {}

  /** A gap in a sentence that each case fills with what was read. */
  record Gap(String words) implements Run {}
}
