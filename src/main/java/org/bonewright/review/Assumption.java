package org.bonewright.review;

import java.util.List;

/**
 * Something assumed because the file does not say.
 *
 * @param what the measure and what it was taken to be, with its unit and basis
 * @param subjects the subjects for which it was assumed, in order
 */
public record Assumption(String what, List<String> subjects) {}
