package org.bonewright.review;

import java.util.List;
import java.util.Optional;

/**
 * What the operations so far teach together.
 *
 * @param neverAddressed what no operation since has put right, each with the operations that left
 *     it unmet; the most often left first
 * @param triedTwice what was done in two or more operations that failed, each with these operations
 * @param prognosis one line on the next operation with its source and caution, if one is on file
 */
public record History(
    List<String> neverAddressed, List<String> triedTwice, Optional<String> prognosis) {}
