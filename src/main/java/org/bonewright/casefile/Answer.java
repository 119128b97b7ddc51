package org.bonewright.casefile;

/** A plain answer to a plain question. */
public enum Answer {
  YES,
  NO,
  UNKNOWN
}
