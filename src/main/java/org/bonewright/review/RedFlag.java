package org.bonewright.review;

/**
 * Something that ends automatic judgement and goes to a human at once.
 *
 * @param what what was recorded
 * @param since where and when, in words
 */
public record RedFlag(String what, String since) {}
