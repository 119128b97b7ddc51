package org.bonewright.principles;

import java.util.List;

/**
 * A principle that the program itself keeps, whatever the case. It has no verdict and no row in a
 * table: tests prove it.
 *
 * @param id kebab-case id, the same as of its file
 * @param title a few words
 * @param statement the promise in one sentence
 * @param why what would happen otherwise
 * @param provedBy the tests that prove it, as class and method, {@code org.x.SomeTest#method}
 * @param sources where it comes from
 * @param awaiting what it does not cover yet
 * @param reviewedBy who has reviewed it
 * @param since the first rule-set version that has it
 */
public record Promise(
    String id,
    String title,
    String statement,
    String why,
    List<String> provedBy,
    List<Card.Source> sources,
    List<String> awaiting,
    String reviewedBy,
    String since) {}
