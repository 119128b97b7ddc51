package org.bonewright.principles;

/**
 * What the rules of precedence know of a subject.
 *
 * @param subject id of the subject
 * @param infected whether infection was certainly confirmed when it began
 * @param treatedBefore whether an earlier stage of the same plan treats that infection
 * @param stageAfter whether the plan goes on with a stage after the one that treats it
 * @param united whether the bone united after it
 */
public record Course(
    String subject, boolean infected, boolean treatedBefore, boolean stageAfter, boolean united) {}
