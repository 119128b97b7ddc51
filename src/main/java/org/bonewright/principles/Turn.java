package org.bonewright.principles;

/**
 * A single input that would turn a verdict if it were different, all others staying as they are.
 *
 * @param need the input, by its name in the card
 * @param to the nearest values at which the verdict is another, in words
 * @param verdict the verdict there
 */
public record Turn(String need, String to, VerdictKind verdict) {}
