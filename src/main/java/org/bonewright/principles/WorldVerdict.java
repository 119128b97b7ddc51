package org.bonewright.principles;

/**
 * What the rules say of one world: two-valued, never unknown.
 *
 * @param kind met, unmet or not applicable
 * @param severity the severity where unmet, else note
 * @param limit the limit that decided where unmet, else empty
 */
record WorldVerdict(VerdictKind kind, Severity severity, String limit) {

  static final WorldVerdict MET = new WorldVerdict(VerdictKind.MET, Severity.NOTE, "");
  static final WorldVerdict NOT_APPLICABLE =
      new WorldVerdict(VerdictKind.NOT_APPLICABLE, Severity.NOTE, "");
}
