package org.bonewright.review;

import java.util.List;
import java.util.Optional;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/**
 * One verdict in words.
 *
 * @param principle id of the principle
 * @param title its title
 * @param subject id of the subject
 * @param verdict the verdict
 * @param severity severity after all steps: of what is unmet, or the worst that may be
 * @param words what was found, with numbers and limits
 * @param remedy what would clear it; empty unless unmet
 * @param labels labels such as "for the later stage"
 * @param steps how the severity came about, one clause for each step
 * @param otherView the other view, where the literature disagrees on what decided
 * @param accepted the reason with which a surgeon accepts it, if one does
 * @param fromMemory whether every source of it is cited from memory
 * @param workings what was read, one clause for each need
 * @param turns what would turn it, one clause each
 */
public record Line(
    String principle,
    String title,
    String subject,
    VerdictKind verdict,
    Optional<Severity> severity,
    String words,
    String remedy,
    List<String> labels,
    List<String> steps,
    Optional<String> otherView,
    Optional<String> accepted,
    boolean fromMemory,
    List<String> workings,
    List<String> turns) {}
