package org.bonewright.casefile;

/** The answer to an examination. Not done is an answer: no evidence from that source yet. */
public enum Examination {
  PRESENT,
  ABSENT,
  NOT_DONE,
  UNKNOWN
}
