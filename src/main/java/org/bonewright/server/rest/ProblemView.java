package org.bonewright.server.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.bonewright.casefile.reading.Place;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.measures.Words;
import org.jspecify.annotations.Nullable;

/**
 * One problem of a case, as the API tells it.
 *
 * @param pointer JSON pointer (RFC 6901) to the value, empty for the whole file
 * @param found what was found
 * @param allowed what is accepted
 * @param severity error or warning
 * @param hint a sentence that may help; left out where there is none
 * @param place line and column; left out where not known
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ProblemView(
    String pointer,
    String found,
    String allowed,
    String severity,
    @Nullable String hint,
    @Nullable String place) {

  static List<ProblemView> of(List<Problem> problems) {
    return problems.stream().map(ProblemView::of).toList();
  }

  private static ProblemView of(Problem problem) {
    return new ProblemView(
        problem.pointer(),
        problem.found(),
        problem.allowed(),
        Words.written(problem.severity()),
        problem.hint().orElse(null),
        problem.place().map(Place::toString).orElse(null));
  }
}
